import type { Missing } from '../../assessment.js';
import type { Origin, Walkway } from '../../booth.js';
import { placedScreens, sidesOf, type Obstacle } from '../../layout/clear-width.js';
import { gapBetween, spanAlong } from '../../layout/polygon.js';
import { PLANNING_AID } from '../../limits/allowances.js';
import { heldTo, profileOf } from '../../limits/held-to.js';
import { profiles } from '../../limits/profiles.js';
import { exactVerdict } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { missing } from '../../stations/station.js';
import { TOLERANCE, type Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { subjectOf } from './walkways.js';
import { say } from '../../words/say.js';

export const walkwayProjection: Check = {
  id: 'walkway-projection',
  group: 'walkway',
  title: 'Things that stick out',
  question: 'Does anything stick out at the height of a body, where a cane does not find it?',
  computes:
    'How far a screen stands out over the edge of its desk toward the walkway, and how far what the walkway names as a `projection` sticks ' +
    'out, if its lower edge is between 27 in (685 mm) and 80 in (2030 mm) high.',
  limits: 'At most 102 mm (4 in).',
  sources: [
    {
      name: profiles.us.projection.reach.source,
      says: 'Things with leading edges more than 27 in and not more than 80 in high stick out at most 4 in.',
      read: 'in the source',
    },
  ],
  strength: 'strong',
  takesLimit: true,
  caution: PLANNING_AID,
  unit: 'mm',
  example: {
    fires: `booth "Example" { limits us }
room { width 30ft  depth 40ft  seating { first 5ft } }
desk Left { width 60in  depth 27in  height 40in }
operator Noor { stature 5'3" }
monitor Cues { diagonal 24in }
workstation Sound { desk Left  operators Noor  monitor Cues { setback 33in  bottom 6in above desk } }
place Left at 10ft, 6ft
walkway Front { between booth and seating  serves 20 }
`,
    passes: `booth "Example" { limits us }
room { width 30ft  depth 40ft  seating { first 5ft } }
desk Left { width 60in  depth 27in  height 40in }
operator Noor { stature 5'3" }
monitor Cues { diagonal 24in }
workstation Sound { desk Left  operators Noor  monitor Cues { setback 24in  bottom 6in above desk } }
place Left at 10ft, 6ft
walkway Front { between booth and seating  serves 20 }
`,
  },
  find: (scene) => scene.booth.walkways.flatMap((walkway) => judge(scene, walkway)),
};

interface Sticking {
  readonly what: string;
  /** Floor to its lower edge. */
  readonly height: Millimetres;
  readonly reach: Millimetres;
  readonly origin?: Origin;
}

function judge(scene: Scene, walkway: Walkway): FindingDraft[] {
  const lack = lacks(walkway);
  if (lack)
    return [cannotSay(subjectOf(walkway), say`Cannot say what sticks out into ${walkway.name}.`, lack, lack.origin)];
  const { reach, above, below } = profileOf(scene).projection;
  const all = [...named(walkway), ...screensOut(scene, walkway)];
  if (all.length === 0) return [];
  const { value: limit, ...held } = heldTo(scene, 'walkway-projection', reach);
  const counts = all.filter(({ height }) => height > above.value + TOLERANCE && height <= below.value);
  const common = { subject: subjectOf(walkway), source: held.source, related: held.related };
  if (counts.length === 0) {
    return [
      {
        ...common,
        verdict: 'pass',
        message: say`What sticks out into ${walkway.name} is so low that a cane finds it, or above heads.`,
        origin: walkway.origin,
        assumptions: held.assumptions,
      },
    ];
  }
  const farthest = counts.reduce((most, one) => (one.reach > most.reach ? one : most));
  const little = farthest.reach <= limit + TOLERANCE;
  const [reaches, high] = [scene.length(farthest.reach), scene.length(farthest.height)];
  return [
    {
      ...common,
      verdict: exactVerdict(little, little),
      measured: farthest.reach,
      limit,
      margin: limit - farthest.reach,
      message: little
        ? say`${farthest.what} sticks out ${reaches} into ${walkway.name}, ${high} above the floor: not more than ${scene.length(limit)}.`
        : say`${farthest.what} sticks out ${reaches} into ${walkway.name}, ${high} above the floor, where people walk into it and a cane does not find it. Pull it back by ${scene.length(farthest.reach - limit)}, or put something on the floor below it.`,
      origin: farthest.origin ?? walkway.origin,
      assumptions: [
        ...(farthest.origin ? [] : [say`a screen is counted from its face: its body and its arm reach farther`]),
        ...held.assumptions,
      ],
    },
  ];
}

function named({ projections = [] }: Walkway): Sticking[] {
  return projections.map(({ height, reach, origin }, index) => ({
    what: projections.length === 1 ? say`The projection` : say`Projection ${index + 1}`,
    height: height!.value,
    reach: reach!.value,
    origin,
  }));
}

/** Screens that stand out over the edge of their desk toward the other side of the walkway. */
function screensOut(scene: Scene, walkway: Walkway): Sticking[] {
  const sides = sidesOf(scene, walkway);
  if (!sides || 'unplaced' in sides) return [];
  const toward = (own: readonly Obstacle[], other: readonly Obstacle[]) =>
    own.flatMap((piece) => {
      const gaps = other.flatMap((one) => gapBetween(piece.bare, one.bare) ?? []);
      if (gaps.length === 0) return [];
      const { from, to, distance } = gaps.reduce((least, gap) => (gap.distance < least.distance ? gap : least));
      if (distance === 0) return [];
      const way = { x: (to.x - from.x) / distance, y: (to.y - from.y) / distance };
      const [, edge] = spanAlong(piece.bare, way);
      return placedScreens(scene)
        .filter(({ desk }) => desk === piece.what)
        .map(({ what, outline, bottom }) => ({ what, height: bottom, reach: spanAlong(outline, way)[1] - edge }))
        .filter(({ reach }) => reach > TOLERANCE);
    });
  return [...toward(sides.first, sides.second), ...toward(sides.second, sides.first)];
}

function lacks({ name, projections = [] }: Walkway): Missing | undefined {
  const of = say`a projection of walkway ${name}`;
  for (const { height, reach, origin } of projections) {
    if (!height) return missing('height', of, 'height 50in', origin);
    if (!reach) return missing('reach', of, 'reach 3in', origin);
  }
  return undefined;
}
