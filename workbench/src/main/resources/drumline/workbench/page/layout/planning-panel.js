// Planning: what to plan on and how long, then best so far and bound while it runs; it can be stopped at any time.
import {html, nothing, svg} from 'lit';
import {get, inquiryPath, listen, send} from '../api.js';
import {counted, seconds} from '../format.js';
import {PageElement} from '../parts/element.js';
import {problemList} from '../parts/states.js';
import {say} from '../say.js';

const CHART = {width: 460, height: 120, left: 46, right: 10, top: 10, bottom: 20};
const CLOCK_MS = 500;
const ENDED = ['done', 'cancelled', 'failed'];

/** Form and progress of a planning job. Says "planned" with the job when it ends, "put-away" when closed. */
class PlanningPanel extends PageElement {
  static properties = {inquiryId: {}, isAlone: {type: Boolean}, jobId: {}, machineName: {}, machines: {state: true}, job: {state: true}, courses: {state: true}, error: {state: true}};

  constructor() {
    super();
    this.inquiryId = '';
    this.isAlone = false;
    this.jobId = null;
    this.machineName = '';
    this.machines = [];
    this.job = null;
    this.courses = new Map();
    this.error = null;
  }

  connectedCallback() {
    super.connectedCallback();
    get('/libraries/machines').then(answer => (this.machines = answer.machines.filter(machine => machine.positionCount > 1 || machine.kind === 'drum')), () => {});
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    clearInterval(this.clock);
    this.stopListening?.();
  }

  /** Seconds the job has run, or ran. */
  get ranS() {
    const {startedAt, endedAt} = this.job ?? {};
    return startedAt ? Math.max(0, ((endedAt ? Date.parse(endedAt) : Date.now()) - Date.parse(startedAt)) / 1000) : 0;
  }

  willUpdate(changed) {
    if (changed.has('jobId') && this.jobId && this.jobId !== this.job?.id) this.follow(this.jobId);
  }

  follow(jobId) {
    this.stopListening?.();
    this.courses = new Map();
    clearInterval(this.clock);
    this.clock = setInterval(() => this.requestUpdate(), CLOCK_MS);
    this.stopListening = listen(`/jobs/${encodeURIComponent(jobId)}/events`, {
      job: job => this.take(job),
      progress: progress => this.note(progress),
      end: job => this.ended(job),
    });
  }

  take(job) {
    this.job = job;
    job.progress.forEach(progress => this.note(progress));
  }

  note(progress) {
    const course = this.courses.get(progress.machineName) ?? [];
    const last = course.at(-1);
    if (!last || progress.elapsedS >= last.elapsedS) course.push(progress);
    this.courses = new Map(this.courses).set(progress.machineName, course);
  }

  ended(job) {
    clearInterval(this.clock);
    this.stopListening?.();
    this.job = job;
    this.dispatchEvent(new CustomEvent('planned', {detail: job}));
  }

  get isRunning() {
    return this.job && !ENDED.includes(this.job.state);
  }

  async plan(event) {
    event.preventDefault();
    const form = new FormData(event.target);
    const machine = form.get('machine');
    try {
      this.error = null;
      this.job = await send('POST', inquiryPath(this.inquiryId, 'plan'), {
        machines: machine ? [machine] : [], seconds: Number(form.get('seconds')), seed: Number(form.get('seed')),
      });
      this.follow(this.job.id);
    } catch (error) {
      this.error = error;
    }
  }

  async stop() {
    await send('POST', `/jobs/${encodeURIComponent(this.job.id)}/cancel`);
    say('Stopping; the best layout so far is kept.');
  }

  render() {
    return html`<section class="planning-panel no-print" aria-label="Planning">
      ${this.isRunning ? this.progress() : this.form()}
      ${this.error ? html`<p class="wrong" role="alert">${this.error.title}: ${this.error.detail}</p>` : nothing}
      ${this.error?.problems?.length ? problemList(this.error.problems) : nothing}
      ${this.job && ENDED.includes(this.job.state) ? html`<p role="status">${this.job.words}</p>${this.job.state === 'failed' && this.job.problems.length ? problemList(this.job.problems) : nothing}
        ${this.courses.size ? html`<details><summary>How the search went</summary>${this.charts()}</details>` : nothing}` : nothing}
    </section>`;
  }

