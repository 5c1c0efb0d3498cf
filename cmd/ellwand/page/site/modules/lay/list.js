// The lay as a list: the same pieces, to be walked and moved by keys, and the panel of
// the piece in hand.

import { el, set, write } from '../element.js';
import { entry } from '../choose.js';
import { bare, length, millimetres, word } from '../words.js';
import { labelOf, nameOf } from './cloth.js';

export class LayList {
  constructor(hand, pick) {
    Object.assign(this, { hand, pick });
    this.rows = new Map();
    this.list = el('ol', { class: 'laid' });
    this.element = el(
      'details',
      { class: 'asList' },
      el('summary', {}, word('lay as list')),
      el('p', { class: 'notes' }, word('lay keys')),
      this.list,
    );
  }

  show(layout, units) {
    const seen = new Set(layout.pieces.map((piece) => piece.id));
    layout.pieces.forEach((piece) => {
      if (!this.rows.has(piece.id)) this.add(piece.id);
      write(this.rows.get(piece.id).place, `${labelOf(piece)}: ${placeText(piece, units)}`);
    });
    for (const [id, row] of this.rows) {
      if (seen.has(id)) continue;
      row.element.remove();
      this.rows.delete(id);
    }
  }

  add(id) {
    const { keydown, blur } = this.hand.listeners(id);
    const place = el('button', {
      type: 'button',
      class: 'plain',
      click: () => this.pick(id),
      focus: () => this.pick(id),
      keydown,
      blur,
    });
    const element = el('li', {}, place);
    this.rows.set(id, { element, place });
    this.list.append(element);
  }

  mark(id) {
    this.rows.forEach((row, own) => set(row.place, 'aria-pressed', String(own === id)));
  }
}

const placeText = (piece, units) =>
  word('place', { along: length(piece.at[0], units), across: length(piece.at[1], units) });

// Panel of the piece in hand: where it lies, in figures, and what can be done with it.
export class PiecePanel {
  constructor(job, hand) {
    Object.assign(this, { job, hand });
    this.name = el('h2', {});
    this.along = entry({ label: word('along'), input: { change: () => this.move() } });
    this.across = entry({ label: word('across'), input: { change: () => this.move() } });
    this.turnButton = el('button', { type: 'button', click: () => this.hand.turn(this.id) }, word('turn'));
    this.holdButton = el('button', { type: 'button', click: () => this.hand.hold(this.id) });
    this.element = el(
      'section',
      { class: 'inHand', hidden: true },
      this.name,
      el('div', { class: 'fields' }, this.along.element, this.across.element),
      el('div', { class: 'nudges', role: 'group', 'aria-label': word('nudge') }, this.nudges()),
      el('p', { class: 'buttons' }, this.turnButton, this.holdButton),
    );
  }

  nudges() {
    const step = (key, text, by) =>
      el('button', { type: 'button', 'aria-label': word(key), click: () => this.nudge(by) }, text);
    return [
      step('nudge back', '←', [-1, 0]),
      step('nudge on', '→', [1, 0]),
      step('nudge up', '↑', [0, 1]),
      step('nudge down', '↓', [0, -1]),
    ];
  }

  // nudge by a millimetre, and set the piece down there.
  nudge(by) {
    this.hand.nudge(this.id, by, 1);
    this.hand.setDown();
  }

  move() {
    const units = this.job.state.units;
    const [x, y] = [this.along, this.across].map(({ control }) => millimetres(control.value, units));
    if (x === null || y === null) return this.show(this.piece);
    this.hand.take(this.id);
    this.hand.moveTo([x, y]);
    return this.hand.setDown();
  }

  show(piece) {
    this.element.hidden = !piece;
    if (!piece) return;
    Object.assign(this, { piece, id: piece.id });
    const units = this.job.state.units;
    write(this.name, `${nameOf(piece)} ${piece.copy > 1 ? piece.copy : ''}`.trim());
    [
      [this.along, 0],
      [this.across, 1],
    ].forEach(([field, axis]) => {
      write(field.unitText, units);
      if (document.activeElement !== field.control) field.control.value = bare(piece.at[axis], units);
    });
    write(this.holdButton, word(piece.locked || piece.by_hand ? 'let it go' : 'hold it'));
    this.turnButton.disabled = (piece.turns ?? []).length < 2;
  }
}
