// Printing: what the commands print, each opened in a new tab.

import { el, fill } from '../element.js';
import { choose, pickOne } from '../choose.js';
import { query } from '../server.js';
import { Faults } from '../field.js';
import { wrongFields } from '../standing.js';
import { PrintChoice } from '../printchoice.js';
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
    this.papers = ['a4', 'letter', 'a3', 'a2', 'a1', 'a0'];
    this.paper = pickOne({
      label: word('print.paper'),
      choices: this.papers.map((paper) => [paper, paper === 'letter' ? term(paper) : paper.toUpperCase()]),
      pick: () => this.link(),
    });
    this.cloths = job.state.cloths ?? [];
    this.cloth =
      this.cloths.length > 1 &&
      choose({
        legend: word('which cloth'),
        className: 'inline',
        value: this.cloths[0].name,
        pick: (cloth) => {
          this.only = cloth;
          this.link();
        },
        choices: this.cloths.map((cloth) => ({ value: cloth.name, text: term(cloth.name, 'cloth') })),
      });
    this.choice = new PrintChoice(job, () => this.link());
    this.links = el('ul', { class: 'prints' });
    this.element = el(
      'div',
      { class: 'sheet' },
      el('h1', {}, word('print.title')),
      el('p', {}, word('print.how')),
      this.faults.element,
      el('div', { class: 'fields' }, this.paper.element),
      this.cloth && this.cloth.element,
      this.choice.element,
      this.links,
      el('p', { class: 'notes' }, word('print.check')),
    );
  }

  refresh() {
    this.faults.refresh();
    this.choice.refresh();
    this.link();
  }

  link() {
    const asked = { paper: this.paper.control.value, cloth: this.only };
    fill(
      this.links,
      kinds.map((kind) =>
        el(
          'li',
          {},
          el(
            'a',
            {
              href: this.isNothing(kind) || wrongFields(this.job).length
                ? null
                : `/print/${encodeURIComponent(this.job.name)}/${kind}` + query(this.wanted(kind, asked)),
              target: '_blank',
              rel: 'noopener',
            },
            word(`print.${kind}`),
          ),
          el('span', { class: 'notes' }, typed(word(this.isNothing(kind) ? 'print.nothing' : `print.${kind}.more`))),
        ),
      ),
    );
  }

  // isNothing where all pieces of a kind were left out.
  isNothing(kind) {
    return (kind === 'pieces' || kind === 'projector') && this.choice.isEmpty;
  }

  // wanted of a kind: the choices that mean something to it. A marker goes on a roll
  // unless a paper is chosen that is larger than what is read.
  wanted(kind, { paper, cloth }) {
    if (kind === 'plan') return { paper, cloth };
    if (kind === 'marker') return { paper: paper === 'a4' || paper === 'letter' ? '' : paper, cloth };
    if (kind === 'pieces') return { paper, ...this.choice.asked };
    if (kind === 'projector') return this.choice.asked;
    return { paper };
  }
}
