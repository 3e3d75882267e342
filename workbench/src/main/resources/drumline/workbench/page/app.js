// The frame of the page: bar, place, foot. Leaves are loaded when they are opened.
import {html, nothing} from 'lit';
import {get} from './api.js';
import {PageElement} from './parts/element.js';
import {followLinks, placeOf} from './places.js';
import {say} from './say.js';
import {settings} from './settings.js';

const THEMES = [['light', 'Light'], ['dark', 'Dark'], ['system', 'As the system']];

class WorkbenchApp extends PageElement {
  static properties = {place: {state: true}, about: {state: true}};

  constructor() {
    super();
    this.place = placeOf(location.pathname);
    this.about = null;
  }

  connectedCallback() {
    super.connectedCallback();
    this.replaceChildren();
    followLinks(this);
    this.whileShown(window, 'place-changed', () => this.enter());
    this.whileShown(window, 'popstate', () => this.enter());
    this.whileShown(settings, 'changed', () => this.requestUpdate());
    this.whileShown(window, 'unhandledrejection', event => {
      if (event.reason?.name !== 'AbortError') say(event.reason?.message ?? 'Something went wrong.', {isWrong: true});
    });
    get('/about').then(about => (this.about = about), () => {});
    this.bring();
  }

  enter() {
    this.place = placeOf(location.pathname);
    this.bring();
  }

  /** Loads what the place needs. */
  bring() {
    if (this.place?.kind === 'list') import('./start/inquiry-list.js');
    if (this.place?.kind === 'inquiry') import('./inquiry/inquiry-place.js');
  }

  render() {
    return html`
      <header class="bar">
        <a class="wordmark" href="/" aria-label="Drumline, all inquiries"><img src="/page/mark.svg" alt="" width="22" height="22">Drumline</a>
        ${this.place?.kind === 'inquiry' ? html`<a href="/" class="bar-back">All inquiries</a>` : nothing}
        <span class="bar-space"></span>
        ${this.choice('Units', 'units', [['metric', 'Metric'], ['inch', 'Inch']])}
        ${this.choice('Light and dark', 'theme', THEMES)}
      </header>
      <main id="main" tabindex="-1">${this.work()}</main>
      <footer class="foot">
        <p>${this.about?.foot ?? 'Planning values: prove clamping, speeds and clearances on the machine before use.'}
          Qualified people prove them with guards closed, under the machine maker’s limits, local codes and the rules of the plant.</p>
        <p class="soft">Drumline ${this.about?.version ?? ''}${this.about?.user ? html` · revisions carry the name ${this.about.user}` : nothing}</p>
      </footer>`;
  }

  choice(label, name, options) {
    return html`<fieldset class="choice"><legend class="read-only">${label}</legend>${options.map(
      ([value, words]) => html`<label><input type="radio" class="read-only" name=${name} .checked=${settings[name] === value}
        @change=${() => settings.set(name, value)}><span>${words}</span></label>`)}</fieldset>`;
  }

  work() {
    if (this.place?.kind === 'list') return html`<inquiry-list .about=${this.about}></inquiry-list>`;
    if (this.place?.kind === 'inquiry') {
      return html`<inquiry-place .inquiryId=${this.place.id} .leaf=${this.place.leaf} .about=${this.about}></inquiry-place>`;
    }
    document.title = 'Not found · Drumline';
    return html`<section class="sheet-page"><h1>There is nothing at this address</h1><p><a href="/">All inquiries</a></p></section>`;
  }
}

customElements.define('workbench-app', WorkbenchApp);
