// What must come before what, drawn from left to right; a chosen operation shows only its own lines, with their reasons.
import {html, nothing, svg} from 'lit';
import {PageElement} from '../parts/element.js';
import {direct, ranks, rows} from './ranks.js';

const COLUMN = 190;
const ROW = 40;
const BOX = {width: 150, height: 28};
const EDGE = 2;

class OrderGraph extends PageElement {
  static properties = {route: {attribute: false}, chosen: {attribute: false}};

  constructor() {
    super();
    this.route = null;
    this.chosen = null;
  }

  willUpdate(changed) {
    if (changed.has('route') && this.route) this.place();
  }

  place() {
    const {operations, orders} = this.route;
    const known = new Set(operations.map(operation => operation.id));
    this.direct = direct(orders.filter(order => known.has(order.beforeId) && known.has(order.afterId)));
    const linked = new Set(this.direct.flatMap(order => [order.beforeId, order.afterId]));
    this.shown = operations.filter(operation => linked.has(operation.id));
    this.free = operations.filter(operation => !linked.has(operation.id));
    const rank = ranks(this.shown, this.direct);
    const {row, heightCount, columnCount} = rows(this.shown, this.direct, rank);
    this.at = id => ({x: EDGE + rank.get(id) * COLUMN, y: EDGE + row.get(id) * ROW});
    this.size = {width: columnCount * COLUMN - (COLUMN - BOX.width) + 2 * EDGE, height: heightCount * ROW - (ROW - BOX.height) + 2 * EDGE};
  }

  choose(id) {
    this.dispatchEvent(new CustomEvent('choose-operation', {detail: id}));
  }

  render() {
    if (!this.shown?.length) return html`<p class="soft">The operations may be done in any order.</p>`;
    const own = this.direct.filter(order => order.beforeId === this.chosen || order.afterId === this.chosen);
    return html`<div class="graph-scroll" tabindex="0" role="region" aria-label="Order graph"><svg class="order-graph ${own.length ? 'has-chosen' : ''}" width=${this.size.width} height=${this.size.height}
      viewBox="0 0 ${this.size.width} ${this.size.height}" role="group" aria-label="Order of operations, left before right">
      ${this.direct.map(order => this.line(order, own.includes(order)))}${this.shown.map(operation => this.box(operation, own))}</svg></div>
      <p class="soft small">${own.length ? own.map(order => `${order.beforeId} before ${order.afterId}: ${order.reason}`).join('. ') + '.' : 'Choose an operation to see its own lines and reasons.'}
      ${this.free.length ? html` Free: ${this.free.map(operation => operation.id).join(', ')}.` : nothing}</p>`;
  }

  line(order, isOwn) {
    const from = this.at(order.beforeId);
    const to = this.at(order.afterId);
    const x = from.x + BOX.width;
    const y = from.y + BOX.height / 2;
    const endX = to.x - 6;
    const endY = to.y + BOX.height / 2;
    const bend = Math.max(24, (endX - x) / 2);
    return svg`<g class=${isOwn ? 'order is-own' : 'order'}><title>${order.reason}</title><path d="M${x} ${y}C${x + bend} ${y} ${endX - bend} ${endY} ${endX} ${endY}"/><path class="order-end" d="M${endX + 6} ${endY}l-7 -3v6z"/></g>`;
  }

  box(operation, own) {
    const {x, y} = this.at(operation.id);
    const isNear = own.some(order => order.beforeId === operation.id || order.afterId === operation.id);
    const words = operation.id.length > 22 ? `${operation.id.slice(0, 21)}…` : operation.id;
    return svg`<g class="order-box ${operation.id === this.chosen ? 'is-chosen' : isNear ? 'is-near' : ''}" role="button" tabindex="0" aria-pressed=${operation.id === this.chosen}
      aria-label=${operation.title} @click=${() => this.choose(operation.id)} @keydown=${event => {
        if (event.key === 'Enter' || event.key === ' ') {
          event.preventDefault();
          this.choose(operation.id);
        }
      }}><title>${operation.title}</title><rect x=${x} y=${y} width=${BOX.width} height=${BOX.height} rx="2"/><text x=${x + 8} y=${y + 18}>${words}</text></g>`;
  }
}

customElements.define('order-graph', OrderGraph);
