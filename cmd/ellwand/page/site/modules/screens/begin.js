// The beginning: whom to dress in what, and the jobs that are there already. The first
// answer stands here, before anything is saved.

import { el, fill, set, write } from '../element.js';
import { choose, entry, pickOne } from '../choose.js';
import { get, post, picture } from '../server.js';
import { listen } from '../stream.js';
import { recommendedText } from '../recommended.js';
import { failed } from '../say.js';
import { girthsText, sent, term, typed, word } from '../words.js';
import { jobCards } from './cards.js';

// garments of the gallery, each with the girths that it cannot do without.
export const garments = {
  blouse: ['bust_girth', 'waist_girth'],
  shirt: ['bust_girth', 'waist_girth'],
  'princess dress': ['bust_girth', 'waist_girth', 'hip_girth'],
  dress: ['bust_girth', 'waist_girth', 'hip_girth'],
  skirt: ['waist_girth', 'hip_girth'],
  'circle skirt': ['waist_girth', 'hip_girth'],
  trousers: ['waist_girth', 'hip_girth'],
  kaftan: ['bust_girth', 'hip_girth'],
  apron: ['bust_girth', 'waist_girth'],
  bag: [],
};

// The units that a job may be in, and a usual width of cloth in each.
const usualWidth = { cm: '140', mm: '1400', in: '54' };

export const gallery = (pick, value) =>
  choose({
    legend: word('what is made'),
    className: 'gallery',
    value,
    pick,
    choices: Object.keys(garments).map((name) => ({
      value: name,
      text: term(name, 'garment'),
      picture: picture('garment', name),
    })),
  });

export function begin() {
  const asked = new Asked();
  const jobs = el('section', { class: 'jobs', hidden: true });
  const element = el(
    'div',
    { class: 'sheet' },
    el('h1', {}, word('begin.title')),
    el('p', { class: 'lead' }, word('begin.lead')),
    asked.element,
    el(
      'section',
      { class: 'ways' },
      el('h2', {}, word('begin.otherwise')),
      el(
        'ul',
        {},
        el('li', {}, el('a', { href: '#/pattern' }, word('begin.pattern')), ' ', word('begin.pattern.more')),
        el('li', {}, el('a', { href: '#/cloth' }, word('begin.cloth')), ' ', word('begin.cloth.more')),
      ),
    ),
    jobs,
  );
  const stop = new AbortController();
  const read = () =>
    get('/api/folder', stop.signal)
      .then((folder) => jobCards(jobs, folder, stop.signal))
      .catch(failed);
  read();
  const events = listen('jobs', read);
  return {
    element,
    leave: () => {
      stop.abort();
      events.close();
    },
  };
}

// sentencesOf an answer: which lay is recommended and why, and between what the amount may
// prove to be.
function sentencesOf(found, units) {
  const range = word('answer.range', { low: typed(found.low), high: typed(found.high) });
  return [recommendedText(found, units), found.low !== found.high && range].filter(Boolean);
}

// Asked is the question: garment, body, width of the cloth; and its answer.
class Asked {
  constructor() {
    this.garment = '';
    this.units = 'cm';
    this.bySize = false;
    this.values = {};
    this.answer = el('div', { class: 'answer', role: 'status', 'aria-live': 'polite', tabindex: -1 });
    this.body = el('div', { class: 'fields' });
    this.more = el(
      'div',
      { class: 'numbers', hidden: true },
      this.choices(),
      this.body,
      this.clothFields(),
      this.buttons(),
    );
    this.element = el(
      'form',
      { submit: (event) => this.ask(event), class: 'asked' },
      gallery((garment) => this.pick(garment)).element,
      this.more,
      this.answer,
    );
  }

  choices() {
    const units = choose({
      legend: word('units'),
      className: 'inline',
      value: this.units,
      pick: (units) => this.inUnits(units),
      choices: ['cm', 'mm', 'in'].map((value) => ({ value, text: term(value, 'unit') })),
    });
    this.how = choose({
      legend: word('body known by'),
      className: 'inline',
      value: 'measured',
      pick: (how) => this.by(how === 'size'),
      choices: [
        { value: 'measured', text: word('by measurements') },
        { value: 'size', text: word('by size') },
      ],
    });
    return el('div', { class: 'two' }, this.how.element, units.element);
  }

