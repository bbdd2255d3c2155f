import { referenceSource, type DimensionFigures, type OperatorFigures } from '@boothwright/fit';
import { dimensionTitle } from '../titles.js';
import { capital, type Units } from '../words.js';

export const bodiesMean = `Bare feet, erect. A measured figure stands alone. A predicted one is the middle of its range; below it stands the range that holds 90 of 100 people of whom as much is known. Predicted from ${referenceSource}.`;

export interface BodyRow {
  readonly dimension: string;
  /** In the order of the operators; undefined where nothing is known. */
  readonly figures: readonly (FigureTold | undefined)[];
}

export interface FigureTold {
  readonly value: string;
  /** 'measured', or the range of a prediction. */
  readonly certainty: string;
  readonly measured: boolean;
}

/** What each person's body was taken to be, a row for each dimension. */
export function tellBodies(operators: readonly OperatorFigures[], units: Units): readonly BodyRow[] {
  const dimensions = [...new Set(operators.flatMap((person) => person.dimensions.map(({ dimension }) => dimension)))];
  return dimensions.map((dimension) => ({
    dimension: capital(dimensionTitle(dimension)),
    figures: operators.map((person) => {
      const figures = person.dimensions.find((one) => one.dimension === dimension);
      return figures && tellFigure(figures, units);
    }),
  }));
}

function tellFigure({ dimension, p5, p50, p95, measured }: DimensionFigures, { length, range }: Units): FigureTold {
  if (dimension === 'weight') {
    const kilograms = (value: number) => `${Math.round(value)} kg`;
    const certainty = `${Math.round(p5)} to ${kilograms(p95)}`;
    return { value: kilograms(p50), certainty: measured ? 'measured' : certainty, measured };
  }
  return { value: length(p50), certainty: measured ? 'measured' : range({ min: p5, max: p95 }), measured };
}
