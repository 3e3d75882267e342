// Where and when? The wall, what a move would do, planning, and layouts side by side.
import {html, nothing} from 'lit';
import {TookTheirs, change, get, inquiryPath, send, withQuery} from '../api.js';
import {counted, seconds} from '../format.js';
import {PageElement} from '../parts/element.js';
import {empty, failed, loading, problemList} from '../parts/states.js';
import {say} from '../say.js';
import {acrossLanes, aside, broken, effect, inOrder, inTitles, newBreaches, placeOf} from './moves.js';
import './cycle-wall.js';
import './drum-view.js';
import './layout-compare.js';
import './layout-table.js';
import './operation-panel.js';
import './planning-panel.js';

const VIEWS = [['wall', 'Wall'], ['drum', 'Drum from the front'], ['table', 'Table'], ['compare', 'Compare']];
const LEAST_PX_PER_S = 4;
const MOST_PX_PER_S = 400;
const PAPER_PX = 400;

class LayoutLeaf extends PageElement {
  static properties = {
    inquiryId: {}, units: {}, revision: {type: Number}, answer: {state: true}, tried: {state: true}, moves: {state: true}, error: {state: true},
    chosen: {state: true}, view: {state: true}, zoom: {state: true}, isPlanning: {state: true}, jobId: {state: true}, isBusy: {state: true}, isOnPaper: {state: true},
  };

  constructor() {
    super();
    this.inquiryId = '';
    this.units = 'metric';
    this.revision = null;
    this.answer = null;
    this.tried = null;
    this.moves = [];
    this.error = null;
    this.chosen = '';
    this.view = 'wall';
    this.zoom = 0;
    this.isPlanning = false;
    this.jobId = null;
    this.isBusy = false;
    this.isOnPaper = false;
    this.turn = 0;
  }

  connectedCallback() {
    super.connectedCallback();
    this.whileShown(window, 'resize', () => this.requestUpdate());
    this.whileShown(window, 'beforeprint', () => (this.isOnPaper = true));
    this.whileShown(window, 'afterprint', () => (this.isOnPaper = false));
    this.whileShown(this, 'keydown', event => this.pressed(event));
  }

  willUpdate(changed) {
    if (changed.has('inquiryId') || changed.has('units') || (changed.has('revision') && this.revision !== this.answer?.revision)) this.load();
  }

  get path() {
    return rest => withQuery(inquiryPath(this.inquiryId, ...rest), {units: this.units});
  }

  async load() {
    if (!this.inquiryId) return;
    try {
      const answer = await get(this.path(['layout']));
      this.answer = answer;
      this.error = null;
      this.jobId = answer.planningJobId ?? this.jobId;
      if (this.jobId) this.isPlanning = true;
      if (this.moves.length && !this.isBusy) {
        this.forget();
        say('The inquiry was changed meanwhile; the tried moves are put back.', {isWrong: true});
      }
    } catch (error) {
      this.error = error;
    }
  }

  /** The layout that is seen: what the moves would bring, else the present one. */
  get shown() {
    return this.tried ?? this.answer;
  }

  get pxPerS() {
    if (this.zoom && !this.isOnPaper) return this.zoom;
    const work = Math.max(1, this.shown?.cycle?.workS ?? 1, ...(this.shown?.columns ?? []).map(column => column.busyS));
    return Math.max(LEAST_PX_PER_S, Math.min(MOST_PX_PER_S, (this.isOnPaper ? PAPER_PX : Math.max(440, window.innerHeight - 480)) / work));
  }

  zoomBy(factor) {
    this.zoom = Math.max(LEAST_PX_PER_S, Math.min(MOST_PX_PER_S, this.pxPerS * factor));
  }

  /** Escape puts an unkept move back, or closes the panel. */
  pressed(event) {
    if (event.key !== 'Escape' || event.defaultPrevented) return;
    if (this.moves.length) this.putBack();
    else if (this.chosen) this.close();
  }

  /** Closes the figures; the focus goes back to their block. */
  close() {
    const {chosen} = this;
    this.chosen = '';
    this.goTo(chosen);
  }

