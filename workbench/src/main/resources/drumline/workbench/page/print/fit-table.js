// Does it belong on a multi-spindle, and on which? A verdict for every rule with the figure behind it.
import {html, nothing} from 'lit';

/** The table; nothing while the text does not describe a piece. */
export function fitTable(triage) {
  if (!triage?.verdict) return nothing;
  return html`<section class="below"><h2>Does it belong on a multi-spindle? <span class="verdict is-${triage.verdict}">${triage.verdictWords}</span></h2>
    <table><thead><tr><th scope="col">Rule</th><th scope="col">This piece</th><th scope="col">Wanted</th><th scope="col">Verdict</th></tr></thead>
    <tbody>${triage.rules.map(rule)}</tbody></table>
    ${triage.machines.length ? html`<ul class="fit-machines">${triage.machines.map(machine => html`<li><details><summary>
      <span class="verdict is-${machine.verdict}">${machine.machineTitle}: ${machine.verdictWords}</span></summary>
      <table><tbody>${machine.rules.map(rule)}</tbody></table></details></li>`)}</ul>` : nothing}</section>`;
}

function rule(entry) {
  return html`<tr><td title=${entry.source}>${entry.words}</td><td class="figure-text">${entry.figure}</td><td class="figure-text">${entry.limit}</td>
    <td><span class="verdict is-${entry.verdict}">${entry.verdictWords}</span></td></tr>`;
}
