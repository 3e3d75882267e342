// What stands where there is nothing to see: loading, failed, empty, and lists of problems.
import {html, nothing} from 'lit';
import {unsafeHTML} from 'lit-html/directives/unsafe-html.js';

/** While something is read. */
export function loading(words) {
  return html`<p class="state" role="status"><span class="state-mark" aria-hidden="true"></span>${words}</p>`;
}

/** What went wrong, and a button to try again. */
export function failed(error, again) {
  return html`<section class="state is-wrong" role="alert">
    <h2>${error.title ?? 'Something went wrong'}</h2>
    <p>${error.detail || (error.title ? '' : error.message)}</p>
    ${error.problems?.length ? problemList(error.problems) : nothing}
    ${again ? html`<p><button type="button" @click=${again}>Try again</button></p>` : nothing}
  </section>`;
}

/** Why there is nothing yet, and what to do about it. */
export function empty(title, words, action = nothing) {
  return html`<section class="state is-empty"><h2>${title}</h2><p>${words}</p>${action}</section>`;
}

/** A drawing of the server; null draws nothing. */
export function drawing(svg) {
  return svg ? unsafeHTML(svg) : nothing;
}

/** What is wrong and what may help, each a sentence. */
export function inWords({words, hint}) {
  return hint ? `${words.replace(/[.;]?$/, '.')} ${hint}` : words;
}

/** Problems, each with what was found, what is allowed and where. */
export function problemList(problems, {onGo} = {}) {
  return html`<ul class="problems">${problems.map(
    problem => html`<li class=${problem.severity === 'error' ? 'problem is-error' : 'problem'}>
      <span class="problem-kind">${problem.severity === 'error' ? 'Wrong' : 'Worth a look'}</span>
      <span>${inWords(problem)}
      ${onGo && (problem.line || problem.elementId)
        ? html`<button type="button" class="plain problem-go" @click=${() => onGo(problem)}>${problem.elementId ? `Go to ${problem.elementId}` : `Line ${problem.line}`}</button>`
        : nothing}</span></li>`)}</ul>`;
}

