import type { Finding } from '@boothwright/fit';
import { bySeverity, personOf, subjectOf } from '../words.js';
import { titleOf } from '../titles.js';
import { SourceName } from './source.js';
import { VerdictMark } from './verdict.js';

/** Findings that need attention, written out, then the passing ones as rows. Headings are the caller's. */
export function Findings({ findings, passCaption }: { findings: readonly Finding[]; passCaption: string }) {
  const open = findings.filter(({ verdict }) => verdict !== 'pass').sort(bySeverity);
  const passes = findings.filter(({ verdict }) => verdict === 'pass');
  return (
    <>
      <FindingList findings={open} />
      <PassTable findings={passes} caption={passCaption} />
    </>
  );
}

export function FindingList({ findings }: { findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  return (
    <ul class="findings">
      {findings.map((finding) => (
        <li class={finding.verdict}>
          <p class="head">
            <VerdictMark verdict={finding.verdict} /> <Heading finding={finding} />
          </p>
          <p>{finding.message}</p>
          {finding.terms && <p class="terms">{finding.terms}</p>}
          <p class="source">
            Source: <SourceName finding={finding} />
          </p>
        </li>
      ))}
    </ul>
  );
}

/** 'Seated elbow', then 'workstation Sound · Noor, sitting'. */
export function Heading({ finding }: { finding: Finding }) {
  const who = personOf(finding);
  return (
    <>
      <strong>{titleOf(finding.check)}</strong>{' '}
      <span class="of">{[subjectOf(finding), who].filter(Boolean).join(' · ')}</span>
    </>
  );
}

/** One row per check and source; each finding's own sentence names whom and what it concerns. */
function PassTable({ findings, caption }: { findings: readonly Finding[]; caption: string }) {
  const rows = new Map<string, Finding[]>();
  for (const finding of findings) {
    const key = `${finding.check} ${finding.source}`;
    rows.set(key, [...(rows.get(key) ?? []), finding]);
  }
  if (rows.size === 0) return null;
  return (
    <table class="passes">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Check</th>
          <th scope="col">Result</th>
          <th scope="col">Source</th>
        </tr>
      </thead>
      <tbody>
        {[...rows.values()].map((row) => (
          <tr>
            <th scope="row">{titleOf(row[0]!.check)}</th>
            <td>
              {row.map(({ message, terms }) => (
                <p>
                  {message}
                  {terms && <span class="terms">{terms}</span>}
                </p>
              ))}
            </td>
            <td>
              <SourceName finding={row[0]!} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
