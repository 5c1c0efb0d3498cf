// Keeping: the history that can be gone back in, and the job's own file.

import { el, fill, write } from '../element.js';
import { Faults } from '../field.js';
import { moment, term, word } from '../words.js';
import { post } from '../server.js';
import { failed, say } from '../say.js';

export function keep(job) {
  const screen = new Keep(job);
  return { element: screen.element, refresh: () => screen.refresh() };
}

class Keep {
  constructor(job) {
    this.job = job;
    this.faults = new Faults(job);
    this.list = el('ol', { class: 'history', reversed: true });
    this.text = el('pre', { tabindex: 0, role: 'region', 'aria-label': word('keep.file') });
    this.back = el('button', { type: 'button', click: () => job.act({ undo: {} }) }, word('undo'));
    this.forth = el('button', { type: 'button', click: () => job.act({ redo: {} }) }, word('redo'));
    this.element = el(
      'div',
      { class: 'sheet' },
      el('h1', {}, word('keep.title')),
      el('p', {}, word('keep.how', { file: job.name })),
      this.faults.element,
      el(
        'p',
        { class: 'buttons' },
        this.back,
        this.forth,
        el('button', { type: 'button', click: () => this.copy() }, word('keep.copy')),
      ),
      el('h2', {}, word('keep.history')),
      this.list,
      el('details', {}, el('summary', {}, word('keep.file')), this.text),
    );
  }

  refresh() {
    const { history = [], text = '', can = {} } = this.job.state;
    this.faults.refresh();
    this.back.disabled = !can.undo;
    this.forth.disabled = !can.redo;
    write(this.text, text);
    const key = JSON.stringify(history);
    if (key === this.shown) return;
    this.shown = key;
    fill(
      this.list,
      [...history]
        .reverse()
        .map((one) =>
          el(
            'li',
            {},
            el('span', {}, this.what(one)),
            ' ',
            el('time', { datetime: one.when, class: 'notes' }, moment(one.when)),
            ' ',
            el(
              'button',
              { type: 'button', class: 'plain', click: () => this.restore(one) },
              word('go back here'),
            ),
          ),
        ),
    );
  }

  what({ what, path, value }) {
    if (path) return word('history.set', { what: term(path.at(-1), 'label'), value: value ?? '' });
    return term(what, 'history');
  }

  restore({ revision }) {
    this.job.act({ restore: { revision } }).then(() => say(word('went back')));
  }

  async copy() {
    try {
      const made = await post('/api/jobs', {
        from: 'copy',
        of: this.job.name,
        title: word('copy of', { title: this.job.state.title }),
      });
      location.hash = `#/job/${encodeURIComponent(made.job)}/measure`;
    } catch (fault) {
      failed(fault);
    }
  }
}
