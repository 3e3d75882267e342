// The standing head line: the piece, and the five figures that everything comes down to.
import {html, nothing} from 'lit';
import {counted, fixed, perPiece, pieces, seconds} from '../format.js';
import {askDialog, field} from '../parts/dialog.js';
import {PageElement} from '../parts/element.js';
import {drawing} from '../parts/states.js';
import {gapWords} from '../start/inquiry-row.js';

class HeadLine extends PageElement {
  static properties = {answer: {attribute: false}, text: {attribute: false}, tried: {attribute: false}, showsRevisions: {attribute: false}};

  constructor() {
    super();
    this.answer = null;
    this.text = null;
    this.tried = null;
    this.showsRevisions = false;
  }

  tell(name, detail) {
    this.dispatchEvent(new CustomEvent(name, {detail}));
  }

  async rename() {
    const title = field('Title', 'title', {value: this.answer.name, required: true, note: 'Its address stays as it is.'});
    const answer = await askDialog({
      title: 'Rename',
      build: body => body.append(title),
      answers: [{value: '', words: 'Cancel', isPlain: true}, {value: 'rename', words: 'Rename', isMain: true}],
    });
    const name = title.querySelector('input').value.trim();
    if (answer === 'rename' && name && name !== this.answer.name) this.tell('rename', name);
  }

  render() {
    const {answer, text} = this;
    return html`<div class="head-line">
      <div class="head-thumb" aria-hidden="true">${drawing(answer?.thumbnailSvg)}</div>
      <div class="head-name"><h1>${answer?.name ?? ' '}</h1>
        <span class="under">${answer ? this.under(answer) : ' '}</span></div>
      <dl class="head-figures ${this.tried ? 'is-tried' : ''}" aria-live="polite" aria-atomic="false">${this.figures(this.tried ?? answer?.head)}</dl>
      <div class="tools head-tools" role="group" aria-label="Revisions">
        <button type="button" ?disabled=${!text?.canUndo} @click=${() => this.tell('undo')} title="Ctrl+Z">Undo</button>
        <button type="button" ?disabled=${!text?.canRedo} @click=${() => this.tell('redo')} title="Ctrl+Shift+Z">Redo</button>
        <button type="button" aria-expanded=${this.showsRevisions} @click=${() => this.tell('revisions')}>Revisions</button>
      </div>
    </div>`;
  }

  under(answer) {
    return html`Revision ${answer.revision}${answer.errorCount
      ? html` · <span class="wrong">${counted(answer.errorCount, 'error', 'errors')} in the text</span>` : nothing}
      <button type="button" class="plain head-rename" @click=${this.rename}>Rename</button>`;
  }

  figures(head) {
    if (!head) return nothing;
    const governs = head.governingWords ? `${head.governingWords} governs` : 'nothing planned yet';
    const bound = head.gapPct === null ? governs : `${gapWords(head)} · ${governs}`;
    const load = head.loadPct === null ? nothing : `${counted(head.machinesCount, 'machine', 'machines')}, ${fixed(head.loadPct, 0)} % loaded`;
    const today = head.todayCost === null ? nothing : `today ${perPiece(head.todayCost)}`;
    return html`
      ${this.figure('Cycle', seconds(head.cycleS), 's', bound)}
      ${this.figure('Net output', pieces(head.netPerHour), 'per hour', load)}
      ${this.figure('Piece cost', perPiece(head.pieceCost), head.currency ?? '', today)}
      ${this.figure('Payback', fixed(head.paybackMonths, 0), 'months', nothing, head.paybackWords)}
      ${head.ruleBreachCount > 0 ? this.figure('Rules broken', fixed(head.ruleBreachCount, 0), '', 'see Layout', null, true) : nothing}`;
  }

  figure(name, value, unit, under, title, isWrong = false) {
    return html`<div class=${isWrong ? 'head-figure wrong' : 'head-figure'} title=${title ?? nothing}><dt>${name}</dt>
      <dd><span class="big">${value}</span>${value === '–' ? nothing : html`<span class="unit">${unit}</span>`}<span class="under">${under}</span></dd></div>`;
  }
}

customElements.define('head-line', HeadLine);
