import { checks, type Check } from '@boothwright/fit';
import { readingMeanings, strengthMeanings } from '../strength.js';
import { capital } from '../words.js';

/**
 * All that is known of a code that a diagnostic bears: of a check, or of a fault of the text. The terminal, the editor's page and the rule
 * list of a machine-readable report show this, each in its own form.
 */
export interface Page {
  readonly code: string;
  readonly title: string;
  /** What the code stands for: 'check of the group seat'. */
  readonly kind: string;
  /** The question that it answers, or what it means. */
  readonly lead: string;
  readonly parts: readonly PagePart[];
}

export type PagePart =
  | { readonly heading: string; readonly text: string }
  | { readonly heading: string; readonly entries: readonly PageEntry[] }
  /** Booth files, or the lines of one that matter. */
  | { readonly heading: string; readonly example: string };

export interface PageEntry {
  readonly name: string;
  readonly says: string;
}

/** A fault of the text, as the language explains it. */
export interface FaultHelp {
  readonly title: string;
  readonly means: string;
  readonly instead: string;
  /** A text that has the fault, and the same without it; absent where no text causes it. */
  readonly example?: { readonly wrong: string; readonly right: string };
}

export function pageOfCheck(check: Check): Page {
  const { id, group, title, question, computes, limits, sources, unpublished, strength, caution, example } = check;
  return {
    code: id,
    title,
    kind: `check of the group ${group}`,
    lead: question,
    parts: [
      { heading: 'How it is computed', text: computes },
      { heading: 'Limits', text: limits },
      {
        heading: 'Sources',
        entries: sources.map(({ name, says, read }) => ({ name: `${name} (${readingMeanings[read]})`, says })),
      },
      ...(unpublished === undefined ? [] : [{ heading: 'No published figure', text: sentence(unpublished) }]),
      { heading: 'Strength', text: strengthMeanings[strength] },
      ...(caution === undefined ? [] : [{ heading: 'Caution', text: caution }]),
      { heading: 'It fires on', example: example.fires },
      { heading: 'It does not fire on', example: example.passes },
    ],
  };
}

function sentence(text: string): string {
  return `${capital(text)}.`;
}

/** The page of the check with that id, if there is one. */
export function pageOfCode(code: string): Page | undefined {
  const check = checks.find(({ id }) => id === code);
  return check && pageOfCheck(check);
}

/** A page for each check, in the order of the catalogue. */
export function checkPages(): Page[] {
  return checks.map(pageOfCheck);
}

export function pageOfFault(code: string, { title, means, instead, example }: FaultHelp): Page {
  return {
    code,
    title,
    kind: 'fault of the text',
    lead: means,
    parts: [
      { heading: 'What to do', text: instead },
      ...(example
        ? [
            { heading: 'It is said of', example: example.wrong },
            { heading: 'It is not said of', example: example.right },
          ]
        : []),
    ],
  };
}
