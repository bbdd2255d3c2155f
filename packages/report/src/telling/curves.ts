import {
  INCH,
  type Advice,
  type Booth,
  type Curve,
  type DisplayUnit,
  type Millimetres,
  type Share,
} from '@boothwright/fit';
import { percent, postureWord, unitsOf } from '../words.js';

/** How many people a height of one desk or seat serves: a line for each person and posture. */
export interface ChartTold {
  /** 'Share served at Words, by height of the desk Left'. */
  readonly title: string;
  readonly lines: readonly LineTold[];
  /** The heights shown. */
  readonly from: Millimetres;
  readonly to: Millimetres;
  readonly ticks: readonly { readonly at: Millimetres; readonly label: string }[];
  /** What the file says, if it is within what is shown. */
  readonly now?: { readonly at: Millimetres; readonly label: string };
  /** The same in figures, for those who cannot see the lines. */
  readonly rows: readonly { readonly height: string; readonly shares: readonly string[] }[];
}

export interface LineTold {
  readonly who: string;
  readonly points: readonly { readonly height: Millimetres; readonly share: Share }[];
  /** 'Noor, sitting: most at 38 in (97%)'. */
  readonly summary: string;
}

export const chartsMean =
  'How many of 100 people like each of them would pass every seat or stand check at once, if only that height changed.';

/** The charts of one workstation's desk and seat. One of which no height serves anybody has none. */
export function tellCharts(advice: Advice, workstation: string, booth: Booth): readonly ChartTold[] {
  const curves = advice.stations.find((station) => station.workstation === workstation)?.curves ?? [];
  return (['desk', 'seat'] as const).flatMap((part) => {
    const names = [...new Set(curves.filter((curve) => curve.part === part).map(({ of }) => of))];
    return names.flatMap((name) => {
      const own = curves.filter((curve) => curve.part === part && curve.of === name);
      return tellChart(workstation, part, name, own, booth) ?? [];
    });
  });
}

/** Below this a share is drawn as nobody. */
const NOBODY: Share = 0.005;
const MARGIN: Millimetres = 30;

function tellChart(
  workstation: string,
  part: 'desk' | 'seat',
  name: string,
  curves: readonly Curve[],
  booth: Booth,
): ChartTold | undefined {
  const served = curves.flatMap(({ points }) =>
    points.filter(({ share }) => share > NOBODY).map(({ height }) => height),
  );
  if (served.length === 0) return undefined;
  const given =
    part === 'desk'
      ? booth.desks.find((desk) => desk.name === name)?.height?.value
      : booth.seats.find((seat) => seat.name === name)?.seat?.value;
  const now = given && given.min === given.max ? given.min : undefined;
  const heights = now === undefined ? served : [...served, now];
  const [from, to] = [Math.min(...heights) - MARGIN, Math.max(...heights) + MARGIN];
  const units = unitsOf(booth.show);
  const ticks = ticksBetween(from, to, booth.show).map((at) => ({ at, label: units.length(at) }));
  return {
    title: `Share served at ${workstation}, by height of ${part === 'desk' ? `the desk ${name}` : `the seat of ${name}`}`,
    lines: curves.map((curve) => ({
      who: `${curve.who}, ${postureWord(curve.posture)}`,
      points: curve.points.filter(({ height }) => height >= from && height <= to),
      summary: summaryOf(curve, units.length),
    })),
    from,
    to,
    ticks,
    ...(now !== undefined && { now: { at: now, label: `now ${units.length(now)}` } }),
    rows: ticks.map(({ at, label }) => ({
      height: label,
      shares: curves.map(({ points }) => percent(shareAt(points, at))),
    })),
  };
}

function summaryOf({ who, posture, points }: Curve, length: (height: Millimetres) => string): string {
  const best = points.reduce((a, b) => (b.share > a.share ? b : a));
  const name = `${who}, ${postureWord(posture)}`;
  return best.share > NOBODY
    ? `${name}: most at about ${length(best.height)}, ${percent(best.share)}`
    : `${name}: nobody at any height`;
}

/** Steps that people of the unit count in: as few as leave at most ten. */
const steps: Record<'inches' | 'metric', readonly Millimetres[]> = {
  inches: [1, 2, 4, 6, 12].map((n) => n * INCH),
  metric: [20, 50, 100, 200],
};
const MOST_TICKS = 10;

function ticksBetween(from: Millimetres, to: Millimetres, show: DisplayUnit): Millimetres[] {
  const own = steps[show === 'in' || show === 'ft' ? 'inches' : 'metric'];
  const step = own.find((one) => (to - from) / one <= MOST_TICKS) ?? own[own.length - 1]!;
  const first = Math.ceil(from / step);
  return Array.from({ length: Math.floor(to / step) - first + 1 }, (_, n) => (first + n) * step);
}

/** Between two points of a curve, on the line that joins them. */
function shareAt(points: Curve['points'], height: Millimetres): Share {
  const after = points.findIndex((point) => point.height >= height);
  if (after <= 0) return points[after === 0 ? 0 : points.length - 1]?.share ?? 0;
  const [a, b] = [points[after - 1]!, points[after]!];
  return a.share + ((b.share - a.share) * (height - a.height)) / (b.height - a.height);
}
