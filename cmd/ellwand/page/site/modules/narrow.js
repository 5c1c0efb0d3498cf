// A cloth that is too narrow, and what its width was most likely meant to be.

import { length, listed, millimetres, number, term, word } from './words.js';

// A cloth is seldom narrower or wider than this, mm: common practice, our own choice.
const narrowest = 600;
const widest = 3200;

const inMillimetres = { mm: 1, cm: 10, in: 25.4 };

// guessOf a width of so many mm: whether ten or a hundred times that was meant, which is
// 140 for 14 and for 1.40; empty where neither is the width of a cloth, or enough.
function guessOf(mm, units, takes = 0) {
  const guess = [10 * mm, 100 * mm].find((one) => one >= Math.max(narrowest, takes) && one <= widest);
  return guess ? word('did you mean', { guess: `${number(guess / (inMillimetres[units] ?? 10))} ${units}` }) : '';
}

// guessText asks what a width was meant to be that is written so.
export const guessText = (text, units) => guessOf(millimetres(text, units) ?? 0, units);

// narrowText says that pieces are wider than their cloth, all in one sentence.
export function narrowText({ width_mm, takes_mm, pieces, units }) {
  const width = length(width_mm, units);
  const said = pieces?.length
    ? word('too narrow', { width, pieces: listed(pieces.map((name) => term(name, 'piece'))) })
    : word('no width', { width });
  return [said, guessOf(width_mm, units, takes_mm)].filter(Boolean).join(' ');
}
