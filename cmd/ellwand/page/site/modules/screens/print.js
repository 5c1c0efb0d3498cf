// Printing: what the commands print, each opened in a new tab.

import { el, fill } from '../element.js';
import { choose, pickOne } from '../choose.js';
import { jobAddress, query } from '../server.js';
import { Faults } from '../field.js';
import { term, typed, word } from '../words.js';

const kinds = ['plan', 'draft', 'pieces', 'marker', 'projector', 'quote'];

export function print(job) {
  const screen = new Print(job);
  return { element: screen.element, refresh: () => screen.refresh() };
}

class Print {
  constructor(job) {
    this.job = job;
    this.faults = new Faults(job);
    this.papers = ['A4', 'A3', 'A2', 'A1', 'A0', 'letter'];
    this.paper = pickOne({
      label: word('print.paper'),
      choices: this.papers.map((paper) => [paper, term(paper)]),
      pick: () => this.link(),
    });
    this.chosen = new Set();
    this.cloths = job.state.cloths ?? [];
    this.cloth =
      this.cloths.length > 1 &&
      choose({
        legend: word('which cloth'),
        className: 'inline',
        value: '',
        pick: (cloth) => {
          this.only = cloth;
          this.link();
        },
        choices: [
          { value: '', text: word('all of them') },
          ...this.cloths.map((cloth) => ({ value: cloth.name, text: term(cloth.name, 'cloth') })),
        ],
      });
    this.links = el('ul', { class: 'prints' });
    this.element = el(
      'div',
      { class: 'sheet' },
      el('h1', {}, word('print.title')),
      el('p', {}, word('print.how')),
      this.faults.element,
      el('div', { class: 'fields' }, this.paper.element),
      this.cloth && this.cloth.element,
      this.some(),
      this.links,
      el('p', { class: 'notes' }, word('print.check')),
    );
  }

  some() {
    const names = [...new Set((this.job.state.pieces ?? []).map((piece) => piece.name))];
    const tick = (name) => (event) => {
      if (event.target.checked) this.chosen.add(name);
      else this.chosen.delete(name);
      this.link();
    };
    return el(
      'details',
      {},
      el('summary', {}, word('print.some')),
      el(
        'ul',
        { class: 'ticks' },
        names.map((name) =>
          el(
            'li',
            {},
            el('label', {}, el('input', { type: 'checkbox', change: tick(name) }), ' ', term(name, 'piece')),
          ),
        ),
      ),
    );
  }

  refresh() {
    this.faults.refresh();
    this.link();
  }

  link() {
    const asked = { paper: this.paper.control.value, cloth: this.only, only: [...this.chosen].join(',') };
    fill(
      this.links,
      kinds.map((kind) =>
        el(
          'li',
          {},
          el(
            'a',
            {
              href: jobAddress(this.job.name, `print/${kind}`) + query(this.wanted(kind, asked)),
              target: '_blank',
              rel: 'noopener',
            },
            word(`print.${kind}`),
          ),
          el('span', { class: 'notes' }, typed(word(`print.${kind}.more`))),
        ),
      ),
    );
  }

  // wanted of a kind: the choices that mean something to it.
  wanted(kind, { paper, cloth, only }) {
    if (kind === 'pieces') return { paper, cloth, only };
    if (kind === 'plan' || kind === 'marker' || kind === 'projector')
      return { paper: kind === 'marker' ? paper : '', cloth };
    return {};
  }
}
