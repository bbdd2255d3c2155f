import type { Booth, Crowd, LimitProfile, Operator, Room } from '@boothwright/fit';
import { listOf } from '@boothwright/fit';
import { furnitureOf } from '../furniture.js';
import { dimensionTitle } from '../titles.js';
import { percent, postureWord, type Units } from '../words.js';

const profiles: Record<LimitProfile, string> = {
  us: 'published United States figures',
  uk: 'published United Kingdom figures',
  generic: 'general figures of no one country',
};

/** What the file says: room, furniture, people. */
export function Asked({ booth, units }: { booth: Booth; units: Units }) {
  return (
    <section>
      <h2>What was asked</h2>
      <dl class="facts">
        {roomFacts(booth.room, units).map(([name, value]) => (
          <div>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
        <div>
          <dt>Walkways held to</dt>
          <dd>{profiles[booth.limits]}</dd>
        </div>
      </dl>
      <Furniture booth={booth} units={units} />
      <People booth={booth} units={units} />
    </section>
  );
}

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
    room.seating?.first && `nearest row ${length(room.seating.first.value)} in front of the booth`,
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

function Furniture({ booth, units }: { booth: Booth; units: Units }) {
  const pieces = furnitureOf(booth, units);
  if (pieces.length === 0) return null;
  return (
    <table>
      <caption>Furniture and equipment</caption>
      <thead>
        <tr>
          <th scope="col">Piece</th>
          <th scope="col">As described</th>
        </tr>
      </thead>
      <tbody>
        {pieces.map(({ kind, name, facts }) => (
          <tr>
            <th scope="row">
              {name} <span class="kindof">{kind}</span>
            </th>
            <td>{facts.join(', ') || 'no size said'}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function People({ booth, units }: { booth: Booth; units: Units }) {
  const people = [
    ...booth.operators.map((operator) => ({ name: operator.name, known: knownOf(operator, units) })),
    ...booth.crowds.map((crowd) => ({ name: crowd.name, known: crowdFacts(crowd, units) })),
  ];
  if (people.length === 0) return null;
  return (
    <table>
      <caption>People</caption>
      <thead>
        <tr>
          <th scope="col">Who</th>
          <th scope="col">What is known</th>
          <th scope="col">Where</th>
        </tr>
      </thead>
      <tbody>
        {people.map(({ name, known }) => (
          <tr>
            <th scope="row">{name}</th>
            <td>{known.join(', ') || 'nothing yet'}</td>
            <td>{placesOf(booth, name).join('; ') || 'nowhere'}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function knownOf({ sex, measured, statureIsReported }: Operator, { length }: Units): string[] {
  const dimensions = Object.entries(measured).map(([dimension, given]) => {
    const value = dimension === 'weight' ? `${Math.round(given.value)} kg` : length(given.value);
    const told = dimension === 'stature' && statureIsReported;
    return `${dimensionTitle(dimension)} ${value}${told ? ', as told' : ''}`;
  });
  return [...(sex ? [sex.value] : []), ...dimensions];
}

function crowdFacts({ women, cover, stature }: Crowd, { range }: Units): string[] {
  return [
    'people not known yet',
    `${percent(women.value)} women`,
    ...(stature ? [`stature ${range(stature.value)}`] : []),
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
