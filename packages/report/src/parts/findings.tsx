import { formatShare, type Finding } from '@boothwright/fit';
import { bySeverity, capital, personOf, subjectOf } from '../words.js';
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
          <Reach finding={finding} />
          <p class="source">
            Source: <SourceName finding={finding} />
          </p>
        </li>
      ))}
    </ul>
  );
}

/** 'Seated elbow — workstation Sound — Noor, sitting'. */
export function Heading({ finding }: { finding: Finding }) {
  const who = personOf(finding);
  return (
    <>
      <strong>{titleOf(finding.check)}</strong>{' '}
      <span class="of">{[subjectOf(finding), who].filter(Boolean).join(' · ')}</span>
    </>
  );
}

/** How many people it suits, where a body is uncertain. */
function Reach({ finding: { share, shareAtLimit } }: { finding: Finding }) {
  if (share === undefined || shareAtLimit === undefined) return null;
  if (Number.isInteger(share) && Number.isInteger(shareAtLimit)) return null;
  return (
    <p class="reach">
      Of people with such a body, {formatShare(share)} are within the preferred band, {formatShare(shareAtLimit)} within
      the outer limit.
    </p>
  );
}

function PassTable({ findings, caption }: { findings: readonly Finding[]; caption: string }) {
  if (findings.length === 0) return null;
  return (
    <table class="passes">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Check</th>
          <th scope="col">Of</th>
          <th scope="col">Result</th>
          <th scope="col">Source</th>
        </tr>
      </thead>
      <tbody>
        {findings.map((finding) => (
          <tr>
            <th scope="row">{titleOf(finding.check)}</th>
            <td>{personOf(finding) || capital(subjectOf(finding))}</td>
            <td>
              {finding.message}
              {finding.terms && <span class="terms">{finding.terms}</span>}
            </td>
            <td>
              <SourceName finding={finding} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
