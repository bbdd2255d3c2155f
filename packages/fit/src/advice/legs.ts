import { quantileOf } from '../bodies/people.js';
import type { Person } from '../stations/station.js';
import type { Millimetres, Range } from '../units.js';

/** Seat not too high and not too low: the preferred bands together allow this much. */
export const LEG_PLAY: Millimetres = 50;

export interface Leg {
  readonly person: Person;
  /** From the sole of the shoe to the underside of the thigh. */
  readonly length: Millimetres;
}

/** An operator's own legs, or the shortest and longest that a crowd's cover includes. */
export function legsOf(person: Person, shoe: Millimetres): readonly Leg[] {
  if (person.kind === 'operator') return [{ person, length: person.dimensions.poplitealHeight + shoe }];
  const column = person.people.column('poplitealHeight');
  const tail = (1 - person.wanted) / 2;
  return [tail, 1 - tail].map((p) => ({ person, length: quantileOf(person.people, column, p) + shoe }));
}

/** Drops of a foot ring below the seat that suit all legs; if none does, `min` is greater than `max`. */
export function dropsFor(legs: readonly Leg[]): Range {
  const lengths = legs.map(({ length }) => length);
  return { min: Math.max(...lengths) - LEG_PLAY, max: Math.min(...lengths) };
}

/** The drop that suits a leg best. */
export function dropFor({ length }: Leg): Millimetres {
  return length - LEG_PLAY / 2;
}
