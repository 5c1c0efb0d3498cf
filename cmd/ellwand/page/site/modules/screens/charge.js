// Buying and charging: the amounts in each width, offers compared, and the quote as the
// client sees it, with its figures edited beside it.

import { el, fill } from '../element.js';
import { Faults, Field, labelOf } from '../field.js';
import { samePath } from '../job.js';
import { get, jobAddress } from '../server.js';
import { atLeast, buyText, length, metres, term, typed, word } from '../words.js';
import { nextStep } from './next.js';

// pause after a key before all is reckoned anew, ms.
const pause = 250;

// columns of figures.
const figures = new Set(['buy', 'at least', 'cost']);

export function charge(job) {
  const screen = new Charge(job);
  return { element: screen.element, refresh: () => screen.refresh(), leave: () => screen.leave() };
}

class Charge {
  constructor(job) {
    this.job = job;
    this.faults = new Faults(job, () => this.fields);
    this.table = el('section', {});
    this.compared = el('section', {});
    this.paper = el('article', { class: 'paper', 'aria-label': word('charge.quote') });
    this.inputs = el('div', { class: 'fields' });
    this.fields = [];
    this.element = el(
      'div',
      { class: 'sheet wide' },
      el('h1', {}, word('charge.title')),
      this.faults.element,
      this.table,
      this.compared,
      el(
        'section',
        { class: 'beside' },
        el('div', {}, el('h2', {}, word('charge.figures')), this.inputs),
        el('div', {}, el('h2', {}, word('charge.quote')), this.paper),
      ),
      nextStep(job, 'print'),
    );
  }

