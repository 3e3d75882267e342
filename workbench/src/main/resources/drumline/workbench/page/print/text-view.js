// The inquiry as text, for those who would rather write: line numbers, problems at their lines, saved on demand.
import {html, nothing} from 'lit';
import {PageElement} from '../parts/element.js';
import {problemList} from '../parts/states.js';
import {say} from '../say.js';

class TextView extends PageElement {
  static properties = {open: {attribute: false}, revision: {}, line: {}, draft: {state: true}};

  constructor() {
    super();
    this.open = null;
    this.line = null;
    this.draft = null;
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.open?.hold(false);
  }

  updated(changed) {
    if (changed.has('line') && this.line) this.goTo(this.line);
  }

  goTo(line) {
    const area = this.querySelector('textarea');
    const lines = area.value.split('\n');
    const start = lines.slice(0, line - 1).join('\n').length + (line > 1 ? 1 : 0);
    area.focus();
    area.setSelectionRange(start, start + (lines[line - 1]?.length ?? 0));
    area.scrollTop = Math.max(0, (line - 5) * parseFloat(getComputedStyle(area).lineHeight));
  }

  write(event) {
    this.draft = event.target.value === this.open.text.text ? null : event.target.value;
    this.open.hold(this.draft !== null);
  }

  key(event) {
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 's') {
      event.preventDefault();
      this.save();
    }
  }

  async save() {
    if (this.draft === null) return;
    const draft = this.draft;
    try {
      const isKept = await this.open.saveText(draft, 'text edited');
      this.draft = null;
      this.open.hold(false);
      if (isKept) say('Saved.');
    } catch (error) {
      say(error.message, {isWrong: true});
    }
  }

  render() {
    const {text, problems} = this.open.text;
    const shown = this.draft ?? text;
    const wrong = new Map(problems.filter(problem => problem.line).map(problem => [problem.line, problem.severity]));
    return html`<div class="text-view">
      <div class="text-box"><pre class="gutter" aria-hidden="true">${shown.split('\n').map((_, at) => html`<span class=${wrong.has(at + 1) ? `is-${wrong.get(at + 1)}` : ''}>${at + 1}\n</span>`)}</pre>
        <textarea aria-label="The inquiry as text" spellcheck="false" wrap="off" .value=${shown} @input=${this.write} @keydown=${this.key}
          @scroll=${event => (event.target.previousElementSibling.scrollTop = event.target.scrollTop)}></textarea></div>
      <div class="tools"><button type="button" class="main" ?disabled=${this.draft === null} @click=${this.save} title="Ctrl+S">Save</button>
        <button type="button" ?disabled=${this.draft === null} @click=${() => { this.draft = null; this.open.hold(false); }}>Take back</button>
        <span class="soft small" role="status">${this.draft === null ? 'Saved as it stands.' : 'Not saved yet. A text with errors can be saved as well.'}</span></div>
      ${problems.length ? problemList(problems.map(problem => ({...problem, elementId: null})), {onGo: problem => this.goTo(problem.line)}) : nothing}
    </div>`;
  }
}

customElements.define('text-view', TextView);
