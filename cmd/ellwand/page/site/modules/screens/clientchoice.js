// A client's measurements, taken into the job by name.

import { el } from '../element.js';
import { pickOne } from '../choose.js';
import { get } from '../server.js';
import { failed, say } from '../say.js';
import { date, word } from '../words.js';

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
    this.element.append(pick.element, el('button', { type: 'button', click: take }, word('take measurements')));
    this.element.hidden = false;
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
