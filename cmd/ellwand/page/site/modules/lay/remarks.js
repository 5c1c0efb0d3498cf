// What is said above a lay: faults of the job, and what is wrong cloth if it is not meant so,
// pieces without a left one and outlines of unknown allowance.

import { el, fill } from '../element.js';
import { Faults } from '../field.js';
import { term, word } from '../words.js';

export class Remarks {
  constructor(job, fields) {
    this.job = job;
    this.faults = new Faults(job, fields);
    this.cautions = el('div', { role: 'status' });
    this.element = el('div', {}, this.faults.element, this.cautions);
  }

  refresh() {
    this.faults.refresh();
    const all = this.job.state.pieces ?? [];
    const names = (list) => [...new Set(list.map(({ name }) => term(name, 'piece')))].join(', ');
    const told = [
      ['cautions.hands', names(all.filter((piece) => piece.one_handed))],
      ['cautions.unknown', names(all.filter((piece) => piece.unknown))],
    ].filter(([, list]) => list);
    const key = JSON.stringify(told);
    if (key === this.shown) return;
    this.shown = key;
    fill(
      this.cautions,
      told.map(([sentence, list]) => el('p', { class: 'doubt' }, word(sentence, { names: list }))),
    );
  }
}
