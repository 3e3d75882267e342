// Sensible beginnings for what is added to a part: right in form, on the piece, and easy to change.
import {lengthMm, lengthText} from './quantity.js';

const asList = value => (Array.isArray(value) ? value : []);

/** Edits that add an element; answers {edits, id, words}. */
export function additionOf(tree, units, place, kind, selected) {
  const part = tree?.part ?? {};
  const id = place === 'relations' ? null : freeId(part, place === 'features' ? kind : place === 'outside' ? 'step' : 'bore');
  const about = {part, units, id, steps: asList(part.outside), selected};
  if (place === 'outside') return {id, edits: outsideStep(about), words: `add ${id}`};
  if (place === 'front-bore' || place === 'back-bore') return {id, edits: boreStep(about, place), words: `add ${id}`};
  const value = place === 'relations' ? relation(about, kind) : {id, kind, ...FEATURES[kind](about)};
  return {id, edits: [{do: 'add', path: ['part', place], value}], words: `add ${id ?? kind}`};
}

/** Edits that rename an element and everything that refers to it. */
export function renameEdits(tree, path, before, after) {
  const edits = [{do: 'set', path: [...path, 'id'], value: after}];
  for (const list of ['features', 'relations']) {
    asList(tree?.part?.[list]).forEach((item, at) => {
      const keys = list === 'relations' ? ['of', 'to'] : ['step', 'of'];
      for (const key of keys) if (item?.[key] === before) edits.push({do: 'set', path: ['part', list, at, key], value: after});
    });
  }
  return edits;
}

function freeId(part, word) {
  const taken = new Set(['outside', 'front-bore', 'back-bore', 'features'].flatMap(list => asList(part[list]).map(item => item?.id)));
  for (let count = 1; ; count++) if (!taken.has(`${word}-${count}`)) return `${word}-${count}`;
}

const mm = (about, text) => lengthMm(text, about.units);
const text = (about, value) => lengthText(value, about.units);

function endsMm(about) {
  let at = 0;
  return about.steps.map(step => (at = step.to !== undefined ? mm(about, step.to) ?? at : at + (mm(about, step.length) ?? 0)));
}

function outsideStep(about) {
  const ends = endsMm(about);
  const at = about.steps.findIndex(step => step.id === about.selected);
  const last = about.steps.length - 1;
  const before = about.steps[at < 0 ? last : at];
  const diameterMm = mm(about, before?.diameter ?? before?.['to-diameter']) ?? 20;
  if (at >= 0 && at < last) return splitStep(about, ends, at, diameterMm);
  const growMm = about.units === 'inch' ? 6.35 : 5;
  const endMm = (ends.at(-1) ?? 0) + growMm;
  const step = {id: about.id, to: text(about, endMm), diameter: text(about, roundTo(diameterMm * 0.8, about)), edge: 'break'};
  const edits = [{do: 'add', path: ['part', 'outside'], value: step}];
  const lengthMmNow = mm(about, about.part.length);
  if (lengthMmNow !== null && lengthMmNow < endMm) {
    edits.push({do: 'set', path: ['part', 'length'], value: keepTolerance(about.part.length, text(about, endMm))});
    edits.push(...throughBores(about, lengthMmNow, endMm));
  }
  return edits;
}

/** A bore that went through the piece goes through the longer one. */
function throughBores(about, beforeMm, afterMm) {
  const bores = asList(about.part['front-bore']);
  const last = bores.at(-1);
  if (last?.bottom !== 'through' || mm(about, last.depth) !== beforeMm) return [];
  return [{do: 'set', path: ['part', 'front-bore', bores.length - 1, 'depth'], value: text(about, afterMm)}];
}

function splitStep(about, ends, at, diameterMm) {
  const startMm = at === 0 ? 0 : ends[at - 1];
  const halfMm = roundTo((startMm + ends[at]) / 2, about);
  const step = about.steps[at];
  const isTo = step.to !== undefined;
  return [
    {do: 'set', path: ['part', 'outside', at, isTo ? 'to' : 'length'], value: text(about, isTo ? halfMm : halfMm - startMm)},
    {do: 'add', path: ['part', 'outside'], to: at + 1, value: {
      id: about.id,
      ...(isTo ? {to: text(about, ends[at])} : {length: text(about, ends[at] - halfMm)}),
      diameter: text(about, roundTo(diameterMm * 0.9, about)),
      edge: 'break',
    }},
  ];
}

