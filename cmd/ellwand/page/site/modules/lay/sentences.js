// What is said of a layout: how long it is and why more is bought, and what is wrong in it.

import { narrowText } from '../narrow.js';
import { asSentence, has, language, length, listed, metres, term, typed, word } from '../words.js';

// sentenceOf a layout: the program's own where it speaks the reader's language.
export function sentenceOf({ sentence, buy, bound }) {
  if (language !== 'en' && bound) return word('lay.sentence', { bound: typed(bound) });
  const [, ...rest] = (sentence ?? '').split('; '); // its amount stands before it already
  return language === 'en' && buy ? asSentence(rest.join('; ')) : '';
}

// addedText says why more is bought than is laid, by what is added, as the commands have it.
export function addedText({ buy, length_mm, added }, units) {
  if (!added?.length) return '';
  const parts = added.map((one) =>
    word('added.with', { length: length(one.length_mm, units), part: term(one.part, 'added') }),
  );
  return word('amount from', { length: metres(length_mm, units), added: listed(parts), buy: typed(buy) });
}

// refusedText says why it cannot be laid so.
export const refusedText = ({ narrow, sentence }) =>
  narrow ? narrowText(narrow) : typed(sentence);

// brokenText says which rule is broken; of a piece that cannot go onto the other part, why.
export function brokenText({ rule, why, sentence }) {
  const key = why ? `broken.${rule}.${why}` : `broken.${rule}`;
  if (has(key)) return word(key);
  return typed(sentence);
}
