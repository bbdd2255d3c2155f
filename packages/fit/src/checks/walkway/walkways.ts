import type { Missing } from '../../assessment.js';
import type { Walkway } from '../../booth.js';
import type { ClearWidth } from '../../layout/clear-width.js';
import type { Scene } from '../../scene/scene.js';
import { missing } from '../../stations/station.js';

export function subjectOf({ name }: Walkway) {
  return { kind: 'walkway', name } as const;
}

/** The clear width as a sum: each part in the reader's unit. */
export function termsOf(scene: Scene, { from, seat, projection, clear, between }: ClearWidth): string {
  return (
    `${scene.length(from)} from ${between[0]} to ${between[1]} − ${scene.length(seat)} occupied seat − ` +
    `${scene.length(projection)} in the way = ${scene.length(clear)}`
  );
}

export function lacksServes(walkway: Walkway): Missing {
  return missing('serves', `walkway ${walkway.name}`, 'serves 60', walkway.origin);
}

/** What the file must say before both sides of a walkway have a place; `what` is the side that has none. */
export function lacksSide(walkway: Walkway, what: string | undefined): Missing {
  switch (what) {
    case undefined:
      return missing('between', `walkway ${walkway.name}`, 'between booth and back-wall', walkway.origin);
    case 'seating':
      return missing('first', 'seating', 'first 3ft', walkway.origin);
    case 'stage':
      return missing('edge', 'stage', 'edge 55ft', walkway.origin);
    case 'right wall':
      return missing('width', 'room', 'width 40ft', walkway.origin);
    case 'stage wall':
      return missing('depth', 'room', 'depth 66ft', walkway.origin);
    default:
      return missing('place', `the file, for ${what}`, 'place Left at 14ft, 6ft', walkway.origin);
  }
}
