import { type DisplayUnit, FOOT, INCH, type Millimetres, typeLength } from '@boothwright/fit';
import { parseQuantity } from './quantity.js';

/** The step in which people buy and cut, in the unit that a length is written in: a quarter inch or 5 mm. */
export function stepOf(text: string): Millimetres {
  return isImperial(text) ? INCH / 4 : 5;
}

/** The nearest whole step. */
export function snapped(length: Millimetres, step: Millimetres): Millimetres {
  return Number((Math.round(length / step) * step).toFixed(6));
}

/**
 * A length as it would be typed, in the unit and the marks of an older text: '40 in' gives '41 1/4 in', `5'3"` gives `5'4"`. Inches are
 * written to the sixteenth, millimetres whole, other metric units to the millimetre. A text that is no length gives the file's own unit.
 */
export function spelledLike(text: string, length: Millimetres, show: DisplayUnit): string {
  const quantity = parseQuantity(text);
  if (quantity.is !== 'length') return typeLength(length, show);
  const both = /^.*?\d\s*(feet|foot|ft|['’′])[\s-]*[\d¼-¾⅐-⅞].*?(\s*(?:inches|inch|in|["“”″]|''|’’))$/.exec(text);
  if (both) return feetAndInches(length, text);
  const [, space = '', unit = ''] = /[\d¼-¾⅐-⅞](\s*)([^\d¼-¾⅐-⅞]*)$/.exec(text) ?? [];
  if (unit === '') return typeLength(length, show);
  const plain = straight(unit);
  if (/^(feet|foot|ft|['′])$/.test(plain)) {
    const isWhole = Math.abs(length / FOOT - Math.round(length / FOOT)) < 1e-6;
    if (isWhole) return `${Math.round(length / FOOT)}${space}${plain}`;
    return plain === "'" || plain === '′' ? feetWithMarks(length) : `${mixed(length / INCH)}${space}in`;
  }
  if (isImperial(text)) return `${mixed(length / INCH)}${space}${plain}`;
  return `${decimal(length / inMillimetres(plain))}${space}${plain}`;
}

function isImperial(text: string): boolean {
  return /(inch|inches|in|feet|foot|ft|["'“”″’′])\s*$/.test(text);
}

/** Curly quotes are no marks of length. */
function straight(unit: string): string {
  return unit.replace(/’’/g, '"').replace(/[“”]/g, '"').replace(/’/g, "'");
}

function inMillimetres(unit: string): Millimetres {
  const one = parseQuantity(`1${unit}`);
  return one.is === 'length' ? one.value : 1;
}

function feetAndInches(length: Millimetres, text: string): string {
  if (/['’′]/.test(text)) return feetWithMarks(length);
  const feet = Math.floor(length / FOOT + 1e-6);
  const rest = length - feet * FOOT;
  return rest / INCH < 1 / 32 ? `${feet}ft` : `${feet}ft ${mixed(rest / INCH)}in`;
}

function feetWithMarks(length: Millimetres): string {
  const feet = Math.floor(length / FOOT + 1e-6);
  const inches = mixed((length - feet * FOOT) / INCH);
  return inches === '0' ? `${feet}'` : `${feet}'${inches}"`;
}

/** To the sixteenth, as a whole number and a reduced fraction. */
function mixed(inches: number): string {
  const sixteenths = Math.round(inches * 16);
  const whole = Math.floor(sixteenths / 16);
  let [top, bottom] = [sixteenths % 16, 16];
  if (top === 0) return `${whole}`;
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}

/** Without the noise of binary fractions. */
function decimal(value: number): string {
  return `${Number(value.toFixed(4))}`;
}
