// The cloths that the pieces of a job are cut from: another one is added together with the
// pieces that are cut from it, since a cloth that nothing is cut from would be a fault.

import { el, fill } from '../element.js';
import { entry } from '../choose.js';
import { say } from '../say.js';
import { samePath } from '../job.js';
import { sent, term, word } from '../words.js';

// clothNames of a job, in the order of its file.
export const clothNames = (job) =>
  job
    .fields('cloths')
    .filter(({ path }) => path.length === 3 && path[2] === 'name')
    .map(({ value }) => value);

// newCloth as an action.
export const newCloth = (name, width) => ({ append: { path: ['cloths'], value: { name, width } } });

export class CutFrom {
  constructor(job) {
    this.job = job;
    this.element = el('details', { class: 'block parts cutFrom' });
  }

  refresh() {
    const key = JSON.stringify([clothNames(this.job), this.pieces().map(({ name, cloth }) => [name, cloth])]);
    if (key === this.shown) return;
    this.shown = key;
    this.build();
  }

  // pieces that may be cut from another cloth: not those that follow from others, nor those
  // of a file.
  pieces() {
    const isFromFile = ({ index }) => this.job.fields('garments', index, 'pattern').some(({ value }) => value);
    return (this.job.state.pieces ?? []).filter((one) => one.kind === 'shell' && !isFromFile(one));
  }

  build() {
    const all = this.pieces();
    this.element.hidden = all.length < 2;
    const names = clothNames(this.job);
    fill(
      this.element,
      el('summary', {}, word('cloths')),
      names.length > 1 && el('div', { class: 'fields' }, all.map((piece) => this.choice(piece, names))),
      this.another(all),
    );
  }

  choice(piece, names) {
    const id = `cut-${piece.garment}-${piece.name}-${piece.cloth}`.replaceAll(' ', '-');
    const control = el(
      'select',
      { id, change: () => this.job.act(...this.move([piece], control.value)) },
      names.map((name) => el('option', { value: name, selected: name === piece.cloth }, term(name, 'cloth'))),
    );
    return el('div', { class: 'field' }, el('label', { for: id }, term(piece.name, 'piece')), control);
  }

  another(all) {
    const name = entry({ label: word('cloth name') });
    const width = entry({ label: word('cloth width'), unit: this.job.state.units });
    const ticks = all.map((piece) => [piece, el('input', { type: 'checkbox' })]);
    const fault = el('p', { class: 'fault', role: 'status' });
    const add = () => {
      const moved = ticks.filter(([, tick]) => tick.checked).map(([piece]) => piece);
      const called = name.control.value.trim();
      if (!called || !width.control.value.trim() || !moved.length) return fill(fault, word('cloth needs'));
      return this.job
        .act(newCloth(called, sent(width.control.value)), ...this.move(moved, called))
        .then(() => say(word('added', { name: called })));
    };
    return el(
      'details',
      { class: 'adding' },
      el('summary', {}, word('another cloth')),
      el('div', { class: 'fields' }, name.element, width.element),
      el(
        'fieldset',
        { class: 'ticked' },
        el('legend', {}, word('cut from it')),
        el(
          'ul',
          { class: 'ticks' },
          ticks.map(([piece, tick]) => el('li', {}, el('label', {}, tick, ' ', term(piece.name, 'piece')))),
        ),
      ),
      fault,
      el('button', { type: 'button', click: add }, word('add it')),
    );
  }

  // move pieces to a cloth, as actions. A cloth that nothing is cut from any more goes away.
  move(moved, cloth) {
    const { job } = this;
    const lists = new Map();
    const actions = [];
    const listOf = (index, name) => {
      const path = ['garments', index, 'cut_from', name];
      const key = JSON.stringify(path);
      if (!lists.has(key)) {
        const found = (job.state.groups ?? []).find((one) => samePath(one.path, path));
        lists.set(key, { path, before: found?.list ?? [], list: [...(found?.list ?? [])] });
      }
      return lists.get(key);
    };
    for (const piece of moved) {
      const own = job
        .fields('garments', piece.index, 'pieces')
        .find(({ path, value }) => path.length === 5 && path[4] === 'name' && value === piece.name);
      if (own) actions.push({ set: { path: [...own.path.slice(0, 4), 'cloth'], value: cloth } });
      else {
        const from = listOf(piece.index, piece.cloth);
        from.list = from.list.filter((name) => name !== piece.name);
        listOf(piece.index, cloth).list.push(piece.name);
      }
    }
    for (const { path, before, list } of lists.values())
      if (list.length) actions.push({ set: { path, value: list } });
      else if (before.length) actions.push({ unset: { path } });
    return [...actions, ...this.emptied(moved, cloth)];
  }

  // emptied cloths, the last one first, so that those before keep their places.
  emptied(moved, cloth) {
    const stays = (name) =>
      name === cloth || (this.job.state.pieces ?? []).some((one) => one.cloth === name && !moved.includes(one));
    return clothNames(this.job)
      .map((name, at) => [name, at])
      .filter(([name]) => !stays(name))
      .reverse()
      .map(([, at]) => ({ unset: { path: ['cloths', at] } }));
  }
}
