import type { Finding } from '@boothwright/fit';
import { SourceName } from '../parts/source.js';
import { titleOf } from '../titles.js';
import { personOf, subjectOf } from '../words.js';

/** What could not be said, and what to add to the file. */
export function Unsaid({ findings }: { findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  return (
    <section>
      <h2>What cannot be said yet</h2>
      <table>
        <caption>Missing figures, and what to add</caption>
        <thead>
          <tr>
            <th scope="col">Check</th>
            <th scope="col">Of</th>
            <th scope="col">Why</th>
            <th scope="col">Add</th>
          </tr>
        </thead>
        <tbody>
          {findings.map((finding) => (
            <tr>
              <th scope="row">{titleOf(finding.check)}</th>
              <td>{[subjectOf(finding), personOf(finding)].filter(Boolean).join(' · ')}</td>
              <td>
                {finding.message}
                <span class="source">
                  Source: <SourceName finding={finding} />
                </span>
              </td>
              <td>
                {finding.missing ? (
                  <>
                    <code>{finding.missing.example}</code> to {finding.missing.of}
                  </>
                ) : (
                  '–'
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
