// What a cloth is: its widths, its nap, and what is added to its length.

import { el, fill, set, write } from '../element.js';
import { entry } from '../choose.js';
import { Field, faultOf } from '../field.js';
import { guessText } from '../narrow.js';
import { samePath } from '../job.js';
import { asSentence, sent, term, typed, word } from '../words.js';
import { ClothFlaws } from './clothflaws.js';

// keys that are asked for each cloth, the usual ones first.
const usual = ['nap', 'fibre', 'selvedge', 'gap'];
const others = [
  'width_measured',
  'straighten',
  'hand_laying',
  'safety',
  'step',
  'minimum',
  'tilt',
  'alike_both_sides',
];

// nested keys, of what the cloth does in the wash and of its print.
const nested = [
  ['shrinkage', 'warp', 'text'],
  ['shrinkage', 'weft', 'text'],
  ['repeat', 'along', 'measure'],
  ['repeat', 'across', 'measure'],
  ['repeat', 'even', 'yesno'],
];

export class ClothForm {
  constructor(job) {
    this.job = job;
    this.element = el('div', { class: 'clothForms' });
    this.fields = [];
    this.flaws = [];
    this.widthEntries = [];
  }

  // show the form of the cloth that is in view.
  show(name) {
    this.name = name;
    this.element.querySelectorAll('[data-cloth]').forEach((one) => {
      one.hidden = one.dataset.cloth !== name;
    });
  }

  refresh() {
    const key = JSON.stringify(
      (this.job.state.cloths ?? []).map((cloth) => [cloth.name, this.widthsOf(cloth.index)]),
    );
    if (key !== this.shown && !this.element.contains(document.activeElement)) {
      this.shown = key;
      this.build();
    }
    [...this.fields, ...this.flaws].forEach((part) => part.refresh());
    this.widthEntries.forEach(({ made, path }) => this.markWidth(made, path));
    this.show(this.name);
  }

  build() {
    const open = new Set([...this.element.querySelectorAll('details[open]')].map((one) => one.dataset.cloth));
    this.fields = [];
    this.flaws = [];
    this.widthEntries = [];
    fill(
      this.element,
      (this.job.state.cloths ?? []).map((cloth) => this.form(cloth, open.has(cloth.name))),
    );
  }

  form(cloth, open) {
    const field = (key, ...below) => {
      const [name, kind] = below;
      const path = ['cloths', cloth.index, key, ...(name ? [name] : [])];
      const made = new Field(this.job, path, kind ? { kind } : {});
      this.fields.push(made);
      return made.element;
    };
    const flaws = new ClothFlaws(this.job, cloth.index);
    this.flaws.push(flaws);
    return el(
      'details',
      { open, 'data-cloth': cloth.name },
      el('summary', {}, word('about cloth', { cloth: term(cloth.name, 'cloth') })),
      this.widths(cloth),
      el('div', { class: 'fields' }, usual.map((key) => field(key))),
      el(
        'details',
        {},
        el('summary', {}, word('options.more')),
        el('div', { class: 'fields' }, others.map((key) => field(key))),
        el('div', { class: 'fields' }, nested.map((keys) => field(...keys))),
      ),
      flaws.element,
    );
  }

  // widthsOf a cloth as they are written: one, or several.
  widthsOf(index) {
    const list = (this.job.state.groups ?? []).find((group) =>
      samePath(group.path, ['cloths', index, 'widths']),
    );
    if (list?.list?.length) return list.list;
    return [this.job.field('cloths', index, 'width')?.value].filter(Boolean);
  }

  widths(cloth) {
    const entries = this.widthsOf(cloth.index).map((value, i, all) => this.width(cloth, value, i, all));
    const add = el('button', { type: 'button', click: () => this.anotherWidth(cloth) }, word('another width'));
    return el('div', { class: 'fields widths' }, entries, add);
  }

  width(cloth, value, i, all) {
    const path = ['cloths', cloth.index, all.length > 1 ? 'widths' : 'width'];
    const label = all.length > 1 ? word('nth width', { n: i + 1 }) : word('cloth width');
    const change = (event) => {
      const text = sent(event.target.value);
      this.setWidths(cloth, text ? all.with(i, text) : all.toSpliced(i, 1));
    };
    const made = entry({ label, value: typed(value), unit: this.job.state.units, hint: ' ', input: { change } });
    made.element.dataset.path = JSON.stringify(path);
    this.widthEntries.push({ made, path });
    return made.element;
  }

  // markWidth where it cannot stand, with a guess at what was meant.
  markWidth({ control, hint }, path) {
    const field = this.job.field(...path);
    const text = field?.fault ? [asSentence(faultOf(field)), guessText(field.value, this.job.state.units)] : [];
    set(control, 'aria-invalid', String(text.length > 0));
    hint.classList.toggle('fault', text.length > 0);
    write(hint, text.filter(Boolean).join(' '));
  }

  // anotherWidth beside those that there are, to be written.
  anotherWidth(cloth) {
    const all = this.widthsOf(cloth.index);
    const form = this.element.querySelector(`[data-cloth="${CSS.escape(cloth.name)}"] .widths`);
    const made = entry({
      label: word('nth width', { n: all.length + 1 }),
      unit: this.job.state.units,
      input: {
        change: (event) => {
          const text = sent(event.target.value);
          if (text) this.setWidths(cloth, [...all, text]);
        },
      },
    });
    form.insertBefore(made.element, form.lastChild);
    made.control.focus();
  }

  async setWidths(cloth, widths) {
    const at = (key) => ['cloths', cloth.index, key];
    const has = (key) => this.job.field(...at(key))?.value;
    if (!widths.length) return;
    if (widths.length === 1)
      await this.job.act({ unset: { path: at('widths') } }, { set: { path: at('width'), value: widths[0] } });
    else
      await this.job.act(...(has('width') ? [{ unset: { path: at('width') } }] : []), {
        set: { path: at('widths'), value: widths },
      });
    this.shown = null;
    document.activeElement?.blur();
    this.refresh();
  }
}
