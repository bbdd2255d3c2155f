import { piecesNear } from '../../layout/nearby.js';
import type { Desk, PlanPoint, Polygon } from '../../booth.js';
import { distanceBetween, penetration, pointIn, spanAlong, type Frame } from '../../layout/polygon.js';
import { exactVerdict } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { linesOf } from '../../scene/screen-lines.js';
import { isAdjustable, viewsAt, type View } from '../../scene/viewing.js';
import { missing, type Station, placeAlong, stationsAt } from '../../stations/station.js';
import { radians, TOLERANCE, type Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

/** A screen’s body behind its face. Common practice, no source. */
const BODY: Millimetres = 50;

export const screensFitDesk: Check = {
  id: 'screens-fit-desk',
  group: 'furniture',
  title: 'Screens on the desk',
  question: 'Do the screens fit on the desk, and beside each other?',
  computes:
    'Each screen as it stands, turned as it is: how far it reaches past the ends and edges of its desk, and how far two screens of that desk reach ' +
    'into one another, from all workstations at it. A screen is taken to be 50 mm deep behind its face.',
  limits:
    'None past an end, unless onto a neighbouring desk, and no two in one place, beyond 1 mm. Over the near or far edge is marginal where the ' +
    'middle of the screen is on the desk or the screen hangs on an arm.',
  sources: [
    { name: 'geometry', says: 'Two screens cannot stand in one place.', read: 'derived' },
    { name: 'common practice, no source', says: 'A screen is about 50 mm deep.', read: 'own bound' },
  ],
  strength: 'medium',
  restsOn: ['aspect'],
  unpublished:
    'whether screens fit on a desk and beside each other is geometry; how deep a screen is, is common practice',
  unit: 'mm',
  example: {
    fires: `desk Left { width 36in  depth 27in  height 40in }
operator Noor { stature 5'3" }
monitor Cues { diagonal 24in }
monitor Lyrics { diagonal 24in }
workstation Sound {
  desk Left  operators Noor
  monitor Cues { setback 20in  at 10in  bottom 4in above desk }
  monitor Lyrics { setback 20in  at 26in  bottom 4in above desk }
}
`,
    passes: `desk Left { width 48in  depth 27in  height 40in }
operator Noor { stature 5'3" }
monitor Cues { diagonal 24in }
monitor Lyrics { diagonal 24in }
workstation Sound {
  desk Left  operators Noor
  monitor Cues { setback 20in  at 12in  bottom 4in above desk }
  monitor Lyrics { setback 20in  at 36in  bottom 4in above desk }
}
`,
  },
  find: (scene) => scene.booth.desks.flatMap((desk) => judge(scene, desk)),
};

/** A screen on its desk: along the desk and away from the near edge, and from its lower to its upper edge. */
interface Stood {
  readonly view: View;
  readonly body: Polygon;
  readonly face: Polygon;
  readonly low: Millimetres;
  readonly high: Millimetres;
}

/** A desk on its own: from its left end along the near edge, and away from it. */
const OWN: Frame = { origin: { x: 0, y: 0 }, right: { x: 1, y: 0 }, forward: { x: 0, y: 1 } };

function judge(scene: Scene, desk: Desk): FindingDraft[] {
  const stations = stationsAt(scene.stations, desk.name);
  const seen = stations.map((station) => ({ station, ...viewsAt(station) }));
  const unplaced = seen.flatMap(({ gaps }) =>
    gaps.map(({ use, missing: lack }) =>
      cannotSay(
        { kind: 'monitor', name: use.monitor.name },
        say`Cannot say whether ${use.monitor.name} fits on ${desk.name}.`,
        lack,
        use.monitor.origin,
      ),
    ),
  );
  const screens = seen.flatMap(({ station, views }) => views.map((view) => stood(station, desk, view)));
  if (screens.length === 0) return unplaced;
  const subject = { kind: 'desk', name: desk.name } as const;
  if (!desk.width || !desk.depth) {
    const lack = desk.width
      ? missing('depth', `desk ${desk.name}`, 'depth 27in', desk.origin)
      : missing('width', `desk ${desk.name}`, 'width 60in', desk.origin);
    return [
      ...unplaced,
      cannotSay(subject, say`Cannot say whether the screens fit on ${desk.name}.`, lack, desk.origin),
    ];
  }
  const size = { width: desk.width.value, depth: desk.depth.value };
  const faults = [
    ...screens.flatMap((screen) => pastEnds(scene, desk, screen, size)),
    ...screens.flatMap((screen) => pastEdges(scene, desk, screen, size)),
    ...collisions(scene, screens),
  ];
  if (faults.length > 0) return [...unplaced, ...faults];
  const passed: FindingDraft = {
    subject,
    verdict: 'pass',
    message: say`The screens on ${desk.name} fit: ${screens.map(({ view }) => say`${view.name} ${scene.length(view.size.width)} wide`).join(', ')}, on ${scene.length(size.width)}.`,
    origin: desk.origin,
    assumptions: [assumed(scene)],
  };
  return [...unplaced, passed];
}

function stood(station: Station, desk: Desk, view: View): Stood {
  const along = placeAlong(station) + view.aside;
  const away = station.workstation.lean.value + view.ahead;
  const facing = radians(view.bearing + view.swing);
  const half = view.size.width / 2;
  const at = (side: number, back: number) =>
    pointIn(
      OWN,
      along + side * Math.cos(facing) + back * Math.sin(facing),
      away - side * Math.sin(facing) + back * Math.cos(facing),
    );
  const height = desk.height?.value.min ?? 0;
  return {
    view,
    face: [at(-half, 0), at(half, 0)],
    body: [at(-half, 0), at(half, 0), at(half, BODY), at(-half, BODY)],
    low: linesOf(view, height, 'lowest').bottom,
    high: linesOf(view, height, 'highest').top,
  };
}

interface Size {
  readonly width: Millimetres;
  readonly depth: Millimetres;
}

function pastEnds(scene: Scene, desk: Desk, { view, face }: Stood, { width }: Size): FindingDraft[] {
  const over = face
    .filter(({ x }) => x < 0 || x > width)
    .filter((point) => !isOnNeighbour(scene, desk, point))
    .map(({ x }) => (x < 0 ? { by: -x, end: 'left' } : { by: x - width, end: 'right' }));
  const most = over.reduce((worst, one) => (one.by > worst.by ? one : worst), { by: 0, end: 'left' });
  if (most.by <= TOLERANCE) return [];
  return [
    fault(
      scene,
      view,
      most.by,
      'fail',
      most.end === 'left'
        ? say`${view.name} is ${scene.length(view.size.width)} wide and reaches ${scene.length(most.by)} past the left end of ${desk.name}. Move it, or take a wider desk.`
        : say`${view.name} is ${scene.length(view.size.width)} wide and reaches ${scene.length(most.by)} past the right end of ${desk.name}. Move it, or take a wider desk.`,
    ),
  ];
}

/** A desk that stands right beside this one carries what reaches over. */
function isOnNeighbour(scene: Scene, desk: Desk, point: PlanPoint): boolean {
  const frame = scene.layout.frames.get(desk.name);
  if (!frame) return false;
  const place = pointIn(frame, point.x, point.y);
  const box = { left: place.x - 2, right: place.x + 2, near: place.y - 2, far: place.y + 2 };
  return piecesNear(scene.layout.deskPieces, box).some(
    ({ name, outline }) => name !== desk.name && distanceBetween(outline, [place]) <= TOLERANCE,
  );
}

function pastEdges(scene: Scene, desk: Desk, { view, face }: Stood, { depth }: Size): FindingDraft[] {
  const far = Math.max(...face.map(({ y }) => y)) - depth;
  const near = -Math.min(...face.map(({ y }) => y));
  const by = Math.max(far, near);
  if (by <= TOLERANCE) return [];
  const middle = (face[0]!.y + face[1]!.y) / 2;
  const onArm = view.use.rating !== undefined || isAdjustable(view);
  const held = onArm || (middle >= -TOLERANCE && middle <= depth + TOLERANCE);
  const fact =
    far >= near
      ? say`${view.name} reaches ${scene.length(by)} over the far edge of ${desk.name}.`
      : say`${view.name} reaches ${scene.length(by)} over the near edge of ${desk.name}.`;
  const advice = held
    ? say`See that nobody runs into it.`
    : say`Nothing holds it there: bring it onto the desk, or hang it on an arm and say so with \`arm\`.`;
  return [fault(scene, view, by, held ? 'marginal' : 'fail', `${fact} ${advice}`)];
}

/** A screen that two workstations watch is one screen. */
function collisions(scene: Scene, screens: readonly Stood[]): FindingDraft[] {
  return screens.flatMap((screen, index) =>
    screens.slice(0, index).flatMap((other): FindingDraft[] => {
      if (screen.view.name === other.view.name) return [];
      if (Math.min(screen.high, other.high) - Math.max(screen.low, other.low) <= TOLERANCE) return [];
      if (penetration(screen.body, other.body) <= TOLERANCE) return [];
      const depth = overlapOf(screen, other);
      const message = say`${screen.view.name} and ${other.view.name} stand in one place: they overlap by ${scene.length(depth)}. Move them apart, or set one above the other.`;
      return [
        {
          ...fault(scene, screen.view, depth, 'fail', message),
          related: [{ origin: other.view.use.monitor.origin, message: say`${other.view.name} stands here too` }],
        },
      ];
    }),
  );
}

/** What parts them: moved back or forward, or, if they stand in one line, sideways. */
function overlapOf(screen: Stood, other: Stood): Millimetres {
  const depth = penetration(screen.body, other.body);
  if (depth < BODY - TOLERANCE) return depth;
  const [from, to] = screen.face as readonly [PlanPoint, PlanPoint];
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const [left, right] = spanAlong(screen.body, along);
  const [otherLeft, otherRight] = spanAlong(other.body, along);
  return Math.min(right - otherLeft, otherRight - left);
}

function fault(scene: Scene, view: View, by: Millimetres, verdict: 'fail' | 'marginal', message: string): FindingDraft {
  return {
    subject: { kind: 'monitor', name: view.name },
    verdict: exactVerdict(false, verdict === 'marginal'),
    measured: by,
    limit: 0,
    margin: -by,
    message,
    origin: view.use.monitor.origin,
    assumptions: [assumed(scene)],
  };
}

function assumed(scene: Scene): string {
  return say`a screen is ${scene.length(BODY)} deep behind its face`;
}
