// Print: what is the piece? The drawing to scale beside what it is made of; the text itself as a second view.
import {html, nothing} from 'lit';
import {get, inquiryPath, withQuery} from '../api.js';
import {PageElement} from '../parts/element.js';
import {empty, failed, loading, problemList} from '../parts/states.js';
import {say} from '../say.js';
import './element-table.js';
import './inquiry-form.js';
import './part-drawing.js';
import './text-view.js';
import {fitTable} from './fit-table.js';

const VIEWS = [['elements', 'Piece'], ['inquiry', 'Inquiry'], ['text', 'Text']];
let schema = null;

class PrintLeaf extends PageElement {
  static properties = {
    open: {attribute: false}, revision: {}, units: {}, print: {state: true}, triage: {state: true}, error: {state: true},
    selected: {state: true}, view: {state: true}, line: {state: true},
  };

  constructor() {
    super();
    this.open = null;
    this.print = null;
    this.triage = null;
    this.error = null;
    this.selected = null;
    this.view = 'elements';
    this.line = null;
  }

  willUpdate(changed) {
    if (changed.has('revision') || changed.has('units')) this.load();
  }

  async load() {
    this.reading?.abort();
    const {signal} = (this.reading = new AbortController());
    const {id} = this.open;
    try {
      schema ??= await get('/schema/inquiry');
      this.print = await get(withQuery(inquiryPath(id, 'print'), {units: this.units}), {signal});
      this.error = null;
      this.triage = await get(inquiryPath(id, 'triage'), {signal});
    } catch (error) {
      if (error.name !== 'AbortError') this.error = error;
    }
  }

  /** Makes edits; what the server refuses is said, and the field keeps what was typed. */
  async edit(edits, words) {
    try {
      return await this.open.edit(edits, words);
    } catch (error) {
      say(error.message, {isWrong: true});
      return false;
    }
  }

  select(id, {goTo = false} = {}) {
    this.selected = id;
    if (goTo) this.view = 'elements';
  }

  goToProblem(problem) {
    if (problem.elementId && this.print.elements.some(element => element.id === problem.elementId)) {
      this.select(problem.elementId, {goTo: true});
    } else if (problem.line) {
      this.view = 'text';
      this.line = problem.line;
    }
  }

  render() {
    if (this.error && !this.print) return failed(this.error, () => this.load());
    if (!this.print) return loading('Drawing the piece …');
    return html`<div class="print-leaf">
      <section class="print-picture" aria-label="Drawing">${this.picture()}${this.problems()}${fitTable(this.triage)}</section>
      <section class="print-side">
        <div class="views" role="tablist" aria-label="View" @keydown=${this.turnViews}>${VIEWS.map(([view, words]) => html`<button type="button" role="tab"
          id="tab-${view}" aria-controls="view" aria-selected=${this.view === view} tabindex=${this.view === view ? 0 : -1}
          @click=${() => (this.view = view)}>${words}</button>`)}</div>
        <div id="view" role="tabpanel" aria-labelledby="tab-${this.view}">${this.viewElement()}</div>
      </section></div>`;
  }

  turnViews(event) {
    const step = {ArrowRight: 1, ArrowLeft: -1}[event.key];
    if (!step) return;
    const at = VIEWS.findIndex(([view]) => view === this.view);
    this.view = VIEWS[(at + step + VIEWS.length) % VIEWS.length][0];
    this.updateComplete.then(() => this.querySelector(`#tab-${this.view}`).focus());
  }

  picture() {
    const {print} = this;
    if (!print.svg) return empty('There is no drawing yet', 'The text does not describe a piece that can be drawn. What is wrong stands below.');
    return html`${print.svgRevision !== print.revision
      ? html`<p class="missed">The drawing shows revision ${print.svgRevision}; the text as it is now cannot be drawn.</p>` : nothing}
      <part-drawing .svg=${print.svg} .selected=${this.selected} @select-element=${event => this.select(event.detail, {goTo: true})}></part-drawing>`;
  }

  problems() {
    const {problems} = this.print;
    if (!problems.length) return nothing;
    return html`<section class="below"><h2>What is wrong or worth a look</h2>${problemList(problems, {onGo: problem => this.goToProblem(problem)})}</section>`;
  }

  viewElement() {
    const edit = (edits, words) => this.edit(edits, words);
    switch (this.view) {
      case 'elements': return html`<element-table .print=${this.print} .schema=${schema} .open=${this.open} .selected=${this.selected} .units=${this.units}
        .edit=${edit} @select-element=${event => this.select(event.detail)}></element-table>`;
      case 'inquiry': return html`<inquiry-form .open=${this.open} .revision=${this.print.revision} .schema=${schema} .units=${this.units} .edit=${edit}></inquiry-form>`;
      default: return html`<text-view .open=${this.open} .revision=${this.open.revision} .line=${this.line}></text-view>`;
    }
  }
}

customElements.define('print-leaf', PrintLeaf);
