import type { Missing } from '../../assessment.js';
import type { Walkway } from '../../booth.js';
import type { ClearWidth } from '../../layout/clear-width.js';
import type { Scene } from '../../scene/scene.js';
import { missing } from '../../stations/station.js';
import { say } from '../../words/say.js';

export function subjectOf({ name }: Walkway) {
  return { kind: 'walkway', name } as const;
}

/** The clear width as a sum: each part in the reader's unit. */
export function termsOf(scene: Scene, { from, seat, projection, clear, between }: ClearWidth): string {
  return say`${scene.length(from)} from ${between[0]} to ${between[1]} − ${scene.length(seat)} occupied seat − ${scene.length(projection)} obstacles = ${scene.length(clear)}`;
}

export function lacksServes(walkway: Walkway): Missing {
  return missing('serves', `walkway ${walkway.name}`, 'serves 60', walkway.origin);
}

/** What the file must say before both sides of a walkway have a place; `what` is the side that has none. */
export function lacksSide(scene: Scene, walkway: Walkway, what: string | undefined): Missing {
  const { room } = scene.booth;
  switch (what) {
    case undefined:
      return missing('between', `walkway ${walkway.name}`, 'between booth and back-wall', walkway.origin);
    case 'seating':
      return missing('first', 'seating', 'first 3ft', room?.seating?.origin);
    case 'stage':
      return missing('edge', 'stage', 'edge 55ft', room?.stage?.origin);
    case 'right wall':
      return missing('width', 'room', 'width 40ft', room?.origin);
    case 'stage wall':
      return missing('depth', 'room', 'depth 66ft', room?.origin);
    default:
      return lacksPiece(scene, what);
  }
}

/** A piece is on the plan if it has a place and a size. */
function lacksPiece({ booth, layout }: Scene, what: string): Missing {
  const pieces = [...booth.desks, ...booth.racks].filter(({ name }) => what === 'booth' || name === what);
  const piece = pieces.find(({ name }) => layout.pieces.every((placed) => placed.name !== name));
  const name = piece?.name ?? what;
  if (!piece || !layout.frames.has(name)) {
    return missing('place', say`the file, for ${name}`, `place ${name} at 14ft, 6ft`, piece?.origin);
  }
  const isRack = booth.racks.some((rack) => rack.name === name);
  const of = `${isRack ? 'rack' : 'desk'} ${name}`;
  return piece.width
    ? missing('depth', of, isRack ? 'depth 20in' : 'depth 27in', piece.origin)
    : missing('width', of, isRack ? 'width 22in' : 'width 60in', piece.origin);
}
