// A piece of cloth by its corners: drawn by clicks, over a photo of it if wanted, and
// the same in figures.

import { draw, el, fill, set } from './element.js';
import { entry } from './choose.js';
import { bare, length, millimetres, word } from './words.js';

// Remnant that is drawn: corners and flaws in mm, y up from the near edge.
export class RemnantDrawing {
  constructor(units, changed) {
    Object.assign(this, { units, changed });
    this.corners = [];
    this.flaws = [];
    this.mode = 'corner';
    this.size = [1000, 1400];
    this.picture = draw('svg', { class: 'remnant', role: 'img', click: (event) => this.click(event) });
    this.photo = el('canvas', { class: 'photo', 'aria-hidden': 'true', hidden: true });
    this.table = el('div', { class: 'figures' });
    this.element = el(
      'div',
      { class: 'remnantBox' },
      el('div', { class: 'over' }, this.photo, this.picture),
      this.table,
    );
    this.redraw();
  }

  // sized as a rectangle so long and so wide, to begin with.
  sized(long, wide) {
    this.size = [long, wide];
    this.corners = [
      [0, 0],
      [long, 0],
      [long, wide],
      [0, wide],
    ];
    this.redraw();
  }

  // under a photo, which fills the rectangle.
  async over(file) {
    const bitmap = await createImageBitmap(file);
    this.photo.width = bitmap.width;
    this.photo.height = bitmap.height;
    this.photo.getContext('2d').drawImage(bitmap, 0, 0);
    this.photo.hidden = false;
  }

  click(event) {
    const box = this.picture.getBoundingClientRect();
    const [long, wide] = this.size;
    const margin = this.margin();
    const x = ((event.clientX - box.left) / box.width) * (long + 2 * margin) - margin;
    const y = wide + margin - ((event.clientY - box.top) / box.height) * (wide + 2 * margin);
    const at = [Math.round(Math.min(Math.max(x, 0), long)), Math.round(Math.min(Math.max(y, 0), wide))];
    if (this.mode === 'flaw') this.flaws.push({ at, radius: 20 });
    else this.corners.push(at);
    this.redraw();
  }

  margin() {
    return Math.max(...this.size) * 0.04;
  }

  redraw() {
    const [long, wide] = this.size;
    const margin = this.margin();
    const dot = Math.max(long, wide) / 120;
    set(this.picture, 'viewBox', `${-margin} ${-wide - margin} ${long + 2 * margin} ${wide + 2 * margin}`);
    set(
      this.picture,
      'aria-label',
      word('remnant.picture', { n: this.corners.length, flaws: this.flaws.length }),
    );
    const d =
      this.corners.map(([x, y], i) => `${i ? 'L' : 'M'}${x} ${-y}`).join('') +
      (this.corners.length > 2 ? 'Z' : '');
    fill(
      this.picture,
      draw('rect', { class: 'ground', x: 0, y: -wide, width: long, height: wide }),
      draw('path', { class: 'stuff', d }),
      this.corners.map(([x, y], i) =>
        draw(
          'g',
          {},
          draw('circle', { class: 'corner', cx: x, cy: -y, r: dot }),
          draw('text', { x: x + 1.4 * dot, y: -y - dot, 'font-size': 3 * dot }, String(i + 1)),
        ),
      ),
      this.flaws.map(({ at: [x, y], radius }) => draw('circle', { class: 'flaw', cx: x, cy: -y, r: radius })),
    );
    this.figures();
    this.changed?.();
  }

  // figures of the corners and flaws, to be typed.
  figures() {
    fill(
      this.table,
      this.list('remnant.corners', this.corners, (corner) => corner),
      this.list('remnant.flaws', this.flaws, (flaw) => flaw.at, true),
    );
  }

  list(key, items, pointOf, isFlaw = false) {
    if (!items.length) return null;
    const row = (item, i) => {
      const point = pointOf(item);
      const change = (axis) => (event) => {
        const mm = millimetres(event.target.value, this.units);
        if (mm !== null) point[axis] = mm;
        this.redraw();
      };
      const coordinate = (axis, name) =>
        entry({
          label: word('nth', { n: i + 1, name: word(name) }),
          value: bare(point[axis], this.units),
          unit: this.units,
          input: { change: change(axis) },
        }).element;
      const radius =
        isFlaw &&
        entry({
          label: word('nth', { n: i + 1, name: word('radius') }),
          value: bare(item.radius, this.units),
          unit: this.units,
          input: {
            change: (event) => {
              item.radius = millimetres(event.target.value, this.units) ?? item.radius;
              this.redraw();
            },
          },
        }).element;
      return el(
        'li',
        {},
        coordinate(0, 'along'),
        coordinate(1, 'across'),
        radius,
        el(
          'button',
          {
            type: 'button',
            class: 'plain',
            click: () => {
              items.splice(i, 1);
              this.redraw();
            },
          },
          word('take away', { n: i + 1 }),
        ),
      );
    };
    return el('section', {}, el('h3', {}, word(key)), el('ol', { class: 'rows' }, items.map(row)));
  }

  add() {
    const [long, wide] = this.size;
    if (this.mode === 'flaw') this.flaws.push({ at: [long / 2, wide / 2], radius: 20 });
    else this.corners.push([long, wide]);
    this.redraw();
  }

  text(mm) {
    return length(mm, this.units);
  }
}
