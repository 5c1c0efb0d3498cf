// The words of the page in the reader's language, and its numbers.

let words = {};
let plurals = new Intl.PluralRules('en');

// language of the page, as a tag of BCP 47.
export let language = 'en';

// The languages that there are words for, each by its own name.
export const languages = { en: 'English', de: 'Deutsch' };

// load reads the words of the page's language.
export async function load() {
  language = document.documentElement.lang in languages ? document.documentElement.lang : 'en';
  plurals = new Intl.PluralRules(language);
  formats.clear();
  const answer = await fetch(`/site/words/${language}.json`);
  words = await answer.json();
}

// has says whether there are words for a key.
export const has = (key) => key in words;

// word is the text of a key, with {name} replaced by the values. A text may be one for
// each plural of the value n.
export function word(key, values = {}) {
  let text = words[key];
  if (text === undefined) return key;
  if (typeof text === 'object') text = text[plurals.select(values.n)] ?? text.other;
  return text.replace(/\{(\w+)\}/g, (whole, name) => (name in values ? shown(values[name]) : whole));
}

const shown = (value) => (typeof value === 'number' ? number(value) : String(value));

// formats of numbers in the reader's way, made once: a lay of 150 pieces writes hundreds.
const formats = new Map();

function formatOf(least, most) {
  const key = 100 * least + most;
  if (!formats.has(key)) {
    const digits = { minimumFractionDigits: least, maximumFractionDigits: most };
    formats.set(key, new Intl.NumberFormat(language, digits));
  }
  return formats.get(key);
}

// number in the reader's way, with at most so many digits after the point.
export const number = (value, digits = 2) => formatOf(0, digits).format(value);

// term is the word for a value of the job file, or the value itself made readable.
export function term(value, stem = 'term') {
  const key = `${stem}.${value}`;
  return has(key) ? words[key] : String(value).replaceAll('_', ' ');
}

// refusal is what is said of something that the program does not do: in the reader's
// language, where there are words for its code.
export function refusal({ code, sentence = '', english = false }) {
  if (code && has(`refused.${code}`)) return word(`refused.${code}`);
  return english ? inOwnWords(sentence, () => word('refused')) : typed(sentence);
}

// inOwnWords is a sentence that the program has in English alone; in other languages after
// what the page has to say.
export const inOwnWords = (sentence, other) =>
  language === 'en' || !sentence ? typed(sentence) : word('in english', { said: other(), sentence });

const comma = () => number(1.5).includes(',');

// typed is a value of the job file as the reader writes it.
export const typed = (value) => (comma() ? String(value).replace(/(\d)\.(?=\d)/g, '$1,') : String(value));

// sent is what the reader wrote as the job file has it.
export const sent = (text) => (comma() ? text.replace(/(\d),(?=\d)/g, '$1.') : text).trim();

const inch = 25.4;
const marks = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];

// length of so many millimetres in the units of a job: inches to an eighth, as a tape
// has them.
export function length(mm, units = 'cm') {
  if (units === 'in' || units === 'yd') return `${eighths(mm / inch)} in`;
  if (units === 'mm') return `${number(mm, 0)} mm`;
  if (units === 'm') return `${number(mm / 1000, 3)} m`;
  return `${number(mm / 10, 1)} cm`;
}

// girthsText says what a size of a table is: by the girths of its body, in some units.
export function girthsText(size, { girths, unit }, units) {
  const known = girths[size] ?? {};
  const said = ['bust_girth', 'waist_girth', 'hip_girth', 'height']
    .filter((name) => known[name])
    .map((name) => word(`girth.${name}`, { length: length(millimetres(known[name], unit), units) }));
  return said.length ? `${size}: ${said.join(', ')}` : size;
}

// bare is a length without its unit.
export const bare = (mm, units) => length(mm, units).replace(/ (in|mm|cm|m)$/, '');

function eighths(inches) {
  const all = Math.round(Math.abs(inches) * 8);
  const whole = Math.floor(all / 8);
  const text = [whole || !(all % 8) ? number(whole, 0) : '', marks[all % 8]].filter(Boolean).join(' ');
  return inches < 0 && all ? `-${text}` : text;
}

// metres of a cloth, or inches in a job in inches.
export const metres = (mm, units) =>
  units === 'in' || units === 'yd' ? length(mm, 'in') : `${twoDigits(mm / 1000)} m`;

// atLeast says a length of cloth that no lay is shorter than: as metres, never more than it is.
export function atLeast(mm, units) {
  const step = units === 'in' || units === 'yd' ? inch / 8 : 10;
  return metres(Math.floor(mm / step + 1e-6) * step, units);
}

const twoDigits = (value) => formatOf(2, 2).format(value);

// buyText of an amount of the program's reports, in the units that the job's shops sell.
export const buyText = (one, units) =>
  units === 'in' || units === 'yd' ? `${eighths(one.buy_yd)} yd` : `${twoDigits(one.buy_m)} m`;

// boughtText of so many millimetres of cloth, in the same units.
export const boughtText = (mm, units) => buyText({ buy_yd: mm / inMillimetres.yd, buy_m: mm / 1000 }, units);

const inMillimetres = { mm: 1, cm: 10, m: 1000, in: inch, yd: 36 * inch };

// millimetres of a length that was typed, to a thousandth, or null: "12,5", "16 3/8",
// "30 cm".
export function millimetres(text, units = 'cm') {
  const found = sent(text).match(
    /^(-?)(?:(\d+(?:\.\d+)?)(?:\s+|$|(?=[a-z])))?(?:(\d+)\/(\d+)\s*)?(mm|cm|m|in|yd)?$/,
  );
  if (!found || (found[2] === undefined && found[3] === undefined)) return null;
  const value = Number(found[2] ?? 0) + (found[3] ? Number(found[3]) / Number(found[4]) : 0);
  const mm = Math.round(value * inMillimetres[found[5] ?? units] * 1000) / 1000;
  return found[1] ? -mm : mm;
}

// lengths of a list that was typed, mm, or null where one is none: "115; 140 cm". A comma
// parts them, too, where it does not stand in a number.
export function lengths(text, units) {
  const parts = text.split(comma() ? /;|,\s/ : /[;,]/).map((part) => part.trim());
  const all = parts.filter(Boolean).map((part) => millimetres(part, units));
  return all.every((mm) => mm > 0) ? all : null;
}

// money as the reader writes it; what is no plain number stays as it is.
export function money(amount, currency) {
  if (!amount) return '';
  if (!/^-?\d+(\.\d+)?$/.test(amount) || !currency) return typed(`${amount} ${currency ?? ''}`.trim());
  return new Intl.NumberFormat(language, { style: 'currency', currency }).format(Number(amount));
}

// currencyName by its code.
export const currencyName = (code) => new Intl.DisplayNames(language, { type: 'currency' }).of(code);

// asSentence begins with a capital letter and ends with a full stop.
export const asSentence = (text) =>
  text && `${text[0].toUpperCase()}${text.slice(1)}${/[.!?]$/.test(text) ? '' : '.'}`;

// listed joins words: "a, b and c".
export const listed = (all) => new Intl.ListFormat(language).format(all);

// date of a moment in the reader's way.
export const date = (when) => new Intl.DateTimeFormat(language, { dateStyle: 'medium' }).format(new Date(when));

// moment with its time of day.
export const moment = (when) =>
  new Intl.DateTimeFormat(language, { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(when));
