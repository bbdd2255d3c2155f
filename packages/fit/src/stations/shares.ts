import type { DimensionName } from '../bodies/dimensions.js';
import type { People } from '../bodies/people.js';
import type { Share } from '../units.js';
import { tolerant, type Demand, type Level, type LinearForm } from './demand.js';
import { bodyParts, keyOfRules, type Heights, type Rule } from './rules.js';

export interface RuleShares {
  /** By rule: the share who meet it at the setting that suits them best. */
  readonly byRule: readonly Share[];
  /** The share for whom one setting meets all rules at once. */
  readonly joint: Share;
}

/**
 * Shares over people, each with seat and desk set best: a person takes the rules in order, keeps the settings that meet
 * a rule together with all those met before it, and passes over a rule that leaves none. The last rule is integrated over
 * its own dimension instead of counted, so that a share moves smoothly. Bodies count as the survey wrote them down, in whole
 * millimetres (the usual continuity correction): half a millimetre at a steep bound is most of a percentage point.
 */
export function sharesOf(rules: readonly Rule[], level: Level, heights: Heights, people: People): RuleShares {
  const ofPeople = remembered.get(people) ?? new Map<string, RuleShares>();
  remembered.set(people, ofPeople);
  const { seat, desk } = heights;
  const key = `${level} ${seat.min} ${seat.max} ${desk.min} ${desk.max} ${keyOfRules(rules)}`;
  const known = ofPeople.get(key);
  if (known) return known;
  if (ofPeople.size >= REMEMBERED_SHARES) ofPeople.clear();
  const shares = count(rules, level, heights, people);
  ofPeople.set(key, shares);
  return shares;
}

/** The same people at the same place give the same shares: a keystroke elsewhere in the file costs nothing here. */
const remembered = new WeakMap<People, Map<string, RuleShares>>();
const REMEMBERED_SHARES = 300;

const NOTHING = 0;
const SEAT = 1;
const DESK = 2;
const GAP = 3;

/** A demand as bounds on S, D or D − S, person by person. */
interface Bounds {
  readonly rule: number;
  readonly on: number;
  readonly min: Float64Array;
  readonly max: Float64Array;
}

function count(rules: readonly Rule[], level: Level, heights: Heights, people: People): RuleShares {
  const last = rules.length - 1;
  const smooth = smoothDimension(rules[last]);
  const counted = smooth ? rules.slice(0, last) : rules;
  const bounds = counted.flatMap((rule, index) => rule.demands.map((demand) => boundsOf(demand, index, level, people)));
  const finish = smooth && finisher(rules[last]!.demands[0]!, level, smooth, people);
  const byRule = new Float64Array(rules.length);
  const { weights } = people;
  let joint = 0;
  for (let person = 0; person < people.count; person++) {
    let seatMin = heights.seat.min;
    let seatMax = heights.seat.max;
    let deskMin = heights.desk.min;
    let deskMax = heights.desk.max;
    let gapMin = -Infinity;
    let gapMax = Infinity;
    let all = true;
    for (let index = 0; index < bounds.length;) {
      const rule = bounds[index]!.rule;
      let s0 = seatMin;
      let s1 = seatMax;
      let d0 = deskMin;
      let d1 = deskMax;
      let g0 = gapMin;
      let g1 = gapMax;
      let open = true;
      for (; index < bounds.length && bounds[index]!.rule === rule; index++) {
        const { on, min, max } = bounds[index]!;
        const low = min[person]!;
        const high = max[person]!;
        if (on === SEAT) {
          if (low > s0) s0 = low;
          if (high < s1) s1 = high;
        } else if (on === DESK) {
          if (low > d0) d0 = low;
          if (high < d1) d1 = high;
        } else if (on === GAP) {
          if (low > g0) g0 = low;
          if (high < g1) g1 = high;
        } else if (low > 0 || high < 0) open = false;
      }
      if (open && s0 <= s1 && d0 <= d1 && g0 <= g1 && d0 - s1 <= g1 && d1 - s0 >= g0) {
        byRule[rule]! += weights[person]!;
        seatMin = s0;
        seatMax = s1;
        deskMin = d0;
        deskMax = d1;
        gapMin = g0;
        gapMax = g1;
      } else all = false;
    }
    let held = weights[person]!;
    if (finish) {
      held *= finish(person, seatMin, seatMax, deskMin, deskMax, gapMin, gapMax);
      byRule[last]! += held;
    }
    if (all) joint += held;
  }
  return { byRule: Array.from(byRule, bounded), joint: bounded(joint) };
}

