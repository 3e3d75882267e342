// Two stored layouts side by side at one time scale.
import {html, nothing} from 'lit';
import {get, inquiryPath, withQuery} from '../api.js';
import {counted, fixed, perPiece, seconds, when} from '../format.js';
import {PageElement} from '../parts/element.js';
import {empty, failed, loading} from '../parts/states.js';
import './cycle-wall.js';

const WALL_PX = 420;

/** List of layouts, two of them against each other. Says "use" with a layoutId. */
class LayoutCompare extends PageElement {
  static properties = {inquiryId: {}, units: {}, revision: {type: Number}, entries: {state: true}, one: {state: true}, other: {state: true}, pair: {state: true}, error: {state: true}};

  constructor() {
    super();
    this.inquiryId = '';
    this.units = 'metric';
    this.revision = null;
    this.entries = null;
    this.one = '';
    this.other = '';
    this.pair = null;
    this.error = null;
  }

  willUpdate(changed) {
    if (changed.has('inquiryId') || changed.has('revision')) this.load();
    if (changed.has('units') && this.pair) this.compare();
  }

  async load() {
    try {
      this.entries = (await get(inquiryPath(this.inquiryId, 'layouts'))).layouts;
      const present = this.entries.find(entry => entry.isPresent) ?? this.entries[0];
      this.one ||= present?.layoutId ?? '';
      this.other ||= this.entries.find(entry => entry.layoutId !== this.one)?.layoutId ?? '';
      if (this.one && this.other) await this.compare();
    } catch (error) {
      this.error = error;
    }
  }

  async compare() {
    const read = layoutId => get(withQuery(inquiryPath(this.inquiryId, 'layouts', layoutId), {units: this.units}));
    try {
      const [comparison, one, other] = await Promise.all([
        get(withQuery(inquiryPath(this.inquiryId, 'compare'), {one: this.one, other: this.other})), read(this.one), read(this.other),
      ]);
      this.pair = {comparison, one, other};
      this.error = null;
    } catch (error) {
      this.error = error;
    }
  }

  pick(which, layoutId) {
    this[which] = layoutId;
    if (this.one && this.other && this.one !== this.other) this.compare();
  }

  render() {
    if (this.error) return failed(this.error, () => this.load());
    if (!this.entries) return loading('Reading the stored layouts …');
    if (this.entries.length < 2) return html`${this.list()}${empty('Nothing to compare yet', 'Plan again on another machine, with other pins, or keep a move: then two layouts stand here side by side.')}`;
    return html`${this.list()}${this.pair ? this.both() : nothing}`;
  }

  list() {
    const radio = (which, entry) => html`<input type="radio" name="compare-${which}" aria-label="${which} ${entry.note || entry.layoutId}" .checked=${this[which] === entry.layoutId} @change=${() => this.pick(which, entry.layoutId)}>`;
    return html`<table class="layout-list"><caption>Stored layouts, newest first</caption>
      <thead><tr><th>One</th><th>Other</th><th class="num">Cycle s</th><th class="num">Bound s</th><th class="num">Piece cost</th><th>Machine</th><th>Made</th><th>Use</th></tr></thead>
      <tbody>${this.entries.map(entry => html`<tr><td>${radio('one', entry)}</td><td>${radio('other', entry)}</td><td class="num">${seconds(entry.cycleS)}</td><td class="num">${seconds(entry.lowerBoundS)}</td>
        <td class="num">${perPiece(entry.pieceCost)}<span class="unit">${entry.currency}</span></td><td>${entry.machineTitle}</td><td>${entry.origin}, ${entry.madeBy}, ${when(entry.madeAt)}<span class="under">${entry.note}</span></td>
        <td>${entry.isPresent ? 'present' : html`<button type="button" @click=${() => this.dispatchEvent(new CustomEvent('use', {detail: entry.layoutId}))}>Use</button>`}</td></tr>`)}</tbody></table>`;
  }

  both() {
    const {comparison, one, other} = this.pair;
    const endS = Math.max(...[one, other].map(answer => Math.max(answer.cycle?.workS ?? 0, ...answer.columns.map(column => column.busyS))));
    const marked = new Set(comparison.differences.map(difference => difference.operationId));
    const wall = (words, answer) => html`<section class="compare-wall"><h2>${words}: cycle ${seconds(answer.cycle?.cycleS)} s, ${answer.machine?.title}</h2>
      <cycle-wall .answer=${answer} .isQuiet=${true} .endS=${endS} .pxPerS=${WALL_PX / endS} .marked=${marked}></cycle-wall></section>`;
    return html`<table class="compare-figures"><thead><tr><th>Figure</th><th class="num">One</th><th class="num">Other</th><th class="num">Difference</th></tr></thead>
        <tbody>${comparison.figures.map(figure => html`<tr><th scope="row">${figure.words} <span class="unit">${figure.unit}</span></th><td class="num">${fixed(figure.one, digits(figure))}</td><td class="num">${fixed(figure.other, digits(figure))}</td>
          <td class="num">${figure.one === null || figure.other === null ? '–' : fixed(figure.other - figure.one, digits(figure))}</td></tr>`)}</tbody></table>
      ${wall('One', one)}${wall('Other', other)}
      <section class="below"><h2>${comparison.differences.length ? `${counted(comparison.differences.length, 'operation stands elsewhere or runs', 'operations stand elsewhere or run')} at another speed` : 'No operation stands elsewhere'}</h2>
      ${comparison.differences.length ? html`<table><thead><tr><th>Operation</th><th>One</th><th>Other</th><th class="num">One rev/min</th><th class="num">Other rev/min</th></tr></thead><tbody>${comparison.differences.map(
        difference => html`<tr><th scope="row">${difference.title}</th><td>${difference.oneSlideId ?? '–'}</td><td>${difference.otherSlideId ?? '–'}</td><td class="num">${fixed(difference.oneRevPerMin, 0)}</td><td class="num">${fixed(difference.otherRevPerMin, 0)}</td></tr>`)}</tbody></table>` : nothing}</section>`;
  }
}

/** Places after the point: none for counts, one for what is large, else three. */
function digits({one, other}) {
  const known = [one, other].filter(value => value !== null);
  return known.every(Number.isInteger) ? 0 : Math.max(...known) >= 100 ? 1 : 3;
}

customElements.define('layout-compare', LayoutCompare);
