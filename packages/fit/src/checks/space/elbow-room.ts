import { rowsOf, type RowPlace } from '../../layout/rows.js';
import { heldTo } from '../../limits/held-to.js';
import { shareOfPairs } from '../../scene/neighbours.js';
import { exactVerdict, verdictOf } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { missing, type Person, type Station } from '../../stations/station.js';
import { TOLERANCE, type Millimetres, type Share } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { sizeUp } from '../sizes.js';
import { listOf } from '../../format.js';
import { say } from '../../words/say.js';

const COMFORT = { value: 30 * 25.4, source: 'NUREG-0700 Rev. 2, 12.1.1.3-5' };
const LEAST = 24 * 25.4;
/** What two neighbours need between their elbows to move, and clothing. */
const TO_MOVE = 100;
/** Half of it: elbows meet at times. */
const TOUCHING = 50;

export const elbowRoom: Check = {
  id: 'elbow-room',
  group: 'space',
  title: 'Elbow room',
  question: 'Has each operator width to work beside the next?',
  computes:
    'The width of the desk that is each operator’s own: between its ends, or half way to the next operator at it. And for ' +
    'neighbours in a row, the distance from middle to middle, against the same figures and against half the sum of their ' +
    'forearm-to-forearm breadths with room to move. Of those who take turns at a place, the widest pair decides.',
  limits:
    'Preferred: at least 762 mm (30 in), and half the sum of the breadths + 100 mm. Outer: at least 610 mm (24 in), and half ' +
    'the sum + 50 mm.',
  sources: [
    {
      name: COMFORT.source,
      says: 'At least 30 in of width for each seated user, more preferred.',
      read: 'in the source',
    },
    {
      name: 'Panero & Zelnik 1979, 3.4 and 5.1',
      says:
        'A place at a table: 24 in at least, 30 in for comfort. Stools on 24 in centres leave fewer than 5 in 100 men undisturbed, ' +
        'on 28 in centres a compromise, on 30 in centres 95 in 100.',
      read: 'in the source',
    },
    {
      name: 'own allowance',
      says: '100 mm, which gives those shares with the forearm breadths of the survey; 50 mm is half of it.',
      read: 'derived',
    },
  ],
  strength: 'strong',
  takesLimit: true,
  unit: 'mm',
  example: {
    fires: `desk Left { width 48in  depth 27in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
operator Tobias { stature 6'1" }
workstation Sound { desk Left  chair Low  operators Noor  at 13in }
workstation Light { desk Left  chair Low  operators Tobias  at 35in }
`,
    passes: `desk Left { width 72in  depth 27in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
operator Tobias { stature 6'1" }
workstation Sound { desk Left  chair Low  operators Noor  at 18in }
workstation Light { desk Left  chair Low  operators Tobias  at 54in }
`,
  },
  find: (scene) => [
    ...scene.stations.flatMap(unsized),
    ...rowsOf(scene).flatMap((row) => [
      ...row.map((place) => ownWidth(scene, place)),
      ...row.slice(1).flatMap((place, index) => besideEachOther(scene, row[index]!, place)),
    ]),
  ],
};

function unsized(station: Station): FindingDraft[] {
  const { desk, name } = station;
  if (!desk || desk.width) return [];
  const subject = { kind: 'workstation', name } as const;
  const lack = missing('width', `desk ${desk.name}`, 'width 60in', desk.origin);
  return [cannotSay(subject, say`Cannot say how much width there is at ${name}.`, lack, desk.origin)];
}

function ownWidth(scene: Scene, { station, desk, from, to, evenly }: RowPlace): FindingDraft {
  const width = to - from;
  const held = heldTo(scene, 'elbow-room', COMFORT);
  const least = Math.min(LEAST, held.value);
  const verdict = exactVerdict(width >= held.value - TOLERANCE, width >= least - TOLERANCE);
  const limit = verdict === 'fail' ? least : held.value;
  return {
    ...about(station, evenly),
    verdict,
    measured: width,
    limit,
    margin: width - limit,
    message:
      verdict === 'pass'
        ? say`${station.name} has ${scene.length(width)} of the width of ${desk.name}: room for elbows.`
        : say`${station.name} has ${scene.length(width)} of the width of ${desk.name}, too little for elbows: give it ${scene.length(sizeUp(held.value, scene.booth.show))}.`,
    source: held.source,
    related: [{ origin: desk.width!.origin ?? desk.origin, message: say`the desk ${desk.name}` }, ...held.related],
  };
}

