import { say } from '@boothwright/fit';
import type { AstNode } from 'langium';
import { type Document, isDocument, isFlag, isNames, isOdd, isProperty, type Odd } from '../generated/ast.js';
import { type Holder, entryOfProperty, kindOf, partOf, type PropertyNode } from '../syntax/tree.js';
import { didYouMean, nearest } from '../values/nearest.js';
import { kinds } from '../vocabulary/entries.js';
import { entryOf, nestedBlocks, spellings, topLevel } from '../vocabulary/vocabulary.js';
import { aOf, type Context } from './context.js';

const answers = new Set(['yes', 'no', 'true', 'false', 'off']);

/** Whether something that is not understood continues the property before it, which then speaks for both. */
export function continues(odd: Odd, node: PropertyNode): boolean {
  if (isFlag(node) || lineOf(odd) !== endLineOf(node)) return false;
  if (odd.stray !== undefined) return true;
  const shape = entryOfProperty(node)?.shape;
  if (odd.values.length > 0 || odd.items.length > 0) return false;
  if (shape?.is === 'words') return isProperty(node) && shape.words.includes(odd.key!);
  return isNames(node) && shape?.is === 'names' && node.refs.length > 0 && /^\p{Lu}/u.test(odd.key!);
}

/** Something that the language does not know. */
export function checkOdd(odd: Odd, previous: AstNode | undefined, holder: Holder | Document, context: Context): void {
  if (isOdd(previous) && lineOf(odd) === endLineOf(previous)) return;
  if (context.settled.has(odd)) return;
  if (odd.stray !== undefined) {
    context.say(
      'stray-value',
      partOf(odd, 'stray'),
      say`\`${odd.stray}\` belongs to no property: say which before it.`,
    );
    return;
  }
  const key = odd.key!;
  const place = partOf(odd, 'key');
  if (isFlag(previous) && answers.has(key) && lineOf(odd) === endLineOf(previous)) {
    const message = say`\`${previous.key}\` takes no value: write it, or leave it out.`;
    context.say('stray-value', place, message, { text: key, suggestions: [''] });
    return;
  }
  if (isDocument(holder)) {
    const suggestions = nearest(key, [...topLevel.map(({ word }) => word), 'import', 'place', 'accept']);
    const hint =
      suggestions.length > 0
        ? didYouMean(suggestions)
        : ` ${say`It can be a desk, a workstation, a walkway and so on.`}`;
    context.say('unknown-property', place, `${say`\`${key}\` is not known in a booth file.`}${hint}`, {
      text: key,
      suggestions,
    });
    return;
  }
  const kind = kindOf(holder);
  if (topLevel.some(({ word }) => word === key)) {
    const message = say`\`${key}\` cannot stand in ${aOf(kinds[kind])}: declare it on its own.`;
    context.say('misplaced', place, message);
    return;
  }
  const suggestions = nearest(key, wordsOf(holder));
  const known = suggestions.length > 0 ? '' : ` ${say`It has ${wordsOf(holder).slice(0, 6).join(', ')} and so on.`}`;
  const message = `${say`\`${key}\` is no property of ${aOf(kinds[kind])}.`}${didYouMean(suggestions)}${known}`;
  context.say('unknown-property', place, message, { text: key, suggestions });
}

function wordsOf(holder: Holder): string[] {
  const kind = kindOf(holder);
  return [
    ...entryOf(kind).properties.flatMap(spellings),
    ...nestedBlocks(kind).map(({ word }) => word),
    ...(kind === 'place' ? [] : ['accept']),
    ...(kind === 'booth' ? ['limit'] : []),
  ];
}

function lineOf(node: AstNode): number | undefined {
  return node.$cstNode?.range.start.line;
}

function endLineOf(node: AstNode): number | undefined {
  return node.$cstNode?.range.end.line;
}
