// What outlines have of their seam allowance: of all pieces, or of one that is an exception.

import { el, write } from './element.js';
import { entry, pickOne } from './choose.js';
import { sent, term, typed, word } from './words.js';

const ways = ['unknown', 'included', 'added'];

export class Allowance {
  // all is that of all pieces, which one may have as well; usual names what it has where
  // nothing is said. Units are those of the job; changed is told of an answer.
  constructor({ label, all, usual = all && word('drawn.allowance.as all'), units, changed = () => {} }) {
    Object.assign(this, { all, units, changed });
    const choices = ways.map((way) => [way, term(way, 'allowance')]);
    if (usual) choices.unshift(['', usual]);
    const value = usual ? '' : 'unknown';
    this.way = pickOne({ label, choices, value, pick: () => this.picked() });
    this.width = entry({
      label: word('drawn.allowance.width'),
      input: { inputmode: 'decimal', input: () => this.tell(''), change: () => this.changed() },
    });
    this.fault = el('span', { class: 'fault' });
    this.width.element.append(el('span', { class: 'notes', role: 'status' }, this.fault));
    this.elements = [this.way.element, this.width.element];
    this.refresh();
  }

  picked() {
    this.refresh();
    if (!this.hasWidth() || sent(this.width.control.value)) this.changed();
  }

  // show what was said before.
  show(said) {
    const width = said.replace(/^(included|add)\b/, '').trim();
    const way = said === '' || said === 'unknown' ? said : said.startsWith('included') ? 'included' : 'added';
    this.way.control.value = way === 'included' && !width ? 'unknown' : way;
    if (document.activeElement !== this.width.control) this.width.control.value = typed(this.hasWidth() ? width : '');
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
    if (way === '') return this.all ? this.all.said() : '';
    if (way === 'unknown') return way;
    const width = sent(this.width.control.value);
    if (!width) return 'unknown';
    const length = /[a-z"]/i.test(width) ? width : `${width} ${this.units()}`;
    return way === 'included' ? `included ${length}` : length;
  }
}
