import type { Choice, Place } from '../assess/choices.js';
import { sdOf } from '../bodies/body.js';
import type { DimensionName } from '../bodies/dimensions.js';
import { quantileOf } from '../bodies/people.js';
import type { Person } from '../stations/station.js';
import { TOLERANCE, type Millimetres, type Range } from '../units.js';
import { openSettings, seatSpan } from './bands.js';

/**
 * The range that a seat must be adjustable over so that each span holds a height of it, well inside: from the lowest that the
 * highest-seated could do with, to the highest that the lowest-seated could. Undefined if nobody sits.
 */
export function seatRangeFor(spans: readonly Range[], step: Millimetres): Range | undefined {
  if (spans.length === 0) return undefined;
  const inner = spans.map(({ min, max }) => {
    const room = Math.min(ROOM, (max - min) / 2);
    return { min: min + room, max: max - room };
  });
  const lowest = Math.min(...inner.map(({ max }) => max));
  const highest = Math.max(...inner.map(({ min }) => min));
  if (highest <= lowest) {
    const middle = Math.round((lowest + highest) / 2 / step) * step;
    return { min: middle, max: middle };
  }
  return { min: Math.floor(lowest / step) * step, max: Math.ceil(highest / step) * step };
}

/** A height that only just suits is no height to buy by: a span is taken this much inside its ends, or in its middle. */
const ROOM: Millimetres = 25;

/** Whether a seat of that range can be set for each span. */
export function reaches(seat: Range, spans: readonly Range[]): boolean {
  return spans.every(({ min, max }) => min <= seat.max + TOLERANCE && max >= seat.min - TOLERANCE);
}

/**
 * Which heights of a seat suit each person who sits on it, the desk being what it is. Where an elbow or a leg is not measured, people
 * with low and with high ones both count.
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

/** What decides a seat's height, and a stature says least about. */
const LOOSE: readonly DimensionName[] = ['sittingElbowHeight', 'poplitealHeight'];

/** The average body, and for each of those dimensions that is open, the same body with a low and with a high one. */
function variantsOf(person: Person): Person[] {
  const tail = (1 - person.wanted) / 2;
  const open = LOOSE.filter((dimension) => sdOf(person.body, dimension) > 0.5);
  const others = open.flatMap((dimension) => {
    const column = person.people.column(dimension);
    return [tail, 1 - tail].map((p) => ({
      ...person,
      dimensions: { ...person.dimensions, [dimension]: quantileOf(person.people, column, p) },
    }));
  });
  return [person, ...others];
}
