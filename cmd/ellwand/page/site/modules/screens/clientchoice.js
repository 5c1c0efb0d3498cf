// A client's measurements, taken into the job by name.

import { el, write } from '../element.js';
import { pickOne } from '../choose.js';
import { get } from '../server.js';
import { failed, say } from '../say.js';
import { date, listed, millimetres, term, typed, word } from '../words.js';

export class ClientChoice {
  constructor(job) {
    this.job = job;
    this.element = el('section', { class: 'client', hidden: true });
    get('/api/clients')
      .then((clients) => this.offer(clients))
      .catch(failed);
  }

  offer(clients) {
    if (!clients.length) return;
    const choices = clients.map((client) => [
      client.name,
      client.date ? word('client of', { name: client.name, date: date(client.date) }) : client.name,
    ]);
    const known = clients.find((client) => client.name === this.job.state.client)?.name;
    const pick = pickOne({ label: word('known client'), choices, value: known });
    const take = () => this.take(clients.find((client) => client.name === pick.control.value));
    this.newer = el('p', { class: 'doubt', role: 'status', hidden: true });
    const button = el('button', { type: 'button', click: take }, word('take measurements'));
    this.element.append(pick.element, button, this.newer);
    this.element.hidden = false;
    this.known = clients.find((client) => client.name === this.job.state.client);
    this.refresh();
  }

  // refresh says what was measured otherwise since: a fitting that the job does not know of.
  refresh() {
    if (!this.known) return;
    const isOther = ([name, value]) => {
      const inJob = this.job.field('body', name)?.value;
      const mm = (text, units) => millimetres(String(text), units);
      return inJob && Math.abs(mm(value, this.known.units) - mm(inJob, this.job.state.units)) > 0.05;
    };
    const others = Object.entries(this.known.body).filter(isOther);
    this.newer.hidden = !others.length;
    if (!others.length) return;
    const said = others.map(([name, value]) => `${term(name, 'label')} ${typed(value)}`);
    write(this.newer, word('measured otherwise', { date: date(this.known.date), said: listed(said) }));
  }

  // take the measurements over, in the units in which they were noted.
  take(client) {
    const withUnits = (value) =>
      client.units && client.units !== this.job.state.units ? `${value} ${client.units}` : value;
    const actions = Object.entries(client.body).map(([name, value]) => ({
      set: { path: ['body', name], value: withUnits(value) },
    }));
    this.job
      .act({ set: { path: ['client'], value: client.name } }, ...actions)
      .then(() => say(word('measurements taken', { name: client.name })));
  }
}
