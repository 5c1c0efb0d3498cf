// Outlines in millimetres, y up, drawn in a picture whose y runs down. Only what is
// needed to show them: whether pieces overlap is asked of the program.

// box about all points of the rings.
export function boxOf(rings) {
  const box = { left: Infinity, right: -Infinity, low: Infinity, high: -Infinity };
  for (const ring of rings) {
    for (const [x, y] of ring) {
      box.left = Math.min(box.left, x);
      box.right = Math.max(box.right, x);
      box.low = Math.min(box.low, y);
      box.high = Math.max(box.high, y);
    }
  }
  return box;
}

const short = (value) => Math.round(value * 100) / 100;

// pathOf points, turned upside down; closed or not.
export const pathOf = (points, closed = true) =>
  points.length ? `M${points.map(([x, y]) => `${short(x)} ${short(-y)}`).join('L')}${closed ? 'Z' : ''}` : '';

// isInside says whether a point lies in a ring.
function isInside(ring, [x, y]) {
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const [[ax, ay], [bx, by]] = [ring[i], ring[j]];
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
  }
  return inside;
}

function edgeDistance([x, y], [ax, ay], [bx, by]) {
  const [dx, dy] = [bx - ax, by - ay];
  const along = dx || dy ? ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy) : 0;
  const t = Math.min(Math.max(along, 0), 1);
  return Math.hypot(x - ax - t * dx, y - ay - t * dy);
}

const places = 9; // tried along each side of the box

// roomiest place inside a ring, for its name: the one of a grid that lies farthest from
// its rim, and of such the one nearest to its middle; and how much room there is.
export function roomiest(ring) {
  const box = boxOf([ring]);
  const centre = [(box.left + box.right) / 2, (box.low + box.high) / 2];
  let best = { at: centre, room: 0, score: 0 };
  for (let i = 1; i < places; i++) {
    for (let j = 1; j < places; j++) {
      const at = [
        box.left + ((box.right - box.left) * i) / places,
        box.low + ((box.high - box.low) * j) / places,
      ];
      if (!isInside(ring, at)) continue;
      let room = Infinity;
      for (let k = 0; k < ring.length; k++)
        room = Math.min(room, edgeDistance(at, ring[k], ring[(k + 1) % ring.length]));
      const score = room - Math.hypot(at[0] - centre[0], at[1] - centre[1]) / 20;
      if (room > 0 && score > best.score) best = { at, room, score };
    }
  }
  return best;
}

// halfway along a line, by its length.
export function halfway(line) {
  const lengths = line.slice(1).map((point, i) => Math.hypot(point[0] - line[i][0], point[1] - line[i][1]));
  let left = lengths.reduce((sum, length) => sum + length, 0) / 2;
  for (let i = 0; i < lengths.length; i++) {
    if (left <= lengths[i] && lengths[i] > 0) {
      const share = left / lengths[i];
      return [
        line[i][0] + share * (line[i + 1][0] - line[i][0]),
        line[i][1] + share * (line[i + 1][1] - line[i][1]),
      ];
    }
    left -= lengths[i];
  }
  return line[0];
}

// arrow along a line, its head at the end, so large.
export function arrowPath([from, to], size) {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const back = [to[0] - size * ux, to[1] - size * uy];
  const wing = (side) => [back[0] - (side * size * uy) / 2.6, back[1] + (side * size * ux) / 2.6];
  return `${pathOf([from, to], false)}${pathOf([wing(1), to, wing(-1)], false)}`;
}
