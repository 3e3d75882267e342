// Every revision of an inquiry: who, when, what; to look at and to go back to.
import {html, nothing} from 'lit';
import {get, inquiryPath} from '../api.js';
import {when} from '../format.js';
import {differences} from '../parts/differences.js';
import {PageElement} from '../parts/element.js';
import {failed, loading} from '../parts/states.js';
import {say} from '../say.js';

class RevisionsDrawer extends PageElement {
  static properties = {open: {attribute: false}, revisions: {state: true}, error: {state: true}, looked: {state: true}};

  constructor() {
    super();
    this.open = null;
    this.revisions = null;
    this.error = null;
    this.looked = null;
  }

  firstUpdated() {
    this.whileShown(this.open, 'changed', () => this.load());
    this.whileShown(this, 'keydown', event => event.key === 'Escape' && this.putAway());
    this.load();
    this.querySelector('button').focus();
  }

  async load() {
    try {
      this.revisions = (await get(inquiryPath(this.open.id, 'revisions'))).revisions;
    } catch (error) {
      this.error = error;
    }
  }

  putAway() {
    this.dispatchEvent(new CustomEvent('put-away'));
  }

  async look(revision) {
    if (this.looked?.revision === revision) {
      this.looked = null;
      return;
    }
    const then = await get(inquiryPath(this.open.id, 'revisions', String(revision)));
    const before = revision > 1 ? await get(inquiryPath(this.open.id, 'revisions', String(revision - 1))) : {text: ''};
    this.looked = {revision, text: then.text, lines: differences(before.text, then.text)};
  }

  async goBack() {
    const {revision, text} = this.looked;
    if (await this.open.saveText(text, `back to revision ${revision}`)) say(`The text is as in revision ${revision} again.`);
  }

  render() {
    return html`<aside class="drawer" aria-label="Revisions"><div class="drawer-head"><h2>Revisions</h2>
      <button type="button" class="plain" @click=${this.putAway}>Close</button></div>
      ${this.error ? failed(this.error, () => this.load()) : this.revisions ? this.list() : loading('Reading revisions …')}</aside>`;
  }

  list() {
    return html`<ol class="revisions">${this.revisions.map(entry => html`<li>
      <button type="button" class="plain revision" aria-expanded=${this.looked?.revision === entry.revision} @click=${() => this.look(entry.revision)}>
        <span class="figure">${entry.revision}</span><span>${entry.note || 'edited'}<span class="under">${entry.madeBy}, ${when(entry.madeAt)}${entry.layoutId ? ' · with a layout' : ''}</span></span></button>
      ${this.looked?.revision === entry.revision ? this.change(entry) : nothing}</li>`)}</ol>`;
  }

  change(entry) {
    const {lines} = this.looked;
    return html`<div class="revision-change">${lines.length
      ? html`<pre class="diff" tabindex="0">${lines.map(line => html`<span class="diff-${line.kind}">${{added: '+', removed: '−', gap: '…'}[line.kind]} ${line.text}\n</span>`)}</pre>`
      : html`<p class="soft">The text is the same; the layout was changed.</p>`}
      ${entry.revision === this.open.revision ? html`<p class="soft">This is how it stands now.</p>`
        : html`<button type="button" @click=${this.goBack}>Go back to this text</button>`}</div>`;
  }
}

customElements.define('revisions-drawer', RevisionsDrawer);
