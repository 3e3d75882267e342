// One operation: where its time goes, how near its loads come to their limits, and where its figures come from.
import {html, nothing} from 'lit';
import {get, inquiryPath, withQuery} from '../api.js';
import {fixed, pieces, quantity, seconds} from '../format.js';
import {PageElement} from '../parts/element.js';
import {laid} from '../parts/laid.js';
import {failed, loading} from '../parts/states.js';
import {placeOf} from './moves.js';

const KINDS = {approach: 'approach', cut: 'cut', dwell: 'dwell', retract: 'retract'};
const FIGURES = [
  ['cuttingSpeedMPerMin', 'Cutting speed', 'cuttingSpeedMPerMin'], ['feedMmPerRev', 'Feed', 'feedMmPerRev'], ['depthMm', 'Depth', 'lengthMm'],
  ['cuttingForceN', 'Cutting force', 'forceN'], ['torqueNm', 'Torque', 'torqueNm'], ['powerKw', 'Power', 'powerKw'], ['thrustN', 'Thrust', 'forceN'],
];

/** Figures of the chosen operation. Says "pin" with all pins, "speed" with a wish, "chosen" with another operation, "put-away". */
class OperationPanel extends PageElement {
  static properties = {inquiryId: {}, units: {}, answer: {attribute: false}, operationId: {}, revision: {type: Number}, figures: {state: true}, error: {state: true}};

  constructor() {
    super();
    this.inquiryId = '';
    this.units = 'metric';
    this.answer = null;
    this.operationId = '';
    this.revision = null;
    this.figures = null;
    this.error = null;
  }

  willUpdate(changed) {
    if (changed.has('operationId') || changed.has('units') || changed.has('revision')) this.load();
  }

  async load() {
    const wanted = this.operationId;
    try {
      const figures = await get(withQuery(inquiryPath(this.inquiryId, 'operations', wanted), {units: this.units}));
      if (wanted !== this.operationId) return;
      this.figures = figures;
      this.error = null;
    } catch (error) {
      this.error = error;
      this.figures = null;
    }
  }

  tell(name, detail) {
    this.dispatchEvent(new CustomEvent(name, {detail}));
  }

  /** The present pins with this operation's changed; nothing pinned takes it out. */
  pinned(change) {
    const {block} = placeOf(this.answer, this.operationId);
    const before = this.answer.pins.find(pin => pin.operationId === this.operationId) ?? {operationId: this.operationId, position: null, slideId: null, spindleRevPerMin: null};
    const after = {...before, ...change(block)};
    const others = this.answer.pins.filter(pin => pin.operationId !== this.operationId);
    const isPinned = after.position || after.slideId || after.spindleRevPerMin;
    this.tell('pin', isPinned ? [...others, after] : others);
  }

  render() {
    const place = placeOf(this.answer, this.operationId);
    const title = place?.block.title ?? this.figures?.operation.title ?? this.operationId;
    return html`<aside class="operation-panel" aria-label="Figures of ${title}">
      <div class="drawer-head"><h2>${title}</h2><button type="button" class="plain" aria-label="Close the figures" @click=${() => this.tell('put-away')}>×</button></div>
      ${place ? html`<p class="soft">${place.column.title}, ${place.lane.slideId}, ${seconds(place.block.startS)} to ${seconds(place.block.endS)} s</p>${this.times(place.block)}${this.speed(place.block)}${this.pins(place)}` : html`<p class="wrong">It has no place in this layout.</p>`}
      ${this.error ? failed(this.error, () => this.load()) : this.figures?.operation.id === this.operationId ? this.known(this.figures) : loading('Reading its figures …')}
    </aside>`;
  }

  times(block) {
    const total = block.endS - block.startS;
    return html`<h3>Time <span class="figure">${seconds(total)}<span class="unit">s</span></span></h3>
      <table class="panel-times"><tbody>${block.elements.map(part => html`<tr><th scope="row">${KINDS[part.kind]}</th>
        <td class="panel-bar"><i class="part is-${part.kind} pattern-${block.pattern}" ${laid({width: `${(100 * (part.endS - part.startS)) / total}%`})}></i></td><td class="num">${seconds(part.endS - part.startS)}</td></tr>`)}</tbody></table>`;
  }

