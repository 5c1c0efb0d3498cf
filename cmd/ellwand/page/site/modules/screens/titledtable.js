// Tables of figures.

import { el } from '../element.js';
import { word } from '../words.js';

// columns of figures.
const figures = new Set(['buy', 'at least', 'cost']);

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
