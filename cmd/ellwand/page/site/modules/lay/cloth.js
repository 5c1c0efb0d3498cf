// The drawing of a cloth with what lies on it. Along the cloth runs to the right, across
// it upwards, from the edge nearest to the cutter. Pieces keep their elements while the
// layout improves, so that nothing flickers.

import { draw, fill, set, write } from '../element.js';
import { arrowPath, boxOf, pathOf, roomiest } from '../plane.js';
import { bare, term, word } from '../words.js';
import { Ground } from './ground.js';

const least = 220; // pixels of the width of a cloth

export class ClothDrawing {
  constructor() {
    this.picture = draw('svg', { class: 'cloth', role: 'group' });
    this.ground = new Ground();
    this.pieces = draw('g');
    this.over = draw('g', { class: 'over' });
    this.picture.append(this.ground.hatching, this.ground.element, this.pieces, this.over);
    this.groups = new Map();
  }

  // show a layout in so many pixels of width; hands are the listeners of a piece, and
  // without them it is a picture.
  show(layout, units, room, hands) {
    this.layout = layout;
    set(this.picture, 'role', hands ? 'group' : 'img');
    this.hands = hands;
    this.scaleTo(layout, room);
    set(
      this.picture,
      'aria-label',
      word('cloth picture', {
        cloth: term(layout.cloth, 'cloth'),
        length: `${bare(layout.length_mm, units)} ${units}`,
      }),
    );
    this.ground.show(layout, units, this.frame, 1 / this.scale);
    const seen = new Set(layout.pieces.map((piece) => piece.id));
    layout.pieces.forEach((piece) => this.showPiece(piece));
    for (const [id, group] of this.groups) {
      if (seen.has(id)) continue;
      group.element.remove();
      this.groups.delete(id);
    }
  }

  scaleTo(layout, room) {
    const ends = layout.pieces.map((piece) => piece.at[0] + boxOf([piece.outline]).right);
    const end = Math.ceil((Math.max(layout.length_mm, 400, ...ends) + 120) / 200) * 200;
    const most = Math.min(Math.max(innerHeight - 330, 360), 720);
    const rough = Math.min(Math.max(room / (end + 120), least / layout.width_mm), most / layout.width_mm);
    const side = 46 / rough;
    this.scale = Math.min(Math.max(room / (end + 2 * side), least / layout.width_mm), most / layout.width_mm);
    const margin = 44 / this.scale;
    this.isLong = (end + 2 * margin) * this.scale > 900;
    this.frame = { end, margin, width: layout.width_mm };
    const [wide, high] = [end + 2 * margin, layout.width_mm + 2 * margin];
    set(this.picture, 'viewBox', `${-margin} ${-layout.width_mm - margin} ${wide} ${high}`);
    set(this.picture, 'width', Math.round(wide * this.scale));
    set(this.picture, 'height', Math.round(high * this.scale));
  }

  showPiece(piece) {
    let group = this.groups.get(piece.id);
    if (!group) {
      group = new PieceOnCloth(piece.id, this.hands);
      this.groups.set(piece.id, group);
      this.pieces.append(group.element);
    }
    group.show(piece, 1 / this.scale);
  }

  group(id) {
    return this.groups.get(id);
  }

  pick(id) {
    this.groups.forEach((group, own) => {
      group.element.classList.toggle('picked', own === id);
      set(group.element, 'aria-pressed', String(own === id));
    });
  }

  // mark what is wrong while a piece is moved: hatched areas.
  mark(areas) {
    const d = areas.map((ring) => pathOf(ring)).join('');
    fill(this.over, d && draw('path', { class: 'wrong', d, fill: 'url(#wrong)' }));
  }
}

// One piece on the cloth; moved by its transform alone.
class PieceOnCloth {
  constructor(id, hands) {
    Object.assign(this, { id, hands });
    this.title = draw('title');
    this.outline = draw('path', { class: 'outline' });
    this.grain = draw('path', { class: 'grain' });
    this.name = draw('text', { class: 'name', 'aria-hidden': 'true' });
    this.pin = draw(
      'g',
      { class: 'pin', 'aria-hidden': 'true' },
      draw('circle', { r: 5 }),
      draw('circle', { r: 1.6, class: 'eye' }),
    );
    this.element = draw(
      'g',
      hands
        ? { class: 'piece', tabindex: 0, role: 'button', 'aria-pressed': 'false', ...hands(id) }
        : { class: 'piece still' },
      this.title,
      this.outline,
      this.grain,
      this.name,
      this.pin,
    );
  }

  show(piece, pixel) {
    this.move(piece.at);
    const key = JSON.stringify([piece.outline, piece.locked, piece.by_hand, piece.name, pixel]);
    if (this.hands) set(this.element, 'aria-label', labelOf(piece));
    if (key === this.shown) return;
    this.shown = key;
    write(this.name, nameOf(piece));
    write(this.title, nameOf(piece));
    this.reshape(piece.outline, piece.grain, pixel);
    const isHeld = piece.locked || piece.by_hand;
    this.element.classList.toggle('held', Boolean(isHeld));
    set(this.pin, 'visibility', isHeld ? null : 'hidden');
  }

  // reshape it, turned another way. The name stands where there is most room for it, and
  // the grainline where both are seen.
  reshape(outline, grain, pixel) {
    const box = boxOf([outline]);
    const [wide, high] = [box.right - box.left, box.high - box.low];
    const {
      at: [x, y],
      room,
    } = roomiest(outline);
    const letters = Math.max(this.name.textContent.length, 4);
    const size = Math.min(12.5 * pixel, (0.9 * Math.max(wide, high)) / (0.55 * letters));
    const isNamed = size > 7 * pixel && room > 0.5 * size;
    const isTall = high > 1.5 * wide;
    const hasGrain = grain && Math.min(wide, high) > (isTall ? 110 : 60) * pixel;
    set(this.outline, 'd', pathOf(outline));
    set(this.grain, 'd', hasGrain ? arrowPath(grain, 9 * pixel) : '');
    set(this.name, 'font-size', size);
    set(this.name, 'visibility', isNamed ? null : 'hidden');
    const upright = isTall ? 'rotate(-90)' : '';
    const drop = hasGrain ? -3 * pixel : size / 3;
    set(this.name, 'transform', `translate(${x} ${-y}) ${upright} translate(0 ${drop})`);
    set(this.pin, 'transform', `translate(${x} ${-y + 12 * pixel}) scale(${pixel})`);
  }

  move([x, y]) {
    set(this.element, 'transform', `translate(${x} ${-y})`);
  }
}

// nameOf a piece as it is called on the cloth.
export const nameOf = (piece) => [term(piece.name, 'piece'), piece.size].filter(Boolean).join(' ');

// labelOf a piece for those who hear it.
export function labelOf(piece) {
  const isHeld = piece.locked || piece.by_hand;
  return [
    word('piece on cloth', { name: nameOf(piece), copy: piece.copy }),
    wayOf(piece),
    piece.mirrored && word('mirrored'),
    isHeld && word('held'),
  ]
    .filter(Boolean)
    .join(', ');
}

// wayOf a piece: where its grainline points, or else how far it is turned.
function wayOf({ grain, turn }) {
  if (!grain) return word('turned', { turn });
  const [[ax, ay], [bx, by]] = grain;
  const length = Math.hypot(bx - ax, by - ay) || 1;
  if (Math.abs(bx - ax) > 0.99 * length) return word(bx > ax ? 'points on' : 'points back');
  if (Math.abs(by - ay) > 0.99 * length) return word(by > ay ? 'points away' : 'points near');
  return word('turned', { turn });
}
