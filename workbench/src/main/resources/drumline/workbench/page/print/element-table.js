// The elements of the piece, each with its values open for editing when it is chosen.
import {html, nothing} from 'lit';
import {repeat} from 'lit-html/directives/repeat.js';
import {PageElement} from '../parts/element.js';
import {valueField} from '../parts/value-field.js';
import {OFFERED, PLACES, elementFields, featureKinds, label, offered} from './fields.js';
import {additionOf, renameEdits} from './new-elements.js';
import {inWords} from '../parts/states.js';

const RELATIONS = ['runout', 'coaxiality', 'perpendicularity'];

class ElementTable extends PageElement {
  static properties = {print: {attribute: false}, schema: {attribute: false}, open: {attribute: false}, selected: {attribute: false}, units: {}, edit: {attribute: false}};

  constructor() {
    super();
    this.print = null;
    this.schema = null;
    this.open = null;
    this.selected = null;
    this.edit = null;
    this.holders = new Map();
  }

  updated(changed) {
    if (changed.has('selected') && this.selected) {
      this.bringIntoSight(this.querySelector('.element-row.is-chosen'));
    }
  }

  /** Turns the table, and only the table, until the row is seen. */
  bringIntoSight(row) {
    const side = this.closest('.print-side');
    if (!row || !side || side.scrollHeight <= side.clientHeight) return;
    const seen = side.getBoundingClientRect();
    const {top, bottom} = row.getBoundingClientRect();
    const head = 48;
    if (top < seen.top + head) side.scrollTop -= seen.top + head - top;
    else if (bottom > seen.bottom) side.scrollTop += Math.min(bottom - seen.bottom, top - seen.top - head);
  }

  select(id) {
    this.dispatchEvent(new CustomEvent('select-element', {detail: id}));
  }

  async add(place, kind) {
    const {text} = this.open;
    const {edits, id, words} = additionOf(text.tree, text.units, place, kind, this.selected);
    if (await this.edit(edits, words)) {
      if (id) this.select(id);
      await this.updateComplete;
      this.querySelector('.is-chosen .element-pick')?.focus();
    }
  }

  walk(event) {
    const step = {ArrowDown: 1, ArrowUp: -1}[event.key];
    if (!step || !event.target.matches('.element-pick')) return;
    event.preventDefault();
    const picks = [...this.querySelectorAll('.element-pick')];
    const next = picks[picks.indexOf(event.target) + step];
    next?.focus();
    if (next) this.select(next.dataset.id);
  }

  render() {
    if (!this.schema) return nothing;
    return html`<div class="elements" @keydown=${this.walk}>${PLACES.map(({place, title}) => this.group(place, title))}</div>`;
  }

  group(place, title) {
    const elements = this.print.elements.filter(element => element.place === place);
    return html`<section class="element-group" aria-label=${title}>
      <div class="group-head"><h3>${title}</h3>${this.adding(place)}</div>
      ${elements.length ? html`<ul>${repeat(elements, element => element.path.join('/') + element.id, element => this.row(element, elements))}</ul>`
        : html`<p class="soft small">None.</p>`}</section>`;
  }

  adding(place) {
    if (place === 'features' || place === 'relations') {
      const kinds = place === 'features' ? featureKinds(this.schema) : RELATIONS;
      return html`<select class="adding" aria-label="Add to ${place === 'features' ? 'features' : 'geometrical tolerances'}" @change=${event => {
        const kind = event.target.value;
        event.target.value = '';
        if (kind) this.add(place, kind);
      }}><option value="">Add …</option>${kinds.map(kind => html`<option value=${kind}>${label(kind)}</option>`)}</select>`;
    }
    return html`<button type="button" class="adding" @click=${() => this.add(place)} aria-label="Add a step: ${place.replace('-', ' ')}">Add a step</button>`;
  }

  row(element, siblings) {
    const isChosen = element.id === this.selected;
    const isWrong = element.problems.some(at => this.print.problems[at].severity === 'error');
    return html`<li class="element-row ${isChosen ? 'is-chosen' : ''} ${isWrong ? 'is-wrong' : ''}">
      <button type="button" class="plain element-pick" data-id=${element.id} aria-expanded=${isChosen} @click=${() => this.select(isChosen ? null : element.id)}>
        <span class="element-id">${element.id}</span><span class="element-words">${element.words}</span>${isWrong ? html`<span class="wrong small">wrong</span>` : nothing}</button>
      ${isChosen ? this.form(element, siblings) : nothing}</li>`;
  }

