// Buying and charging: the amounts in each width, offers compared, and the quote on its
// paper.

import { el, fill } from '../element.js';
import { Faults, Field, labelOf } from '../field.js';
import { get, jobAddress } from '../server.js';
import { atLeast, boughtText, buyText, length, money, term, typed, word } from '../words.js';
import { nextStep } from './next.js';
import { QuotePaper } from './quotepaper.js';
import { SizeTable } from './sizetable.js';
import { titledTable } from './titledtable.js';

// pause after a key before all is reckoned anew, ms.
const pause = 250;

export function charge(job) {
  const screen = new Charge(job);
  return { element: screen.element, refresh: () => screen.refresh(), leave: () => screen.leave() };
}

class Charge {
  constructor(job) {
    this.job = job;
    this.faults = new Faults(job, () => [...this.fields, ...this.paper.fields]);
    this.table = el('section', {});
    this.sizes = new SizeTable(job);
    this.compared = el('section', {});
    this.paper = new QuotePaper(job);
    this.goods = el('div', { class: 'fields' });
    this.fields = [];
    this.element = el(
      'div',
      { class: 'sheet wide' },
      el('h1', {}, word('charge.title')),
      this.faults.element,
      this.table,
      el('details', {}, el('summary', {}, word('charge.goods')), this.goods),
      this.sizes.element,
      this.compared,
      el('section', {}, el('h2', {}, word('charge.quote')), this.paper.element),
      nextStep(job, 'print'),
    );
  }

  refresh() {
    this.place();
    this.fields.forEach((field) => field.refresh());
    this.paper.refresh();
    this.faults.refresh();
    this.sizes.refresh();
    if (this.read === this.job.state.revision) return;
    this.read = this.job.state.revision;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.readAll(), pause);
  }

  // place the fields of what is bought of each cloth.
  place() {
    const paths = this.job
      .fields('cloths')
      .filter(({ path }) => path.length === 3 && path[2] === 'name')
      .flatMap(({ path }) => ['fibre', 'step', 'safety'].map((key) => ['cloths', path[1], key]));
    const key = JSON.stringify(paths);
    if (key === this.placed) return;
    this.placed = key;
    this.fields = paths.map((path) => {
      const of = term(this.job.field('cloths', path[1], 'name')?.value ?? '', 'cloth');
      return new Field(this.job, path, { label: word('of what', { what: labelOf(path), of }) });
    });
    fill(
      this.goods,
      this.fields.map((field) => field.element),
    );
  }

  // lacking are the fields that must be filled in before there is a quote.
  lacking() {
    const isPriced = (index) =>
      this.job.field('cloths', index, 'price')?.value || this.job.fields('cloths', index, 'offers').length > 0;
    return this.paper.fields.filter(({ job, path }) => {
      if (path.length === 1) return path[0] === 'currency' && !job.field('currency')?.value;
      return path[0] === 'cloths' && path[2] === 'price' && !isPriced(path[1]);
    });
  }

  // showLacking in the place of the quote: each leads to its field.
  showLacking(fields) {
    const go = (field) => () => field.control.focus();
    return [
      el('p', {}, word('charge.lacks')),
      el(
        'ul',
        { class: 'lacks' },
        fields.map((field) =>
          el(
            'li',
            {},
            el(
              'button',
              { type: 'button', class: 'plain', click: go(field) },
              field.options.label ?? labelOf(field.path),
            ),
          ),
        ),
      ),
    ];
  }

  leave() {
    clearTimeout(this.timer);
    this.sizes.leave();
    this.stop?.abort();
  }

  async readAll() {
    this.stop?.abort();
    this.stop = new AbortController();
    const { signal } = this.stop;
    const lacks = this.lacking();
    if (lacks.length) {
      fill(this.compared);
      this.paper.ask(this.showLacking(lacks));
    }
    await Promise.all([
      this.readInto(this.table, 'table', signal, (found) => fill(this.table, this.showTable(found))),
      !lacks.length && this.readInto(this.compared, 'compare', signal, (found) => this.showCompared(found)),
      !lacks.length && this.readInto(this.paper.element, 'quote', signal, (found) => this.paper.show(found)),
    ]);
  }

  async readInto(place, what, signal, show) {
    place.setAttribute('aria-busy', 'true');
    try {
      show(await get(jobAddress(this.job.name, what), signal));
    } catch (fault) {
      if (fault.name === 'AbortError') return;
      if (what === 'quote') this.paper.fault(fault.message);
      else fill(place, what !== 'compare' && el('p', { class: 'notes' }, typed(fault.message)));
    }
    place.removeAttribute('aria-busy');
  }

  // showTable of amounts: a row for a cloth and width.
  showTable(found) {
    const units = this.job.state.units;
    return titledTable(
      'charge.table',
      ['cloth', 'width', 'how laid', 'buy', 'at least'],
      (found.cloths ?? []).map((one) => [
        term(one.name, 'cloth'),
        length(one.width_mm, units),
        term(one.chosen),
        buyText(one, units),
        one.lays?.length ? atLeast(Math.min(...one.lays.map((lay) => lay.bound_mm)), units) : '',
      ]),
    );
  }

  showCompared(found) {
    const rows = (found.cloths ?? []).flatMap((cloth) =>
      (cloth.options ?? []).map((option) => ({ cloth: cloth.cloth ?? cloth.name, ...option })),
    );
    if (rows.length < 2) return fill(this.compared);
    const units = this.job.state.units;
    const table = titledTable(
      'charge.compared',
      ['cloth', 'offer', 'width', 'buy', 'cost'],
      rows.map((one) => [
        term(one.cloth, 'cloth'),
        one.offer ?? '',
        length(one.width_mm, units),
        one.buy_mm === undefined ? word('charge.not enough') : boughtText(one.buy_mm, units),
        money(one.cost ?? '', found.currency),
      ]),
    );
    return fill(this.compared, table);
  }
}
