import { listOf, type Assessment, type Finding, type Verdict } from '@boothwright/fit';
import { count, postureWord } from '../words.js';

/** Does it fit? In one word, a few sentences and four numbers. */
export interface AnswerTold {
  readonly headline: string;
  readonly sentences: readonly string[];
  readonly tally: readonly { readonly verdict: Verdict; readonly count: number; readonly word: string }[];
}

const tallyWords: Record<Verdict, string> = { fail: 'fail', marginal: 'marginal', unknown: 'cannot say', pass: 'pass' };
const order = ['fail', 'marginal', 'unknown', 'pass'] as const;

export function tellAnswer(assessment: Assessment): AnswerTold {
  const open = assessment.findings.filter((finding) => finding.accepted === undefined);
  const accepted = assessment.findings.length - open.length;
  return {
    headline: headline(open),
    sentences: [tally(open), ...people(assessment), acceptance(accepted)].filter((sentence) => sentence !== ''),
    tally: order.map((verdict) => ({ verdict, count: of(open, verdict), word: tallyWords[verdict] })),
  };
}

function headline(open: readonly Finding[]): string {
  if (of(open, 'fail') > 0) return 'Not yet.';
  if (of(open, 'marginal') > 0) return 'Nearly.';
  if (of(open, 'unknown') > 0) return 'Yes, as far as can be said.';
  return open.length > 0 ? 'Yes, on paper.' : 'Nothing was checked.';
}

function tally(open: readonly Finding[]): string {
  if (open.length === 0) return '';
  const parts = [
    count(of(open, 'fail'), 'fails', 'fail'),
    count(of(open, 'marginal'), 'is marginal', 'are marginal'),
    count(of(open, 'unknown'), 'lacks a figure', 'lack a figure'),
    count(of(open, 'pass'), 'passes', 'pass'),
  ].filter((part) => !part.startsWith('0 '));
  return `Of ${count(open.length, 'result')}, ${listOf(parts)}.`;
}

/** Whom the workstations do not serve, or doubtfully. */
function people({ workstations }: Assessment): string[] {
  const served = workstations.flatMap(({ name, served }) => served.map((person) => ({ station: name, ...person })));
  if (served.length === 0) return [];
  const named = (verdict: Verdict) =>
    served
      .filter((person) => person.verdict === verdict)
      .map(({ station, who, posture }) => `${who} ${postureWord(posture)} at ${station}`);
  const [unserved, doubtful] = [named('fail'), named('marginal')];
  const sentences = [
    unserved.length > 0 ? `All at once, it does not suit ${firstOf(unserved)}.` : '',
    doubtful.length > 0 ? `It is doubtful for ${firstOf(doubtful)}.` : '',
  ];
  if (served.every(({ verdict }) => verdict === 'pass'))
    sentences.push('Everybody named fits where the file puts them.');
  return sentences;
}

/** More people than these are counted. */
const MOST_NAMED = 6;

function firstOf(people: readonly string[]): string {
  const others = people.length - MOST_NAMED;
  return listOf(others > 1 ? [...people.slice(0, MOST_NAMED), `${others} others`] : people);
}

function acceptance(accepted: number): string {
  return accepted > 0 ? `${count(accepted, 'finding is', 'findings are')} accepted on purpose, with a reason.` : '';
}

function of(findings: readonly Finding[], verdict: Verdict): number {
  return findings.filter((finding) => finding.verdict === verdict).length;
}
