// One value of the text, asked for as its kind wants it; saved when it is left or Enter is pressed.
import {html, nothing} from 'lit';
import {live} from 'lit-html/directives/live.js';
import {otherUnits, splitSize, withUnit} from '../print/quantity.js';
import {inWords} from './states.js';

let count = 0;
const ids = new WeakMap();

function idOf(holder, key) {
  if (!ids.has(holder)) ids.set(holder, new Map());
  const known = ids.get(holder);
  if (!known.has(key)) known.set(key, `field-${++count}`);
  return known.get(key);
}

/**
 * A field.
 *
 * @param holder object that the field belongs to, for stable ids
 * @param spec {key, type, choices, note, isRequired}
 * @param options {label, value, offers, problems, textUnits, save(value), hold(isHeld), remove}
 */
export function valueField(holder, spec, options) {
  const id = idOf(holder, spec.key);
  const {label, problems = [], remove} = options;
  return html`<div class="value-field ${spec.type === 'size' ? 'is-size' : ''}">
    <label for=${id}>${label}</label>
    <div class="value-row">${spec.choices ? choice(id, spec, options) : spec.type === 'size' ? size(id, spec, options) : plain(id, spec, options)}
    ${remove ? html`<button type="button" class="plain value-remove" aria-label="Take ${label} out" title="Take out" @click=${remove}>×</button>` : nothing}</div>
    ${note(options)}
    ${problems.map(problem => html`<p class="value-problem ${problem.severity === 'error' ? 'wrong' : ''}" id="${id}-problem">${inWords(problem)}</p>`)}
  </div>`;
}

function note({value, textUnits, isLength}) {
  const other = isLength ? otherUnits(value, textUnits) : '';
  return other ? html`<span class="value-note">${other}</span>` : nothing;
}

const isWrong = ({problems = []}) => (problems.some(problem => problem.severity === 'error') ? 'true' : nothing);
const described = (id, {problems = []}) => (problems.length ? `${id}-problem` : nothing);

function choice(id, spec, options) {
  const {value, save} = options;
  return html`<select id=${id} aria-invalid=${isWrong(options)} aria-describedby=${described(id, options)} @change=${event => save(event.target.value)}>
    ${value === undefined || value === '' || !spec.choices.includes(value) ? html`<option value="" selected>${value || '–'}</option>` : nothing}
    ${spec.choices.map(word => html`<option value=${word} ?selected=${word === value}>${word}</option>`)}</select>`;
}

function plain(id, spec, options) {
  return html`${input(id, options.value ?? '', options.offers, options, typed => options.save(withUnit(typed, spec.type)), spec.note)}`;
}

function size(id, spec, options) {
  const {value = ''} = options;
  const parts = splitSize(value);
  if (!parts) return plain(id, spec, options);
  const number = `${parts.number}${parts.unit ? ` ${parts.unit}` : ''}`;
  const both = (one, other) => options.save(`${withUnit(one, 'size')} ${other.trim()}`.trim());
  return html`${input(id, number, [], options, typed => (splitSize(typed)?.tolerance ? options.save(typed.trim()) : both(typed, parts.tolerance)), spec.note)}
    ${input(`${id}-tolerance`, parts.tolerance, options.tolerances ?? [], {...options, problems: []}, typed => both(number, typed), 'Tolerance', `Tolerance of ${options.label}`, 'no tolerance')}`;
}

function input(id, value, offers = [], options, save, title, name = null, placeholder = '') {
  const {hold} = options;
  const done = event => {
    hold?.(false);
    if (event.target.value !== value) save(event.target.value);
  };
  return html`<input id=${id} .value=${live(value)} list=${offers.length ? `${id}-offers` : nothing} title=${title || nothing}
      aria-label=${name ?? nothing} placeholder=${placeholder} aria-invalid=${isWrong(options)} aria-describedby=${described(id, options)}
      autocomplete="off" spellcheck="false" class="figure"
      @input=${event => hold?.(event.target.value !== value)} @change=${done}
      @keydown=${event => {
        if (event.key === 'Escape' && event.target.value !== value) {
          event.stopPropagation();
          event.target.value = value;
          hold?.(false);
        }
      }}>${offers.length ? html`<datalist id="${id}-offers">${offers.map(offer => html`<option value=${offer}></option>`)}</datalist>` : nothing}`;
}
