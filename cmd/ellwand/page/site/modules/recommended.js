// Which way of laying a cloth is recommended, and why: in the answer, at the lay, and with
// the amounts in one sentence.

import { length, term, word } from './words.js';

const same = 1; // mm: less does not matter to anyone with scissors, as the commands have it

// recommendedText of what a cloth takes in a width. The lay with the least to buy is
// chosen, of equals the one with the least to chalk: where another one is shorter, it is
// not shorter by enough to buy less.
export function recommendedText({ chosen, lays }, units) {
  const possible = (lays ?? []).filter((one) => one.length_mm > 0);
  const own = possible.find((one) => one.lay === chosen);
  if (!own) return '';
  const least = possible.reduce((a, b) => (b.length_mm < a.length_mm ? b : a));
  const saved = own.length_mm - least.length_mm;
  if (saved < same) return word('recommended.least', { lay: term(chosen) });
  return word('recommended.work', { lay: term(chosen), other: term(least.lay), saved: length(saved, units) });
}
