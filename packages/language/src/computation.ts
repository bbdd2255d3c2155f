import {
  type Advice,
  advise,
  adviseStation,
  assess,
  assessing,
  type Assessment,
  type Booth,
  checks,
  type ChosenProperty,
  type HeightPart,
  remediesOf,
  type Remedy,
  type StationAdvice,
  type Steps,
} from '@boothwright/fit';

/** What the language asks of the computation. */
export interface Computation {
  assess(booth: Booth): Assessment;
  /** The same in steps, for an editor that must not wait for all of it. */
  assessing?(booth: Booth): Steps<Assessment>;
  /** What to change of one property. */
  remediesOf(booth: Booth, property: HeightPart | ChosenProperty): readonly Remedy[];
  /** What would fit everywhere, with curves and what to buy. */
  advise(booth: Booth): Advice;
  /** What would fit at a workstation; nothing if the booth has none of that name. */
  adviseStation(booth: Booth, workstation: string): StationAdvice | undefined;
  /** The ids of all checks, for `accept` and `limit`. */
  readonly checks: readonly string[];
  /** The properties that the checks can choose a value for. */
  readonly chosen?: readonly ChosenProperty[];
  /** The ids of those that a file may hold to a number of its own; all, if it is not said. */
  readonly limits?: readonly string[];
}

/** The checks and the advice of the product. */
export const product: Computation = {
  assess: (booth) => assess(booth),
  assessing: (booth) => assessing(booth),
  remediesOf: (booth, property) => remediesOf(booth, property),
  advise: (booth) => advise(booth),
  adviseStation: (booth, workstation) => adviseStation(booth, workstation),
  checks: checks.map(({ id }) => id),
  chosen: checks.flatMap(({ chooses = [] }) => chooses),
  limits: checks.filter(({ takesLimit }) => takesLimit).map(({ id }) => id),
};
