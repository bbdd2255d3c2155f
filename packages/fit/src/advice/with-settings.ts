import type { Plan } from '../assessment.js';
import type { Booth, FootRing, Given } from '../booth.js';
import type { Range } from '../units.js';

/** One height of a plan. */
export type Setting = Plan['settings'][number];

/** The booth with other heights in it. */
export function withSettings(booth: Booth, settings: readonly Setting[]): Booth {
  const valueOfPart = (part: Setting['part'], of: string) =>
    settings.find((one) => one.part === part && one.of === of)?.value;
  const set = (given: Given<Range> | undefined, value: Range | undefined) =>
    given && value ? { ...given, value } : given;
  return {
    ...booth,
    desks: booth.desks.map((desk) => ({ ...desk, height: set(desk.height, valueOfPart('desk', desk.name)) })),
    seats: booth.seats.map((seat) => {
      const drop = valueOfPart('ring', seat.name)?.min;
      const footRing: FootRing | undefined =
        seat.footRing && drop !== undefined
          ? { ...seat.footRing, distance: { ...seat.footRing.distance, value: drop } }
          : seat.footRing;
      return { ...seat, seat: set(seat.seat, valueOfPart('seat', seat.name)), footRing };
    }),
  };
}
