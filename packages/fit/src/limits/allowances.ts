import type { Millimetres } from '../units.js';

/**
 * What a comparison allows where 1 mm would be much of the figure, or where the figure is an exception already: half of the
 * last millimetre that a document prints.
 */
export const ROUNDING: Millimetres = 0.5;

/** Ends every finding that rests on a law. */
export const PLANNING_AID =
  'A planning aid, not a code review. Codes differ from place to place: your local building or fire official, and licensed ' +
  'professionals, decide.';
