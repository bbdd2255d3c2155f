import type { Verdict } from '@boothwright/fit';
import { LINE_HEIGHT, MARK_SIZE, type Point } from './drawing.js';
import { boxesMeet, isInside, lengthInside, type Box } from './geometry.js';
import { textWidth } from './text-width.js';

/** A text of some lines, the first one strong if asked for, with a verdict's mark before it. Places are units of the paper. */
export interface Label {
  readonly lines: readonly string[];
  readonly strong?: boolean;
  readonly soft?: boolean;
  readonly mark?: Verdict;
}

/** Where a label may go: a corner or middle of its box, and how gladly it goes there. */
export interface Spot extends Point {
  readonly anchor: 'start' | 'middle' | 'end';
  /** Which part of the label's height stands at y. */
  readonly hang: 'below' | 'middle' | 'above';
  readonly cost: number;
}

export interface PlacedLabel extends Label {
  readonly box: Box;
  readonly anchor: Spot['anchor'];
}

/** Between a mark and its text. */
export const MARK_GAP = 4;
/** Free paper around every label. */
const PADDING = 2;
/** What it costs a label to lie across a line, besides its length there, or on something. */
const CROSSING = 10;
const COVERING = 25;

export function labelSize({ lines, strong = false, mark }: Label): { width: number; height: number } {
  const widths = lines.map((line, index) => textWidth(line, strong && index === 0));
  const first = (widths[0] ?? 0) + (mark ? MARK_SIZE + MARK_GAP : 0);
  return { width: Math.max(first, ...widths), height: lines.length * LINE_HEIGHT };
}

/** How far the first line starts behind its mark. */
export function markIndent({ mark }: Label): number {
  return mark ? MARK_SIZE + MARK_GAP : 0;
}

/** Finds places for labels so that none covers another, and few cover lines. */
export class Labels {
  private readonly taken: Box[] = [];
  private readonly lines: (readonly [Point, Point])[] = [];
  private readonly areas: Box[] = [];

  constructor(private readonly paper: Box) {}

  /** No label may cover this. */
  keepFree(box: Box): void {
    this.taken.push(box);
  }

  /** Labels would rather not lie across this. */
  avoid(points: readonly Point[], closed = false): void {
    const last = closed ? points.length : points.length - 1;
    for (let index = 0; index < last; index++) this.lines.push([points[index]!, points[(index + 1) % points.length]!]);
  }

  avoidArea(box: Box): void {
    this.areas.push(box);
  }

  /** The best free spot, which is then taken; undefined if there is none, or none that costs less than said. */
  place(label: Label, spots: readonly Spot[], dearest = Infinity): PlacedLabel | undefined {
    const size = labelSize(label);
    let best: { box: Box; spot: Spot; cost: number } | undefined;
    for (const spot of spots) {
      if (best && spot.cost >= best.cost) continue;
      const box = boxAt(spot, size);
      const padded = grow(box, PADDING);
      if (!isInside(box, this.paper) || this.taken.some((other) => boxesMeet(other, padded))) continue;
      const cost = this.costAt(box, spot.cost, best?.cost);
      if (!best || cost < best.cost) best = { box, spot, cost };
    }
    if (!best || best.cost > dearest) return undefined;
    this.taken.push(grow(best.box, PADDING));
    return { ...label, box: best.box, anchor: best.spot.anchor };
  }

  /** What a spot and what lies under the label cost together; of what costs no less than `most` only that it does. */
  private costAt(box: Box, spot: number, most = Infinity): number {
    let crossed = 0;
    for (const [p, q] of this.lines) {
      const length = lengthInside(p, q, box);
      if (length === 0) continue;
      crossed += CROSSING + length;
      if (spot + crossed >= most) return most;
    }
    const covered = COVERING * this.areas.filter((area) => boxesMeet(area, box)).length;
    return spot + (crossed + covered);
  }
}

function boxAt({ x, y, anchor, hang }: Spot, { width, height }: { width: number; height: number }): Box {
  return {
    x: anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2,
    y: hang === 'below' ? y : hang === 'above' ? y - height : y - height / 2,
    width,
    height,
  };
}

function grow({ x, y, width, height }: Box, by: number): Box {
  return { x: x - by, y: y - by, width: width + 2 * by, height: height + 2 * by };
}

/** Spots around a point, nearest first: to the right, the left, above and below, then between, in growing rings. */
export function spotsAround({ x, y }: Point, near: number, rings = 6): Spot[] {
  return Array.from({ length: rings }, (_, ring) => {
    const d = near + ring * 9;
    const slant = d * 0.75;
    const cost = ring * 14;
    return [
      { x: x + d, y, anchor: 'start', hang: 'middle', cost },
      { x: x - d, y, anchor: 'end', hang: 'middle', cost: cost + 1 },
      { x, y: y - d, anchor: 'middle', hang: 'above', cost: cost + 2 },
      { x, y: y + d, anchor: 'middle', hang: 'below', cost: cost + 2 },
      { x: x + slant, y: y - slant, anchor: 'start', hang: 'above', cost: cost + 4 },
      { x: x + slant, y: y + slant, anchor: 'start', hang: 'below', cost: cost + 4 },
      { x: x - slant, y: y - slant, anchor: 'end', hang: 'above', cost: cost + 5 },
      { x: x - slant, y: y + slant, anchor: 'end', hang: 'below', cost: cost + 5 },
    ] satisfies Spot[];
  }).flat();
}

/** Moves boxes of given heights along a line so that none covers another and each stays as near to where it wants to be as it can. */
export function spread(wanted: readonly { middle: number; height: number }[], from: number, to: number): number[] {
  const order = wanted.map((_, index) => index).sort((a, b) => wanted[a]!.middle - wanted[b]!.middle);
  const tops = new Array<number>(wanted.length).fill(0);
  let floor = from;
  for (const index of order) {
    const { middle, height } = wanted[index]!;
    tops[index] = Math.max(floor, middle - height / 2);
    floor = tops[index] + height;
  }
  let ceiling = Math.max(to, from + wanted.reduce((sum, { height }) => sum + height, 0));
  for (const index of order.reverse()) {
    tops[index] = Math.min(tops[index]!, ceiling - wanted[index]!.height);
    ceiling = tops[index];
  }
  return tops;
}
