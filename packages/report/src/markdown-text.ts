/**
 * Text as Markdown that shows it and nothing else: no word of a booth file becomes a heading, a link, a table or HTML, in CommonMark
 * or GitHub's dialect. One line, without control characters.
 */
export function inline(text: string): string {
  return oneLine(text)
    .replace(/[\\`*_[\]<>&|~#@${}^]/g, '\\$&')
    .replace(/\b(https?|ftp|mailto|xmpp):/gi, '$1\\:')
    .replace(/\bwww\./gi, (www) => `${www.slice(0, 3)}\\.`)
    .replace(/^[-+=]/, '\\$&')
    .replace(/^(\d+)([.)])/, '$1\\$2');
}

/** Text to type, set apart from prose. */
export function code(text: string): string {
  const content = oneLine(text);
  const longest = Math.max(0, ...[...content.matchAll(/`+/g)].map(([run]) => run.length));
  const fence = '`'.repeat(longest + 1);
  const pad = content.startsWith('`') || content.endsWith('`') ? ' ' : '';
  return `${fence}${pad}${content}${pad}${fence}`;
}

/** A table; cells are Markdown already. Nothing if it has no rows. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string[] {
  if (rows.length === 0) return [];
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [[line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n')];
}

/** One list of items, each of one or more lines. Nothing without items. */
export function list(items: readonly (readonly string[])[], mark = '-'): string[] {
  if (items.length === 0) return [];
  const indent = ' '.repeat(mark.length + 1);
  return [items.map((lines) => `${mark} ${lines.join(`\\\n${indent}`)}`).join('\n')];
}

export function heading(level: 1 | 2 | 3, text: string): string {
  return `${'#'.repeat(level)} ${inline(text)}`;
}

export function strong(text: string): string {
  const content = inline(text);
  return content === '' ? '' : `**${content}**`;
}

function oneLine(text: string): string {
  return text.replace(/[\s\u0000-\u001f\u007f-\u009f]+/g, ' ').trim();
}
