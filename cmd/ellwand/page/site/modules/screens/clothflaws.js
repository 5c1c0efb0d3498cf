// The flaws of a cloth: round places that no piece may touch, by where they are.

import { el, fill } from '../element.js';
import { entry } from '../choose.js';
import { say } from '../say.js';
import { samePath } from '../job.js';
import { sent, term, typed, word } from '../words.js';

const listAt = (job, ...path) => (job.state.groups ?? []).find((group) => samePath(group.path, path));

// ClothFlaws is the list of them, and what adds another.
export class ClothFlaws {
  constructor(job, index) {
    Object.assign(this, { job, path: ['cloths', index, 'flaws'] });
    this.element = el('details', { class: 'flaws' });
    this.refresh();
  }

  refresh() {
    const { job, path } = this;
    const count = listAt(job, ...path)?.entries ?? 0;
    const key = JSON.stringify([count, job.fields(...path)]);
    if (key === this.shown) return;
    this.shown = key;
    const isHere = this.element.contains(document.activeElement);
    fill(
      this.element,
      el('summary', {}, word('cloth.flaws', { n: count })),
      el(
        'ol',
        {},
        Array.from({ length: count }, (_, at) => flaw(job, [...path, at], at)),
      ),
      adding(job, path, count),
    );
    if (isHere) this.element.firstChild.focus();
  }
}

function flaw(job, path, at) {
  const name = job.field(...path, 'name')?.value || word('nth flaw', { n: at + 1 });
  const place = listAt(job, ...path, 'at')?.list ?? [];
  const radius = job.field(...path, 'radius')?.value;
  const [along, across] = place.map(typed);
  const where = place.length === 2 && word('flaw.at', { along, across, radius: typed(radius) });
  const leave = () => job.act({ unset: { path } });
  return el(
    'li',
    {},
    [term(name), where].filter(Boolean).join(': '),
    ' ',
    el('button', { type: 'button', class: 'plain', click: leave }, word('take away', { n: at + 1 })),
  );
}

function adding(job, path, count) {
  const unit = job.state.units;
  const [along, across, radius] = ['along', 'across', 'radius'].map((key) => entry({ label: word(key), unit }));
  const add = () => {
    const value = (field) => sent(field.control.value);
    if (![along, across, radius].every(value)) return along.control.focus();
    const one = {
      name: word('nth flaw', { n: count + 1 }),
      at: [value(along), value(across)],
      radius: value(radius),
    };
    return job.act({ append: { path, value: one } }).then(() => say(word('added', { name: one.name })));
  };
  return el(
    'div',
    { class: 'fields' },
    [along, across, radius].map((field) => field.element),
    el('button', { type: 'button', click: add }, word('add flaw')),
  );
}
