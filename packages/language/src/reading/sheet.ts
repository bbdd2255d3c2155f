import type { AstNode, CstNode } from 'langium';
import type { Given, Named, Origin, PlanPoint, Range, Reference, Years } from '@boothwright/fit';
import {
  type Block,
  isBetween,
  isFlag,
  isNames,
  isProperty,
  isQuantity,
  isScreen,
  type Property,
  type Screen,
} from '../generated/ast.js';
import { parseQuantity } from '../quantity/quantity.js';
import {
  type Holder,
  isInPlace,
  kindOf,
  nestedOf,
  originOf,
  partOf,
  propertiesOf,
  type PropertyNode,
} from '../syntax/tree.js';
import { meaningOf } from '../values/interpret.js';
import type { Meaning } from '../values/meaning.js';
import type { Kind, PropertyEntry } from '../vocabulary/entries.js';
import { propertyOf } from '../vocabulary/vocabulary.js';

/** What one block says, property by property, with defaults. Faulty values are as good as absent. */
export class Sheet {
  private readonly kind: Kind;
  private readonly nodes = new Map<string, PropertyNode[]>();

  constructor(readonly holder: Holder) {
    this.kind = kindOf(holder);
    for (const node of propertiesOf(holder)) {
      const key = propertyOf(this.kind, node.key)?.key;
      if (key) this.nodes.set(key, [...(this.nodes.get(key) ?? []), node]);
    }
  }

  get origin(): Origin {
    return originOf(this.holder.$cstNode);
  }

  /** The place of the keyword, which stands for a block without a name. */
  get headOrigin(): Origin {
    return originOf(partOf(this.holder, 'kind'));
  }

  /** A length that cannot be a range. */
  length(key: string): Given<number> | undefined {
    return this.given(key, (meaning) => (meaning.is === 'length' ? meaning.min : undefined));
  }

  lengthOr(key: string): Given<number> {
    return this.length(key) ?? this.fallback(key, (value) => value);
  }

  ages(key: string): Given<{ readonly min: Years; readonly max: Years }> | undefined {
    return this.given(key, (meaning) => (meaning.is === 'ages' ? { min: meaning.min, max: meaning.max } : undefined));
  }

  range(key: string): Given<Range> | undefined {
    return this.given(key, (meaning) => (meaning.is === 'length' ? { min: meaning.min, max: meaning.max } : undefined));
  }

  /** An angle, a share, a weight or a count. */
  number(key: string): Given<number> | undefined {
    return this.given(key, (meaning) => (meaning.is === 'number' ? meaning.value : undefined));
  }

  numberOr(key: string): Given<number> {
    return this.number(key) ?? this.fallback(key, (value) => value);
  }

  point(key: string): Given<PlanPoint> | undefined {
    return this.given(key, (meaning) => (meaning.is === 'point' ? meaning.point : undefined));
  }

  pair(key: string): Given<{ readonly across: number; readonly down: number }> | undefined {
    return this.given(key, (meaning) =>
      meaning.is === 'pair' ? { across: meaning.across, down: meaning.down } : undefined,
    );
  }

  text(key: string): Given<string> | undefined {
    return this.given(key, (meaning) => (meaning.is === 'text' ? meaning.text : undefined));
  }

  /** One word of the language; the vocabulary's words for it are those of type `T`. */
  word<T extends string>(key: string): Given<T> | undefined {
    return this.given(key, (meaning) => (meaning.is === 'words' ? (meaning.words[0] as T) : undefined));
  }

  wordOr<T extends string>(key: string): Given<T> {
    return this.word<T>(key) ?? { value: this.entry(key).default as T, isDefault: true };
  }

  words<T extends string>(key: string): Given<readonly T[]> | undefined {
    return this.given(key, (meaning) => (meaning.is === 'words' ? (meaning.words as readonly T[]) : undefined));
  }

  flag(key: string): boolean {
    return this.nodes.get(key)?.some(isFlag) ?? false;
  }

