// A pattern of one's own: rectangles, a table of offsets read with a tape, or a file.

import { el } from '../element.js';
import { entry, pickOne } from '../choose.js';
import { DrawnFile } from '../drawnfile.js';
import { post } from '../server.js';
import { listen } from '../stream.js';
import { failed } from '../say.js';
import { sent, term, word } from '../words.js';

// kept is the form as it was filled in, for who comes back to it.
let kept = null;

export function pattern() {
  kept ??= new Pattern();
  const screen = kept;
  const events = listen('jobs', () => {});
  return { element: screen.element, leave: () => events.close() };
}

class Pattern {
  constructor() {
    this.rows = [];
    this.list = el('ol', { class: 'rows' });
    this.title = entry({ label: word('label.job'), value: '', input: { required: true } });
    this.units = pickOne({
      label: word('units'),
      choices: ['cm', 'mm', 'in'].map((unit) => [unit, term(unit, 'unit')]),
      pick: () => this.file.refresh(),
    });
    this.width = entry({ label: word('cloth width'), value: '140', input: { required: true } });
    this.file = new DrawnFile(
      (file) => this.named(file),
      () => this.units.control.value,
    );
    this.element = el(
      'div',
      { class: 'sheet' },
      el('h1', {}, word('pattern.title')),
      el('p', {}, word('pattern.how')),
      el(
        'form',
        { submit: (event) => this.make(event) },
        el('div', { class: 'fields' }, this.title.element, this.units.element, this.width.element),
        el('h2', {}, word('pattern.from file')),
        this.file.element,
        el('h2', {}, word('pattern.pieces')),
        this.list,
        el(
          'p',
          { class: 'buttons' },
          el('button', { type: 'button', click: () => this.add('rectangle') }, word('pattern.rectangle')),
          el('button', { type: 'button', click: () => this.add('offsets') }, word('pattern.offsets')),
        ),
        el('p', { class: 'buttons' }, el('button', { class: 'main' }, word('pattern.make')),
          el('button', { type: 'button', click: () => this.clear() }, word('pattern.clear'))),
      ),
    );
    this.add('rectangle');
  }

  // named after the file that was chosen, where the job has no name yet, and without the
  // empty piece that waited to be filled in.
  named(file) {
    const { control } = this.title;
    if (!control.value.trim()) control.value = file.name.replace(/\.[^.]*$/, '').replaceAll(/[-_]+/g, ' ');
    this.rows
      .filter(({ fields }) => fields.every(([key, field]) => key === 'cut' || !field.control.value))
      .forEach((row) => this.take(row));
  }

  // clear the form: a fresh one stands in its place.
  clear() {
    kept = new Pattern();
    this.element.replaceWith(kept.element);
  }

  add(kind) {
    const keys =
      kind === 'rectangle' ? ['name', 'width', 'height', 'cut'] : ['name', 'length', 'every', 'across', 'cut'];
    const fields = keys.map((key) => [
      key,
      entry({
        label: term(`piece.${key}`, 'label'),
        value: key === 'cut' ? '1' : '',
        hint: key === 'across' ? word('pattern.across') : '',
      }),
    ]);
    const fold = el('input', { type: 'checkbox' });
    const row = { kind, fields, fold };
    row.element = el(
      'li',
      {},
      el(
        'div',
        { class: 'fields' },
        fields.map(([, field]) => field.element),
      ),
      kind === 'offsets' && el('label', { class: 'tick' }, fold, ' ', word('pattern.fold')),
      el('button', { type: 'button', class: 'plain', click: () => this.take(row) }, word('pattern.take')),
    );
    this.rows.push(row);
    this.list.append(row.element);
    if (this.rows.length > 1) fields[0][1].control.focus();
  }

  take(row) {
    this.rows = this.rows.filter((one) => one !== row);
    row.element.remove();
  }

  pieceOf({ kind, fields, fold }) {
    const value = Object.fromEntries(fields.map(([key, field]) => [key, sent(field.control.value)]));
    if (kind === 'rectangle') return value;
    const across = value.across.split(/\s*[;\n]\s*|\s+/).filter(Boolean);
    const edges = { left: fold.checked ? 'centre front' : 'left', right: 'side', top: 'top', bottom: 'hem' };
    return {
      name: value.name,
      cut: value.cut,
      fold: fold.checked ? 'centre front' : undefined,
      offsets: { length: value.length, every: value.every, across, edges },
    };
  }

  async make(event) {
    event.preventDefault();
    if (this.file.refused()) return;
    const body = {
      from: 'pattern',
      title: this.title.control.value.trim(),
      units: this.units.control.value,
      width: sent(this.width.control.value),
      pieces: this.rows.map((row) => this.pieceOf(row)).filter((piece) => piece.name),
    };
    try {
      body.file = await this.file.wanted();
      const made = await post('/api/jobs', body);
      location.hash = `#/job/${encodeURIComponent(made.job)}/lay`;
    } catch (fault) {
      failed(fault);
    }
  }
}
