import type { Millimetres, Range } from '../units.js';
import type { Band, LinearForm } from './demand.js';

/**
 * The seat and desk heights open to one person: bounds on S, on D, and on D − S. Every demand narrows one of the three, so
 * the region stays of this shape and 'is there a setting?' has an exact answer.
 */
export interface Settings {
  seatMin: Millimetres;
  seatMax: Millimetres;
  deskMin: Millimetres;
  deskMax: Millimetres;
  gapMin: Millimetres;
  gapMax: Millimetres;
}

export function allSettings(seat: Range, desk: Range): Settings {
  return {
    seatMin: seat.min,
    seatMax: seat.max,
    deskMin: desk.min,
    deskMax: desk.max,
    gapMin: -Infinity,
    gapMax: Infinity,
  };
}

/** True if some pair of heights lies in the region. */
export function isOpen(s: Settings): boolean {
  return (
    s.seatMin <= s.seatMax &&
    s.deskMin <= s.deskMax &&
    s.gapMin <= s.gapMax &&
    s.deskMin - s.seatMax <= s.gapMax &&
    s.deskMax - s.seatMin >= s.gapMin
  );
}

/** The smallest D − S that the region holds. */
export function smallestGap(s: Settings): Millimetres {
  return Math.max(s.gapMin, s.deskMin - s.seatMax);
}

export function largestGap(s: Settings): Millimetres {
  return Math.min(s.gapMax, s.deskMax - s.seatMin);
}

/**
 * Narrows the region to settings at which the form lies in the band, given its value without S and D. False, with the
 * region left as it was, if none is left.
 */
export function narrow(s: Settings, form: LinearForm, rest: Millimetres, band: Band): boolean {
  const low = band.min - rest;
  const high = band.max - rest;
  const saved = { ...s };
  if (form.seat === 0 && form.desk === 0) return low <= 0 && high >= 0;
  if (form.desk === 0) {
    const [min, max] = form.seat === 1 ? [low, high] : [-high, -low];
    s.seatMin = Math.max(s.seatMin, min);
    s.seatMax = Math.min(s.seatMax, max);
  } else if (form.seat === 0) {
    const [min, max] = form.desk === 1 ? [low, high] : [-high, -low];
    s.deskMin = Math.max(s.deskMin, min);
    s.deskMax = Math.min(s.deskMax, max);
  } else {
    const [min, max] = form.desk === 1 ? [low, high] : [-high, -low];
    s.gapMin = Math.max(s.gapMin, min);
    s.gapMax = Math.min(s.gapMax, max);
  }
  if (isOpen(s)) return true;
  Object.assign(s, saved);
  return false;
}

/** One setting of an open region: as near to the wanted gap as it allows, and in the middle of what is left. */
export function pick(s: Settings, wantedGap: Millimetres): { readonly seat: Millimetres; readonly desk: Millimetres } {
  const gap = clamp(wantedGap, smallestGap(s), largestGap(s));
  const low = Math.max(s.seatMin, s.deskMin - gap);
  const high = Math.min(s.seatMax, s.deskMax - gap);
  const seat = Number.isFinite(low + high) ? (low + high) / 2 : Number.isFinite(low) ? low : high;
  return { seat, desk: seat + gap };
}

export function clamp(value: number, min: number, max: number): number {
  return Math.min(max, Math.max(min, value));
}
