import type { Booth, Placement, Walkway } from '../booth.js';
import { INCH } from '../units.js';
import { aBooth, aDesk, anOperator, aPlacement, aRoom, aSeat, aStation, given } from './booths.js';
import { aWalkway } from './floor.js';

/** A seated desk whose near edge is `y` from the back wall. */
export function behind(y: number, walkway: Partial<Walkway> = {}, parts: Partial<Booth> = {}): Booth {
  return aBooth({
    show: 'in',
    room: aRoom(10_000, 20_000),
    operators: [anOperator('Noor', { stature: 1630 })],
    desks: [aDesk('Left', 1040, { depth: given(27 * INCH) })],
    seats: [aSeat('Tall', 750)],
    workstations: [aStation('Sound', 'Left', 'Tall', ['Noor'])],
    placements: [aPlacement(['Left'], 3000, y)],
    walkways: [aWalkway('Behind', ['booth', 'back-wall'], { serves: given(20), ...walkway })],
    ...parts,
  });
}

/** Bare desks, placed one by one, and one walkway. */
export function bare(placements: readonly Placement[], walkway: Walkway, parts: Partial<Booth> = {}): Booth {
  const names = [...new Set(placements.flatMap(({ pieces }) => pieces.map(({ name }) => name)))];
  return aBooth({
    room: aRoom(10_000, 20_000),
    desks: names.map((name) => aDesk(name, 740, { width: given(1500), depth: given(700) })),
    placements,
    walkways: [walkway],
    ...parts,
  });
}
