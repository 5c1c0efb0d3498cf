// Drafting: the pieces as they come out, what is sewn to what, and the allowances.

import { el, fill, write } from '../element.js';
import { Faults, Field } from '../field.js';
import { bare, language, term, typed, word } from '../words.js';
import { PieceDrawing, truingText } from '../piece.js';
import { GarmentOptions } from './options.js';
import { Changes } from './changes.js';
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
    this.how = el('p', {});
    this.drawings = new Map();
    this.changes = new Map();
    this.sheet = el('div', { class: 'drafts' });
    this.truing = el('div', { class: 'truing' });
    this.element = el(
      'div',
      { class: 'sheet wide' },
      el('h1', {}, word('pieces.title')),
      this.how,
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
    const isDrafted = !(this.job.state.pieces ?? []).some(({ of }) => of);
    write(this.how, word(isDrafted ? 'pieces.how' : 'pieces.how brought in'));
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
      const key = `${piece.garment}/${piece.of || piece.name}/${piece.cloth}`;
      seen.add(key);
      if (!this.drawings.has(key)) this.add(key, piece);
      this.drawings.get(key).show(piece, scale, this.job.state, this.numbers());
      this.changes.get(key).show(piece);
    }
    for (const [key, drawing] of this.drawings) {
      if (seen.has(key)) continue;
      drawing.element.remove();
      this.drawings.delete(key);
      this.changes.delete(key);
    }
  }

  add(key, piece) {
    const drawing = new PieceDrawing(piece, (edge, at) => this.pick(edge, at));
    this.drawings.set(key, drawing);
    const changes = new Changes(this.job, piece);
    this.changes.set(key, changes);
    drawing.element.append(changes.element);
    this.sheet.append(drawing.element);
  }

  // pick an edge: its allowance can be typed beside the piece.
  pick(edge, drawing) {
    this.edge?.panel.remove();
    this.drawings.forEach((one) => one.mark(one === drawing ? edge.name : null));
    const field = new Field(this.job, edge.path, {
      label: word('allowance of', { edge: term(edge.name, 'edge') }),
      kind: 'measure',
      derived: bare(edge.allowance_mm, this.job.state.units),
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
      this.seamsAt(drawing.piece.name, edge.name),
      el('p', { class: 'notes' }, word('allowance.all', { edge: term(edge.name, 'edge') })),
      el('button', { type: 'button', click: close }, word('done')),
    );
    this.edge = { field, panel };
    drawing.element.append(panel);
    field.control.focus();
    field.control.select();
  }

  // seamsAt an edge of a piece: what is said of how they match.
  seamsAt(piece, edge) {
    const seams = (this.job.state.truing ?? []).filter((seam) =>
      seam.edges?.some((at) => at.piece === piece && at.edge === edge),
    );
    return seams.length > 0 && el('ul', { class: 'seams' }, seams.map((seam) => seamLine(seam, this.job.state.units)));
  }

  // numbers of the seams that are told of, as they stand on the edges.
  numbers() {
    let number = 0;
    return (this.job.state.truing ?? []).map((seam) => ({ ...seam, number: seam.sound ? 0 : ++number }));
  }

  // refreshTruing tells what does not match at once, and the rest when it is asked for.
  refreshTruing() {
    const seams = this.numbers();
    const key = JSON.stringify(seams);
    if (key === this.told) return;
    this.told = key;
    const sound = seams.filter((seam) => seam.sound);
    const unsound = seams.filter((seam) => !seam.sound);
    const isOpen = this.truing.querySelector('details')?.open ?? false;
    fill(
      this.truing,
      seams.length > 0 && el('h2', {}, word('truing.title')),
      unsound.length > 0 && el('ol', {}, unsound.map((seam) => seamLine(seam, this.job.state.units))),
      sound.length > 0 &&
        el(
          'details',
          { open: isOpen },
          el('summary', {}, word('truing.match', { n: sound.length })),
          el('ul', {}, sound.map((seam) => seamLine(seam, this.job.state.units))),
        ),
    );
  }
}

const seamLine = (seam, units) =>
  el(
    'li',
    { class: seam.sound ? 'sound' : 'unsound', value: seam.sound ? null : seam.number },
    el('strong', {}, term(seam.seam, 'edge')),
    ' ',
    el('span', { class: 'verdict' }, language === 'en' ? seam.verdict : word(seam.sound ? 'fits' : 'fits not')),
    el('span', { class: 'notes' }, truingText(seam, units)),
  );

// scaleOf the drawings: pixels for a millimetre, so that the largest piece has its room.
function scaleOf(all) {
  const sizes = all.flatMap((piece) => {
    const xs = piece.cutting.map(([x]) => x);
    const ys = piece.cutting.map(([, y]) => y);
    return [(Math.max(...xs) - Math.min(...xs)) / 300, (Math.max(...ys) - Math.min(...ys)) / 420];
  });
  return sizes.length ? 1 / Math.max(...sizes) : 1;
}
