// Measuring: the body, with a figure that shows where the tape goes.

import { el, fill, write } from '../element.js';
import { choose } from '../choose.js';
import { Faults, Field } from '../field.js';
import { showTape } from '../tape.js';
import { term, word } from '../words.js';
import { nextStep } from './next.js';
import { ClientChoice } from './clientchoice.js';

export function measure(job) {
  const screen = new Measure(job);
  return { element: screen.element, refresh: () => screen.refresh() };
}

const drafted = ['bodice', 'sleeve', 'skirt', 'trousers', 'straight_cut', 'parts'];

// needsBody says that something is drafted, or that a body is given all the same.
const needsBody = (job) =>
  job.fields('garments').some(({ path }) => drafted.includes(path[2])) || job.fields('body').some(({ value }) => value);

class Measure {
  constructor(job) {
    this.job = job;
    this.about = ['job', 'client'].filter((key) => job.field(key)).map((key) => new Field(job, [key]));
    this.sizes = ['table', 'size'].filter((key) => job.field(key)).map((key) => new Field(job, [key]));
    this.body = job
      .fields('body')
      .map((field) => new Field(job, field.path, { focus: (at) => this.show(at.path.at(-1)) }));
    this.faults = new Faults(job, () => this.all());
    this.clients = new ClientChoice(job);
    this.figure = el('figure', { class: 'where' });
    this.needed = el('div', { class: 'fields' });
    this.others = el('div', { class: 'fields' });
    this.more = el('details', {}, el('summary', {}, word('measure.more')), this.others);
    this.place();
    this.element = el(
      'div',
      { class: 'sheet measure' },
      el('h1', {}, word('measure.title')),
      this.faults.element,
      el(
        'section',
        { class: 'fields' },
        this.about.map((field) => field.element),
        this.units(),
      ),
      this.clients.element,
      !needsBody(job) && el('p', {}, word('measure.no body')),
      el(
        'section',
        { class: 'beside', hidden: !needsBody(job) },
        el(
          'div',
          {},
          el('h2', {}, word('measure.body')),
          el('p', {}, word('measure.how')),
          this.needed,
          this.more,
          this.sizes.length > 0 &&
            el(
              'details',
              { open: job.field('size')?.value ? true : null },
              el('summary', {}, word('measure.size')),
              el(
                'div',
                { class: 'fields' },
                this.sizes.map((field) => field.element),
              ),
            ),
        ),
        this.figure,
      ),
      nextStep(job, 'pieces'),
    );
    this.show((this.firstNeeded ?? this.body[0])?.path.at(-1));
  }

  all() {
    return [...this.about, ...this.sizes, ...this.body];
  }

  // place a measurement among the needed ones when it is given, worked out or in doubt.
  place() {
    const isNeeded = (field) => {
      const known = field.known();
      return known.value !== '' || known.derived !== '' || field.noted?.includes('fault');
    };
    const needed = this.body.filter(isNeeded);
    this.firstNeeded ??= needed[0];
    fill(
      this.needed,
      needed.map((field) => field.element),
    );
    fill(
      this.others,
      this.body.filter((field) => !needed.includes(field)).map((field) => field.element),
    );
    this.more.hidden = needed.length === this.body.length;
  }

  units() {
    this.unitChoice = choose({
      legend: word('units of the job'),
      className: 'inline',
      value: this.job.state.units,
      choices: ['cm', 'mm', 'in'].map((value) => ({ value, text: term(value, 'unit') })),
      pick: (units) => this.job.act({ units }),
    });
    return this.unitChoice.element;
  }

  // show where the tape goes for a measurement.
  show(name) {
    if (!name || name === this.shown) return;
    this.shown = name;
    const help = this.job.field('body', name)?.help;
    showTape(this.figure, name, term(name, 'how') === name.replaceAll('_', ' ') ? help : undefined);
  }

  refresh() {
    this.all().forEach((field) => field.refresh());
    this.faults.refresh();
    this.clients.refresh();
    this.unitChoice.select(this.job.state.units);
    if (!this.element.contains(document.activeElement)) this.place();
    write(this.more.firstChild, word('measure.more'));
  }
}
