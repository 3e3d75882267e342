// How figures are written: one place, so that a column of them lines up and inch stands wherever millimetres would.
import {settings} from './settings.js';

const NONE = '–';
const numbers = new Map();

function number(value, digits) {
  if (!numbers.has(digits)) {
    numbers.set(digits, new Intl.NumberFormat('en-GB', {minimumFractionDigits: digits, maximumFractionDigits: digits}));
  }
  return numbers.get(digits).format(value).replace(/,/g, '\u202f').replace(/^-/, '\u2212');
}

const isNone = value => value === null || value === undefined || Number.isNaN(value);

/** A figure with a fixed number of digits; a dash where it is not known. */
export function fixed(value, digits) {
  return isNone(value) ? NONE : number(value, digits);
}

/** Seconds to a hundredth. */
export const seconds = value => fixed(value, 2);

/** Whole pieces. */
export const pieces = value => fixed(value, 0);

/** Share in percent, one digit. */
export const percent = value => fixed(value, 1);

/** Money of one piece: three digits; more than a hundred: two. */
export function perPiece(value) {
  return fixed(value, Math.abs(value) >= 100 ? 2 : 3);
}

/** Money of a year or a machine: whole units. */
export const money = value => fixed(value, 0);

/** A quantity that is metric in the answer, with its unit as the page is set. */
export function quantity(kind, value) {
  const {unit, factor, digits} = QUANTITIES[kind][settings.units];
  return {figure: isNone(value) ? NONE : number(value * factor, digits), unit};
}

const same = (unit, digits) => ({metric: {unit, factor: 1, digits}, inch: {unit, factor: 1, digits}});

// Exact conversions: [BIPM-SI] and the international inch of 25.4 mm and pound of 0.45359237 kg.
const QUANTITIES = {
  speedRevPerMin: same('rev/min', 0),
  timeS: same('s', 2),
  lengthMm: {metric: {unit: 'mm', factor: 1, digits: 2}, inch: {unit: 'in', factor: 1 / 25.4, digits: 4}},
  feedMmPerRev: {metric: {unit: 'mm/rev', factor: 1, digits: 3}, inch: {unit: 'in/rev', factor: 1 / 25.4, digits: 4}},
  cuttingSpeedMPerMin: {metric: {unit: 'm/min', factor: 1, digits: 0}, inch: {unit: 'sfm', factor: 1 / 0.3048, digits: 0}},
  forceN: {metric: {unit: 'N', factor: 1, digits: 0}, inch: {unit: 'lbf', factor: 1 / 4.4482216152605, digits: 0}},
  torqueNm: {metric: {unit: 'Nm', factor: 1, digits: 1}, inch: {unit: 'lbf·ft', factor: 1 / 1.3558179483314, digits: 1}},
  powerKw: {metric: {unit: 'kW', factor: 1, digits: 2}, inch: {unit: 'hp', factor: 1 / 0.74569987158227, digits: 2}},
};

/** When something was changed, as short as it stays clear. */
export function when(iso) {
  const then = new Date(iso);
  const today = new Date();
  const days = Math.round((startOfDay(today) - startOfDay(then)) / 86400000);
  const time = then.toLocaleTimeString('en-GB', {hour: '2-digit', minute: '2-digit'});
  if (days === 0) return `today ${time}`;
  if (days === 1) return `yesterday ${time}`;
  return then.toLocaleDateString('en-GB', {day: 'numeric', month: 'short', year: 'numeric'});
}

function startOfDay(date) {
  return new Date(date.getFullYear(), date.getMonth(), date.getDate()).getTime();
}

/** One piece, two pieces. */
export function counted(count, one, many) {
  return `${number(count, 0)} ${count === 1 ? one : many}`;
}
