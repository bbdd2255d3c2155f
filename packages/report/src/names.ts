import type { Booth } from '@boothwright/fit';

/** Properties whose strings are words of the language or names of figures, never of a person. */
const vocabulary = new Set([
  'basis',
  'blockedBy',
  'check',
  'dimension',
  'from',
  'how',
  'kind',
  'limits',
  'line',
  'over',
  'part',
  'posture',
  'show',
  'source',
  'strength',
  'unit',
  'value',
  'verdict',
]);

/**
 * Puts 'Person A', 'Person B' … in place of the operators' names, wherever they are written in an assessment or in advice: also in
 * messages, remedies and reasons. Crowds keep their names.
 */
export function lettersFor({ operators }: Booth): <T>(value: T) => T {
  const letters = new Map(operators.map(({ name }, index) => [name, `Person ${letter(index)}`]));
  if (letters.size === 0) return (value) => value;
  const pattern = new RegExp(`(?<![\\p{L}\\p{N}_])(?:${alternatives([...letters.keys()])})(?![\\p{L}\\p{N}_])`, 'gu');
  const rename = (text: string) => text.replace(pattern, (name) => letters.get(name) ?? name);
  return <T>(value: T) => mapStrings(value, rename) as T;
}

/** Longest first: a name that starts with another name is still found whole. */
function alternatives(names: readonly string[]): string {
  return [...names]
    .sort((a, b) => b.length - a.length)
    .map((name) => name.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&'))
    .join('|');
}

function mapStrings(value: unknown, change: (text: string) => string): unknown {
  if (typeof value === 'string') return change(value);
  if (Array.isArray(value)) return value.map((item) => mapStrings(item, change));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, item]) => [
      key,
      vocabulary.has(key) && typeof item === 'string' ? item : mapStrings(item, change),
    ]),
  );
}

/** A to Z, then AA, AB … */
function letter(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letter(Math.floor(index / 26) - 1) + last;
}
