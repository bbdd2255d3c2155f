import type { Missing } from '../assessment.js';
import type { Posture } from '../booth.js';
import type { Demand } from '../stations/demand.js';
import type { Station } from '../stations/station.js';
import type { Millimetres } from '../units.js';

/** A check that holds or does not for one person in one posture, seat and desk set best for them. */
export interface BodyRule {
  readonly posture: Posture;
  /** Rules are taken in this order; a later one cannot undo an earlier one. */
  readonly order: number;
  /** False if the question does not arise at this station. */
  readonly applies?: (station: Station) => boolean;
  /** What the file must say before the question can be answered. */
  readonly lacks: (station: Station) => Missing | undefined;
  readonly demands: (station: Station) => readonly Demand[];
  /** What is so, in a sentence or two, without a closing remedy. */
  readonly says: (reading: Reading) => string;
  /** What the result took for granted. */
  readonly assumes?: (station: Station) => readonly string[];
}

/** One person's value of the demand that decides, for the sentence that says so. */
export interface Reading {
  readonly station: Station;
  /** The operator's name. */
  readonly who: string;
  /** Which of the rule's demands decides. */
  readonly demand: number;
  readonly value: Millimetres;
  /** Outside the preferred band, on which side; undefined inside. */
  readonly side?: 'below' | 'above';
  /** How far outside the preferred band, or how far inside it. */
  readonly by: Millimetres;
  /** A length in the reader's unit. */
  readonly length: (value: Millimetres) => string;
}
