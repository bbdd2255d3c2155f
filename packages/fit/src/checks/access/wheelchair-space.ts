import type { Related } from '../../assessment.js';
import type { FloorArea, Polygon } from '../../booth.js';
import { boothObstacles } from '../../layout/clear-width.js';
import { areaOutline } from '../../layout/layout.js';
import { penetration, rectangleIn, frameAt, spanAlong } from '../../layout/polygon.js';
import { PLANNING_AID } from '../../limits/allowances.js';
import type { Scene } from '../../scene/scene.js';
import { missing } from '../../stations/station.js';
import { INCH, TOLERANCE, type Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

/** An accessible route, 2010 ADA Standards 403.5.1. */
const ROUTE = 36 * INCH;

export const wheelchairSpace: Check = {
  id: 'wheelchair-space',
  group: 'access',
  title: 'Wheelchair spaces kept free',
  question: 'Does the booth stay out of the wheelchair spaces, and out of the way to them?',
  computes:
    'How far desks, racks, platforms and the people who sit at desks reach into a wheelchair space; and whether a side of the space is left ' +
    'with 914 mm (36 in) of free floor beside it.',
  limits: 'None may reach in, beyond 1 mm; and one side at least stays free.',
  sources: [
    {
      name: '28 CFR 35.151(g)(3) and 36.406(f)(3)',
      says: 'Wheelchair spaces are not on, nor obstructed by, temporary platforms or other movable structures.',
      read: 'in a secondary source',
    },
    {
      name: '2010 ADA Standards 802.1.4 and 802.1.5',
      says: 'Wheelchair spaces adjoin an accessible route, and neither overlaps the other.',
      read: 'in a secondary source',
    },
  ],
  strength: 'strong',
  caution: `A space that is taken may have to be made up for elsewhere. ${PLANNING_AID}`,
  unit: 'mm',
  example: {
    fires: `booth "Example" { limits us }
room { width 30ft  depth 40ft  wheelchair-space RowA { at 13ft, 6ft } }
desk Left { width 60in  depth 27in  height 40in }
place Left at 10ft, 6ft
`,
    passes: `booth "Example" { limits us }
room { width 30ft  depth 40ft  wheelchair-space RowA { at 20ft, 6ft } }
desk Left { width 60in  depth 27in  height 40in }
place Left at 10ft, 6ft
`,
  },
  find: (scene) => (scene.booth.room?.wheelchairSpaces ?? []).map((space) => judge(scene, space)),
};

interface Thing {
  /** The piece’s name. */
  readonly of: string;
  readonly what: string;
  readonly outline: Polygon;
}

function judge(scene: Scene, space: FloorArea): FindingDraft {
  const subject = { kind: 'wheelchair-space', name: space.name } as const;
  const outline = areaOutline(space);
  if (!outline) {
    const lack = missing('at', `wheelchair-space ${space.name}`, 'at 6ft, 20ft', space.origin);
    return cannotSay(subject, say`Cannot say whether ${space.name} stays free.`, lack, space.origin);
  }
  const booth = boothThings(scene);
  const reaching = booth
    .map(({ of, what, outline: other }) => ({ of, what, depth: penetration(outline, other) }))
    .filter(({ depth }) => depth > TOLERANCE)
    .sort((a, b) => b.depth - a.depth)[0];
  const common = { subject, origin: space.origin };
  if (reaching) {
    return {
      ...common,
      verdict: 'fail',
      measured: reaching.depth,
      limit: 0,
      margin: -reaching.depth,
      message:
        reaching.what === reaching.of
          ? say`${reaching.what} takes ${scene.length(reaching.depth)} of the wheelchair space ${space.name}. Move it out.`
          : say`Whoever sits at ${reaching.of} takes ${scene.length(reaching.depth)} of the wheelchair space ${space.name}. Move the seat out.`,
      related: placesOf(scene, reaching.of),
    };
  }
  const sides = sidesOf(outline).map((side) => blockersOf(scene, space, side, booth));
  const closers = [...new Set(sides.flatMap(([first]) => first ?? []))];
  if (sides.every((blockers) => blockers.length > 0) && booth.some(({ what }) => closers.includes(what))) {
    return {
      ...common,
      verdict: 'fail',
      message: say`No side of the wheelchair space ${space.name} has ${scene.length(ROUTE)} of free floor beside it: ${closers.join(', ')} close it in. Leave a way to it.`,
      source: `2010 ADA Standards 802.1.4 and 802.1.5`,
    };
  }
  return {
    ...common,
    verdict: 'pass',
    message: say`The booth stays out of the wheelchair space ${space.name}, and leaves a way to it.`,
  };
}

/** Where the piece is declared that stands in the way. */
function placesOf({ layout }: Scene, piece: string): readonly Related[] {
  return layout.pieces
    .filter(({ name }) => name === piece)
    .map(({ name, origin }) => ({ origin, message: say`${name} stands there` }));
}

/** The booth's pieces with the people who sit at them, and its platforms. */
function boothThings(scene: Scene): readonly Thing[] {
  const platforms = scene.layout.pieces.filter(({ kind }) => kind === 'platform');
  return [
    ...boothObstacles(scene).flatMap(({ what, bare, outline }) => [
      { of: what, what, outline: bare },
      ...(outline === bare ? [] : [{ of: what, what: say`the seat at ${what}`, outline }]),
    ]),
    ...platforms.map(({ name, outline }) => ({ of: name, what: name, outline })),
  ];
}

/** What stands in the strip of floor beside one side, the booth's things first. */
function blockersOf(scene: Scene, space: FloorArea, strip: Polygon, booth: readonly Thing[]): string[] {
  const columns = scene.layout.pieces.filter(({ kind }) => kind === 'column');
  const others = (scene.booth.room?.wheelchairSpaces ?? []).filter(({ name }) => name !== space.name);
  const things: Pick<Thing, 'what' | 'outline'>[] = [
    ...booth,
    ...columns.map(({ name, outline }) => ({ what: name, outline })),
    ...others.flatMap((other) => {
      const outline = areaOutline(other);
      return outline ? [{ what: other.name, outline }] : [];
    }),
  ];
  const inside = things.filter(({ outline }) => penetration(outline, strip) > TOLERANCE).map(({ what }) => what);
  return [...inside, ...wallsIn(scene, strip)];
}

function wallsIn(scene: Scene, strip: Polygon): string[] {
  const { width, depth } = scene.booth.room!;
  const [left, right] = spanAlong(strip, { x: 1, y: 0 });
  const [back, front] = spanAlong(strip, { x: 0, y: 1 });
  const over: [string, Millimetres][] = [
    [say`the left wall`, -left],
    [say`the back wall`, -back],
    [say`the right wall`, width ? right - width.value : 0],
    [say`the stage wall`, depth ? front - depth.value : 0],
  ];
  return over.filter(([, by]) => by > TOLERANCE).map(([wall]) => wall);
}

/** The strip of a route's width beside each of its four sides. */
function sidesOf(outline: Polygon): Polygon[] {
  const frame = frameAt(outline[0]!, 0);
  const width = outline[1]!.x - outline[0]!.x;
  const depth = outline[3]!.y - outline[0]!.y;
  return [
    rectangleIn(frame, [0, width], [-ROUTE, 0]),
    rectangleIn(frame, [0, width], [depth, depth + ROUTE]),
    rectangleIn(frame, [-ROUTE, 0], [0, depth]),
    rectangleIn(frame, [width, width + ROUTE], [0, depth]),
  ];
}
