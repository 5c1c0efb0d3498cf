// The way on from a step to the one that usually comes after it.

import { el } from '../element.js';
import { word } from '../words.js';

// nextStep is a link to a step of the job.
export const nextStep = (job, step) =>
  el(
    'p',
    { class: 'next' },
    el('a', { class: 'main', href: `#/job/${encodeURIComponent(job.name)}/${step}` }, word(`next.${step}`)),
  );
