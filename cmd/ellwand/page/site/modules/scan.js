// Two distances that were measured in a scan: each by two places in the picture, clicked or
// written, and how far apart they are.

import { draw, el, fill, set } from './element.js';
import { entry } from './choose.js';
import { sent, word } from './words.js';

export class Scan {
  constructor(changed) {
    this.image = el('img', { alt: word('scan.picture'), load: () => this.redraw() });
    this.over = draw('svg', { 'aria-hidden': 'true' });
    this.distances = [1, 2].map((n) => ({
      places: entry({
        label: word('scan.places', { n }),
        hint: word('scan.places.hint'),
        input: { change: () => this.written(changed) },
      }),
      length: entry({ label: word('scan.apart', { n }), unit: 'cm', input: { change: () => this.written(changed) } }),
    }));
    this.element = el(
      'details',
      { class: 'scan' },
      el('summary', {}, word('scan.title')),
      el('p', {}, word('scan.how')),
      this.distances.map(({ places, length }) =>
        el('div', { class: 'fields' }, places.element, length.element),
      ),
      el('div', { class: 'over', click: (event) => this.click(event) }, this.image, this.over),
    );
  }

  // show a file that was chosen.
  show(file) {
    if (this.address) URL.revokeObjectURL(this.address);
    this.address = URL.createObjectURL(file);
    this.image.src = this.address;
    this.distances.forEach(({ places, length }) => {
      places.control.value = '';
      length.control.value = '';
    });
  }

  // click sets the next place that lacks.
  click(event) {
    const box = this.image.getBoundingClientRect();
    const scale = this.image.naturalWidth / box.width;
    const at = [event.clientX - box.left, event.clientY - box.top].map((x) => Math.round(x * scale)).join(',');
    const next = this.distances.find(({ places }) => placesIn(places.control.value).length < 2);
    if (!next) return;
    next.places.control.value = [...placesIn(next.places.control.value), at].join(' ');
    this.redraw();
    if (placesIn(next.places.control.value).length === 2) next.length.control.focus();
  }

  written(changed) {
    this.redraw();
    if (this.wanted().length) changed();
  }

  redraw() {
    const { naturalWidth: wide, naturalHeight: high } = this.image;
    set(this.over, 'viewBox', `0 0 ${wide || 1} ${high || 1}`);
    fill(
      this.over,
      this.distances.map(({ places }) => {
        const ends = placesIn(places.control.value).map((place) => place.split(',').map(Number));
        const dots = ends.map(([x, y]) => draw('circle', { cx: x, cy: y, r: wide / 150 }));
        const line =
          ends.length === 2 &&
          draw('line', { x1: ends[0][0], y1: ends[0][1], x2: ends[1][0], y2: ends[1][1], 'stroke-width': wide / 400 });
        return [line, dots];
      }),
    );
  }

  // wanted of the program: both distances, or none while something lacks.
  wanted() {
    const all = this.distances.map(({ places, length }) => {
      const ends = placesIn(places.control.value);
      const apart = sent(length.control.value);
      if (ends.length !== 2 || !apart) return '';
      return `${ends.join(' ')} = ${/[a-z]/i.test(apart) ? apart : `${apart}cm`}`;
    });
    return all.every(Boolean) ? all : [];
  }
}

const placesIn = (text) => text.match(/\d+(?:\.\d+)?,\d+(?:\.\d+)?/g) ?? [];
