// The parts of a garment: collars, cuffs, facings, bands, pockets; each with the few things
// that are asked of its kind.

import { el } from '../element.js';
import { pickOne } from '../choose.js';
import { say } from '../say.js';
import { samePath } from '../job.js';
import { term, word } from '../words.js';

// What is asked of each kind first; the rest stands under More.
const asked = {
  'shirt collar': ['depth', 'stand'],
  'flat collar': ['depth', 'overlap'],
  'buttoned cuff': ['depth'],
  'sleeve placket': ['depth', 'length'],
  'gathered skirt': ['depth', 'fullness'],
  'straight panel': ['depth', 'length'],
  'bias strip': ['depth', 'length'],
  'patch pocket': ['shape', 'depth', 'length'],
  'pocket bag': ['length'],
  facing: ['of', 'edge', 'depth'],
  waistband: ['depth', 'grain', 'joins'],
  belt: ['depth', 'length'],
  tie: ['depth', 'length'],
};
const usual = ['depth'];

// What a kind cannot do without begins with these.
const begun = {
  'gathered skirt': { depth: '60 cm' },
  'straight panel': { depth: '60 cm', length: '60 cm' },
  'bias strip': { length: '200 cm' },
};

export class Parts {
  constructor(job, index, field) {
    Object.assign(this, { job, index, field, path: ['garments', index, 'parts'] });
  }

  // element with all parts, and what adds another; nothing where the garment may have none.
  element() {
    const group = (this.job.state.groups ?? []).find((one) => samePath(one.path, this.path));
    if (!group?.kinds || (!group.entries && this.isPattern())) return null;
    return el(
      'fieldset',
      { class: 'block parts' },
      el('legend', {}, word('parts')),
      Array.from({ length: group.entries ?? 0 }, (_, at) => this.part(at)),
      this.adding(group),
    );
  }

  // isPattern says that all pieces come from a file, so that no part can be drafted to them.
  isPattern() {
    const mine = (this.job.state.pieces ?? []).filter(({ index }) => index === this.index);
    return mine.length > 0 && mine.every(({ of }) => of);
  }

  part(at) {
    const all = this.job.fields(...this.path, at).filter((one) => one.path.length === 5);
    const kind = all.find((one) => one.path[4] === 'kind')?.value ?? '';
    const first = asked[kind] ?? usual;
    const of = (keys) =>
      keys
        .map((key) => all.find((one) => one.path[4] === key))
        .filter(Boolean)
        .map(({ path }) => this.field(path));
    const rest = all.map(({ path }) => path[4]).filter((key) => ![...first, 'kind', 'cloth'].includes(key));
    const name = all.find((one) => one.path[4] === 'name')?.value || term(kind, 'part');
    return el(
      'details',
      { 'data-part': at },
      el('summary', {}, name),
      of(first),
      el('details', {}, el('summary', {}, word('options.more')), of(rest)),
      el(
        'button',
        { type: 'button', class: 'plain', click: () => this.leave(at, name) },
        word('leave out', { name }),
      ),
    );
  }

  leave(at, name) {
    return this.job.act({ unset: { path: [...this.path, at] } }).then(() => say(word('left out', { name })));
  }

  adding(group) {
    const pick = pickOne({
      label: word('another part'),
      choices: group.kinds.map((kind) => [kind, term(kind, 'part')]),
    });
    const add = () => this.add(pick.control.value);
    const button = el('button', { type: 'button', click: add }, word('add it'));
    return el('div', { class: 'adding' }, pick.element, button);
  }

  add(kind) {
    const value = { kind, ...begun[kind] };
    if (kind === 'facing') Object.assign(value, this.faced());
    const added = () => say(word('added', { name: term(kind, 'part') }));
    return this.job.act({ append: { path: this.path, value } }).then(added);
  }

  // faced is an edge that a facing may begin with.
  faced() {
    const piece = (this.job.state.pieces ?? []).find((one) => one.index === this.index);
    const edge = piece?.edges.find((one) => !one.fold);
    return edge ? { of: piece.name, edge: edge.name } : {};
  }
}
