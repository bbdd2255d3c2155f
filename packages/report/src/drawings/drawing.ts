import type { Verdict } from '@boothwright/fit';

/**
 * A drawing as plain data. Places are millimetres of the world, the second one up: away from the back wall in a plan, above the floor in a
 * side view. Sizes of texts and marks are units of the paper; a unit is a CSS pixel when the drawing is shown at its own size.
 */
export interface Drawing {
  readonly kind: 'booth-plan' | 'room-plan' | 'side' | 'section';
  readonly title: string;
  /** What is to be seen, in two or three sentences, for who cannot see it. */
  readonly description: string;
  readonly sheet: Sheet;
  /** In the order in which they are drawn. */
  readonly pieces: readonly Piece[];
  /** The figures that the drawing shows, as a list. */
  readonly facts: readonly Fact[];
  /** Labels for which the paper had no place left. */
  readonly omitted: readonly string[];
}

/** The part of the world on the paper. */
export interface Sheet {
  /** The world at the paper's upper left corner. */
  readonly left: number;
  readonly top: number;
  /** Millimetres of the world for one unit of the paper. */
  readonly scale: number;
  /** Of the paper, in units. */
  readonly width: number;
  readonly height: number;
}

/** What belongs together: a desk, a person, a dimension. */
export interface Piece {
  readonly kind: string;
  /** The name that the booth file gives it. */
  readonly name?: string;
  /** The workstation where it stands, where its name alone does not say. */
  readonly station?: string;
  readonly verdict?: Verdict;
  readonly shapes: readonly Shape[];
}

export type Shape = PathShape | SilhouetteShape | CircleShape | TextShape | MarkShape;

/** A point of the world: x to the right, y up. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface PathShape {
  readonly shape: 'path';
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly looks: readonly Look[];
}

/** Closed outlines that overlap and are seen as one: lines inside it do not show. */
export interface SilhouetteShape {
  readonly shape: 'silhouette';
  readonly outlines: readonly (readonly Point[])[];
  readonly looks: readonly Look[];
}

export interface CircleShape {
  readonly shape: 'circle';
  readonly centre: Point;
  readonly radius: number;
  readonly looks: readonly Look[];
}

export interface TextShape {
  readonly shape: 'text';
  /** Where the text's baseline starts, or its middle or end. */
  readonly at: Point;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly text: string;
  readonly looks: readonly Look[];
}

/** The sign of a verdict: it differs by shape, not by colour alone. */
export interface MarkShape {
  readonly shape: 'mark';
  readonly at: Point;
  readonly verdict: Verdict;
}

/** How something is drawn: the weight of a line, its dashes, its tone, what fills an area, the weight of a text. */
export type Look =
  | 'hair'
  | 'thin'
  | 'medium'
  | 'thick'
  | 'dashed'
  | 'dotted'
  | 'chain'
  | 'soft'
  | 'faint'
  | 'fill-paper'
  | 'fill-wash'
  | 'fill-body'
  | 'fill-solid'
  | 'gap'
  | 'no-line'
  | 'strong'
  | Verdict;

export interface Fact {
  readonly what: string;
  readonly value: string;
  readonly verdict?: Verdict | undefined;
}

/** Size of texts in units of the paper, and from one line to the next. */
export const TEXT_SIZE = 12;
export const LINE_HEIGHT = 14.5;
export const MARK_SIZE = 11;
