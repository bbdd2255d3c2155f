import { endsOf } from '../bodies/people.js';
import type { DimensionName } from '../bodies/dimensions.js';
import type { Millimetres } from '../units.js';
import { boundsOf, type Bounds, type Settable } from './bounds.js';
import type { Level } from './demand.js';
import type { Heights, Rule } from './rules.js';
import type { Settings } from './settings.js';

/** An interval for each person. */
export interface Intervals {
  readonly min: Float64Array;
  readonly max: Float64Array;
}

/** How many people are narrowed at a time: so few that all their columns stay in a processor’s nearest memory. */
export const AT_A_TIME = 256;

/**
 * The settings open to each of many people: what `Settings` is for one body, as columns. Several thousand people are narrowed at each
 * keystroke, some after the others, so every loop here runs over few short columns and makes nothing.
 */
export class SettingsOfAll {
  readonly seat = intervals();
  readonly desk = intervals();
  /** Desk less seat. */
  readonly gap = intervals();
  private readonly before: Readonly<Record<Settable, Intervals>> = {
    seat: intervals(),
    desk: intervals(),
    gap: intervals(),
  };
  private readonly span = intervals();
  private readonly spared = new Uint8Array(AT_A_TIME);
  /** The first of these people in the columns of all, and how many they are. */
  from = 0;
  count = 0;

  /** All that the heights allow, for the people from one to another, some at a time. The same object each time. */
  static *inBlocks({ seat, desk }: Heights, from: number, to: number): Generator<SettingsOfAll, void, undefined> {
    for (let first = from; first < to; first += AT_A_TIME) {
      latest.from = first;
      latest.count = Math.min(AT_A_TIME, to - first);
      fill(latest.seat, seat.min, seat.max);
      fill(latest.desk, desk.min, desk.max);
      fill(latest.gap, -Infinity, Infinity);
      yield latest;
    }
  }

  /**
   * Narrows to settings inside a rule's wanted bounds, and for those whom they leave none to settings inside the wider ones. `met` becomes 1
   * of whom the wanted ones leave some, else 0.
   */
  take({ wanted, otherwise }: Binding, met: Uint8Array): void {
    this.narrow(wanted, met);
    // Whoever keeps inside the wanted bounds keeps inside the wider ones, which change nothing for them.
    if (otherwise.length > 0 && met.includes(0)) this.narrow(otherwise, this.spared);
  }

  /** Narrows to settings inside all of a rule's bounds. `met` becomes 1 of whom some are left; the others keep what they had, and 0. */
  private narrow(rule: readonly Bounds[], met: Uint8Array): void {
    met.fill(1);
    const touched = rule.length > 1 ? rule.map(({ on }) => on).filter((on) => on !== 'nothing') : [];
    for (const on of touched) copy(this[on], this.before[on]);
    for (const bounds of rule) this.meet(bounds, met);
    for (const on of touched) this.restore(this.before[on], this[on], met);
  }

  /** From the least to the greatest value that one of the three can have in the settings of each person. Used again at the next call. */
  spanOf(on: Settable): Intervals {
    const { count, seat, desk, gap, span } = this;
    if (on === 'seat') {
      for (let i = 0; i < count; i++) {
        span.min[i] = Math.max(seat.min[i]!, desk.min[i]! - gap.max[i]!);
        span.max[i] = Math.min(seat.max[i]!, desk.max[i]! - gap.min[i]!);
      }
    } else if (on === 'desk') {
      for (let i = 0; i < count; i++) {
        span.min[i] = Math.max(desk.min[i]!, seat.min[i]! + gap.min[i]!);
        span.max[i] = Math.min(desk.max[i]!, seat.max[i]! + gap.max[i]!);
      }
    } else {
      for (let i = 0; i < count; i++) {
        span.min[i] = Math.max(gap.min[i]!, desk.min[i]! - seat.max[i]!);
        span.max[i] = Math.min(gap.max[i]!, desk.max[i]! - seat.min[i]!);
      }
    }
    return span;
  }

  /** The settings of one of these persons. */
  copyOf(person: number, into: Settings): void {
    into.seatMin = this.seat.min[person]!;
    into.seatMax = this.seat.max[person]!;
    into.deskMin = this.desk.min[person]!;
    into.deskMax = this.desk.max[person]!;
    into.gapMin = this.gap.min[person]!;
    into.gapMax = this.gap.max[person]!;
  }

