// The quote on its paper, as the client will see it, written where it stands: its fields are
// made once from the job, and what is worked out is filled in beside them.

import { el, fill, write } from '../element.js';
import { samePath } from '../job.js';
import { money, term, typed, word } from '../words.js';
import { addingRow, clothRow, fieldOf, makingRow, notionRow, offersOf } from './quoterows.js';
import { TextLines } from './textlines.js';

// currencies to choose from, by their codes of ISO 4217; one that a job has besides is added.
const currencies = [
  ...['EUR', 'GBP', 'USD', 'CHF', 'AUD', 'BRL', 'CAD', 'CNY', 'CZK', 'DKK', 'HUF', 'INR', 'JPY', 'MXN', 'NOK', 'NZD'],
  ...['PLN', 'RON', 'SEK', 'TRY', 'ZAR'],
];

export class QuotePaper {
  constructor(job) {
    this.job = job;
    this.rows = new Map();
    this.said = el('div', { class: 'lacking', role: 'status' });
    this.head = this.headed();
    this.lists = Object.fromEntries(['cloth', 'notions', 'making'].map((group) => [group, el('ul', {})]));
    this.sums = this.summed();
    this.terms = new TextLines(job, ['quote', 'terms'], 4);
    this.own = [this.maker, this.terms];
    this.element = el(
      'article',
      { class: 'paper', 'aria-label': word('charge.quote') },
      this.head,
      el('h3', {}, term('cloth', 'group')),
      this.lists.cloth,
      el('p', { class: 'pencil' }, this.margin.element),
      el('h3', {}, term('notions', 'group')),
      this.lists.notions,
      el('div', { class: 'pencil' }, addingRow(job, ['quote', 'notions'], ['name', 'price'], 'quote.another notion')),
      el('h3', {}, term('making', 'group')),
      el('p', { class: 'pencil' }, this.rate.element),
      this.lists.making,
      el('div', { class: 'pencil' }, addingRow(job, ['quote', 'making'], ['name', 'hours'], 'quote.other work')),
      this.said, // below the lines, which stay in their places as it comes and goes
      this.sums,
      this.terms.element,
    );
    this.refresh();
  }

  // field of the paper that is always there.
  field(path, options = {}) {
    const made = fieldOf(this.job, path, { unseen: false, ...options });
    this.fixed = [...(this.fixed ?? []), made];
    return made;
  }

  headed() {
    this.maker = new TextLines(this.job, ['quote', 'maker'], 3);
    this.currency = this.field(['currency'], { names: [currencies, 'currency'] });
    this.rate = this.field(['quote', 'rate']);
    this.margin = this.field(['quote', 'margin']);
    this.number = this.field(['quote', 'number']);
    this.date = this.field(['quote', 'date']);
    this.until = this.field(['quote', 'valid_until']);
    this.days = this.field(['quote', 'valid_days'], { kind: 'count' });
    const heads = [this.number, this.date, this.until, this.days, this.field(['client']), this.field(['job'])];
    return el(
      'div',
      { class: 'head' },
      this.maker.element,
      el('div', { class: 'fields' }, heads.map(({ element }) => element)),
      el('p', { class: 'pencil' }, word('quote.pencil'), ' ', this.currency.element),
    );
  }

  summed() {
    const row = (key, label) => {
      const figure = el('span', { class: 'figure' });
      return [figure, el('li', { class: key }, el('span', { class: 'what' }, label), figure)];
    };
    this.taxed = [this.field(['quote', 'tax', 'name']), this.field(['quote', 'tax', 'rate'])];
    this.deposit = this.field(['quote', 'deposit']);
    const rows = {
      subtotal: row('subtotal', word('quote.subtotal')),
      tax: row('tax', this.taxed.map(({ element }) => element)),
      total: row('total', word('quote.total')),
      deposit: row('deposit', this.deposit.element),
      balance: row('balance', word('quote.balance')),
    };
    this.figures = Object.fromEntries(Object.entries(rows).map(([key, [figure]]) => [key, figure]));
    return el('ul', { class: 'sums' }, Object.values(rows).map(([, line]) => line));
  }

  // fields that are on the paper now.
  get fields() {
    return [...this.fixed, ...[...this.rows.values()].flatMap((row) => row.fields)];
  }

