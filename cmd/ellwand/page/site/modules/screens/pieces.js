// Drafting: the pieces as they come out, what is sewn to what, and the allowances.

import { el, fill } from '../element.js';
import { Faults, Field, labelOf } from '../field.js';
import { term, word } from '../words.js';
import { PieceDrawing } from '../piece.js';
import { GarmentOptions } from './options.js';
import { nextStep } from './next.js';

export function pieces(job) {
  const screen = new Pieces(job);
  return { element: screen.element, refresh: () => screen.refresh() };
}

class Pieces {
  constructor(job) {
    this.job = job;
    this.options = new GarmentOptions(job);
    this.faults = new Faults(job, () => [...this.options.fields(), ...(this.edge ? [this.edge.field] : [])]);
    this.drawings = new Map();
    this.sheet = el('div', { class: 'drafts' });
    this.truing = el('div', { class: 'truing' });
    this.element = el(
      'div',
      { class: 'sheet wide' },
      el('h1', {}, word('pieces.title')),
      el('p', {}, word('pieces.how')),
      this.faults.element,
      el(
        'div',
        { class: 'drafting' },
        el('section', { class: 'options', 'aria-label': word('pieces.options') }, this.options.element),
        el('section', { 'aria-label': word('pieces.drawn') }, this.sheet, this.truing),
      ),
      nextStep(job, 'lay'),
    );
  }

  refresh() {
    this.options.refresh();
    this.faults.refresh();
    this.edge?.field.refresh();
    this.refreshDrawings();
    this.refreshTruing();
  }

  // refreshDrawings keeps each piece where it is, so that nothing jumps.
  refreshDrawings() {
    const seen = new Set();
    const scale = scaleOf(this.job.state.pieces ?? []);
    for (const piece of this.job.state.pieces ?? []) {
      const key = `${piece.garment}/${piece.name}/${piece.cloth}`;
      seen.add(key);
      if (!this.drawings.has(key)) this.add(key, piece);
      this.drawings.get(key).show(piece, scale, this.job.state, this.numbers());
    }
    for (const [key, drawing] of this.drawings) {
      if (seen.has(key)) continue;
      drawing.element.remove();
      this.drawings.delete(key);
    }
  }

  add(key, piece) {
    const drawing = new PieceDrawing(piece, (edge, at) => this.pick(edge, at));
    this.drawings.set(key, drawing);
    this.sheet.append(drawing.element);
  }

  // pick an edge: its allowance can be typed beside the piece.
  pick(edge, drawing) {
    this.edge?.panel.remove();
    this.drawings.forEach((one) => one.mark(one === drawing ? edge.name : null));
    const field = new Field(this.job, edge.path, {
      label: word('allowance of', { edge: term(edge.name, 'edge') }),
    });
    const close = () => {
      this.edge.panel.remove();
      this.edge = null;
      drawing.mark(null);
      drawing.focusEdge(edge.name);
    };
    const panel = el(
      'div',
      { class: 'panel', keydown: (event) => event.key === 'Escape' && close() },
      field.element,
      el('p', { class: 'notes' }, word('allowance.all', { edge: term(edge.name, 'edge') })),
      el('button', { type: 'button', click: close }, word('done')),
    );
    this.edge = { field, panel };
    drawing.element.append(panel);
    field.control.focus();
    field.control.select();
  }

  // numbers of the seams that are told of, as they stand on the edges.
  numbers() {
    return (this.job.state.truing ?? []).map((seam, i) => ({ ...seam, number: i + 1 }));
  }

  refreshTruing() {
    const seams = this.numbers();
    const key = JSON.stringify(seams);
    if (key === this.told) return;
    this.told = key;
    fill(
      this.truing,
      seams.length > 0 && el('h2', {}, word('truing.title')),
      el(
        'ol',
        {},
        seams.map((seam) =>
          el(
            'li',
            { class: seam.sound ? 'sound' : 'unsound' },
            el('strong', {}, term(seam.seam, 'edge')),
            ' ',
            el('span', { class: 'verdict' }, seam.sound ? word('truing.sound') : word('truing.unsound')),
            el('span', { class: 'notes' }, seam.sentence),
          ),
        ),
      ),
    );
  }
}

// scaleOf the drawings: pixels for a millimetre, so that the largest piece has its room.
function scaleOf(all) {
  const sizes = all.flatMap((piece) => {
    const xs = piece.cutting.map(([x]) => x);
    const ys = piece.cutting.map(([, y]) => y);
    return [(Math.max(...xs) - Math.min(...xs)) / 300, (Math.max(...ys) - Math.min(...ys)) / 420];
  });
  return sizes.length ? 1 / Math.max(...sizes) : 1;
}

export { labelOf };
