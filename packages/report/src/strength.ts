import type { Strength } from '@boothwright/fit';

/** What each strength of a figure means to somebody who relies on it. */
export const strengthMeanings: Record<Strength, string> = {
  strong: 'strong: the document says so, and others agree',
  medium: 'medium: one document, or read in another that quotes it',
  weak: 'weak: sources disagree, or a bound of our own',
  'from memory': 'from memory: not read again, check it before you rely on it',
  'common practice, no source': 'common practice, no source',
};
