import type { DisplayUnit, Millimetres } from './units.js';
import type { Cable, Placement, Platform, Walkway } from './booth/floor.js';
import type { Desk, Monitor, Rack, Seat, Skirt } from './booth/furniture.js';
import type { Given, Origin } from './booth/given.js';
import type { Acceptance, LimitOverride, LimitProfile } from './booth/limits.js';
import type { Crowd, Operator } from './booth/people.js';
import type { Room } from './booth/room.js';
import type { Workstation } from './booth/workstation.js';

export type * from './booth/floor.js';
export type * from './booth/furniture.js';
export type * from './booth/given.js';
export type * from './booth/limits.js';
export type * from './booth/people.js';
export type * from './booth/room.js';
export type * from './booth/workstation.js';

/**
 * The Booth: what a booth file says, resolved. Lengths are millimetres, names are bound (by name), a default is marked
 * as a default, and every value carries the place in the text that gave it. The computation never reads that place; it
 * only hands it back, so that a face can point at it.
 */
export interface Booth {
  readonly name: string;
  readonly origin?: Origin;
  /** The unit that findings are written in. */
  readonly show: DisplayUnit;
  readonly limits: LimitProfile;
  /** What a shoe adds to every height measured from the floor, standing or seated. */
  readonly shoe: Given<Millimetres>;
  /** What a relaxed sitter loses of erect sitting eye and shoulder height. */
  readonly slump: Given<Millimetres>;
  readonly overrides: readonly LimitOverride[];
  readonly accepted: readonly Acceptance[];
  readonly room?: Room;
  readonly operators: readonly Operator[];
  readonly crowds: readonly Crowd[];
  readonly desks: readonly Desk[];
  readonly seats: readonly Seat[];
  readonly monitors: readonly Monitor[];
  readonly workstations: readonly Workstation[];
  readonly walkways: readonly Walkway[];
  readonly racks: readonly Rack[];
  readonly skirts: readonly Skirt[];
  readonly platforms: readonly Platform[];
  readonly cables: readonly Cable[];
  readonly placements: readonly Placement[];
}
