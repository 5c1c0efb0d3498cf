// A piece of cloth to begin with: what can be made of it.

import { el, write } from '../element.js';
import { entry, pickOne } from '../choose.js';
import { get, post } from '../server.js';
import { listen } from '../stream.js';
import { failed } from '../say.js';
import { girthsText, sent, term, word } from '../words.js';
import { gallery } from './begin.js';

export function clothFirst() {
  let garment = '';
  const units = pickOne({
    label: word('units'),
    choices: ['cm', 'mm', 'in'].map((unit) => [unit, term(unit, 'unit')]),
  });
  const width = entry({ label: word('width of it'), value: '140', input: { required: true } });
  const length = entry({ label: word('length of it'), value: '150', input: { required: true } });
  const size = pickOne({ label: word('label.size'), choices: [['12', '12']] });
  size.element.classList.add('broad');
  size.element.append(el('span', { class: 'notes' }, word('sizes.differ')));
  get('/api/size?table=women')
    .then((table) => {
      const named = (one) => girthsText(one, table, units.control.value);
      size.control.replaceChildren(
        ...table.sizes.map((one) => el('option', { value: one, selected: one === '12' }, named(one))),
      );
      units.control.addEventListener('change', () => {
        [...size.control.options].forEach((option) => write(option, named(option.value)));
      });
    })
    .catch(failed);
  const make = async (event) => {
    event.preventDefault();
    if (!garment) return;
    try {
      const made = await post('/api/jobs', {
        from: 'cloth',
        garment,
        title: term(garment, 'garment'),
        units: units.control.value,
        table: 'women',
        size: size.control.value,
        width: sent(width.control.value),
        length: sent(length.control.value),
      });
      location.hash = `#/job/${encodeURIComponent(made.job)}/table`;
    } catch (fault) {
      failed(fault);
    }
  };
  const element = el(
    'div',
    { class: 'sheet' },
    el('h1', {}, word('cloth.title')),
    el('p', {}, word('cloth.how')),
    el(
      'form',
      { submit: make },
      el('div', { class: 'fields' }, units.element, width.element, length.element, size.element),
      gallery((name) => {
        garment = name;
      }).element,
      el('p', { class: 'buttons' }, el('button', { class: 'main' }, word('is it enough'))),
    ),
  );
  const events = listen('jobs', () => {});
  return { element, leave: () => events.close() };
}
