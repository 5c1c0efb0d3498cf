// Keeping: the history that can be gone back in, and the job's own file.

import { el, fill } from '../element.js';
import { Faults, labelOf } from '../field.js';
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
    this.nothing = el('p', { class: 'notes' }, word('history.none'));
    this.text = el('textarea', { rows: 24, spellcheck: 'false', 'aria-label': word('keep.file') });
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
      this.nothing,
      this.list,
      el(
        'details',
        { open: job.state.sound === false ? true : null },
        el('summary', {}, word('keep.file')),
        this.text,
        el('p', {}, el('button', { type: 'button', click: () => this.write() }, word('keep.write'))),
      ),
    );
  }

  refresh() {
    const { history = [], text = '', can = {} } = this.job.state;
    this.faults.refresh();
    this.back.disabled = !can.undo;
    this.forth.disabled = !can.redo;
    if (document.activeElement !== this.text) this.text.value = text;
    const key = JSON.stringify(history);
    if (key === this.shown) return;
    this.shown = key;
    this.nothing.hidden = history.length > 0;
    fill(
      this.list,
      [...history]
        .reverse()
        .map((one) =>
          el(
            'li',
            { 'aria-current': one.now ? 'step' : null },
            el('span', {}, this.what(one)),
            ' ',
            el('time', { datetime: one.when, class: 'notes' }, moment(one.when)),
            ' ',
            one.now
              ? el('em', {}, word('here'))
              : el(
                  'button',
                  { type: 'button', class: 'plain', click: () => this.restore(one) },
                  word('go back here'),
                ),
          ),
        ),
    );
  }

  // what a step changed: the field by its label, or the kind of the change.
  what({ kind, path }) {
    const keys = (path ?? '').split(/[.[\]]+/).filter((key) => key && !/^\d+$/.test(key));
    if (!keys.length) return term(kind, 'history');
    return word('history.of', { kind: term(kind, 'history'), what: labelOf(keys) });
  }

  restore({ step }) {
    this.job.act({ restore: { step } }).then(() => say(word('went back')));
  }

  // write the whole file anew, as it stands in the box.
  write() {
    this.job.act({ text: this.text.value }).then(() => say(word('changed')));
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
