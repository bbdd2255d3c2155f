import { sdOf } from '../bodies/body.js';
import type { DimensionName } from '../bodies/dimensions.js';
import type { Millimetres } from '../units.js';
import { bodyPart, type Band, type Demand } from './demand.js';
import type { Heights, Rule } from './rules.js';
import type { Person } from './station.js';

/** How well a place suits one person at the setting that suits them best. */
export interface Merit {
  /** By how much the demands miss their preferred bands, added up, for the mean body; 0 if all are met. */
  readonly miss: Millimetres;
  /** The smallest distance to a bound, in spreads of the body's own uncertainty: larger serves more people like this. */
  readonly ease: number;
}

/** A margin of this many spreads is as good as any. */
const AMPLE = 2.5;
const SMALLEST_SPREAD: Millimetres = 3;

/** Merit of any heights for one person, by the demands that heights can meet. The smallest margin is concave in S and D, so narrowing brackets finds the best. */
export function meritFor(rules: readonly Rule[], person: Person): (heights: Heights) => Merit {
  const open = rules.flatMap((rule) => rule.demands).filter(({ settled }) => !settled);
  const demands = open.map((demand) => prepare(demand, person));
  const met = (seat: number, desk: number) => -shortfall(demands, seat, desk);
  const ease = (seat: number, desk: number) =>
    least(demands, (d) => Math.min(AMPLE, marginOf(d, seat, desk) / d.spread));
  return (heights) => ({ miss: Math.max(0, -highest(heights, met)), ease: highest(heights, ease) });
}

interface Prepared {
  readonly seat: number;
  readonly desk: number;
  readonly rest: Millimetres;
  readonly band: Band;
  readonly spread: Millimetres;
}

function prepare(demand: Demand, person: Person): Prepared {
  const names = Object.keys(demand.form.body) as DimensionName[];
  const variance = names.reduce((sum, name) => sum + (demand.form.body[name]! * sdOf(person.body, name)) ** 2, 0);
  return {
    seat: demand.form.seat,
    desk: demand.form.desk,
    rest: bodyPart(demand.form, person.dimensions),
    band: demand.preferred,
    spread: Math.max(SMALLEST_SPREAD, Math.sqrt(variance)),
  };
}

function marginOf({ seat, desk, rest, band }: Prepared, seatHeight: number, deskHeight: number): Millimetres {
  const value = seat * seatHeight + desk * deskHeight + rest;
  return Math.min(value - band.min, band.max - value);
}

/** A sum, so that a demand which this height cannot change does not hide one that it can. */
function shortfall(demands: readonly Prepared[], seat: Millimetres, desk: Millimetres): Millimetres {
  let sum = 0;
  for (const demand of demands) sum += Math.max(0, -marginOf(demand, seat, desk));
  return sum;
}

function least(demands: readonly Prepared[], of: (demand: Prepared) => number): number {
  let lowest = Infinity;
  for (const demand of demands) lowest = Math.min(lowest, of(demand));
  return lowest;
}

function highest({ seat, desk }: Heights, value: (seat: number, desk: number) => number): number {
  return highestOn(seat.min, seat.max, (s) => highestOn(desk.min, desk.max, (d) => value(s, d)));
}

const ROUNDS = 24;

/** Greatest value of a concave function of one variable, to a thousandth of the range. */
function highestOn(min: number, max: number, value: (x: number) => number): number {
  let low = min;
  let high = max;
  if (low >= high) return value(low);
  for (let round = 0; round < ROUNDS && high - low > 0.1; round++) {
    const a = low + (high - low) * 0.382;
    const b = low + (high - low) * 0.618;
    if (value(a) < value(b)) low = a;
    else high = b;
  }
  return Math.max(value((low + high) / 2), value(min), value(max));
}
