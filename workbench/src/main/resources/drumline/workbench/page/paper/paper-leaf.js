// Paper: what do we hand over? The sheets that can be had, and the study as the customer will read it.
import {html, nothing} from 'lit';
import {get, inquiryPath, withQuery} from '../api.js';
import {PageElement} from '../parts/element.js';
import {empty, failed, loading, problemList} from '../parts/states.js';
import {leafAddress} from '../places.js';

const KINDS = {'text/html': 'page', 'application/pdf': 'PDF', 'application/json': 'JSON', 'image/svg+xml': 'drawing', 'text/yaml': 'text', 'application/yaml': 'text'};

class PaperLeaf extends PageElement {
  static properties = {open: {attribute: false}, revision: {}, paper: {state: true}, error: {state: true}, shown: {state: true}};

  constructor() {
    super();
    this.open = null;
    this.paper = null;
    this.error = null;
    this.shown = null;
  }

  willUpdate(changed) {
    if (changed.has('revision')) this.load();
  }

  async load() {
    try {
      this.paper = await get(inquiryPath(this.open.id, 'paper'));
      this.shown ??= this.paper.previewHref;
      this.error = null;
    } catch (error) {
      this.error = error;
    }
  }

  render() {
    if (this.error && !this.paper) return failed(this.error, () => this.load());
    if (!this.paper) return loading('Listing the sheets …');
    return html`<div class="paper-leaf"><section><h2>Sheets</h2><ul class="sheets">${this.paper.sheets.map(sheet => this.sheet(sheet))}</ul>
      ${this.paper.problems.length ? problemList(this.paper.problems) : nothing}</section>
      <section class="preview" aria-label="Preview">${this.shown
        ? html`<iframe sandbox="allow-same-origin" title="Preview of the sheet" src=${withQuery(this.shown, {revision: this.paper.revision})}></iframe>`
        : empty('Nothing to show yet', 'The sheets are made from a layout. Plan the inquiry first.', html`<a class="button main" href=${leafAddress(this.open.id, 'layout')}>Go to the layout</a>`)}</section></div>`;
  }

  sheet(sheet) {
    const isReady = sheet.state === 'ready';
    const canShow = isReady && /html|svg/.test(sheet.mediaType);
    return html`<li class="sheet ${isReady ? '' : 'is-out'}"><div><strong>${sheet.title}</strong> <span class="soft small">${KINDS[sheet.mediaType] ?? (sheet.mediaType.includes('sheet') ? 'XLSX' : '')}</span>
      <p class="small ${isReady ? 'soft' : ''}">${sheet.words}</p></div>
      ${isReady ? html`<div class="tools">${canShow ? html`<button type="button" aria-pressed=${this.shown === sheet.href} @click=${() => (this.shown = sheet.href)} aria-label="Show ${sheet.title}">Show</button>` : nothing}
        <a class="button" href=${withQuery(sheet.href, {as: 'download'})} download aria-label="Download ${sheet.title}">Download</a></div>`
        : html`<span class="soft small">${sheet.state === 'unplanned' ? 'needs a layout' : 'not there yet'}</span>`}</li>`;
  }
}

customElements.define('paper-leaf', PaperLeaf);
