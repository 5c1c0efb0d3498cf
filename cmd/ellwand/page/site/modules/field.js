// Fields of the job: each writes its value into the job as it is typed, and shows what
// the program says of it beside it.

import { el, fresh, fill, write } from './element.js';
import { currencyName, has, sent, term, typed, word } from './words.js';

// naming of what is chosen from, where that is not in the words of the page.
const naming = { currency: (code) => `${code}, ${currencyName(code)}` };

// Field of a job, at a path. It keeps what is being typed while the job changes: no answer
// to an older state comes into it, neither while it is written in nor while its text is on
// its way. Options: a label in place of the usual one, which may be unseen where its place
// says enough; names to choose from; what is put where nothing is written; decimal for
// figures.
export class Field {
  constructor(job, path, options = {}) {
    Object.assign(this, { job, path, options });
    this.id = fresh('field');
    this.notes = el('span', { class: 'notes', id: `${this.id}-notes` });
    this.control = this.makeControl(this.known());
    this.control.id = this.id;
    this.control.setAttribute('aria-describedby', this.notes.id);
    const attributes = { class: `field ${this.known().kind}`, 'data-path': JSON.stringify(path) };
    this.element = el('div', attributes, this.label(), this.row(), this.notes);
    this.refresh();
  }

  // known of the field; one that the form does not list yet is as the options say.
  known() {
    const listed = this.job.field(...this.path);
    if (listed) return listed;
    const { kind = 'text', derived = '' } = this.options;
    return { path: this.path, kind, value: '', derived };
  }

  label() {
    const { label, unseen } = this.options;
    return el('label', { for: this.id, class: unseen ? 'unseen' : null }, label ?? labelOf(this.path));
  }

  row() {
    this.unit = el('span', { class: 'unit', 'aria-hidden': 'true' });
    return el('span', { class: 'row' }, this.control, this.unit);
  }

  makeControl(field) {
    if (field.kind === 'choice' || field.kind === 'yesno' || this.options.names) return this.makeChoice(field);
    const mode = field.kind === 'count' ? 'numeric' : this.options.decimal ? 'decimal' : null;
    return el('input', {
      type: 'text',
      autocomplete: 'off',
      spellcheck: 'false',
      inputmode: mode,
      input: () => this.send(true),
      change: () => this.send(false),
      focus: () => this.options.focus?.(this),
    });
  }

  makeChoice(field) {
    const [names, stem] = this.options.names ?? [];
    const choices = names ? [...names] : (field.kind === 'yesno' ? ['yes', 'no'] : (field.choices ?? []));
    if (names && field.value && !names.includes(field.value)) choices.unshift(field.value);
    return el(
      'select',
      { change: () => this.send(false), focus: () => this.options.focus?.(this) },
      el('option', { value: '' }, stem === 'currency' ? word('currency.none') : word('usual')),
      choices.map((choice) => el('option', { value: choice }, naming[stem]?.(choice) ?? term(choice, stem))),
    );
  }

  send(typing) {
    const value = sent(this.control.value);
    if (!typing && value === this.known().value) return;
    this.job.act(value === '' ? { unset: { path: this.path } } : { set: { path: this.path, value, typing } });
  }

  refresh() {
    const field = this.known();
    const isWritten = document.activeElement === this.control && this.control.tagName !== 'SELECT';
    if (!isWritten && !this.job.isOnItsWay(this.path))
      this.control.value = this.options.names ? field.value : shownValue(field);
    if (this.control.tagName === 'INPUT') this.control.placeholder = typed(field.derived || this.usual || '');
    write(this.unit, unitOf(field, this.job.state.units));
    this.refreshNotes(field);
  }

  refreshNotes(field) {
    const notes = notesOf(this.job, field);
    const key = JSON.stringify(notes);
    if (key === this.noted) return;
    this.noted = key;
    this.control.setAttribute(
      'aria-invalid',
      notes.some(([kind]) => kind === 'fault'),
    );
    fill(
      this.notes,
      notes.map(([kind, text]) => el('span', { class: kind }, text)),
    );
  }
}

// shares of a whole, in hundredths where no sign is written.
const shares = ['margin', 'deposit', 'tax.rate'];

// unitOf what is written, where it is not written itself.
function unitOf({ kind, path, value }, units) {
  if (path[0] === 'quote' && shares.includes(path.slice(1).join('.'))) return value.includes('%') ? '' : '%';
  const isPrice = path[0] === 'cloths' && path.at(-1) === 'price' && !value.includes('per');
  if (isPrice) return word(units === 'in' ? 'a yard' : 'a metre');
  return kind === 'measure' && !/[a-z]/i.test(value) ? units : '';
}

const shownValue = (field) =>
  field.kind === 'choice' || field.kind === 'yesno' ? field.value : typed(field.value);

// notesOf a field: faults first, then doubts, then where a worked-out value is from.
function notesOf(job, field) {
  const at = JSON.stringify(field.path);
  const about = (list, said) =>
    (list ?? []).filter((one) => one.path && JSON.stringify(one.path) === at).map(said);
  const half = field.fault ? [faultOf(field)] : [];
  const said = (fault) => faultText(fault, field.value);
  const faults = [...new Set([...half, ...about(job.state.faults, said)])].filter(Boolean);
  const doubts = [...new Set(about(job.state.doubts, doubtText))].filter(Boolean);
  const why = !field.value && field.derived && field.why ? [['why', whyText(field.why)]] : [];
  return [...faults.map((text) => ['fault', text]), ...doubts.map((text) => ['doubt', text]), ...why];
}

// faultOf a field that holds what cannot stand in it.
export const faultOf = ({ path, fault, fault_kind, value }) =>
  faultText({ path, kind: fault_kind, sentence: fault }, value);

// faultText says what is wrong in the reader's language; what is only missing is never told
// in terms of the file.
export function faultText({ path, kind, sentence }, value = '') {
  const what = path?.length ? labelOf(path) : '';
  const lacks = value === '' ? what : labelOf(['currency']); // of all that is typed, only money lacks something
  if (kind === 'missing' && what && typeof path.at(-1) === 'string') return word('fault.missing', { what: lacks });
  return typed(sentence);
}

const doubtText = (doubt) => typed(doubt.sentence);

// whyText says where a value that is worked out is from.
const whyText = (why) => word('worked out', { why });

// labelOf what stands at the end of a path.
export function labelOf(path) {
  const key = path.at(-1);
  const full = `label.${path
    .filter((part) => typeof part === 'string')
    .slice(-2)
    .join('.')}`;
  if (has(full)) return word(full);
  return term(key, 'label');
}

// unplaced are faults that no field of the screen shows.
export function unplaced(job, fields) {
  const placed = new Set(fields.map((field) => JSON.stringify(field.path)));
  return (job.state.faults ?? []).filter((fault) => !fault.path || !placed.has(JSON.stringify(fault.path)));
}

// Faults of the whole job, above a screen.
export class Faults {
  constructor(job, fields = () => []) {
    Object.assign(this, { job, fields });
    this.element = el('div', { class: 'faults', role: 'alert' });
  }

  refresh() {
    const faults = unplaced(this.job, this.fields());
    const key = JSON.stringify(faults);
    if (key === this.shown) return;
    this.shown = key;
    fill(
      this.element,
      faults.map((fault) =>
        el('p', {}, fault.line ? word('line', { line: fault.line, sentence: faultText(fault) }) : faultText(fault)),
      ),
    );
  }
}
