// Clients: their measurements with the dates on which they were taken, apart from jobs.

import { el, fill } from '../element.js';
import { entry, pickOne } from '../choose.js';
import { get, post } from '../server.js';
import { listen } from '../stream.js';
import { failed, outcome } from '../say.js';
import { showTape } from '../tape.js';
import { date, sent, term, typed, word } from '../words.js';

const measures = [
  'height',
  'bust_girth',
  'waist_girth',
  'hip_girth',
  'neck_base_girth',
  'back_neck_point_to_waist',
  'shoulder_length',
  'across_back_width',
  'across_front_width',
  'scye_depth',
  'shoulder_to_wrist',
  'upper_arm_girth',
  'wrist_girth',
  'waist_to_hip',
  'body_rise',
  'inside_leg_length',
  'outside_leg_length',
];

export function clients() {
  const screen = new Clients();
  const events = listen('jobs', () => {});
  return { element: screen.element, leave: () => events.close() };
}

class Clients {
  constructor() {
    this.list = el('div', { class: 'clients' });
    this.form = el('form', { class: 'visit', submit: (event) => this.note(event) });
    this.element = el(
      'div',
      { class: 'sheet' },
      el('h1', {}, word('clients.title')),
      el('p', {}, word('clients.how')),
      this.list,
      this.form,
    );
    this.showForm();
    this.read();
  }

  async read() {
    try {
      this.show(await get('/api/clients'));
    } catch (fault) {
      failed(fault);
    }
  }

  show(all) {
    fill(
      this.list,
      all.map((client) =>
        el(
          'details',
          {},
          el(
            'summary',
            {},
            client.name,
            ' ',
            el('span', { class: 'notes' }, client.date ? date(client.date) : ''),
          ),
          (client.visits ?? [{ date: client.date, body: client.body }]).map((visit) =>
            el(
              'section',
              {},
              el('h2', {}, visit.date ? date(visit.date) : ''),
              el(
                'dl',
                { class: 'measures' },
                Object.entries(visit.body).map(([name, value]) =>
                  el(
                    'div',
                    {},
                    el('dt', {}, term(name, 'label')),
                    el('dd', {}, `${typed(value)} ${/[a-z]/.test(value) ? '' : (client.units ?? '')}`.trim()),
                  ),
                ),
              ),
            ),
          ),
          el('button', { type: 'button', click: () => this.showForm(client) }, word('clients.fitting')),
        ),
      ),
    );
  }

  showForm(client = null) {
    this.units = client?.units ?? 'cm';
    this.name = entry({ label: word('clients.name'), value: client?.name ?? '', input: { required: true } });
    this.day = entry({
      label: word('clients.date'),
      value: new Date().toISOString().slice(0, 10),
      input: { type: 'date', required: true },
    });
    this.unit = pickOne({
      label: word('units'),
      value: this.units,
      choices: ['cm', 'mm', 'in'].map((unit) => [unit, term(unit, 'unit')]),
    });
    this.figure = el('figure', { class: 'where' });
    const known = client?.body ?? {};
    this.fields = measures.map((name) => [
      name,
      entry({
        label: term(name, 'label'),
        value: known[name] ? typed(known[name]) : '',
        input: { focus: () => showTape(this.figure, name) },
      }),
    ]);
    fill(
      this.form,
      el('h2', {}, client ? word('clients.change', { name: client.name }) : word('clients.new')),
      el('div', { class: 'fields' }, this.name.element, this.day.element, this.unit.element),
      el(
        'div',
        { class: 'beside' },
        el(
          'div',
          { class: 'fields' },
          this.fields.map(([, field]) => field.element),
        ),
        this.figure,
      ),
      el('p', { class: 'buttons' }, el('button', { class: 'main' }, word('clients.note'))),
    );
    showTape(this.figure, 'bust_girth');
    if (client) this.name.control.focus();
  }

  async note(event) {
    event.preventDefault();
    const given = this.fields
      .map(([name, field]) => [name, sent(field.control.value)])
      .filter(([, value]) => value);
    try {
      await post('/api/clients', {
        name: this.name.control.value.trim(),
        date: this.day.control.value,
        units: this.unit.control.value,
        body: Object.fromEntries(given),
      });
      await this.read();
      this.showForm();
      outcome(this.form, word('clients.noted'));
    } catch (fault) {
      failed(fault);
    }
  }
}
