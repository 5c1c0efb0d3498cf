// The options of the garments: blocks, each with its keys; the usual ones first, those
// with few choices as buttons side by side.

import { el, fill } from '../element.js';
import { choose } from '../choose.js';
import { Field, labelOf } from '../field.js';
import { picture } from '../server.js';
import { term, word } from '../words.js';

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
    this.element = el('div', { class: 'blocks' });
    this.parts = [];
  }

  fields() {
    return this.parts;
  }

  refresh() {
    const shape = JSON.stringify(this.job.fields('garments').map((field) => field.path));
    if (shape !== this.shape) {
      this.shape = shape;
      this.build();
    }
    this.parts.forEach((part) => part.refresh());
  }

  build() {
    this.parts = [];
    const garments = [...new Set(this.job.fields('garments').map((field) => field.path[1]))];
    fill(
      this.element,
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
    const part = new Field(this.job, path);
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
