// The cycle wall: positions left to right as the piece travels, time running down from the index.
import {html, nothing} from 'lit';
import {classMap} from 'lit/directives/class-map.js';
import {fixed, seconds} from '../format.js';
import {PageElement} from '../parts/element.js';
import {laid} from '../parts/laid.js';
import {drawing} from '../parts/states.js';
import {blockWords, labelKind, numbered, textWidth, ticks} from './scale.js';

const AXIS_PX = 44;
const STRIP_PX = 15;
const COLUMN_PADDING_PX = 6;
const DRAG_PX = 5;
const PAPER_PX = 990;
const LANE_WORDS = {cross: 'cross', end: 'end', back: 'back'};

/**
 * The wall of one layout. Says "chosen" with an operation, "put" with {operationId, slideId, startS} while a block is
 * dragged and {isDropped: true} at the end, "dropped-nowhere" when a drag is given up, and "step" with the key's wish.
 */
class CycleWall extends PageElement {
  static properties = {
    answer: {attribute: false}, chosen: {}, pxPerS: {type: Number}, isQuiet: {type: Boolean}, endS: {type: Number},
    marked: {attribute: false}, widthPx: {state: true}, drag: {state: true},
  };

  constructor() {
    super();
    this.answer = null;
    this.chosen = '';
    this.pxPerS = 30;
    this.isQuiet = false;
    this.endS = 0;
    this.marked = new Set();
    this.widthPx = 1200;
    this.drag = null;
  }

  connectedCallback() {
    super.connectedCallback();
    this.sizes = new ResizeObserver(([entry]) => (this.screenPx = entry.contentRect.width) && this.fit());
    this.sizes.observe(this);
    this.whileShown(window, 'beforeprint', () => this.fit(PAPER_PX));
    this.whileShown(window, 'afterprint', () => this.fit());
    this.whileShown(window, 'pointermove', event => this.dragged(event));
    this.whileShown(window, 'pointerup', event => this.released(event));
    this.whileShown(window, 'pointercancel', () => this.giveUp());
    this.whileShown(window, 'keydown', event => event.key === 'Escape' && this.drag?.isMoving && this.giveUp());
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.sizes?.disconnect();
  }

  /** Lays the wall out for a width: that of the window, or of the paper while it is printed. */
  fit(paperPx = null) {
    this.paperPx = paperPx ?? (matchMedia('print').matches ? this.paperPx : null);
    this.widthPx = this.paperPx ?? this.screenPx;
  }

  get workS() {
    return this.answer.cycle?.workS ?? 1;
  }

  get lengthS() {
    const ends = this.answer.columns.map(column => column.busyS);
    return Math.max(this.endS, this.workS, ...ends);
  }

  get columnPx() {
    return Math.max(72, (this.widthPx - AXIS_PX) / Math.max(1, this.answer.columns.length));
  }

  lanePx(column) {
    return (this.columnPx - STRIP_PX - 2 * COLUMN_PADDING_PX) / Math.max(1, column.lanes.length) - 3;
  }

  kindOf(block, column) {
    return labelKind(block.title, this.lanePx(column), (block.endS - block.startS) * this.pxPerS - 2);
  }

  render() {
    if (!this.answer) return nothing;
    const {columns, cycle} = this.answer;
    this.numbers = numbered(columns, (block, lane, column) => this.kindOf(block, column));
    const px = this.pxPerS;
    const boundS = cycle?.lowerBoundS ? cycle.lowerBoundS - cycle.indexS : null;
    const hasBound = boundS !== null && boundS < this.workS - 0.01;
    return html`
      <div class="wall" role="grid" aria-label="Cycle wall: positions across, time down" aria-rowcount="1" aria-colcount=${columns.length}
          ${laid({'--columns': columns.length, '--body': `${this.lengthS * px}px`})}>
        <div class="wall-row" role="row">
        <div class="wall-axis" aria-hidden="true"><div class="wall-head">s</div><div class="wall-body">
          ${ticks(this.lengthS, px).filter(s => Math.abs(s - this.workS) * px > 11).map(s => html`<span class="wall-tick" ${laid({top: `${s * px}px`})}>${fixed(s, s % 1 ? 1 : 0)}</span>`)}
          <span class="wall-tick is-cycle" ${laid({top: `${this.workS * px}px`})}>${seconds(this.workS)}</span></div></div>
        ${columns.map(column => this.column(column))}
        <div class="wall-lines" aria-hidden="true">
          ${ticks(this.lengthS, px).map(s => html`<i class="wall-line" ${laid({top: `${s * px}px`})}></i>`)}
          ${hasBound ? html`<i class="wall-line is-bound" ${laid({top: `${boundS * px}px`})}></i>` : nothing}
          ${cycle ? html`<i class="wall-line is-cycle" ${laid({top: `${this.workS * px}px`})}></i>` : nothing}
        </div>
        ${cycle ? html`<p class="wall-words" aria-hidden="true" ${laid({top: `${this.workS * px}px`})}>index ${seconds(cycle.indexS)} s, cycle ${seconds(cycle.cycleS)} s${hasBound ? `; dashed: bound ${seconds(cycle.lowerBoundS)} s` : ''}</p>` : nothing}</div>
      </div>
      ${this.keys()}
      ${this.drag?.isMoving ? this.ghost() : nothing}`;
  }

