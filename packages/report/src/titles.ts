import { checks, dimensionWords, type Source, type Strength } from '@boothwright/fit';
import { capital, spaced } from './words.js';

const known = new Map(checks.map((check) => [check.id, check]));

/** A check's title, for a heading or a row. */
export function titleOf(check: string): string {
  return known.get(check)?.title ?? capital(spaced(check));
}

/** The documents behind a check, and how much weight they bear together. */
export function foundationOf(
  check: string,
): { readonly sources: readonly Source[]; readonly strength: Strength } | undefined {
  return known.get(check);
}

/** A body dimension as people say it. */
export function dimensionTitle(dimension: string): string {
  const words: Readonly<Record<string, string>> = dimensionWords;
  return words[dimension] ?? spaced(dimension);
}
