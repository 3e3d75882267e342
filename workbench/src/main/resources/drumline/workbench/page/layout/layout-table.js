// The wall as a table: every chart has its table.
import {html} from 'lit';
import {fixed, seconds} from '../format.js';
import {PageElement} from '../parts/element.js';
import {orderOf} from './moves.js';

/** One line for each operation, by position and order. Says "chosen". */
class LayoutTable extends PageElement {
  static properties = {answer: {attribute: false}, chosen: {}};

  constructor() {
    super();
    this.answer = null;
    this.chosen = '';
  }

  choose(operationId) {
    this.dispatchEvent(new CustomEvent('chosen', {detail: {operationId}}));
  }

  render() {
    return html`<table class="layout-table"><caption>Operations on the clock; times in seconds from the end of the index</caption>
      <thead><tr><th>Position</th><th>Operation</th><th>Slide</th><th class="num">Begins</th><th class="num">Ends</th><th class="num">Takes</th><th class="num">In cut</th><th class="num">Spindle rev/min</th><th>Pinned</th></tr></thead>
      ${this.answer.columns.map(column => this.group(column))}</table>`;
  }

  group(column) {
    const blocks = orderOf(column);
    const laneOf = block => column.lanes.find(lane => lane.blocks.includes(block));
    return html`<tbody><tr class="table-group"><th colspan="9" scope="rowgroup">${column.title}<span class="soft"> busy ${seconds(column.busyS)}, ${column.isGoverning ? html`<b class="wrong">governs</b>` : `slack ${seconds(column.slackS)}`}</span></th></tr>
      ${blocks.map(block => html`<tr class=${block.operationId === this.chosen ? 'is-chosen' : ''}>
        <td>${column.place === 'pick-up' ? 'back' : column.position}</td>
        <th scope="row"><button type="button" class="plain" @click=${() => this.choose(block.operationId)}>${block.title}</button></th>
        <td>${laneOf(block).slideId}</td><td class="num">${seconds(block.startS)}</td><td class="num">${seconds(block.endS)}</td><td class="num">${seconds(block.endS - block.startS)}</td>
        <td class="num">${seconds(block.elements.filter(part => part.kind === 'cut').reduce((sum, part) => sum + part.endS - part.startS, 0))}</td>
        <td class="num">${block.spindleRevPerMin ? fixed(block.spindleRevPerMin, 0) : '–'}</td><td>${block.pin ? 'yes' : ''}${block.breaches.length ? html` <b class="wrong">breaks a rule</b>` : ''}</td></tr>`)}</tbody>`;
  }
}

customElements.define('layout-table', LayoutTable);
