// Where the tape goes for a measurement: a figure of it, and what is said beside it.

import { el, fill } from './element.js';
import { picture } from './server.js';
import { term, word } from './words.js';

// showTape fills a figure with the picture of a measurement and how it is taken.
export function showTape(figure, name, how = term(name, 'how')) {
  fill(
    figure,
    el('img', {
      src: picture('tape', name),
      alt: word('tape picture', { name: term(name, 'label') }),
      width: 200,
      height: 400,
    }),
    el('figcaption', {}, el('strong', {}, term(name, 'label')), ' ', el('span', {}, how)),
  );
}
