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

/** Says an English text in the language of whoever reads the page. */
export type Words = (english: string) => string;

const asItIs: Words = (english) => english;

const words = {
  computes: 'How it is computed',
  limits: 'Limits',
  sources: 'Sources',
  unpublished: 'No published figure',
  strength: 'Strength',
  caution: 'Caution',
  fires: 'It fires on',
  passes: 'It does not fire on',
  instead: 'What to do',
  wrong: 'It is said of',
  right: 'It is not said of',
  check: 'check of the group',
  fault: 'fault of the text',
} as const;

/** The pages’ own words, for a translation. */
export const pageWords: readonly string[] = [
  ...Object.values(words),
  ...Object.values(strengthMeanings),
  ...Object.values(readingMeanings),
];

export function pageOfCheck(check: Check, say: Words = asItIs): Page {
  const { id, group, title, question, computes, limits, sources, unpublished, strength, caution, example } = check;
  return {
    code: id,
    title: say(title),
    kind: `${say(words.check)} ${group}`,
    lead: say(question),
    parts: [
      { heading: say(words.computes), text: say(computes) },
      { heading: say(words.limits), text: say(limits) },
      {
        heading: say(words.sources),
        entries: sources.map(({ name, says, read }) => ({
          name: `${say(name)} (${say(readingMeanings[read])})`,
          says: say(says),
        })),
      },
      ...(unpublished === undefined ? [] : [{ heading: say(words.unpublished), text: sentence(say(unpublished)) }]),
      { heading: say(words.strength), text: say(strengthMeanings[strength]) },
      ...(caution === undefined ? [] : [{ heading: say(words.caution), text: say(caution) }]),
      { heading: say(words.fires), example: example.fires },
      { heading: say(words.passes), example: example.passes },
    ],
  };
}

function sentence(text: string): string {
  return `${capital(text)}.`;
}

/** The page of the check with that id, if there is one. */
export function pageOfCode(code: string, say: Words = asItIs): Page | undefined {
  const check = checks.find(({ id }) => id === code);
  return check && pageOfCheck(check, say);
}

/** A page for each check, in the order of the catalogue. */
export function checkPages(say: Words = asItIs): Page[] {
  return checks.map((check) => pageOfCheck(check, say));
}

export function pageOfFault(code: string, { title, means, instead, example }: FaultHelp, say: Words = asItIs): Page {
  return {
    code,
    title: say(title),
    kind: say(words.fault),
    lead: say(means),
    parts: [
      { heading: say(words.instead), text: say(instead) },
      ...(example
        ? [
            { heading: say(words.wrong), example: example.wrong },
            { heading: say(words.right), example: example.right },
          ]
        : []),
    ],
  };
}
