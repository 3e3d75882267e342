// The inquiry that is open in this window: its text, head line and revision, kept in step with the server.
import {TookTheirs, change, get, inquiryPath, listen} from './api.js';
import {say} from './say.js';
import {settings} from './settings.js';

/** Says "changed" when text or head are new, "job" when planning begins or ends, "failed" when it cannot be read. */
export class OpenInquiry extends EventTarget {
  constructor(id) {
    super();
    this.id = id;
    this.text = null;
    this.head = null;
    this.error = null;
    this.job = null;
    this.isHeld = false;
    this.missed = null;
    this.onStale = event => event.detail.inquiryId === this.id && this.load();
    this.onChanged = event => event.detail.inquiryId === this.id && this.#follow(event.detail.revision);
    window.addEventListener('inquiry-stale', this.onStale);
    window.addEventListener('inquiry-changed', this.onChanged);
  }

  get revision() {
    return this.text?.revision ?? null;
  }

  /** Reads text and head, and begins to listen for what others change. */
  async load() {
    try {
      const [text, head] = await Promise.all([
        get(inquiryPath(this.id)),
        get(inquiryPath(this.id, 'head')),
      ]);
      this.text = text;
      this.head = head;
      this.error = null;
      this.missed = null;
      this.stopListening ??= listen(inquiryPath(this.id, 'events'), {
        changed: event => this.#heard(event),
        job: job => this.#heardJob(job),
      });
      this.#tell('changed');
    } catch (error) {
      this.error = error;
      this.#tell('failed');
    }
  }

  close() {
    this.stopListening?.();
    window.removeEventListener('inquiry-stale', this.onStale);
    window.removeEventListener('inquiry-changed', this.onChanged);
  }

  /** While something unsaved stands in a field, changes of others are announced, not taken over. */
  hold(isHeld) {
    this.isHeld = isHeld;
    if (!isHeld && this.missed) this.load();
  }

  /** Changes single values of the text; answers true when kept. Problems are thrown, except a choice for theirs. */
  edit(edits, note, mine) {
    return this.#change('POST', '/edits', {edits, ...(note ? {note} : {})}, mine ?? note);
  }

  /** Saves the whole text. */
  saveText(text, note) {
    return this.#change('PUT', '/text', {text, ...(note ? {note} : {})}, text);
  }

  undo() {
    return this.#change('POST', '/undo', {}, 'take the last change back');
  }

  redo() {
    return this.#change('POST', '/redo', {}, 'make the change again');
  }

  rename(name) {
    return this.#change('POST', '/rename', {name}, `rename to ${name}`);
  }

  async #change(method, path, body, mine) {
    try {
      const expectedRevision = this.missed ? this.text.revision : this.revision;
      const text = await change(method, this.id, path, {...body, expectedRevision}, mine);
      this.text = text;
      this.missed = null;
      this.head = await get(inquiryPath(this.id, 'head'));
      this.#tell('changed');
      return true;
    } catch (error) {
      if (error instanceof TookTheirs) {
        say(error.message);
        return false;
      }
      throw error;
    }
  }

  /** A part of the page changed it through api.change by itself: read again. */
  #follow(revision) {
    if (revision && this.revision && revision > this.revision) queueMicrotask(() => this.#readAgainIfBehind(revision));
  }

  async #readAgainIfBehind(revision) {
    await new Promise(resolve => setTimeout(resolve, 30));
    if (this.revision < revision) this.load();
  }

  #heard(event) {
    if (!this.revision || event.revision <= this.revision) return;
    setTimeout(() => {
      if (event.revision <= this.revision) return;
      this.missed = event;
      if (this.isHeld) {
        say(`${event.changedBy} changed this inquiry; what you are writing is not saved yet.`);
        this.#tell('missed');
      } else {
        say(`Revision ${event.revision} by ${event.changedBy}.`);
        this.load();
      }
    }, 250);
  }

  #heardJob(job) {
    this.job = job;
    this.#tell('job');
    if (['done', 'cancelled', 'failed'].includes(job.state)) {
      say(job.words, {isWrong: job.state === 'failed'});
      this.load();
    }
  }

  #tell(name) {
    this.dispatchEvent(new CustomEvent(name, {detail: this}));
  }
}

/** Whether drawings and texts are asked for in inch. */
export function unitsQuery() {
  return {units: settings.units};
}
