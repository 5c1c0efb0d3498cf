// The page: which screen is shown, and the way from one to the next.

import { el, fill, write } from './element.js';
import { load, typed, word, language, languages } from './words.js';
import { address } from './address.js';
import { Job } from './job.js';
import { failed, notice, say, unsay } from './say.js';
import { Standing, wrongFields } from './standing.js';
import { begin } from './screens/begin.js';
import { pattern } from './screens/pattern.js';
import { clothFirst } from './screens/clothfirst.js';
import { clients } from './screens/clients.js';
import { measure } from './screens/measure.js';
import { pieces } from './screens/pieces.js';
import { lay } from './screens/lay.js';
import { table } from './screens/table.js';
import { charge } from './screens/charge.js';
import { print } from './screens/print.js';
import { keep } from './screens/keep.js';

// The steps of a job, in the order in which it is done.
const steps = { measure, pieces, lay, table, charge, print, keep };
const beginnings = { '': begin, pattern, cloth: clothFirst, clients };

const content = document.getElementById('content');
const standing = new Standing();
let job = null;
let shown = null;
let turn = 0;

// place the address names: of a job its name and step, and what the step shows.
function place() {
  const parts = location.hash.replace(/^#\/?/, '').split('/').map(decodeURIComponent);
  if (parts[0] === 'job')
    return { name: parts[1], step: parts[2] in steps ? parts[2] : 'measure', rest: parts.slice(3) };
  return { begin: parts[0] in beginnings ? parts[0] : '' };
}

async function show() {
  const mine = ++turn;
  const to = place();
  try {
    await opened(to.name);
    if (mine !== turn) return;
    stepInto(to);
  } catch (fault) {
    failed(fault);
    if (to.name)
      fill(
        content,
        el('h1', {}, word('not opened')),
        el('p', {}, fault.message),
        el('p', {}, el('a', { href: '#/' }, word('back to the beginning'))),
      );
  }
}

async function opened(name) {
  if (job?.name === name) return;
  job?.close();
  ['outside', 'taken', 'failed'].forEach(unsay);
  job = null;
  if (!name) return;
  const next = new Job(name);
  await next.open();
  next.addEventListener('state', refresh);
  next.addEventListener('taken', ({ detail }) => notice('taken', outsideText(detail)));
  next.addEventListener('saved', ({ detail }) => showSaved(detail));
  job = next;
}

function stepInto(to) {
  const key = to.name ? `${to.name}/${to.step}` : `/${to.begin}`;
  if (shown?.key === key && shown.screen.arrive) {
    shown.screen.arrive(to.rest);
    return;
  }
  shown?.screen.leave?.();
  unsay('failed');
  const screen = to.name ? steps[to.step](job, to.rest) : beginnings[to.begin]();
  const first = shown === null;
  shown = { key, screen };
  header(to);
  content.dataset.screen = to.step ?? (to.begin || 'begin');
  fill(content, screen.element);
  refresh();
  arriveAt(first);
  standing.arrive();
}

// arriveAt the heading, so that a screen reader reads on from there.
function arriveAt(first) {
  const heading = content.querySelector('h1');
  document.title = [heading?.textContent, job?.state.title, 'Ellwand'].filter(Boolean).join(' · ');
  if (first) return;
  scrollTo(0, 0);
  heading?.setAttribute('tabindex', '-1');
  heading?.focus();
}

function header(to) {
  const around = [
    ['#/', 'begin'],
    ['#/clients', 'clients'],
  ];
  fill(
    document.getElementById('around'),
    around.map(([href, key]) => el('a', { href }, word(key))),
    languageChoice(),
  );
  fill(document.getElementById('steps'), to.name && tape(to));
  if (to.name) showSaved(true);
  else write(document.getElementById('saved'), '');
}

// showSaved says whether all that was typed has come to the program, and stands in the job.
function showSaved(isSaved) {
  const place = document.getElementById('saved');
  const wrong = job ? wrongFields(job).length : 0;
  place.dataset.saved = isSaved;
  place.classList.toggle('fault', wrong > 0);
  const settled = wrong ? word('saved but', { n: wrong }) : word('saved');
  write(place, isSaved ? settled : word('saving'));
}

// tape of the steps: one mark for each.
function tape(to) {
  return el(
    'nav',
    { class: 'tape', 'aria-label': word('steps') },
    el(
      'ol',
      {},
      Object.keys(steps).map((step) =>
        el(
          'li',
          {},
          el(
            'a',
            {
              href: address(to.name, step),
              'aria-current': step === to.step ? 'step' : null,
              'data-text': word(`step.${step}`),
            },
            word(`step.${step}`),
          ),
        ),
      ),
    ),
  );
}

function languageChoice() {
  const choose = (event) => {
    document.cookie = `language=${event.target.value}; path=/; samesite=strict; max-age=31536000`;
    location.reload();
  };
  return el(
    'label',
    {},
    el('span', { class: 'unseen' }, word('language')),
    el(
      'select',
      { change: choose },
      Object.entries(languages).map(([code, name]) =>
        el('option', { value: code, lang: code, selected: code === language }, name),
      ),
    ),
  );
}

const outsideText = ({ sentence }) => typed(sentence);

function refresh() {
  shown?.screen.refresh?.();
  standing.show(job, place().step);
  const outside = job?.state.outside;
  if (!outside) return unsay('outside');
  notice('outside', outsideText(outside), [
    [word('take it in'), () => job.act({ takeOutside: {} })],
    [word('keep mine'), () => job.act({ keepMine: {} })],
  ]);
}

// back and forward through the changes, wherever no text is being written.
function undoKeys(event) {
  const key = event.key.toLowerCase();
  if (!job || !(event.ctrlKey || event.metaKey) || event.altKey || (key !== 'z' && key !== 'y')) return;
  if (event.target.matches('input:not([type=radio], [type=checkbox]), textarea')) return;
  event.preventDefault();
  const action = key === 'y' || event.shiftKey ? 'redo' : 'undo';
  if (!job.state.can[action]) return say(word(`nothing to ${action}`));
  job.act({ [action]: {} }).then(() => say(word(`${action} done`)));
}

await load();
document.getElementById('steps').after(standing.element);
write(document.getElementById('skip'), word('to the content'));
addEventListener('hashchange', show);
addEventListener('keydown', undoKeys);
show();