  column(column) {
    const words = `${column.title}, busy ${seconds(column.busyS)} s${column.isGoverning ? ', governs' : `, slack ${seconds(column.slackS)} s`}`;
    return html`
      <div class=${classMap({'wall-column': true, 'is-governing': column.isGoverning})} role="gridcell" aria-label=${words} data-position=${column.position}>
        <div class="wall-head">
          <div class="wall-title"><b>${column.place === 'pick-up' ? 'back' : column.position}</b><span>${seconds(column.busyS)}<span class="unit">s</span></span></div>
          <div class="wall-picture">${drawing(column.pictureSvg)}</div>
          <div class="wall-lane-names"><span class="wall-strip-name"></span>${alike(column.lanes).map(
            lanes => html`<span title=${lanes.map(lane => `${lane.slideId}: ${lane.seatCount} tools, ${lane.axes.join(' ')}`).join('; ')} ${laid({'flex-grow': lanes.length})}>${LANE_WORDS[lanes[0].kind]}</span>`)}</div>
        </div>
        <div class="wall-body">
          <div class="wall-strip">${column.spindle.map(part => this.spindle(part))}</div>
          ${column.lanes.map(lane => this.lane(lane, column))}
          ${column.fixed.map(part => this.fixedPart(part))}
          ${this.slack(column)}
        </div>
      </div>`;
  }

  slack(column) {
    const heightPx = Math.min(column.slackS, this.lengthS - column.busyS) * this.pxPerS;
    return column.isGoverning || heightPx < 14
      ? nothing
      : html`<span class="wall-slack" ${laid({top: `${column.busyS * this.pxPerS}px`, height: `${heightPx}px`})}><span>${seconds(column.slackS)}</span></span>`;
  }

  spindle(part) {
    const heightPx = (part.endS - part.startS) * this.pxPerS;
    const isTurning = part.condition.startsWith('turning');
    const words = isTurning ? `${fixed(part.revPerMin, 0)}/min` : part.condition;
    const name = part.kind === 'change' ? 'is-change' : isTurning ? 'is-turning' : part.condition === 'held' ? 'is-held' : 'is-c-axis';
    return html`<div class="wall-spindle ${name}" title="spindle ${part.kind === 'change' ? 'changes to' : ''} ${words}, ${seconds(part.startS)} to ${seconds(part.endS)} s"
      ${laid({top: `${part.startS * this.pxPerS}px`, height: `${heightPx}px`})}>${part.kind === 'keep' && heightPx > 8 * words.length ? html`<span>${words}</span>` : nothing}</div>`;
  }

  fixedPart(part) {
    const heightPx = (part.endS - part.startS) * this.pxPerS;
    const widthPx = this.columnPx - STRIP_PX - 2 * COLUMN_PADDING_PX - 3;
    const kind = heightPx >= 13 && textWidth(part.title) < widthPx - 4 ? 'across' : labelKind(part.title, widthPx, heightPx);
    return heightPx < 1 ? nothing : html`<div class="wall-fixed" title="${part.title}, ${seconds(part.startS)} to ${seconds(part.endS)} s"
      ${laid({top: `${part.startS * this.pxPerS}px`, height: `${heightPx}px`})}>${kind === 'number' || kind === 'bare' ? nothing : html`<span class="is-${kind}">${part.title}</span>`}</div>`;
  }

  lane(lane, column) {
    return html`<div class=${classMap({'wall-lane': true, 'is-target': this.drag?.slideId === lane.slideId})} data-slide=${lane.slideId}>
      ${lane.blocks.map(block => this.block(block, lane, column))}</div>`;
  }