/** Two stations next to each other, and of their people the pair that has least room. */
function besideEachOther(scene: Scene, left: RowPlace, right: RowPlace): FindingDraft[] {
  const [one, other] = [left.station, right.station];
  const held = heldTo(scene, 'elbow-room', COMFORT);
  const apart = right.along - left.along;
  const pairs = pairsOf(one, other).map((pair) => judgePair(pair, apart, held.value));
  if (pairs.length === 0 && one.people.length > 0 && other.people.length > 0) return [];
  const worst = pairs.sort((a, b) => a.outer - b.outer || a.preferred - b.preferred || b.breadth - a.breadth)[0];
  const least = Math.min(LEAST, held.value);
  const verdict = worst
    ? verdictOf(worst.preferred, worst.outer, Math.max(...worst.pair.map(({ wanted }) => wanted)))
    : exactVerdict(apart >= held.value - TOLERANCE, apart >= least - TOLERANCE);
  const breadth = worst?.breadth ?? 0;
  const limit = verdict === 'fail' ? Math.max(least, breadth + TOUCHING) : Math.max(held.value, breadth + TO_MOVE);
  const who = worst ? listOf(worst.pair.map(({ name }) => name)) : say`their operators`;
  const finding: FindingDraft = {
    ...about(other, left.evenly || right.evenly),
    verdict,
    measured: apart,
    limit,
    margin: apart - limit,
    ...(worst && { share: worst.preferred, shareAtLimit: worst.outer }),
    message:
      verdict === 'pass'
        ? say`${one.name} and ${other.name} stand ${scene.length(apart)} apart, middle to middle: ${who} have room for their elbows.`
        : say`${one.name} and ${other.name} stand ${scene.length(apart)} apart, middle to middle, so the elbows of ${who} meet: set them ${scene.length(wantedApart(scene, held.value, worst?.pair))} apart.`,
    source: held.source,
    related: [{ origin: one.workstation.origin, message: say`${one.name}, next to it` }, ...held.related],
  };
  return [finding];
}

type Pair = readonly [Person, Person];

/** Nobody works at two places at once; two of one crowd may. */
function pairsOf(left: Station, right: Station): readonly Pair[] {
  return left.people.flatMap((one) =>
    right.people.filter((other) => other !== one || one.kind === 'crowd').map((other): Pair => [one, other]),
  );
}

/** The share of such pairs that have room so far apart, and half the sum of their mean breadths. */
function judgePair(pair: Pair, apart: Millimetres, comfort: Millimetres) {
  const share = (least: Millimetres, spare: Millimetres) =>
    apart >= least - TOLERANCE ? shareOfPairs(...pair, 2 * (apart - spare + TOLERANCE)) : 0;
  const [one, other] = pair.map(({ dimensions }) => dimensions.forearmForearmBreadth) as [number, number];
  return {
    pair,
    preferred: share(comfort, TO_MOVE),
    outer: share(Math.min(LEAST, comfort), TOUCHING),
    breadth: (one + other) / 2,
  };
}

/** The distance at which as many of such pairs as must pass have room, in steps that people measure out. */
function wantedApart(scene: Scene, least: Millimetres, pair: Pair | undefined): Millimetres {
  if (!pair) return sizeUp(least, scene.booth.show);
  const wanted: Share = Math.max(...pair.map((person) => person.wanted));
  let low = least;
  let high = least + 1000;
  while (high - low > 0.5) {
    const middle = (low + high) / 2;
    if (shareOfPairs(...pair, 2 * (middle - TO_MOVE)) >= wanted) high = middle;
    else low = middle;
  }
  return sizeUp(high - 0.5, scene.booth.show);
}

function about({ name, workstation, desk }: Station, evenly: boolean) {
  return {
    subject: { kind: 'workstation', name },
    origin: workstation.at?.origin ?? workstation.origin,
    assumptions: evenly ? [say`the people at ${desk!.name} share its width evenly`] : [],
  } as const;
}
