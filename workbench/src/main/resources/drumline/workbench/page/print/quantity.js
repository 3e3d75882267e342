// Sizes as people write them: a number, its unit, and a tolerance behind it.
import {settings} from '../settings.js';

const SIZE = /^([øØ⌀]?\s*[-+]?[0-9][0-9./ ]*?)\s*(mm|in|inch|"|µm|um)?(?:\s+(\S.*))?$/;

/** Splits 18 mm h8 into {number: '18', unit: 'mm', tolerance: 'h8'}; null where it is not a size. */
export function splitSize(text) {
  const match = SIZE.exec(String(text).trim());
  return match ? {number: match[1].trim(), unit: match[2] ?? '', tolerance: match[3] ?? ''} : null;
}

/** A length in millimetres; null where it is not one. A bare number is in the text's own units. */
export function lengthMm(text, textUnits) {
  const size = splitSize(text ?? '');
  if (!size) return null;
  const value = plainNumber(size.number.replace(/^[øØ⌀]\s*/, ''));
  if (value === null) return null;
  const unit = size.unit || (textUnits === 'inch' ? 'in' : 'mm');
  if (unit === 'mm') return value;
  return unit === 'µm' || unit === 'um' ? value / 1000 : value * 25.4;
}

function plainNumber(text) {
  const match = /^([-+]?[0-9.]+)?\s*(?:([0-9]+)\/([0-9]+))?$/.exec(text);
  if (!match || !text) return null;
  const whole = match[1] ? Number(match[1]) : 0;
  const part = match[2] ? Number(match[2]) / Number(match[3]) : 0;
  return Number.isFinite(whole + part) ? whole + part : null;
}

/** Writes a length as the text's units want it. */
export function lengthText(mm, textUnits) {
  return textUnits === 'inch' ? `${trimmed(mm / 25.4, 4)} in` : `${trimmed(mm, 3)} mm`;
}

function trimmed(value, digits) {
  return String(Number(value.toFixed(digits)));
}

/** A bare number typed into a length gets the unit that the page is set to, so that nobody has to guess it. */
export function withUnit(typed, type) {
  const text = typed.trim();
  if (!['length', 'size'].includes(type) || !/^[øØ⌀]?\s*[-+]?[0-9][0-9./ ]*$/.test(text)) return text;
  return `${text} ${settings.units === 'inch' ? 'in' : 'mm'}`;
}

/** The same length in the other system, where the page is set to another than it is written in; else empty. */
export function otherUnits(text, textUnits) {
  const size = splitSize(text ?? '');
  const mm = lengthMm(text, textUnits);
  if (!size || mm === null) return '';
  const isInch = (size.unit || (textUnits === 'inch' ? 'in' : 'mm')).startsWith('in') || size.unit === '"';
  if (isInch === (settings.units === 'inch')) return '';
  return lengthText(mm, settings.units);
}
