// The first twenty minutes in five steps, each at the leaf where it is done; put away with one button, and remembered.
import {html, nothing} from 'lit';
import {LEAVES, leafAddress} from '../places.js';
import {settings} from '../settings.js';

const STEPS = [
  {leaf: 'print', words: 'Read the print. Choose an element in the table and it is lit in the drawing; change a size and the drawing follows.'},
  {leaf: 'route', words: 'See what must be done. Every operation says why it is there and what it must come before.'},
  {leaf: 'layout', words: 'Plan it. The cycle, the position that governs and the bound no layout can beat stand above.'},
  {leaf: 'money', words: 'Ask what a piece costs, from which volume on it pays, and which assumption moves it most.'},
  {leaf: 'paper', words: 'Hand it over: read the study as the customer will, and take it out as a file.'},
];

const isShown = () => settings.firstSteps === 'shown';
const putAway = () => settings.set('firstSteps', 'put-away');
const nameOf = word => LEAVES.find(leaf => leaf.word === word).name;

/** All five, over the list. */
export function firstSteps(demo) {
  if (!isShown() || !demo) return nothing;
  return html`<section class="steps" aria-labelledby="steps-title">
    <div class="steps-head"><h2 id="steps-title">First steps, with ${demo.name}</h2>
      <button type="button" class="plain" @click=${putAway}>Put the first steps away</button></div>
    <ol>${STEPS.map(step => html`<li><a href=${leafAddress(demo.id, step.leaf)}>${nameOf(step.leaf)}</a><span>${step.words}</span></li>`)}</ol>
  </section>`;
}

/** The step that belongs to a leaf, above it. */
export function stepOf(inquiryId, leaf) {
  const at = STEPS.findIndex(step => step.leaf === leaf);
  if (!isShown() || at < 0) return nothing;
  const next = STEPS[at + 1];
  return html`<aside class="step-line no-print" aria-label="First steps">
    <span><span class="soft">Step ${at + 1} of ${STEPS.length}</span> ${STEPS[at].words}</span>
    ${next ? html`<a href=${leafAddress(inquiryId, next.leaf)}>Next: ${nameOf(next.leaf)}</a>` : nothing}
    <button type="button" class="plain" @click=${putAway}>${next ? 'Put away' : 'Done, put away'}</button>
  </aside>`;
}
