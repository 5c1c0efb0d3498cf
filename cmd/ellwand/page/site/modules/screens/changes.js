// What was said of a piece that came from a file or was given by hand: it can be said anew.

import { el, fill } from '../element.js';
import { Allowance } from '../drawnallowance.js';
import { Field } from '../field.js';
import { sent, term, word } from '../words.js';

const grains = ['up', 'across', 'bias', 'either'];

// Where the entry of a piece of a pattern stands among the changes of its garment; after all
// others where it has none yet.
function entryOf(job, piece) {
  const path = ['garments', piece.index, 'changes'];
  const entries = job.fields(...path).filter(({ path: at }) => at.length === 5 && at[4] === 'of');
  const found = entries.find(({ value }) => value === piece.of);
  return { path: [...path, found ? found.path[3] : entries.length], isThere: Boolean(found) };
}

// setting of a change as an action: with it its entry, where it has none yet.
function setting(job, piece, key, value, typing = false) {
  const { path, isThere } = entryOf(job, piece);
  if (!isThere) return { append: { path: path.slice(0, 3), value: { of: piece.of, [key]: value } } };
  return value === '' ? { unset: { path: [...path, key] } } : { set: { path: [...path, key], value, typing } };
}

// A field of a change, which shows how it is where nothing is changed.
class ChangeField extends Field {
  known() {
    const { changes, key, choices } = this.options;
    this.path = [...entryOf(this.job, changes.piece).path, key];
    const listed = this.job.field(...this.path);
    const kind = choices ? 'choice' : key === 'cut' ? 'count' : 'text';
    return { ...listed, path: this.path, kind, derived: '', value: listed?.value || changes.now(key) };
  }

  makeChoice() {
    const list = this.options.choices().map(([value, text]) => el('option', { value }, text));
    return el('select', { change: () => this.send(false) }, list);
  }

  async send(typing) {
    await this.job.sending;
    const { changes, key } = this.options;
    const value = sent(this.control.value);
    if (value === this.known().value || (typing && !entryOf(this.job, changes.piece).isThere)) return;
    const actions = [setting(this.job, changes.piece, key, value, typing)];
    const pair = this.job.field(...this.path.slice(0, 4), 'pair');
    if (key === 'fold' && value !== 'none' && pair?.value === 'yes') actions.push({ unset: { path: pair.path } });
    this.job.act(...actions);
  }
}

// Changes of one piece, below its drawing.
export class Changes {
  constructor(job, piece) {
    Object.assign(this, { job, piece, fields: [] });
    this.element = el('details', { class: 'changes' }, el('summary', {}, word('changes')));
    this.body = el('div', { class: 'fields' });
    this.element.append(this.body);
  }

  // now is how the piece is, whoever said so.
  now(key) {
    const { name, cut, pair, folded } = this.piece;
    return { name, cut: String(cut), pair: pair ? 'yes' : 'no', fold: folded }[key] ?? '';
  }

  show(piece) {
    this.piece = piece;
    const own = this.ownPath();
    this.element.hidden = !piece.of && !own;
    const shape = JSON.stringify([own, piece.folds]);
    if (shape !== this.shape && !this.element.hidden) {
      this.shape = shape;
      this.build(own);
    }
    this.fields.forEach((field) => field.refresh());
  }

  // ownPath of a piece that the job gives by itself.
  ownPath() {
    return this.job
      .fields('garments', this.piece.index, 'pieces')
      .find(({ path, value }) => path.length === 5 && path[4] === 'name' && value === this.piece.name)
      ?.path.slice(0, 4);
  }

  build(own) {
    this.fields = own ? this.ownFields(own) : this.changeFields();
    fill(this.body, this.fields.flatMap((field) => field.elements ?? field.element));
  }

  ownFields(path) {
    return ['name', 'width', 'height', 'cut', 'pair', 'fold', 'grain']
      .map((key) => this.job.field(...path, key))
      .filter(Boolean)
      .map((field) => new Field(this.job, field.path));
  }

  changeFields() {
    const sides = () => [...(this.piece.folds ?? []), 'none'].map((side) => [side, term(side, 'drawn.fold')]);
    const hands = () => ['yes', 'no'].map((one) => [one, term(one, 'drawn.pair')]);
    const ways = () => [['', word('changes.as file')], ...grains.map((grain) => [grain, term(grain, 'grain')])];
    const field = (key, choices) =>
      new ChangeField(this.job, [], { changes: this, key, choices, label: term(`drawn.${key}`, 'label') });
    const plain = [field('name'), field('cut')];
    return [...plain, field('pair', hands), field('fold', sides), field('grain', ways), this.allowance()];
  }

  allowance() {
    const changed = () => {
      const said = one.said();
      const was = this.job.field(...entryOf(this.job, this.piece).path, 'allowance')?.value ?? '';
      if (said !== was) this.job.act(setting(this.job, this.piece, 'allowance', said));
    };
    const usual = word('changes.as file');
    const units = () => this.job.state.units;
    const one = new Allowance({ label: term('drawn.allowance', 'label'), usual, units, changed });
    const refresh = () => one.show(this.job.field(...entryOf(this.job, this.piece).path, 'allowance')?.value ?? '');
    return { elements: one.elements, refresh };
  }
}
