import type { Missing } from '../../assessment.js';
import type { Origin, Walkway } from '../../booth.js';
import { clearWidth, sidesOf } from '../../layout/clear-width.js';
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

export const walkwayHead: Check = {
  id: 'walkway-head',
  group: 'walkway',
  title: 'Headroom',
  question: 'Does nothing hang so low that people hit their heads?',
  computes:
    'The lowest of what the walkway gives as its `headroom`, the underside of the balcony where the walkway runs under it, and the ceiling.',
  limits: 'At least 2032 mm (80 in).',
  sources: [
    {
      name: profiles.us.headroom.source,
      says: '80 in over a way out and over a route; a building’s ways out need a ceiling of 90 in.',
      read: 'in the source',
    },
  ],
  strength: 'strong',
  takesLimit: true,
  caution: PLANNING_AID,
  unit: 'mm',
  example: {
    fires: `booth "Example" { limits us }
room { width 30ft  depth 40ft  height 14ft  balcony { edge 12ft  height 6'6" } }
desk Left { width 60in  depth 27in  height 40in }
place Left at 10ft, 5ft
walkway Behind { between booth and back-wall  serves 20 }
`,
    passes: `booth "Example" { limits us }
room { width 30ft  depth 40ft  height 14ft  balcony { edge 12ft  height 9ft } }
desk Left { width 60in  depth 27in  height 40in }
place Left at 10ft, 5ft
walkway Behind { between booth and back-wall  serves 20 }
`,
  },
  find: (scene) => scene.booth.walkways.map((walkway) => judge(scene, walkway)),
};

interface Overhead {
  readonly what: string;
  readonly height: Millimetres;
  readonly origin?: Origin;
}

function judge(scene: Scene, walkway: Walkway): FindingDraft {
  const overhead = overheadOf(scene, walkway);
  if ('property' in overhead)
    return cannotSay(
      subjectOf(walkway),
      say`Cannot say how high it is above ${walkway.name}.`,
      overhead,
      walkway.origin,
    );
  const { value: limit, ...held } = heldTo(scene, 'walkway-head', profileOf(scene).headroom);
  const high = overhead.height >= limit - TOLERANCE;
  return {
    subject: subjectOf(walkway),
    verdict: exactVerdict(high, high),
    measured: overhead.height,
    limit,
    margin: overhead.height - limit,
    message: high
      ? say`${overhead.what} is ${scene.length(overhead.height)} above ${walkway.name}, not below ${scene.length(limit)}.`
      : say`${overhead.what} is ${scene.length(overhead.height)} above ${walkway.name}: people hit their heads. It takes ${scene.length(limit)}; raise what hangs there, or lead the way round it.`,
    source: held.source,
    origin: walkway.headroom?.origin ?? walkway.origin,
    related: [
      ...(overhead.origin ? [{ origin: overhead.origin, message: say`${overhead.what}: its height` }] : []),
      ...held.related,
    ],
    assumptions: [...(walkway.headroom ? [] : [say`nothing else hangs over ${walkway.name}`]), ...held.assumptions],
  };
}

function overheadOf(scene: Scene, walkway: Walkway): Overhead | Missing {
  const { room } = scene.booth;
  const { headroom } = walkway;
  const balcony = room?.balcony;
  const under = balcony !== undefined && runsUnderBalcony(scene, walkway);
  if (under && !balcony.height && !headroom) return missing('height', 'balcony', 'height 9ft', balcony.origin);
  const known = [
    ...(headroom ? [overhead(say`What hangs lowest`, headroom)] : []),
    ...(under && balcony.height ? [overhead(say`The balcony`, balcony.height)] : []),
    ...(room?.height ? [overhead(say`The ceiling`, room.height)] : []),
  ];
  if (known.length === 0) return missing('headroom', `walkway ${walkway.name}`, 'headroom 7\'6"', walkway.origin);
  return known.reduce((lowest, one) => (one.height < lowest.height ? one : lowest));
}

function overhead(what: string, { value, origin }: { value: Millimetres; origin?: Origin }): Overhead {
  return { what, height: value, ...(origin && { origin }) };
}

/** The balcony reaches from the back wall to its edge. A walkway that the plan does not place may run under it. */
function runsUnderBalcony(scene: Scene, walkway: Walkway): boolean {
  const edge = scene.booth.room?.balcony?.edge?.value;
  const sides = sidesOf(scene, walkway);
  const measured = clearWidth(scene, walkway);
  if (edge === undefined || !sides || 'unplaced' in sides || !measured || 'unplaced' in measured) return true;
  const { across } = measured;
  if (!across) return true;
  const sideways = Math.abs(across.to.x - across.from.x) > Math.abs(across.to.y - across.from.y);
  const pieces = [...sides.first, ...sides.second]
    .flatMap(({ bare }) => bare)
    .filter(({ y }) => Math.abs(y) < IN_THE_ROOM);
  const ends = sideways ? pieces : [across.from, across.to];
  return Math.min(...ends.map(({ y }) => y)) < edge - TOLERANCE;
}

/** Walls are drawn far longer than a room. */
const IN_THE_ROOM: Millimetres = 5e5;
