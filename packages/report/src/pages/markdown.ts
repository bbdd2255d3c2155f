import { code, heading, inline, list } from '../markdown-text.js';
import type { Page, PagePart } from './page.js';

/** A page as Markdown, with its title as its first line. */
export function pageMarkdown(page: Page): string {
  const head = [heading(1, page.title), `${code(page.code)}, ${inline(page.kind)}`];
  return `${[...head, pageBodyMarkdown(page)].join('\n\n')}\n`;
}

/** What a page says, without its title. */
export function pageBodyMarkdown({ lead, parts }: Page): string {
  return [marked(lead), ...parts.flatMap((part) => [heading(2, part.heading), ...bodyOf(part)])].join('\n\n');
}

function bodyOf(part: PagePart): readonly string[] {
  if ('text' in part) return [marked(part.text)];
  if ('entries' in part) return list(part.entries.map(({ name, says }) => [`${inline(name)}: ${marked(says)}`]));
  return [`\`\`\`booth\n${part.example.trimEnd()}\n\`\`\``];
}

/** Prose whose words between backticks are to be typed. */
function marked(text: string): string {
  return text
    .split(/(`[^`]+`)/)
    .map((piece) => (piece.startsWith('`') ? code(piece.slice(1, -1)) : spacedInline(piece)))
    .join('');
}

/** As `inline`, but keeps the spaces at both ends, which part it from its neighbours. */
function spacedInline(text: string): string {
  const [, before, middle, after] = /^(\s*)([^]*?)(\s*)$/.exec(text)!;
  return [before && ' ', inline(middle!), after && middle && ' '].filter(Boolean).join('');
}
