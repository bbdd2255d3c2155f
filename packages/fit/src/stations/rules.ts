import type { People } from '../bodies/people.js';
import type { DimensionName } from '../bodies/dimensions.js';
import type { Millimetres, Range, Share } from '../units.js';
import { tolerant, type Band, type Demand, type Dimensions, type Level } from './demand.js';
import { bodyPart } from './demand.js';
import { allSettings, largestGap, narrow, pick, smallestGap, type Settings } from './settings.js';

/** What one check demands at one station, in the order in which a person gives way: feet first, elbows last. */
export interface Rule {
  readonly check: string;
  readonly demands: readonly Demand[];
}

/** The heights a station offers. A fixed one is a range of one value. */
export interface Heights {
  readonly seat: Range;
  readonly desk: Range;
}

export interface RuleShares {
  /** By rule: the share who meet it at the setting that suits them best. */
  readonly byRule: readonly Share[];
  /** The share for whom one setting meets all rules at once. */
  readonly joint: Share;
}

/**
 * Shares over people, each with seat and desk set best: a person takes the rules in order, keeps the settings that
 * meet a rule together with all those met before it, and passes over a rule that leaves none.
 * The last rule is integrated over its own dimension instead of counted, so that a share moves smoothly.
 */
export function sharesOf(rules: readonly Rule[], level: Level, heights: Heights, people: People): RuleShares {
  const compiled = rules.map((rule) => rule.demands.map((demand) => compile(demand, level, people)));
  const byRule = new Array<Share>(rules.length).fill(0);
  const last = rules.length - 1;
  const smooth = smoothDimension(rules[last]);
  const settings = allSettings(heights.seat, heights.desk);
  let joint = 0;
  for (let person = 0; person < people.count; person++) {
    resetTo(settings, heights);
    const weight = people.weights[person]!;
    let all = true;
    for (let index = 0; index < rules.length; index++) {
      if (index === last && smooth) {
        const probability = openProbability(rules[last]!.demands[0]!, level, smooth, settings, people, person);
        byRule[last]! += weight * probability;
        if (all) joint += weight * probability;
        continue;
      }
      if (meets(compiled[index]!, settings, person)) byRule[index]! += weight;
      else all = false;
    }
    if (all && !smooth) joint += weight;
  }
  return { byRule: byRule.map(bounded), joint: bounded(joint) };
}

/** The setting that each person takes at the preferred level. */
export function settingsOf(rules: readonly Rule[], heights: Heights, people: People): PersonalSettings {
  const compiled = rules.map((rule) => rule.demands.map((demand) => compile(demand, 'preferred', people)));
  const seat = new Float64Array(people.count);
  const desk = new Float64Array(people.count);
  const settings = allSettings(heights.seat, heights.desk);
  for (let person = 0; person < people.count; person++) {
    resetTo(settings, heights);
    for (const rule of compiled) meets(rule, settings, person);
    const chosen = pick(settings, gapWantedBy(compiled, person));
    seat[person] = chosen.seat;
    desk[person] = chosen.desk;
  }
  return { seat, desk };
}

export interface PersonalSettings {
  readonly seat: Float64Array;
  readonly desk: Float64Array;
}

/** The setting of one body of known dimensions. */
export function settingOf(rules: readonly Rule[], heights: Heights, body: Dimensions): { seat: number; desk: number } {
  const settings = allSettings(heights.seat, heights.desk);
  let wanted = NaN;
  for (const rule of rules) {
    const saved = { ...settings };
    const met = rule.demands.every((d) => narrow(settings, d.form, bodyPart(d.form, body), tolerant(d.preferred)));
    if (!met) Object.assign(settings, saved);
    for (const demand of rule.demands) {
      if (demand.form.desk === 1 && demand.form.seat === -1) {
        wanted = nearerMiddle(wanted, demand.preferred, bodyPart(demand.form, body));
      }
    }
  }
  return pick(settings, Number.isNaN(wanted) ? (smallestGap(settings) + largestGap(settings)) / 2 : wanted);
}

