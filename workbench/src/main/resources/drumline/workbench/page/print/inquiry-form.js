// What is asked beside the piece itself: material, bar, volumes, shifts, today's way, rates, machines.
import {html, nothing} from 'lit';
import {get} from '../api.js';
import {PageElement} from '../parts/element.js';
import {valueField} from '../parts/value-field.js';
import {OFFERED, field, fieldsOf, label} from './fields.js';

const BLOCKS = [
  {block: 'part', title: 'Piece'},
  {block: 'bar', title: 'Bar'},
  {block: 'volumes', title: 'How many'},
  {block: 'today', title: 'How it is made today'},
  {block: 'shifts', title: 'When the plant works'},
  {block: 'rates', title: 'The plant’s rates'},
  {block: 'inquiry', title: 'Who asks'},
];

class InquiryForm extends PageElement {
  static properties = {open: {attribute: false}, revision: {}, schema: {attribute: false}, units: {}, edit: {attribute: false}, materials: {state: true}, machines: {state: true}};

  constructor() {
    super();
    this.open = null;
    this.schema = null;
    this.edit = null;
    this.materials = [];
    this.machines = [];
    this.holders = new Map();
  }

  async firstUpdated() {
    [this.materials, this.machines] = await Promise.all([
      get('/libraries/materials').then(answer => answer.materials),
      get('/libraries/machines').then(answer => answer.machines),
    ]);
  }

  render() {
    const {tree} = this.open.text;
    if (!tree) return html`<p class="soft">The text is not in order; mend it in the text view.</p>`;
    return html`<div class="inquiry-form">
      <fieldset><legend>Material</legend><div class="value-grid">${this.material(tree)}${this.units_(tree)}</div>${this.cautions(tree)}</fieldset>
      ${BLOCKS.map(({block, title}) => html`<fieldset><legend>${title}</legend><div class="value-grid">${this.block(tree, block)}</div></fieldset>`)}
      <fieldset><legend>Machines to plan on</legend>${this.machineChoice(tree)}</fieldset></div>`;
  }

  holder(name) {
    if (!this.holders.has(name)) this.holders.set(name, {});
    return this.holders.get(name);
  }

  problemsAt(path) {
    const key = path.join('/');
    return this.open.text.problems.filter(problem => problem.path?.join('/') === key);
  }

  one(path, spec, value, offers = []) {
    return valueField(this.holder(path.slice(0, -1).join('/')), spec, {
      label: label(spec.key),
      value: value === undefined ? undefined : String(value),
      offers,
      tolerances: OFFERED.tolerance,
      problems: this.problemsAt(path),
      textUnits: this.open.text.units,
      isLength: ['length', 'size'].includes(spec.type),
      save: typed => this.save(path, typed, spec),
      hold: isHeld => this.open.hold(isHeld),
    });
  }

  save(path, typed, spec) {
    const words = `${label(spec.key).toLowerCase()}: ${typed || 'taken out'}`;
    if (typed === '' && !spec.isRequired) return this.edit([{do: 'remove', path}], words);
    return this.edit([this.holderEdit(path, typed)], words);
  }

  /** A block that is not there yet is made with its first value. */
  holderEdit(path, typed) {
    const [block, key] = path;
    if (key !== undefined && this.open.text.tree[block] === undefined) return {do: 'set', path: [block], value: {[key]: typed}};
    return {do: 'set', path, value: typed};
  }

  block(tree, block) {
    return fieldsOf(this.schema, block).filter(spec => spec.isPlain)
      .map(spec => this.one([block, spec.key], spec, tree[block]?.[spec.key], offers(block, spec)));
  }

  material(tree) {
    const spec = field(this.schema, 'material', this.schema.properties.material, ['material']);
    return this.one(['material'], spec, tree.material, this.materials.map(material => material.name));
  }

  units_(tree) {
    const spec = {...field(this.schema, 'units', this.schema.properties.units, []), choices: ['metric', 'inch']};
    return this.one(['units'], spec, tree.units ?? 'metric');
  }

  cautions(tree) {
    const material = this.materials.find(known => known.name === tree.material || known.aliases.includes(tree.material));
    if (!material) return nothing;
    return html`<p class="small soft">${label(material.group)} group, ${material.hardnessHb} HB, ${material.tensileMpa} MPa, ${material.pricePerKg} ${material.currency}/kg. ${material.source}.</p>
      ${material.cautions.map(caution => html`<p class="caution">${caution}</p>`)}`;
  }

  machineChoice(tree) {
    const wished = [tree.wishes?.machines ?? []].flat();
    const change = (name, isWanted) => {
      const machines = isWanted ? [...wished, name] : wished.filter(other => other !== name);
      const edit = tree.wishes === undefined ? {do: 'set', path: ['wishes'], value: {machines}}
        : machines.length ? {do: 'set', path: ['wishes', 'machines'], value: machines} : {do: 'remove', path: ['wishes', 'machines']};
      this.edit([edit], `plan on ${machines.join(', ') || 'the best fit'}`);
    };
    return html`<p class="small soft">None chosen: the best fit.</p><ul class="machine-choice">${this.machines.map(machine => html`<li><label>
      <input type="checkbox" .checked=${wished.includes(machine.name)} @change=${event => change(machine.name, event.target.checked)}>
      <span>${machine.title}<span class="under">${machine.name} · bar to ${machine.barCapacityMm} mm${machine.hasPickUp ? ' · pick-up spindle' : ''}</span></span></label></li>`)}</ul>`;
  }
}

function offers(block, spec) {
  if (spec.key === 'general-tolerances') return OFFERED.general;
  if (block === 'bar' && spec.type === 'tolerance') return OFFERED.barTolerance;
  if (spec.key === 'currency') return OFFERED.currency;
  return OFFERED[spec.type] ?? [];
}

customElements.define('inquiry-form', InquiryForm);
