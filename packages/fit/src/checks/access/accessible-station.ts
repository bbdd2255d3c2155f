import { withName } from '../../lookup.js';
import type { Missing } from '../../assessment.js';
import type { Desk, Platform } from '../../booth.js';
import { formatRange } from '../../format.js';
import { behindDesk } from '../../layout/behind.js';
import { clearWidth } from '../../layout/clear-width.js';
import { penetration } from '../../layout/polygon.js';
import { PLANNING_AID } from '../../limits/allowances.js';
import { heldTo, profileOf, type HeldTo } from '../../limits/held-to.js';
import { keep } from '../../scene/kept.js';
import type { Scene } from '../../scene/scene.js';
import { kneeSpace, lacksKneeSpace, USUAL_LEG } from '../../stations/knee-space.js';
import { lacksDeskHeight, lacksDrop, missing, type Station, racksBelow } from '../../stations/station.js';
import { INCH, TOLERANCE, type Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { said, say } from '../../words/say.js';

const ROUTE = { value: 36 * INCH, source: '2010 ADA Standards 403.5.1' };
const SURFACE = { min: 28 * INCH, max: 34 * INCH };
const KNEE_HEIGHT = 27 * INCH;
const KNEE_WIDTH = 30 * INCH;
const TOE_HEIGHT = 9 * INCH;
const TOE_DEPTH = 17 * INCH;
const WHEELCHAIR = 48 * INCH;

export const accessibleStation: Check = {
  id: 'accessible-station',
  group: 'access',
  title: 'A place for a wheelchair user',
  question: 'Is there one workstation where a wheelchair user can work?',
  computes:
    'For each workstation: the desk’s surface, the room for knees and toes under it, its free width, the floor behind it for a wheelchair, ' +
    'the widest walkway to the booth, and the ramp of a platform that it stands on. The best one counts.',
  limits:
    'Surface 711 to 864 mm (28 to 34 in) high; 686 mm (27 in) free over the knees, tapering as the standard says; 762 mm (30 in) wide; 432 mm ' +
    '(17 in) deep; 787 mm (31 in) of floor behind the edge; a route of 914 mm (36 in). Advice, never a failure. `limit accessible-station` ' +
    'sets the route.',
  sources: [
    { name: '2010 ADA Standards 902.3', says: 'Work surfaces 28 to 34 in above the floor.', read: 'in the source' },
    {
      name: '2010 ADA Standards 305.3 and 306',
      says: 'Floor space of 30 by 48 in; knees 27 in high and 8 in deep there, 11 in deep at 9 in; toes 17 in deep below 9 in; 30 in wide.',
      read: 'in the source',
    },
    { name: ROUTE.source, says: 'Accessible route 36 in wide.', read: 'in the source' },
  ],
  strength: 'strong',
  takesLimit: true,
  caution:
    'Advice, not a finding of law: the standard does not bind most places where employees work, but duties to employees and volunteers remain. ' +
    PLANNING_AID,
  unit: 'mm',
  example: {
    fires: `booth "Example" { limits us }
room { width 30ft  depth 40ft }
desk Left { width 60in  depth 27in  height 41in }
operator Noor { stature 5'3" }
workstation Sound { desk Left  operators Noor }
place Left at 10ft, 6ft
`,
    passes: `booth "Example" { limits us }
room { width 30ft  depth 40ft }
desk Left { width 60in  depth 27in  height 29in..41in }
operator Noor { stature 5'3" }
workstation Sound { desk Left  operators Noor }
place Left at 10ft, 6ft
`,
  },
  find(scene) {
    if (scene.stations.length === 0) return [];
    const held = heldTo(scene, 'accessible-station', ROUTE);
    const places = scene.stations.map((station) => placeOf(scene, station, held));
    return [findingOf(scene, places, held)];
  },
};

/** What keeps a wheelchair user from one workstation. */
interface Place {
  readonly station: Station;
  readonly obstacles: readonly Obstacle[];
  readonly missing: readonly Missing[];
  readonly assumptions: readonly string[];
}

interface Obstacle {
  readonly says: string;
  /** What there is, and what is wanted; absent where it is no length that lacks. */
  readonly lack?: { readonly measured: Millimetres; readonly limit: Millimetres };
}

function findingOf(scene: Scene, places: readonly Place[], held: HeldTo): FindingDraft {
  const subject = { kind: 'booth', name: scene.booth.name } as const;
  const origin = scene.booth.origin;
  const good = places.find(({ obstacles, missing }) => obstacles.length === 0 && missing.length === 0);
  if (good) {
    return {
      subject,
      verdict: 'pass',
      message: say`A wheelchair user can work at ${good.station.name}: surface, knees, floor and route have room.`,
      source: held.source,
      ...(origin && { origin }),
      related: [{ origin: good.station.workstation.origin, message: say`this workstation` }, ...held.related],
      assumptions: [...good.assumptions, ...held.assumptions],
    };
  }
  const open = places.find(({ obstacles }) => obstacles.length === 0);
  if (open) {
    const topic = say`Cannot say whether a wheelchair user can work at ${open.station.name}.`;
    return cannotSay(subject, topic, open.missing[0]!, origin ?? open.station.workstation.origin);
  }
  const best = places.reduce((nearest, place) => (isNearer(place, nearest) ? place : nearest));
  const { lack } = best.obstacles[0]!;
  const faults = best.obstacles.map(({ says }) => says).join('; ');
  return {
    subject,
    verdict: 'marginal',
    ...(lack && { ...lack, margin: -Math.abs(lack.measured - lack.limit) }),
    message:
      places.length === 1
        ? say`No workstation suits a wheelchair user. ${best.station.name}: ${faults}. Think of making one place that does.`
        : say`No workstation suits a wheelchair user. The nearest is ${best.station.name}, but ${faults}. Think of making one place that does.`,
    source: held.own ? held.source : say`2010 ADA Standards 305, 306, 403.5.1 and 902.3, as advice`,
    ...(origin && { origin }),
    related: [
      { origin: best.station.workstation.origin, message: say`the workstation that comes nearest` },
      ...held.related,
    ],
    assumptions: [...best.assumptions, ...held.assumptions],
  };
}

/** With fewer obstacles; of as many, with less that lacks, added up. What is no length, such as a ramp, lacks more than any. */
function isNearer(a: Place, b: Place): boolean {
  const lacking = ({ obstacles }: Place) =>
    obstacles.reduce((sum, { lack }) => sum + (lack ? Math.abs(lack.measured - lack.limit) : Infinity), 0);
  const fewer = a.obstacles.length - b.obstacles.length;
  return fewer === 0 ? lacking(a) < lacking(b) : fewer < 0;
}

function placeOf(scene: Scene, station: Station, held: HeldTo): Place {
  const lack = keep(
    station,
    'what a wheelchair lacks',
    () => lacksDeskHeight(station) ?? lacksKneeSpace(station) ?? lacksDrop(station.desk!, 0, TOE_DEPTH),
  );
  if (lack) return { station, obstacles: [], missing: [lack], assumptions: [] };
  const desk = station.desk!;
  const floor = behindDesk(scene.layout, desk)?.distance;
  const way = routeTo(scene, desk, floor);
  return {
    station,
    obstacles: [
      ...keep(station, 'room for a wheelchair', () => [...surface(scene, desk), ...knees(scene, station, desk)]),
      ...(floor === undefined ? [] : room(scene, floor)),
      ...(way === undefined ? [] : route(scene, way.width, held.value)),
      ...raised(scene, desk),
    ],
    missing:
      floor === undefined
        ? [missing('place', say`the file, for desk ${desk.name}`, `place ${desk.name} at 14ft, 6ft`, desk.origin)]
        : [],
    assumptions: way?.isBehind
      ? [say`the way to the booth is as wide as the floor behind the desk: no walkway says`]
      : [],
  };
}

function surface(scene: Scene, { height }: Desk): Obstacle[] {
  const { min, max } = height!.value;
  const range = formatRange(SURFACE, scene.booth.show);
  const says: Shortage = (has) => say`its surface is ${has} high, where ${range} is wanted`;
  if (min > SURFACE.max + TOLERANCE) return [short(scene, min, SURFACE.max, says)];
  if (max < SURFACE.min - TOLERANCE) return [short(scene, max, SURFACE.min, says)];
  return [];
}

/** With the desk as high as suits: the higher, the more room below. */
function knees(scene: Scene, station: Station, desk: Desk): Obstacle[] {
  const high = Math.min(desk.height!.value.max, SURFACE.max);
  const under = high - desk.top.value;
  const { width, depth } = widestPlace(station);
  return [
    ...(under < KNEE_HEIGHT - TOLERANCE
      ? [
          short(
            scene,
            under,
            KNEE_HEIGHT,
            (has, wanted) => say`it has ${has} over the knees, where ${wanted} is wanted`,
          ),
        ]
      : []),
    ...desk.hanging
      .flatMap(({ kind, drop, fromEdge }) => (drop ? [{ kind, clear: under - drop.value, from: fromEdge.value }] : []))
      .filter(({ clear, from }) => clear < KNEE_HEIGHT - TOLERANCE && from < kneeDepthAt(clear) - TOLERANCE)
      .map(({ kind, clear }) =>
        short(
          scene,
          clear,
          KNEE_HEIGHT,
          (has, wanted) => say`it has ${has} over the knees, under the ${said(kind)}, where ${wanted} is wanted`,
        ),
      ),
    ...(width < KNEE_WIDTH - TOLERANCE
      ? [
          short(
            scene,
            width,
            KNEE_WIDTH,
            (has, wanted) => say`it has ${has} from side to side under it, where ${wanted} is wanted`,
          ),
        ]
      : []),
    ...(depth < TOE_DEPTH - TOLERANCE
      ? [
          short(
            scene,
            depth,
            TOE_DEPTH,
            (has, wanted) => say`it has ${has} from front to back under it, where ${wanted} is wanted`,
          ),
        ]
      : []),
  ];
}

/**
 * How deep knees and toes need room at a height above the floor, up to 27 in: 17 in below 9 in, then 11 in at 9 in, falling by 1 in for
 * each 6 in, to 8 in at 27 in (2010 ADA Standards 306.2 and 306.3).
 */
export function kneeDepthAt(height: Millimetres): Millimetres {
  return height < TOE_HEIGHT ? TOE_DEPTH : 11 * INCH - (height - TOE_HEIGHT) / 6;
}

/** The widest free place under the desk, and how deep it is: midway between some two of the things that stand there. */
function widestPlace(station: Station): { width: Millimetres; depth: Millimetres } {
  const { name, width, legs } = station.desk!;
  const whole = width!.value;
  const frame = legs?.width?.value ?? whole;
  const leg = legs ? (legs.thickness?.value ?? USUAL_LEG) : 0;
  const left = (whole - frame) / 2;
  const racks = racksBelow(station.booth.racks, name);
  const bounds = [
    ...[0, whole, left + leg, left + frame - leg],
    ...racks.flatMap(({ under, width: across }) => [under!.at.value, under!.at.value + across!.value]),
  ];
  const spaces = bounds.flatMap((from) =>
    bounds.map((to) => {
      const at = { value: (from + to) / 2, isDefault: false };
      const space = kneeSpace({ ...station, workstation: { ...station.workstation, at } });
      return { width: space.width.length, depth: space.knee.length };
    }),
  );
  const deep = spaces.filter(({ depth }) => depth >= TOE_DEPTH - TOLERANCE);
  const usable = deep.length > 0 ? deep : spaces;
  return usable.reduce((widest, space) => (space.width > widest.width ? space : widest));
}

/** A wheelchair is 48 in long, and 17 in of it go under the desk. */
function room(scene: Scene, floor: Millimetres): Obstacle[] {
  const least = WHEELCHAIR - TOE_DEPTH;
  return floor < least - TOLERANCE
    ? [
        short(
          scene,
          floor,
          least,
          (has, wanted) => say`it has ${has} of floor behind its edge, where ${wanted} is wanted`,
        ),
      ]
    : [];
}

function route(scene: Scene, width: Millimetres, least: Millimetres): Obstacle[] {
  return width < least - TOLERANCE
    ? [short(scene, width, least, (has, wanted) => say`it has ${has} on the way to it, where ${wanted} is wanted`)]
    : [];
}

/** The widest walkway along the booth; where none is named, the floor behind the desk. */
function routeTo(scene: Scene, desk: Desk, floor: Millimetres | undefined) {
  const widths = scene.booth.walkways
    .filter(({ between }) => between?.some(({ name }) => name === 'booth' || name === desk.name))
    .flatMap((walkway) => {
      const measured = clearWidth(scene, walkway);
      return measured && !('unplaced' in measured) ? [measured.clear] : [];
    });
  if (widths.length > 0) return { width: Math.max(...widths), isBehind: false };
  return floor === undefined ? undefined : { width: floor, isBehind: true };
}

function raised(scene: Scene, desk: Desk): Obstacle[] {
  const outline = withName(scene.layout.deskPieces, desk.name)?.outline;
  const stands = scene.booth.platforms.find(({ name }) => {
    const piece = scene.layout.pieces.find((one) => one.kind === 'platform' && one.name === name);
    return outline && piece && penetration(outline, piece.outline) > TOLERANCE;
  });
  return stands && !hasRamp(scene, stands)
    ? [{ says: say`it stands on ${stands.name}, which has no ramp of 1:12` }]
    : [];
}

function hasRamp(scene: Scene, { height, ramp }: Platform): boolean {
  if (!ramp?.length || !ramp.width || !height) return false;
  const { slope, rampWidth } = profileOf(scene).platform;
  return ramp.length.value >= height.value * slope.value - TOLERANCE && ramp.width.value >= rampWidth.value - TOLERANCE;
}

type Shortage = (has: string, wanted: string) => string;

function short(scene: Scene, measured: Millimetres, limit: Millimetres, says: Shortage): Obstacle {
  return { says: says(scene.length(measured), scene.length(limit)), lack: { measured, limit } };
}
