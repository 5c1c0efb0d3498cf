// One opened job: what the program knows of it, and the changes that go to it. The
// program holds the state; the page shows it.

import { get, post, jobAddress, query } from './server.js';
import { failed } from './say.js';
import { Stream } from './stream.js';

// samePath says whether two paths lead to one place.
export const samePath = (a, b) => a && b && JSON.stringify(a) === JSON.stringify(b);

export class Job extends EventTarget {
  constructor(name) {
    super();
    this.name = name;
    this.state = null;
    this.layouts = new Map();
    this.amounts = null; // of all cloths, and for which revision
    this.viewed = null; // the lay that was last in view
    this.waiting = [];
    this.onWay = [];
    this.sending = null;
  }

  // open reads the job and listens to what becomes of it.
  async open() {
    this.events = new Stream(
      jobAddress(this.name, 'events'),
      {
        revision: ({ revision }) => this.follow(revision),
        layout: (layout) => this.hold(layout),
        progress: (progress) => this.tell('progress', progress),
        done: (done) => this.tell('ended', done),
        outside: () => this.reload(),
      },
      () => this.tell('again', null),
    );
    [this.state] = await Promise.all([get(jobAddress(this.name)), this.events.answered]);
  }

  close() {
    this.events?.close();
  }

  tell(kind, detail) {
    this.dispatchEvent(new CustomEvent(kind, { detail }));
  }

  follow(revision) {
    if (this.state && !this.sending && revision > this.state.revision) this.reload();
  }

  async reload() {
    try {
      this.take(await get(jobAddress(this.name)));
    } catch (fault) {
      failed(fault);
    }
  }

  take(state) {
    if (this.state && state.revision < this.state.revision) return;
    this.state = withLast(state, this.state);
    this.tell('state', state);
  }

  // act sends actions, one request after the other; what is typed into one field while
  // a request is on its way goes as its last value. The promise ends when they are done.
  act(...actions) {
    for (const action of actions) {
      const last = this.waiting.at(-1);
      if (action.set?.typing && last?.set?.typing && samePath(action.set.path, last.set.path))
        this.waiting.pop();
      this.waiting.push(action);
    }
    this.sending ??= this.send().finally(() => {
      this.sending = null;
      this.tell('saved', true);
    });
    this.tell('saved', false);
    return this.sending;
  }

  async send() {
    while (this.waiting.length) {
      this.onWay = this.waiting.splice(0);
      try {
        await this.sendOnce(this.onWay);
      } catch (fault) {
        this.onWay = [];
        failed(fault);
        this.tell('refused', fault);
        await this.reload();
      }
    }
  }

  // sendOnce takes in what another page did meanwhile, once.
  async sendOnce(actions) {
    const request = () => post(jobAddress(this.name, 'act'), { base: this.state.revision, do: actions });
    const arrived = (state) => {
      this.onWay = [];
      this.take(state);
    };
    try {
      arrived(await request());
    } catch (fault) {
      if (fault.status !== 409) throw fault;
      this.take(await get(jobAddress(this.name)));
      const { outside } = this.state;
      arrived(await request());
      if (outside && !this.state.outside) this.tell('taken', outside);
    }
  }

  // isOnItsWay says whether what was written at a path has not come to the program yet, so
  // that the state is older than what is written there.
  isOnItsWay(path) {
    const pathOf = ({ set, unset }) => (set ?? unset)?.path;
    return [...this.waiting, ...this.onWay].some((action) => samePath(pathOf(action), path));
  }

  // field at a path, or undefined.
  field(...path) {
    return this.state.fields.find((field) => samePath(field.path, path));
  }

  // fields whose path begins so.
  fields(...path) {
    return this.state.fields.filter((field) => path.every((key, i) => field.path[i] === key));
  }

  // hold a layout, unless it answers an older question than the one that is held.
  hold(layout) {
    if (layout.revision < this.layouts.get(layKey(layout))?.revision) return;
    this.layouts.set(layKey(layout), layout);
    this.tell('layout', layout);
  }

  // layout that is known of a cloth, width and lay; it is asked for when it is not.
  layout(lay) {
    const known = this.layouts.get(layKey(lay));
    if (!known) this.fetchLayout(lay);
    return known;
  }

  async fetchLayout({ cloth, width, lay }) {
    try {
      this.hold(await get(jobAddress(this.name, 'layout') + query({ cloth, width, lay })));
    } catch (fault) {
      if (fault.status !== 404) failed(fault);
    }
  }
}

// withLast keeps what was drafted last while the job cannot be drafted, as when a value is
// half written: nothing goes away under the hand.
function withLast(state, last) {
  if (state.sound !== false || !last) return state;
  const { pieces, cloths, truing, size, sizes } = last;
  return { ...state, pieces: pieces ?? [], cloths: cloths ?? [], truing: truing ?? [], size, sizes };
}

// layKey tells lays apart.
export const layKey = ({ cloth, width, lay }) => JSON.stringify([cloth, width, lay]);
