// The lays of a job to choose from: first the cloths in their widths, each with its
// amount; then the ways of laying the one that is looked at.

import { el, fill, write } from '../element.js';
import { address } from '../address.js';
import { layKey } from '../job.js';
import { recommendedText } from '../recommended.js';
import { get, jobAddress } from '../server.js';
import { buyText, metres, term, typed, word } from '../words.js';

const sameWidth = (mm, width) => Math.abs(mm - parseFloat(width)) < 0.06;

// spotOf what names a lay: those names alone.
const spotOf = (one) => one && { cloth: one.cloth, width: one.width, lay: one.lay };

export class LayTabs {
  constructor(job) {
    this.job = job;
    this.widths = el('nav', { class: 'tabs', 'aria-label': word('lay.widths') });
    this.ways = el('nav', { class: 'tabs ways', 'aria-label': word('lay.ways') });
    this.why = el('p', { class: 'notes recommended' });
    this.element = el('div', {}, this.widths, this.ways, this.why);
  }

  // reckon the amounts of all lays, so that each stands at its place, and which is
  // recommended. It says whether they are found, which they are not where the job changes.
  reckon(signal) {
    const { revision } = this.job.state;
    if (this.reckonedFor !== revision) {
      this.reckonedFor = revision;
      this.reckoning = new AbortController();
      this.found = this.reckonOnce(AbortSignal.any([signal, this.reckoning.signal]));
    }
    return this.found;
  }

  async reckonOnce(until) {
    const { revision } = this.job.state;
    if (this.job.amounts?.revision === revision) return true;
    try {
      const { cloths } = await get(jobAddress(this.job.name, 'table'), until);
      this.job.amounts = { revision, cloths: cloths ?? [] };
      return true;
    } catch (fault) {
      if (this.reckonedFor === revision) this.reckonedFor = null;
      if (!fault.status && fault.name !== 'AbortError') throw fault;
      return Boolean(fault.status); // it cannot be reckoned, which the lay itself says
    }
  }

  // giveUp what is reckoned for the job as it was before: a browser has few ways to the
  // program, and the hand needs one.
  giveUp() {
    if (this.reckonedFor !== this.job.state.revision) this.reckoning?.abort();
  }

  // amountsOf the cloth and width of a lay, where they were reckoned.
  amountsOf(one) {
    return this.job.amounts?.cloths.find(
      (found) => found.name === one.cloth && sameWidth(found.width_mm, one.width),
    );
  }

  // known of a lay: its amount and length, where it was reckoned.
  known(one) {
    const layout = this.job.layouts.get(layKey(one));
    const cloth = this.amountsOf(one);
    const lay = cloth?.lays.find((found) => found.lay === one.lay);
    const length = layout?.length_mm ?? lay?.length_mm;
    return {
      buy: layout?.buy ?? (cloth?.chosen === one.lay ? buyText(cloth, this.job.state.units) : ''),
      length: length ? metres(length, this.job.state.units) : '',
      chosen: cloth?.chosen,
    };
  }

  // all lays that may be looked at.
  all() {
    return (this.job.state.cloths ?? []).flatMap((cloth) =>
      cloth.widths.flatMap((width, nth) =>
        width.lays.map((lay) => ({ cloth: cloth.name, width: width.width, nth, label: width.label, lay })),
      ),
    );
  }

  // named says whether there is a lay that an address names, and which.
  named([cloth, width, lay] = []) {
    return spotOf(this.all().find((one) => layKey(one) === layKey({ cloth, width, lay })));
  }

  // recommended lay: the one that the commands choose, of the first cloth in its first
  // width, or of the width that is said; before it is known, the first.
  recommended(isMeant = () => true) {
    const all = this.all().filter(isMeant);
    return spotOf(all.find((one) => this.known(one).chosen === one.lay) ?? all[0]);
  }

  // following a lay through a change of the job: where its width is another one now, that
  // in the same place.
  following(lay) {
    const all = this.all();
    const same = all.find((one) => layKey(one) === layKey(lay));
    if (same) this.nth = same.nth;
    const isThere = (one) => one.cloth === lay.cloth && one.lay === lay.lay && one.nth === this.nth;
    const isOfCloth = (one) => one.cloth === lay.cloth;
    return spotOf(same ?? all.find(isThere) ?? all.find(isOfCloth) ?? all[0]);
  }

  show(lay) {
    const all = this.all();
    const amounts = this.amountsOf(lay);
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
        const target = isSpot(one, lay) ? lay : this.recommended((other) => isSpot(one, other));
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
        const { length, chosen } = this.known(one);
        return { target: one, text: term(one.lay), amount: length, isRecommended: chosen === one.lay };
      },
    );
    write(this.why, amounts ? recommendedText(amounts, this.job.state.units) : '');
  }

  links(nav, lays, isCurrent, about) {
    const focused = nav.contains(document.activeElement) ? document.activeElement.getAttribute('href') : null;
    fill(
      nav,
      el(
        'ul',
        {},
        lays.map((one) => {
          const { target, text, amount, isRecommended } = about(one);
          const href = address(this.job.name, 'lay', target.cloth, target.width, target.lay);
          return el(
            'li',
            {},
            el(
              'a',
              { href, 'aria-current': isCurrent(one) ? 'page' : null },
              el('span', {}, text),
              el('strong', {}, typed(amount)),
              isRecommended && el('em', {}, word('recommended')),
            ),
          );
        }),
      ),
    );
    if (focused) [...nav.querySelectorAll('a')].find((link) => link.getAttribute('href') === focused)?.focus();
  }
}
