import {
  type Advice,
  advise,
  adviseStation,
  assess,
  type Assessment,
  type Booth,
  checks,
  type StationAdvice,
} from '@boothwright/fit';

/** What the language asks of the computation. */
export interface Computation {
  assess(booth: Booth): Assessment;
  /** What would fit everywhere, with curves and what to buy. */
  advise(booth: Booth): Advice;
  /** What would fit at a workstation; nothing if the booth has none of that name. */
  adviseStation(booth: Booth, workstation: string): StationAdvice | undefined;
  /** The ids of all checks, for `accept` and `limit`. */
  readonly checks: readonly string[];
  /** The ids of those that a file may hold to a number of its own; all, if it is not said. */
  readonly limits?: readonly string[];
}

/** The checks and the advice of the product. */
export const product: Computation = {
  assess: (booth) => assess(booth),
  advise: (booth) => advise(booth),
  adviseStation: (booth, workstation) => adviseStation(booth, workstation),
  checks: checks.map(({ id }) => id),
  limits: checks.filter(({ takesLimit }) => takesLimit).map(({ id }) => id),
};
