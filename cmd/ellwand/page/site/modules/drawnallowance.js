// What outlines have of their seam allowance: of all pieces, or of one that is an exception.

import { el, write } from './element.js';
import { entry, pickOne } from './choose.js';
import { sent, term, word } from './words.js';

const ways = ['unknown', 'included', 'added'];

export class Allowance {
  // all is that of all pieces, which one may have as well; none for that of all. Units are
  // those of the job.
  constructor({ label, all, units }) {
    Object.assign(this, { all, units });
    const choices = ways.map((way) => [way, term(way, 'allowance')]);
    if (all) choices.unshift(['', word('drawn.allowance.as all')]);
    this.way = pickOne({ label, choices, value: all ? '' : 'unknown', pick: () => this.refresh() });
    this.width = entry({
      label: word('drawn.allowance.width'),
      input: { inputmode: 'decimal', input: () => this.tell('') },
    });
    this.fault = el('span', { class: 'fault' });
    this.width.element.append(el('span', { class: 'notes', role: 'status' }, this.fault));
    this.elements = [this.way.element, this.width.element];
    this.refresh();
  }

  refresh() {
    this.width.element.hidden = !this.hasWidth();
    write(this.width.unitText, this.units());
    this.tell('');
  }

  hasWidth() {
    return ['included', 'added'].includes(this.way.control.value);
  }

  tell(fault) {
    write(this.fault, fault);
    this.fault.hidden = !fault;
    this.width.control.setAttribute('aria-invalid', Boolean(fault));
  }

  // refused says at the field that a width is missing; it reports whether it is.
  refused() {
    if (!this.hasWidth() || sent(this.width.control.value)) return false;
    this.tell(word('drawn.allowance.needed'));
    this.width.control.focus();
    return true;
  }

  // said of the allowance, a number without a unit in those of the job.
  said() {
    const way = this.way.control.value;
    if (way === '') return this.all.said();
    if (way === 'unknown') return way;
    const width = sent(this.width.control.value);
    if (!width) return 'unknown';
    const length = /[a-z"]/i.test(width) ? width : `${width} ${this.units()}`;
    return way === 'included' ? `included ${length}` : length;
  }
}
