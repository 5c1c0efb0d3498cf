// The cloth itself: its edges, its cut end, its repeat, its flaws, the way of its nap,
// and a tape along it.

import { draw, fill } from '../element.js';
import { arrowPath, pathOf } from '../plane.js';
import { number, word } from '../words.js';

export class Ground {
  constructor() {
    this.element = draw('g', { class: 'ground', 'aria-hidden': 'true' });
    this.hatching = draw('defs', {}, hatch('wrong', 'wrongLine'), hatch('flaw', 'flawLine'));
  }

  // show the cloth of a layout; pixel is the size of one in mm.
  show(layout, units, frame, pixel) {
    const key = JSON.stringify([
      units,
      frame,
      pixel,
      layout.length_mm,
      layout.edges,
      layout.flaws,
      layout.repeat,
      layout.nap,
      layout.outline,
      layout.parts,
    ]);
    if (key === this.shown) return;
    this.shown = key;
    this.hatching
      .querySelectorAll('pattern')
      .forEach((one) => one.setAttribute('patternTransform', `scale(${pixel}) rotate(45)`));
    fill(
      this.element,
      cloth(layout, frame),
      repeat(layout, frame),
      edges(layout, frame, pixel),
      parts(layout, frame),
      (layout.flaws ?? []).map(flaw),
      nap(layout, frame, pixel),
      tape(frame, units, pixel),
      end(layout, frame, pixel),
    );
  }
}

const hatch = (id, name) =>
  draw(
    'pattern',
    { id, width: 7, height: 7, patternUnits: 'userSpaceOnUse' },
    draw('path', { class: name, d: 'M0 0V7' }),
  );

function cloth(layout, { end, width }) {
  if (layout.outline) return draw('path', { class: 'stuff', d: pathOf(layout.outline) });
  return draw('rect', { class: 'stuff', x: 0, y: -width, width: end, height: width });
}

function edges(layout, { end, width }, pixel) {
  const kinds = layout.edges ?? { near: 'selvedge', far: 'selvedge' };
  const band = 7 * pixel;
  const edge = (kind, y, below) => [
    kind === 'fold'
      ? draw('path', { class: 'fold', d: `M0 ${-y}H${end}` })
      : draw('rect', { class: 'selvedge', x: 0, y: below ? -y : -y - band, width: end, height: band }),
    draw(
      'text',
      { class: 'small', x: 4 * pixel, y: -y + (below ? 20 : -11) * pixel, 'font-size': 11 * pixel },
      word(kind),
    ),
  ];
  return [edge(kinds.near, 0, true), edge(kinds.far, width, false)];
}

// parts of a lay that lie in other plies than the rest.
const parts = (layout, { width }) =>
  (layout.parts ?? []).slice(1).map((part) => draw('path', { class: 'part', d: `M${part.x} 0V${-width}` }));

function repeat({ repeat: found }, { end, width }) {
  if (!found) return null;
  let d = '';
  if (found.along_mm > 0)
    for (let x = found.x_mm % found.along_mm; x < end; x += found.along_mm) d += `M${x} 0V${-width}`;
  if (found.across_mm > 0)
    for (let y = found.y_mm % found.across_mm; y < width; y += found.across_mm) d += `M0 ${-y}H${end}`;
  return draw('path', { class: 'repeat', d });
}

const flaw = ({ name, outline }) =>
  draw(
    'g',
    {},
    draw('title', {}, name),
    draw('path', { class: 'flaw', d: pathOf(outline), fill: 'url(#flaw)' }),
  );

function nap({ nap: found }, { end, width }, pixel) {
  const y = width + 24 * pixel;
  const [from, to] = [end - 90 * pixel, end];
  const text = draw(
    'text',
    { class: 'small', x: from - 8 * pixel, y: -y + 4 * pixel, 'font-size': 11 * pixel, 'text-anchor': 'end' },
    word(`nap.${found ?? 'either way'}`),
  );
  const heads =
    found === 'one way'
      ? arrowPath(
          [
            [from, y],
            [to, y],
          ],
          8 * pixel,
        )
      : arrowPath(
          [
            [from, y],
            [to, y],
          ],
          8 * pixel,
        ) +
        arrowPath(
          [
            [to, y],
            [from, y],
          ],
          8 * pixel,
        );
  return [text, draw('path', { class: 'nap', d: heads })];
}

// tape along the near edge, in the units of the job.
function tape({ end }, units, pixel) {
  const [mark, label] = units === 'in' || units === 'yd' ? [25.4, 9 * 25.4] : [100, units === 'm' ? 500 : 100];
  const size = 11 * pixel;
  const y = 30 * pixel;
  const every = label * Math.max(1, Math.ceil((44 * pixel) / label));
  const ticks = [];
  const numbers = [];
  for (let x = 0; x <= end + 0.01; x += mark) ticks.push(`M${x} ${y - 6 * pixel}v${4 * pixel}`);
  for (let x = 0; x <= end + 0.01; x += every) {
    numbers.push(
      draw(
        'text',
        { class: 'small', x, y: y + size, 'font-size': size, 'text-anchor': 'middle' },
        labelAt(x, units),
      ),
    );
  }
  return [draw('path', { class: 'tick', d: ticks.join('') }), numbers];
}

const labelAt = (x, units) =>
  units === 'in' || units === 'yd'
    ? number(Math.round(x / 25.4), 0)
    : units === 'mm'
      ? number(x, 0)
      : units === 'm'
        ? number(x / 1000, 1)
        : number(x / 10, 0);

// end of the lay, where the cloth is cut off.
const end = (layout, { width }, pixel) =>
  draw('path', { class: 'cutOff', d: `M${layout.length_mm} ${14 * pixel}V${-width - 14 * pixel}` });
