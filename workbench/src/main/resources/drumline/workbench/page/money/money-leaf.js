// Money: what does it cost, against what?
import {html, nothing} from 'lit';
import {get, inquiryPath} from '../api.js';
import {fixed, money, percent, perPiece, pieces} from '../format.js';
import {PageElement} from '../parts/element.js';
import {empty, failed, loading, problemList} from '../parts/states.js';
import {leafAddress} from '../places.js';
import {alternativeTable, crossingTable, shareBars, swingBars} from './money-tables.js';
import './line-figure.js';

class MoneyLeaf extends PageElement {
  static properties = {open: {attribute: false}, revision: {}, units: {}, theme: {}, answer: {state: true}, error: {state: true}};

  constructor() {
    super();
    this.open = null;
    this.answer = null;
    this.error = null;
  }

  willUpdate(changed) {
    if (changed.has('revision')) this.load();
  }

  async load() {
    try {
      this.answer = await get(inquiryPath(this.open.id, 'money'));
      this.error = null;
    } catch (error) {
      this.error = error;
    }
  }

  render() {
    if (this.error && !this.answer) return failed(this.error, () => this.load());
    if (!this.answer) return loading('Pricing the layout …');
    const study = this.answer.money;
    if (!study) {
      return html`${empty('There is no cost yet', 'A piece is priced on a layout. Plan the inquiry, and its cost, alternatives and payback stand here.',
        html`<a class="button main" href=${leafAddress(this.open.id, 'layout')}>Go to the layout</a>`)}${problemList(this.answer.problems)}`;
    }
    return html`<div class="money-leaf">
      <section aria-labelledby="money-shares"><h2 id="money-shares">A piece costs ${perPiece(study.pieceCost)} ${study.currency}</h2>${shareBars(study)}</section>
      <section aria-labelledby="money-output"><h2 id="money-output">Output</h2>${this.output(study.output)}</section>
      <section class="whole" aria-labelledby="money-other"><h2 id="money-other">Against other ways</h2>${alternativeTable(study)}</section>
      <section aria-labelledby="money-volume"><h2 id="money-volume">Cost of a year against its volume</h2>${this.volumes(study)}</section>
      <section aria-labelledby="money-payback"><h2 id="money-payback">Payback</h2>${this.payback(study)}</section>
      <section aria-labelledby="money-swing"><h2 id="money-swing">What moves the piece cost most</h2>${swingBars(study)}</section>
      <section aria-labelledby="money-assumed"><h2 id="money-assumed">What nobody said, and was assumed</h2>
        <table><thead><tr><th scope="col">Assumption</th><th scope="col">Source</th></tr></thead>
        <tbody>${study.assumptions.map(assumption => html`<tr><td>${assumption.words}</td><td class="soft">${assumption.source}</td></tr>`)}</tbody></table></section>
      ${this.answer.problems.length ? html`<section class="whole"><h2>Worth a look</h2>${problemList(this.answer.problems)}</section>` : nothing}
    </div>`;
  }

  output(output) {
    const rows = [
      ['Gross, if nothing ever stopped', pieces(output.grossPerHour), 'per hour'],
      ['Net, good pieces', pieces(output.netPerHour), 'per hour'],
      ['Availability', percent(output.availabilityPct), '%'],
      ['Scrap', percent(output.scrapPct), '%'],
      ['Machines needed', fixed(output.machinesCount, 0), ''],
      ['Their load', percent(output.loadPct), '%'],
      ['Pieces from a bar', pieces(output.piecesPerBar), ''],
      ['Bar used', percent(output.barYieldPct), '%'],
    ];
    return html`<table class="figures"><tbody>${rows.map(([words, figure, unit]) => html`<tr><th scope="row">${words}</th><td class="num">${figure}</td><td class="soft">${unit}</td></tr>`)}</tbody></table>`;
  }

  volumes({volumes, currency}) {
    const chart = {
      xs: volumes.piecesCount, xLabel: 'pieces a year', yLabel: `${currency} a year`, heightPx: 300, words: volumes.words,
      series: volumes.lines.map((line, at) => ({label: line.title, values: line.costs, isWide: at === 0})),
      marks: [
        {x: volumes.perYear, label: 'asked for'},
        ...volumes.crossings.map((crossing, at) => ({x: crossing.piecesCount, y: crossing.cost, label: String(at + 1), isAccent: true}))
          .filter(mark => mark.x !== null && mark.x <= volumes.piecesCount.at(-1)),
      ],
    };
    const table = html`<table><thead><tr><th scope="col" class="num">Pieces</th>${volumes.lines.map(line => html`<th scope="col" class="num">${line.title}</th>`)}</tr></thead>
      <tbody>${volumes.piecesCount.map((count, at) => html`<tr><td class="num">${pieces(count)}</td>${volumes.lines.map(line => html`<td class="num">${money(line.costs[at])}</td>`)}</tr>`)}</tbody></table>`;
    return html`<line-figure .chart=${chart} .table=${table} .theme=${this.theme}></line-figure>
      ${crossingTable(volumes)}<p class="soft small">${volumes.words}</p>`;
  }

  payback({payback, currency}) {
    if (!payback) return html`<p class="soft">The inquiry does not say what a piece costs today; without it there is nothing to pay back from. Write it under Print, Inquiry, How it is made today.</p>`;
    const paid = payback.curve.find(point => point.balance >= 0);
    const chart = {
      xs: payback.curve.map(point => point.monthCount), xLabel: 'months', yLabel: currency, heightPx: 300, words: payback.words,
      series: [{label: 'Balance', values: payback.curve.map(point => point.balance), isWide: true}],
      marks: paid ? [{x: paid.monthCount, y: paid.balance, label: `paid back in month ${paid.monthCount}`, isAccent: true}] : [],
    };
    const table = html`<table><thead><tr><th scope="col" class="num">Month</th><th scope="col" class="num">Balance, ${currency}</th></tr></thead>
      <tbody>${payback.curve.map(point => html`<tr><td class="num">${point.monthCount}</td><td class="num">${money(point.balance)}</td></tr>`)}</tbody></table>`;
    return html`<line-figure .chart=${chart} .table=${table} .theme=${this.theme}></line-figure>
      <p>${payback.words}</p><p class="soft small">Investment ${money(payback.investment)} ${currency}, saving ${money(payback.savingPerYear)} ${currency} a year.</p>`;
  }
}

customElements.define('money-leaf', MoneyLeaf);