  block(block, lane, column) {
    const px = this.pxPerS;
    const heightPx = (block.endS - block.startS) * px;
    const kind = this.kindOf(block, column);
    const number = this.numbers.get(block.operationId);
    const isWrong = block.breaches.length > 0;
    const words = [
      block.title, `${seconds(block.startS)} to ${seconds(block.endS)} s`, `${lane.kind} slide of ${column.title}`,
      block.spindleRevPerMin ? `${fixed(block.spindleRevPerMin, 0)} rev/min` : '', block.pin ? 'pinned' : '', block.isMoved ? 'moved' : '', isWrong ? 'breaks a rule' : '',
    ].filter(Boolean).join(', ');
    return html`<button type="button" class=${classMap({block: true, 'is-chosen': block.operationId === this.chosen, 'is-moved': block.isMoved || this.marked.has(block.operationId), 'is-wrong': isWrong, 'is-dragged': this.drag?.isMoving && this.drag.operationId === block.operationId})}
        data-operation=${block.operationId} aria-label=${words} title=${words} aria-pressed=${block.operationId === this.chosen ? 'true' : 'false'}
        tabindex=${this.isQuiet ? -1 : this.isTabStop(block) ? 0 : -1}
        ${laid({top: `${block.startS * px}px`, height: `${Math.max(2, heightPx - 1)}px`})}
        @click=${() => this.choose(block.operationId)} @pointerdown=${event => this.grasped(event, block, lane)}
        @keydown=${event => this.pressed(event, block)} @focus=${() => (this.focused = block.operationId)}>
      ${block.elements.map(part => html`<i class="part is-${part.kind} pattern-${block.pattern}" ${laid({top: `${(part.startS - block.startS) * px}px`, height: `${(part.endS - part.startS) * px}px`})}></i>`)}
      ${kind === 'bare' ? nothing : html`<span class="block-words is-${kind}"><span>${kind === 'number' ? number : blockWords(block.title)}</span></span>`}
      ${block.pin ? html`<i class="block-pin"></i>` : nothing}
    </button>`;
  }

  isTabStop(block) {
    const wanted = this.chosen || this.focused;
    const first = this.answer.columns.flatMap(column => column.lanes).flatMap(lane => lane.blocks)[0];
    const isKnown = this.answer.columns.some(column => column.lanes.some(lane => lane.blocks.some(one => one.operationId === wanted)));
    return block.operationId === (isKnown ? wanted : first?.operationId);
  }

  choose(operationId) {
    if (this.justDragged) {
      this.justDragged = false;
      return;
    }
    this.dispatchEvent(new CustomEvent('chosen', {detail: {operationId}}));
  }