function keepTolerance(before, after) {
  const tolerance = /(?:mm|in|")\s+(\S.*)$/.exec(String(before))?.[1];
  return tolerance ? `${after} ${tolerance}` : after;
}

function roundTo(valueMm, {units}) {
  return units === 'inch' ? Math.round(valueMm / 25.4 * 32) / 32 * 25.4 : Math.round(valueMm * 2) / 2;
}

function boreStep(about, place) {
  const bores = asList(about.part[place]);
  const last = bores.at(-1);
  const largestMm = mm(about, about.steps[0]?.diameter) ?? 16;
  const depthMm = (mm(about, last?.depth) ?? 0) + (about.units === 'inch' ? 6.35 : 8);
  const diameterMm = last ? (mm(about, last.diameter) ?? largestMm / 2) * 0.75 : largestMm * 0.45;
  return [{do: 'add', path: ['part', place], value: {
    id: about.id,
    depth: text(about, roundTo(depthMm, about)),
    diameter: text(about, Math.max(roundTo(diameterMm, about), 1)),
    bottom: 'drill-point',
  }}];
}

/** The step that an addition is meant for: the chosen one, else the longest. */
function target(about) {
  const ends = endsMm(about);
  const spans = about.steps.map((step, at) => ({step, fromMm: at === 0 ? 0 : ends[at - 1], toMm: ends[at], diameterMm: mm(about, step.diameter ?? step['to-diameter']) ?? 20}));
  const longest = spans.reduce((best, span) => (!best || span.toMm - span.fromMm > best.toMm - best.fromMm ? span : best), null);
  return spans.find(span => span.step.id === about.selected) ?? longest ?? {step: {id: ''}, fromMm: 0, toMm: 20, diameterMm: 20};
}

const middle = span => (span.fromMm + span.toMm) / 2;

const FEATURES = {
  groove: about => {
    const span = target(about);
    return {place: 'outside', at: text(about, roundTo(middle(span), about)), width: text(about, about.units === 'inch' ? 2.38125 : 2), diameter: text(about, roundTo(span.diameterMm * 0.85, about))};
  },
  thread: about => {
    const span = target(about);
    const size = THREADS.findLast(thread => thread.mm <= span.diameterMm + 0.01) ?? THREADS[0];
    return {step: span.step.id, size: size.words, length: text(about, roundTo((span.toMm - span.fromMm) * 0.8, about))};
  },
  knurl: about => {
    const span = target(about);
    return {step: span.step.id, from: text(about, roundTo(span.fromMm + 1, about)), to: text(about, roundTo(span.toMm - 1, about)), pitch: text(about, 1), form: 'straight'};
  },
  'cross-holes': about => ({at: text(about, roundTo(middle(target(about)), about)), angle: '0 deg', diameter: text(about, 3), depth: text(about, roundTo(target(about).diameterMm * 0.3, about))}),
  'face-holes': about => ({end: 'front', 'pitch-circle': text(about, roundTo(target(about).diameterMm * 0.6, about)), diameter: text(about, 2), depth: text(about, 4), count: '4'}),
  flats: about => {
    const span = target(about);
    return {from: text(about, span.fromMm), to: text(about, span.toMm), across: text(about, roundTo(span.diameterMm * 0.85, about)), count: '2'};
  },
  slot: about => ({place: 'front-face', width: text(about, 2), depth: text(about, 1.5), length: text(about, roundTo(target(about).diameterMm, about))}),
  'inside-form': () => ({end: 'front', form: 'hexagon', width: '5 mm', length: '5 mm'}),
  engraving: about => ({text: 'K1', place: 'outside', at: text(about, roundTo(middle(target(about)), about)), height: text(about, 2.5), depth: text(about, 0.15)}),
  deburring: about => ({of: asList(about.part.features).find(item => item?.id && item.kind !== 'deburring')?.id ?? about.steps[0]?.id ?? '', method: 'auto'}),
};

// ISO 261 coarse and common fine sizes; nominal diameter in mm.
const THREADS = [[3, 'M3-6g'], [4, 'M4-6g'], [5, 'M5-6g'], [6, 'M6-6g'], [8, 'M8-6g'], [10, 'M10-6g'], [12, 'M12-6g'], [14, 'M14x1.5-6g'], [16, 'M16x1.5-6g'], [18, 'M18x1.5-6g'], [20, 'M20x1.5-6g'], [24, 'M24x1.5-6g'], [27, 'M27x1.5-6g'], [30, 'M30x1.5-6g'], [36, 'M36x1.5-6g']]
  .map(([diameter, words]) => ({mm: diameter, words}));

function relation(about, kind) {
  const [one, other] = about.steps;
  return {kind, of: other?.id ?? one?.id ?? '', to: one?.id ?? '', value: text(about, about.units === 'inch' ? 0.0254 : 0.03)};
}
