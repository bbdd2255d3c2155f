import type { Check } from '@boothwright/fit';
import { readingMeanings, strengthMeanings } from '@boothwright/report';
import picocolors from 'picocolors';
import wrapAnsi from 'wrap-ansi';

/** All that is known of a check, for people. */
export function formatCheck(check: Check, { width, colours }: { width: number; colours: boolean }): string {
  const paint = picocolors.createColors(colours);
  const indented = (text: string, by = '  ') => wrapAnsi(text, width - by.length).replace(/^/gm, by);
  const code = (text: string) => text.trimEnd().replace(/^(?=.)/gm, '    ');
  const part = (title: string, ...body: string[]) => [paint.bold(title), ...body].join('\n');

  const sources = check.sources.flatMap(({ name, says, read }) => [
    indented(`${name} (${readingMeanings[read]})`),
    paint.dim(indented(says, '    ')),
  ]);
  const parts = [
    [paint.bold(check.title), paint.dim(`${check.id}, group ${check.group}`)].join('  '),
    wrapAnsi(check.question, width),
    part('How it is computed', indented(check.computes)),
    part('Limits', indented(check.limits)),
    part('Sources', ...sources),
    part('Strength', indented(strengthMeanings[check.strength])),
    ...(check.caution ? [part('Caution', indented(check.caution))] : []),
    part('It fires on', code(check.example.fires)),
    part('It does not fire on', code(check.example.passes)),
  ];
  return `${parts.join('\n\n')}\n`;
}
