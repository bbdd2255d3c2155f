import type { People } from '../bodies/people.js';
import type { DimensionName } from '../bodies/dimensions.js';
import type { Millimetres, Range } from '../units.js';
import { bodyPart, tolerant, type Band, type Demand, type Dimensions, type LinearForm } from './demand.js';
import { allSettings, copySettings, narrow, pick, type Settings } from './settings.js';

/** What one check demands at one station, in the order in which a person gives way: feet first, elbows last. */
export interface Rule {
  readonly check: string;
  readonly demands: readonly Demand[];
}

/** All that a rule list asks, as a key for what was computed from it. */
export function keyOfRules(rules: readonly Rule[]): string {
  const known = keys.get(rules);
  if (known !== undefined) return known;
  const key = JSON.stringify(
    rules.map(({ demands }) =>
      demands.map(({ form, preferred, outer }) =>
        [form, preferred.min, preferred.max, outer.min, outer.max].map(keyPart),
      ),
    ),
  );
  keys.set(rules, key);
  return key;
}

/** Infinite bounds are null in JSON, on either side. */
function keyPart(part: unknown): unknown {
  return typeof part === 'number' ? String(part) : part;
}

const keys = new WeakMap<readonly Rule[], string>();

/** The heights a station offers. A fixed one is a range of one value. */
export interface Heights {
  readonly seat: Range;
  readonly desk: Range;
}

/** The setting that each person takes at the preferred level. */
export function settingsOf(rules: readonly Rule[], heights: Heights, people: People): PersonalSettings {
  const compiled = rules.map((rule) => rule.demands.map((demand) => compile(demand, people)));
  const seat = new Float64Array(people.count);
  const desk = new Float64Array(people.count);
  const all = allSettings(heights.seat, heights.desk);
  const settings = { ...all };
  for (let person = 0; person < people.count; person++) {
    copySettings(all, settings);
    for (const rule of compiled) meets(rule, settings, person);
    const chosen = pick(settings, wantedBy(compiled, person, -1), wantedBy(compiled, person, 0));
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
  let wantedGap = NaN;
  let wantedDesk = NaN;
  for (const rule of rules) {
    const before = { ...settings };
    const met = rule.demands.every((d) => narrow(settings, d.form, bodyPart(d.form, body), tolerant(d.preferred)));
    if (!met) copySettings(before, settings);
    for (const demand of rule.demands) {
      if (demand.form.desk !== 1) continue;
      const rest = bodyPart(demand.form, body);
      if (demand.form.seat === -1) wantedGap = nearerMiddle(wantedGap, demand.preferred, rest);
      if (demand.form.seat === 0) wantedDesk = nearerMiddle(wantedDesk, demand.preferred, rest);
    }
  }
  return pick(settings, wantedGap, wantedDesk);
}

interface Compiled {
  readonly demand: Demand;
  readonly band: Band;
  /** The form without S and D, per person. */
  readonly rest: Float64Array;
}

function compile(demand: Demand, people: People): Compiled {
  const rest = bodyParts(demand.form, people.count, (dimension) => people.column(dimension));
  return { demand, band: tolerant(demand.preferred), rest };
}

/** The form's value but for the seat's and the desk's heights, person by person. */
export function bodyParts(
  form: LinearForm,
  count: number,
  columnOf: (dimension: DimensionName) => Float64Array,
): Float64Array {
  const rest = new Float64Array(count).fill(form.constant);
  for (const name in form.body) {
    const coefficient = form.body[name as DimensionName]!;
    const column = columnOf(name as DimensionName);
    for (let person = 0; person < count; person++) rest[person]! += coefficient * column[person]!;
  }
  return rest;
}

function meets(demands: readonly Compiled[], settings: Settings, person: number): boolean {
  if (demands.length === 1) {
    const only = demands[0]!;
    return narrow(settings, only.demand.form, only.rest[person]!, only.band);
  }
  copySettings(settings, saved);
  for (const { demand, band, rest } of demands) {
    if (!narrow(settings, demand.form, rest[person]!, band)) {
      copySettings(saved, settings);
      return false;
    }
  }
  return true;
}

/** Scratch space: a rule of several demands that fails leaves the settings as they were. */
const saved = allSettings({ min: 0, max: 0 }, { min: 0, max: 0 });

/**
 * A person who can choose sets the gap between seat and desk (`seat` −1) or the desk (`seat` 0) to the middle of the last two-sided demand
 * on it; NaN if there is none.
 */
function wantedBy(compiled: readonly (readonly Compiled[])[], person: number, seat: -1 | 0): Millimetres {
  let wanted = NaN;
  for (const rule of compiled) {
    for (const { demand, rest } of rule) {
      if (demand.form.desk !== 1 || demand.form.seat !== seat) continue;
      wanted = nearerMiddle(wanted, demand.preferred, rest[person]!);
    }
  }
  return wanted;
}

function nearerMiddle(wanted: number, band: Band, rest: number): number {
  const middle = (band.min + band.max) / 2 - rest;
  return Number.isFinite(middle) ? middle : wanted;
}
