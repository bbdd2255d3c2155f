import type { DimensionName } from '../bodies/dimensions.js';
import type { Millimetres } from '../units.js';
import { tolerant, type Band, type LinearForm } from './demand.js';

/** What demands bound of a setting: the seat's height S, the desk's D, or D − S. */
export type Settable = 'seat' | 'desk' | 'gap';
/** The same, or nothing that can be set. */
export type Bounded = Settable | 'nothing';

/** A demand on many people: what it bounds lies, for each person, from `min` to `max` less `constant + coefficient · column[person]`. */
export interface Bounds {
  readonly on: Bounded;
  readonly min: Millimetres;
  readonly max: Millimetres;
  readonly constant: Millimetres;
  readonly coefficient: number;
  readonly column: Float64Array;
}

/** What a form bounds, and with what sign. */
export function variableOf({ seat, desk }: LinearForm): { readonly on: Bounded; readonly sign: number } {
  if (desk === 0) return seat === 0 ? { on: 'nothing', sign: 1 } : { on: 'seat', sign: seat };
  return { on: seat === 0 ? 'desk' : 'gap', sign: desk };
}

/** The bounds that keep a form inside a band, with what every comparison allows. `columnOf` has a dimension of each person. */
export function boundsOf(
  form: LinearForm,
  band: Band,
  count: number,
  columnOf: (dimension: DimensionName) => Float64Array,
): Bounds {
  const { on, sign } = variableOf(form);
  const { min, max } = tolerant(band);
  const part = bodyPartOf(form, count, columnOf);
  return {
    on,
    min: sign === 1 ? min : -max,
    max: sign === 1 ? max : -min,
    constant: sign * part.constant,
    coefficient: sign * part.coefficient,
    column: part.column,
  };
}

/** The form's value but for the seat's and the desk's heights, person by person: a column is made only where several are added up. */
export function bodyPartOf(
  { body, constant }: LinearForm,
  count: number,
  columnOf: (dimension: DimensionName) => Float64Array,
): Pick<Bounds, 'constant' | 'coefficient' | 'column'> {
  const [first, ...others] = Object.keys(body) as DimensionName[];
  if (!first) return { constant, coefficient: 0, column: noneOf(count) };
  const column = columnOf(first);
  const coefficient = body[first]!;
  if (others.length === 0) return { constant, coefficient, column };
  const sum = new Float64Array(count);
  for (let person = 0; person < count; person++) sum[person] = constant + coefficient * column[person]!;
  for (const name of others) {
    const next = columnOf(name);
    const times = body[name]!;
    for (let person = 0; person < count; person++) sum[person]! += times * next[person]!;
  }
  return { constant: 0, coefficient: 1, column: sum };
}

let zeros = new Float64Array(0);

function noneOf(count: number): Float64Array {
  if (zeros.length < count) zeros = new Float64Array(count);
  return zeros;
}
