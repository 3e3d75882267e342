// One inquiry: the standing head line above six leaves.
import {html, nothing} from 'lit';
import {OpenInquiry} from '../open-inquiry.js';
import {PageElement} from '../parts/element.js';
import {failed, loading} from '../parts/states.js';
import {LEAVES, go, leafAddress} from '../places.js';
import {settings} from '../settings.js';
import {say} from '../say.js';
import {stepOf} from '../start/first-steps.js';
import './head-line.js';
import './revisions-drawer.js';

const LOADERS = {
  print: () => import('../print/print-leaf.js'),
  route: () => import('../route/route-leaf.js'),
  layout: () => import('../layout/layout-leaf.js'),
  money: () => import('../money/money-leaf.js'),
  paper: () => import('../paper/paper-leaf.js'),
  'run-off': () => import('../runoff/run-off-leaf.js'),
};

class InquiryPlace extends PageElement {
  static properties = {inquiryId: {}, leaf: {}, about: {attribute: false}, showsRevisions: {state: true}, loadError: {state: true}};

  constructor() {
    super();
    this.inquiryId = '';
    this.leaf = 'print';
    this.about = null;
    this.open = null;
    this.showsRevisions = false;
    this.loadError = null;
  }

  connectedCallback() {
    super.connectedCallback();
    this.whileShown(settings, 'changed', () => this.requestUpdate());
    this.whileShown(document, 'keydown', event => this.key(event));
    this.whileShown(this, 'head-changed', event => this.headChanged(event));
    if (this.inquiryId && !this.open) this.openInquiry();
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.open?.close();
    this.open = null;
  }

  willUpdate(changed) {
    if (changed.has('inquiryId')) this.openInquiry();
    if (changed.has('leaf')) {
      this.bring();
      const head = this.querySelector('head-line');
      if (head) head.tried = null;
    }
    document.title = `${this.open?.head?.name ?? this.inquiryId}: ${LEAVES.find(leaf => leaf.word === this.leaf).name} · Drumline`;
  }

  openInquiry() {
    this.open?.close();
    this.open = new OpenInquiry(this.inquiryId);
    for (const name of ['changed', 'missed', 'job', 'failed']) this.open.addEventListener(name, () => this.requestUpdate());
    this.open.load();
  }

  async bring() {
    this.loadError = null;
    try {
      await LOADERS[this.leaf]();
    } catch (error) {
      this.loadError = error;
    }
  }

  /** The layout leaf shows what moves would do: the head line follows without being saved. */
  headChanged(event) {
    if (event.detail?.head) this.querySelector('head-line').tried = event.detail.isSaved === false ? event.detail.head : null;
    if (!event.detail?.head || event.detail.isSaved) this.open.load();
  }

  key(event) {
    const isWriting = event.target.matches?.('input, textarea, select, [contenteditable]');
    if ((event.ctrlKey || event.metaKey) && !isWriting && event.key.toLowerCase() === 'z') {
      event.preventDefault();
      this.takeBack(event.shiftKey ? 'redo' : 'undo');
    }
    if (event.altKey && !event.ctrlKey && event.key >= '1' && event.key <= '6') {
      event.preventDefault();
      go(leafAddress(this.inquiryId, LEAVES[event.key - 1].word));
    }
  }

  async takeBack(which) {
    const {text} = this.open;
    if (!text || (which === 'undo' ? !text.canUndo : !text.canRedo)) return;
    if (await this.open[which]()) say(which === 'undo' ? 'Taken back.' : 'Made again.');
  }

  render() {
    const {open} = this;
    if (open?.error && !open.text) {
      return html`<div class="sheet-page">${failed(open.error, () => open.load())}<p><a href="/">All inquiries</a></p></div>`;
    }
    return html`
      <head-line .answer=${open?.head ?? null} .text=${open?.text ?? null}
        @undo=${() => this.takeBack('undo')} @redo=${() => this.takeBack('redo')} @rename=${event => open.rename(event.detail)}
        @revisions=${() => (this.showsRevisions = !this.showsRevisions)} .showsRevisions=${this.showsRevisions}></head-line>
      <nav class="leaves-nav" aria-label="Leaves of the inquiry">${LEAVES.map(
        (leaf, at) => html`<a href=${leafAddress(this.inquiryId, leaf.word)} aria-current=${leaf.word === this.leaf ? 'page' : nothing}
          title="${leaf.question} Alt+${at + 1}">${leaf.name}<span class="leaf-question">${leaf.question}</span></a>`)}</nav>
      ${stepOf(this.inquiryId, this.leaf)}
      ${open?.missed ? this.missedLine(open.missed) : nothing}
      ${this.showsRevisions ? html`<revisions-drawer .open=${open} @put-away=${() => (this.showsRevisions = false)}></revisions-drawer>` : nothing}
      <div class="leaf leaf-${this.leaf}">${this.loadError
        ? failed({title: 'This leaf could not be loaded', detail: this.loadError.message}, () => this.bring())
        : open?.text ? this.leafElement() : loading('Opening the inquiry …')}</div>`;
  }

  missedLine(missed) {
    return html`<p class="missed" role="status">${missed.changedBy} made revision ${missed.revision} while you were writing.
      Save yours, and you choose which to keep.
      <button type="button" class="plain" @click=${() => this.open.load()}>Take theirs now</button></p>`;
  }

  leafElement() {
    const {open} = this;
    switch (this.leaf) {
      case 'print': return html`<print-leaf .open=${open} .revision=${open.revision} .units=${settings.units}></print-leaf>`;
      case 'route': return html`<route-leaf .open=${open} .revision=${open.revision} .units=${settings.units}></route-leaf>`;
      case 'layout': return html`<layout-leaf .inquiryId=${this.inquiryId} .units=${settings.units} .revision=${open.revision} inquiryid=${this.inquiryId} units=${settings.units}></layout-leaf>`;
      case 'money': return html`<money-leaf .open=${open} .revision=${open.revision} .units=${settings.units} .theme=${settings.theme}></money-leaf>`;
      case 'paper': return html`<paper-leaf .open=${open} .revision=${open.revision}></paper-leaf>`;
      default: return html`<run-off-leaf .open=${open} .revision=${open.revision}></run-off-leaf>`;
    }
  }
}

customElements.define('inquiry-place', InquiryPlace);
