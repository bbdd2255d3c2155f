import type { Assessment } from '@boothwright/fit';
import { lettersFor, namesMean, type NameStyle, peopleOf } from '../names.js';

/** A booth file's assessment, and what it is called beside others. */
export interface Layout {
  readonly label: string;
  readonly assessment: Assessment;
}

/** Layouts with names as asked for, a person having the same letter in all of them, and what to say of that. */
export function namedLayouts(
  layouts: readonly Layout[],
  names: NameStyle,
): { readonly layouts: readonly Layout[]; readonly said: string | undefined } {
  const people = peopleOf(layouts.map(({ assessment }) => assessment.booth));
  return {
    layouts: names === 'letters' ? lettersFor(people)(layouts) : layouts,
    said: namesMean(names, people),
  };
}
