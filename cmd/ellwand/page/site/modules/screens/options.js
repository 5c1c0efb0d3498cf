// The options of the garments: blocks, each with its keys; the usual ones first, those
// with few choices as buttons side by side.

import { el, fill } from '../element.js';
import { choose } from '../choose.js';
import { Field, labelOf } from '../field.js';
import { picture } from '../server.js';
import { term, word } from '../words.js';
import { CutFrom, clothNames } from './cutfrom.js';
import { Linings } from './linings.js';
import { Parts } from './parts.js';

// blocks that a garment may have; the first keys are those that are asked first.
const blocks = {
  bodice: ['fit', 'princess', 'dart', 'back', 'front', 'below_waist'],
  sleeve: ['style', 'reach', 'wrist_width'],
  skirt: ['shape', 'length', 'back'],
  trousers: ['opening', 'pocket', 'length', 'hem_width'],
  straight_cut: ['shape', 'length', 'width'],
};

// pictured choices: the program draws each.
const pictured = new Set(['skirt.shape', 'bodice.princess', 'sleeve.style', 'sleeve.reach', 'bodice.dart']);

export class GarmentOptions {
  constructor(job) {
    this.job = job;
    this.garments = el('div', {});
    this.cutFrom = new CutFrom(job);
    this.element = el('div', { class: 'blocks' }, this.garments, this.cutFrom.element);
    this.parts = [];
  }

  fields() {
    return this.parts;
  }

  refresh() {
    const shape = JSON.stringify([
      this.job.fields('garments').map((field) => field.path),
      this.job.state.groups.filter(({ path }) => path.at(-1) === 'of').map(({ list }) => list),
      this.job.fields('cloths').filter(({ path }) => path[2] === 'name').map(({ value }) => value),
      (this.job.state.pieces ?? []).map((piece) => piece.name),
    ]);
    if (shape !== this.shape) {
      this.shape = shape;
      this.rebuild();
    }
    this.parts.forEach((part) => part.refresh());
    this.cutFrom.refresh();
  }

  // rebuild what has changed its shape: what was open stays open, and the hand where it was.
  rebuild() {
    const before = new Map([...this.garments.querySelectorAll('details')].map((one) => [placeOf(one), one.open]));
    const all = () => [...this.garments.querySelectorAll('input, select, button, summary')];
    const held = all().indexOf(document.activeElement);
    this.build();
    this.garments.querySelectorAll('details').forEach((one) => {
      const was = before.get(placeOf(one));
      if (was !== undefined) one.open = was;
      else if (before.size && one.dataset.part !== undefined) one.open = true;
    });
    if (held >= 0) (all()[held] ?? all().at(-1))?.focus();
  }

  build() {
    this.parts = [];
    const garments = [...new Set(this.job.fields('garments').map((field) => field.path[1]))];
    fill(
      this.garments,
      garments.map((index) => this.garment(index)),
    );
  }

  garment(index) {
    const name = this.job.field('garments', index, 'name')?.value ?? '';
    const has = (block) => this.job.fields('garments', index, block).length > 0;
    const plain = ['name', 'quantity'].filter((key) => this.job.field('garments', index, key));
    return el(
      'details',
      { open: true },
      el('summary', {}, term(name, 'garment')),
      el(
        'div',
        { class: 'fields' },
        plain.map((key) => this.field(['garments', index, key])),
      ),
      Object.keys(blocks)
        .filter(has)
        .map((block) => this.block(index, block)),
      has('bodice') && !has('sleeve') && this.adding(index, 'sleeve'),
      has('sleeve') && this.leaving(index, 'sleeve'),
      [Parts, Linings].map((Kind) => new Kind(this.job, index, (path) => this.field(path)).element()),
    );
  }

  block(index, block) {
    const all = this.job.fields('garments', index, block).filter((field) => field.path.length === 4);
    const first = blocks[block].map((key) => all.find((field) => field.path[3] === key)).filter(Boolean);
    const rest = all.filter((field) => !first.includes(field));
    return el(
      'fieldset',
      { class: 'block' },
      el('legend', {}, term(block, 'block')),
      first.map((field) => this.option(block, field)),
      rest.length > 0 &&
        el(
          'details',
          {},
          el('summary', {}, word('options.more')),
          rest.map((field) => this.option(block, field)),
        ),
    );
  }

  option(block, field) {
    if (field.kind === 'choice' && pictured.has(`${block}.${field.path[3]}`))
      return this.pictures(block, field);
    return this.field(field.path);
  }

  field(path) {
    const part = new Field(this.job, path, { names: namesFor(this.job, path) });
    this.parts.push(part);
    return part.element;
  }

  // pictures of the choices, in place of a list.
  pictures(block, field) {
    const group = choose({
      legend: labelOf(field.path),
      className: 'pictures',
      value: field.value || field.choices[0],
      choices: field.choices.map((value) => ({
        value,
        text: term(value),
        picture: picture(`option/${block}.${field.path[3]}`, value),
      })),
      pick: (value) => this.job.act({ set: { path: field.path, value } }),
    });
    const refresh = () => group.select(this.job.field(...field.path)?.value || field.choices[0]);
    this.parts.push({ path: field.path, refresh });
    return group.element;
  }

  adding(index, block) {
    const add = () => this.job.act({ set: { path: ['garments', index, block], value: {} } });
    return el('button', { type: 'button', click: add }, word(`add ${block}`));
  }

  leaving(index, block) {
    const leave = () => this.job.act({ unset: { path: ['garments', index, block] } });
    return el('button', { type: 'button', class: 'plain', click: leave }, word(`leave ${block}`));
  }
}

// placeOf a part of the form that opens, among those about it.
function placeOf(details) {
  const names = [];
  for (let one = details; one; one = one.parentElement.closest('details'))
    names.unshift(one.dataset.part ?? one.querySelector('summary').textContent);
  return names.join('/');
}

// namesFor a value that names something else of the job, to be chosen.
function namesFor(job, path) {
  const pieces = (job.state.pieces ?? []).filter((piece) => piece.index === path[1] && piece.kind === 'shell');
  if (path[2] === 'quote' || path.length < 5) return null;
  if (path.at(-1) === 'cloth') return [clothNames(job), 'cloth'];
  if (path.at(-1) === 'of') return [[...new Set(pieces.map((piece) => piece.name))], 'piece'];
  if (path.at(-1) !== 'edge') return null;
  const of = job.field(...path.slice(0, -1), 'of')?.value;
  const edges = pieces.filter((piece) => piece.name === of).flatMap((piece) => piece.edges);
  return [[...new Set(edges.filter((edge) => !edge.fold).map((edge) => edge.name))], 'edge'];
}