  flagOrigin(key: string): Origin | undefined {
    const node = this.nodes.get(key)?.find(isFlag);
    return node && originOf(node.$cstNode);
  }

  /** The blocks that a property names, if they are known and of the right kind. */
  references(...keys: readonly string[]): readonly Reference[] {
    const nodes = keys.flatMap((key) => this.nodes.get(key) ?? []).filter(isNames);
    nodes.sort((a, b) => (a.$cstNode?.offset ?? 0) - (b.$cstNode?.offset ?? 0));
    return nodes.flatMap((node) => {
      const shape = propertyOf(this.kind, node.key)?.shape;
      const kinds: readonly Kind[] = shape?.is === 'names' ? shape.kinds : [];
      const refs = shape?.is === 'names' && !shape.many ? node.refs.slice(0, 1) : node.refs;
      return refs.filter(({ ref }) => ref && kinds.includes(ref.kind)).map(referenceOf);
    });
  }

  /** The meaning of a property and the node that says it. */
  meaning(key: string): { readonly meaning: Meaning; readonly node: Property } | undefined {
    const node = this.nodes.get(key)?.find(isProperty);
    const entry = node && propertyOf(this.kind, key);
    const meaning = entry && meaningOf(node, entry);
    return meaning && { meaning, node };
  }

  nodesOf<T extends AstNode>(key: string, guard: (node: unknown) => node is T): readonly T[] {
    const nodes: readonly AstNode[] = this.nodes.get(key) ?? [];
    return nodes.filter(guard);
  }

  between() {
    return this.nodesOf('between', isBetween)[0];
  }

  /** The blocks of that kind in this one. */
  blocks(kind: Kind): readonly Sheet[] {
    return nestedOf(this.holder)
      .filter((block): block is Block => !isScreen(block) && block.kind === kind && isInPlace(block))
      .map((block) => new Sheet(block));
  }

  screens(): readonly (Sheet & { readonly holder: Screen })[] {
    return nestedOf(this.holder)
      .filter(isScreen)
      .filter(isInPlace)
      .map((screen) => new Sheet(screen) as Sheet & { readonly holder: Screen });
  }

  given<T>(key: string, pick: (meaning: Meaning) => T | undefined): Given<T> | undefined {
    const found = this.meaning(key);
    const value = found && pick(found.meaning);
    return found && value !== undefined
      ? { value, origin: valueOrigin(found.node, found.meaning), isDefault: false }
      : undefined;
  }

  private fallback<T>(key: string, make: (value: number) => T): Given<T> {
    const quantity = parseQuantity(this.entry(key).default ?? '');
    if (!('value' in quantity)) throw new Error(`The vocabulary has no default for '${key}' of ${this.kind}.`);
    return { value: make(quantity.value), isDefault: true };
  }

  private entry(key: string): PropertyEntry {
    const entry = propertyOf(this.kind, key);
    if (!entry) throw new Error(`The vocabulary has no '${key}' in ${this.kind}.`);
    return entry;
  }
}

/** The name of a block and its place; nothing for a block without a name. */
export function namedOf({ holder }: Sheet): Named | undefined {
  if (!('name' in holder) || !holder.name) return undefined;
  return { name: holder.name, origin: originOf(partOf(holder, 'name')) };
}

export function referenceOf(reference: { readonly $refText: string; readonly $refNode?: CstNode }): Reference {
  return { name: reference.$refText, origin: originOf(reference.$refNode) };
}

/**
 * From the first value to the last. A length leaves out the words around it (`above desk`), so that another length can take its
 * place; an angle keeps its direction.
 */
function valueOrigin(node: Property, meaning: Meaning): Origin {
  const [value] = node.values;
  const first = originOf(value!.$cstNode);
  if (meaning.is === 'length' && isQuantity(value)) {
    const end = originOf(partOf(value, value.upper === undefined ? 'text' : 'upper')).end;
    return { ...first, end };
  }
  return { ...first, end: originOf(node.values[node.values.length - 1]!.$cstNode).end };
}
