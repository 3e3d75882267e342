// The drum as the operator sees it from the front: spindles on the circle, slides around them, tools in their order.
import {html, nothing, svg} from 'lit';
import {fixed, seconds} from '../format.js';
import {PageElement} from '../parts/element.js';
import {orderOf} from './moves.js';

const SIZE = 680;
const CIRCLE = 205;
const SPINDLE = 56;

/** Front view with a list for each position. Says "chosen". */
class DrumView extends PageElement {
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
    const drum = this.answer.columns.filter(column => column.place === 'drum');
    const back = this.answer.columns.find(column => column.place === 'pick-up');
    return html`<div class="drum-view">
      <figure class="drum-figure"><svg viewBox="0 0 ${SIZE} ${SIZE}" role="img" aria-label="Drum from the front, ${drum.length} positions; the list beside it says what each does">
        <circle class="drum" cx=${SIZE / 2} cy=${SIZE / 2} r=${CIRCLE + SPINDLE + 12}></circle><circle class="drum-hub" cx=${SIZE / 2} cy=${SIZE / 2} r="84"></circle>
        ${this.turning()}
        ${drum.map((column, at) => this.spindle(column, at, drum.length))}
        <text class="drum-words" x=${SIZE / 2} y=${SIZE / 2 - 4}>index</text><text class="drum-words" x=${SIZE / 2} y=${SIZE / 2 + 15}>${seconds(this.answer.cycle?.indexS)} s</text>
      </svg>
      <figcaption class="small soft">Bars outside: cross slides with their tools in use. Ring: share of the cycle. Position 1 is drawn at the lower right; a machine may count from another place.</figcaption></figure>
      <div class="drum-lists">${[...drum, back].filter(Boolean).map(column => this.list(column))}</div></div>`;
  }

  /** Which way the drum turns: an arrow around the hub; the first position stands at the lower right. */
  turning() {
    const r = 66;
    const c = SIZE / 2;
    const point = deg => `${(c + r * Math.cos((deg * Math.PI) / 180)).toFixed(1)} ${(c + r * Math.sin((deg * Math.PI) / 180)).toFixed(1)}`;
    return svg`<path class="drum-arrow" d="M${point(30)}A${r} ${r} 0 1 0 ${point(150)}"></path><path class="drum-arrow-head" d="M0 0L-5 -12L5 -12z" transform="translate(${point(150)}) rotate(-30)"></path>`;
  }

  spindle(column, at, count) {
    const angle = ((67.5 - (360 / count) * at) * Math.PI) / 180;
    const x = SIZE / 2 + CIRCLE * Math.cos(angle);
    const y = SIZE / 2 + CIRCLE * Math.sin(angle);
    const share = this.answer.cycle ? Math.min(1, column.busyS / this.answer.cycle.workS) : 0;
    const hasChosen = column.lanes.some(lane => lane.blocks.some(block => block.operationId === this.chosen));
    const turn = column.spindle.find(part => part.kind === 'keep');
    const slides = column.lanes.filter(lane => lane.kind === 'cross');
    return svg`${slides.map((lane, place) => slide(lane, angle + (place - (slides.length - 1) / 2) * 0.17))}
      <g class="drum-spindle ${column.isGoverning ? 'is-governing' : ''} ${hasChosen ? 'is-chosen' : ''}">
      <circle cx=${x} cy=${y} r=${SPINDLE}></circle>
      <path class="drum-busy" d=${arc(x, y, SPINDLE - 5, share)}></path>
      <text class="drum-number" x=${x} y=${y - 4}>${column.position}</text>
      <text class="drum-words" x=${x} y=${y + 14}>${seconds(column.busyS)} s</text>
      <text class="drum-words soft" x=${x} y=${y + 29}>${turn ? (turn.condition.startsWith('turning') ? `${fixed(turn.revPerMin, 0)}/min` : turn.condition) : ''}</text></g>`;
  }

  list(column) {
    return html`<section class="drum-list"><h2>${column.title} ${column.isGoverning ? html`<span class="wrong">governs</span>` : nothing}</h2>
      <ol>${orderOf(column).map(block => html`<li><button type="button" class="plain" aria-pressed=${block.operationId === this.chosen ? 'true' : 'false'} @click=${() => this.choose(block.operationId)}>${block.title}</button>
        <span class="soft">${column.lanes.find(lane => lane.blocks.includes(block)).kind}, ${seconds(block.endS - block.startS)} s</span></li>`)}</ol></section>`;
  }
}

/** A cross slide outside the drum, with how many of its tools are in use. */
function slide(lane, angle) {
  const r = CIRCLE + SPINDLE + 34;
  const x = SIZE / 2 + r * Math.cos(angle);
  const y = SIZE / 2 + r * Math.sin(angle);
  return svg`<g class="drum-slide"><rect x=${x - 19} y=${y - 11} width="38" height="22" transform="rotate(${((angle * 180) / Math.PI + 90).toFixed(1)} ${x.toFixed(1)} ${y.toFixed(1)})"></rect>
    <text x=${x} y=${y + 4}>${lane.blocks.length}</text></g>`;
}

/** Part of a circle from the top, clockwise. */
function arc(x, y, r, share) {
  if (share >= 0.999) return `M${x} ${y - r}A${r} ${r} 0 1 1 ${x - 0.01} ${y - r}`;
  const angle = 2 * Math.PI * share - Math.PI / 2;
  return `M${x} ${y - r}A${r} ${r} 0 ${share > 0.5 ? 1 : 0} 1 ${x + r * Math.cos(angle)} ${y + r * Math.sin(angle)}`;
}

customElements.define('drum-view', DrumView);