  /** Tries moves; while one answer is under way only the last wish waits. */
  attempt(moves, words) {
    this.wish = {moves, words, turn: this.turn};
    this.asking ??= this.ask().finally(() => (this.asking = null));
    return this.asking;
  }

  async ask() {
    try {
      while (this.wish) {
        const {moves: wished, words: said, turn} = this.wish;
        this.wish = null;
        const answer = await send('POST', this.path(['what-if']), {layoutId: this.answer.layoutId, moves: wished});
        if (this.wish || turn !== this.turn) continue;
        this.tried = answer;
        this.dispatchEvent(new CustomEvent('head-changed', {bubbles: true, detail: {head: answer.head, isSaved: false}}));
        if (said) say(this.spoken(said));
      }
    } catch (error) {
      this.wish = null;
      say(`${error.title ?? 'The move could not be tried'}: ${error.detail ?? error.message}`, {isWrong: true});
    }
  }

  spoken(words) {
    const breaches = newBreaches(this.answer, this.tried);
    return `${words}: ${effect(this.answer, this.tried)}${breaches.length ? `; breaks rules in ${counted(breaches.length, 'place', 'places')}, listed above the wall` : '; keeps every rule that held'}. Keep it, or Escape to put it back.`;
  }

  put({operationId, slideId, startS, isDropped}) {
    const here = placeOf(this.shown, operationId);
    if (!isDropped && here?.lane.slideId === slideId && Math.abs(here.block.startS - startS) * this.pxPerS < 6) return;
    const move = {operationId, slideId, startS};
    const moves = [...this.moves, move];
    if (isDropped) this.moves = moves;
    const asked = this.attempt(moves, isDropped ? here?.block.title : '');
    if (isDropped) asked.then(() => this.goTo(operationId));
  }

  giveUpDrag() {
    if (this.moves.length) this.attempt(this.moves, '');
    else this.putBack();
  }

  async step({operationId, across, down, isOtherSlide}) {
    const move = isOtherSlide ? acrossLanes(this.shown, operationId) : across ? aside(this.shown, operationId, across) : inOrder(this.shown, operationId, down);
    if (!move) {
      say('There is no place further that way.');
      return;
    }
    const {block} = placeOf(this.shown, operationId);
    this.moves = [...this.moves, move];
    await this.attempt(this.moves, `${block.title} ${move.position ? `to position ${move.position}` : move.order ? `to place ${move.order} in its order` : `to ${move.slideId}`}`);
    this.goTo(operationId);
  }

  setSpeed({operationId, spindleRevPerMin}) {
    this.moves = [...this.moves, {operationId, spindleRevPerMin}];
    this.attempt(this.moves, `${placeOf(this.shown, operationId)?.block.title} at ${spindleRevPerMin} rev/min`);
  }

  /** Drops the moves, also those whose answer is still under way. */
  forget() {
    this.wish = null;
    this.turn += 1;
    this.moves = [];
    this.tried = null;
  }

  /** Puts the focus on a block, once it is drawn where it stands now. */
  async goTo(operationId) {
    await this.updateComplete;
    this.querySelector('cycle-wall')?.focusBlock(operationId);
  }

  putBack() {
    const last = this.moves.at(-1);
    this.forget();
    this.dispatchEvent(new CustomEvent('head-changed', {bubbles: true, detail: {head: this.answer.head, isSaved: true}}));
    say('Put back.');
    if (last) this.goTo(last.operationId);
  }

  async keep() {
    const last = this.moves.at(-1);
    await this.save('POST', '/layout', {moves: this.moves}, 'moves on the layout', 'Kept.');
    this.goTo(last.operationId);
  }

  async pin(pins) {
    await this.save('PUT', '/pins', {pins}, 'pins', 'Pins kept in the inquiry.');
  }

  async use(layoutId) {
    await this.save('POST', `/layouts/${encodeURIComponent(layoutId)}/use`, {}, 'another layout', 'This is the present layout now.');
    this.view = 'wall';
  }

