// What does not stand: fields that hold what cannot be their value. All that is reckoned
// and printed is of their last good values, and this line says so.

import { address } from './address.js';
import { el, fill } from './element.js';
import { faultOf, labelOf } from './field.js';
import { asSentence, word } from './words.js';

// wrongFields of a job.
export const wrongFields = (job) => (job.state?.fields ?? []).filter((field) => field.fault);

// The steps on which figures are shown, that may be older than what is typed.
const reckoned = ['lay', 'table', 'charge', 'print'];

const priced = ['price', 'offers', 'fibre', 'safety', 'making', 'notions'];

// stepOf a field: where it is asked for.
function stepOf([top, , key]) {
  if (top === 'quote' || top === 'currency' || priced.includes(key)) return 'charge';
  if (top === 'cloths') return 'lay';
  return top === 'garments' || top === 'allowances' ? 'pieces' : 'measure';
}

const selectorOf = (path) => `[data-path="${CSS.escape(JSON.stringify(path))}"]`;

// reveal a field of the screen that is shown, and go into it.
export function reveal(path) {
  const field = document.querySelector(selectorOf(path));
  for (let one = field?.closest('details'); one; one = one.parentElement.closest('details')) one.open = true;
  const control = field?.querySelector('input, select, textarea');
  control?.focus();
  control?.scrollIntoView({ block: 'center' });
}

// Standing is the line above a screen.
export class Standing {
  constructor() {
    this.element = el('div', { class: 'standing', role: 'status' });
    this.wanted = null;
    // What is still being written is not wrong yet.
    addEventListener('focusout', () => setTimeout(() => this.show(this.job, this.step)));
  }

  // show what does not stand in a job, on the steps that reckon.
  show(job, step) {
    Object.assign(this, { job, step });
    const isWritten = (field) => document.activeElement?.closest(selectorOf(field.path));
    const wrong = job && reckoned.includes(step) ? wrongFields(job).filter((field) => !isWritten(field)) : [];
    const key = JSON.stringify([step, wrong]);
    if (key === this.shown) return;
    this.shown = key;
    fill(
      this.element,
      wrong.map((field) => {
        const said = `${asSentence(faultOf(field))} ${word('last good value')} `;
        return el('p', {}, said, this.link(field.path));
      }),
    );
  }

  link(path) {
    const step = stepOf(path);
    const go = (event) => {
      this.wanted = path;
      if (step !== this.step) return;
      event.preventDefault();
      this.arrive();
    };
    return el('a', { href: address(this.job.name, step), click: go }, word('to field', { field: labelOf(path) }));
  }

  // arrive on a screen, where a link has led to a field of it.
  arrive() {
    if (this.wanted) reveal(this.wanted);
    this.wanted = null;
  }
}
