import type { Token } from '../syntax/faults.js';
import type { Kind } from '../vocabulary/entries.js';
import { nestedBlocks, propertyOf, topLevel } from '../vocabulary/vocabulary.js';

/** Where in a file a cursor stands, as far as completion cares. */
export interface Place {
  /** The block around the cursor; nothing outside of blocks, or in a block that is not known. */
  readonly kind?: Kind;
  /** The name of that block. */
  readonly name?: string;
  readonly isOutside: boolean;
  /** The tokens of this block, or of the file outside of blocks, before the cursor; of nested blocks, what precedes them and a `}`. */
  readonly before: readonly Token[];
}

/** Finds the place at the end of balanced tokens. */
export function placeOf(tokens: readonly Token[]): Place {
  const levels: { kind?: Kind; name?: string; tokens: Token[] }[] = [{ tokens: [] }];
  for (const token of tokens) {
    const level = levels[levels.length - 1]!;
    if (token.tokenType.name === '{')
      levels.push({ kind: kindOpened(level, levels.length), name: level.tokens.at(-1)?.image, tokens: [] });
    else if (token.tokenType.name === '}') {
      if (levels.length > 1) levels.pop();
      levels[levels.length - 1]!.tokens.push(token);
    } else level.tokens.push(token);
  }
  const { kind, name, tokens: before } = levels[levels.length - 1]!;
  return { kind, name, before, isOutside: levels.length === 1 };
}

/** The kind of the block whose head ends a level's tokens. */
function kindOpened({ kind, tokens }: { kind?: Kind; tokens: readonly Token[] }, depth: number): Kind | undefined {
  const [last, before] = [tokens[tokens.length - 1], tokens[tokens.length - 2]];
  const known = depth === 1 ? topLevel : kind ? nestedBlocks(kind) : [];
  const find = (token: Token | undefined) => known.find(({ word }) => word === token?.tokenType.name)?.kind;
  return find(before) ?? find(last);
}

/** The key whose values the cursor is among, and the values before it. */
export interface Value {
  readonly key: string;
  readonly values: readonly Token[];
}

/** The last key of a place and what follows it. What stands before a brace belongs to that. */
export function valueAt({ kind, before, isOutside }: Place): Value | undefined {
  const brace = before.map(({ tokenType }) => tokenType.name).lastIndexOf('}');
  const isPlacing = before.slice(brace + 1).some(({ image }) => image === 'place');
  for (let index = before.length - 1; index > brace; index--) {
    const key = before[index]!.tokenType.name;
    const isOwn = isOutside
      ? ['import', 'place', 'accept'].includes(key) || (key === 'at' && isPlacing)
      : key === 'accept' || key === 'limit' || (kind !== undefined && isKey(kind, key));
    if (isOwn) return { key, values: before.slice(index + 1) };
  }
  return undefined;
}

function isKey(kind: Kind, key: string): boolean {
  return propertyOf(kind, key) !== undefined || nestedBlocks(kind).some(({ word }) => word === key);
}
