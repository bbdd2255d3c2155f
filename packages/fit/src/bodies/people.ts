import type { Share } from '../units.js';
import type { Body, BodyOfSex } from './body.js';
import type { DimensionName } from './dimensions.js';
import { normalCdf, normalQuantile } from './normal.js';
import { residualCdf, skewedShape, type ResidualCdf } from './residual.js';

/**
 * A body as people: a fixed set of equally likely persons per sex, drawn so evenly that a share counted over them is
 * within half a percentage point of the exact one. The same body gives the same people, always.
 */
export interface People {
  readonly count: number;
  /** Those of one sex stand together: person ÷ this, rounded down, is the sex. */
  readonly personsPerSex: number;
  /** How much each person counts; they add up to 1. */
  readonly weights: Float64Array;
  /** One dimension of every person: millimetres, weight in kilograms. */
  column(dimension: DimensionName): Float64Array;
  /** One dimension as a survey would write it down: to the whole millimetre, unless it was measured. */
  recorded(dimension: DimensionName): Float64Array;
  /** One dimension split into what was drawn before its own residual and that residual's distribution. */
  ownResidual(dimension: DimensionName): OwnResidual;
}

/** `dimension = base + loading · residual`, the residual distributed as `cdf` says. */
export interface OwnResidual {
  readonly base: Float64Array;
  /** By sex; 0 where the dimension is settled by what was drawn before. */
  readonly loading: readonly number[];
  readonly cdf: readonly ResidualCdf[];
}

/** Persons per sex. Sampling error of a share: see people.test.ts, which holds it against far larger samples. */
export const PERSONS_PER_SEX = 4096;

export function peopleOf(body: Body, personsPerSex = PERSONS_PER_SEX): People {
  const certain = body.sexes.every((part) => Object.values(part.loadings).every(isSettled));
  const each = certain ? 1 : personsPerSex;
  const count = each * body.sexes.length;
  const weights = new Float64Array(count);
  body.sexes.forEach((part, index) => weights.fill(part.weight / each, index * each, (index + 1) * each));
  const columns = new Map<DimensionName, Float64Array>();
  const rounded = new Map<DimensionName, Float64Array>();
  const owns = new Map<DimensionName, OwnResidual>();
  const residuals = body.sexes.map((part) => residualsOf(part, each));

  return {
    count,
    personsPerSex: each,
    weights,
    column(dimension) {
      const existing = columns.get(dimension);
      if (existing) return existing;
      const column = new Float64Array(count);
      residuals.forEach((ofSex, index) => column.set(ofSex.column(dimension), index * each));
      columns.set(dimension, column);
      return column;
    },
    recorded(dimension) {
      const existing = rounded.get(dimension);
      if (existing) return existing;
      const column = this.column(dimension);
      const result = body.measured.has(dimension) ? column : column.map(Math.round);
      rounded.set(dimension, result);
      return result;
    },
    ownResidual(dimension) {
      const existing = owns.get(dimension);
      if (existing) return existing;
      const base = Float64Array.from(this.column(dimension));
      const own = body.sexes.map((part, sex) => {
        const index = part.own[dimension];
        const loading = index === undefined ? 0 : part.loadings[dimension][index]!;
        if (index === undefined || loading === 0) return { loading: 0, cdf: residualCdf(0) };
        const residual = residuals[sex]!.get(index);
        for (let person = 0; person < each; person++) base[sex * each + person]! -= loading * residual[person]!;
        return { loading, cdf: residualCdf(part.skewness[index]!) };
      });
      const result = { base, loading: own.map((o) => o.loading), cdf: own.map((o) => o.cdf) };
      owns.set(dimension, result);
      return result;
    },
  };
}

/** The share of people for whom `holds` is true. */
export function shareOf({ count, personsPerSex, weights }: People, holds: (person: number) => boolean): Share {
  let share = 0;
  for (let from = 0; from < count; from += personsPerSex) {
    let holding = 0;
    for (let person = from; person < from + personsPerSex; person++) if (holds(person)) holding++;
    share += holding * weights[from]!;
  }
  return Math.min(1, share);
}

/** The share of people whose number in a column lies from `min` to `max`. It is counted only if that divides them. */
export function shareWithin(people: People, column: Float64Array, min: number, max: number): Share {
  const { least, most } = endsOf(column);
  if (least >= min && most <= max) return 1;
  if (most < min || least > max) return 0;
  return shareOf(people, (person) => column[person]! >= min && column[person]! <= max);
}

/** The least and the greatest number of a column of people, which stays as it is. */
export function endsOf(column: Float64Array): { readonly least: number; readonly most: number } {
  const known = ends.get(column);
  if (known) return known;
  let least = Infinity;
  let most = -Infinity;
  for (let person = 0; person < column.length; person++) {
    if (column[person]! < least) least = column[person]!;
    if (column[person]! > most) most = column[person]!;
  }
  const found = { least, most };
  ends.set(column, found);
  return found;
}

const ends = new WeakMap<Float64Array, { readonly least: number; readonly most: number }>();

