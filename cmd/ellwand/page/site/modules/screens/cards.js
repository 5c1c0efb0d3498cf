// The jobs of the folder as cards, each with its picture.

import { el, fill } from '../element.js';
import { post } from '../server.js';
import { failed } from '../say.js';
import { term, typed, word } from '../words.js';

// jobCards fills a section with the jobs of a folder; without jobs it stays hidden.
export function jobCards(section, folder) {
  section.hidden = !folder.jobs?.length && !folder.folder;
  fill(
    section,
    el('h2', {}, word('begin.jobs')),
    folder.folder && el('p', { class: 'notes' }, word('begin.folder', { folder: folder.folder })),
    el('ul', { class: 'cards' }, (folder.jobs ?? []).map(card)),
  );
}

function card(job) {
  const name = encodeURIComponent(job.name);
  const what = [job.client, ...(job.garments ?? []).map((garment) => term(garment, 'garment'))]
    .filter(Boolean)
    .join(' · ');
  return el(
    'li',
    {},
    el(
      'a',
      { href: `#/job/${name}/measure`, class: 'card' },
      el('img', {
        src: job.picture ?? `/picture/job/${name}.svg`,
        alt: '',
        width: 180,
        height: 120,
        loading: 'lazy',
      }),
      el('strong', {}, job.title || job.name),
      el('span', {}, what),
      job.fault
        ? el('span', { class: 'fault' }, job.fault)
        : job.amount && el('span', { class: 'amount' }, typed(job.amount)),
    ),
    el(
      'button',
      { type: 'button', class: 'plain', click: () => copy(job) },
      word('copy job', { title: job.title || job.name }),
    ),
  );
}

async function copy(job) {
  try {
    const made = await post('/api/jobs', {
      from: 'copy',
      of: job.name,
      title: word('copy of', { title: job.title || job.name }),
    });
    location.hash = `#/job/${encodeURIComponent(made.job)}/measure`;
  } catch (fault) {
    failed(fault);
  }
}
