// What is asked of a piece that was found in a drawing, always in the same order: what the
// file says of it, or what is usual, stands there already.

import { el, fill } from './element.js';
import { entry, pickOne } from './choose.js';
import { Allowance } from './drawnallowance.js';
import { sent, term, word } from './words.js';

const grains = ['up', 'across', 'bias', 'either'];
const kinds = ['shell', 'facing', 'lining', 'interfacing'];
const seldom = ['cloth', 'size', 'kind'];

export class DrawnPiece {
  // folded is told that another side lies on the fold, allowance is that of all pieces.
  constructor(found, { folded, allowance }) {
    Object.assign(this, { found, folded });
    this.asked = [];
    const isOpen = (key) => found.missing.includes(key);
    const line = (key, value) => this.entry(key, value, key === 'cut' ? { inputmode: 'numeric' } : {});
    const name = line('name', found.name);
    const cut = line('cut', String(found.cut));
    cut.control.addEventListener('input', () => this.refresh());
    const fields = [name, cut, this.pair(), found.folds.length && this.fold(isOpen('fold'))];
    if (isOpen('grain')) fields.push(this.choice('grain', grains, (grain) => term(grain, 'grain'), 'up', () => true));
    if (isOpen('allowance')) fields.push(this.allowance(allowance));
    this.warning = el('p', { class: 'doubt', role: 'status' });
    this.element = el(
      'li',
      { value: found.number },
      el('strong', {}, found.name),
      el('div', { class: 'fields' }, fields.map((field) => field && (field.elements ?? field.element))),
      this.warning,
      found.optional.length > 0 && this.more(),
    );
    this.refresh();
  }

  // label that names the piece to those who cannot see where it stands.
  label(key) {
    return [el('span', { class: 'unseen' }, `${this.found.number}: `), term(`drawn.${key}`, 'label')];
  }

  // answers to a question, where it is one that matters.
  answers(key, control, matters) {
    this.asked.push({ key, control, matters });
  }

  entry(key, value, input = {}) {
    const field = entry({ label: this.label(key), value, input });
    const isMissing = key === 'cut' && this.found.missing.includes(key);
    this.answers(key, field.control, () => isMissing || field.control.value !== value);
    return field;
  }

  choice(key, choices, text, value, matters, pick) {
    const field = pickOne({ label: this.label(key), value, choices: choices.map((one) => [one, text(one)]), pick });
    this.answers(key, field.control, () => matters(field.control.value));
    return field;
  }

  pair() {
    const text = (one) => term(one, 'drawn.pair');
    const matters = () => this.comesInPairs();
    const usual = this.found.pair ? 'yes' : 'no';
    this.pairField = this.choice('pair', ['yes', 'no'], text, usual, matters, () => this.refresh());
    return this.pairField;
  }

  fold(isSaid) {
    const moved = () => {
      this.refresh();
      this.folded();
    };
    const { folds, fold } = this.found;
    const matters = (side) => side !== 'none' || isSaid;
    this.foldField = this.choice('fold', folds, (side) => term(side, 'drawn.fold'), fold, matters, moved);
    if (isSaid) this.foldField.element.append(el('span', { class: 'notes' }, word('drawn.fold.said')));
    return this.foldField;
  }

  allowance(all) {
    this.own = new Allowance({ label: this.label('allowance'), all, units: all.units });
    return this.own;
  }

  more() {
    const fields = seldom
      .filter((key) => key === 'kind' || this.found.optional.includes(key))
      .map((key) =>
        key === 'kind'
          ? this.choice(key, kinds, (one) => term(one, 'drawn.kind'), kinds[0], (one) => one !== kinds[0])
          : this.entry(key, ''),
      );
    return el(
      'details',
      {},
      el('summary', {}, word('options.more')),
      el('div', { class: 'fields' }, fields.map((field) => field.element)),
    );
  }

  count() {
    return Number(this.asked.find(({ key }) => key === 'cut').control.value);
  }

  isOnFold() {
    return Boolean(this.foldField) && this.foldField.control.value !== 'none';
  }

  // comesInPairs says that a right one and a left one may be meant.
  comesInPairs() {
    const hasHands = this.found.hands || this.found.pair;
    return hasHands && this.count() > 0 && this.count() % 2 === 0 && !this.isOnFold();
  }

  // refresh what is asked only of some, and what is told of an answer.
  refresh() {
    this.pairField.element.hidden = !this.comesInPairs();
    const isPair = this.comesInPairs() && this.pairField.control.value === 'yes';
    const lacksLeft = this.found.hands && this.count() > 1 && !isPair && !this.isOnFold();
    fill(this.warning, lacksLeft && word('one way up'));
    this.warning.hidden = !lacksLeft;
  }

  // refused says at a field what is missing there; it reports whether something is.
  refused() {
    return Boolean(this.own?.refused());
  }

  // said is all that was answered, each by the key of its question.
  said() {
    const all = this.asked
      .filter(({ matters }) => matters())
      .map(({ key, control }) => [key, sent(control.value)])
      .filter(([, value]) => value);
    if (this.own) all.push(['allowance', this.own.said()]);
    return all;
  }
}
