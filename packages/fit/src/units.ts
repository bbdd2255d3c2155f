/** Lengths are millimetres everywhere inside the computation. */
export type Millimetres = number;
/** Angles are degrees; positive elevation is up, positive bearing is to the operator's right. */
export type Degrees = number;
export type Kilograms = number;
/** Completed years of age. */
export type Years = number;
/** A fraction of people or of a whole, 0 to 1. */
export type Share = number;

/** One inch, exactly (international yard and pound agreement, 1959). */
export const INCH: Millimetres = 25.4;
export const FOOT: Millimetres = 304.8;
/** One avoirdupois pound in kilograms, exactly. */
export const POUND: Kilograms = 0.45359237;

/** The unit in which lengths are shown: decimal inches never appear, feet are shown as feet and inches. */
export type DisplayUnit = 'in' | 'ft' | 'mm' | 'cm' | 'm';

export interface Range {
  readonly min: Millimetres;
  readonly max: Millimetres;
}

/** What every comparison with a limit allows: limits printed in inches are rounded when printed in millimetres. */
export const TOLERANCE: Millimetres = 1;

export function degrees(radians: number): Degrees {
  return (radians * 180) / Math.PI;
}

export function radians(angle: Degrees): number {
  return (angle * Math.PI) / 180;
}
