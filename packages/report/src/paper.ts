import type { DisplayUnit } from '@boothwright/fit';

export type Paper = 'letter' | 'a4';

/** The paper that people of a unit have. */
export function paperFor(show: DisplayUnit): Paper {
  return show === 'in' || show === 'ft' ? 'letter' : 'a4';
}
