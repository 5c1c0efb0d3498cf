// The drawing of one piece: its cutting line, seam line, grain, notches, and edges that
// can be clicked or walked to.

import { draw, el, fill, set } from './element.js';
import { arrowPath, boxOf, halfway, pathOf } from './plane.js';
import { language, length, term, typed, word } from './words.js';

const margin = 26; // mm about the piece

export class PieceDrawing {
  constructor(piece, pick) {
    this.pick = pick;
    this.picture = draw('svg', { class: 'draft' });
    this.name = el('figcaption', {});
    this.told = el('ol', { class: 'told' });
    this.cautions = el('div', { role: 'status' });
    this.element = el('figure', { class: 'pieceDraft' }, this.picture, this.name, this.told, this.cautions);
  }

  // show the piece at so many pixels for a millimetre.
  show(piece, scale, state, seams) {
    const mine = seams.filter(
      (seam) =>
        seam.edges?.some((edge) => edge.piece === piece.name) &&
        (!seam.garment || seam.garment === piece.garment),
    );
    const key = JSON.stringify([piece, scale, state.units, mine]);
    if (key === this.shown) return;
    this.shown = key;
    this.piece = piece;
    const focused = this.picture.contains(document.activeElement) ? document.activeElement.dataset.edge : null;
    this.redraw(piece, scale, state.units, mine);
    if (focused) this.focusEdge(focused);
    fill(this.name, el('strong', {}, term(piece.name, 'piece')), ' ', el('span', {}, cutText(piece)));
    fill(
      this.cautions,
      piece.one_handed && el('p', { class: 'doubt' }, word('one way up')),
      piece.unknown && el('p', { class: 'doubt' }, word('allowance not known')),
    );
    fill(
      this.told,
      mine
        .filter((seam) => !seam.sound)
        .map((seam) => el('li', { class: 'unsound', value: seam.number }, truingText(seam, state.units))),
    );
  }

  redraw(piece, scale, units, seams) {
    const box = boxOf([piece.cutting, ...piece.edges.map((edge) => edge.line)]);
    const [wide, high] = [box.right - box.left + 2 * margin, box.high - box.low + 2 * margin];
    set(this.picture, 'viewBox', `${box.left - margin} ${-box.high - margin} ${wide} ${high}`);
    set(this.picture, 'width', Math.round(wide * scale));
    set(this.picture, 'height', Math.round(high * scale));
    set(this.picture, 'role', 'group');
    set(this.picture, 'aria-label', `${term(piece.name, 'piece')}, ${cutText(piece)}`);
    const size = 1 / scale;
    fill(
      this.picture,
      draw('path', { class: 'cutting', d: pathOf(piece.cutting) }),
      (piece.lines ?? []).map((line) => draw('path', { class: 'mark', d: pathOf(line, false) })),
      piece.grain && draw('path', { class: 'grain', d: arrowPath(piece.grain, 12 * size) }),
      piece.edges.map((edge) => this.edge(edge, units)),
      (piece.notches ?? []).map((notch) => draw('path', { class: 'notch', d: notchPath(notch) })),
      this.numbers(piece, seams, size),
    );
  }

  // edge with a broad unseen line about it, to be hit by a finger.
  edge(edge, units) {
    const d = pathOf(edge.line, false);
    const visible = draw('path', { class: edge.fold ? 'fold' : 'seam', d });
    if (edge.fold || !edge.path) return visible;
    const label = word('edge with allowance', {
      edge: term(edge.name, 'edge'),
      allowance: length(edge.allowance_mm, units),
    });
    const act = () => this.pick(edge, this);
    const keys = (event) => {
      if (event.key !== 'Enter' && event.key !== ' ') return;
      event.preventDefault();
      act();
    };
    return draw(
      'g',
      {
        class: 'edge',
        tabindex: 0,
        role: 'button',
        'aria-label': label,
        'data-edge': edge.name,
        click: act,
        keydown: keys,
      },
      draw('title', {}, label),
      visible,
      draw('path', { class: 'reach', d }),
    );
  }

  numbers(piece, seams, size) {
    return seams
      .filter((seam) => seam.number)
      .flatMap((seam) =>
        seam.edges
          .filter((at) => at.piece === piece.name)
          .map((at) => {
            const edge = piece.edges.find((one) => one.name === at.edge);
            if (!edge) return null;
            const [x, y] = halfway(edge.line);
            return draw(
              'g',
              {
                class: `number ${seam.sound ? '' : 'unsound'}`,
                transform: `translate(${x} ${-y}) scale(${size})`,
                'aria-hidden': 'true',
              },
              draw('circle', { r: 9 }),
              draw('text', { y: 4 }, String(seam.number)),
            );
          }),
      );
  }

  mark(name) {
    this.picture
      .querySelectorAll('.edge')
      .forEach((edge) => edge.classList.toggle('picked', edge.dataset.edge === name));
  }

  focusEdge(name) {
    [...this.picture.querySelectorAll('.edge')].find((edge) => edge.dataset.edge === name)?.focus();
  }
}

// A notch is a line from the seam line out; a double one is two.
function notchPath({ at, to, double }) {
  if (!double) return pathOf([at, to], false);
  const [dx, dy] = [(to[1] - at[1]) / 3, -(to[0] - at[0]) / 3];
  const shifted = (sign) =>
    pathOf(
      [
        [at[0] + sign * dx, at[1] + sign * dy],
        [to[0] + sign * dx, to[1] + sign * dy],
      ],
      false,
    );
  return shifted(1) + shifted(-1);
}

// truingText says of a seam whether its sides match.
export function truingText(seam, units) {
  if (language === 'en') return typed(seam.sentence);
  const by = length(Math.abs(seam.difference_mm), units);
  const normal = [seam.least_mm, seam.most_mm].map((mm) => length(mm, units));
  const differs = Math.abs(seam.difference_mm) >= 0.5; // mm, of which nothing is seen
  const key = !differs ? 'truing.equal' : seam.difference_mm < 0 ? 'truing.shorter' : 'truing.longer';
  return word(key, { by, least: normal[0], most: normal[1] });
}

// cutText says how often a piece is cut, and from what.
export function cutText(piece) {
  const how = piece.fold
    ? word('cut on fold', { n: piece.cut })
    : piece.pair
      ? word('cut in pairs', { n: piece.cut })
      : word('cut', { n: piece.cut });
  return `${how}, ${term(piece.cloth, 'cloth')}`;
}
