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

/** 'letters' puts 'Person A', 'Person B' … in place of the operators' names. */
export type NameStyle = 'full' | 'letters';

/** Whoever is named in one booth, or in several that are compared. */
export interface People {
  readonly operators: readonly { readonly name: string }[];
}

/** The people of several booths, each name once: a person has one letter in all. */
export function peopleOf(booths: readonly Booth[]): People {
  const names = new Set(booths.flatMap(({ operators }) => operators.map(({ name }) => name)));
  return { operators: [...names].map((name) => ({ name })) };
}

/**
 * Puts 'Person A', 'Person B' … in place of the operators' names, wherever they are written in an assessment or in advice: also in
 * messages, remedies and reasons. Crowds keep their names.
 */
export function lettersFor({ operators }: People): <T>(value: T) => T {
  const letters = new Map(operators.map(({ name }, index) => [name, `Person ${letter(index)}`]));
  if (letters.size === 0) return (value) => value;
  const pattern = new RegExp(`(?<![\\p{L}\\p{N}])(?:${alternatives([...letters.keys()])})`, 'gu');
  const rename = (text: string) => text.replace(pattern, (name) => letters.get(name) ?? name);
  return <T>(value: T) => mapStrings(value, rename) as T;
}

/** Longest first: a name that starts with another name is still found whole. 'NoorDesk' and 'Noor_2' hold Noor's name, 'Noora' does not. */
function alternatives(names: readonly string[]): string {
  return [...names]
    .sort((a, b) => b.length - a.length)
    .map((name) => {
      const end = /\p{Ll}$/u.test(name) ? '(?![\\p{Ll}\\p{M}\\p{N}])' : '(?![\\p{L}\\p{M}\\p{N}])';
      return name.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&') + end;
    })
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

/** What the first page says of names; nothing where the booth file names nobody. */
export function namesMean(names: NameStyle, { operators }: People): string | undefined {
  if (operators.length === 0) return undefined;
  return names === 'letters'
    ? 'Names are left out: Person A, Person B … stand for the operators, the same letter always for the same person. Crowds keep their names.'
    : 'Operators are named as in the booth file. Body sizes are personal: ask them before you hand this on, or make it again with letters in place of names.';
}
