import type { Booth, Origin, Polygon, Posture } from './booth.js';
import type { SketchFigures } from './figures/figures.js';
import type { Range, Share } from './units.js';

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
  /** The other checks that wait for the same; this finding asks for all of them. */
  readonly blocks?: readonly string[];
  /** Defaults that the result rests on. */
  readonly assumptions: readonly string[];
  /** What the file does not say and a default supplied: 'shoes of 1 in'. */
  readonly defaults: readonly string[];
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
  /** True if taking it makes no seat or stand finding worse for anyone at the place. */
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

/** A screen as it stands at a workstation, and how far it is from the eyes of the people there. */
export interface ScreenFigures {
  readonly workstation: string;
  readonly monitor: string;
  /** The monitor's name at the workstation. */
  readonly origin: Origin;
  /** From the average eye to the middle of the screen, millimetres; one for each person and posture whose heights are known. */
  readonly distances: readonly { readonly who: string; readonly posture: Posture; readonly distance: number }[];
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
  /** Screens whose place is known; absent if there are none. */
  readonly screens?: readonly ScreenFigures[];
  readonly operators: readonly OperatorFigures[];
  readonly layout: LayoutFigures;
  /** What drawings need. Computed when it is first read; absent from an assessment that nobody can draw. */
  readonly sketch?: SketchFigures;
}

/** What would fit, of one workstation: computed on request, since it costs more than all checks together. */
export interface StationAdvice {
  readonly workstation: string;
  readonly origin: Origin;
  /** The band of each height that suits each person, everything else left as it is. */
  readonly bands: readonly HeightBands[];
  /** What to set, best first: the fewest changes that serve most people. Empty if none serves more than the file does. */
  readonly plans: readonly Plan[];
  /** What no single number can give, and what would. */
  readonly notes: readonly string[];
  readonly curves: readonly Curve[];
}

export type HeightPart = 'desk' | 'seat' | 'ring';

/** For which values of one height a person is served. Millimetres. */
export interface HeightBands {
  /** A screen's height suits by the check of screen heights, the others by all seat and stand checks. */
  readonly part: HeightPart | 'screen';
  /** The desk's, the seat's or the screen's name. */
  readonly of: string;
  readonly each: readonly PersonBand[];
  /** The band that serves every named operator; absent if none does. */
  readonly all?: Range;
}

export interface PersonBand {
  readonly who: string;
  readonly posture: Posture;
  /** Where: a person may use a desk or seat at several. */
  readonly workstation: string;
  /** Absent if no value serves them. */
  readonly band?: Range;
  /** Why there is no band: a check that no value of this height meets, whatever the others do. */
  readonly blockedBy?: string;
  /**
   * `measured`: all that matters was measured, the band is exact. `average`: the band of the average body of what is known.
   * `share`: where the joint share reaches the crowd's cover.
   */
  readonly basis: 'measured' | 'average' | 'share';
}

/** Heights to set together, and whom they serve when put into the file. */
export interface Plan {
  /** `Set the desk Left to 41 1/4 in: serves 1 of 3, most likely Noor too, not Priya`. */
  readonly title: string;
  readonly settings: readonly { readonly part: HeightPart; readonly of: string; readonly value: Range }[];
  readonly changes: readonly { readonly origin: Origin; readonly text: string }[];
  /** Passes every seat and stand check. */
  readonly serves: readonly string[];
  /** The average body passes, but too little is known of the person to be sure. */
  readonly likely: readonly string[];
  readonly leftOut: readonly LeftOut[];
}

export interface LeftOut {
  readonly who: string;
  readonly posture: Posture;
  readonly workstation: string;
  readonly check: string;
  /** By how much the check misses, millimetres; absent for a crowd. */
  readonly by?: number;
  /** Of a crowd: how much of it would be served. */
  readonly share?: Share;
}

/** Share served against one height, everything else as the file says. */
export interface Curve {
  readonly part: HeightPart;
  readonly of: string;
  readonly who: string;
  readonly posture: Posture;
  readonly points: readonly { readonly height: number; readonly share: Share; readonly shareAtLimit: Share }[];
}

/** The one measurement that would settle most of what is undecided about an operator. */
export interface MeasureNext {
  readonly operator: string;
  readonly dimension: string;
  readonly settles: number;
  /** How to take it with a tape, in a sentence. */
  readonly how: string;
}

/** One line of the list that a person takes to a shop. */
export interface ShoppingLine {
  readonly item: string;
  /** What to ask for, in the reader's units. */
  readonly wants: readonly string[];
  /** The workstations that use it. */
  readonly workstations: readonly string[];
}

export interface Advice {
  readonly stations: readonly StationAdvice[];
  readonly measure: readonly MeasureNext[];
  readonly shopping: readonly ShoppingLine[];
}
