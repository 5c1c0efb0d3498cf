// A piece in the hand: by mouse, pen, finger or keys. While it is moved only its own
// transform changes; the program is asked what that means, once a frame at most, one
// question at a time.

import { post, jobAddress } from '../server.js';
import { failed, say } from '../say.js';
import { word } from '../words.js';

const steps = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
const slack = 3; // pixels that a press may slip without moving the piece

export class Hand {
  // show tells the screen what was found; dropped that the piece is set down elsewhere, and
  // settled that it lies.
  constructor({ job, lay, cloth, show, dropped, settled, pick, sliding }) {
    Object.assign(this, { job, lay, cloth, show, dropped, settled, pick, sliding });
    this.held = null;
    this.settling = 0;
  }

  // listeners of a piece on the cloth.
  listeners(id) {
    return {
      // A finger on a piece moves the piece, and does not scroll the page.
      touchstart: (event) => event.preventDefault(),
      pointerdown: (event) => this.press(event, id),
      pointermove: (event) => this.drag(event),
      pointerup: (event) => this.release(event),
      pointercancel: () => this.putBack(),
      keydown: (event) => this.key(event, id),
      focus: () => this.pick(id),
      blur: () => this.setDown(),
    };
  }

  piece(id) {
    return this.cloth.layout?.pieces.find((piece) => piece.id === id);
  }

  press(event, id) {
    // Where the end of a press was not heard, the same mouse or finger presses anew.
    if (event.button > 0 || (this.pressed && this.pressed.pointer !== event.pointerId)) return;
    this.pick(id);
    this.pressed = { id, pointer: event.pointerId, from: [event.clientX, event.clientY] };
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.focus({ preventScroll: true });
  }

  drag(event) {
    if (!this.pressed || event.pointerId !== this.pressed.pointer) return;
    const [dx, dy] = [event.clientX - this.pressed.from[0], event.clientY - this.pressed.from[1]];
    if (!this.pressed.moved && Math.hypot(dx, dy) < slack) return;
    if (!this.pressed.moved) this.take(this.pressed.id);
    this.pressed.moved = true;
    if (this.held?.id !== this.pressed.id) return;
    const [x, y] = this.held.from;
    this.moveTo([x + dx / this.cloth.scale, y - dy / this.cloth.scale]);
  }

  release(event) {
    if (!this.pressed || event.pointerId !== this.pressed.pointer) return;
    const { id, moved } = this.pressed;
    this.pressed = null;
    if (moved) this.setDown();
    else this.letGo(id);
  }

  key(event, id) {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const act = this.keyAct(event, id);
    if (!act) return;
    event.preventDefault();
    act();
  }

  keyAct(event, id) {
    const step = steps[event.key];
    if (step) return () => this.nudge(id, step, event.shiftKey ? 10 : 1);
    switch (event.key) {
      case 't':
      case 'T':
        return () => this.turn(id);
      case 'h':
      case 'H':
        return () => this.hold(id);
      case 'Enter':
      case ' ':
        return () => (this.held ? this.setDown() : this.pick(id));
      case 'Escape':
        return this.held && (() => this.putBack());
      default:
        return null;
    }
  }

  take(id) {
    if (this.held?.id === id) return;
    const piece = this.piece(id);
    this.held = { id, from: piece.at, at: piece.at, turn: piece.turn, piece };
    this.cloth.group(id).element.classList.add('moving');
  }

  nudge(id, [dx, dy], mm) {
    this.take(id);
    const [x, y] = this.held.at;
    this.moveTo([x + dx * mm, y + dy * mm]);
  }

  moveTo(at) {
    this.held.at = at;
    this.frame ??= requestAnimationFrame(() => {
      this.frame = null;
      if (!this.held) return;
      this.cloth.group(this.held.id).move(this.held.at);
      this.look();
    });
  }

