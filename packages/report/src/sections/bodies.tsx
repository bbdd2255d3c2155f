import type { OperatorFigures } from '@boothwright/fit';
import { bodiesMean, tellBodies, type FigureTold } from '../telling/bodies.js';
import type { Units } from '../words.js';

/** More people than this in one table would not fit across a page. */
const PEOPLE_PER_TABLE = 4;

/** What was taken each person's body to be. */
export function BodyFigures({ operators, units }: { operators: readonly OperatorFigures[]; units: Units }) {
  if (operators.length === 0) return null;
  return (
    <section>
      <h2>Body figures</h2>
      <p>{bodiesMean}</p>
      {chunks(operators).map((people) => (
        <BodyTable people={people} units={units} />
      ))}
    </section>
  );
}

function BodyTable({ people, units }: { people: readonly OperatorFigures[]; units: Units }) {
  return (
    <table class="bodies">
      <caption>{`Body figures of ${people.map(({ name }) => name).join(', ')}`}</caption>
      <thead>
        <tr>
          <th scope="col">Dimension</th>
          {people.map(({ name }) => (
            <th scope="col">{name}</th>
          ))}
        </tr>
      </thead>
      <tbody>
        {tellBodies(people, units).map(({ dimension, figures }) => (
          <tr>
            <th scope="row">{dimension}</th>
            {figures.map((figure) => (
              <Figure figure={figure} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Figure({ figure }: { figure?: FigureTold }) {
  if (!figure) return <td aria-label="not known">–</td>;
  return (
    <td>
      {figure.measured ? <b>{figure.value}</b> : figure.value}
      <span class="of">{figure.certainty}</span>
    </td>
  );
}

function chunks(operators: readonly OperatorFigures[]): readonly (readonly OperatorFigures[])[] {
  const starts = operators.flatMap((_, index) => (index % PEOPLE_PER_TABLE === 0 ? [index] : []));
  return starts.map((start) => operators.slice(start, start + PEOPLE_PER_TABLE));
}
