// The cloth on the table: its corners, its flaws, what is cut already; and whether it is
// enough.

import { el, fill } from '../element.js';
import { choose, entry, pickOne } from '../choose.js';
import { RemnantDrawing } from '../remnant.js';
import { jobAddress, post } from '../server.js';
import { say } from '../say.js';
import { bare, language, listed, millimetres, sent, term, typed, word } from '../words.js';
import { ClothDrawing, labelOf } from '../lay/cloth.js';
import { nextStep } from './next.js';

export function table(job) {
  const screen = new Table(job);
  return { element: screen.element, refresh: () => screen.refresh() };
}

class Table {
  constructor(job) {
    this.job = job;
    this.units = job.state.units;
    const cloths = job.state.cloths ?? [];
    this.cloth = pickOne({ label: word('which cloth'), choices: [] });
    this.refresh();
    const width = cloths[0]?.widths[0]
      ? bare(millimetres(cloths[0].widths[0].width, 'mm') ?? 1400, this.units)
      : '140';
    this.length = this.size('length of it', bare(1500, this.units));
    this.width = this.size('width of it', width);
    this.drawing = new RemnantDrawing(this.units);
    this.resize();
    this.answer = el('div', { class: 'answer', role: 'status' });
    this.element = el(
      'div',
      { class: 'sheet wide' },
      el('h1', {}, word('table.title')),
      el('p', {}, word('table.how')),
      el(
        'form',
        { submit: (event) => this.ask(event) },
        el('div', { class: 'fields' }, this.cloth.element, this.length.element, this.width.element),
        this.tools(),
        this.drawing.element,
        this.cutAlready(),
        el('p', { class: 'buttons' }, el('button', { class: 'main' }, word('is it enough'))),
      ),
      this.answer,
      nextStep(job, 'charge'),
    );
  }

  // refresh the cloths to choose from: a change may have added one.
  refresh() {
    const names = (this.job.state.cloths ?? []).map((cloth) => cloth.name);
    const key = JSON.stringify(names);
    if (key === this.listed) return;
    this.listed = key;
    const { control } = this.cloth;
    const chosen = control.value;
    fill(
      control,
      names.map((name) => el('option', { value: name, selected: name === chosen }, term(name, 'cloth'))),
    );
  }

  size(key, value) {
    return entry({
      label: word(key),
      value,
      unit: this.units,
      input: { required: true, change: () => this.resize() },
    });
  }

  resize() {
    const [long, wide] = [this.length, this.width].map((field) => millimetres(field.control.value, this.units));
    if (long > 0 && wide > 0) this.drawing.sized(long, wide);
  }

  tools() {
    const mode = choose({
      legend: word('a click sets'),
      className: 'inline',
      value: 'corner',
      pick: (mode) => {
        this.drawing.mode = mode;
      },
      choices: [
        { value: 'corner', text: word('a corner') },
        { value: 'flaw', text: word('a flaw') },
      ],
    });
    const photo = el('input', {
      type: 'file',
      accept: 'image/*',
      change: (event) => event.target.files[0] && this.drawing.over(event.target.files[0]),
    });
    const anew = () => {
      this.drawing.corners = [];
      this.drawing.redraw();
    };
    return el(
      'div',
      { class: 'buttons' },
      mode.element,
      el('button', { type: 'button', click: () => this.drawing.add() }, word('add one')),
      el('button', { type: 'button', click: anew }, word('draw corners anew')),
      el('label', { class: 'photoPick' }, word('over a photo'), ' ', photo),
    );
  }

  // cutAlready lists the pieces of the layouts that are known.
  cutAlready() {
    const laid = [...this.job.layouts.values()][0];
    if (!laid) return null;
    this.cut = new Set();
    return el(
      'details',
      {},
      el('summary', {}, word('cut already')),
      el(
        'ul',
        { class: 'ticks' },
        laid.pieces.map((piece) =>
          el(
            'li',
            {},
            el(
              'label',
              {},
              el('input', {
                type: 'checkbox',
                change: (event) => (event.target.checked ? this.cut.add(piece.id) : this.cut.delete(piece.id)),
              }),
              ' ',
              labelOf(piece),
            ),
          ),
        ),
      ),
    );
  }

