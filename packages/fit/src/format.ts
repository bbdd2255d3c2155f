import type { Posture } from './booth.js';
import {
  FOOT,
  INCH,
  type Degrees,
  type DisplayUnit,
  type Millimetres,
  type Range,
  type Share,
  type Years,
} from './units.js';
import { say, speaksEnglish } from './words/say.js';

/** Inches are shown to the nearest eighth: finer than a tape is read, coarser than noise. */
const INCH_STEPS = 8;

/** From 30 ft on nobody counts inches: a room is 66 ft deep, not 792 in. */
const LONG: Millimetres = 30 * FOOT;

/** A length as people of that unit write it: `41 1/4 in`, `5 ft 10 1/2 in`, `1048 mm`, `104.8 cm`, `1.05 m`. */
export function formatLength(length: Millimetres, unit: DisplayUnit): string {
  if (!Number.isFinite(length)) return '?';
  switch (unit) {
    case 'in':
      return Math.abs(length) >= LONG ? feetAndInches(length) : `${inches(length)} in`;
    case 'ft':
      return feetAndInches(length);
    case 'mm':
      return `${signed(Math.round(length))} mm`;
    case 'cm':
      return `${signed(Number((length / 10).toFixed(1)))} cm`;
    case 'm':
      return `${length < 0 ? '−' : ''}${Math.abs(length / 1000).toFixed(2)} m`;
  }
}

/** One length, or a range with its unit said once: `27 1/2 to 30 3/4 in`. */
export function formatRange({ min, max }: Range, unit: DisplayUnit): string {
  const [low, high] = [formatLength(min, unit), formatLength(max, unit)];
  if (low === high) return low;
  const once = unit !== 'ft' && high.endsWith(` ${unit}`) && !low.includes('ft') && !high.includes('ft');
  return once ? say`${low.slice(0, -unit.length - 1)} to ${high}` : say`${low} to ${high}`;
}

/** A length as it would be typed into a booth file, in the file's unit: `41 1/4in`, `1048mm`. */
export function typeLength(length: Millimetres, unit: DisplayUnit): string {
  if (unit === 'in' || unit === 'ft') return `${inches(length)}in`;
  if (unit === 'mm') return `${Math.round(length)}mm`;
  return `${Number((length / 10).toFixed(1))}cm`;
}

/** An adjustable length as it would be typed: `26in..33 1/2in`. */
export function typeRange({ min, max }: Range, unit: DisplayUnit): string {
  return `${typeLength(min, unit)}..${typeLength(max, unit)}`;
}

/** The steps in which people buy and cut, in their unit: a quarter inch or 5 mm. */
export function buyingStep(unit: DisplayUnit): Millimetres {
  return unit === 'in' || unit === 'ft' ? INCH / 4 : 5;
}

export function formatAngle(angle: Degrees): string {
  return `${signed(Math.round(angle))}°`;
}

/** A share in words that do not pretend to be more exact than a body model is. */
export function formatShare(share: Share): string {
  if (share >= 0.995) return say`nearly all`;
  if (share <= 0.005) return say`almost nobody`;
  if (share >= 0.95 || share <= 0.05) return say`about ${Math.round(share * 100)} in 100`;
  return say`about ${Math.round(share * 10)} in 10`;
}

/** A share as a counted one: '62%'. */
export function formatPercent(share: Share): string {
  return `${Math.round(share * 100)}%`;
}

/** How a person works in a posture, after their name: 'seated' or 'standing'. */
export function seatedOrStanding(posture: Posture): string {
  return posture === 'sit' ? say`seated` : say`standing`;
}

/** A person and the posture they work in: 'Noor seated'. */
export function inPosture(who: string, posture: Posture): string {
  return posture === 'sit' ? say`${who} seated` : say`${who} standing`;
}

/** 'Noor', 'Noor and Tobias', 'Noor, Tobias and Priya'. */
export function listOf(names: readonly string[], conjunction: 'and' | 'or' = 'and'): string {
  if (names.length < 2) return names.join('');
  const [others, last] = [names.slice(0, -1).join(', '), names[names.length - 1]!];
  return conjunction === 'and' ? say`${others} and ${last}` : say`${others} or ${last}`;
}

/** 'Noor’s', 'Priya and Tobias’'; the bare name where another language is spoken, whose sentences have a way of their own. */
export function possessive(name: string): string {
  if (!speaksEnglish()) return name;
  return name.endsWith('s') ? `${name}’` : `${name}’s`;
}

/** People by name. More than a few are a crowd to read: they are counted. */
export function named(names: readonly string[]): string {
  return names.length <= MOST_NAMES ? listOf(names) : say`${names.length} people`;
}

const MOST_NAMES = 4;

/** What a change does: 'suits Noor and Tobias, but no longer Priya'. */
export function effectOf(suited: readonly string[], lost: readonly string[]): string {
  return lost.length === 0 ? say`suits ${named(suited)}` : say`suits ${named(suited)}, but no longer ${named(lost)}`;
}

/** What a change does that suits nobody: 'nearest for Noor, but no longer Priya'. */
export function nearestOf(own: readonly string[], lost: readonly string[]): string {
  return lost.length === 0
    ? say`nearest for ${named(own)}`
    : say`nearest for ${named(own)}, but no longer ${named(lost)}`;
}

function inches(length: Millimetres): string {
  const eighths = Math.round((Math.abs(length) / INCH) * INCH_STEPS);
  const sign = length < 0 && eighths > 0 ? '−' : '';
  return sign + mixedNumber(eighths);
}

function feetAndInches(length: Millimetres): string {
  const eighths = Math.round((Math.abs(length) / INCH) * INCH_STEPS);
  const perFoot = Math.round(FOOT / INCH) * INCH_STEPS;
  const feet = Math.floor(eighths / perFoot);
  const rest = eighths % perFoot;
  const sign = length < 0 && eighths > 0 ? '−' : '';
  if (feet === 0) return `${sign}${mixedNumber(rest)} in`;
  return rest === 0 ? `${sign}${feet} ft` : `${sign}${feet} ft ${mixedNumber(rest)} in`;
}

/** Eighths as a whole number and a reduced fraction. */
function mixedNumber(eighths: number): string {
  const whole = Math.floor(eighths / INCH_STEPS);
  let top = eighths % INCH_STEPS;
  let bottom = INCH_STEPS;
  if (top === 0) return `${whole}`;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}

function signed(value: number): string {
  return value < 0 ? `−${Math.abs(value)}` : `${Math.abs(value)}`;
}

/** Ages in words: '14 to 17 years old'. */
export function formatAges({ min, max }: { readonly min: Years; readonly max: Years }): string {
  return min === max ? say`${min} years old` : say`${min} to ${max} years old`;
}
