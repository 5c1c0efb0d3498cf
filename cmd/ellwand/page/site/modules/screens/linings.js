// Linings and interfacings of a garment: which pieces have one, and from which cloth.

import { el } from '../element.js';
import { say } from '../say.js';
import { samePath } from '../job.js';
import { term, word } from '../words.js';
import { clothNames, newCloth } from './cutfrom.js';

// What a kind of lining begins with: its cloth, how wide that is, and the pieces.
const kinds = {
  linings: {
    cloth: 'lining',
    width: '140 cm',
    of: /(bodice|sleeve|skirt|trousers)$/,
    keys: ['cloth', 'shorter', 'back_pleat'],
  },
  interfacings: {
    cloth: 'interfacing',
    width: '90 cm',
    of: /(collar|cuff|facing|stand|fall|waistband)/,
    keys: ['cloth', 'reduce', 'cut'],
  },
};

export class Linings {
  constructor(job, index, field) {
    Object.assign(this, { job, index, field });
  }

  // element with both kinds; nothing where no piece can have one.
  element() {
    if (!this.pieces().length || this.job.fields('garments', this.index, 'straight_cut').length) return null;
    return el(
      'fieldset',
      { class: 'block parts' },
      el('legend', {}, word('linings')),
      Object.keys(kinds).map((key) => this.kind(key)),
    );
  }

  // pieces that may have one, by their names.
  pieces() {
    const own = this.job.fields('garments', this.index, 'pieces').map(({ value }) => value);
    const isMine = (one) => one.index === this.index && one.kind === 'shell' && !one.of;
    const all = (this.job.state.pieces ?? []).filter(isMine);
    return [...new Set(all.map((one) => one.name))].filter((name) => !own.includes(name));
  }

  group(...path) {
    return (this.job.state.groups ?? []).find((one) => samePath(one.path, ['garments', this.index, ...path]));
  }

  kind(key) {
    const entries = this.group(key)?.entries ?? 0;
    return [
      Array.from({ length: entries }, (_, at) => this.entry(key, at)),
      entries === 0 && el('button', { type: 'button', click: () => this.add(key) }, word(`add ${key}`)),
    ];
  }

  entry(key, at) {
    const path = ['garments', this.index, key, at];
    const of = this.group(key, at, 'of')?.list ?? [];
    const names = [...new Set([...this.pieces(), ...of])];
    const tick = (name) =>
      el(
        'li',
        {},
        el(
          'label',
          {},
          el('input', { type: 'checkbox', checked: of.includes(name), change: () => this.toggle(path, of, name) }),
          ' ',
          term(name, 'piece'),
        ),
      );
    return el(
      'details',
      { 'data-part': `${key}${at}` },
      el('summary', {}, word(key === 'linings' ? 'a lining' : 'an interfacing')),
      el(
        'fieldset',
        { class: 'ticked' },
        el('legend', {}, word('of which pieces')),
        el('ul', { class: 'ticks' }, names.map(tick)),
      ),
      kinds[key].keys.map((one) => this.field([...path, one])),
      el('button', { type: 'button', class: 'plain', click: () => this.leave(path) }, word(`leave ${key}`)),
    );
  }

  toggle(path, of, name) {
    const next = of.includes(name) ? of.filter((one) => one !== name) : [...of, name];
    if (!next.length) return this.leave(path);
    return this.job.act({ set: { path: [...path, 'of'], value: next } });
  }

  // leave it out, and its cloth with it, where nothing else is cut from that.
  leave(path) {
    const cloth = this.job.field(...path, 'cloth')?.value;
    const others = (this.job.state.pieces ?? []).filter((one) => one.cloth === cloth && one.kind === 'shell');
    const at = clothNames(this.job).indexOf(cloth);
    const used = this.job.fields('garments').filter((one) => one.path.at(-1) === 'cloth' && one.value === cloth);
    const drop = at > 0 && used.length < 2 && !others.length;
    return this.job.act({ unset: { path } }, ...(drop ? [{ unset: { path: ['cloths', at] } }] : []));
  }

  add(key) {
    const { cloth, width, of } = kinds[key];
    const names = this.pieces();
    const some = names.filter((name) => of.test(name));
    const value = { of: some.length ? some : names.slice(0, 1), cloth };
    const known = clothNames(this.job).includes(cloth);
    return this.job
      .act(...(known ? [] : [newCloth(cloth, width)]), {
        append: { path: ['garments', this.index, key], value },
      })
      .then(() => say(word('added', { name: word(key === 'linings' ? 'a lining' : 'an interfacing') })));
  }
}
