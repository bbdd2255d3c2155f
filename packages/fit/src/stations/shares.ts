import type { Body } from '../bodies/body.js';
import type { DimensionName } from '../bodies/dimensions.js';
import type { People } from '../bodies/people.js';
import type { Share } from '../units.js';
import { type Settable, variableOf } from './bounds.js';
import { type Demand, type Level, tolerant } from './demand.js';
import { keyOfRules, type Heights, type Rule } from './rules.js';
import { AT_A_TIME, bindingOf, SettingsOfAll } from './settings-of-all.js';

/** A body, and the people that it may be, who are made when they are asked for. */
export interface Somebody {
  readonly body: Body;
  readonly people: People;
}

export interface RuleShares {
  /** By rule: the share who meet it at the setting that suits them best. */
  readonly byRule: readonly Share[];
  /** The share for whom one setting meets all rules at once. */
  readonly joint: Share;
}

/**
 * Shares over people, each with seat and desk set best: a person takes the rules in order and keeps the settings that meet
 * a rule together with all those before it; where none does, those inside its outer limit; where none is, all, and passes over it. The last
 * rule is integrated over its own dimension instead of counted, so that a share moves smoothly. Bodies count as the survey wrote them down, in whole
 * millimetres (the usual continuity correction): half a millimetre at a steep bound is most of a percentage point.
 */
export function sharesOf(rules: readonly Rule[], level: Level, heights: Heights, somebody: Somebody): RuleShares {
  const ofBody = remembered.get(somebody.body) ?? new Map<string, RuleShares>();
  remembered.set(somebody.body, ofBody);
  const { seat, desk } = heights;
  const key = `${level} ${seat.min} ${seat.max} ${desk.min} ${desk.max} ${keyOfRules(rules)}`;
  const known = ofBody.get(key);
  if (known) return known;
  if (ofBody.size >= REMEMBERED_SHARES) ofBody.clear();
  const own = count(rules, level, heights, somebody.people);
  const shares = level === 'outer' ? atLeast(own, sharesOf(rules, 'preferred', heights, somebody)) : own;
  ofBody.set(key, shares);
  return shares;
}

/** Whoever is inside a preferred band is inside its outer limit, though with a looser hold on the rules before it they would set another height. */
function atLeast({ byRule, joint }: RuleShares, preferred: RuleShares): RuleShares {
  return { byRule: byRule.map((share, index) => Math.max(share, preferred.byRule[index]!)), joint };
}

/**
 * The same body at the same place gives the same shares: a keystroke elsewhere in the file costs nothing here. They outlive the people that
 * they were counted over, of whom only so many are kept at a time.
 */
const remembered = new WeakMap<Body, Map<string, RuleShares>>();
const REMEMBERED_SHARES = 300;

function count(rules: readonly Rule[], level: Level, heights: Heights, people: People): RuleShares {
  const { personsPerSex, weights } = people;
  const last = rules.length - 1;
  const smooth = smoothDimension(rules[last]);
  const column = (dimension: DimensionName) => people.recorded(dimension);
  const counted = (smooth ? rules.slice(0, last) : rules).map((rule) =>
    bindingOf(rule, level, heights, people.count, column),
  );
  const integrate = smooth && integralOf(rules[last]!.demands[0]!, level, smooth, people);
  const byRule = rules.map(() => 0);
  let joint = 0;
  const met = new Uint8Array(AT_A_TIME);
  /** How much each person counts while they meet all rules, else 0. */
  const left = new Float64Array(AT_A_TIME);
  for (let first = 0; first < people.count; first += personsPerSex) {
    const meeting = counted.map(() => 0);
    for (const settings of SettingsOfAll.inBlocks(heights, first, first + personsPerSex)) {
      const { count } = settings;
      left.fill(weights[first]!);
      counted.forEach((binding, index) => {
        const isBinding = binding.wanted.length > 0;
        if (isBinding) settings.take(binding, met);
        meeting[index]! += isBinding ? countOf(met, count, left) : count;
      });
      if (integrate) byRule[last] = integrate(settings, left, byRule[last]!);
      for (let i = 0; i < count; i++) joint += left[i]!;
    }
    for (const [index, persons] of meeting.entries()) byRule[index]! += persons * weights[first]!;
  }
  return { byRule: byRule.map(bounded), joint: bounded(joint) };
}

/** How many meet a rule; nothing is left of the others. */
function countOf(met: Uint8Array, count: number, left: Float64Array): number {
  let meeting = 0;
  for (let i = 0; i < count; i++) {
    if (met[i] === 1) meeting++;
    else left[i] = 0;
  }
  return meeting;
}

/** A last rule of one demand on S, D or D − S that rests on one body dimension can be integrated over it. */
function smoothDimension(rule: Rule | undefined): DimensionName | undefined {
  if (rule?.demands.length !== 1) return undefined;
  const { form } = rule.demands[0]!;
  const names = Object.keys(form.body) as DimensionName[];
  return names.length === 1 && (form.seat !== 0 || form.desk !== 0) ? names[0] : undefined;
}

/**
 * Adds the share whom the last demand leaves a setting, over the dimension's own residual, to what others come to; so much is left of each
 * person.
 */
function integralOf(demand: Demand, level: Level, dimension: DimensionName, people: People) {
  const { form } = demand;
  const { on, sign } = variableOf(form);
  const { min, max } = tolerant(demand[level]);
  const coefficient = form.body[dimension]!;
  const own = people.ownResidual(dimension);
  return (settings: SettingsOfAll, left: Float64Array, others: Share): Share => {
    const { from: first, count } = settings;
    const reach = settings.spanOf(on as Settable);
    const [low, high] = sign === 1 ? [reach.min, reach.max] : [reach.max, reach.min];
    const sex = Math.floor(first / people.personsPerSex);
    const loading = own.loading[sex]!;
    const cdf = own.cdf[sex]!;
    const weight = people.weights[first]!;
    let share = others;
    for (let i = 0; i < count; i++) {
      const a = (min - form.constant - sign * high[i]!) / coefficient;
      const b = (max - form.constant - sign * low[i]!) / coefficient;
      const from = coefficient > 0 ? a : b;
      const to = coefficient > 0 ? b : a;
      const base = own.base[first + i]!;
      const held =
        loading === 0
          ? Number(base >= from && base <= to)
          : Math.max(0, cdf((Math.floor(to) + 0.5 - base) / loading) - cdf((Math.ceil(from) - 0.5 - base) / loading));
      share += weight * held;
      left[i]! *= held;
    }
    return share;
  };
}

function bounded(share: Share): Share {
  return Math.min(1, Math.max(0, share));
}
