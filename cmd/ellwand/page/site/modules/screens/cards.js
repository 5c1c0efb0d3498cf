// The jobs of the folder as cards, each with its picture.

import { el, fill, write } from '../element.js';
import { entry } from '../choose.js';
import { get, post } from '../server.js';
import { failed } from '../say.js';
import { length, term, typed, word } from '../words.js';

// jobCards fills a section with the jobs of a folder; without jobs it stays hidden.
export function jobCards(section, folder, signal) {
  section.hidden = !folder.jobs?.length && !folder.folder;
  fill(
    section,
    el('h2', {}, word('begin.jobs')),
    folder.folder && chooser(section, folder.folder),
    el('ul', { class: 'cards' }, (folder.jobs ?? []).map(card)),
  );
  amounts(section, folder.jobs ?? [], signal);
}

// amounts of the jobs, one after the other, so that nothing else waits for them.
async function amounts(section, jobs, signal) {
  for (const { name, fault } of jobs) {
    const place = section.querySelector(`[data-job="${CSS.escape(name)}"] .amount`);
    if (signal?.aborted || !place) return;
    if (fault) continue;
    try {
      const { cloth, width_mm: width, units, buy } = await get(`/api/amount/${encodeURIComponent(name)}`, signal);
      write(place, word('card.amount', { buy: typed(buy), cloth: term(cloth, 'cloth'), width: length(width, units) }));
    } catch (fault) {
      if (fault.name === 'AbortError') return;
    }
  }
}

// chooser of the folder that the jobs are kept in.
function chooser(section, folder) {
  const path = entry({ label: word('folder.path'), value: folder });
  const fault = el('p', { class: 'fault', role: 'alert' });
  const choose = async (event) => {
    event.preventDefault();
    try {
      jobCards(section, await post('/api/folder', { folder: path.control.value.trim() }));
    } catch (refused) {
      write(fault, refused.message);
    }
  };
  return el(
    'details',
    {},
    el('summary', { class: 'notes' }, word('begin.folder', { folder })),
    el(
      'form',
      { submit: choose },
      path.element,
      fault,
      el('p', { class: 'buttons' }, el('button', {}, word('folder.choose'))),
    ),
  );
}

function card(job) {
  const name = encodeURIComponent(job.name);
  const what = [job.client, ...(job.garments ?? []).map((garment) => term(garment, 'garment'))]
    .filter(Boolean)
    .join(' · ');
  const amount = el('span', { class: 'amount' });
  return el(
    'li',
    { 'data-job': job.name },
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
      job.fault ? el('span', { class: 'fault' }, typed(job.fault)) : amount,
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