  refresh() {
    this.place();
    const has = (key) => Boolean(this.job.field('quote', key)?.value);
    this.until.element.hidden = has('valid_days') && !has('valid_until');
    this.days.element.hidden = has('valid_until') && !has('valid_days');
    this.fixed.forEach((field) => field.refresh());
    this.own.forEach((field) => field.refresh());
    this.rows.forEach((row) => row.refresh());
  }

  // place the lines that the job has. One that is there already stays as it is, so that the
  // hand that writes in it is not disturbed.
  place() {
    const { job } = this;
    const named = (key) => job.fields(key).filter(({ path }) => path.length === 3 && path[2] === 'name');
    const entries = (...path) => {
      const group = (job.state.groups ?? []).find((one) => samePath(one.path, path));
      return Array.from({ length: group?.entries ?? 0 }, (_, at) => [...path, at]);
    };
    const wanted = { cloth: [], notions: [], making: [] };
    const want = (group, make, path, ...more) =>
      wanted[group].push([JSON.stringify([group, path, more]), () => make(job, path)]);
    for (const { path, value } of named('cloths'))
      want('cloth', (_, at) => clothRow(job, at[1]), path.slice(0, 2), value, offersOf(job, path[1]));
    const garments = named('garments');
    const notions = garments.flatMap(({ path }) => entries(...path.slice(0, 2), 'notions'));
    for (const path of [...notions, ...entries('quote', 'notions')]) want('notions', notionRow, path);
    const works = garments.map(({ path }) => [...path.slice(0, 2), 'making']);
    for (const path of [...works, ...entries('quote', 'making')]) want('making', makingRow, path);
    this.arrange(wanted);
  }

  arrange(wanted) {
    const keys = new Set(Object.values(wanted).flatMap((all) => all.map(([key]) => key)));
    for (const [key, row] of this.rows)
      if (!keys.has(key)) {
        row.element.remove();
        this.rows.delete(key);
      }
    for (const [group, all] of Object.entries(wanted))
      all.forEach(([key, make], i) => {
        if (!this.rows.has(key)) this.rows.set(key, make());
        const list = this.lists[group];
        const { element } = this.rows.get(key);
        if (list.children[i] !== element) list.insertBefore(element, list.children[i] ?? null);
      });
  }

  // rowsOf a group, in their order on the paper.
  rowsOf(group) {
    return [...this.lists[group].children].map((element) =>
      [...this.rows.values()].find((row) => row.element === element),
    );
  }

  // show what was worked out.
  show(quote) {
    fill(this.said);
    const of = (group) => (quote.lines ?? []).filter((line) => line.group === group);
    this.rowsOf('cloth').forEach((row, i) => row.show(of('cloth')[i]));
    this.showNotions(of('notions'));
    const paid = this.rowsOf('making').filter((row) => row.fields.some((field) => isFilled(field)));
    this.rowsOf('making').forEach((row) => row.show());
    paid.forEach((row, i) => row.show(of('making')[i]));
    const isBeforehand = Number(quote.deposit) > 0;
    for (const [key, figure] of Object.entries(this.figures)) {
      const value = key === 'tax' ? quote.tax?.sum : quote[key];
      const isSaid = value && (isBeforehand || !['deposit', 'balance'].includes(key));
      write(figure, isSaid ? money(value, quote.currency) : '');
    }
    this.date.usual = quote.date;
    this.until.usual = quote.valid_until;
    [this.date, this.until].forEach((field) => field.refresh());
  }

  // showNotions: the same at the same price are one line of the quote.
  showNotions(lines) {
    const left = [...lines];
    for (const row of this.rowsOf('notions')) {
      const name = row.fields[0].known().value;
      const at = left.findIndex((line) => line.text === name);
      row.show(left[at]);
      if (at >= 0) left.splice(at, 1);
    }
  }

  // ask in place of the figures.
  ask(children) {
    fill(this.said, children);
    this.rows.forEach((row) => row.show());
    Object.values(this.figures).forEach((figure) => write(figure, ''));
  }

  fault(sentence) {
    this.ask(el('p', { class: 'notes' }, typed(sentence)));
  }
}

const isFilled = (field) => ['hours', 'sum'].includes(field.path.at(-1)) && Boolean(field.known().value);
