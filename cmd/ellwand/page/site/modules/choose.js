// One choice among several, as radio buttons: plain, or each with a picture.

import { el, fresh } from './element.js';

// choose is a group of radio buttons. Each choice has a value, a text, and perhaps a
// picture (an address).
export function choose({ legend, choices, value, pick, className = '' }) {
  const name = fresh('choice');
  const options = choices.map((choice) => option(name, choice, choice.value === value, pick));
  const element = el(
    'fieldset',
    { class: `choice ${className}` },
    el('legend', {}, legend),
    el(
      'div',
      { class: 'choices' },
      options.map(({ label }) => label),
    ),
  );
  const select = (wanted) =>
    options.forEach(({ input }) => {
      input.checked = input.value === wanted;
    });
  const chosen = () => options.find(({ input }) => input.checked)?.input.value ?? '';
  return { element, select, chosen };
}

function option(name, { value, text, picture }, checked, pick) {
  const input = el('input', { type: 'radio', name, value, checked, change: () => pick?.(value) });
  const label = el(
    'label',
    { class: picture ? 'pictured' : '' },
    input,
    picture && el('img', { src: picture, alt: '', width: 72, height: 90, loading: 'lazy' }),
    el('span', {}, text),
  );
  return { input, label };
}

// entry is a plain field that belongs to no job yet.
export function entry({ label, value = '', unit = '', input = {}, hint = '' }) {
  const id = fresh('entry');
  const control = el('input', {
    id,
    type: 'text',
    autocomplete: 'off',
    value,
    'aria-describedby': hint ? `${id}-hint` : null,
    ...input,
  });
  const hintText = el('span', { class: 'notes', id: `${id}-hint` }, hint);
  const unitText = el('span', { class: 'unit' }, unit);
  const element = el(
    'div',
    { class: 'field' },
    el('label', { for: id }, label),
    el('span', { class: 'row' }, control, unitText),
    hint && hintText,
  );
  return { element, control, unitText, hint: hintText };
}

// pickOne is a list to choose one of.
export function pickOne({ label, choices, value, pick }) {
  const id = fresh('pick');
  const control = el(
    'select',
    { id, change: () => pick?.(control.value) },
    choices.map(([key, text]) => el('option', { value: key, selected: key === value }, text)),
  );
  return { element: el('div', { class: 'field' }, el('label', { for: id }, label), control), control };
}
