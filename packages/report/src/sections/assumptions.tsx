import type { Booth, Finding } from '@boothwright/fit';
import { defaultsOf } from '../defaults.js';
import { capital, type Units } from '../words.js';

/** What nobody said: the defaults the booth took, and what single results assumed. */
export function Assumptions(props: { booth: Booth; findings: readonly Finding[]; units: Units }) {
  const defaults = defaultsOf(props.booth, props.units);
  const assumed = [...new Set(props.findings.flatMap(({ assumptions }) => assumptions))];
  if (defaults.length === 0 && assumed.length === 0) return null;
  return (
    <section>
      <h2>Assumptions and defaults</h2>
      {assumed.length > 0 && <p>Results rest on: {assumed.join('; ')}.</p>}
      {defaults.length > 0 && (
        <table>
          <caption>Values the file does not say</caption>
          <thead>
            <tr>
              <th scope="col">Of</th>
              <th scope="col">Taken as</th>
            </tr>
          </thead>
          <tbody>
            {defaults.map(({ of, values }) => (
              <tr>
                <th scope="row">{capital(of)}</th>
                <td>{values.join('; ')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
