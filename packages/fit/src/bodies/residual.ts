import { normalCdf } from './normal.js';

/** P(residual ≤ x), tabulated: within 1e-6 of the exact value. */
export type ResidualCdf = (x: number) => number;

/** linear·z + quadratic·(z² − 1) of a standard normal z has mean 0, variance 1 and a chosen skewness. */
export interface SkewedShape {
  readonly linear: number;
  readonly quadratic: number;
}

/** Fleishman's power method without its cubic term (Psychometrika 43, 1978), solved by Newton's method. */
export function skewedShape(skewness: number): SkewedShape {
  let quadratic = skewness / 6;
  for (let round = 0; round < 30; round++) {
    const linearSquare = 1 - 2 * quadratic * quadratic;
    const error = 6 * linearSquare * quadratic + 8 * quadratic ** 3 - skewness;
    quadratic -= error / (6 - 12 * quadratic * quadratic);
  }
  return { linear: Math.sqrt(1 - 2 * quadratic * quadratic), quadratic };
}

/** The distribution function of a residual of the given skewness. */
export function residualCdf(skewness: number): ResidualCdf {
  const known = tabulated.get(skewness);
  if (known) return known;
  const shape = skewedShape(skewness);
  const table = Float64Array.from({ length: 2 * REACH * STEPS + 1 }, (_, i) => exactCdf(i / STEPS - REACH, shape));
  const last = table.length - 1;
  const cdf = (x: number) => {
    const position = (x + REACH) * STEPS;
    if (!(position > 0)) return 0;
    if (position >= last) return 1;
    const cell = position | 0;
    const low = table[cell]!;
    return low + (position - cell) * (table[cell + 1]! - low);
  };
  if (tabulated.size >= 500) tabulated.clear();
  tabulated.set(skewness, cdf);
  return cdf;
}

const tabulated = new Map<number, ResidualCdf>();
const REACH = 8;
const STEPS = 256;

function exactCdf(x: number, { linear, quadratic }: SkewedShape): number {
  if (Math.abs(quadratic) < 1e-12) return normalCdf(x);
  const discriminant = linear * linear + 4 * quadratic * (quadratic + x);
  if (discriminant <= 0) return quadratic > 0 ? 0 : 1;
  return normalCdf((Math.sqrt(discriminant) - linear) / (2 * quadratic));
}
