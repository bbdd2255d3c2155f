import type { Millimetres } from '../units.js';
import type { Given, Named, Origin, PlanPoint } from './given.js';

export type WallName = 'back-wall' | 'left-wall' | 'right-wall' | 'stage-wall';

/** The room. Plan x runs from the left wall, y from the back wall, as an operator who faces the stage sees them. */
export interface Room {
  readonly origin: Origin;
  readonly width?: Given<Millimetres>;
  readonly depth?: Given<Millimetres>;
  readonly height?: Given<Millimetres>;
  readonly occupants?: Given<number>;
  /** Sprinklers throughout. */
  readonly sprinklers: boolean;
  /** An emergency voice and alarm communication system. */
  readonly voiceAlarm: boolean;
  readonly stage?: Stage;
  readonly seating?: Seating;
  readonly balcony?: Balcony;
  readonly doors: readonly Door[];
  readonly columns: readonly Column[];
  readonly wheelchairSpaces: readonly FloorArea[];
  /** People who look at the stage from behind or beside the booth. */
  readonly watchers: readonly Watchers[];
}

export interface Stage {
  readonly origin: Origin;
  /** From the back wall to the stage's front edge. */
  readonly edge?: Given<Millimetres>;
  readonly height?: Given<Millimetres>;
  readonly width?: Given<Millimetres>;
}

export interface Seating {
  readonly origin: Origin;
  /** From the front of the booth to the backs of the nearest row. */
  readonly first?: Given<Millimetres>;
  /** Row to row. */
  readonly pitch?: Given<Millimetres>;
  readonly rows?: Given<number>;
  /** The people there stand at times. */
  readonly standing: boolean;
}

export interface Balcony {
  readonly origin: Origin;
  /** From the back wall to the balcony's front edge. */
  readonly edge?: Given<Millimetres>;
  /** The height of its underside. */
  readonly height?: Given<Millimetres>;
}

export interface Door extends Named {
  readonly wall?: Given<WallName>;
  /** Along the wall from the left wall, or from the back wall, to the opening's nearer side. */
  readonly at?: Given<Millimetres>;
  readonly width?: Given<Millimetres>;
  readonly opens: Given<'in' | 'out'>;
  /** The hinge's side, for a person who stands in the room and faces the door. */
  readonly hinge: Given<'left' | 'right'>;
}

export interface Column extends Named {
  readonly at?: Given<PlanPoint>;
  readonly width?: Given<Millimetres>;
  readonly depth?: Given<Millimetres>;
}

export interface FloorArea extends Named {
  readonly at?: Given<PlanPoint>;
  readonly width: Given<Millimetres>;
  readonly depth: Given<Millimetres>;
}

export interface Watchers extends Named {
  readonly at?: Given<PlanPoint>;
  readonly posture: Given<'sit' | 'stand' | 'wheelchair'>;
}
