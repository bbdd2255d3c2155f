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
  if (form.seat === 0 && form.desk === 0) return low <= 0 && high >= 0;
  const sign = form.desk === 0 ? form.seat : form.desk;
  const min = sign === 1 ? low : -high;
  const max = sign === 1 ? high : -low;
  if (form.desk === 0) return narrowSeat(s, Math.max(s.seatMin, min), Math.min(s.seatMax, max));
  if (form.seat === 0) return narrowDesk(s, Math.max(s.deskMin, min), Math.min(s.deskMax, max));
  return narrowGap(s, Math.max(s.gapMin, min), Math.min(s.gapMax, max));
}

function narrowSeat(s: Settings, min: Millimetres, max: Millimetres): boolean {
  if (min > max || s.deskMin - max > s.gapMax || s.deskMax - min < s.gapMin) return false;
  s.seatMin = min;
  s.seatMax = max;
  return true;
}

function narrowDesk(s: Settings, min: Millimetres, max: Millimetres): boolean {
  if (min > max || min - s.seatMax > s.gapMax || max - s.seatMin < s.gapMin) return false;
  s.deskMin = min;
  s.deskMax = max;
  return true;
}

function narrowGap(s: Settings, min: Millimetres, max: Millimetres): boolean {
  if (min > max || s.deskMin - s.seatMax > max || s.deskMax - s.seatMin < min) return false;
  s.gapMin = min;
  s.gapMax = max;
  return true;
}

export function copySettings(from: Settings, to: Settings): void {
  to.seatMin = from.seatMin;
  to.seatMax = from.seatMax;
  to.deskMin = from.deskMin;
  to.deskMax = from.deskMax;
  to.gapMin = from.gapMin;
  to.gapMax = from.gapMax;
}

/**
 * One setting of an open region: what a person who may choose sets. The gap between seat and desk is as near to the wanted one as the
 * region allows; where no gap is wanted, as for people who stand, the desk is as near as may be to the height wanted of it: a person at an
 * adjustable desk sets it to their elbow, to the middle of the preferred band, and where that is out of its range to the nearer end. Where
 * nothing is wanted of either, and for all that is left open, the middle is as likely as any other. NaN stands for nothing wanted.
 */
export function pick(
  s: Settings,
  wantedGap: Millimetres,
  wantedDesk: Millimetres,
): { readonly seat: Millimetres; readonly desk: Millimetres } {
  const least = smallestGap(s);
  const most = largestGap(s);
  if (Number.isNaN(wantedGap) && !Number.isNaN(wantedDesk)) {
    const desk = clamp(wantedDesk, Math.max(s.deskMin, s.seatMin + least), Math.min(s.deskMax, s.seatMax + most));
    return { seat: middle(Math.max(s.seatMin, desk - most), Math.min(s.seatMax, desk - least)), desk };
  }
  const gap = Number.isNaN(wantedGap) ? middle(least, most) : clamp(wantedGap, least, most);
  const seat = middle(Math.max(s.seatMin, s.deskMin - gap), Math.min(s.seatMax, s.deskMax - gap));
  return { seat, desk: seat + gap };
}

/** Of an interval that is open on one side, its end. */
function middle(low: number, high: number): number {
  if (Number.isFinite(low + high)) return (low + high) / 2;
  return Number.isFinite(low) ? low : high;
}

function clamp(value: number, min: number, max: number): number {
  return Math.min(max, Math.max(min, value));
}
