import { say } from '@boothwright/fit';
import type { AstNode } from 'langium';
import {
  type Block,
  type Document,
  isAccept,
  isBetween,
  isBlock,
  isDocument,
  isFlag,
  isLimit,
  isNames,
  isOdd,
  isPlacement,
  isProperty,
  type Odd,
} from '../generated/ast.js';
import { type Holder, isPropertyNode, itemsOf, kindOf, originOf, partOf, type PropertyNode } from '../syntax/tree.js';
import { interpret } from '../values/interpret.js';
import { kinds, type PropertyEntry } from '../vocabulary/entries.js';
import { blocksWith, nestedBlocks, propertyOf } from '../vocabulary/vocabulary.js';
import { checkBetween, checkNamesProperty } from './check-names.js';
import { checkOdd, continues } from './check-odd.js';
import { checkAccept, checkLimit } from './check-reasons.js';
import { aOf, type Context, orOf } from './context.js';

/** What a block says, item by item; or what stands outside any block. */
export function checkItems(holder: Holder | Document, context: Context): void {
  const items: readonly AstNode[] = isDocument(holder) ? [...holder.accepts, ...holder.strays] : itemsOf(holder);
  const slots = new Map<string, PropertyNode>();
  items.forEach((item, index) => {
    const next = items[index + 1] ?? (isDocument(holder) ? undefined : strayAfter(holder, context));
    if (isPropertyNode(item)) checkProperty(item, holder, next, slots, context);
    else if (isOdd(item)) checkOdd(item, items[index - 1], holder, context);
    else if (isAccept(item)) checkAccept(item, context);
    else if (isLimit(item)) checkLimit(item, holder, context);
    else if (isBlock(item) && isDocument(holder)) checkStrayBlock(item, context);
  });
}

/** What follows a placement outside any block. */
function strayAfter(holder: Holder, { root }: Context): AstNode | undefined {
  if (!isPlacement(holder)) return undefined;
  const end = holder.$cstNode?.end ?? 0;
  return root.strays.find(({ $cstNode }) => $cstNode !== undefined && $cstNode.offset >= end);
}

function checkProperty(
  node: PropertyNode,
  holder: Holder | Document,
  next: AstNode | undefined,
  slots: Map<string, PropertyNode>,
  context: Context,
): void {
  const entry = isDocument(holder) ? undefined : propertyOf(kindOf(holder), node.key);
  if (!entry) {
    context.say('misplaced', partOf(node, 'key'), homeOf(node.key, holder));
    return;
  }
  const slot = entry.slot ?? entry.key;
  const earlier = slots.get(slot);
  slots.set(slot, earlier ?? node);
  if (earlier && !entry.repeats) {
    const same = propertyOf(kindOf(holder as Holder), earlier.key) === entry;
    const message = same
      ? say`\`${node.key}\` is said twice: keep one.`
      : say`\`${earlier.key}\` and \`${node.key}\` both say ${slot}: keep one.`;
    const related = [{ origin: originOf(partOf(earlier, 'key')), message: say`Said first here` }];
    context.report({ code: 'duplicate-property', message, range: partOf(node, 'key')!.range, related });
  }
  checkValues(node, entry, next, context);
}

function checkValues(node: PropertyNode, entry: PropertyEntry, next: AstNode | undefined, context: Context): void {
  if (isFlag(node)) return;
  if (isOdd(next) && continues(next, node)) {
    context.settled.add(next);
    checkContinued(node, entry, next, context);
    return;
  }
  if (isProperty(node)) interpret(node, entry, context);
  else if (isNames(node)) checkNamesProperty(node, entry, context);
  else if (isBetween(node)) checkBetween(node, entry, context);
}

/** A value after a value without a comma, or a value that cannot be one. */
function checkContinued(node: PropertyNode, entry: PropertyEntry, next: Odd, context: Context): void {
  const { shape } = entry;
  const typed = (next.key ?? next.stray)!;
  const takesMore = shape.is === 'point' || ('many' in shape && shape.many);
  const hasValue = isProperty(node)
    ? node.values.length > 0
    : isNames(node) && node.refs.length + node.walls.length > 0;
  const place = partOf(next, next.key === undefined ? 'stray' : 'key');
  const message = !hasValue
    ? say`\`${node.key}\` cannot be \`${typed}\`: write it like \`${node.key} ${entry.example}\`.`
    : takesMore
      ? say`A comma is missing before \`${typed}\`.`
      : say`\`${node.key}\` takes one value: \`${typed}\` is one too many.`;
  context.say('stray-value', place, message);
}

function checkStrayBlock(block: Block, context: Context): void {
  const home = nestedHomes(block.kind);
  context.say('misplaced', partOf(block, 'kind'), say`\`${block.kind}\` belongs in a ${home} block.`);
}

function nestedHomes(kind: string): string {
  const homes = Object.keys(kinds) as (keyof typeof kinds)[];
  return homes.find((home) => nestedBlocks(home).some(({ word }) => word === kind)) ?? 'different';
}

/** Where a property belongs. */
function homeOf(key: string, holder: Holder | Document): string {
  const homes = blocksWith(key);
  const nested = isDocument(holder) ? undefined : homes.find(({ within }) => within === kindOf(holder));
  if (nested) return say`\`${key}\` belongs in the ${nested.word} block: ${nested.example}.`;
  const words = [...new Set(homes.map(({ word }) => `\`${word}\``))];
  const home = words.length > 4 ? undefined : orOf(words);
  if (isDocument(holder))
    return home === undefined
      ? say`\`${key}\` has no meaning outside a block: put it in one, such as \`desk Left { … }\`.`
      : say`\`${key}\` has no meaning outside a block: it belongs in ${home}.`;
  const here = aOf(kinds[kindOf(holder)]);
  return home === undefined
    ? say`\`${key}\` has no meaning in ${here}.`
    : say`\`${key}\` has no meaning in ${here}: it belongs in ${home}.`;
}