  refresh() {
    this.place();
    this.fields.forEach((field) => field.refresh());
    this.faults.refresh();
    if (this.read === this.job.state.revision) return;
    this.read = this.job.state.revision;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.readAll(), pause);
  }

  // place the fields that make up the price: those that a quote usually has, and all
  // others that are there.
  place() {
    const named = (key) =>
      this.job
        .fields(key)
        .filter((field) => field.path.length === 3 && field.path[2] === 'name')
        .map((field) => field.path[1]);
    const paths = [
      ['currency'],
      ...named('cloths').flatMap((index) => this.priced(index).map((key) => ['cloths', index, key])),
      ['quote', 'rate'],
      ...named('garments').map((index) => ['garments', index, 'making', 'hours']),
      ...['margin', 'deposit', 'number', 'valid_days'].map((key) => ['quote', key]),
      ['quote', 'tax', 'name'],
      ['quote', 'tax', 'rate'],
    ];
    const given = ['quote', 'cloths', 'garments']
      .flatMap((key) => this.job.fields(key))
      .filter(isPrice)
      .map((field) => field.path);
    const all = [...paths, ...given.filter((path) => !paths.some((other) => samePath(other, path)))];
    const key = JSON.stringify(all);
    if (key === this.placed) return;
    this.placed = key;
    this.fields = all.map((path) => new Field(this.job, path, { label: this.labelled(path) }));
    fill(
      this.inputs,
      this.fields.map((field) => field.element),
    );
  }

  // priced keys of a cloth: one that has offers has its prices there.
  priced(index) {
    const hasOffers = this.job.fields('cloths', index, 'offers').length > 0;
    return hasOffers ? ['fibre', 'step', 'safety'] : ['price', 'fibre', 'step', 'safety'];
  }

  labelled(path) {
    const label = labelOf(path);
    if (path[2] === 'offers')
      return word('of what', { what: label, of: this.job.field(...path.slice(0, 4), 'name')?.value ?? '' });
    if (path[0] === 'cloths')
      return word('of what', {
        what: label,
        of: term(this.job.field('cloths', path[1], 'name')?.value ?? '', 'cloth'),
      });
    if (path[0] === 'garments')
      return word('of what', {
        what: label,
        of: term(this.job.field('garments', path[1], 'name')?.value ?? '', 'garment'),
      });
    return label;
  }

  leave() {
    clearTimeout(this.timer);
    this.stop?.abort();
  }

  async readAll() {
    this.stop?.abort();
    this.stop = new AbortController();
    const { signal } = this.stop;
    await Promise.all([
      this.readInto(this.table, 'table', signal, (found) => this.showTable(found)),
      this.readInto(this.compared, 'compare', signal, (found) => this.showCompared(found)),
      this.readInto(this.paper, 'quote', signal, (found) => this.showQuote(found)),
    ]);
  }

  async readInto(place, what, signal, show) {
    place.setAttribute('aria-busy', 'true');
    try {
      fill(place, show(await get(jobAddress(this.job.name, what), signal)));
    } catch (fault) {
      if (fault.name === 'AbortError') return;
      fill(place, what !== 'compare' && el('p', { class: 'notes' }, typed(fault.message)));
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
    if (rows.length < 2) return null;
    const units = this.job.state.units;
    return titledTable(
      'charge.compared',
      ['cloth', 'offer', 'width', 'buy', 'cost'],
      rows.map((one) => [
        term(one.cloth, 'cloth'),
        one.offer ?? '',
        length(one.width_mm, units),
        metres(one.buy_mm, units),
        typed(one.cost ?? ''),
      ]),
    );
  }

  // showQuote as the client will see it.
  showQuote(quote) {
    const groups = [...new Set((quote.lines ?? []).map((line) => line.group))];
    const sum = (key, value) =>
      value &&
      el(
        'tr',
        { class: key === 'total' ? 'total' : '' },
        el('th', { scope: 'row', colspan: 3 }, word(`quote.${key}`)),
        el('td', { class: 'figure' }, `${typed(value)} ${quote.currency}`),
      );
    return [
      el('h3', {}, quote.job),
      quote.client && el('p', {}, word('quote.for', { client: quote.client })),
      quote.number && el('p', {}, word('quote.number', { number: quote.number })),
      el(
        'div',
        { class: 'scrolls', tabindex: 0, role: 'region', 'aria-label': word('charge.quote') },
        el(
          'table',
          {},
          groups.map((group) =>
            el(
              'tbody',
              {},
              el('tr', {}, el('th', { scope: 'colgroup', colspan: 4 }, term(group, 'group'))),
              quote.lines
                .filter((line) => line.group === group)
                .map((line) =>
                  el(
                    'tr',
                    {},
                    el('td', {}, line.text),
                    el('td', {}, typed(line.amount ?? '')),
                    el('td', {}, typed(line.price ?? '')),
                    el('td', { class: 'figure' }, typed(line.cost)),
                  ),
                ),
            ),
          ),
          el(
            'tbody',
            {},
            sum('subtotal', quote.subtotal),
            quote.tax &&
              el(
                'tr',
                {},
                el('th', { scope: 'row', colspan: 3 }, `${quote.tax.name} ${typed(quote.tax.rate)}`),
                el('td', { class: 'figure' }, `${typed(quote.tax.sum)} ${quote.currency}`),
              ),
            sum('total', quote.total),
            sum('deposit', quote.deposit),
            sum('balance', quote.balance),
          ),
        ),
      ),
    ];
  }
}

// isPrice says that a field that is given belongs to the price.
function isPrice({ path, value }) {
  if (!value) return false;
  if (path[0] === 'quote') return !['date', 'valid_until'].includes(path.at(-1));
  if (path[2] === 'offers') return path.at(-1) === 'price';
  return ['notions', 'making'].includes(path[2]);
}

// titledTable of cells by columns, of which the first heads its row.
function titledTable(title, columns, rows) {
  const kind = (i) => (figures.has(columns[i]) ? 'figure' : null);
  const head = columns.map((key, i) => el('th', { scope: 'col', class: kind(i) }, word(`column.${key}`)));
  const row = ([first, ...rest]) =>
    el(
      'tr',
      {},
      el('th', { scope: 'row' }, first),
      rest.map((cell, i) => el('td', { class: kind(i + 1) }, cell)),
    );
  return [
    el('h2', {}, word(title)),
    el(
      'div',
      { class: 'scrolls', tabindex: 0, role: 'region', 'aria-label': word(title) },
      el('table', {}, el('thead', {}, el('tr', {}, head)), el('tbody', {}, rows.map(row))),
    ),
  ];
}
