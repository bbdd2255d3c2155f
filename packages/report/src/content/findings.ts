import type { Finding } from '@boothwright/fit';
import { strengthWarning } from '../strength.js';
import { alike } from '../telling/alike.js';
import { titleOf } from '../titles.js';
import { bySeverity, personOf, subjectOf, worst } from '../words.js';
import { list, soft, strong, verdictSpan, type Block, type Item, type Span, type Text } from './blocks.js';

/** What does not pass, worst first; of one check and one thing in one item. */
export function openFindings(findings: readonly Finding[]): Block[] {
  const open = findings.filter(({ verdict }) => verdict !== 'pass').sort(bySeverity);
  return list(alike(open).map(itemOf));
}

/** A group of findings: verdict, check and thing, then what is said of each person. */
export function itemOf(findings: readonly Finding[]): Item {
  const verdicts = findings.map(({ verdict }) => verdict);
  const [first] = findings;
  const people = findings.length === 1 ? [personOf(first!)] : [];
  const about = [subjectOf(first!), ...people].filter(Boolean).join(' · ');
  const differ = new Set(verdicts).size > 1;
  return [
    [verdictSpan(worst(verdicts)), strong(titleOf(first!.check)), soft(`${about}.`), sourceSpan(first!)],
    ...findings.map((finding): Text => [
      ...(differ ? [verdictSpan(finding.verdict)] : []),
      finding.message,
      ...(finding.terms ? [soft(`${finding.terms}.`)] : []),
    ]),
  ];
}

/** 'Source: …', with the word that warns of a weak one. */
export function sourceSpan({ source, strength }: Finding): Span {
  const warning = strengthWarning(strength);
  return soft(`Source: ${source}${warning ? ` (${warning})` : ''}`);
}
