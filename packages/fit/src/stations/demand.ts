import type { DimensionName } from '../bodies/dimensions.js';
import { TOLERANCE, type Millimetres } from '../units.js';

/**
 * A quantity that a seat or stand check measures: seat · S + desk · D + Σ body · dimension + constant, in millimetres.
 * S is the seat's height and D the desk's, each free inside its range; S and D enter with −1, 0 or 1, and if both do, with
 * opposite signs.
 */
export interface LinearForm {
  readonly seat: -1 | 0 | 1;
  readonly desk: -1 | 0 | 1;
  readonly body: Readonly<Partial<Record<DimensionName, number>>>;
  readonly constant: Millimetres;
}

/** Bounds of a quantity; an open side is infinite. */
export interface Band {
  readonly min: Millimetres;
  readonly max: Millimetres;
}

/** One thing that a check wants of a person's setting: the form inside a preferred band, and inside an outer one. */
export interface Demand {
  readonly form: LinearForm;
  readonly preferred: Band;
  readonly outer: Band;
  /** No height changes it: the choice of a seat or the place of a rack decides. Heights are chosen as if it were met. */
  readonly settled?: boolean;
}

/** A demand on a value that the file says, whoever works there. */
export function demandOn(value: Millimetres, band: Band): Demand {
  return { form: { seat: 0, desk: 0, body: {}, constant: value }, preferred: band, outer: band, settled: true };
}

export type Level = 'preferred' | 'outer';

export function atMost(max: Millimetres): Band {
  return { min: -Infinity, max };
}

export function atLeast(min: Millimetres): Band {
  return { min, max: Infinity };
}

/** The band widened by what every comparison allows. */
export function tolerant(band: Band): Band {
  return { min: band.min - TOLERANCE, max: band.max + TOLERANCE };
}

/** One person's dimensions. */
export type Dimensions = Readonly<Record<DimensionName, number>>;

/** The form's value but for the seat's and the desk's heights. */
export function bodyPart(form: LinearForm, dimensions: Dimensions): Millimetres {
  let value = form.constant;
  for (const name in form.body) value += form.body[name as DimensionName]! * dimensions[name as DimensionName];
  return value;
}

export function valueOf(form: LinearForm, dimensions: Dimensions, seat: Millimetres, desk: Millimetres): Millimetres {
  return form.seat * seat + form.desk * desk + bodyPart(form, dimensions);
}

/** How far inside the band a value lies: negative beyond it. */
export function marginIn(band: Band, value: Millimetres): Millimetres {
  return Math.min(value - band.min, band.max - value);
}