  async save(method, path, body, mine, words) {
    this.isBusy = true;
    try {
      await change(method, this.inquiryId, path, {...body, expectedRevision: this.answer.revision}, mine);
      say(words);
    } catch (error) {
      if (!(error instanceof TookTheirs)) say(`${error.title ?? 'Not saved'}: ${error.detail ?? error.message}`, {isWrong: true});
    } finally {
      this.isBusy = false;
      this.forget();
      await this.load();
      if (this.answer) this.dispatchEvent(new CustomEvent('head-changed', {bubbles: true, detail: {head: this.answer.head, isSaved: true}}));
    }
  }

  planned(job) {
    this.jobId = null;
    if (job?.state === 'failed' || !job?.bestLayoutId) return this.requestUpdate();
    this.load();
    return undefined;
  }

  render() {
    if (this.error && !this.answer) return failed(this.error, () => this.load());
    if (!this.answer) return loading('Putting the layout on the clock …');
    const isNone = this.answer.state === 'none';
    return html`
      ${this.tools(isNone)}
      ${this.isPlanning || isNone ? html`<planning-panel .inquiryId=${this.inquiryId} .isAlone=${isNone} .jobId=${this.jobId} .machineName=${this.answer.machine?.name ?? ''}
        @planned=${event => this.planned(event.detail)} @put-away=${() => (this.isPlanning = false)}></planning-panel>` : nothing}
      ${this.answer.state === 'outdated' ? html`<p class="layout-note" role="status">The inquiry was changed after this layout was made. It is shown with the inquiry as it is now; plan again for a bound.</p>` : nothing}
      ${this.moves.length || this.tried ? this.tryLine() : nothing}
      ${isNone ? this.none() : this.place()}`;
  }

  none() {
    return html`${empty('Not planned yet', 'Plan it: the first layout stands in a moment, better ones follow while you watch.')}
      ${this.answer.problems.length ? html`<section class="below"><h2>What stands against a layout</h2>${problemList(this.answer.problems)}</section>` : nothing}`;
  }

  tools(isNone) {
    return html`<div class="tools layout-tools">
      <div class="views" role="tablist" aria-label="Views of the layout">${VIEWS.map(
        ([word, name]) => html`<button type="button" role="tab" aria-selected=${this.view === word ? 'true' : 'false'} ?disabled=${isNone} @click=${() => (this.view = word)}>${name}</button>`)}</div>
      <span class="layout-machine">${this.answer.machine ? html`${this.answer.machine.title} <span class="soft">${this.answer.machine.name}</span>` : nothing}</span>
      <span class="bar-space"></span>
      ${this.view === 'wall' && !isNone ? html`<span class="zoom" role="group" aria-label="Time axis">
        <button type="button" class="plain" aria-label="Longer seconds" title="Longer seconds" @click=${() => this.zoomBy(1.25)}>+</button>
        <button type="button" class="plain" aria-label="Shorter seconds" title="Shorter seconds" @click=${() => this.zoomBy(0.8)}>−</button>
        <button type="button" class="plain" @click=${() => (this.zoom = 0)}>Fit</button></span>` : nothing}
      <button type="button" class=${isNone ? '' : 'main'} aria-expanded=${this.isPlanning ? 'true' : 'false'} ?hidden=${isNone} @click=${() => (this.isPlanning = !this.isPlanning)}>Plan again …</button>
    </div>`;
  }

  tryLine() {
    const {tried} = this;
    const breaches = tried ? newBreaches(this.answer, tried) : [];
    return html`<section class="try-line ${breaches.length ? 'is-wrong' : ''}" aria-label="What the moves would do">
      <div class="try-words"><b>${counted(this.moves.length || 1, 'move', 'moves')} tried</b>
        <span class="figure">${tried ? effect(this.answer, tried) : 'asking …'}</span>
        ${tried ? html`<span>${breaches.length ? html`<b class="wrong">breaks rules in ${counted(breaches.length, 'place', 'places')}</b>` : 'keeps every rule that held'}</span>` : nothing}
        <span class="bar-space"></span>
        <button type="button" ?disabled=${this.isBusy} @click=${() => this.putBack()}>Put back</button>
        <button type="button" class="main" ?disabled=${this.isBusy || !tried || !this.moves.length} @click=${() => this.keep()}>Keep</button></div>
      ${breaches.length ? html`<ul>${breaches.slice(0, 8).map(breach => this.breach(breach))}${breaches.length > 8 ? html`<li>and ${breaches.length - 8} more below</li>` : nothing}</ul>` : nothing}
    </section>`;
  }

