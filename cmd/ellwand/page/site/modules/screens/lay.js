// The lay: the cloth with its pieces, in each width and way of laying; improving while
// it is looked at, and moved by hand.

import { address } from '../address.js';
import { el, fill, set, write } from '../element.js';
import { Remarks } from '../lay/remarks.js';
import { ClothDrawing } from '../lay/cloth.js';
import { Hand } from '../lay/hand.js';
import { LayList, PiecePanel } from '../lay/list.js';
import { addedText, brokenText, refusedText, sentenceOf } from '../lay/sentences.js';
import { jobAddress, post, query } from '../server.js';
import { failed, say } from '../say.js';
import { layKey } from '../job.js';
import { length, term, typed, word } from '../words.js';
import { wrongFields } from '../standing.js';
import { ClothForm } from './clothform.js';
import { LayTabs } from './laytabs.js';
import { nextStep } from './next.js';

export function lay(job, rest) {
  const screen = new Lay(job, rest);
  return {
    element: screen.element,
    refresh: () => screen.refresh(),
    leave: () => screen.leave(),
    arrive: (parts) => screen.arrive(parts),
  };
}

class Lay {
  constructor(job, rest) {
    this.job = job;
    this.cloth = new ClothDrawing();
    this.sliding = el('input', { type: 'checkbox', checked: true });
    this.hand = new Hand({
      job,
      cloth: this.cloth,
      lay: () => this.lay,
      sliding: () => this.sliding.checked,
      show: (found) => this.showFound(found),
      settled: () => this.settled(),
      dropped: () => {
        this.asked = { isDropped: true };
      },
      pick: (id) => this.pick(id),
    });
    this.panel = new PiecePanel(job, this.hand);
    this.list = new LayList(this.hand, (id) => this.pick(id));
    this.build();
    this.listen();
    this.arrive(rest);
  }

  build() {
    this.tabs = new LayTabs(this.job);
    this.clothForm = new ClothForm(this.job);
    this.faults = new Remarks(this.job, () => this.clothForm.fields);
    this.amount = el('p', { class: 'amount' });
    this.sentence = el('p', { class: 'sentence' });
    this.progress = el('p', { class: 'notes progress' });
    this.wrong = el('ul', { class: 'wrongs', role: 'status' });
    this.room = el(
      'div',
      { class: 'table', tabindex: 0, role: 'region', 'aria-label': word('lay.cloth') },
      this.cloth.picture,
    );
    this.element = el(
      'div',
      { class: 'sheet wide' },
      el('h1', {}, word('lay.title')),
      this.faults.element,
      this.tabs.element,
      this.clothForm.element,
      el('div', { class: 'said' }, this.amount, el('div', {}, this.sentence, this.progress, this.wrong)),
      el(
        'div',
        { class: 'bench' },
        this.room,
        el('div', { class: 'besideCloth' }, this.buttons(), this.panel.element),
      ),
      this.list.element,
      nextStep(this.job, 'charge'),
    );
  }

  buttons() {
    const button = (key, click, attributes = {}) =>
      el('button', { type: 'button', click, ...attributes }, word(key));
    this.again = button('lay anew', () => this.lookAgain('usual'), { class: 'main' });
    this.longer = button('lay longer', () => this.lookAgain('long'));
    this.stopping = button('stop', () => this.stop(), { hidden: true, class: 'stop' });
    this.back = button('undo', () => this.job.act({ undo: {} }));
    this.forth = button('redo', () => this.job.act({ redo: {} }));
    this.freeing = button('free all', () => this.job.act({ free: { ...this.lay, piece: null } }));
    this.printing = el('a', { target: '_blank', rel: 'noopener' }, word('print lay'));
    return el(
      'section',
      { class: 'buttons', 'aria-label': word('lay.buttons') },
      this.again,
      this.longer,
      this.back,
      this.forth,
      this.freeing,
      this.stopping,
      el('label', { class: 'tick' }, this.sliding, ' ', word('slide')),
      this.printing,
    );
  }

  listen() {
    this.ends = new AbortController();
    const on = (kind, act) =>
      this.job.addEventListener(kind, ({ detail }) => act(detail), { signal: this.ends.signal });
    const isInView = (one) => this.lay && layKey(one) === layKey(this.lay);
    on('layout', (layout) => isInView(layout) && this.arrived(layout));
    on('progress', (progress) => isInView(progress) && this.showProgress(progress));
    on('ended', (done) => isInView(done) && this.ended(done));
    on('again', () => {
      this.searchedFor = null; // what was told meanwhile was not heard
      this.refresh();
    });
    on('refused', () => this.lay && this.job.fetchLayout(this.lay));
    addEventListener('resize', () => this.refreshLayout(), { signal: this.ends.signal });
  }

  // arrived is a layout of the lay in view.
  arrived(layout) {
    if (layout.searching) this.stopping.hidden = false;
    this.refreshLayout();
  }

  leave() {
    this.ends.abort();
    this.stop();
  }

  // arrive at a lay that the address names, or at the one that is recommended, if that is
  // known: nobody waits for all lays to see one, and none goes away from under the hand.
  arrive(rest) {
    const found = this.tabs.named(rest);
    if (this.lay && found && layKey(found) !== layKey(this.lay)) this.stop();
    this.lay = found;
    this.picked = null;
    this.searchedFor = null;
    this.asked = null;
    write(this.progress, '');
    this.refresh();
  }

