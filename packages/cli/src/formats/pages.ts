import type { IssueCode } from '@boothwright/language';
import { faultHelp } from '@boothwright/language/fault-help';
import { type Page, pageOfFault, type PagePart } from '@boothwright/report';
import picocolors from 'picocolors';
import { wrapAnsi } from 'fast-wrap-ansi';

/** The page behind a code of the text. */
export function faultPage(code: IssueCode): Page {
  return pageOfFault(code, faultHelp[code]);
}

/** All that is known of a code, for people at a terminal. */
export function formatPage(page: Page, { width, colours }: { width: number; colours: boolean }): string {
  const paint = picocolors.createColors(colours);
  const indented = (text: string, by = '  ') => wrapAnsi(text, width - by.length).replace(/^/gm, by);
  const bodyOf = (part: PagePart): string[] => {
    if ('text' in part) return [indented(part.text)];
    if ('example' in part) return [part.example.trimEnd().replace(/^(?=.)/gm, '    ')];
    return part.entries.flatMap(({ name, says }) => [indented(name), paint.dim(indented(says, '    '))]);
  };
  const parts = [
    [paint.bold(page.title), paint.dim(`${page.code}, ${page.kind}`)].join('  '),
    wrapAnsi(page.lead, width),
    ...page.parts.map((part) => [paint.bold(part.heading), ...bodyOf(part)].join('\n')),
  ];
  return `${parts.join('\n\n')}\n`;
}
