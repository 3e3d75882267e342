// Every place of the page has an address: the list, and six leaves of each inquiry.

/** The leaves in the order of the work: address word, name, question. */
export const LEAVES = [
  {word: 'print', name: 'Print', question: 'What is the piece?'},
  {word: 'route', name: 'Route', question: 'What must be done?'},
  {word: 'layout', name: 'Layout', question: 'Where and when?'},
  {word: 'money', name: 'Money', question: 'What does it cost, against what?'},
  {word: 'paper', name: 'Paper', question: 'What do we hand over?'},
  {word: 'run-off', name: 'Run-off', question: 'Does it hold?'},
];

/** Reads an address: the list, a leaf of an inquiry, or null where it leads nowhere. */
export function placeOf(path) {
  if (path === '/' || path === '/index.html') return {kind: 'list'};
  const [, root, id, leaf = 'print', rest] = path.replace(/\/$/, '').split('/');
  if (root !== 'inquiries' || !id || rest || !LEAVES.some(known => known.word === leaf)) return null;
  return {kind: 'inquiry', id: decodeURIComponent(id), leaf};
}

/** Address of an inquiry's leaf. */
export function leafAddress(id, leaf) {
  return `/inquiries/${encodeURIComponent(id)}/${leaf}`;
}

/** Goes to an address within the page. */
export function go(path) {
  history.pushState(null, '', path);
  window.dispatchEvent(new Event('place-changed'));
}

/** Lets plain links within the page work without loading it anew. */
export function followLinks(root) {
  root.addEventListener('click', event => {
    const link = event.target.closest?.('a[href]');
    if (!link || event.defaultPrevented || event.button !== 0 || event.metaKey || event.ctrlKey || event.shiftKey) return;
    const url = new URL(link.href);
    if (url.origin !== location.origin || link.target || link.hasAttribute('download') || url.hash || !placeOf(url.pathname)) return;
    event.preventDefault();
    if (url.pathname !== location.pathname) go(url.pathname);
  });
}
