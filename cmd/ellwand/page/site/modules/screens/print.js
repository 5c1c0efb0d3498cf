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
    const rows = kinds.map((kind) =>
      this.row(kind, kind, word(this.isNothing(kind) ? 'print.nothing' : `print.${kind}.more`), asked),
    );
    const viewed = this.viewed();
    if (viewed) {
      const said = { cloth: term(viewed.cloth, 'cloth'), lay: term(viewed.lay) };
      rows.splice(1, 0, this.row('plan', 'viewed', word('print.viewed.more', said), { ...asked, ...viewed }));
    }
    fill(this.links, rows);
  }

  // row of a paper: its link, which leads nowhere as long as it would show what is older than
  // what is written.
  row(kind, called, more, asked) {
    const address = `/print/${encodeURIComponent(this.job.name)}/${kind}${query(this.wanted(kind, asked))}`;
    const href = this.isNothing(kind) || wrongFields(this.job).length ? null : address;
    return el(
      'li',
      {},
      el('a', { href, target: '_blank', rel: 'noopener' }, word(`print.${called}`)),
      el('span', { class: 'notes' }, typed(more)),
    );
  }

  // viewed is the lay that was last in view, where it is another one than is recommended.
  viewed() {
    const { viewed, amounts } = this.job;
    const cloth = this.job.state.cloths?.find((one) => one.name === viewed?.cloth);
    if (!cloth?.widths.some(({ width }) => width === viewed.width)) return null;
    const isFirst = viewed.width === cloth.widths[0].width;
    const isRecommended = amounts?.cloths.find((one) => one.name === viewed.cloth)?.chosen === viewed.lay;
    return isFirst && isRecommended ? null : viewed;
  }

  // isNothing where all pieces of a kind were left out.
  isNothing(kind) {
    return (kind === 'pieces' || kind === 'projector') && this.choice.isEmpty;
  }

  // wanted of a kind: the choices that mean something to it. A marker goes on a roll
  // unless a paper is chosen that is larger than what is read.
  wanted(kind, { paper, cloth, width, lay }) {
    if (kind === 'plan') return { paper, cloth, width, lay };
    if (kind === 'marker') return { paper: paper === 'a4' || paper === 'letter' ? '' : paper, cloth };
    if (kind === 'pieces') return { paper, ...this.choice.asked };
    if (kind === 'projector') return this.choice.asked;
    return { paper };
  }
}
