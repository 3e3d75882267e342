// One inquiry in the list.
import {html, nothing} from 'lit';
import {address, inquiryPath} from '../api.js';
import {counted, fixed, perPiece, seconds, when} from '../format.js';
import {drawing} from '../parts/states.js';
import {leafAddress} from '../places.js';

/** Its row; act gets 'duplicate', 'archive' or 'desk'. */
export function inquiryRow(inquiry, act) {
  const {head} = inquiry;
  return html`<tr>
    <td class="thumb"><a href=${leafAddress(inquiry.id, 'print')} tabindex="-1" aria-hidden="true">${drawing(inquiry.thumbnailSvg)}</a></td>
    <th scope="row"><a class="inquiry-name" href=${leafAddress(inquiry.id, 'print')}>${inquiry.name}</a>
      <span class="under">${[inquiry.customer, inquiry.number, inquiry.material].filter(Boolean).join(' · ')}</span></th>
    <td>${verdict(inquiry)}</td>
    <td class="num">${seconds(head.cycleS)}${head.gapPct === null ? nothing : html`<span class="under">${gapWords(head)}</span>`}</td>
    <td class="num">${head.pieceCost === null ? '–' : html`${perPiece(head.pieceCost)}<span class="unit">${head.currency}</span>`}
      ${head.todayCost === null ? nothing : html`<span class="under">today ${perPiece(head.todayCost)}</span>`}</td>
    <td class="num">${fixed(head.paybackMonths, 0)}</td>
    <td class="changed">${when(inquiry.changedAt)}<span class="under">${inquiry.changedBy}</span></td>
    <td class="more">${menu(inquiry, act)}</td>
  </tr>`;
}

/** How far the cycle is from the bound, in words. */
export function gapWords(head) {
  if (head.isProvenOptimal || head.gapPct === 0) return 'at the bound';
  return `${fixed(head.gapPct, 1)} % above the bound`;
}

function verdict(inquiry) {
  const {head, errorCount, planningJobId} = inquiry;
  if (errorCount > 0) return html`<span class="verdict is-wrong">${counted(errorCount, 'error', 'errors')} in the text</span>`;
  const breaks = head.ruleBreachCount > 0
    ? html`<span class="under wrong">${counted(head.ruleBreachCount, 'rule', 'rules')} broken</span>` : nothing;
  return html`<span class="verdict is-${head.verdict ?? 'unknown'}">${head.verdictWords ?? 'not judged yet'}</span>
    ${planningJobId ? html`<span class="under">planning …</span>` : breaks}`;
}

function menu(inquiry, act) {
  const run = what => event => {
    event.target.closest('details').open = false;
    act(what);
  };
  return html`<details class="menu"><summary aria-label="More for ${inquiry.name}">⋯</summary><div class="menu-list">
    <button type="button" class="plain" @click=${run('duplicate')}>Duplicate</button>
    <a class="button plain" href=${address(inquiryPath(inquiry.id, 'export'))} download>Take out as a file</a>
    <button type="button" class="plain" @click=${run(inquiry.isArchived ? 'desk' : 'archive')}>${inquiry.isArchived ? 'Take back to the desk' : 'Put away'}</button>
  </div></details>`;
}
