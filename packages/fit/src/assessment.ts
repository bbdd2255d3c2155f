import type { Booth, Origin, PlanPoint, Posture } from './booth.js';
import type { Share } from './units.js';

export type Verdict = 'pass' | 'marginal' | 'fail' | 'unknown';
export type MeasureUnit = 'mm' | 'deg' | 'arcmin' | 'kg' | 'count' | 'ratio';

/** What one check says of one subject. */
export interface Finding {
  readonly check: string;
  readonly subject: Subject;
  /** The operator or crowd it concerns. */
  readonly operator?: string;
  readonly posture?: Posture;
  readonly verdict: Verdict;
  /** What was computed, in `unit`; for an uncertain body, of its median. */
  readonly measured?: number;
  /** The nearer bound that decides, in `unit`. */
  readonly limit?: number;
  /** How far inside the bound (positive) or beyond it (negative), in `unit`. */
  readonly margin?: number;
  readonly unit?: MeasureUnit;
  /** The share of people, given all that is known of them, who meet the preferred band. */
  readonly share?: Share;
  /** The share who meet the outer limit. */
  readonly shareAtLimit?: Share;
  /** What is so, why it matters, what to do: plain sentences in the reader's units. */
  readonly message: string;
  /** The computation, term by term: '62 in to the wall − 19 in occupied seat = 43 in'. */
  readonly terms?: string;
  /** The short name of the limit's source, with edition and section. */
  readonly source: string;
  /** The word that warns of a weak figure, if it is one. */
  readonly strength: Strength;
  readonly caution?: string;
  /** The smallest text to point at. */
  readonly origin?: Origin;
  readonly related: readonly Related[];
  readonly remedies: readonly Remedy[];
  /** Verdict `unknown`: what to add, and where. */
  readonly missing?: Missing;
  /** Defaults that the result rests on. */
  readonly assumptions: readonly string[];
  /** The reason with which the file accepts this finding. */
  readonly accepted?: string;
}

export type Strength = 'strong' | 'medium' | 'weak' | 'from memory' | 'common practice, no source';

export interface Subject {
  readonly kind:
    | 'booth'
    | 'room'
    | 'operator'
    | 'desk'
    | 'seat'
    | 'monitor'
    | 'workstation'
    | 'control'
    | 'walkway'
    | 'rack'
    | 'skirt'
    | 'platform'
    | 'cable'
    | 'wheelchair-space';
  readonly name: string;
}

export interface Related {
  readonly origin: Origin;
  readonly message: string;
}

export interface Missing {
  /** The property as the language spells it. */
  readonly property: string;
  /** Whose property: a kind and a name, as in 'desk Left'. */
  readonly of: string;
  /** A value to start from, as it would be typed. */
  readonly example: string;
  /** The declaration that lacks it. */
  readonly origin?: Origin;
}

/** A computed change that would make the finding pass. */
export interface Remedy {
  /** Says the effect: 'Lower the desk to 41 1/4 in: suits Noor and Tobias'. */
  readonly title: string;
  /** Replace the text at each origin. Empty for advice that is no change of one number. */
  readonly changes: readonly { readonly origin: Origin; readonly text: string }[];
  /** True if taking it cannot make another finding worse for the people named. */
  readonly safe: boolean;
}

/** The joint event: everything the file says about one posture holds for a person at once. */
export interface Served {
  readonly who: string;
  readonly posture: Posture;
  readonly share: Share;
  readonly shareAtLimit: Share;
  /** A crowd's `cover`; absent for an operator. */
  readonly cover?: Share;
  readonly verdict: Verdict;
}

export interface WorkstationFigures {
  readonly name: string;
  readonly origin: Origin;
  readonly served: readonly Served[];
}

export interface WalkwayFigures {
  readonly name: string;
  readonly origin: Origin;
  /** Clear width, millimetres; absent if it cannot be said. */
  readonly clear?: number;
  readonly terms?: string;
}

/** What a predicted or measured body dimension is. Millimetres, weight in kilograms. */
export interface DimensionFigures {
  readonly dimension: string;
  readonly mean: number;
  readonly sd: number;
  readonly p5: number;
  readonly p50: number;
  readonly p95: number;
  readonly measured: boolean;
}

export interface OperatorFigures {
  readonly name: string;
  readonly origin: Origin;
  /** How likely the body is a woman's, given what is known. */
  readonly female: Share;
  readonly dimensions: readonly DimensionFigures[];
}

export type Polygon = readonly PlanPoint[];

/** A piece as it stands in the plan. */
export interface PlacedPiece {
  readonly name: string;
  readonly kind: 'desk' | 'rack' | 'column' | 'platform';
  readonly outline: Polygon;
  readonly origin: Origin;
}

export interface LayoutFigures {
  readonly room?: { readonly width: number; readonly depth: number };
  readonly pieces: readonly PlacedPiece[];
  /** Floor taken by people on seats, by workstation. */
  readonly occupied: readonly { readonly workstation: string; readonly outline: Polygon }[];
  readonly doorSwings: readonly { readonly door: string; readonly outline: Polygon }[];
}

/** All findings of a booth, and the figures behind them. Every face renders this and computes nothing. */
export interface Assessment {
  readonly booth: Booth;
  readonly findings: readonly Finding[];
  readonly workstations: readonly WorkstationFigures[];
  readonly walkways: readonly WalkwayFigures[];
  readonly operators: readonly OperatorFigures[];
  readonly layout: LayoutFigures;
}