  /** Arrows go from block to block; with Shift they move the block. */
  pressed(event, block) {
    const arrows = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1]};
    const step = arrows[event.key];
    const isMove = event.shiftKey && (step || event.key.toLowerCase() === 's');
    if (!step && !isMove) return;
    event.preventDefault();
    if (isMove && !this.isQuiet) {
      this.dispatchEvent(new CustomEvent('step', {detail: {operationId: block.operationId, across: step?.[0] ?? 0, down: step?.[1] ?? 0, isOtherSlide: !step}}));
    } else if (step) {
      this.goTo(block, step);
    }
  }

  goTo(block, [across, down]) {
    const columns = this.answer.columns;
    const at = columns.findIndex(column => column.lanes.some(lane => lane.blocks.includes(block)));
    const inColumn = index => (columns[index]?.lanes ?? []).flatMap(lane => lane.blocks).sort((a, b) => a.startS - b.startS || a.endS - b.endS);
    let next;
    if (down) {
      const all = inColumn(at);
      next = all[all.indexOf(block) + down];
    } else {
      for (let index = at + across; columns[index] && !next; index += across) {
        next = inColumn(index).sort((a, b) => Math.abs(a.startS - block.startS) - Math.abs(b.startS - block.startS))[0];
      }
    }
    if (next) this.focusBlock(next.operationId);
  }

  /** Puts the focus on an operation's block. */
  async focusBlock(operationId) {
    await this.updateComplete;
    this.querySelector(`[data-operation="${CSS.escape(operationId)}"]`)?.focus();
  }

  grasped(event, block, lane) {
    if (event.button !== 0 || this.isQuiet) return;
    const box = event.currentTarget.getBoundingClientRect();
    this.drag = {operationId: block.operationId, title: block.title, fromX: event.clientX, fromY: event.clientY, width: box.width, height: box.height,
      holdX: event.clientX - box.left, holdY: event.clientY - box.top, slideId: lane.slideId, startS: block.startS, isMoving: false};
  }

  dragged(event) {
    if (!this.drag) return;
    const {fromX, fromY, isMoving} = this.drag;
    if (!isMoving && Math.hypot(event.clientX - fromX, event.clientY - fromY) < DRAG_PX) return;
    event.preventDefault();
    const lane = document.elementsFromPoint(event.clientX, event.clientY).map(one => one.closest?.('[data-slide]')).find(one => one && this.contains(one));
    const top = lane?.getBoundingClientRect().top ?? 0;
    const startS = lane ? Math.max(0, (event.clientY - this.drag.holdY - top) / this.pxPerS) : this.drag.startS;
    this.drag = {...this.drag, isMoving: true, x: event.clientX, y: event.clientY, slideId: lane?.dataset.slide ?? this.drag.slideId, startS};
    this.dispatchEvent(new CustomEvent('put', {detail: {operationId: this.drag.operationId, slideId: this.drag.slideId, startS: Math.round(startS * 100) / 100}}));
  }

  released() {
    const {drag} = this;
    this.drag = null;
    if (!drag?.isMoving) return;
    this.justDragged = true;
    setTimeout(() => (this.justDragged = false), 60);
    this.dispatchEvent(new CustomEvent('put', {detail: {operationId: drag.operationId, slideId: drag.slideId, startS: Math.round(drag.startS * 100) / 100, isDropped: true}}));
  }

  giveUp() {
    const wasMoving = this.drag?.isMoving;
    this.drag = null;
    if (wasMoving) this.dispatchEvent(new CustomEvent('dropped-nowhere'));
  }

  ghost() {
    const {x, y, holdX, holdY, width, height, title} = this.drag;
    return html`<div class="wall-ghost" aria-hidden="true" ${laid({left: `${x - holdX}px`, top: `${y - holdY}px`, width: `${width}px`, height: `${height}px`})}><span>${title}</span></div>`;
  }

  keys() {
    const rows = this.answer.columns.flatMap(column => column.lanes.flatMap(lane => lane.blocks.map(block => ({block, column}))))
      .filter(({block}) => this.numbers.has(block.operationId))
      .sort((a, b) => this.numbers.get(a.block.operationId) - this.numbers.get(b.block.operationId));
    const words = ({block, column}) => html`<b>${this.numbers.get(block.operationId)}</b><span>${block.title}</span><span class="soft">${column.place === 'pick-up' ? 'back' : column.position} · ${seconds(block.endS - block.startS)} s</span>`;
    return html`<div class="wall-key">
      ${this.isQuiet ? nothing : html`<ul class="pattern-key" aria-label="Patterns">
        <li><i class="part is-approach"></i>moving</li><li><i class="part is-dwell"></i>dwell</li>
        ${PATTERNS.map(([name, words]) => html`<li><i class="part is-cut pattern-${name}"></i>${words}</li>`)}
        <li><i class="wall-spindle is-held"></i>spindle held</li><li><i class="wall-spindle is-c-axis"></i>C axis</li></ul>`}
      ${rows.length ? html`<ol class="number-key" aria-label="Numbered operations">${rows.map(row => html`<li value=${this.numbers.get(row.block.operationId)}>${this.isQuiet
        ? html`<p>${words(row)}</p>`
        : html`<button type="button" class="plain" @click=${() => this.choose(row.block.operationId)}>${words(row)}</button>`}</li>`)}</ol>` : nothing}
    </div>`;
  }
}

/** Neighbouring lanes of one kind together; they share a heading. */
function alike(lanes) {
  const groups = [];
  for (const lane of lanes) {
    if (groups.at(-1)?.[0].kind === lane.kind) groups.at(-1).push(lane);
    else groups.push([lane]);
  }
  return groups;
}

const PATTERNS = [
  ['turning', 'turning'], ['boring', 'boring'], ['drilling', 'drilling, reaming'], ['grooving', 'grooving, parting'],
  ['threading', 'threads'], ['driven', 'driven tools'], ['forming', 'rolling, knurling, deburring'], ['slotting', 'slotting'],
];

customElements.define('cycle-wall', CycleWall);
