// What the page asks of the program that sent it. Nothing is asked of anybody else.

import { narrowText } from './narrow.js';
import { refusal } from './words.js';

const token = document.querySelector('meta[name="ellwand-token"]')?.content ?? '';

// Refused is an answer that is not what was asked for: its sentence is for people.
export class Refused extends Error {
  constructor(status, body) {
    super((body.code === 'narrow' ? narrowText(body) : refusal(body)) || String(status));
    this.status = status;
    this.body = body;
  }
}

async function ask(address, options = {}) {
  const answer = await fetch(address, { headers: { Accept: 'application/json' }, ...options });
  const body = await answer.json().catch(() => ({}));
  if (!answer.ok) throw new Refused(answer.status, body);
  return body;
}

// get reads, and changes nothing.
export const get = (address, signal) => ask(address, { signal });

// post asks for a change.
export const post = (address, body = {}, signal = undefined) =>
  ask(address, {
    method: 'POST',
    signal,
    headers: { 'Content-Type': 'application/json', Accept: 'application/json', 'X-Ellwand-Token': token },
    body: JSON.stringify(body),
  });

// jobAddress of a job, and what is asked of it.
export const jobAddress = (name, what = '') => `/api/jobs/${encodeURIComponent(name)}${what && `/${what}`}`;

// query after an address; what is undefined or empty is left out, of a list each is put.
export function query(values) {
  const given = Object.entries(values)
    .flatMap(([key, value]) => [value].flat().map((one) => [key, one]))
    .filter(([, value]) => value !== undefined && value !== null && value !== '');
  return given.length ? `?${new URLSearchParams(given)}` : '';
}

// picture drawn by the program.
export const picture = (kind, name) => `/picture/${kind}/${encodeURIComponent(name)}.svg`;
