import type { Lexer } from 'langium';
import { type DisplayUnit, exampleIn } from '@boothwright/fit';
import type { Token } from '../syntax/faults.js';
import type { BlockEntry, Kind, PropertyEntry } from '../vocabulary/entries.js';
import { propertyOf } from '../vocabulary/vocabulary.js';

/** What snippets of a file are written with. */
export interface Writing {
  readonly lexer: Lexer;
  /** The file's own unit: examples are written in it. */
  readonly show: DisplayUnit;
  /** The names that may be referred to, of those kinds. */
  readonly names: (kinds: readonly Kind[]) => readonly string[];
}

/** A whole declaration with a tab stop at each value: the entry's example, with the file's unit and names. */
export function declarationSnippet(entry: BlockEntry, writing: Writing): string {
  const { tokens } = writing.lexer.tokenize(entry.example, { mode: 'partial' });
  const name = nameTokenOf(entry, tokens);
  const used = new Map<string, number>();
  let [written, at, key, count] = ['', 0, '', 0];
  const stop = (text: string, choices: readonly string[] = []) => tabStop(++count, text, choices);
  const stopFor = (token: Token): string | undefined => {
    const type = token.tokenType.name;
    if (type === 'QUANTITY') return stop(exampleIn(token.image, writing.show));
    if (type === 'TEXT') return `"${stop(token.image.slice(1, -1))}"`;
    if (token === name) return stop(token.image, entry.naming === 'reference' ? writing.names(['monitor']) : []);
    if (type !== 'ID') return token.image;
    const names = namesFor(entry, key, writing);
    const index = used.get(key) ?? 0;
    used.set(key, index + 1);
    if (index > 0 && names.length > 0 && index >= names.length) return undefined;
    return stop(token.image, [...names.slice(index), ...names.slice(0, index)]);
  };
  for (const token of tokens) {
    if (propertyOf(entry.kind, token.tokenType.name)) key = token.tokenType.name;
    const part = stopFor(token);
    const before = entry.example.slice(at, token.startOffset);
    at = token.endOffset! + 1;
    written = part === undefined ? written.replace(/,$/, '') : written + before + part;
  }
  return written + entry.example.slice(at);
}

/** A property's example as a tab stop, in the file's unit. */
export function valueSnippet({ example, shape }: PropertyEntry, show: DisplayUnit): string {
  const isChosen = shape.is === 'names' || shape.is === 'words' || shape.is === 'wall' || shape.is === 'sides';
  return isChosen ? '$1' : `\${1:${escaped(exampleIn(example, show))}}`;
}

/** The quantity that an example begins with. */
export function firstOf(example: string): string {
  return /^\S+(?: \d+\/\d+\S*)?/.exec(example)?.[0] ?? example;
}

/** A snippet as plain text, for an editor that knows no tab stops. */
export function plainText(snippet: string): string {
  return snippet
    .replace(/\$\{\d+\|((?:\\.|[^,|\\])*)[^}]*\|\}/g, '$1')
    .replace(/\$\{\d+:((?:\\.|[^}\\])*)\}/g, '$1')
    .replace(/\$\d+/g, '')
    .replace(/\\([$}\\|,])/g, '$1');
}

function tabStop(number: number, text: string, choices: readonly string[]): string {
  if (choices.length > 1) return `\${${number}|${choices.map(escapedChoice).join(',')}|}`;
  return `\${${number}:${escaped(choices[0] ?? text)}}`;
}

function nameTokenOf({ naming, word }: BlockEntry, tokens: readonly Token[]): Token | undefined {
  if (naming === 'none' || naming === 'title') return undefined;
  const head = tokens.findIndex(({ image }) => image === word);
  return tokens[head + 1];
}

function namesFor({ kind }: BlockEntry, key: string, { names }: Writing): readonly string[] {
  const shape = propertyOf(kind, key)?.shape;
  return shape?.is === 'names' ? names(shape.kinds) : [];
}

function escaped(text: string): string {
  return text.replace(/[$}\\]/g, '\\$&');
}

function escapedChoice(text: string): string {
  return text.replace(/[,|\\]/g, '\\$&');
}