/** The value that a share `p` of people stays below, in one column. */
export function quantileOf({ count, personsPerSex, weights }: People, column: Float64Array, p: Share): number {
  const sexes = Array.from({ length: count / personsPerSex }, (_, sex) => {
    const from = sex * personsPerSex;
    return { values: column.slice(from, from + personsPerSex).sort(), next: 0, weight: weights[from]! };
  });
  const nextOf = ({ values, next }: (typeof sexes)[number]) => values[next] ?? Infinity;
  let share = 0;
  let value = NaN;
  for (let person = 0; person < count && (person === 0 || share < p - 1e-12); person++) {
    let least = sexes[0]!;
    for (const sex of sexes) if (nextOf(sex) < nextOf(least)) least = sex;
    value = least.values[least.next++]!;
    share += least.weight;
  }
  return value;
}

function isSettled(loadings: readonly number[]): boolean {
  return loadings.every((loading) => loading === 0);
}

/** The independent residuals of one sex's persons, made when they are first asked for. */
class Residuals {
  private readonly made = new Map<number, Float64Array>();
  private readonly columns = new Map<DimensionName, Float64Array>();

  constructor(
    private readonly part: BodyOfSex,
    private readonly count: number,
  ) {}

  column(dimension: DimensionName): Float64Array {
    const existing = this.columns.get(dimension);
    if (existing) return existing;
    const target = new Float64Array(this.count).fill(this.part.mean[dimension]);
    this.columns.set(dimension, target);
    this.part.loadings[dimension].forEach((loading, index) => {
      if (loading === 0) return;
      const residual = this.get(index);
      for (let person = 0; person < this.count; person++) target[person]! += loading * residual[person]!;
    });
    return target;
  }

  get(index: number): Float64Array {
    const existing = this.made.get(index);
    if (existing) return existing;
    const range = index === 0 ? this.part.firstResidual : undefined;
    const skewness = range ? 0 : this.part.skewness[index]!;
    const residual = sharedResidual(index, this.count, skewness, range);
    this.made.set(index, residual);
    return residual;
  }
}

/** Crowds that differ in nothing but the share of women are made of the same women and the same men. */
function residualsOf(part: BodyOfSex, count: number): Residuals {
  const key = JSON.stringify([part.sex, part.mean, part.loadings, part.firstResidual, count]);
  const known = residualsByBody.get(key);
  if (known) return known;
  const residuals = new Residuals(part, count);
  if (residualsByBody.size >= REMEMBERED_BODIES) residualsByBody.delete(residualsByBody.keys().next().value!);
  residualsByBody.set(key, residuals);
  return residuals;
}

const residualsByBody = new Map<string, Residuals>();
const REMEMBERED_BODIES = 64;
const standardResiduals = new Map<string, Float64Array>();

/** Residuals without a range depend on nothing but position and skewness: the plain ones are made once. */
function sharedResidual(
  index: number,
  count: number,
  skewness: number,
  range: { readonly min: number; readonly max: number } | undefined,
): Float64Array {
  const plain = standardResidual(index, count);
  if (range) return truncate(index, count, range);
  if (skewness === 0) return plain;
  const { linear, quadratic } = skewedShape(skewness);
  return plain.map((z) => linear * z + quadratic * (z * z - 1));
}

function standardResidual(index: number, count: number): Float64Array {
  const key = `${index}/${count}`;
  let residual = standardResiduals.get(key);
  if (!residual) {
    residual = standardised(evenPoints(index, count).map(normalQuantile));
    standardResiduals.set(key, residual);
  }
  return residual;
}

/** Mean 0 and variance 1 exactly: the even points of a large prime base do not end on a full cycle. */
function standardised(values: Float64Array): Float64Array {
  const { length } = values;
  let sum = 0;
  for (let index = 0; index < length; index++) sum += values[index]!;
  const mean = sum / length;
  let squares = 0;
  for (let index = 0; index < length; index++) squares += (values[index]! - mean) ** 2;
  const sd = Math.sqrt(squares / length);
  if (sd === 0) return values;
  for (let index = 0; index < length; index++) values[index] = (values[index]! - mean) / sd;
  return values;
}

function truncate(index: number, count: number, range: { readonly min: number; readonly max: number }): Float64Array {
  const low = normalCdf(range.min);
  const high = normalCdf(range.max);
  return evenPoints(index, count).map((p) => {
    const z = normalQuantile(Math.min(1 - 1e-16, Math.max(1e-300, low + p * (high - low))));
    return Math.max(range.min, Math.min(range.max, z));
  });
}

/**
 * Coordinate `index` of the Hammersley set in (0, 1): equal steps in the first, radical inverses in the prime bases for
 * the others (J. M. Hammersley 1960; J. H. Halton 1960).
 */
function evenPoints(index: number, count: number): Float64Array {
  const points = new Float64Array(count);
  for (let point = 0; point < count; point++) {
    const position = index === 0 ? point / count : radicalInverse(point, PRIMES[index - 1]!);
    points[point] = Math.min(1 - 0.25 / count, position + 0.5 / count);
  }
  return points;
}

/** The digits of a whole number in a base, mirrored at the point. */
function radicalInverse(value: number, base: number): number {
  let scale = 1;
  let mirrored = 0;
  for (let rest = value; rest > 0; rest = Math.floor(rest / base)) {
    scale /= base;
    mirrored += scale * (rest % base);
  }
  return mirrored;
}

const PRIMES = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71];
