import type { Walkway } from '../booth.js';
import type { Scene } from '../scene/scene.js';
import { profileOf } from './held-to.js';
import type { Figure, Profile } from './profiles.js';
import { say } from '../words/say.js';

/** The published least width of a walkway; undefined if it takes a number of people that the file does not say. */
export function leastWidth(scene: Scene, walkway: Walkway): Figure | undefined {
  const profile = profileOf(scene);
  if (walkway.users.value === 'operators') return profile.walkway.operatorsOnly;
  const published = publicWidth(profile, walkway);
  const { wheelchair } = profile.walkway;
  const kept = (scene.booth.room?.wheelchairSpaces.length ?? 0) > 0;
  return published && wheelchair && kept && wheelchair.value > published.value ? wheelchair : published;
}

function publicWidth(profile: Profile, { serves, seats, name }: Walkway): Figure | undefined {
  const { widths, needsPeople } = profile.walkway;
  const people = serves?.value;
  if (people === undefined && needsPeople) return undefined;
  const bothSides = seats.value === 'both-sides';
  const rows = widths.filter((row) => row.bothSides !== true || bothSides);
  if (people !== undefined) return rows.find(({ upTo }) => people <= upTo) ?? byPeople(profile, people);
  const assumed = bothSides ? rows.find(({ upTo }) => upTo === Infinity)! : rows[0]!;
  const note = bothSides ? say`${name} serves 50 people or more` : say`${name} serves at most ${rows[0]!.upTo} people`;
  return { ...assumed, note };
}

/**
 * The width that so many people need. The lower figure holds only with sprinklers and a voice alarm together
 * (IBC 1005.3.2, exception).
 */
export function widthForPeople(scene: Scene, people: number): Figure {
  const profile = profileOf(scene);
  const { widths, perPersonBeyond } = profile.walkway;
  if (people <= perPersonBeyond) return widths.find(({ upTo }) => people <= upTo)!;
  return byPeople(profile, people, scene.booth.room?.sprinklers === true && scene.booth.room.voiceAlarm);
}

function byPeople({ walkway }: Profile, people: number, reduced = false): Figure {
  const each = (reduced ? walkway.perPersonReduced : undefined) ?? walkway.perPerson;
  return { ...each, value: each.value * people };
}
