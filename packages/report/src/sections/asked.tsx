import type { Booth } from '@boothwright/fit';
import { furnitureOf } from '../furniture.js';
import { tellPeople, tellRoom } from '../telling/asked.js';
import type { Units } from '../words.js';

/** What the file says: room, furniture, people. */
export function Asked({ booth, units }: { booth: Booth; units: Units }) {
  return (
    <section>
      <h2>What was asked</h2>
      <dl class="facts">
        {tellRoom(booth, units).map(([name, value]) => (
          <div>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <Furniture booth={booth} units={units} />
      <People booth={booth} units={units} />
    </section>
  );
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
  const people = tellPeople(booth, units);
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
        {people.map(({ name, known, where }) => (
          <tr>
            <th scope="row">{name}</th>
            <td>{known}</td>
            <td>{where}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