  clothFields() {
    this.width = entry({
      label: word('cloth width'),
      value: usualWidth.cm,
      unit: 'cm',
      input: { required: true },
    });
    this.nap = pickOne({
      label: word('label.nap'),
      value: 'either way',
      choices: ['either way', 'one way', 'one way per garment'].map((nap) => [nap, term(nap)]),
    });
    return el('div', { class: 'fields' }, this.width.element, this.nap.element);
  }

  buttons() {
    return el(
      'p',
      { class: 'buttons' },
      el('button', { class: 'main' }, word('how much')),
      el('button', { type: 'button', click: () => this.make() }, word('make a job')),
    );
  }

  pick(garment) {
    this.garment = garment;
    this.more.hidden = false;
    this.how.element.hidden = garments[garment].length === 0;
    fill(this.answer);
    this.showBody();
    // On a small screen the form would open where nobody sees it.
    if (this.more.getBoundingClientRect().top > innerHeight / 2) this.more.scrollIntoView({ block: 'start' });
  }

  inUnits(units) {
    if (this.width.control.value === usualWidth[this.units]) this.width.control.value = usualWidth[units];
    this.units = units;
    write(this.width.unitText, units);
    this.showBody();
  }

  by(size) {
    this.bySize = size;
    this.showBody();
  }

  showBody() {
    if (this.bySize && garments[this.garment].length) return this.showSizes();
    this.fields = garments[this.garment].map((name) => [
      name,
      entry({
        label: term(name, 'label'),
        unit: this.units,
        value: this.values[name] ?? '',
        input: {
          required: true,
          name,
          input: (event) => {
            this.values[name] = event.target.value;
          },
        },
      }),
    ]);
    fill(
      this.body,
      this.fields.map(([, field]) => field.element),
    );
  }

  // showSizes of the chosen table, with the girths that a size stands for.
  async showSizes(table = this.table ?? 'women') {
    this.table = table;
    const sizes = await get(`/api/size?table=${table}`).catch(failed);
    if (!sizes || !this.bySize) return;
    const show = (size) => {
      this.size = size;
    };
    const pickTable = pickOne({
      label: word('label.table'),
      value: table,
      pick: (other) => {
        this.size = '';
        this.showSizes(other);
      },
      choices: ['women', 'misses', 'men', 'children'].map((name) => [name, term(name)]),
    });
    const middle = sizes.sizes.includes(this.size)
      ? this.size
      : sizes.sizes[Math.floor(sizes.sizes.length / 2)];
    const pickSize = pickOne({
      label: word('label.size'),
      value: middle,
      choices: sizes.sizes.map((size) => [size, girthsText(size, sizes, this.units)]),
      pick: show,
    });
    show(middle);
    pickSize.element.classList.add('broad');
    pickSize.element.append(el('span', { class: 'notes' }, word('sizes.differ')));
    fill(this.body, pickTable.element, pickSize.element);
  }

  // wanted of the program.
  wanted() {
    const cloth = { width: sent(this.width.control.value), nap: this.nap.control.value };
    const common = { garment: this.garment, units: this.units, ...cloth };
    if (!garments[this.garment].length) return common;
    if (this.bySize) return { ...common, table: this.table, size: this.size };
    return {
      ...common,
      body: Object.fromEntries(this.fields.map(([name, field]) => [name, sent(field.control.value)])),
    };
  }

  async ask(event) {
    event.preventDefault();
    this.element.setAttribute('aria-busy', 'true');
    fill(this.answer, el('p', {}, word('laying')));
    try {
      const found = await post('/api/question', this.wanted());
      fill(
        this.answer,
        el('p', { class: 'amount' }, word('answer.buy', { buy: typed(found.buy) })),
        sentencesOf(found, this.units).map((sentence) => el('p', {}, sentence)),
      );
      this.mark(false);
    } catch (fault) {
      fill(this.answer, el('p', { class: 'fault' }, fault.message));
      this.mark(fault.body?.code === 'narrow');
    }
    this.answer.focus();
    this.answer.scrollIntoView({ block: 'nearest' });
    this.element.removeAttribute('aria-busy');
  }

  // mark the width where it is what is wrong.
  mark(isNarrow) {
    set(this.width.control, 'aria-invalid', String(isNarrow));
  }

  async make() {
    if (!this.element.reportValidity()) return;
    try {
      const made = await post('/api/jobs', {
        from: 'person',
        title: term(this.garment, 'garment'),
        ...this.wanted(),
      });
      location.hash = `#/job/${encodeURIComponent(made.job)}/measure`;
    } catch (fault) {
      failed(fault);
    }
  }
}
