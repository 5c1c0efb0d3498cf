// What is said to those who do not see it change, and the notices above a page.

import { el, fill, write } from './element.js';
import { word } from './words.js';

// say a sentence politely, after what is being read.
export function say(sentence) {
  write(document.getElementById('said'), sentence);
}

const notices = new Map();

// notice shows a sentence above the page, with buttons, under a key by which it is taken
// away again.
export function notice(key, sentence, buttons = []) {
  const shown = notices.get(key);
  if (shown?.sentence === sentence) return;
  notices.set(key, { sentence, buttons });
  show();
}

// unsay takes a notice away.
export function unsay(key) {
  if (notices.delete(key)) show();
}

function show() {
  const all = [...notices].map(([key, { sentence, buttons }]) =>
    el(
      'div',
      { class: 'notice', role: 'alert' },
      el('p', {}, sentence),
      buttons.map(([label, act]) =>
        el(
          'button',
          {
            type: 'button',
            click: () => {
              unsay(key);
              act();
            },
          },
          label,
        ),
      ),
      el('button', { type: 'button', class: 'plain', click: () => unsay(key) }, word('close')),
    ),
  );
  fill(document.getElementById('notices'), all);
}

// failed says what went wrong in the program's own words: beside the button of the form that
// somebody is in, or else above the page.
export function failed(fault) {
  if (fault.name === 'AbortError') return;
  const sentence = fault.status ? fault.message : word('no answer');
  const form = document.activeElement?.closest('main form');
  if (form) return outcome(form, sentence, 'fault');
  notice('failed', sentence);
  document.getElementById('notices').scrollIntoView({ block: 'nearest' });
}

// outcome of what was asked for with a form, beside its button.
export function outcome(form, sentence, kind = '') {
  form.querySelector('.outcome')?.remove();
  const said = el('p', { class: `outcome ${kind}`, role: kind ? 'alert' : 'status' }, sentence);
  const buttons = form.querySelector('.buttons:last-of-type') ?? form.lastElementChild;
  buttons.after(said);
  said.scrollIntoView({ block: 'nearest' });
}