function boundsOf(demand: Demand, rule: number, level: Level, people: People): Bounds {
  const { form } = demand;
  const band = tolerant(demand[level]);
  const rest = bodyParts(form, people.count, (dimension) => people.recorded(dimension));
  const { on, sign } = variableOf(form);
  const low = new Float64Array(people.count);
  const high = rest;
  const from = sign === 1 ? band.min : -band.max;
  const to = sign === 1 ? band.max : -band.min;
  for (let person = 0; person < people.count; person++) {
    const value = sign * rest[person]!;
    low[person] = from - value;
    high[person] = to - value;
  }
  return { rule, on, min: low, max: high };
}

/** Which of S, D and D − S the form is about, and with what sign. */
function variableOf(form: LinearForm): { readonly on: number; readonly sign: number } {
  if (form.desk === 0) return form.seat === 0 ? { on: NOTHING, sign: 1 } : { on: SEAT, sign: form.seat };
  return form.seat === 0 ? { on: DESK, sign: form.desk } : { on: GAP, sign: form.desk };
}

/** A last rule of one demand on S, D or D − S that rests on one body dimension can be integrated over it. */
function smoothDimension(rule: Rule | undefined): DimensionName | undefined {
  if (rule?.demands.length !== 1) return undefined;
  const { form } = rule.demands[0]!;
  const names = Object.keys(form.body) as DimensionName[];
  return names.length === 1 && (form.seat !== 0 || form.desk !== 0) ? names[0] : undefined;
}

type Finish = (
  person: number,
  seatMin: number,
  seatMax: number,
  deskMin: number,
  deskMax: number,
  gapMin: number,
  gapMax: number,
) => Share;

/** P(the last demand leaves a setting open), over the dimension's own residual. */
function finisher(demand: Demand, level: Level, dimension: DimensionName, people: People): Finish {
  const { form } = demand;
  const band = tolerant(demand[level]);
  const { on, sign } = variableOf(form);
  const coefficient = form.body[dimension]!;
  const own = people.ownResidual(dimension);
  return (person, seatMin, seatMax, deskMin, deskMax, gapMin, gapMax) => {
    let low: number;
    let high: number;
    if (on === GAP) {
      low = Math.max(gapMin, deskMin - seatMax);
      high = Math.min(gapMax, deskMax - seatMin);
    } else if (on === DESK) {
      low = Math.max(deskMin, seatMin + gapMin);
      high = Math.min(deskMax, seatMax + gapMax);
    } else {
      low = Math.max(seatMin, deskMin - gapMax);
      high = Math.min(seatMax, deskMax - gapMin);
    }
    const reachMin = sign === 1 ? low : -high;
    const reachMax = sign === 1 ? high : -low;
    const a = (band.min - form.constant - reachMax) / coefficient;
    const b = (band.max - form.constant - reachMin) / coefficient;
    const from = coefficient > 0 ? a : b;
    const to = coefficient > 0 ? b : a;
    const sex = (person / own.personsPerSex) | 0;
    const base = own.base[person]!;
    const loading = own.loading[sex]!;
    if (loading === 0) return base >= from && base <= to ? 1 : 0;
    const cdf = own.cdf[sex]!;
    return Math.max(0, cdf((Math.floor(to) + 0.5 - base) / loading) - cdf((Math.ceil(from) - 0.5 - base) / loading));
  };
}

function bounded(share: Share): Share {
  return Math.min(1, Math.max(0, share));
}