  form() {
    return html`<form class="planning-form" @submit=${event => this.plan(event)}>
      <label>Machine<select name="machine"><option value="">as the inquiry wishes, else the best fit</option>${this.machines.map(
        machine => html`<option value=${machine.name} ?selected=${machine.name === this.machineName}>${machine.title}</option>`)}</select></label>
      <label>Effort <span class="unit">s</span><input name="seconds" type="number" min="0.5" max="3600" step="any" value="20" required></label>
      <label>Seed<input name="seed" type="number" min="0" step="1" value="1" required></label>
      <button class="main">Plan</button>
      ${this.isAlone ? nothing : html`<button type="button" class="plain" @click=${() => this.dispatchEvent(new CustomEvent('put-away'))}>Close</button>`}
      <p class="small soft">The same machine, effort and seed give the same layout. Pins are kept.</p></form>`;
  }

  progress() {
    const {job} = this;
    const last = [...this.courses.values()].map(course => course.at(-1));
    return html`<div class="planning-progress" role="status" aria-live="off">
      <div><h2>${job.state === 'queued' ? `Waiting for ${counted(job.aheadCount, 'other plan', 'other plans')}` : html`Planning since <span class="figure">${this.ranS.toFixed(0)}</span><span class="unit">s</span>, effort <span class="figure">${job.seconds}</span><span class="unit">s</span>`}</h2>
        ${last.map(one => html`<p><b>${one.machineName}</b> best so far <b class="figure">${one.bestS ? seconds(one.bestS) : 'none yet'}</b>${one.bestS ? html`<span class="unit">s</span>` : nothing},
          bound <b class="figure">${seconds(one.boundS)}</b><span class="unit">s</span>${one.bestS ? `, gap ${((100 * (one.bestS - one.boundS)) / one.bestS).toFixed(1)} %` : ''}</p>`)}
        <p><button type="button" class="main" @click=${() => this.stop()}>Stop and keep the best</button></p></div>
      ${this.charts()}</div>`;
  }

  charts() {
    return [...this.courses].map(([name, course]) => this.chart(name, course));
  }

  chart(name, course) {
    const {width, height, left, right, top, bottom} = CHART;
    const endS = Math.max(1, this.ranS, course.at(-1)?.elapsedS ?? 1);
    const values = course.flatMap(one => [one.bestS, one.boundS]).filter(Boolean);
    if (!values.length) return nothing;
    const low = Math.min(...values);
    const high = Math.max(...values, low * 1.02);
    const x = s => left + ((width - left - right) * s) / endS;
    const y = s => top + ((height - top - bottom) * (high - s)) / (high - low);
    const steps = pick => course.filter(one => pick(one)).map((one, at, all) => `${at ? `H${x(one.elapsedS).toFixed(1)}V` : `M${x(one.elapsedS).toFixed(1)} `}${y(pick(one)).toFixed(1)}${at === all.length - 1 ? `H${x(endS).toFixed(1)}` : ''}`).join('');
    return html`<figure class="planning-chart"><svg viewBox="0 0 ${width} ${height}" role="img" aria-label="Best cycle and bound over time on ${name}">
      ${[high, low].map(s => svg`<text x=${left - 6} y=${y(s) + 4} text-anchor="end">${seconds(s)}</text><path class="grid" d="M${left} ${y(s)}H${width - right}"/>`)}
      <text x=${width - right} y=${height - 4} text-anchor="end">${endS.toFixed(0)} s</text>
      <path class="bound" d=${steps(one => one.boundS)}></path><path class="best" d=${steps(one => one.bestS)}></path></svg>
      <figcaption class="small soft">full line: best cycle; dashed: bound, nothing can be shorter</figcaption></figure>`;
  }
}

customElements.define('planning-panel', PlanningPanel);
