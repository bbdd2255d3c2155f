import { endsOf } from '../bodies/people.js';
import type { Millimetres } from '../units.js';
import type { Bounds, Settable } from './bounds.js';
import type { Heights } from './rules.js';
import type { Settings } from './settings.js';

/** An interval for each person. */
export interface Intervals {
  readonly min: Float64Array;
  readonly max: Float64Array;
}

/**
 * The settings open to each of many people: what `Settings` is for one body, as columns. Several thousand people are narrowed at each
 * keystroke, so every loop here runs over few columns and makes nothing.
 */
export class SettingsOfAll {
  readonly seat: Intervals;
  readonly desk: Intervals;
  /** Desk less seat. */
  readonly gap: Intervals;
  private readonly before: Readonly<Record<Settable, Intervals>>;
  private readonly span: Intervals;
  private count = 0;
  private heights: Heights = { seat: { min: 0, max: 0 }, desk: { min: 0, max: 0 } };

  private constructor(private readonly capacity: number) {
    const [seat, desk, gap] = [intervals(capacity), intervals(capacity), intervals(capacity)];
    [this.seat, this.desk, this.gap] = [seat, desk, gap];
    this.before = { seat: intervals(capacity), desk: intervals(capacity), gap: intervals(capacity) };
    this.span = intervals(capacity);
  }

  /** All that the heights allow, for each of so many people. The columns are used again at the next call. */
  static within({ seat, desk }: Heights, count: number): SettingsOfAll {
    const settings = latest && latest.capacity >= count ? latest : (latest = new SettingsOfAll(count));
    settings.count = count;
    settings.heights = { seat, desk };
    fill(settings.seat, seat.min, seat.max, count);
    fill(settings.desk, desk.min, desk.max, count);
    fill(settings.gap, -Infinity, Infinity, count);
    return settings;
  }

  /** Narrows to settings inside all of a rule's bounds. `met` becomes 1 of whom some are left; the others keep what they had, and 0. */
  narrow(rule: readonly Bounds[], met: Uint8Array): void {
    met.fill(1);
    const binding = rule.filter((bounds) => !this.isMetAnyway(bounds));
    const touched = binding.length > 1 ? binding.map(({ on }) => on).filter((on) => on !== 'nothing') : [];
    for (const on of touched) copy(this[on], this.before[on]);
    for (const bounds of binding) this.meet(bounds, met);
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

  /** The settings of one person. */
  copyOf(person: number, into: Settings): void {
    into.seatMin = this.seat.min[person]!;
    into.seatMax = this.seat.max[person]!;
    into.deskMin = this.desk.min[person]!;
    into.deskMax = this.desk.max[person]!;
    into.gapMin = this.gap.min[person]!;
    into.gapMax = this.gap.max[person]!;
  }

  /** Whether everybody keeps inside bounds with all that the heights allow: so they bind nobody. */
  private isMetAnyway({ on, min, max, constant, coefficient, column }: Bounds): boolean {
    const { least, most } = endsOf(column);
    const parts = [constant + coefficient * least, constant + coefficient * most];
    const { seat, desk } = this.heights;
    const [low, high] = {
      nothing: [0, 0],
      seat: [seat.min, seat.max],
      desk: [desk.min, desk.max],
      gap: [desk.min - seat.max, desk.max - seat.min],
    }[on] as [Millimetres, Millimetres];
    return parts.every((part) => min - part <= low && max - part >= high);
  }

  private meet({ on, min, max, constant, coefficient, column }: Bounds, met: Uint8Array): void {
    const { count } = this;
    const { min: seatMin, max: seatMax } = this.seat;
    const { min: deskMin, max: deskMax } = this.desk;
    const { min: gapMin, max: gapMax } = this.gap;
    if (on === 'nothing') {
      for (let i = 0; i < count; i++) {
        const part = constant + coefficient * column[i]!;
        if (min - part > 0 || max - part < 0) met[i] = 0;
      }
    } else if (on === 'seat') {
      for (let i = 0; i < count; i++) {
        const part = constant + coefficient * column[i]!;
        const low = Math.max(seatMin[i]!, min - part);
        const high = Math.min(seatMax[i]!, max - part);
        if (low <= high && deskMin[i]! - high <= gapMax[i]! && deskMax[i]! - low >= gapMin[i]!) {
          seatMin[i] = low;
          seatMax[i] = high;
        } else met[i] = 0;
      }
    } else if (on === 'desk') {
      for (let i = 0; i < count; i++) {
        const part = constant + coefficient * column[i]!;
        const low = Math.max(deskMin[i]!, min - part);
        const high = Math.min(deskMax[i]!, max - part);
        if (low <= high && low - seatMax[i]! <= gapMax[i]! && high - seatMin[i]! >= gapMin[i]!) {
          deskMin[i] = low;
          deskMax[i] = high;
        } else met[i] = 0;
      }
    } else {
      for (let i = 0; i < count; i++) {
        const part = constant + coefficient * column[i]!;
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

let latest: SettingsOfAll | undefined;

function intervals(count: number): Intervals {
  return { min: new Float64Array(count), max: new Float64Array(count) };
}

function fill({ min, max }: Intervals, low: Millimetres, high: Millimetres, count: number): void {
  min.fill(low, 0, count);
  max.fill(high, 0, count);
}

function copy(from: Intervals, to: Intervals): void {
  to.min.set(from.min);
  to.max.set(from.max);
}
