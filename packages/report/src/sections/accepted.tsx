import type { Finding } from '@boothwright/fit';
import { Heading } from '../parts/findings.js';
import { SourceName } from '../parts/source.js';
import { VerdictMark } from '../parts/verdict.js';

/** Findings that the file tolerates, each with its reason. */
export function AcceptedFindings({ findings }: { findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  return (
    <section>
      <h2>Accepted on purpose</h2>
      <ul class="findings">
        {findings.map((finding) => (
          <li class="accepted">
            <p class="head">
              <VerdictMark verdict={finding.verdict} /> <Heading finding={finding} />
            </p>
            <p>{finding.message}</p>
            {finding.terms && <p class="terms">{finding.terms}</p>}
            <p class="reason">Accepted because: {finding.accepted}</p>
            <p class="source">
              Source: <SourceName finding={finding} />
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
