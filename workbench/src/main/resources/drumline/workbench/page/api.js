// What the page asks of the server: plain answers, problems as errors, and a choice where two people changed one inquiry.

const ROOT = '/api/v1';

/** An answer that is a problem (RFC 9457): what is wrong, in words. */
export class Problem extends Error {
  constructor(status, body) {
    super(body.detail ? `${body.title}: ${body.detail}` : body.title);
    this.status = status;
    this.body = body;
    this.title = body.title;
    this.detail = body.detail ?? '';
    this.problems = body.problems ?? [];
  }
}

/** Somebody else changed the inquiry, and the person chose to take that. Nothing was saved; the page loads anew. */
export class TookTheirs extends Error {}

/** The address of an inquiry's answer: inquiryPath('valve', 'print') is /inquiries/valve/print. */
export function inquiryPath(id, ...rest) {
  return ['/inquiries', encodeURIComponent(id), ...rest.map(encodeURIComponent)].join('/');
}

/** Puts query parameters behind a path; those that are null or empty are left out. */
export function withQuery(path, query) {
  const kept = Object.entries(query).filter(([, value]) => value !== null && value !== undefined && value !== '');
  return kept.length ? `${path}?${new URLSearchParams(kept)}` : path;
}

async function answer(response) {
  if (response.status === 204) return null;
  const kind = response.headers.get('Content-Type') ?? '';
  const isJson = /json/.test(kind);
  if (response.ok) return isJson ? response.json() : response.text();
  const body = isJson ? await response.json() : {title: `The server answered ${response.status}`, detail: ''};
  throw new Problem(response.status, body);
}

async function ask(method, path, options) {
  try {
    return await answer(await fetch(ROOT + path, {method, ...options}));
  } catch (error) {
    if (error instanceof TypeError) {
      throw new Problem(0, {title: 'The workbench does not answer', detail: 'is drumline workbench still running?'});
    }
    throw error;
  }
}

/** Reads an answer; path without /api/v1. */
export function get(path, {signal} = {}) {
  return ask('GET', path, {signal, headers: {Accept: 'application/json'}});
}

/** Sends JSON that changes nothing of an inquiry's text, such as a plan or a what-if. */
export function send(method, path, body, {signal} = {}) {
  const headers = {'Content-Type': 'application/json', Accept: 'application/json'};
  return ask(method, path, {signal, headers, body: JSON.stringify(body ?? {})});
}

/** Sends a file as it is. */
export function sendFile(path, file) {
  const headers = {'Content-Type': 'application/octet-stream', Accept: 'application/json'};
  return ask('POST', path, {headers, body: file});
}

/**
 * Changes an inquiry. The body carries expectedRevision; where somebody has changed the inquiry since, the person is
 * asked: keep mine (sent again on top of theirs), take theirs (TookTheirs is thrown), or look at both first.
 *
 * @param mine what this window wanted, in a few words or as whole text, to be shown beside theirs
 */
export async function change(method, inquiryId, path, body, mine = '') {
  let sent = body;
  for (;;) {
    try {
      const result = await send(method, inquiryPath(inquiryId) + path, sent);
      window.dispatchEvent(new CustomEvent('inquiry-changed', {detail: {inquiryId, revision: result?.revision}}));
      return result;
    } catch (error) {
      if (error.status !== 409) throw error;
      const {askWhichToKeep} = await import('./parts/stale-choice.js');
      const choice = await askWhichToKeep(inquiryId, error.body, mine, sent.expectedRevision);
      if (choice !== 'mine') {
        window.dispatchEvent(new CustomEvent('inquiry-stale', {detail: {inquiryId}}));
        throw new TookTheirs('Taken as somebody else left it.');
      }
      sent = {...sent, expectedRevision: error.body.presentRevision};
    }
  }
}

/**
 * Listens to server-sent events: handlers by event name get the parsed data. Returns a function that stops listening.
 */
export function listen(path, handlers) {
  const source = new EventSource(ROOT + path);
  for (const [name, handle] of Object.entries(handlers)) {
    source.addEventListener(name, event => event.data !== undefined && handle(JSON.parse(event.data)));
  }
  return () => source.close();
}

/** Address of an answer that the browser fetches itself: a download or a frame. */
export function address(path) {
  return ROOT + path;
}
