import type { Missing } from '../../assessment.js';
import type { Pinch, Walkway } from '../../booth.js';
import { clearWidth, narrowings } from '../../layout/clear-width.js';
import { spanAlong } from '../../layout/polygon.js';
import { PLANNING_AID, ROUNDING } from '../../limits/allowances.js';
import { heldTo, profileOf, type HeldTo } from '../../limits/held-to.js';
import { profiles } from '../../limits/profiles.js';
import { exactVerdict } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { missing } from '../../stations/station.js';
import type { Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { subjectOf } from './walkways.js';
import { say } from '../../words/say.js';

export const walkwayPinch: Check = {
  id: 'walkway-pinch',
  group: 'walkway',
  title: 'Short narrow points',
  question: 'Is a narrow point of the way wide and short enough, and far enough from the next?',
  computes:
    'Each point narrower than 914 mm (36 in): beside columns and loose racks of the plan, and where the walkway names a `pinch`. Its ' +
    'clear width, its length along the walkway, and the stretch between it and the next.',
  limits:
    'At least 813 mm (32 in) wide over at most 610 mm (24 in), and at least 1219 mm (48 in) between two of them. Half a millimetre is allowed: ' +
    'the figure is an exception already. `limit walkway-pinch` sets the width.',
  sources: [
    {
      name: profiles.us.pinch.width.source,
      says: '32 in for at most 24 in, between stretches at least 48 in long and 36 in wide.',
      read: 'in the source',
    },
  ],
  strength: 'strong',
  takesLimit: true,
  caution: `A pinch is a point, not a walkway, and codes for ways out may not allow it. ${PLANNING_AID}`,
  unit: 'mm',
  example: {
    fires: `booth "Example" { limits us }
room { width 30ft  depth 40ft  column North { at 12ft, 31in  width 30in  depth 30in } }
desk Left { width 60in  depth 27in  height 40in }
place Left at 10ft, 91in
walkway Behind { between booth and back-wall  serves 20 }
`,
    passes: `booth "Example" { limits us }
room { width 30ft  depth 40ft  column North { at 12ft, 34in  width 20in  depth 24in } }
desk Left { width 60in  depth 27in  height 40in }
place Left at 10ft, 91in
walkway Behind { between booth and back-wall  serves 20 }
`,
  },
  find: (scene) => scene.booth.walkways.flatMap((walkway) => judge(scene, walkway)),
};

/** A narrow point with all that must be known of it. */
interface Point {
  readonly what: string;
  readonly at?: Millimetres;
  readonly width: Millimetres;
  readonly length: Millimetres;
}

function judge(scene: Scene, walkway: Walkway): FindingDraft[] {
  const { route } = profileOf(scene).pinch;
  const lack = lacks(walkway);
  if (lack)
    return [
      cannotSay(
        subjectOf(walkway),
        say`Cannot say whether the pinches of ${walkway.name} are passable.`,
        lack,
        lack.origin,
      ),
    ];
  const named = (walkway.pinches ?? []).map(pointOf);
  const narrow = (points: readonly Point[]) => points.filter(({ width }) => width < route.value - ROUNDING);
  const groups = [narrow(named), narrow(planned(scene, walkway))];
  if (groups.every((points) => points.length === 0)) return [];
  const held = heldTo(scene, 'walkway-pinch', profileOf(scene).pinch.width);
  const readings = groups.flatMap((points) => [
    ...points.flatMap((point) => ofPoint(scene, point, held)),
    ...between(scene, points),
  ]);
  const tightest = readings.reduce((least, one) => (one.margin < least.margin ? one : least));
  const passes = tightest.margin >= -ROUNDING;
  const points = groups.flat();
  const narrowest = scene.length(Math.min(...points.map(({ width }) => width)));
  return [
    {
      subject: subjectOf(walkway),
      verdict: exactVerdict(passes, passes),
      measured: tightest.measured,
      limit: tightest.limit,
      margin: tightest.margin,
      message: passes
        ? points.length === 1
          ? say`${walkway.name} narrows to ${narrowest} at one point, each short and far enough from the next.`
          : say`${walkway.name} narrows to ${narrowest} at ${points.length} points, each short and far enough from the next.`
        : [tightest.says(walkway.name), say`A wheelchair may not pass.`, tightest.advice].join(' '),
      source: tightest.isWidth ? held.source : route.source,
      origin: walkway.origin,
      related: held.related,
      assumptions: held.assumptions,
    },
  ];
}

interface ReadingOfPinch {
  readonly measured: Millimetres;
  readonly limit: Millimetres;
  readonly margin: Millimetres;
  readonly isWidth: boolean;
  /** What is so on the walkway of that name, and the rule. */
  readonly says: (walkway: string) => string;
  readonly advice: string;
}

function ofPoint(scene: Scene, point: Point, held: HeldTo): ReadingOfPinch[] {
  const longest = profileOf(scene).pinch.length.value;
  return [
    {
      measured: point.width,
      limit: held.value,
      margin: point.width - held.value,
      isWidth: true,
      says: (way) =>
        say`${scene.length(point.width)} is left at ${point.what} on ${way}; a narrow point needs ${scene.length(held.value)}.`,
      advice: say`Widen it by ${scene.length(held.value - point.width)}.`,
    },
    {
      measured: point.length,
      limit: longest,
      margin: longest - point.length,
      isWidth: false,
      says: (way) =>
        say`The narrow point at ${point.what} is ${scene.length(point.length)} long on ${way}; it may be at most ${scene.length(longest)}.`,
      advice: say`Shorten it, or widen all of it.`,
    },
  ];
}

function between(scene: Scene, points: readonly Point[]): ReadingOfPinch[] {
  const least = profileOf(scene).pinch.apart.value;
  const placed = points
    .flatMap(({ at, ...point }) => (at === undefined ? [] : [{ ...point, at }]))
    .sort((a, b) => a.at - b.at);
  return placed.slice(1).map((point, index) => {
    const before = placed[index]!;
    const apart = point.at - before.at - before.length;
    return {
      measured: apart,
      limit: least,
      margin: apart - least,
      isWidth: false,
      says: (way) =>
        say`Only ${scene.length(apart)} lies between ${before.what} and ${point.what} on ${way}; two narrow points need ${scene.length(least)} between them.`,
      advice: say`Move one of them, or widen one.`,
    };
  });
}

/** Columns and racks of the plan, as points along the walkway. */
function planned(scene: Scene, walkway: Walkway): Point[] {
  const measured = clearWidth(scene, walkway);
  if (!measured || 'unplaced' in measured || !measured.across) return [];
  const { from, to, distance } = measured.across;
  if (distance === 0) return [];
  const along = { x: (from.y - to.y) / distance, y: (to.x - from.x) / distance };
  return narrowings(scene, walkway).map(({ what, outline, left }) => {
    const [start, end] = spanAlong(outline, along);
    return { what, at: start, width: left, length: end - start };
  });
}

function pointOf({ at, width, length }: Pinch, index: number): Point {
  return { what: say`pinch ${index + 1}`, ...(at && { at: at.value }), width: width!.value, length: length!.value };
}

function lacks({ name, pinches = [] }: Walkway): Missing | undefined {
  const of = say`a pinch of walkway ${name}`;
  for (const { width, length, at, origin } of pinches) {
    if (!width) return missing('width', of, 'width 32in', origin);
    if (!length) return missing('length', of, 'length 20in', origin);
    if (!at && pinches.length > 1) return missing('at', of, 'at 6ft', origin);
  }
  return undefined;
}
