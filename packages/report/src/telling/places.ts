import { listOf, type Posture } from '@boothwright/fit';
import { postureWord } from '../words.js';

/** What is to be told of a person in one posture at one workstation. */
export interface AtPlace {
  readonly who: string;
  readonly posture: Posture;
  readonly workstation: string;
  readonly text: string;
}

/** What is the same of a person at several workstations is told once; where it differs, it is told of which. */
export function byPerson<Place extends AtPlace>(places: readonly Place[]): readonly (Place & { person: string })[] {
  const told = new Set<Place>();
  return places.flatMap((place) => {
    if (told.has(place)) return [];
    const same = places.filter(({ who, posture }) => who === place.who && posture === place.posture);
    const alike = same.filter(({ text }) => text === place.text);
    for (const each of alike) told.add(each);
    const where = alike.length < same.length ? `, at ${listOf(alike.map(({ workstation }) => workstation))}` : '';
    return [{ ...place, person: `${place.who}, ${postureWord(place.posture)}${where}` }];
  });
}