  refresh() {
    this.tabs.giveUp();
    this.clothForm.refresh();
    this.faults.refresh();
    if (!this.lay) this.lay = this.tabs.recommended();
    if (!this.lay) return;
    this.follow();
    if (!this.lay) return;
    this.job.viewed = this.lay;
    this.tabs.show(this.lay);
    this.clothForm.show(this.lay.cloth);
    this.back.disabled = !this.job.state.can?.undo;
    this.forth.disabled = !this.job.state.can?.redo;
    if (this.searchedFor !== this.job.state.revision) this.search('usual');
    this.refreshLayout();
  }

  // follow the lay in view where its cloth has another width now.
  follow() {
    const now = this.tabs.following(this.lay);
    if (now && layKey(now) === layKey(this.lay)) return;
    this.lay = now;
    this.picked = null;
    if (now) history.replaceState(null, '', address(this.job.name, 'lay', now.cloth, now.width, now.lay));
  }

  refreshLayout() {
    if (!this.lay || this.hand.isBusy) return;
    const layout = this.job.layout(this.lay);
    this.room.classList.toggle('empty', !layout);
    this.tabs.show(this.lay);
    if (!layout) {
      write(this.amount, '');
      write(this.sentence, word('laying'));
      return;
    }
    this.cloth.show(layout, this.job.state.units, this.room.clientWidth || 800, (id) =>
      this.hand.listeners(id),
    );
    this.room.classList.toggle('long', this.cloth.isLong);
    this.list.show(layout, this.job.state.units);
    this.showAmount(layout);
    this.pick(this.picked);
    this.printing.hidden =
      wrongFields(this.job).length > 0 || layout.verified === false || layout.revision !== this.job.state.revision;
    set(this.printing, 'href', `/print/${encodeURIComponent(this.job.name)}/plan${query(this.lay)}`);
    this.freeing.disabled = !layout.pieces.some((piece) => piece.by_hand || piece.locked);
  }

  showAmount(layout) {
    write(this.amount, typed(layout.buy ?? layout.amount ?? ''));
    write(this.sentence, [sentenceOf(layout), addedText(layout, this.job.state.units)].filter(Boolean).join(' '));
    this.showWrongs(layout.broken ?? [], layout.verified === false ? [word('not printed')] : []);
  }

  // showFound while a piece is in the hand: what is wrong, and the amount.
  showFound(found) {
    if (found.amount) write(this.amount, typed(found.amount));
    const under = (found.overlaps ?? []).map(({ piece }) => this.hand.piece(piece)).filter(Boolean);
    const overlaps = under.length
      ? [word('lies on', { names: under.map((piece) => term(piece.name, 'piece')).join(', ') })]
      : [];
    const along = [
      found.comes && word('comes along', { n: found.comes }),
      found.goes && word('goes along', { n: found.goes }),
    ];
    this.showWrongs(found.broken ?? [], [...overlaps, ...along.filter(Boolean)]);
  }

  showWrongs(broken, others) {
    const sentences = [
      ...others,
      ...broken.map(brokenText),
    ];
    const key = JSON.stringify(sentences);
    if (key === this.wronged) return;
    this.wronged = key;
    fill(
      this.wrong,
      sentences.map((sentence) => el('li', {}, sentence)),
    );
  }

  showProgress(progress) {
    write(this.progress, word('found so far', { length: typed(progress.sentence) }));
    this.stopping.hidden = false;
  }

  ended(done) {
    this.stopping.hidden = true;
    const refused = done.refused && refusedText(done);
    const result = refused ? '' : this.resultText();
    write(this.progress, result);
    say(refused || result || word('laid'));
    this.refreshLayout();
    if (refused) write(this.sentence, refused);
    this.tabs.reckon(this.ends.signal).then(() => this.lay && this.tabs.show(this.lay), failed);
  }

  // resultText of a search that somebody asked for, by a button or by setting a piece down.
  resultText() {
    const { asked } = this;
    this.asked = null;
    if (!asked) return '';
    if (asked.isDropped) return word('held rest');
    const saved = asked.length - (this.job.layouts.get(layKey(this.lay))?.length_mm ?? asked.length);
    return saved < 1 ? word('nothing shorter') : word('shorter found', { saved: length(saved, this.job.state.units) });
  }

  settled() {
    this.refreshLayout();
  }

  pick(id) {
    const piece = this.hand.piece(id);
    this.picked = piece ? id : null;
    this.cloth.pick(this.picked);
    this.list.mark(this.picked);
    this.panel.show(piece);
  }

  lookAgain(effort) {
    this.asked = { length: this.job.layout(this.lay)?.length_mm };
    this.search(effort);
  }

  async search(effort) {
    this.searchedFor = this.job.state.revision;
    this.stopping.hidden = false;
    try {
      await post(jobAddress(this.job.name, 'lay'), { ...this.lay, effort });
    } catch (fault) {
      if (!fault.status) return failed(fault);
      this.stopping.hidden = true;
      write(this.sentence, fault.message);
    }
  }

  stop() {
    if (this.lay) post(jobAddress(this.job.name, 'stop'), this.lay).catch(failed);
  }
}
