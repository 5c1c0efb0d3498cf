// The lines of a quote on its paper: what the client reads of each, and in pencil what is
// reckoned with and is the maker's own. Fields stand where their figures do; what is
// worked out comes beside them and never takes a field away.

import { el, write } from '../element.js';
import { entry } from '../choose.js';
import { Field, labelOf } from '../field.js';
import { sent, term, typed, word } from '../words.js';

// priced are the keys of prices and hours, which are figures.
const priced = new Set(['price', 'remnant_price', 'rate', 'sum']);

// field of the paper, its label unseen but read out.
export function fieldOf(job, path, options = {}) {
  return new Field(job, path, { unseen: true, decimal: priced.has(path.at(-1)), ...options });
}

// Row of the paper: its element, its fields, and where the figures of its line come.
export class Row {
  constructor(fields, { name, called = '', away = null, below = [], figure = null }) {
    this.fields = fields;
    this.called = called;
    this.text = el('span', { class: 'text' }, called);
    this.amount = el('span', { class: 'amountOf' });
    this.cost = el('span', { class: 'figure' });
    this.element = el(
      'li',
      {},
      el('span', { class: 'what' }, name ?? this.text, away),
      el('span', { class: 'much' }, this.amount, figure),
      this.cost,
      below.length > 0 && el('span', { class: 'pencil' }, below),
    );
  }

  // show the line of a quote; or, where there is none, what it will be about.
  show(line) {
    write(this.text, line ? typed(line.text) : this.called);
    write(this.amount, line?.amount && !this.counts ? typed(line.amount) : '');
    write(this.cost, line ? typed(line.cost) : '');
  }

  refresh() {
    this.fields.forEach((field) => field.refresh());
  }
}

const nameAt = (job, path, stem) => term(job.field(...path, 'name')?.value ?? '', stem);

// clothRow of a cloth: its price, or those of its offers.
export function clothRow(job, index) {
  const path = ['cloths', index];
  const of = nameAt(job, path, 'cloth');
  const price = fieldOf(job, [...path, 'price'], { label: word('of what', { what: labelOf(['price']), of }) });
  const offers = offersOf(job, index).map((at) => offerField(job, at));
  if (offers.length) return new Row(offers, { called: of, below: offers.map((field) => field.element) });
  const row = new Row([price], { called: of, figure: price.element });
  row.refresh = () => {
    price.refresh();
    // a margin is in what the client reads of the cloth, whose metre is then unpriced
    row.element.classList.toggle('marked', Boolean(job.field('quote', 'margin')?.value));
  };
  row.refresh();
  return row;
}

// offersOf a cloth are the paths of their prices: of a metre, and of a remnant sold whole.
export const offersOf = (job, index) =>
  job
    .fields('cloths', index, 'offers')
    .filter(({ path }) => path.length === 5 && path[4] === 'name')
    .flatMap(({ path }) => {
      const at = path.slice(0, 4);
      const isSold = Boolean(job.field(...at, 'remnant')?.value);
      return [[...at, 'price'], ...(isSold ? [[...at, 'remnant_price']] : [])];
    });

function offerField(job, path) {
  const of = job.field(...path.slice(0, 4), 'name')?.value ?? '';
  return fieldOf(job, path, { unseen: false, label: word('of what', { what: labelOf(path), of }) });
}

// notionRow of a notion at a path, which can be taken away.
export function notionRow(job, path) {
  const name = fieldOf(job, [...path, 'name'], { label: labelOf(['name']) });
  const count = fieldOf(job, [...path, 'count'], { label: labelOf(['count']) });
  const price = fieldOf(job, [...path, 'price'], { label: labelOf(['price']) });
  count.usual = '1';
  count.refresh();
  const away = el('button', { type: 'button', class: 'plain', click: () => job.act({ unset: { path } }) });
  const row = new Row([name, count, price], {
    name: name.element,
    figure: [count.element, ' × ', price.element],
    away,
  });
  row.counts = true;
  row.refresh = () => {
    row.fields.forEach((field) => field.refresh());
    write(away, word('take away', { n: name.known().value }));
  };
  row.refresh();
  return row;
}

// makingRow of work at a path: a garment's, which is called by it, or one of the whole job.
// What is seldom said of it is folded away.
export function makingRow(job, path) {
  const isGarment = path[0] === 'garments';
  const of = isGarment ? nameAt(job, path.slice(0, 2), 'garment') : (job.field(...path, 'name')?.value ?? '');
  const field = (key) =>
    fieldOf(job, [...path, key], { unseen: false, label: word('of what', { what: labelOf([key]), of }) });
  const [hours, sum, rate] = ['hours', 'sum', 'rate'].map(field);
  const name = isGarment ? null : fieldOf(job, [...path, 'name'], { label: labelOf(['name']) });
  const away = el('button', { type: 'button', class: 'plain', click: () => job.act({ unset: { path } }) });
  write(away, word('take away', { n: of }));
  const row = new Row(name ? [name, hours, sum, rate] : [hours, sum, rate], {
    name: name ? name.element : el('span', { class: 'text' }, of),
    below: [
      hours.element,
      el(
        'details',
        { open: Boolean(sum.known().value || rate.known().value) },
        el('summary', {}, word('options.more')),
        el('span', { class: 'fields' }, sum.element, rate.element),
      ),
    ],
    away: isGarment ? null : away,
  });
  row.counts = true;
  return row;
}

// addingRow adds a line to a list of the quote, of what is asked for it.
export function addingRow(job, path, keys, heading) {
  const entries = keys.map((key) => [
    key,
    entry({ label: labelOf([key]), input: { inputmode: priced.has(key) ? 'decimal' : null } }),
  ]);
  const add = async () => {
    const empty = entries.find(([, one]) => !sent(one.control.value));
    if (empty) return empty[1].control.focus();
    const value = Object.fromEntries(entries.map(([key, one]) => [key, sent(one.control.value)]));
    entries.forEach(([, one]) => {
      one.control.value = '';
    });
    await job.act({ append: { path, value } });
  };
  return el(
    'details',
    { class: 'adding' },
    el('summary', {}, word(heading)),
    el('div', { class: 'fields' }, entries.map(([, one]) => one.element)),
    el('button', { type: 'button', click: add }, word('add it')),
  );
}
