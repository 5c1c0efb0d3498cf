// A quote as the client will see it, and tables of figures.

import { el } from '../element.js';
import { money, term, typed, word } from '../words.js';

// columns of figures.
const figures = new Set(['buy', 'at least', 'cost']);

// quotePaper shows a quote as the client will see it.
export function quotePaper(quote) {
  const groups = [...new Set((quote.lines ?? []).map((line) => line.group))];
  const sum = (key, value) =>
    value &&
    el(
      'tr',
      { class: key === 'total' ? 'total' : '' },
      el('th', { scope: 'row', colspan: 3 }, word(`quote.${key}`)),
      el('td', { class: 'figure' }, money(value, quote.currency)),
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
              el('td', { class: 'figure' }, money(quote.tax.sum, quote.currency)),
            ),
          sum('total', quote.total),
          Number(quote.deposit) > 0 && sum('deposit', quote.deposit),
          Number(quote.deposit) > 0 && sum('balance', quote.balance),
        ),
      ),
    ),
  ];
}

// titledTable of cells by columns, of which the first heads its row.
export function titledTable(title, columns, rows) {
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
