import { VerdictMark, type View } from '@boothwright/report/preview';

interface FactsProps {
  readonly caption: string;
  readonly facts: ReturnType<View['draw']>['facts'];
}

/** The figures that a drawing shows, as a table. */
export function Facts({ caption, facts }: FactsProps) {
  if (facts.length === 0) return null;
  return (
    <details>
      <summary>The figures as a list</summary>
      <table aria-label={`The figures of: ${caption}`}>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Figure</th>
            <th scope="col">Verdict</th>
          </tr>
        </thead>
        <tbody>
          {facts.map(({ what, value, verdict }) => (
            <tr>
              <th scope="row">{what}</th>
              <td>{value}</td>
              <td>{verdict ? <VerdictMark verdict={verdict} /> : 'not checked'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
