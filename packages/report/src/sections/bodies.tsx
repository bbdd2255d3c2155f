import { referenceSource, type DimensionFigures, type OperatorFigures } from '@boothwright/fit';
import { dimensionTitle } from '../titles.js';
import { capital, type Units } from '../words.js';

/** More people than this in one table would not fit across a page. */
const PEOPLE_PER_TABLE = 4;

/** What was taken each person's body to be. */
export function BodyFigures({ operators, units }: { operators: readonly OperatorFigures[]; units: Units }) {
  if (operators.length === 0) return null;
  return (
    <section>
      <h2>Body figures</h2>
      <p>
        Bare feet, erect. A measured figure stands alone. A predicted one is the middle of its range; below it stands
        the range that holds 90 of 100 people of whom as much is known. Predicted from {referenceSource}.
      </p>
      {chunks(operators).map((people) => (
        <BodyTable people={people} units={units} />
      ))}
    </section>
  );
}

function BodyTable({ people, units }: { people: readonly OperatorFigures[]; units: Units }) {
  const dimensions = [...new Set(people.flatMap((person) => person.dimensions.map(({ dimension }) => dimension)))];
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
        {dimensions.map((dimension) => (
          <tr>
            <th scope="row">{capital(dimensionTitle(dimension))}</th>
            {people.map((person) => (
              <Figure figures={person.dimensions.find((figures) => figures.dimension === dimension)} units={units} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Figure({ figures, units }: { figures?: DimensionFigures; units: Units }) {
  if (!figures) return <td aria-label="not known">–</td>;
  const show = figures.dimension === 'weight' ? (kilograms: number) => `${Math.round(kilograms)} kg` : units.length;
  if (figures.measured) {
    return (
      <td>
        <b>{show(figures.p50)}</b>
        <span class="of">measured</span>
      </td>
    );
  }
  return (
    <td>
      {show(figures.p50)}
      <span class="of">{`${show(figures.p5)} to ${show(figures.p95)}`}</span>
    </td>
  );
}

function chunks(operators: readonly OperatorFigures[]): readonly (readonly OperatorFigures[])[] {
  const starts = operators.flatMap((_, index) => (index % PEOPLE_PER_TABLE === 0 ? [index] : []));
  return starts.map((start) => operators.slice(start, start + PEOPLE_PER_TABLE));
}
