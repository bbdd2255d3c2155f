import type { Degrees, Millimetres } from '../units.js';
import type { Given, Named, Origin, PlanPoint, Reference } from './given.js';
import type { WallName } from './room.js';

/** Something a walkway runs along: a wall, the booth as a whole, or one piece. */
export type Side =
  | { readonly kind: 'landmark'; readonly name: WallName | 'booth' | 'stage' | 'seating'; readonly origin: Origin }
  | { readonly kind: 'piece'; readonly name: string; readonly origin: Origin };

export interface Walkway extends Named {
  readonly between?: readonly [Side, Side];
  /** How many people may need it at once. */
  readonly serves?: Given<number>;
  readonly users: Given<'public' | 'operators'>;
  readonly seats: Given<'none' | 'one-side' | 'both-sides'>;
  /** The walkway turns back round the booth's end. */
  readonly turns: boolean;
  /** Clear width beside the booth's end, where the walkway turns, if something narrows it that the plan does not show. */
  readonly atTurn?: Given<Millimetres>;
  /** Clear width after the turn, if something narrows it that the plan does not show. */
  readonly afterTurn?: Given<Millimetres>;
  /** Floor to the lowest thing overhead: a beam, a balcony, a cable. */
  readonly headroom?: Given<Millimetres>;
  /** Short narrow points that the plan does not show. */
  readonly pinches?: readonly Pinch[];
  /** What sticks out into the walkway from one of its sides, and the plan does not show. */
  readonly projections?: readonly Projection[];
}

/** A short narrow point of a walkway. */
export interface Pinch {
  readonly origin: Origin;
  /** Along the walkway, from wherever it is counted to where the pinch begins. */
  readonly at?: Given<Millimetres>;
  /** Clear width. */
  readonly width?: Given<Millimetres>;
  /** Along the walkway. */
  readonly length?: Given<Millimetres>;
}

/** Something that sticks out into a walkway, off the floor. */
export interface Projection {
  readonly origin: Origin;
  /** Floor to its lower edge. */
  readonly height?: Given<Millimetres>;
  /** How far it sticks out. */
  readonly reach?: Given<Millimetres>;
}

export interface Platform extends Named {
  readonly at?: Given<PlanPoint>;
  readonly width?: Given<Millimetres>;
  readonly depth?: Given<Millimetres>;
  readonly height?: Given<Millimetres>;
  readonly guard?: Given<Millimetres>;
  readonly steps?: {
    readonly origin: Origin;
    readonly risers?: Given<number>;
    readonly tread?: Given<Millimetres>;
    readonly handrail: boolean;
  };
  readonly ramp?: {
    readonly origin: Origin;
    readonly length?: Given<Millimetres>;
    readonly width?: Given<Millimetres>;
  };
}

export interface Cable extends Named {
  readonly across?: Reference;
  readonly height?: Given<Millimetres>;
  readonly cover: Given<'none' | 'bevelled' | 'ramp'>;
  /** Length of the slope on each side of a ramped cover. */
  readonly slope?: Given<Millimetres>;
}

/** Pieces on the floor: one piece, or several end to end along their near edges from left to right. */
export interface Placement {
  readonly pieces: readonly Reference[];
  readonly origin: Origin;
  /** The near left corner of the first piece. */
  readonly at: Given<PlanPoint>;
  /** Which way their operators face, turned from the stage to the right. */
  readonly turn: Given<Degrees>;
}
