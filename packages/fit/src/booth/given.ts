import type { Millimetres } from '../units.js';

/** A zero-based place in a text; `character` counts UTF-16 units. */
export interface TextPosition {
  readonly line: number;
  readonly character: number;
}

/** Where in which text something was said. */
export interface Origin {
  readonly uri: string;
  readonly start: TextPosition;
  readonly end: TextPosition;
}

/** A value, where it was said, and whether nobody said it. */
export interface Given<T> {
  readonly value: T;
  /** The value's own text; absent for a default. */
  readonly origin?: Origin;
  /** True if the file is silent and the value is the language's default. */
  readonly isDefault: boolean;
}

export interface Named {
  readonly name: string;
  /** The place of the name in its declaration. */
  readonly origin: Origin;
}

/** A name used, and where. */
export interface Reference {
  readonly name: string;
  readonly origin: Origin;
}

export interface PlanPoint {
  readonly x: Millimetres;
  readonly y: Millimetres;
}

/** Corners on the plan, in order round the outline. */
export type Polygon = readonly PlanPoint[];
