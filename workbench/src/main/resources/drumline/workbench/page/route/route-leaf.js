// Route: what must be done? Operations under the feature they make, and what must come before what, with the reason.
import {html, nothing} from 'lit';
import {get, inquiryPath, withQuery} from '../api.js';
import {counted, fixed, pieces, quantity} from '../format.js';
import {PageElement} from '../parts/element.js';
import {empty, failed, loading, problemList} from '../parts/states.js';
import {label} from '../print/fields.js';
import './order-graph.js';

class RouteLeaf extends PageElement {
  static properties = {open: {attribute: false}, revision: {}, units: {}, route: {state: true}, error: {state: true}, chosen: {state: true}};

  constructor() {
    super();
    this.open = null;
    this.route = null;
    this.error = null;
    this.chosen = null;
  }

  willUpdate(changed) {
    if (changed.has('revision') || changed.has('units')) this.load();
  }

  async load() {
    try {
      this.route = await get(withQuery(inquiryPath(this.open.id, 'route'), {units: this.units}));
      this.error = null;
    } catch (error) {
      this.error = error;
    }
  }

  choose(id) {
    this.chosen = this.chosen === id ? null : id;
  }

  render() {
    const {route} = this;
    if (this.error && !route) return failed(this.error, () => this.load());
    if (!route) return loading('Deriving the operations …');
    if (!route.operations.length) {
      return html`${empty('There are no operations yet', 'They are derived from the print; what keeps that from being read stands below.')}${problemList(route.problems)}`;
    }
    const byId = new Map(route.operations.map(operation => [operation.id, operation]));
    return html`<p class="soft">${counted(route.operations.length, 'operation', 'operations')}, derived from the print${route.machineName
      ? html` and adapted to ${route.machineName}` : ''}. Times and loads are for the speed shown.</p>
      ${this.table(byId)}
      ${route.problems.length ? html`<section class="below"><h2>Worth a look</h2>${problemList(route.problems)}</section>` : nothing}
      <section class="below"><h2>What must come before what</h2>
        <order-graph .route=${route} .chosen=${this.chosen} @choose-operation=${event => this.choose(event.detail)}></order-graph>
        ${this.orders(byId)}</section>`;
  }

  table(byId) {
    const head = kind => quantity(kind, 0).unit;
    return html`<div class="wide-table" tabindex="0" role="region" aria-label="Operations by feature"><table class="operations">
      <thead><tr><th scope="col">Operation</th><th scope="col">Tool</th><th scope="col" class="num">Speed, rev/min</th>
        <th scope="col" class="num">Cutting, ${head('cuttingSpeedMPerMin')}</th><th scope="col" class="num">Feed, ${head('feedMmPerRev')}</th>
        <th scope="col" class="num">Time, s</th><th scope="col" class="num">Force, ${head('forceN')}</th><th scope="col" class="num">Torque, ${head('torqueNm')}</th>
        <th scope="col" class="num">Power, ${head('powerKw')}</th><th scope="col" class="num">Life, pieces</th></tr></thead>
      ${this.route.features.map(feature => html`<tbody>
        <tr class="feature-row"><th scope="rowgroup" colspan="10">${feature.featureId}<span class="under-inline">${feature.words}</span></th></tr>
        ${feature.operationIds.map(id => this.operation(byId.get(id)))}</tbody>`)}</table></div>`;
  }

  operation(operation) {
    const isChosen = operation.id === this.chosen;
    const figure = (kind, value) => quantity(kind, value).figure;
    return html`<tr class=${isChosen ? 'is-chosen' : ''}>
      <td><button type="button" class="plain operation-pick" aria-expanded=${isChosen} @click=${() => this.choose(operation.id)}>${operation.title}</button></td>
      <td>${operation.toolLabel}<span class="under">${operation.toolMaterial}</span></td>
      <td class="num">${operation.toolRevPerMin > 0 ? html`${fixed(operation.toolRevPerMin, 0)}<span class="under">tool, spindle ${operation.condition}</span>` : fixed(operation.spindleRevPerMin, 0)}</td>
      <td class="num">${figure('cuttingSpeedMPerMin', operation.cuttingSpeedMPerMin)}</td><td class="num">${figure('feedMmPerRev', operation.feedMmPerRev)}</td>
      <td class="num">${figure('timeS', operation.cutS)}</td><td class="num">${figure('forceN', operation.cuttingForceN)}</td>
      <td class="num">${figure('torqueNm', operation.torqueNm)}</td><td class="num">${figure('powerKw', operation.powerKw)}</td>
      <td class="num">${pieces(operation.toolLifePieces)}</td></tr>
      ${isChosen ? this.reasons(operation) : nothing}`;
  }

  reasons(operation) {
    const {orders, pairs} = this.route;
    const before = orders.filter(order => order.beforeId === operation.id);
    const after = orders.filter(order => order.afterId === operation.id);
    const together = pairs.filter(pair => pair.oneId === operation.id || pair.otherId === operation.id);
    const length = value => html`${quantity('lengthMm', value).figure} ${quantity('lengthMm', value).unit}`;
    return html`<tr class="is-chosen"><td colspan="10"><div class="reasons">
      <dl><dt>Why</dt><dd>${operation.reason}</dd>
        <dt>Cut</dt><dd>${operation.depthMm > 0 ? html`${length(operation.depthMm)} deep, ` : nothing}${counted(operation.passCount, 'pass', 'passes')}, ${length(operation.travelMm)} travel; works on the ${operation.end === 'either' ? 'front or back' : operation.end}; spindle ${operation.condition}</dd>
        <dt>Speed</dt><dd>${fixed(operation.lowestRevPerMin, 0)} to ${fixed(operation.highestRevPerMin, 0)} rev/min, held by ${operation.speedLimit}</dd>
        <dt>Slides</dt><dd>${operation.slides.join(', ')}${operation.equipment.length ? html`; needs ${operation.equipment.join(', ')}` : nothing}</dd>
        <dt>Sources</dt><dd>${operation.sources.join('; ')}</dd></dl>
      <dl>${before.map(order => html`<dt>Before ${order.afterId}</dt><dd>${order.reason}</dd>`)}
        ${after.map(order => html`<dt>After ${order.beforeId}</dt><dd>${order.reason}</dd>`)}
        ${together.map(pair => html`<dt>${label(pair.kind)} as ${pair.oneId === operation.id ? pair.otherId : pair.oneId}</dt><dd>${pair.reason}</dd>`)}
        ${before.length + after.length + together.length === 0 ? html`<dt>Order</dt><dd>free</dd>` : nothing}</dl></div></td></tr>`;
  }

  orders(byId) {
    const title = id => byId.get(id)?.title ?? id;
    return html`<details class="table-behind"><summary>The same as a table: ${counted(this.route.orders.length, 'rule', 'rules')}</summary>
      <table><thead><tr><th scope="col">First</th><th scope="col">Then</th><th scope="col">Because</th></tr></thead>
      <tbody>${this.route.orders.map(order => html`<tr><td>${title(order.beforeId)}</td><td>${title(order.afterId)}</td><td>${order.reason}</td></tr>`)}
      ${this.route.pairs.map(pair => html`<tr><td>${title(pair.oneId)}</td><td>${title(pair.otherId)} <span class="soft">${pair.kind}</span></td><td>${pair.reason}</td></tr>`)}</tbody></table></details>`;
  }
}

customElements.define('route-leaf', RouteLeaf);
