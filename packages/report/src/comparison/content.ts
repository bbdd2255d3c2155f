import type { Verdict } from '@boothwright/fit';
import {
  heading,
  list,
  paragraph,
  soft,
  strong,
  table,
  verdictSpan,
  type Block,
  type Item,
  type Span,
} from '../content/blocks.js';
import { titleOf } from '../titles.js';
import { percent, postureWord, verdictWords, type Units } from '../words.js';
import type { ComparedResult, Comparison, LayoutChange, Outcome } from './compare.js';

const order: readonly Verdict[] = ['fail', 'marginal', 'unknown', 'pass'];

export const comparisonTitle = 'Layouts side by side';

const comparisonMeans =
  'Results are matched by check, piece, person and posture: a thing that has another name in another layout counts as another thing.';

/** A comparison as blocks: what each layout gains and loses first, then the figures behind it. */
export function comparisonContent(comparison: Comparison, units: Units, names: string | undefined): Block[] {
  const { layouts, results, served, walkways, changes } = comparison;
  const labels = layouts.map(({ label }) => label);
  return [
    heading(1, comparisonTitle),
    ...(names === undefined ? [] : [paragraph(soft(names))]),
    ...table(
      'Open results',
      ['Layout', ...order.map((verdict) => verdictSpan(verdict)), 'Accepted'],
      layouts.map(({ label, open, accepted }) => [label, ...order.map((verdict) => `${open[verdict]}`), `${accepted}`]),
    ),
    ...changes.flatMap((change) => changeBlocks(change, labels)),
    heading(2, 'Everything at once'),
    ...(served.length === 0 ? [paragraph('No layout says who works where.')] : []),
    ...table(
      'Everything at once, of each person',
      ['Who', ...labels],
      served.map(({ workstation, who, posture, outcomes }) => [
        `${who}, ${postureWord(posture)} at ${workstation}`,
        ...outcomes.map((one) =>
          one ? verdictSpan(one.verdict, `${verdictWords[one.verdict]}, ${percent(one.share)}`) : '–',
        ),
      ]),
    ),
    ...(walkways.length > 0 ? [heading(2, 'Clear widths')] : []),
    ...table(
      'Clear widths of the walkways',
      ['Walkway', ...labels],
      walkways.map(({ name, clear }) => [
        name,
        ...clear.map((width) => (width === undefined ? '–' : units.length(width))),
      ]),
    ),
    ...(results.length > 0 ? [heading(2, 'Results that differ')] : []),
    ...table(
      'Results that are not the same in all layouts',
      ['Result', ...labels],
      results.map((result) => [describe(result), ...result.outcomes.map(outcomeSpan)]),
    ),
    paragraph(soft(comparisonMeans)),
    paragraph(
      soft(
        'A planning aid: it compares figures on paper. Your local building or fire official, and licensed professionals, decide.',
      ),
    ),
  ];
}

function changeBlocks(change: LayoutChange, labels: readonly string[]): Block[] {
  const { layout } = change;
  return [
    heading(2, `${labels[layout]!} against ${labels[0]!}`),
    ...groupsOf(change).flatMap(({ title, results }) => [
      paragraph(strong(title)),
      ...list(results.map((result) => itemOf(result, layout))),
    ]),
  ];
}

/** What a layout gains and loses, and what it no longer or newly asks, with how many. */
export function groupsOf({ gains, losses, dropped, added }: LayoutChange) {
  const group = (title: string, results: readonly ComparedResult[]) => ({
    title: results.length > 0 ? `${title} (${results.length})` : `${title} nothing.`,
    results,
  });
  return [
    group('Gains', gains),
    group('Loses', losses),
    ...(dropped.length > 0 ? [group('No longer asked', dropped)] : []),
    ...(added.length > 0 ? [group('Newly asked', added)] : []),
  ];
}

function itemOf(result: ComparedResult, layout: number): Item {
  const [before, after] = [result.outcomes[0], result.outcomes[layout]];
  const message = after?.message ?? before?.message;
  return [
    [strong(describe(result)), `${wordOf(before)}, then ${wordOf(after)}`],
    ...(message ? [[soft(message)]] : []),
  ];
}

/** 'Feet supported (workstation Sound, Noor, sitting)'. */
export function describe({ check, subject, operator, posture }: ComparedResult): string {
  const about = [`${subject.kind.replaceAll('-', ' ')} ${subject.name}`, operator, posture && postureWord(posture)];
  return `${titleOf(check)} (${about.filter(Boolean).join(', ')})`;
}

/** 'fails', 'marginal, accepted', or that the layout has no such thing. */
export function wordOf(outcome: Outcome | undefined): string {
  if (!outcome) return 'not there';
  const word = verdictWords[outcome.verdict].toLowerCase();
  return outcome.accepted && outcome.verdict !== 'pass' ? `${word}, accepted` : word;
}

function outcomeSpan(outcome: Outcome | undefined): Span {
  if (!outcome) return '–';
  const isTolerated = outcome.accepted && outcome.verdict !== 'pass';
  return verdictSpan(outcome.verdict, isTolerated ? `${verdictWords[outcome.verdict]}, accepted` : undefined);
}
