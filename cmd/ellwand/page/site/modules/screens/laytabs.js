// The lays of a job to choose from: first the cloths in their widths, each with its
// amount; then the ways of laying the one that is looked at.

import { el, fill } from '../element.js';
import { address } from '../address.js';
import { layKey } from '../job.js';
import { get, jobAddress } from '../server.js';
import { buyText, metres, term, typed, word } from '../words.js';

const sameWidth = (mm, width) => Math.abs(mm - parseFloat(width)) < 0.06;

export class LayTabs {
  constructor(job) {
    this.job = job;
    this.widths = el('nav', { class: 'tabs', 'aria-label': word('lay.widths') });
    this.ways = el('nav', { class: 'tabs ways', 'aria-label': word('lay.ways') });
    this.reckoned = [];
    this.element = el('div', {}, this.widths, this.ways);
  }

  // reckon the amounts of all lays, so that each stands at its place; what is in view comes
  // first, so this is asked for when that is found.
  async reckon(signal) {
    const { revision } = this.job.state;
    if (this.reckonedFor === revision) return;
    this.reckonedFor = revision;
    this.reckoning = new AbortController();
    const until = AbortSignal.any([signal, this.reckoning.signal]);
    try {
      this.reckoned = (await get(jobAddress(this.job.name, 'table'), until)).cloths ?? [];
    } catch (fault) {
      if (this.reckonedFor === revision) this.reckonedFor = null;
      if (!fault.status && fault.name !== 'AbortError') throw fault;
    }
  }

  // giveUp what is reckoned for the job as it was before: a browser has few ways to the
  // program, and the hand needs one.
  giveUp() {
    if (this.reckonedFor !== this.job.state.revision) this.reckoning?.abort();
  }

  // known of a lay: its amount and length, where it was reckoned.
  known(one) {
    const layout = this.job.layouts.get(layKey(one));
    const cloth = this.reckoned.find(
      (found) => found.name === one.cloth && sameWidth(found.width_mm, one.width),
    );
    const lay = cloth?.lays.find((found) => found.lay === one.lay);
    const length = layout?.length_mm ?? lay?.length_mm;
    return {
      buy: layout?.buy ?? (cloth?.chosen === one.lay ? buyText(cloth, this.job.state.units) : (one.buy ?? '')),
      length: length ? metres(length, this.job.state.units) : '',
      chosen: cloth?.chosen,
    };
  }

  // all lays that may be looked at.
  all() {
    return (this.job.state.cloths ?? []).flatMap((cloth) =>
      cloth.widths.flatMap((width) =>
        width.lays.map((lay) => ({
          cloth: cloth.name,
          width: width.width,
          label: width.label,
          lay,
          chosen: lay === width.chosen,
          buy: lay === width.chosen ? width.buy : '',
        })),
      ),
    );
  }

  // named lay, or else the one that is chosen, or the first.
  named([cloth, width, lay] = []) {
    const all = this.all();
    const isNamed = (one) => one.cloth === cloth && one.width === width && one.lay === lay;
    const found = all.find(isNamed) ?? all.find((one) => one.chosen) ?? all[0];
    return found && { cloth: found.cloth, width: found.width, lay: found.lay };
  }

  show(lay) {
    const all = this.all();
    const key = JSON.stringify([lay, all.map((one) => [layKey(one), this.known(one)])]);
    if (key === this.shown) return;
    this.shown = key;
    const isSpot = (one, other) => one.cloth === other.cloth && one.width === other.width;
    const first = all.filter((one, i) => all.findIndex((other) => isSpot(one, other)) === i);
    this.links(
      this.widths,
      first,
      (one) => isSpot(one, lay),
      (one) => {
        const target = isSpot(one, lay)
          ? lay
          : (all.find(
              (other) =>
                isSpot(one, other) && (this.known(other).chosen ?? (other.chosen && other.lay)) === other.lay,
            ) ?? one);
        return {
          target,
          text: `${term(one.cloth, 'cloth')}, ${typed(one.label)}`,
          amount: this.known(target).buy,
        };
      },
    );
    this.links(
      this.ways,
      all.filter((one) => isSpot(one, lay)),
      (one) => one.lay === lay.lay,
      (one) => {
        return { target: one, text: term(one.lay), amount: this.known(one).length };
      },
    );
  }

  links(nav, lays, isCurrent, about) {
    const focused = nav.contains(document.activeElement) ? document.activeElement.getAttribute('href') : null;
    fill(
      nav,
      el(
        'ul',
        {},
        lays.map((one) => {
          const { target, text, amount } = about(one);
          const href = address(this.job.name, 'lay', target.cloth, target.width, target.lay);
          return el(
            'li',
            {},
            el(
              'a',
              { href, 'aria-current': isCurrent(one) ? 'page' : null },
              el('span', {}, text),
              el('strong', {}, typed(amount)),
            ),
          );
        }),
      ),
    );
    if (focused) [...nav.querySelectorAll('a')].find((link) => link.getAttribute('href') === focused)?.focus();
  }
}