  form(element, siblings) {
    const specs = elementFields(this.schema, element.place, element.kind);
    const there = specs.filter(spec => spec.key in element.fields);
    const absent = specs.filter(spec => !(spec.key in element.fields) && spec.key !== 'id');
    const unknown = Object.keys(element.fields).filter(key => key !== 'kind' && !specs.some(spec => spec.key === key));
    return html`<div class="element-form">
      <div class="value-grid">
        ${there.map(spec => this.value(element, spec))}
        ${unknown.map(key => this.value(element, {key, type: 'text', choices: null, note: ''}))}
      </div>
      ${this.ownProblems(element)}
      <div class="tools element-acts">
        ${absent.length ? html`<select class="adding" aria-label="Give ${element.id} another value" @change=${event => this.give(element, specs, event)}>
          <option value="">Give a value …</option>${absent.map(spec => html`<option value=${spec.key}>${label(spec.key)}</option>`)}</select>` : nothing}
        <span class="bar-space"></span>
        ${siblings.length > 1 ? html`
          <button type="button" class="plain" ?disabled=${element.path.at(-1) === 0} @click=${() => this.move(element, -1)} aria-label="Move ${element.id} forward">↑</button>
          <button type="button" class="plain" ?disabled=${element.path.at(-1) === siblings.length - 1} @click=${() => this.move(element, 1)} aria-label="Move ${element.id} back">↓</button>` : nothing}
        <button type="button" class="plain" @click=${() => this.takeOut(element)}>Remove</button>
      </div></div>`;
  }

  ownProblems(element) {
    const own = element.problems.map(at => this.print.problems[at]).filter(problem => !Object.keys(element.fields).includes(problem.path?.at(-1)));
    return own.map(problem => html`<p class="value-problem ${problem.severity === 'error' ? 'wrong' : ''}">${inWords(problem)}</p>`);
  }

  value(element, spec) {
    const name = element.path.join('/');
    if (!this.holders.has(name)) this.holders.set(name, {});
    const {text} = this.open;
    return valueField(this.holders.get(name), spec, {
      label: label(spec.key),
      value: String(element.fields[spec.key] ?? ''),
      offers: offered(element.place, element.kind, spec, this.ids()),
      tolerances: OFFERED.tolerance,
      problems: element.problems.map(at => this.print.problems[at]).filter(problem => problem.path?.at(-1) === spec.key),
      textUnits: text.units,
      isLength: ['length', 'size'].includes(spec.type),
      save: value => this.save(element, spec.key, value),
      hold: isHeld => this.open.hold(isHeld),
      remove: spec.isRequired || spec.key === 'id' ? null : () => this.edit([{do: 'remove', path: [...element.path, spec.key]}], `${element.id}: no ${spec.key}`),
    });
  }

  ids() {
    return this.print.elements.filter(element => element.place !== 'relations').map(element => element.id);
  }

  async save(element, key, value) {
    if (key === 'id') {
      if (await this.edit(renameEdits(this.open.text.tree, element.path, element.id, value), `${element.id} is now ${value}`)) this.select(value);
      return;
    }
    await this.edit([{do: 'set', path: [...element.path, key], value}], `${element.id}: ${key} ${value}`);
  }

  give(element, specs, event) {
    const spec = specs.find(known => known.key === event.target.value);
    event.target.value = '';
    const first = spec.choices?.[0] ?? offered(element.place, element.kind, spec, this.ids())[0] ?? {length: '1 mm', size: '5 mm', number: '1', angle: '0 deg'}[spec.type] ?? 'x';
    this.save(element, spec.key, first);
  }

  move(element, step) {
    this.edit([{do: 'move', path: element.path, to: element.path.at(-1) + step}], `${element.id} moved`);
  }

  takeOut(element) {
    this.select(null);
    this.edit([{do: 'remove', path: element.path}], `${element.id} removed`);
  }
}

customElements.define('element-table', ElementTable);