  speed(block) {
    if (!block.spindleRevPerMin) return nothing;
    const submit = event => {
      event.preventDefault();
      const value = Number(new FormData(event.target).get('speed'));
      if (value > 0) this.tell('speed', {operationId: this.operationId, spindleRevPerMin: value});
    };
    return html`<form class="panel-speed" @submit=${submit}><label for="panel-speed">Spindle speed <span class="unit">rev/min</span></label>
      <div class="value-row"><input id="panel-speed" name="speed" type="number" min="1" step="any" .value=${String(Math.round(block.spindleRevPerMin * 10) / 10)}><button>Try</button></div></form>`;
  }

  pins({block, column, lane}) {
    const pin = this.answer.pins.find(one => one.operationId === this.operationId);
    const toggle = (words, isOn, change) => html`<button type="button" aria-pressed=${isOn ? 'true' : 'false'} @click=${() => this.pinned(change)}>${words}</button>`;
    return html`<h3>Pin for the next plan</h3><div class="tools panel-pins">
      ${column.place === 'drum' ? toggle('position', pin?.position, () => ({position: pin?.position ? null : column.position})) : nothing}
      ${toggle('slide', pin?.slideId, () => ({slideId: pin?.slideId ? null : lane.slideId}))}
      ${block.spindleRevPerMin ? toggle('speed', pin?.spindleRevPerMin, () => ({spindleRevPerMin: pin?.spindleRevPerMin ? null : block.spindleRevPerMin})) : nothing}</div>`;
  }

  known({operation, limits, places, before, after}) {
    return html`
      ${limits.length ? html`<h3>Loads against limits</h3><ul class="panel-limits">${limits.map(limit => html`<li title=${limit.source}><span class="limit-words"><span>${limit.words}</span><span class="figure">${limit.figure} <span class="soft">of ${limit.limit}</span></span></span>
        <span class="limit-bar"><i class="limit ${limit.usedPct > 100 ? 'is-wrong' : ''}" ${laid({width: `${Math.min(100, limit.usedPct)}%`})}></i></span><span class="figure ${limit.usedPct > 100 ? 'wrong' : ''}">${fixed(limit.usedPct, 0)}<span class="unit">%</span></span></li>`)}</ul>` : nothing}
      <h3>Figures</h3><dl class="panel-figures">
        <dt>Tool</dt><dd>${operation.toolLabel}<span class="under">${operation.toolMaterial}</span></dd>
        ${FIGURES.filter(([name]) => operation[name] > 0).map(([name, words, kind]) => {
          const {figure, unit} = quantity(kind, operation[name]);
          return html`<dt>${words}</dt><dd class="figure">${figure}<span class="unit">${unit}</span></dd>`;
        })}
        <dt>Allowed speeds</dt><dd class="figure">${fixed(operation.lowestRevPerMin, 0)} to ${fixed(operation.highestRevPerMin, 0)}<span class="unit">rev/min</span><span class="under">${operation.speedLimit}</span></dd>
        ${operation.toolLifePieces ? html`<dt>Tool life</dt><dd class="figure">${pieces(operation.toolLifePieces)}<span class="unit">pieces</span></dd>` : nothing}</dl>
      <h3>Why it is there</h3><p>${operation.reason}</p>
      ${this.orders('Comes after', after)}${this.orders('Comes before', before)}
      ${places.length ? html`<h3>Could stand at</h3><p>${places.map(one => one.words).join('; ')}</p>` : nothing}
      ${operation.sources?.length ? html`<details><summary>Where the figures come from</summary><ul>${operation.sources.map(source => html`<li>${source}</li>`)}</ul></details>` : nothing}`;
  }

  /** Operations that stand before or after this one, those with one reason together. */
  orders(words, rules) {
    if (!rules.length) return nothing;
    const byReason = new Map();
    for (const rule of rules) byReason.set(rule.reason, [...(byReason.get(rule.reason) ?? []), rule.operationId]);
    return html`<h3>${words}</h3><ul class="panel-orders">${[...byReason].map(([reason, operations]) => html`<li>${operations.map((operationId, at) => html`${at ? ', ' : ''}<button type="button" class="plain"
      @click=${() => this.tell('chosen', {operationId})}>${placeOf(this.answer, operationId)?.block.title ?? operationId}</button>`)} <span class="under">${reason}</span></li>`)}</ul>`;
  }
}

customElements.define('operation-panel', OperationPanel);
