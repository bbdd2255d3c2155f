import { ringChoice } from '../assess/choices.js';
import { possessive } from '../format.js';
import type { Scene } from '../scene/scene.js';
import type { Station } from '../stations/station.js';
import { TOLERANCE } from '../units.js';
import { dropFor, dropsFor, legsOf, type Leg } from './legs.js';
import { say } from '../words/say.js';

/** What no single number can give: people whose legs are too far apart for one foot ring. */
export function notesFor(scene: Scene, station: Station): readonly string[] {
  const ring = ringChoice(scene, station);
  if (!ring) return [];
  const people = ring.places.filter((place) => place.station.name === station.name).map(({ person }) => person);
  const legs = people.flatMap((person) => legsOf(person, station.shoe));
  if (legs.length < 2) return [];
  const drops = dropsFor(legs);
  if (drops.min <= drops.max + 2 * TOLERANCE) return [];
  const short = legs.reduce((a, b) => (b.length < a.length ? b : a));
  const long = legs.reduce((a, b) => (b.length > a.length ? b : a));
  const [high, low] = [scene.length(dropFor(short)), scene.length(dropFor(long))];
  return [
    say`No one foot ring suits ${both(short, long)}. Take a ring that moves on its column, or a second stool: rings about ${high} and ${low} below the seat would suit them.`,
  ];
}

function both(short: Leg, long: Leg): string {
  if (short.person === long.person) return say`both the shorter and the longer legs among ${short.person.name}`;
  const whose = ({ person }: Leg, isShorter: boolean) =>
    person.kind === 'operator'
      ? say`${possessive(person.name)} legs`
      : isShorter
        ? say`the shorter legs among ${person.name}`
        : say`the longer legs among ${person.name}`;
  return say`both ${whose(short, true)} and ${whose(long, false)}`;
}
