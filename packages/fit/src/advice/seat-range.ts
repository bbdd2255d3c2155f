import type { Choice, Place } from '../assess/choices.js';
import { sdOf, type Body } from '../bodies/body.js';
import type { DimensionName } from '../bodies/dimensions.js';
import { quantileOf } from '../bodies/people.js';
import type { Person } from '../stations/station.js';
import { TOLERANCE, type Millimetres, type Range } from '../units.js';
import { openSettings, seatSpan } from './bands.js';

/**
 * The range that a seat must be adjustable over so that each span holds a height of it: from the lowest that the highest-seated
 * could do with, to the highest that the lowest-seated could. Undefined if nobody sits.
 */
export function seatRangeFor(spans: readonly Range[], step: Millimetres): Range | undefined {
  if (spans.length === 0) return undefined;
  const lowest = Math.min(...spans.map(({ max }) => max));
  const highest = Math.max(...spans.map(({ min }) => min));
  if (highest <= lowest) {
    const middle = Math.round((lowest + highest) / 2 / step) * step;
    return { min: middle, max: middle };
  }
  return { min: Math.floor(lowest / step) * step, max: Math.ceil(highest / step) * step };
}

/** Whether a seat of that range can be set for each span. */
export function reaches(seat: Range, spans: readonly Range[]): boolean {
  return spans.every(({ min, max }) => min <= seat.max + TOLERANCE && max >= seat.min - TOLERANCE);
}

/**
 * Which heights of a seat suit each person who sits on it, the desk being what it is. Where a sitting elbow is not measured, people with low
 * and with high elbows both count.
 */
export function seatSpans({ places }: Choice, seat: string, desk: Range): readonly Range[] {
  return places
    .filter(({ posture, station }) => posture === 'sit' && station.seat?.name === seat)
    .flatMap((place) => spansOf(place, desk));
}

function spansOf(place: Place, desk: Range): Range[] {
  return variantsOf(place.person).flatMap((person) => {
    const open = openSettings(place.setup.rules, { seat: place.setup.heights.seat, desk }, person);
    return open ? [seatSpan(open)] : [];
  });
}

/** The dimension that a stature says least about. */
const LOOSE: DimensionName = 'sittingElbowHeight';

/** The average body, and if the elbow is open, the same body with a low and with a high one. */
function variantsOf(person: Person): Person[] {
  if (!isOpen(person.body)) return [person];
  const tail = (1 - person.wanted) / 2;
  const column = person.people.column(LOOSE);
  const at = (p: number) => ({
    ...person,
    dimensions: { ...person.dimensions, [LOOSE]: quantileOf(person.people, column, p) },
  });
  return [at(tail), person, at(1 - tail)];
}

function isOpen(body: Body): boolean {
  return sdOf(body, LOOSE) > 0.5;
}
