// What is printed at full size: which pieces, cut from which cloths, in which sizes.

import { el, fill } from './element.js';
import { get } from './server.js';
import { term, word } from './words.js';

const unlike = (values) => [...new Set(values)];

// PrintChoice calls changed after each change.
export class PrintChoice {
  constructor(job, changed) {
    this.job = job;
    this.changed = changed;
    this.sets = { piece: new Ticks('print.only'), of: new Ticks('print.of'), size: new Ticks('print.sizes') };
    Object.values(this.sets).forEach((set) => {
      set.changed = changed;
    });
    this.element = el(
      'details',
      { class: 'printed' },
      el('summary', {}, word('print.choose')),
      Object.values(this.sets).map((set) => set.element),
    );
  }

  refresh() {
    const pieces = this.job.state.pieces ?? [];
    this.sets.piece.show(unlike(pieces.map(({ name }) => name)), 'piece', true);
    this.sets.of.show(unlike(pieces.map(({ cloth }) => cloth)), 'cloth', true);
    this.showSizes();
  }

  // showSizes of the job's table; the one that it is drafted in is chosen.
  async showSizes() {
    const value = (key) => this.job.state.fields?.find(({ path }) => path.length === 1 && path[0] === key)?.value;
    const [table, size] = [value('table'), value('size')];
    if (!table || !size) return this.sets.size.show([]);
    const found = await get(`/api/size?table=${encodeURIComponent(table)}`).catch(() => null);
    this.sets.size.show(found?.sizes ?? [], 'size', (name) => name === size);
    this.size = size;
    this.changed();
  }

  // isEmpty where nothing of a kind is left to be printed.
  get isEmpty() {
    return Object.values(this.sets).some((set) => set.boxes.length > 0 && set.ticked.length === 0);
  }

  // asked of the program: what is not restricted is left out.
  get asked() {
    const { piece, of, size } = this.sets;
    const isUsual = size.ticked.length === 1 && size.ticked[0] === this.size;
    return { piece: piece.restricted, of: of.restricted, size: isUsual ? [] : size.ticked };
  }
}

// Ticks are names of which several can be chosen.
class Ticks {
  constructor(legend) {
    this.boxes = [];
    this.list = el('div', { class: 'ticks' });
    this.element = el('fieldset', { class: 'choice', hidden: true }, el('legend', {}, word(legend)), this.list);
  }

  // show names; what was chosen before stays so. A single one is no choice.
  show(names, stem, first) {
    const before = new Map(this.boxes.map(({ value, checked }) => [value, checked]));
    if (names.length === before.size && names.every((name) => before.has(name))) return;
    this.boxes = (names.length > 1 ? names : []).map((value) =>
      el('input', {
        type: 'checkbox',
        value,
        checked: before.get(value) ?? (first === true || first(value)),
        change: () => this.changed(),
      }),
    );
    this.element.hidden = this.boxes.length === 0;
    fill(
      this.list,
      this.boxes.map((box) => el('label', {}, box, ' ', term(box.value, stem))),
    );
  }

  get ticked() {
    return this.boxes.filter(({ checked }) => checked).map(({ value }) => value);
  }

  get restricted() {
    return this.ticked.length === this.boxes.length ? [] : this.ticked;
  }
}
