// The table of amounts by size, nap and width: chosen, searched for, stopped.

import { el, fill, fresh, write } from '../element.js';
import { entry } from '../choose.js';
import { jobAddress, post, query } from '../server.js';
import { failed, say } from '../say.js';
import { boughtText, buyText, length, lengths, listed, refusal, term, typed, word } from '../words.js';

// pause after the question has changed before it is asked again, ms.
const pause = 400;

export class SizeTable {
  constructor(job) {
    this.job = job;
    this.sizes = el('fieldset', { class: 'sizes' });
    this.widths = entry({
      label: word('sizes.widths'),
      hint: word('sizes.widths.hint'),
      input: { input: () => this.changed() },
    });
    this.start = el('button', { type: 'button', click: () => this.ask() }, word('sizes.lay'));
    this.halt = el('button', { type: 'button', class: 'stop', hidden: true, click: () => this.stop() }, word('stop'));
    this.bar = el('progress', { 'aria-label': word('sizes.title'), hidden: true });
    this.far = el('span', { class: 'progress' });
    this.found = el('div', {});
    this.element = el(
      'section',
      { class: 'bySize' },
      el('h2', {}, word('sizes.title')),
      el('div', { class: 'options' }, this.sizes, this.widths.element),
      el('p', { class: 'buttons' }, this.start, this.halt, this.bar, this.far),
      this.found,
    );
  }

  // refresh the sizes that there are; a table that is shown or under way is asked for anew
  // where the job has changed.
  refresh() {
    const { revision, sizes, size } = this.job.state;
    const shownWidths = (this.job.state.cloths ?? []).flatMap((cloth) => cloth.widths.map((one) => one.label));
    this.widths.control.placeholder = [...new Set(shownWidths)].join('; ');
    const key = JSON.stringify(sizes);
    if (key !== this.offered) this.offer(sizes ?? [], size);
    this.offered = key;
    const isNew = this.revision !== undefined && this.revision !== revision;
    this.revision = revision;
    if (isNew) this.changed();
  }

  offer(sizes, size) {
    const ticked = new Set(this.chosen());
    if (!ticked.size) ticked.add(size);
    fill(
      this.sizes,
      el('legend', {}, word('sizes.which')),
      sizes.length
        ? el(
            'div',
            { class: 'choices' },
            sizes.map((one) => this.tick(one, ticked.has(one))),
          )
        : el('p', { class: 'notes' }, word('sizes.of a body')),
    );
  }

  tick(size, checked) {
    return el(
      'label',
      { class: 'tick' },
      el('input', { type: 'checkbox', value: size, checked, change: () => this.changed() }),
      el('span', {}, size),
    );
  }

  chosen() {
    return [...this.sizes.querySelectorAll('input:checked')].map((input) => input.value);
  }

  // changed question: what is under way answers none any more.
  changed() {
    if (!this.asked) return;
    this.leave();
    this.timer = setTimeout(() => this.ask(), pause);
  }

  leave() {
    clearTimeout(this.timer);
    this.source?.close();
    this.source = null;
  }

  // ask for the table as it is chosen, and follow the search.
  ask() {
    this.leave();
    this.asked = true;
    const widths = lengths(this.widths.control.value, this.job.state.units);
    this.widths.control.setAttribute('aria-invalid', widths === null);
    if (widths === null) return this.over(word('refused.no width'));
    this.word = fresh(`table-${Date.now()}`);
    const address = jobAddress(this.job.name, 'sizes') + query({ size: this.chosen(), width: widths, word: this.word });
    const source = new EventSource(address);
    this.source = source;
    const hear = (kind, act) => source.addEventListener(kind, (event) => act(JSON.parse(event.data)));
    hear('begun', () => this.searching());
    hear('counted', (counted) => this.count(counted));
    hear('table', (table) => this.show(table));
    hear('refused', (refused) => this.over(refusal(refused)));
    source.addEventListener('error', () => source === this.source && this.over(word('sizes.no answer')));
  }

  searching() {
    this.found.setAttribute('aria-busy', 'true');
    this.halt.hidden = false;
    this.bar.hidden = false;
    this.bar.removeAttribute('value');
    write(this.far, word('laying'));
    say(word('laying'));
  }

