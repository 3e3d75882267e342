// Piece cost by share, other ways side by side, and what moves it: bars and figures in one table each.
import {html, svg} from 'lit';
import {fixed, money, perPiece, pieces, seconds} from '../format.js';

const WIDTH = 240;

function bar(x, width, kind) {
  return svg`<rect class=${`bar-${kind}`} x=${x} y="3" width=${Math.max(width, 0.5)} height="12"></rect>`;
}

/** What a piece costs, share by share. */
export function shareBars({shares, pieceCost, currency}) {
  const most = Math.max(...shares.map(share => share.amount));
  return html`<table class="figures bars"><thead><tr><th scope="col">Share</th><th scope="col"><span class="read-only">Bar</span></th><th scope="col" class="num">${currency}</th><th scope="col" class="num">%</th></tr></thead>
    <tbody>${shares.map(share => html`<tr><th scope="row">${share.words}</th><td class="bar-cell">${svg`<svg viewBox="0 0 ${WIDTH} 18" class="one-bar" aria-hidden="true" preserveAspectRatio="none">${bar(0, share.amount / most * WIDTH, 'plain')}</svg>`}</td>
      <td class="num">${perPiece(share.amount)}</td><td class="num">${fixed(share.amount / pieceCost * 100, 0)}</td></tr>`)}</tbody>
    <tfoot><tr><th scope="row">Together</th><td></td><td class="num"><strong>${perPiece(pieceCost)}</strong></td><td class="num">100</td></tr></tfoot></table>`;
}

const KIND_WORDS = {layout: 'present layout', 'other layout': 'another layout', 'one after another': 'one operation after another', today: 'as it is made now'};

/** The layout, others, and today's way. */
export function alternativeTable({alternatives, currency}) {
  const least = Math.min(...alternatives.map(way => way.pieceCost));
  return html`<div class="wide-table" tabindex="0" role="region" aria-label="Ways of making it, side by side"><table><thead><tr><th scope="col">Way</th><th scope="col" class="num">Cycle, s</th><th scope="col" class="num">Bound, s</th><th scope="col" class="num">Net per hour</th>
    <th scope="col" class="num">Machines</th><th scope="col" class="num">Investment, ${currency}</th><th scope="col" class="num">Piece cost, ${currency}</th></tr></thead>
    <tbody>${alternatives.map(way => html`<tr><th scope="row">${way.title}<span class="under">${KIND_WORDS[way.kind]}</span></th>
      <td class="num">${seconds(way.cycleS)}</td><td class="num">${seconds(way.lowerBoundS)}</td><td class="num">${pieces(way.netPerHour)}</td><td class="num">${fixed(way.machinesCount, 0)}</td>
      <td class="num">${money(way.investment)}</td><td class="num">${way.pieceCost === least ? html`<strong>${perPiece(way.pieceCost)}</strong><span class="under">least</span>` : perPiece(way.pieceCost)}</td></tr>`)}</tbody></table></div>`;
}

/** Where the cost of two ways is the same, with the number that stands in the chart. */
export function crossingTable({crossings, lines}) {
  const title = name => lines.find(line => line.name === name)?.title ?? name;
  return html`<table class="crossings"><thead><tr><th scope="col">Between</th><th scope="col">Which costs less</th></tr></thead>
    <tbody>${crossings.map((crossing, at) => html`<tr><td><span class="figure wrong">${at + 1}</span> ${title(crossing.oneName)}<span class="under">and ${title(crossing.otherName)}</span></td><td>${crossing.words}</td></tr>`)}</tbody></table>`;
}

/** How far each assumption moves the piece cost when it is a little less or more. */
export function swingBars({sensitivity, pieceCost, currency}) {
  const most = Math.max(...sensitivity.effects.flatMap(effect => [effect.costWhenLess, effect.costWhenMore].map(cost => Math.abs(cost - pieceCost))));
  const scale = cost => (most > 0 ? (cost - pieceCost) / most * (WIDTH / 2 - 2) : 0);
  return html`<table class="figures bars"><thead><tr><th scope="col">Assumption</th><th scope="col"><span class="read-only">Bar</span></th>
    <th scope="col" class="num">${fixed(sensitivity.changePct, 0)} % less</th><th scope="col" class="num">${fixed(sensitivity.changePct, 0)} % more</th></tr></thead>
    <tbody>${sensitivity.effects.map(effect => html`<tr><th scope="row">${effect.words}</th><td class="bar-cell">${svg`<svg viewBox="0 0 ${WIDTH} 18" class="one-bar" aria-hidden="true" preserveAspectRatio="none">
      ${[effect.costWhenLess, effect.costWhenMore].map((cost, at) => bar(WIDTH / 2 + Math.min(0, scale(cost)), Math.abs(scale(cost)), at ? 'plain' : 'open'))}<line class="bar-zero" x1=${WIDTH / 2} x2=${WIDTH / 2} y1="0" y2="18"></line></svg>`}</td>
      <td class="num">${perPiece(effect.costWhenLess)}</td><td class="num">${perPiece(effect.costWhenMore)}</td></tr>`)}</tbody></table>
    <p class="soft small">Piece cost in ${currency} when one assumption is ${fixed(sensitivity.changePct, 0)} % less (open) or more (filled); ${perPiece(pieceCost)} as planned.</p>`;
}
