// A file that pieces are in: what it does not say is asked beside its numbered picture.

import { el, fill, write } from './element.js';
import { entry, pickOne } from './choose.js';
import { Allowance } from './drawnallowance.js';
import { DrawnPiece } from './drawnpiece.js';
import { Scan } from './scan.js';
import { post } from './server.js';
import { sent, term, word } from './words.js';

const pieces = /\.ya?ml$/i;

// What files of photos begin with, whatever their names: JPEG and PNG.
const photos = [
  [0xff, 0xd8, 0xff],
  [0x89, 0x50, 0x4e, 0x47],
];

export class DrawnFile {
  // chosen is told of each file; units are those of the job.
  constructor(chosen, units) {
    Object.assign(this, { choosing: chosen, jobUnits: units, photo: false });
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
    this.first = el('p', { class: 'notes', role: 'status' });
    this.told = el('p', { class: 'fault', role: 'status', hidden: true });
    this.asked = el('div', { class: 'drawnFile' });
    this.element = el(
      'div',
      {},
      el('p', {}, el('label', {}, word('pattern.file'), ' ', this.input)),
      this.first,
      this.known,
      this.told,
      this.asked,
    );
    this.pieces = [];
    this.allowance = null;
  }

  // chosen is another file.
  async chosen() {
    const file = this.input.files[0];
    this.photo = Boolean(file) && (await isPhoto(file));
    if (file) this.choosing(file);
    if (this.photo) this.scan.show(file);
    return this.look();
  }

  // look through the file that was chosen.
  async look() {
    const file = this.input.files[0];
    this.pieces = [];
    fill(this.asked);
    this.tell('');
    const isRead = Boolean(file) && !pieces.test(file.name);
    this.known.hidden = !isRead || file.size === 0;
    this.ground.element.hidden = !this.photo;
    this.sheets.element.hidden = !this.photo;
    this.scan.element.hidden = !this.photo;
    this.units.element.hidden = this.photo;
    if (file?.size === 0) return this.tell(word('refused.empty'));
    write(this.first, this.photo && !this.isScaled() ? word('drawn.photo.first') : '');
    if (!isRead || (this.photo && !this.isScaled())) return;
    try {
      const found = await post('/api/drawing', await this.wanted());
      if (this.input.files[0] !== file) return;
      this.tell(found.fault);
      this.ask(found);
    } catch (fault) {
      this.tell(fault.message);
    }
  }

  // isScaled says that something of a known size in a photo was said.
  isScaled() {
    return Boolean(sent(this.ground.control.value) || this.sheets.control.value || this.scan.wanted().length);
  }

  // tell what is wrong with the file.
  tell(fault) {
    write(this.told, fault);
    this.told.hidden = !fault;
  }

  // ask what the file does not say of each piece.
  ask({ pieces: found, pictured }) {
    const all = found.some(({ missing }) => missing.includes('allowance'));
    this.allowance = all ? new Allowance({ label: word('drawn.allowance.all'), units: this.jobUnits }) : null;
    this.pieces = found.map(
      (piece) => new DrawnPiece(piece, { folded: () => this.redraw(), allowance: this.allowance }),
    );
    const picture = pictured && [this.picture(), el('p', { class: 'notes' }, word('drawn.picture.fold'))];
    fill(
      this.asked,
      picture,
      this.allowance && el('div', { class: 'fields' }, this.allowance.elements),
      el(
        'ol',
        { class: 'rows' },
        this.pieces.map((piece) => piece.element),
      ),
    );
  }

  // redraw the picture, once another side lies on the fold.
  async redraw() {
    try {
      await post('/api/drawing', await this.wanted());
      this.asked.querySelector('.numbered')?.replaceWith(this.picture());
    } catch (fault) {
      this.tell(fault.message);
    }
  }

  // picture of all that was found; its address is new each time.
  picture() {
    this.turn = (this.turn ?? 0) + 1;
    const src = `/picture/drawing/${this.turn}.svg`;
    return el('img', { class: 'numbered', src, alt: word('drawn.picture') });
  }

  // refresh the units beside the fields, once the job has others.
  refresh() {
    [this.allowance, ...this.pieces.map(({ own }) => own)].forEach((one) => one?.refresh());
  }

  // refused says at their fields what is missing; it reports whether something is.
  refused() {
    return [...this.pieces, this.allowance].filter((one) => one?.refused()).length > 0;
  }

  // wanted of the program, with all that was answered; nothing where no file was chosen.
  async wanted() {
    const file = this.input.files[0];
    if (!file) return undefined;
    const each = {};
    for (const piece of this.pieces)
      for (const [key, value] of piece.said())
        (each[key] ??= []).push(`${piece.found.number}=${value}`);
    return {
      name: file.name,
      base64: await encoded(file),
      each,
      units: this.photo ? '' : this.units.control.value,
      ground: this.photo ? sent(this.ground.control.value) : '',
      sheets: this.photo ? this.sheets.control.value : '',
      distances: this.photo ? this.scan.wanted() : [],
    };
  }
}

// isPhoto says by how a file begins that it is one.
async function isPhoto(file) {
  const begins = new Uint8Array(await file.slice(0, 4).arrayBuffer());
  return photos.some((kind) => kind.every((byte, at) => begins[at] === byte));
}

// encoded bytes of a file, in base 64.
async function encoded(file) {
  const bytes = new Uint8Array(await file.arrayBuffer());
  let text = '';
  for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192));
  return btoa(text);
}
