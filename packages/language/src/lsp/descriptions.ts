import { checks, said, say } from '@boothwright/fit';
import { needOf } from '../values/words.js';
import type { Kind, PropertyEntry } from '../vocabulary/entries.js';
import { entryOf } from '../vocabulary/vocabulary.js';

/** What the words of the language mean, for hovers. */
export function describeProperty(entry: PropertyEntry): string {
  const example = entry.example ? `\`${entry.key} ${entry.example}\`` : `\`${entry.key}\``;
  const need =
    entry.shape.is === 'flag'
      ? say`Written or left out, as in ${example}.`
      : say`Takes ${needOf(entry)}, as in ${example}.`;
  const usual = entry.default === undefined ? [] : [say`Default: \`${entry.default}\`.`];
  return `**${entry.key}**: ${said(entry.says)}\n\n${[need, ...usual].join(' ')}`;
}

export function describeKind(kind: Kind): string {
  const { word, says, example } = entryOf(kind);
  return `**${word}**: ${said(says)}\n\n\`\`\`booth\n${example}\n\`\`\``;
}

export function describeRow(): string {
  return say`**in a row**: The pieces stand side by side from the first one on, in the order of their names, without a gap. \`at\` places the first.`;
}

/** What a check asks, how it computes the answer, and where its limits come from; nothing if there is no such check. */
export function describeCheck(id: string): string | undefined {
  const check = checks.find((each) => each.id === id);
  if (!check) return undefined;
  const { title, question, computes, limits, sources, strength } = check;
  const rows = sources.map(({ name, says, read }) => `| ${cell(said(name))} | ${cell(said(says))} | ${said(read)} |`);
  const table = [say`| Source | says | read |`, '| :-- | :-- | :-- |', ...rows].join('\n');
  return [
    `**${said(title)}** (\`${id}\`): ${said(question)}`,
    said(computes),
    said(limits),
    say`How sure these limits are: ${said(strength)}.`,
    ...(rows.length > 0 ? [table] : []),
  ].join('\n\n');
}

function cell(text: string): string {
  return text.replace(/[|\\]/g, '\\$&').replace(/\s*\n\s*/g, ' ');
}
