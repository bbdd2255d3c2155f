import type { PlacedPiece } from '../../assessment.js';
import { piecesNear } from '../../layout/nearby.js';
import { boxOf, penetration, spanAlong } from '../../layout/polygon.js';
import type { Scene } from '../../scene/scene.js';
import { TOLERANCE } from '../../units.js';
import type { Check, FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

export const overlap: Check = {
  id: 'overlap',
  group: 'space',
  title: 'Pieces in one place',
  question: 'Do two pieces occupy one place, or stand outside the room or in a door’s swing?',
  computes:
    'How far two outlines reach into one another, how far a piece reaches past a wall, and into the sweep of a door.',
  limits: 'None may, beyond 1 mm.',
  sources: [{ name: 'geometry', says: 'Two things cannot stand in one place.', read: 'derived' }],
  strength: 'strong',
  unpublished: 'whether two outlines meet is geometry',
  caution: 'A door that cannot open fully can block a way out. Your local fire official decides.',
  unit: 'mm',
  example: {
    fires: `booth "Example" { }
room { width 30ft  depth 40ft }
desk Left { width 60in  depth 27in  height 29in }
desk Right { width 60in  depth 27in  height 29in }
place Left at 10ft, 6ft
place Right at 14ft, 6ft
`,
    passes: `booth "Example" { }
room { width 30ft  depth 40ft }
desk Left { width 60in  depth 27in  height 29in }
desk Right { width 60in  depth 27in  height 29in }
place Left, Right in a row at 10ft, 6ft
`,
  },
  find(scene) {
    const clashes = [...pairs(scene), ...outside(scene), ...inSwings(scene)];
    if (clashes.length > 0 || scene.layout.pieces.length === 0) return clashes;
    return [
      {
        subject: { kind: 'booth', name: scene.booth.name },
        verdict: 'pass',
        message: clear(scene),
        ...(scene.booth.origin && { origin: scene.booth.origin }),
        assumptions: unseen(scene),
      },
    ];
  },
};

function clear({ booth, layout }: Scene): string {
  const many = layout.pieces.length;
  if (!booth.room)
    return many === 1
      ? say`The one placed piece is alone: the file tells of no room.`
      : say`All ${many} placed pieces stand clear of one another. The file tells of no room.`;
  return many === 1
    ? say`The one placed piece stands clear of the walls and of the doors.`
    : say`All ${many} placed pieces stand clear of one another, of the walls and of the doors.`;
}

/** The walls that nothing was held against. */
function unseen({ booth, layout: { walls } }: Scene): readonly string[] {
  if (!booth.room) return [];
  return [
    ...(walls.right === undefined ? [say`nothing stands through the right wall: the room has no width`] : []),
    ...(walls.stage === undefined ? [say`nothing stands through the stage wall: the room has no depth`] : []),
  ];
}

function pairs(scene: Scene): FindingDraft[] {
  const solid = scene.layout.pieces.filter((piece) => piece.kind !== 'platform');
  return solid.flatMap((piece) => {
    const near = piecesNear(solid, boxOf(piece.outline));
    return near.slice(0, near.indexOf(piece)).flatMap((other): FindingDraft[] => {
      const depth = penetration(piece.outline, other.outline);
      if (depth <= TOLERANCE || isTuckedUnder(scene, piece, other)) return [];
      return [
        {
          ...clash(piece, depth),
          message: say`${piece.name} and ${other.name} stand in one place: they overlap by ${scene.length(depth)}. Move one of them.`,
          related: [{ origin: other.origin, message: say`${other.name} stands here too` }],
        },
      ];
    });
  });
}

function isTuckedUnder(scene: Scene, a: PlacedPiece, b: PlacedPiece): boolean {
  return scene.booth.racks.some(
    ({ name, under }) =>
      (name === a.name && under?.desk.name === b.name) || (name === b.name && under?.desk.name === a.name),
  );
}

function outside(scene: Scene): FindingDraft[] {
  const { right, stage } = scene.layout.walls;
  if (!scene.booth.room) return [];
  return scene.layout.pieces.flatMap((piece) => {
    const [left, rightmost] = spanAlong(piece.outline, { x: 1, y: 0 });
    const [back, front] = spanAlong(piece.outline, { x: 0, y: 1 });
    const walls = [
      { wall: say`the left wall`, by: -left },
      { wall: say`the back wall`, by: -back },
      ...(right === undefined ? [] : [{ wall: say`the right wall`, by: rightmost - right }]),
      ...(stage === undefined ? [] : [{ wall: say`the stage wall`, by: front - stage }]),
    ];
    return walls
      .filter(({ by }) => by > TOLERANCE)
      .map(({ wall, by }): FindingDraft => ({
        ...clash(piece, by),
        message: say`${piece.name} stands ${scene.length(by)} through ${wall}. Move it into the room.`,
        related: [{ origin: scene.booth.room!.origin, message: say`the room` }],
      }));
  });
}

function inSwings(scene: Scene): FindingDraft[] {
  return scene.layout.doorSwings.flatMap(({ door, outline }) =>
    scene.layout.pieces.flatMap((piece): FindingDraft[] => {
      const depth = penetration(piece.outline, outline);
      if (depth <= TOLERANCE) return [];
      return [
        {
          ...clash(piece, depth),
          message: say`${piece.name} stands in the swing of the door ${door}, by ${scene.length(depth)}. Move it so that the door opens fully.`,
          related: (scene.booth.room?.doors ?? [])
            .filter(({ name }) => name === door)
            .map(({ origin }) => ({ origin, message: say`the door ${door}` })),
        },
      ];
    }),
  );
}

function clash(piece: PlacedPiece, depth: number) {
  return {
    subject: { kind: piece.kind === 'column' ? 'room' : piece.kind, name: piece.name },
    verdict: 'fail',
    measured: depth,
    limit: 0,
    margin: -depth,
    origin: piece.origin,
  } as const;
}