  private meet({ on, min, max, constant, coefficient, column }: Bounds, met: Uint8Array): void {
    const { from, count } = this;
    const { min: seatMin, max: seatMax } = this.seat;
    const { min: deskMin, max: deskMax } = this.desk;
    const { min: gapMin, max: gapMax } = this.gap;
    if (on === 'nothing') {
      for (let i = 0; i < count; i++) {
        const part = constant + coefficient * column[from + i]!;
        if (min - part > 0 || max - part < 0) met[i] = 0;
      }
    } else if (on === 'seat') {
      for (let i = 0; i < count; i++) {
        const part = constant + coefficient * column[from + i]!;
        const low = Math.max(seatMin[i]!, min - part);
        const high = Math.min(seatMax[i]!, max - part);
        if (low <= high && deskMin[i]! - high <= gapMax[i]! && deskMax[i]! - low >= gapMin[i]!) {
          seatMin[i] = low;
          seatMax[i] = high;
        } else met[i] = 0;
      }
    } else if (on === 'desk') {
      for (let i = 0; i < count; i++) {
        const part = constant + coefficient * column[from + i]!;
        const low = Math.max(deskMin[i]!, min - part);
        const high = Math.min(deskMax[i]!, max - part);
        if (low <= high && low - seatMax[i]! <= gapMax[i]! && high - seatMin[i]! >= gapMin[i]!) {
          deskMin[i] = low;
          deskMax[i] = high;
        } else met[i] = 0;
      }
    } else {
      for (let i = 0; i < count; i++) {
        const part = constant + coefficient * column[from + i]!;
        const low = Math.max(gapMin[i]!, min - part);
        const high = Math.min(gapMax[i]!, max - part);
        if (low <= high && deskMin[i]! - seatMax[i]! <= high && deskMax[i]! - seatMin[i]! >= low) {
          gapMin[i] = low;
          gapMax[i] = high;
        } else met[i] = 0;
      }
    }
  }

  private restore(from: Intervals, to: Intervals, met: Uint8Array): void {
    for (let i = 0; i < this.count; i++) {
      if (met[i] === 1) continue;
      to.min[i] = from.min[i]!;
      to.max[i] = from.max[i]!;
    }
  }
}

const latest = new SettingsOfAll();

/** Those bounds of a rule that bind anybody: not everybody keeps inside them with all that the heights allow. */
export interface Binding {
  readonly wanted: readonly Bounds[];
  /** What a person keeps to who cannot have what is wanted; nothing if no setting matters to it. */
  readonly otherwise: readonly Bounds[];
}

/** How a rule binds people at a level. Who cannot meet a preferred band keeps inside the outer one if they can. */
export function bindingOf(
  { demands }: Rule,
  level: Level,
  heights: Heights,
  count: number,
  columnOf: (dimension: DimensionName) => Float64Array,
): Binding {
  const at = (which: Level) =>
    demands
      .map((demand) => boundsOf(demand.form, demand[which], count, columnOf))
      .filter((bounds) => !isMetAnyway(heights, bounds));
  const wanted = at(level);
  const isSettable = level === 'preferred' && wanted.some(({ on }) => on !== 'nothing');
  return { wanted, otherwise: isSettable ? at('outer') : [] };
}

function isMetAnyway({ seat, desk }: Heights, { on, min, max, constant, coefficient, column }: Bounds): boolean {
  const { least, most } = endsOf(column);
  const parts = [constant + coefficient * least, constant + coefficient * most];
  const [low, high] = {
    nothing: [0, 0],
    seat: [seat.min, seat.max],
    desk: [desk.min, desk.max],
    gap: [desk.min - seat.max, desk.max - seat.min],
  }[on] as [Millimetres, Millimetres];
  return parts.every((part) => min - part <= low && max - part >= high);
}

function intervals(): Intervals {
  return { min: new Float64Array(AT_A_TIME), max: new Float64Array(AT_A_TIME) };
}

function fill({ min, max }: Intervals, low: Millimetres, high: Millimetres): void {
  min.fill(low);
  max.fill(high);
}

function copy(from: Intervals, to: Intervals): void {
  to.min.set(from.min);
  to.max.set(from.max);
}
