import type { DisplayUnit, Verdict } from '@boothwright/fit';
import { formatLength } from '@boothwright/fit';
import type { Board } from './board.js';
import type { Point } from './drawing.js';
import { between, distance } from './geometry.js';
import type { Label, Spot } from './labels.js';
import { line } from './shapes.js';

/** Half the length of the stroke across the end of a dimension line, in units. */
const TICK = 4;

export interface Dimension {
  readonly kind: string;
  readonly name?: string;
  readonly from: Point;
  readonly to: Point;
  readonly label: Label;
  readonly verdict?: Verdict;
  /** Of its label: 4 if not said. */
  readonly priority?: number;
}

/** A line with a stroke across either end, and its label in the middle of it or beside it. */
export function drawDimension(board: Board, { kind, name, from, to, label, verdict, priority = 4 }: Dimension): void {
  const [p, q] = [board.onPaper(from), board.onPaper(to)];
  const length = distance(p, q) || 1;
  const way = { x: (q.x - p.x) / length, y: (q.y - p.y) / length };
  const tick = ({ x, y }: Point) =>
    [1, -1].map((side) =>
      board.inWorld({ x: x + side * TICK * (way.x - way.y), y: y + side * TICK * (way.x + way.y) }),
    );
  const tone = verdict && verdict !== 'pass' ? [verdict] : [];
  board.add(
    kind,
    name,
    [line([from, to], 'thin', ...tone), line(tick(p), 'medium', ...tone), line(tick(q), 'medium', ...tone)],
    verdict,
  );
  board.labels.avoid([p, q]);
  board.label({ kind, name, label, spots: [...onLine(p, q), ...spotsAlong(p, q)], priority });
}

/** In the middle of an upright line that is long enough to be broken by a text. */
function onLine(p: Point, q: Point): Spot[] {
  if (Math.abs(q.y - p.y) < 60) return [];
  return [{ ...between(p, q, 0.5), anchor: 'middle', hang: 'middle', cost: -24 }];
}

/** Beside the middle of a line, then farther along it and farther from it. */
export function spotsAlong(p: Point, q: Point): Spot[] {
  const length = distance(p, q) || 1;
  const aside = { x: -(q.y - p.y) / length, y: (q.x - p.x) / length };
  const upright = Math.abs(aside.x) > Math.abs(aside.y);
  return [0, 1, 2, 3, 4, 5].flatMap((step) =>
    [0.5, 0.35, 0.65, 0.2, 0.8, 0, 1].flatMap((share, turn) =>
      [1, -1].map((side): Spot => {
        const away = side * (6 + step * 10);
        const at = between(p, q, share);
        const place = { x: at.x + away * aside.x, y: at.y + away * aside.y };
        const cost = step * 10 + turn * 3 + (side === 1 ? 0 : 1);
        if (upright) return { ...place, anchor: place.x > at.x ? 'start' : 'end', hang: 'middle', cost };
        return { ...place, anchor: 'middle', hang: place.y > at.y ? 'below' : 'above', cost };
      }),
    ),
  );
}

const FOOT = 304.8;
const steps: Record<'feet' | 'metric', readonly number[]> = {
  feet: [FOOT, 2 * FOOT, 5 * FOOT, 10 * FOOT, 20 * FOOT, 50 * FOOT],
  metric: [200, 500, 1000, 2000, 5000, 10_000, 20_000],
};

/** A bar of a round length, about a fifth of the paper's width, at the lower left or right. */
export function drawScaleBar(board: Board, unit: DisplayUnit, at: Point, most: number): void {
  const feet = unit === 'in' || unit === 'ft';
  const lengths = feet ? steps.feet : steps.metric;
  const length = lengths.filter((one) => one / board.sheet.scale <= most).pop() ?? lengths[0]!;
  const width = length / board.sheet.scale;
  const ends = [at, { x: at.x + width, y: at.y }] as const;
  const [from, to] = [board.inWorld(ends[0]), board.inWorld(ends[1])];
  const half = between(from, to, 0.5);
  const tick = ({ x, y }: Point) =>
    line([board.inWorld({ x, y: y - TICK }), board.inWorld({ x, y: y + TICK })], 'thin');
  board.add('scale-bar', undefined, [line([from, half], 'thick'), line([half, to], 'thin'), ...ends.map(tick)]);
  const text = feet ? formatLength(length, 'ft') : length < 1000 ? formatLength(length, 'cm') : `${length / 1000} m`;
  board.label({
    kind: 'scale-bar',
    label: { lines: [text], soft: true },
    spots: [{ x: ends[1].x + 7, y: at.y, anchor: 'start', hang: 'middle', cost: 0 }],
    priority: 9,
  });
}
