// A chart with its key and its table.
import {html, svg} from 'lit';
import {PageElement} from '../parts/element.js';
import {dashOf, lineChart} from './chart.js';

class LineFigure extends PageElement {
  static properties = {chart: {attribute: false}, table: {attribute: false}, theme: {}};

  constructor() {
    super();
    this.chart = null;
    this.table = null;
    this.drawn = null;
  }

  connectedCallback() {
    super.connectedCallback();
    this.watch = new ResizeObserver(() => this.resize());
    this.watch.observe(this);
    this.whileShown(matchMedia('(prefers-color-scheme: dark)'), 'change', () => this.draw());
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.watch.disconnect();
    this.drawn?.destroy();
    this.drawn = null;
  }

  resize() {
    const width = this.querySelector('.plot')?.clientWidth;
    if (this.drawn && width && Math.abs(width - this.drawn.width) > 2) this.drawn.setSize({width, height: this.chart.heightPx});
  }

  updated() {
    this.draw();
  }

  draw() {
    const holder = this.querySelector('.plot');
    if (!holder || !this.chart) return;
    this.drawn?.destroy();
    this.drawn = lineChart(holder, this.chart);
  }

  render() {
    return html`<figure class="line-figure"><div class="plot" role="img" aria-label="${this.chart?.words}; the figures stand in the table below"></div>
      <figcaption>${this.chart?.series.length > 1 ? html`<ul class="key">${this.chart.series.map((line, at) => html`<li>${svg`<svg width="36" height="8" aria-hidden="true"><line class=${line.isAccent ? 'key-accent' : 'key-line'} x1="0" y1="4" x2="36" y2="4" stroke-dasharray=${dashOf(at)}></line></svg>`}${line.label}</li>`)}</ul>` : ''}
      <details class="table-behind"><summary>The same as a table</summary>${this.table}</details></figcaption></figure>`;
  }
}

customElements.define('line-figure', LineFigure);
