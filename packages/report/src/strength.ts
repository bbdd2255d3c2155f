import type { Source, Strength } from '@boothwright/fit';

/** What each strength of a figure means to somebody who relies on it. */
export const strengthMeanings: Record<Strength, string> = {
  strong: 'strong: the document says so, and others agree',
  medium: 'medium: one document, or read in another that quotes it',
  weak: 'weak: sources disagree, or a bound of our own',
  'from memory': 'from memory: not read again, check it before you rely on it',
  'common practice, no source': 'common practice, no source',
};

/** How a source was read, in words that stand alone. */
export const readingMeanings: Record<Source['read'], string> = {
  'in the source': 'read in the document itself',
  'in a secondary source': 'read in a document that quotes it',
  'from memory': 'from memory',
  derived: 'derived',
  'own bound': 'own bound',
};

/** The same as a remark beside a source's name; nothing where it was read itself, or is no document. */
export function readingRemark(read: Source['read'] | undefined): string {
  if (read === 'in a secondary source') return ' (quoted)';
  return read === 'from memory' ? ' (from memory)' : '';
}

/** The warning that a figure's strength asks for; nothing for figures read in good sources. */
export function strengthWarning(strength: Strength): string | undefined {
  return strength === 'strong' || strength === 'medium' ? undefined : strength;
}
