import type { People } from '../bodies/people.js';
import type { DimensionName } from '../bodies/dimensions.js';
import type { Range } from '../units.js';
import { bodyPartOf } from './bounds.js';
import { bodyPart, tolerant, type Band, type Demand, type Dimensions, type Level } from './demand.js';
import { allSettings, copySettings, narrow, pick } from './settings.js';
import { AT_A_TIME, bindingOf, SettingsOfAll } from './settings-of-all.js';

/** What one check demands at one station, in the order in which a person gives way: feet first, elbows last. */
export interface Rule {
  readonly check: string;
  readonly demands: readonly Demand[];
}

/** A number that stands for all that a rule list asks, in keys of what was computed from it: lists that ask the same have the same. */
export function keyOfRules(rules: readonly Rule[]): number {
  const known = keys.get(rules);
  if (known !== undefined) return known;
  const asked = JSON.stringify(
    rules.map(({ demands }) =>
      demands.map(({ form, preferred, outer }) =>
        [form, preferred.min, preferred.max, outer.min, outer.max].map(keyPart),
      ),
    ),
  );
  if (numbers.size >= REMEMBERED_RULES) numbers.clear();
  const key = numbers.get(asked) ?? ++made;
  numbers.set(asked, key);
  keys.set(rules, key);
  return key;
}

/** Infinite bounds are null in JSON, on either side. */
function keyPart(part: unknown): unknown {
  return typeof part === 'number' ? String(part) : part;
}

const keys = new WeakMap<readonly Rule[], number>();
const numbers = new Map<string, number>();
const REMEMBERED_RULES = 2000;
let made = 0;

/** The heights a station offers. A fixed one is a range of one value. */
export interface Heights {
  readonly seat: Range;
  readonly desk: Range;
}

/** The setting that each person takes at the preferred level. */
export function settingsOf(rules: readonly Rule[], heights: Heights, people: People): PersonalSettings {
  const { count } = people;
  const column = (dimension: DimensionName) => people.column(dimension);
  const binding = rules.map((rule) => bindingOf(rule, 'preferred', heights, count, column));
  const gaps = wantedOf(rules, -1, count, column);
  const desks = wantedOf(rules, 0, count, column);
  const seat = new Float64Array(count);
  const desk = new Float64Array(count);
  const met = new Uint8Array(AT_A_TIME);
  const own = allSettings(heights.seat, heights.desk);
  for (const settings of SettingsOfAll.inBlocks(heights, 0, count)) {
    for (const rule of binding) settings.take(rule, met);
    for (let i = 0; i < settings.count; i++) {
      const person = settings.from + i;
      settings.copyOf(i, own);
      const chosen = pick(own, gaps ? gaps[person]! : NaN, desks ? desks[person]! : NaN);
      seat[person] = chosen.seat;
      desk[person] = chosen.desk;
    }
  }
  return { seat, desk };
}

export interface PersonalSettings {
  readonly seat: Float64Array;
  readonly desk: Float64Array;
}

/** Whoever cannot meet a preferred band keeps inside the outer one if they can. */
const levels: readonly Level[] = ['preferred', 'outer'];

/** The setting of one body of known dimensions. */
export function settingOf(rules: readonly Rule[], heights: Heights, body: Dimensions): { seat: number; desk: number } {
  const settings = allSettings(heights.seat, heights.desk);
  let wantedGap = NaN;
  let wantedDesk = NaN;
  for (const rule of rules) {
    const before = { ...settings };
    const keepsTo = (level: Level) =>
      rule.demands.every((d) => narrow(settings, d.form, bodyPart(d.form, body), tolerant(d[level])));
    for (const level of levels) {
      if (keepsTo(level)) break;
      copySettings(before, settings);
    }
    for (const demand of rule.demands) {
      if (demand.form.desk !== 1) continue;
      const rest = bodyPart(demand.form, body);
      if (demand.form.seat === -1) wantedGap = nearerMiddle(wantedGap, demand.preferred, rest);
      if (demand.form.seat === 0) wantedDesk = nearerMiddle(wantedDesk, demand.preferred, rest);
    }
  }
  return pick(settings, wantedGap, wantedDesk);
}

/**
 * What a person who can choose wants of the gap between seat and desk (`seat` −1) or of the desk (`seat` 0): the middle of the last two-sided
 * demand on it, for each person; nothing if there is none.
 */
function wantedOf(
  rules: readonly Rule[],
  seat: -1 | 0,
  count: number,
  columnOf: (dimension: DimensionName) => Float64Array,
): Float64Array | undefined {
  const demands = rules.flatMap((rule) => rule.demands).filter(({ form }) => form.desk === 1 && form.seat === seat);
  const last = demands.filter(({ preferred }) => Number.isFinite(preferred.min + preferred.max)).at(-1);
  if (!last) return undefined;
  const { constant, coefficient, column } = bodyPartOf(last.form, count, columnOf);
  const middle = (last.preferred.min + last.preferred.max) / 2;
  const wanted = new Float64Array(count);
  for (let person = 0; person < count; person++) wanted[person] = middle - (constant + coefficient * column[person]!);
  return wanted;
}

function nearerMiddle(wanted: number, band: Band, rest: number): number {
  const middle = (band.min + band.max) / 2 - rest;
  return Number.isFinite(middle) ? middle : wanted;
}
