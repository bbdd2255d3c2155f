import type { Origin, PlanPoint } from '../../booth.js';
import type { Scene } from '../../scene/scene.js';
import {
  crossing,
  eyePlace,
  floorAt,
  partOfStage,
  personObstacle,
  rackObstacles,
  screenObstacles,
  SEATED_EYE,
  STANDING_EYE,
  stageTargets,
  WHEELCHAIR_EYE,
  type Obstacle,
} from '../../scene/sight.js';
import { exactVerdict } from '../../scene/verdict.js';
import { eyesAt, type Eyes } from '../../scene/viewing.js';
import { missing } from '../../stations/station.js';
import { TOLERANCE, type Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

const GOOD: Millimetres = 90;
const LEAST: Millimetres = 60;

export const seenPast: Check = {
  id: 'seen-past',
  group: 'sight',
  title: 'View past the booth',
  question: 'Does the booth hide the stage from seats or wheelchair places behind it?',
  computes:
    'The sight-line value C: how far the line from a watcher’s eye to the stage floor passes above the eyes of the people in the booth and ' +
    'above the top edges of its screens and racks, at nine points of the stage’s front edge; the least decides.',
  limits:
    'Preferred: at least 90 mm. Outer: at least 60 mm. Eyes: seated 1200 mm, standing 1600 mm, wheelchair 1150 mm.',
  sources: [
    {
      name: 'CEN/TR 15913:2009 and FIFA stadium guidelines',
      says: 'C of 120 mm is best, 90 acceptable, 60 the least.',
      read: 'in a secondary source',
    },
    {
      name: 'P. Shepherd, University of Bath, stadium sight lines',
      says: 'C of 60 mm looks between heads, 90 with heads tilted back.',
      read: 'in the source',
    },
  ],
  strength: 'medium',
  caution:
    'Stadium practice: a hall may accept less. Wheelchair places have sight-line rules of their own; ask the local building official.',
  unit: 'mm',
  example: {
    fires: `room { width 30ft  depth 50ft  stage { edge 40ft  height 36in }  watchers Back { at 15ft, 2ft  posture sit } }
desk Left { width 60in  depth 30in  height 42in }
operator Noor { stature 5'3" }
monitor Cues { diagonal 24in }
workstation Sound { desk Left  operators Noor  monitor Cues { setback 24in  bottom 14in above desk } }
place Left at 12ft 6in, 12ft
`,
    passes: `room { width 30ft  depth 50ft  stage { edge 40ft  height 36in }  watchers Back { at 2ft, 14ft  posture sit } }
desk Left { width 60in  depth 30in  height 42in }
operator Noor { stature 5'3" }
monitor Cues { diagonal 24in }
workstation Sound { desk Left  operators Noor  monitor Cues { setback 24in  bottom 14in above desk } }
place Left at 20ft, 4ft
`,
  },
  find(scene) {
    const { room } = scene.booth;
    const watchers = watchersOf(scene);
    if (!room || watchers.length === 0) return [];
    const { stage } = room;
    if (!stage?.edge)
      return watchers.map((one) =>
        unknown(
          one,
          stage
            ? missing('edge', 'stage', 'edge 55ft', stage.origin)
            : missing('stage', 'room', 'stage { edge 55ft  height 36in }', room.origin),
        ),
      );
    if (!stage.height)
      return watchers.map((one) => unknown(one, missing('height', 'stage', 'height 36in', stage.origin)));
    const obstacles = boothObstacles(scene);
    return watchers.map((watcher) => judge(scene, watcher, stage.height!.value, obstacles));
  },
};

/** Somebody who looks at the stage from behind or beside the booth. */
interface Watcher {
  readonly kind: 'room' | 'wheelchair-space';
  readonly name: string;
  readonly origin: Origin;
  readonly place?: PlanPoint;
  readonly eye: Millimetres;
}

const EYES = { sit: SEATED_EYE, stand: STANDING_EYE, wheelchair: WHEELCHAIR_EYE } as const;

function watchersOf(scene: Scene): Watcher[] {
  const { watchers = [], wheelchairSpaces = [] } = scene.booth.room ?? {};
  return [
    ...watchers.map(({ name, origin, at, posture }): Watcher => {
      return { kind: 'room', name, origin, ...(at && { place: at.value }), eye: EYES[posture.value] };
    }),
    ...wheelchairSpaces.map(({ name, origin, at, width, depth }): Watcher => {
      const place = at && { x: at.value.x + width.value / 2, y: at.value.y + depth.value / 2 };
      return { kind: 'wheelchair-space', name, origin, ...(place && { place }), eye: WHEELCHAIR_EYE };
    }),
  ];
}

function unknown(watcher: Watcher, lack: ReturnType<typeof missing>): FindingDraft {
  return cannotSay(
    { kind: watcher.kind, name: watcher.name },
    say`Cannot say what ${watcher.name} sees of the stage.`,
    lack,
    watcher.origin,
  );
}

/** Of people in the way: how much lower their eyes are when all of them sit; absent if nobody stands, or the seat is not known. */
interface InTheWay extends Obstacle {
  readonly people?: { readonly lowerSeated?: Millimetres };
}

/** A line from a watcher over something in the way. */
interface SightLine {
  readonly target: PlanPoint;
  readonly obstacle: InTheWay;
  /** Where on the way the obstacle stands, 0 at the watcher, 1 at the stage. */
  readonly at: number;
  readonly clearance: Millimetres;
}

/** Screens, racks, and the operators by their eyes: standing where they stand at times. */
function boothObstacles(scene: Scene): readonly InTheWay[] {
  const operators = scene.stations.flatMap((station) => {
    const place = eyePlace(scene, station);
    const eyes = eyesAt(scene, station);
    if (!place || eyes.length === 0) return [];
    const tallest = tallestOf(eyes);
    const seated = eyes.filter(({ posture }) => posture === 'sit');
    const ahead = { x: place.x, y: place.y + 1 };
    const top = tallest.eye + floorAt(scene, place);
    return [
      {
        ...personObstacle(tallest.person.name, place, ahead, top, station.workstation.origin),
        people: seated.length > 0 ? { lowerSeated: tallest.eye - tallestOf(seated).eye } : {},
      },
    ];
  });
  const screens = screenObstacles(scene).map((screen) => {
    return { ...screen, top: screen.top + (screen.onDesk ? (screen.owner?.desk?.height?.value.max ?? 0) : 0) };
  });
  return [...operators, ...screens, ...rackObstacles(scene)];
}

function tallestOf(eyes: readonly Eyes[]): Eyes {
  return eyes.reduce((most, one) => (one.eye > most.eye ? one : most));
}

function judge(scene: Scene, watcher: Watcher, stage: Millimetres, obstacles: readonly InTheWay[]): FindingDraft {
  const { place } = watcher;
  if (!place) return unknown(watcher, missing('at', watcher.name, 'at 10ft, 2ft', watcher.origin));
  const eye = watcher.eye + floorAt(scene, place);
  const targets = stageTargets(scene, place);
  const lines = targets.flatMap((target) =>
    obstacles.flatMap((obstacle): SightLine[] => {
      const at = crossing(place, target, obstacle.line);
      return at === undefined ? [] : [{ target, obstacle, at, clearance: eye + (stage - eye) * at - obstacle.top }];
    }),
  );
  const subject = { kind: watcher.kind, name: watcher.name } as const;
  if (lines.length === 0) {
    return {
      subject,
      verdict: 'pass',
      message: say`Nothing of the booth stands between ${watcher.name} and the stage.`,
      origin: watcher.origin,
    };
  }
  const least = lines.reduce((worst, line) => (line.clearance < worst.clearance ? line : worst));
  const { clearance, obstacle } = least;
  const verdict = exactVerdict(clearance >= GOOD - TOLERANCE, clearance >= LEAST - TOLERANCE);
  const limit = verdict === 'fail' ? LEAST : GOOD;
  const part = partOfStage(targets, least.target);
  return {
    subject,
    verdict,
    measured: clearance,
    limit,
    margin: clearance - limit,
    message:
      verdict === 'pass'
        ? say`${watcher.name} looks over the booth at ${part}: the line clears ${obstacle.what} by ${scene.length(clearance)}.`
        : `${hides(scene, watcher, least, part)} ${wayOut(scene, watcher, least, lines)}`,
    origin: watcher.origin,
    related: obstacle.origin
      ? [{ origin: obstacle.origin, message: say`${obstacle.what} stands in the line of sight` }]
      : [],
  };
}

function hides(scene: Scene, { name }: Watcher, { clearance, obstacle }: SightLine, part: string): string {
  const { what, people } = obstacle;
  const by = scene.length(Math.abs(clearance));
  if (people)
    return clearance < 0
      ? say`From ${name}, ${what} hides the floor of ${part}: the line of sight passes ${by} below the eyes there.`
      : say`From ${name}, ${what} all but hides the floor of ${part}: the line of sight passes ${by} above the eyes there.`;
  return clearance < 0
    ? say`From ${name}, ${what} hides the floor of ${part}: the line of sight passes ${by} below its top.`
    : say`From ${name}, ${what} all but hides the floor of ${part}: the line of sight passes ${by} above its top.`;
}

/** A thing can be lowered; a person can sit, or else those who watch can stand higher. Either may go out of the line. */
function wayOut(scene: Scene, watcher: Watcher, least: SightLine, lines: readonly SightLine[]): string {
  const { clearance, obstacle } = least;
  const lower = GOOD - clearance;
  if (!obstacle.people) return say`Lower it by ${scene.length(lower)}, or move it out of the line.`;
  if ((obstacle.people.lowerSeated ?? 0) >= lower - TOLERANCE)
    return say`Have nobody stand at work there while people watch: seated eyes are low enough. Or move the place out of the line.`;
  const higher = Math.max(...lines.map((line) => (GOOD - line.clearance) / (1 - line.at)));
  return say`Move the place out of the line, or raise the floor under ${watcher.name} by ${scene.length(higher)}.`;
}
