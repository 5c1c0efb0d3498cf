// A list of texts of the job, written as the lines of one field: an address, terms.

import { el, fresh } from '../element.js';
import { samePath } from '../job.js';
import { labelOf } from '../field.js';

export class TextLines {
  constructor(job, path, rows) {
    Object.assign(this, { job, path });
    const id = fresh('lines');
    this.control = el('textarea', {
      id,
      rows,
      input: () => this.send(true),
      change: () => this.send(false),
    });
    this.element = el('div', { class: 'field lines' }, el('label', { for: id }, labelOf(path)), this.control);
    this.refresh();
  }

  known() {
    return (this.job.state.groups ?? []).find((group) => samePath(group.path, this.path))?.list ?? [];
  }

  written() {
    return this.control.value
      .split('\n')
      .map((line) => line.trim())
      .filter(Boolean);
  }

  send(typing) {
    const value = this.written();
    const { path } = this;
    if (JSON.stringify(value) === JSON.stringify(this.known()) && !this.job.isOnItsWay(path)) return;
    this.job.act(value.length ? { set: { path, value, typing } } : { unset: { path } });
  }

  refresh() {
    if (document.activeElement === this.control || this.job.isOnItsWay(this.path)) return;
    this.control.value = this.known().join('\n');
  }
}