  count({ over, all }) {
    this.bar.max = all;
    this.bar.value = over;
    write(this.far, word('sizes.counted', { n: over, all }));
  }

  // stop the search: what it has found by then is shown.
  async stop() {
    try {
      await post(jobAddress(this.job.name, 'sizes/stop'), { word: this.word });
    } catch (fault) {
      failed(fault);
    }
  }

  // over: there is a table, or a sentence in its place.
  over(sentence, table = null) {
    this.leave();
    this.found.removeAttribute('aria-busy');
    this.halt.hidden = true;
    this.bar.hidden = true;
    write(this.far, '');
    fill(this.found, table ?? el('p', { class: 'fault' }, sentence));
    say(sentence);
  }

  show(table) {
    const missing = table.cells.filter((cell) => cell.left_out).length;
    const said = table.ended_early
      ? word('sizes.stopped', { n: missing, all: table.cells.length })
      : word('sizes.done', { n: table.cells.length });
    const cloths = [...new Set(table.cells.map((cell) => cell.cloth))];
    this.over(said, [
      table.ended_early && el('p', { class: 'notes' }, said),
      cloths.map((cloth) => this.clothTable(cloth, table.cells.filter((cell) => cell.cloth === cloth))),
    ]);
  }

  clothTable(cloth, cells) {
    const { units } = this.job.state;
    const widths = [...new Set(cells.map((cell) => cell.width_mm))];
    const rows = [...new Set(cells.map((cell) => cell.row))];
    const name = term(cloth, 'cloth');
    const label = word('of what', { what: word('sizes.title'), of: name });
    return [
      el('h3', {}, name),
      el(
        'div',
        { class: 'scrolls', tabindex: 0, role: 'region', 'aria-label': label },
        el(
          'table',
          {},
          el(
            'thead',
            {},
            el(
              'tr',
              {},
              ['column.size', 'column.nap'].map((key) => el('th', { scope: 'col' }, word(key))),
              widths.map((width) => el('th', { scope: 'col', class: 'figure' }, length(width, units))),
            ),
          ),
          rows.map((row) => el('tbody', {}, this.rowsOf(cells.filter((cell) => cell.row === row), units))),
        ),
      ),
      notesOf(cells, units).map((note) => el('p', { class: 'notes' }, note)),
    ];
  }

  // rowsOf one size or garment: one for each nap.
  rowsOf(cells, units) {
    const naps = [...new Set(cells.map((cell) => cell.nap))];
    const head = el('th', { scope: 'rowgroup', rowspan: naps.length }, rowText(cells[0]));
    const amount = (cell) => el('td', { class: 'figure' }, ...cellTexts(cell, units));
    return naps.map((nap, i) =>
      el(
        'tr',
        {},
        i === 0 && head,
        el('th', { scope: 'row', class: 'nap' }, word(`sizes.${nap}`)),
        cells.filter((cell) => cell.nap === nap).map(amount),
      ),
    );
  }
}

const rowText = ({ garment, size }) =>
  size ? word('sizes.row', { garment: term(garment, 'garment'), size }) : term(garment, 'garment');

function cellTexts(cell, units) {
  if (cell.left_out) return [word('sizes.not laid')];
  if (cell.refused) return [word('sizes.not possible')];
  const { low_mm: low, high_mm: high } = cell.range;
  const range = word('sizes.range', { low: boughtText(low, units), high: boughtText(high, units) });
  const isSure = Math.abs(high - low) < 1;
  return [buyText(cell, units), cell.raised && '\u00a0*', !isSure && el('span', { class: 'range' }, range)];
}

// notesOf the cells of a cloth: why some are empty, and what is marked.
function notesOf(cells, units) {
  const why = new Map();
  for (const cell of cells.filter((one) => one.refused && !one.left_out)) {
    const where = `${rowText(cell)}, ${length(cell.width_mm, units)}`;
    why.set(cell.refused, [...new Set([...(why.get(cell.refused) ?? []), where])]);
  }
  const refused = [...why].map(([sentence, where]) =>
    word('of what', { what: listed(where), of: typed(sentence) }),
  );
  const isRaised = cells.some((cell) => cell.raised);
  return [...refused, ...(isRaised ? [word('sizes.raised')] : [])];
}
