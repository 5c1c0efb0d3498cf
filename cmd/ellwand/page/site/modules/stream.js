// What becomes of something, told by the program as it happens. A browser has six
// connections to one program, whatever its tabs: so a tab that nobody sees closes its
// streams, and opens them again when it is seen, which tell the present state first.
// Meanwhile it says from time to time that it is there, so that the program stays.

import { post } from './server.js';

// every so many ms a hidden tab says that it is there; browsers hold timers of hidden tabs
// back to one a minute, which the program waits for.
const every = 20_000;

const streams = new Set();
let saying = null;

export class Stream {
  // of an address: acts by the kind of event that they are called with, and again, which is
  // called when it was opened after something may have been missed.
  constructor(address, acts, again = () => {}) {
    Object.assign(this, { address, acts, again, source: null });
    this.mayHaveMissed = document.hidden;
    streams.add(this);
    this.answered = document.hidden ? Promise.resolve() : this.open();
  }

  // open it; the promise ends when it is, or cannot be.
  open() {
    if (this.source) return Promise.resolve();
    const source = new EventSource(this.address);
    this.source = source;
    for (const [kind, act] of Object.entries(this.acts))
      source.addEventListener(kind, (event) => act(JSON.parse(event.data)));
    source.addEventListener('open', () => {
      if (this.mayHaveMissed) this.again();
      this.mayHaveMissed = true;
    });
    return new Promise((heard) => {
      source.addEventListener('open', heard, { once: true });
      source.addEventListener('error', heard, { once: true });
    });
  }

  rest() {
    this.source?.close();
    this.source = null;
  }

  close() {
    streams.delete(this);
    this.rest();
  }
}

// listen to what becomes of the folder; as long as somebody listens, the program stays.
export const listen = (kind, act) => new Stream('/api/events', { [kind]: act }, act);

function seenOrNot() {
  clearInterval(saying);
  streams.forEach((stream) => (document.hidden ? stream.rest() : stream.open()));
  if (document.hidden) saying = setInterval(() => post('/api/here').catch(() => {}), every);
}

document.addEventListener('visibilitychange', seenOrNot);
if (document.hidden) seenOrNot();
