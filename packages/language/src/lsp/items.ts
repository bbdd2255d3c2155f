import { exampleIn, said, say } from '@boothwright/fit';
import type { CompletionItem, Range } from 'vscode-languageserver-types';
import type { Token } from '../syntax/faults.js';
import type { Kind, PropertyEntry } from '../vocabulary/entries.js';
import { entryOf, nestedBlocks, propertyOf, topLevel } from '../vocabulary/vocabulary.js';
import { declarationSnippet, valueSnippet, type Writing } from './snippets.js';

/** What completion offers, before it is bound to a place in the text. */
export type Item = Omit<CompletionItem, 'textEdit'> & {
  readonly snippet?: string;
  /** What it replaces, if that is more than the word at the cursor. */
  readonly range?: Range;
  /** It only shows what such a value looks like. */
  readonly isExample?: true;
};

export const itemKind = {
  keyword: 14,
  property: 10,
  value: 12,
  reference: 18,
  unit: 11,
  snippet: 15,
  file: 17,
} as const;

/** What may stand outside of blocks, after a token of that kind. */
export function outerItems(last: string | undefined, writing: Writing): Item[] {
  if (last !== undefined && topLevel.some(({ word }) => word === last && word !== 'place')) return [];
  return [
    ...topLevel.map((entry): Item => {
      const snippet = entry.kind === 'place' ? placeSnippet(writing) : declarationSnippet(entry, writing);
      return { label: entry.word, kind: itemKind.keyword, documentation: said(entry.says), snippet };
    }),
    {
      label: 'import',
      kind: itemKind.keyword,
      documentation: say`Use what another file declares.`,
      snippet: 'import "$1"',
    },
    acceptItem(),
  ];
}

/** One piece at a place: a row is said rarely. */
function placeSnippet({ names, show }: Writing): string {
  const [first = 'Left'] = names(['desk', 'rack']);
  return `place \${1:${first}} at \${2:${exampleIn('14ft', show)}}, \${3:${exampleIn('6ft', show)}}`;
}

function acceptItem(): Item {
  return {
    label: 'accept',
    kind: itemKind.keyword,
    documentation: say`Tolerate a finding on purpose, with a reason that the report repeats.`,
  };
}

/** The properties that are not yet said, and the blocks that may stand here. */
export function propertyItems(kind: Kind, before: readonly Token[], after: readonly Token[], writing: Writing): Item[] {
  const words = new Set([...before, ...restOfBlock(after)].map(({ tokenType }) => tokenType.name));
  const known = [...words].map((word) => propertyOf(kind, word));
  const slots = new Set(known.filter((entry) => entry && !entry.repeats).map((entry) => entry!.slot ?? entry!.key));
  const properties = entryOf(kind).properties.filter(({ key, slot }) => !slots.has(slot ?? key));
  const nested = nestedBlocks(kind).filter(({ once, word }) => !once || !words.has(word));
  return [
    ...properties.map((entry): Item => {
      const snippet = entry.shape.is === 'flag' ? undefined : `${entry.key} ${valueSnippet(entry, writing.show)}`;
      return {
        label: entry.key,
        kind: itemKind.property,
        documentation: said(entry.says),
        detail: detailOf(entry),
        snippet,
      };
    }),
    ...nested.map((entry): Item => {
      return {
        label: entry.word,
        kind: itemKind.keyword,
        documentation: said(entry.says),
        snippet: declarationSnippet(entry, writing),
      };
    }),
    ...(kind === 'place' ? [] : [acceptItem()]),
    ...(kind === 'booth' ? [{ label: 'limit', kind: itemKind.keyword }] : []),
  ];
}

/** The tokens after the cursor that belong to the same block, nested blocks left out. */
function restOfBlock(after: readonly Token[]): Token[] {
  let depth = 0;
  const rest: Token[] = [];
  for (const token of after) {
    const type = token.tokenType.name;
    if (type === '{') depth++;
    else if (type === '}' && --depth < 0) break;
    else if (depth === 0) rest.push(token);
  }
  return rest;
}

/** The words that may go with a quantity: directions, and what a height is measured from. */
export function aroundItems(shape: PropertyEntry['shape'], last: string | undefined): Item[] | undefined {
  if (last === 'above' || last === 'below') return 'from' in shape ? wordsOf(shape.from ?? []) : undefined;
  if (last !== 'QUANTITY') return undefined;
  const from =
    'from' in shape ? (shape.from ?? []).map((each) => `${each === 'seat' ? 'below' : 'above'} ${each}`) : [];
  const directions = 'directions' in shape ? (shape.directions ?? []) : [];
  return wordsOf([...directions, ...from]);
}

function wordsOf(words: readonly string[]): Item[] {
  return words.map((label) => ({ label, kind: itemKind.value }));
}

export function wordItems(words: readonly string[], entry: PropertyEntry): Item[] {
  return words.map((label) => ({
    label,
    kind: itemKind.value,
    ...(label === entry.default && { detail: say`default` }),
  }));
}

export function exampleItem(entry: PropertyEntry, { show }: Writing): Item {
  return {
    label: exampleIn(entry.example, show),
    kind: itemKind.value,
    detail: say`example`,
    documentation: said(entry.says),
    isExample: true,
  };
}

function detailOf(entry: PropertyEntry): string | undefined {
  return entry.default === undefined ? undefined : say`default ${entry.default}`;
}
