// All inquiries: what each piece is, whether it fits, and what came of it.
import {html, nothing} from 'lit';
import {repeat} from 'lit-html/directives/repeat.js';
import {get, withQuery} from '../api.js';
import {counted} from '../format.js';
import {PageElement} from '../parts/element.js';
import {empty, failed, loading} from '../parts/states.js';
import {settings} from '../settings.js';
import {firstSteps} from './first-steps.js';
import {inquiryRow} from './inquiry-row.js';
import {bringIn, bringInStep, duplicate, putPlace, startNew} from './list-acts.js';

class InquiryList extends PageElement {
  static properties = {about: {attribute: false}, inquiries: {state: true}, error: {state: true}, find: {state: true}, shelf: {state: true}};

  constructor() {
    super();
    this.about = null;
    this.inquiries = null;
    this.error = null;
    this.find = '';
    this.shelf = 'desk';
  }

  connectedCallback() {
    super.connectedCallback();
    document.title = 'Inquiries · Drumline';
    this.whileShown(settings, 'changed', event => (event.detail.name === 'units' ? this.load() : this.requestUpdate()));
    this.whileShown(document, 'keydown', event => this.key(event));
    this.whileShown(document, 'pointerdown', event => this.closeMenus(event.target));
    this.load();
  }

  async load() {
    this.reading?.abort();
    const {signal} = (this.reading = new AbortController());
    try {
      const query = {find: this.find, archived: this.shelf === 'archive' ? 'yes' : null, units: settings.units};
      this.inquiries = (await get(withQuery('/inquiries', query), {signal})).inquiries;
      this.error = null;
    } catch (error) {
      if (error.name !== 'AbortError') this.error = error;
    }
  }

  key(event) {
    const isWriting = event.target.matches?.('input, textarea, select');
    if (event.key === '/' && !isWriting) {
      event.preventDefault();
      this.querySelector('#find').focus();
    }
    if (event.key === 'Escape') this.closeMenus(null);
  }

  closeMenus(target) {
    for (const menu of this.querySelectorAll('details.menu[open]')) {
      if (!target || !menu.contains(target)) {
        const hadFocus = menu.contains(document.activeElement);
        menu.open = false;
        if (hadFocus && !target) menu.querySelector('summary').focus();
      }
    }
  }

  search(event) {
    this.find = event.target.value;
    clearTimeout(this.searching);
    this.searching = setTimeout(() => this.load(), 150);
  }

  showShelf(shelf) {
    this.shelf = shelf;
    this.inquiries = null;
    this.load();
  }

  async act(what, inquiry) {
    if (what === 'duplicate') await duplicate(inquiry);
    else await putPlace(inquiry, what);
    await this.load();
  }

  render() {
    return html`<div class="list-page">
      <div class="list-head">
        <h1>${this.shelf === 'archive' ? 'Put away' : 'Inquiries'}</h1>
        <div class="tools" role="group" aria-label="Inquiries">
          <button type="button" @click=${bringIn}>Bring in a file</button>
          ${this.about?.engines.step === 'there' ? html`<button type="button" @click=${bringInStep}>From a STEP file</button>` : nothing}
          <button type="button" class="main" @click=${startNew}>New inquiry</button>
        </div>
      </div>
      ${this.shelf === 'desk' && !this.find ? firstSteps(this.demo()) : nothing}
      <div class="list-tools no-print">
        <label class="find"><span class="read-only">Find in name, customer, number, part or material</span>
          <input id="find" type="search" placeholder="Find: name, customer, number, part, material" .value=${this.find} @input=${this.search}></label>
        <span class="soft" role="status">${this.inquiries ? counted(this.inquiries.length, 'inquiry', 'inquiries') : ''}</span>
        <span class="bar-space"></span>
        <button type="button" class="plain" @click=${() => this.showShelf(this.shelf === 'desk' ? 'archive' : 'desk')}>
          ${this.shelf === 'desk' ? 'Show those put away' : 'Back to the open ones'}</button>
      </div>
      ${this.rows()}
    </div>`;
  }

  demo() {
    return this.inquiries?.find(inquiry => inquiry.name === 'Valve seat body') ?? this.inquiries?.at(-1);
  }

  rows() {
    if (this.error) return failed(this.error, () => this.load());
    if (!this.inquiries) return loading('Reading the inquiries …');
    if (!this.inquiries.length) return this.nothingThere();
    return html`<table class="inquiries">
      <thead><tr>
        <th scope="col"><span class="read-only">Piece</span></th><th scope="col">Inquiry</th><th scope="col">Verdict</th>
        <th scope="col" class="num">Cycle, s</th><th scope="col" class="num">Piece cost</th><th scope="col" class="num">Payback, months</th>
        <th scope="col">Changed</th><th scope="col"><span class="read-only">More</span></th>
      </tr></thead>
      <tbody>${repeat(this.inquiries, inquiry => inquiry.id, inquiry => inquiryRow(inquiry, what => this.act(what, inquiry)))}</tbody>
    </table>`;
  }

  nothingThere() {
    if (this.find) return empty('Nothing found', `No inquiry has all of “${this.find}” in its name, customer, number, part or material.`);
    if (this.shelf === 'archive') return empty('Nothing is put away', 'What is put away stands here and can be taken out again. Nothing is ever deleted.');
    return empty('No inquiry yet', 'Begin a new one from the template, or bring in an inquiry’s text file.',
      html`<button type="button" class="main" @click=${startNew}>New inquiry</button>`);
  }
}

customElements.define('inquiry-list', InquiryList);
