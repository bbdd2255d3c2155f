import type { Booth, Crowd, LimitProfile, Operator, Room } from '@boothwright/fit';
import { formatAges, listOf } from '@boothwright/fit';
import { dimensionTitle } from '../titles.js';
import { percent, postureWord, type Units } from '../words.js';

/** The room in words, by heading, and what walkways are held to. */
export function tellRoom({ room, limits }: Booth, units: Units): readonly (readonly [string, string])[] {
  return [...roomFacts(room, units), ['Walkways held to', profiles[limits]]];
}

export interface PersonTold {
  readonly name: string;
  readonly known: string;
  readonly where: string;
}

/** Everyone in the file: what is known of them, and where they work. */
export function tellPeople(booth: Booth, units: Units): readonly PersonTold[] {
  const people = [
    ...booth.operators.map((operator) => ({ name: operator.name, known: knownOf(operator, units) })),
    ...booth.crowds.map((crowd) => ({ name: crowd.name, known: crowdFacts(crowd, units) })),
  ];
  return people.map(({ name, known }) => ({
    name,
    known: known.join(', ') || 'nothing yet',
    where: placesOf(booth, name).join('; ') || 'nowhere',
  }));
}

const profiles: Record<LimitProfile, string> = {
  us: 'published United States figures',
  uk: 'published United Kingdom figures',
  generic: 'general figures of no one country',
};

function roomFacts(room: Room | undefined, { length }: Units): readonly (readonly [string, string])[] {
  if (!room) return [['Room', 'not described']];
  const size = [
    room.width && `${length(room.width.value)} wide`,
    room.depth && `${length(room.depth.value)} deep`,
    room.height && `${length(room.height.value)} high`,
  ];
  const stage = [
    room.stage?.edge && `edge ${length(room.stage.edge.value)} from the back wall`,
    room.stage?.height && `${length(room.stage.height.value)} high`,
  ];
  const seating = [
    room.seating?.first && `nearest row ${length(room.seating.first.value)} from the front of the booth`,
    room.seating?.standing && 'people stand at times',
  ];
  const safety = [room.sprinklers && 'sprinklers', room.voiceAlarm && 'voice alarm'];
  const facts = [
    ['Room', listing(size)],
    ['People in it', room.occupants ? `${room.occupants.value}` : ''],
    ['Stage', listing(stage)],
    ['Seating', listing(seating)],
    ['Fire systems', listing(safety)],
  ] as const;
  return facts.filter(([, value]) => value !== '');
}

function knownOf({ sex, measured, statureIsReported }: Operator, { length }: Units): string[] {
  const dimensions = Object.entries(measured).map(([dimension, given]) => {
    const value = dimension === 'weight' ? `${Math.round(given.value)} kg` : length(given.value);
    const told = dimension === 'stature' && statureIsReported;
    return `${dimensionTitle(dimension)} ${value}${told ? ', as told' : ''}`;
  });
  return [...(sex ? [sex.value] : []), ...dimensions];
}

function crowdFacts({ women, cover, stature, ages }: Crowd, { range }: Units): string[] {
  return [
    'people not known yet',
    `${percent(women.value)} women`,
    ...(stature ? [`stature ${range(stature.value)}`] : []),
    ...(ages ? [formatAges(ages.value)] : []),
    `${percent(cover.value)} of them to be served`,
  ];
}

function placesOf({ workstations }: Booth, name: string): string[] {
  return workstations
    .filter(({ people }) => people.some((person) => person.name === name))
    .map((station) => `${station.name}, ${listOf(station.postures.value.map(postureWord))}, ${station.task.value}`);
}

function listing(facts: readonly (string | false | undefined)[]): string {
  return facts.filter(Boolean).join(', ');
}
