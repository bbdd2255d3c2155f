import { said, say } from '@boothwright/fit';
import type { AstNode, Reference } from 'langium';
import { type Between, type Block, isAccept, type Names } from '../generated/ast.js';
import { namesOf, wantedKinds } from '../references/scope.js';
import { loneComma, partOf } from '../syntax/tree.js';
import { needOf } from '../values/words.js';
import { didYouMean, nearest } from '../values/nearest.js';
import { kinds, type PropertyEntry } from '../vocabulary/entries.js';
import { aOf, type Context, orOf } from './context.js';

/** A property that names blocks, or a wall. */
export function checkNamesProperty(node: Names, entry: PropertyEntry, context: Context): void {
  const { key, refs, walls } = node;
  const { shape, example } = entry;
  const isWall = shape.is === 'wall';
  const many = shape.is === 'names' && shape.many;
  const total = refs.length + walls.length;
  if (total === 0)
    context.say('missing-value', partOf(node, 'key'), say`\`${key}\` needs ${needOf(entry)}, such as ${example}.`);
  else if (loneComma(node)) context.say('missing-value', loneComma(node), say`A name is missing after this comma.`);
  else if (total > 1 && !many) {
    const second = refs[1]?.$refNode ?? partOf(node, 'walls', refs.length > 0 ? 0 : 1);
    context.say('too-many-values', second, say`\`${key}\` takes one name, such as ${example}.`);
  }
  if (isWall) {
    for (const { $refNode, $refText } of refs) {
      const near = nearest($refText, ['back-wall', 'left-wall', 'right-wall', 'stage-wall']);
      const message = `${say`\`${key}\` is one of back-wall, left-wall, right-wall, stage-wall.`}${didYouMean(near)}`;
      context.say('unknown-word', $refNode, message, { text: $refText, suggestions: near });
    }
    return;
  }
  walls.forEach((wall, index) => {
    const wanted = shape.is === 'names' ? orOf(shape.kinds.map((kind) => aOf(kinds[kind]))) : say`a name`;
    context.say('wrong-kind', partOf(node, 'walls', index), say`\`${wall}\` is a wall; ${wanted} is wanted here.`);
  });
  const seen = new Set<string>();
  for (const ref of refs) {
    if (seen.has(ref.$refText))
      context.say('repeated-name', ref.$refNode, say`\`${ref.$refText}\` is already in this list.`);
    else checkReference(ref, node, context);
    seen.add(ref.$refText);
  }
}

/** What bounds a walkway. */
export function checkBetween(node: Between, entry: PropertyEntry, context: Context): void {
  const { sides } = node;
  if (sides.length < 2) {
    context.say(
      'missing-value',
      partOf(node, 'key'),
      say`\`between\` needs ${needOf(entry)}, such as ${entry.example}.`,
    );
  }
  for (const side of sides) if (side.piece) checkReference(side.piece, side, context);
  const [one, other] = sides;
  if (one && other && one.landmark === other.landmark && one.piece?.$refText === other.piece?.$refText)
    context.say('repeated-name', other.$cstNode, say`A walkway runs between two different things.`);
}

/** A name that is not known here, or is of something else. */
export function checkReference(reference: Reference<Block>, container: AstNode, context: Context): void {
  const { $refText: text, $refNode: place, ref: target } = reference;
  if (!text) return;
  const wanted = wantedKinds(container);
  if (target) {
    if (!wanted || wanted.includes(target.kind)) return;
    const message = say`\`${text}\` is ${aOf(kinds[target.kind])}; ${orOf(wanted.map((kind) => aOf(kinds[kind])))} is wanted here.`;
    const suggestions = nearestNames(text, container, context, 3);
    context.say('wrong-kind', place, message, { text, suggestions });
    return;
  }
  const suggestions = nearestNames(text, container, context);
  const hint = suggestions.length > 0 ? didYouMean(suggestions) : hintOf(container, context);
  const fact = wanted
    ? say`There is no ${orOf(wanted.map((kind) => said(kinds[kind])))} called \`${text}\`.`
    : say`Nothing is called \`${text}\` here.`;
  context.say('unknown-name', place, `${fact}${hint}`, { text, suggestions });
}

function nearestNames(text: string, container: AstNode, context: Context, few = 0): string[] {
  const wanted = wantedKinds(container);
  const known = context.visible.flatMap((document) => [...namesOf(document).values()]);
  const names = known.filter(({ kind }) => !wanted || wanted.includes(kind)).map(({ name }) => name!);
  const near = nearest(text, names);
  return near.length > 0 || names.length > few ? near : names;
}

function hintOf(container: AstNode, context: Context): string {
  if (isAccept(container)) return '';
  return context.root.imports.length === 0 ? ` ${say`Declare it here, or import the file that does.`}` : '';
}