interface Compiled {
  readonly demand: Demand;
  readonly band: Band;
  /** The form without S and D, per person. */
  readonly rest: Float64Array;
}

function compile(demand: Demand, level: Level, people: People): Compiled {
  const rest = new Float64Array(people.count).fill(demand.form.constant);
  for (const name in demand.form.body) {
    const coefficient = demand.form.body[name as DimensionName]!;
    const column = people.column(name as DimensionName);
    for (let person = 0; person < people.count; person++) rest[person]! += coefficient * column[person]!;
  }
  return { demand, band: tolerant(demand[level]), rest };
}

function meets(demands: readonly Compiled[], settings: Settings, person: number): boolean {
  if (demands.length === 1) {
    const only = demands[0]!;
    return narrow(settings, only.demand.form, only.rest[person]!, only.band);
  }
  const saved = { ...settings };
  for (const { demand, band, rest } of demands) {
    if (!narrow(settings, demand.form, rest[person]!, band)) {
      Object.assign(settings, saved);
      return false;
    }
  }
  return true;
}

/** A rule of one demand on D − S, or on D or S alone, that rests on one body dimension can be integrated over it. */
function smoothDimension(rule: Rule | undefined): DimensionName | undefined {
  if (!rule || rule.demands.length !== 1) return undefined;
  const { form } = rule.demands[0]!;
  const names = Object.keys(form.body) as DimensionName[];
  return names.length === 1 && (form.seat !== 0 || form.desk !== 0) ? names[0] : undefined;
}

/** P(the last demand leaves a setting open), over the dimension's own residual. */
function openProbability(
  demand: Demand,
  level: Level,
  dimension: DimensionName,
  settings: Settings,
  people: People,
  person: number,
): Share {
  const { form } = demand;
  const band = tolerant(demand[level]);
  const [low, high] = reachOf(form.seat, form.desk, settings);
  const coefficient = form.body[dimension]!;
  const a = (band.min - form.constant - high) / coefficient;
  const b = (band.max - form.constant - low) / coefficient;
  return people.probability(dimension, person, Math.min(a, b), Math.max(a, b));
}

/** The values that seat · S + desk · D takes over a region. */
function reachOf(seat: number, desk: number, s: Settings): [Millimetres, Millimetres] {
  if (desk === 1 && seat === -1) return [smallestGap(s), largestGap(s)];
  if (desk === -1 && seat === 1) return [-largestGap(s), -smallestGap(s)];
  const deskMin = Math.max(s.deskMin, s.seatMin + s.gapMin);
  const deskMax = Math.min(s.deskMax, s.seatMax + s.gapMax);
  const seatMin = Math.max(s.seatMin, s.deskMin - s.gapMax);
  const seatMax = Math.min(s.seatMax, s.deskMax - s.gapMin);
  if (seat === 0) return desk === 1 ? [deskMin, deskMax] : [-deskMax, -deskMin];
  return seat === 1 ? [seatMin, seatMax] : [-seatMax, -seatMin];
}

/** A person who can choose sets the gap to the middle of the narrowest two-sided demand on it. */
function gapWantedBy(compiled: readonly (readonly Compiled[])[], person: number): Millimetres {
  let wanted = NaN;
  for (const rule of compiled) {
    for (const { demand, rest } of rule) {
      if (demand.form.desk !== 1 || demand.form.seat !== -1) continue;
      wanted = nearerMiddle(wanted, demand.preferred, rest[person]!);
    }
  }
  return Number.isNaN(wanted) ? 0 : wanted;
}

function nearerMiddle(wanted: number, band: Band, rest: number): number {
  const middle = (band.min + band.max) / 2 - rest;
  return Number.isFinite(middle) ? middle : wanted;
}

function resetTo(settings: Settings, heights: Heights): void {
  settings.seatMin = heights.seat.min;
  settings.seatMax = heights.seat.max;
  settings.deskMin = heights.desk.min;
  settings.deskMax = heights.desk.max;
  settings.gapMin = -Infinity;
  settings.gapMax = Infinity;
}

function bounded(share: Share): Share {
  return Math.min(1, Math.max(0, share));
}
