// Elements of the page and of drawings, from values. Text is always text: nothing
// here reads HTML.

const drawings = 'http://www.w3.org/2000/svg';

function filled(node, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) set(node, name, value);
  node.append(
    ...children.flat(Infinity).filter((child) => child !== null && child !== undefined && child !== false),
  );
  return node;
}

// set an attribute; a function listens to an event, and null takes the attribute off.
export function set(node, name, value) {
  if (typeof value === 'function') node.addEventListener(name, value);
  else if (value === null || value === undefined || value === false) node.removeAttribute(name);
  else node.setAttribute(name, value === true ? '' : value);
}

// el is an element of the page.
export const el = (tag, attributes = {}, ...children) =>
  filled(document.createElement(tag), attributes, children);

// draw is an element of a drawing.
export const draw = (tag, attributes = {}, ...children) =>
  filled(document.createElementNS(drawings, tag), attributes, children);

// fill puts new children in place of the old ones.
export function fill(node, ...children) {
  node.replaceChildren(
    ...children.flat(Infinity).filter((child) => child !== null && child !== undefined && child !== false),
  );
  return node;
}

// write changes a text only where it differs, so that nothing is read out twice.
export function write(node, text) {
  if (node.textContent !== text) node.textContent = text;
}

let made = 0;

// fresh is an id that the page does not have yet.
export const fresh = (stem) => `${stem}-${++made}`;