  breach(breach) {
    const words = inTitles(this.answer, breach.words);
    return html`<li><b>${words}</b>${breach.reason && !breach.words.includes(breach.reason) ? html` Reason: ${breach.reason}.` : nothing}
      ${breach.alsoMoveWords ? html` ${breach.alsoMoveWords}` : nothing}</li>`;
  }

  place() {
    const choose = event => (this.chosen = this.chosen === event.detail.operationId ? '' : event.detail.operationId);
    return html`<div class="layout-place ${this.chosen ? 'has-panel' : ''}">
      <div class="layout-main">
        ${this.view === 'wall' ? html`<cycle-wall .answer=${this.shown} .chosen=${this.chosen} .pxPerS=${this.pxPerS} @chosen=${choose}
            @put=${event => this.put(event.detail)} @dropped-nowhere=${() => this.giveUpDrag()} @step=${event => this.step(event.detail)}></cycle-wall>
          <p class="small soft no-print">Drag a block, or go to it with the arrow keys and move it with Shift and an arrow, Shift and S for the other slide. Enter opens its figures.</p>`
        : this.view === 'drum' ? html`<drum-view .answer=${this.shown} .chosen=${this.chosen} @chosen=${choose}></drum-view>`
        : this.view === 'table' ? html`<layout-table .answer=${this.shown} .chosen=${this.chosen} @chosen=${choose}></layout-table>`
        : html`<layout-compare .inquiryId=${this.inquiryId} .units=${this.units} .revision=${this.answer.revision} @use=${event => this.use(event.detail)}></layout-compare>`}
        ${this.view === 'compare' ? nothing : this.findings()}
      </div>
      ${this.chosen && this.view !== 'compare' ? html`<operation-panel .inquiryId=${this.inquiryId} .units=${this.units} .answer=${this.shown} .operationId=${this.chosen} .revision=${this.answer.revision}
        @put-away=${() => this.close()} @pin=${event => this.pin(event.detail)} @speed=${event => this.setSpeed(event.detail)} @chosen=${event => (this.chosen = event.detail.operationId)}></operation-panel>` : nothing}
    </div>`;
  }

  findings() {
    const wrong = broken(this.shown);
    const {findings, unplaced, problems, notes, equipment} = this.shown;
    return html`<section class="below layout-below">
      <h2>${wrong.length ? html`<span class="wrong">${counted(wrong.length, 'check fails', 'checks fail')}</span>` : findings.length ? `All ${findings.length} checks of the timeline hold` : 'Not checked'}</h2>
      ${wrong.map(finding => html`<div class="finding"><h3>${finding.words}</h3><ul>${finding.breaches.map(breach => this.breach(breach))}</ul></div>`)}
      ${unplaced.length ? html`<p class="wrong">Without a place: ${unplaced.map(one => one.title).join('; ')}.</p>` : nothing}
      ${problems.length ? problemList(problems) : nothing}
      <details><summary>What was checked, and what a person should know</summary>
        <table class="checks"><thead><tr><th>Check</th><th>Holds</th><th>Looked at</th></tr></thead><tbody>${findings.map(
          finding => html`<tr><th>${finding.words}</th><td>${finding.isKept ? 'yes' : html`<b class="wrong">no</b>`}</td><td>${finding.detail}</td></tr>`)}</tbody></table>
        ${equipment.length ? html`<p>To be fitted: ${equipment.map(one => `${one.words} (${one.price.toLocaleString('en-GB')} ${one.currency})`).join('; ')}.</p>` : nothing}
        ${notes.length ? html`<ul>${notes.map(note => html`<li>${note}</li>`)}</ul>` : nothing}
        <p class="small soft">Busy times leave out the index of ${seconds(this.shown.cycle?.indexS)} s.</p></details>
    </section>`;
  }
}

customElements.define('layout-leaf', LayoutLeaf);
