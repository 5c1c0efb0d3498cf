// Buying and charging: the amounts in each width, offers compared, and the quote as the
// client sees it, with its figures edited beside it.

import { el, fill } from '../element.js';
import { Faults, Field, labelOf } from '../field.js';
import { samePath } from '../job.js';
import { get, jobAddress } from '../server.js';
import { atLeast, boughtText, buyText, length, money, term, typed, word } from '../words.js';
import { nextStep } from './next.js';
import { quotePaper, titledTable } from './quotepaper.js';
import { SizeTable } from './sizetable.js';

// pause after a key before all is reckoned anew, ms.
const pause = 250;

// currencies to choose from, by their codes of ISO 4217; one that a job has besides is added.
const currencies = [
  ...['EUR', 'GBP', 'USD', 'CHF', 'AUD', 'BRL', 'CAD', 'CNY', 'CZK', 'DKK', 'HUF', 'INR', 'JPY', 'MXN', 'NOK', 'NZD'],
  ...['PLN', 'RON', 'SEK', 'TRY', 'ZAR'],
];

export function charge(job) {
  const screen = new Charge(job);
  return { element: screen.element, refresh: () => screen.refresh(), leave: () => screen.leave() };
}

class Charge {
  constructor(job) {
    this.job = job;
    this.faults = new Faults(job, () => this.fields);
    this.table = el('section', {});
    this.sizes = new SizeTable(job);
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
      this.sizes.element,
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
    this.sizes.refresh();
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
      ...['margin', 'deposit'].map((key) => ['quote', key]),
    ];
    const others = [
      ...['number', 'valid_days'].map((key) => ['quote', key]),
      ['quote', 'tax', 'name'],
      ['quote', 'tax', 'rate'],
      ...named('cloths').flatMap((index) => ['fibre', 'step', 'safety'].map((key) => ['cloths', index, key])),
    ];
    const given = ['quote', 'cloths', 'garments']
      .flatMap((key) => this.job.fields(key))
      .filter(isPrice)
      .map((field) => field.path);
    const isNamed = (path) => [...paths, ...others].some((other) => samePath(other, path));
    const first = [...paths, ...given.filter((path) => !isNamed(path))];
    const key = JSON.stringify([first, others]);
    if (key === this.placed) return;
    this.placed = key;
    const fields = (all) => all.map((path) => new Field(this.job, path, this.options(path)));
    const [asked, more] = [fields(first), fields(others)];
    this.fields = [...asked, ...more];
    const isOpen = this.inputs.querySelector('details')?.open ?? false;
    fill(
      this.inputs,
      asked.map((field) => field.element),
      el(
        'details',
        { open: isOpen },
        el('summary', {}, word('options.more')),
        el(
          'div',
          { class: 'fields' },
          more.map((field) => field.element),
        ),
      ),
    );
  }

  // options of the field at a path.
  options(path) {
    const label = this.labelled(path);
    return path[0] === 'currency' ? { label, names: [currencies, 'currency'] } : { label };
  }

  // lacking are the fields that must be filled in before there is a quote.
  lacking() {
    const isPriced = (index) =>
      this.job.field('cloths', index, 'price')?.value || this.job.fields('cloths', index, 'offers').length > 0;
    return this.fields.filter(({ job, path }) => {
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
            el('button', { type: 'button', class: 'plain', click: go(field) }, field.options.label),
          ),
        ),
      ),
    ];
  }

  // priced keys of a cloth: one that has offers has its prices there.
  priced(index) {
    const hasOffers = this.job.fields('cloths', index, 'offers').length > 0;
    return hasOffers ? [] : ['price'];
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
      fill(this.paper, this.showLacking(lacks));
    }
    await Promise.all([
      this.readInto(this.table, 'table', signal, (found) => this.showTable(found)),
      !lacks.length && this.readInto(this.compared, 'compare', signal, (found) => this.showCompared(found)),
      !lacks.length && this.readInto(this.paper, 'quote', signal, (found) => quotePaper(found)),
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
        one.buy_mm === undefined ? word('charge.not enough') : boughtText(one.buy_mm, units),
        money(one.cost ?? '', found.currency),
      ]),
    );
  }
}

// isPrice says that a field that is given belongs to the price.
function isPrice({ path, value }) {
  if (!value) return false;
  if (path[0] === 'quote') return !['date', 'valid_until'].includes(path.at(-1));
  if (path[2] === 'offers') return path.at(-1) === 'price';
  return ['notions', 'making'].includes(path[2]);
}
