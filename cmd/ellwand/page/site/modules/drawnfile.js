// A file that pieces are in: what it does not say is asked beside its numbered picture.

import { el, fill, write } from './element.js';
import { entry, pickOne } from './choose.js';
import { Scan } from './scan.js';
import { post } from './server.js';
import { sent, term, word } from './words.js';

const photo = /\.(jpe?g|png)$/i;
const pieces = /\.ya?ml$/i;

// What is asked of a piece, and what is taken where nothing is answered.
const usual = { name: '', cut: '1', grain: 'up', allowance: 'unknown' };
const grains = ['up', 'across', 'bias', 'either'];

// What is asked beside, where it has a usual answer: first what follows from how it is cut.
const beside = ['pair', 'fold'];
const seldom = ['cloth', 'size'];

export class DrawnFile {
  // chosen is told of each file.
  constructor(chosen) {
    this.choosing = chosen;
    this.input = el('input', {
      type: 'file',
      accept: '.yaml,.yml,.dxf,.svg,.pdf,.jpg,.jpeg,.png',
      change: () => this.chosen(),
    });
    const again = { change: () => this.look() };
    this.ground = entry({ label: word('drawn.ground'), hint: word('drawn.ground.hint'), input: again });
    this.sheets = pickOne({
      label: word('drawn.sheets'),
      choices: [
        ['', term('none')],
        ['a4', 'A4'],
        ['letter', term('letter')],
      ],
      pick: () => this.look(),
    });
    this.units = pickOne({
      label: word('drawn.units'),
      choices: [['', word('drawn.units.own')], ...['mm', 'cm', 'in'].map((unit) => [unit, term(unit, 'unit')])],
      pick: () => this.look(),
    });
    this.scan = new Scan(() => this.look());
    this.known = el(
      'div',
      { hidden: true },
      el('div', { class: 'fields' }, this.ground.element, this.sheets.element, this.units.element),
      this.scan.element,
    );
    this.told = el('p', { class: 'fault', role: 'status', hidden: true });
    this.asked = el('div', { class: 'drawnFile' });
    this.element = el(
      'div',
      {},
      el('p', {}, el('label', {}, word('pattern.file'), ' ', this.input)),
      this.known,
      this.told,
      this.asked,
    );
    this.answers = [];
  }

  // chosen is another file.
  chosen() {
    const file = this.input.files[0];
    if (file) this.choosing(file);
    if (file && photo.test(file.name)) this.scan.show(file);
    return this.look();
  }

  // look through the file that was chosen.
  async look() {
    const file = this.input.files[0];
    this.answers = [];
    fill(this.asked);
    this.tell('');
    this.known.hidden = !file || pieces.test(file.name);
    if (this.known.hidden) return;
    const isPhoto = photo.test(file.name);
    this.ground.element.hidden = !isPhoto;
    this.sheets.element.hidden = !isPhoto;
    this.scan.element.hidden = !isPhoto;
    this.units.element.hidden = isPhoto;
    try {
      const found = await post('/api/drawing', await this.wanted());
      if (this.input.files[0] !== file) return;
      this.tell(found.fault);
      this.ask(found);
    } catch (fault) {
      this.tell(fault.message);
    }
  }

  // tell what is wrong with the file.
  tell(fault) {
    write(this.told, fault);
    this.told.hidden = !fault;
  }

  // ask what the file does not say of each piece.
  ask({ pieces: found, pictured }) {
    this.turn = (this.turn ?? 0) + 1;
    fill(
      this.asked,
      pictured && this.picture(),
      el(
        'ol',
        { class: 'rows' },
        found.map((piece) => el('li', { value: piece.number }, this.fields(piece))),
      ),
    );
  }

  // picture of all that was found; its address is new each time.
  picture() {
    const src = `/picture/drawing/${this.turn}.svg`;
    return el('img', { class: 'numbered', src, alt: word('drawn.picture') });
  }

  fields({ number, name, missing, optional }) {
    const labelled = (key) => `${number}: ${term(`drawn.${key}`, 'label')}`;
    const ask = (key) => {
      const value = key === 'name' ? name : usual[key];
      const { elements, answer } = (asking[key] ?? inWords)(labelled(key), value);
      this.answers.push({ key, number, answer, before: key === 'name' ? name : '' });
      return elements;
    };
    const has = (key) => optional.includes(key);
    const first = ['name', ...missing.filter((key) => key !== 'name'), ...beside.filter(has)];
    const rest = seldom.filter(has);
    const fields = (keys) => el('div', { class: 'fields' }, keys.map(ask));
    return [
      fields(first),
      rest.length > 0 && el('details', {}, el('summary', {}, word('options.more')), fields([...rest, 'kind'])),
    ];
  }

  // wanted of the program, with all that was answered; nothing where no file was chosen.
  async wanted() {
    const file = this.input.files[0];
    if (!file) return undefined;
    const each = {};
    for (const { key, number, answer, before } of this.answers) {
      const value = answer();
      if (value && value !== before) (each[key] ??= []).push(`${number}=${value}`);
    }
    const isPhoto = photo.test(file.name);
    return {
      name: file.name,
      base64: await encoded(file),
      each,
      units: isPhoto ? '' : this.units.control.value,
      ground: isPhoto ? sent(this.ground.control.value) : '',
      sheets: isPhoto ? this.sheets.control.value : '',
      distances: isPhoto ? this.scan.wanted() : [],
    };
  }
}

function inWords(label, value) {
  const field = entry({ label, value });
  return { elements: field.element, answer: () => sent(field.control.value) };
}

// ofList is a question with a list of answers; the first is the usual one, and is not sent.
const ofList = (key, answers) => (label) => {
  const field = pickOne({ label, choices: ['', ...answers].map((one) => [one, term(one || 'usual', `drawn.${key}`)]) });
  return { elements: field.element, answer: () => field.control.value };
};

// asking has the questions that are not answered in words of one's own.
const asking = {
  pair: ofList('pair', ['yes']),
  fold: ofList('fold', ['left', 'right', 'top', 'bottom']),
  kind: ofList('kind', ['facing', 'lining', 'interfacing']),
  grain(label, value) {
    const field = pickOne({ label, value, choices: grains.map((grain) => [grain, term(grain, 'grain')]) });
    return { elements: field.element, answer: () => field.control.value };
  },
  allowance(label, value) {
    const ways = ['unknown', 'included', 'added'].map((way) => [way, term(way, 'allowance')]);
    const width = entry({ label: word('drawn.allowance.width'), unit: 'cm', input: { inputmode: 'decimal' } });
    width.element.hidden = true;
    const pick = (way) => {
      width.element.hidden = way === 'unknown';
    };
    const way = pickOne({ label, value, choices: ways, pick });
    const answer = () => {
      const cm = sent(width.control.value);
      if (way.control.value === 'unknown' || !cm) return 'unknown';
      return `${way.control.value === 'included' ? 'included ' : ''}${cm} cm`;
    };
    return { elements: [way.element, width.element], answer };
  },
};

// encoded bytes of a file, in base 64.
async function encoded(file) {
  const bytes = new Uint8Array(await file.arrayBuffer());
  let text = '';
  for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192));
  return btoa(text);
}