  async ask(event) {
    event?.preventDefault();
    const [long, wide] = [this.length, this.width].map((field) => millimetres(field.control.value, this.units));
    const isRectangle =
      this.drawing.corners.length < 3 ||
      JSON.stringify(this.drawing.corners) ===
        JSON.stringify([
          [0, 0],
          [long, 0],
          [long, wide],
          [0, wide],
        ]);
    fill(this.answer, el('p', {}, word('laying')));
    try {
      this.show(
        await post(jobAddress(this.job.name, 'remnant'), {
          cloth: this.cloth.control.value,
          name: word('on the table'),
          other: word('another cloth name'),
          width: sent(this.width.control.value),
          length: sent(this.length.control.value),
          outline: isRectangle ? null : this.drawing.corners,
          flaws: this.drawing.flaws.map((flaw, i) => ({ name: word('nth flaw', { n: i + 1 }), ...flaw })),
          cut: [...(this.cut ?? [])],
        }),
      );
    } catch (fault) {
      fill(this.answer, el('p', { class: 'fault' }, fault.message));
    }
  }

  show(found) {
    const sentence = answerText(found);
    say(sentence);
    fill(
      this.answer,
      el('p', { class: 'amount' }, word(`answer.${found.answer}`)),
      el('p', {}, sentence),
      found.layout && this.picture(found.layout),
      found.take && this.button(word('take it'), found.take, word('taken')),
      found.changes?.length > 0 && this.changes(found.changes),
    );
  }

  // changes that would make it enough: a button does what can be written in the job, and all
  // else is done by hand.
  changes(all) {
    const row = (change) =>
      el(
        'li',
        {},
        change.do
          ? this.button(changeText(change), change.do, word('changed'), () => this.ask())
          : [changeText(change), ' ', el('span', { class: 'notes' }, word('by hand'))],
      );
    return [el('h2', {}, word('table.changes')), el('ul', { class: 'changes' }, all.map(row))];
  }

  // button that does something to the job as one step, says so, and goes on.
  button(text, actions, said, then) {
    const click = async () => {
      const before = this.job.state.revision;
      await this.job.act(...actions);
      if (this.job.state.revision === before) return; // it was refused, which is said
      say(said);
      this.element.querySelector('button.main').focus();
      await then?.();
    };
    return el('p', {}, el('button', { type: 'button', click }, text));
  }

  // picture of the pieces on the piece of cloth.
  picture(layout) {
    const drawing = new ClothDrawing();
    drawing.show(layout, this.units, this.element.clientWidth * 0.9, null);
    return el(
      'div',
      { class: 'table', tabindex: 0, role: 'region', 'aria-label': word('lay.cloth') },
      drawing.picture,
    );
  }
}

// answerText is the answer in a sentence.
const answerText = ({ answer, sentence }) => (language === 'en' ? sentence : word(`answered.${answer}`));

// changeText says what a change gives up.
function changeText({ label, gives, cloth, width }) {
  const what = language === 'en' ? label : givenText(gives);
  if (!cloth) return what;
  const into = { what, cloth: term(cloth, 'cloth'), width: typed(width ?? '') };
  return word(width ? 'into new cloth' : 'into cloth', into);
}

function givenText(gives) {
  const one = (give) =>
    word(`give.${give.of}`, {
      ...give,
      by: typed(give.by ?? ''),
      least: typed(give.least ?? ''),
      names: listed((give.pieces ?? []).map((name) => term(name, 'piece'))),
      garment: term(give.garment ?? '', 'garment'),
    });
  return listed(gives.map(one));
}