  // look asks what it means that the piece lies there; the last place is always asked.
  async look() {
    if (!this.held) return;
    if (this.asking) {
      this.again = true;
      return;
    }
    const { id, at, turn } = this.held;
    this.asking = true;
    try {
      const found = await this.ask(id, at, turn, false);
      if (this.held?.id === id) this.found(found, at);
    } catch (fault) {
      failed(fault);
    }
    this.asking = false;
    if (this.again && this.held) {
      this.again = false;
      this.look();
    }
  }

  ask(id, at, turn, slide) {
    return post(jobAddress(this.job.name, 'look'), { ...this.lay(), piece: id, at, turn, slide });
  }

  // found of a piece held at a place. On the other part of a lay it may be another shape, and
  // turned another way.
  found(found, at) {
    const { id, turn, piece } = this.held;
    this.held.reshaped ||= found.other_part || turn !== piece.turn;
    if (this.held.reshaped && found.outline) {
      const [x, y] = [found.at[0] - at[0], found.at[1] - at[1]];
      const outline = found.outline.map((p) => [p[0] + x, p[1] + y]);
      this.cloth.group(id).reshape(outline, null, 1 / this.cloth.scale);
    }
    const areas = [...(found.overlaps ?? []), ...(found.broken ?? [])].flatMap((one) => one.area ?? []);
    this.cloth.mark(areas);
    this.show(found);
  }

  // turn to the next way in which the piece may lie.
  async turn(id) {
    const piece = this.piece(id);
    const turns = piece.turns ?? [];
    if (turns.length < 2) return say(word('one way only'));
    const wasHeld = this.held?.id === id;
    this.take(id);
    this.held.turn = turns[(turns.indexOf(this.held.turn) + 1) % turns.length];
    if (wasHeld) return this.look();
    return this.setDown();
  }

  // hold a piece where it lies, or let it go again.
  hold(id) {
    const piece = this.piece(id);
    const isHeld = piece.locked || piece.by_hand;
    const about = { ...this.lay(), piece: id };
    return this.job
      .act(isHeld ? { free: about } : { lock: about })
      .then(() => say(word(isHeld ? 'let go' : 'is held', { name: piece.name })));
  }

  // setDown puts the piece where the hand is; it slides until it touches, if wanted. The
  // hand is free for the next piece at once.
  async setDown() {
    const hold = this.held;
    if (!hold) return;
    this.held = null;
    this.again = false;
    this.settling += 1;
    const { id, turn, at, from, piece } = hold;
    const isMoved = at[0] !== from[0] || at[1] !== from[1] || turn !== piece.turn;
    try {
      if (isMoved) await this.place(id, at, turn);
    } catch (fault) {
      failed(fault);
    }
    this.settling -= 1;
    this.letGo(id);
  }

  async place(id, at, turn) {
    const found = this.sliding() ? await this.ask(id, at, turn, true) : { at };
    this.cloth.group(id)?.move(found.at);
    const { mirrored, on_fold, on_open } = found;
    const lies = found.other_part ? { turn: found.turn, mirrored, on_fold, on_open } : { turn, on_open };
    this.layAsIs(id, found, lies.turn);
    this.dropped();
    await this.job.act({ place: { ...this.lay(), piece: id, at: found.at, ...lies, locked: true } });
  }

  // layAsIs keeps a piece where it was put until the program has laid the rest round it.
  layAsIs(id, { at, outline, other_part }, turn) {
    const piece = this.piece(id);
    if (!piece) return;
    const isTurned = turn !== piece.turn || other_part;
    Object.assign(piece, { at, turn, by_hand: true });
    if (isTurned && outline) Object.assign(piece, { outline, grain: null });
  }

  putBack() {
    const id = this.held?.id;
    this.pressed = null;
    this.held = null;
    this.again = false;
    if (!id) return;
    this.letGo(id);
    say(word('put back'));
  }

  // isBusy while a piece is pressed, in the hand, or on its way down.
  get isBusy() {
    return Boolean(this.pressed) || this.held !== null || this.settling > 0;
  }

  letGo(id) {
    if (this.held?.id !== id) this.cloth.group(id)?.element.classList.remove('moving');
    if (this.isBusy) return;
    this.cloth.mark([]);
    this.settled();
  }
}
