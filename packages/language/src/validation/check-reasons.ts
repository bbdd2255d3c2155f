import { say } from '@boothwright/fit';
import { type Accept, type Document, isBlock, type Limit } from '../generated/ast.js';
import { readText } from '../syntax/texts.js';
import { type Holder, keywordOf, partOf } from '../syntax/tree.js';
import { readLength } from '../values/lengths.js';
import { didYouMean, nearest } from '../values/nearest.js';
import { checkReference } from './check-names.js';
import type { Context } from './context.js';

/** A finding that is accepted: which, of what, and why. */
export function checkAccept(node: Accept, context: Context): void {
  checkCheck(node, 'accept', context);
  if (node.on && !node.subject)
    context.say('missing-name', keywordOf(node, 'on'), say`Say for what: \`on\` and a name, or leave \`on\` out.`);
  if (node.subject) checkReference(node.subject, node, context);
  checkReason(node, 'accept', context);
}

/** A limit of the file's own: of which check, how much, and why. */
export function checkLimit(node: Limit, holder: Holder | Document, context: Context): void {
  if (!isBlock(holder) || holder.kind !== 'booth') {
    context.say('misplaced', keywordOf(node, 'limit'), say`\`limit\` belongs in the booth block.`);
    return;
  }
  checkCheck(node, 'limit', context);
  const example = '40in';
  if (!node.value)
    context.say(
      'missing-value',
      keywordOf(node, 'limit'),
      say`\`limit\` needs a length after the check, such as ${example}.`,
    );
  else readLength('limit', example, { is: 'length', min: 0, max: 100_000 }, node.value, context);
  checkReason(node, 'limit', context);
}

function checkCheck(node: Accept | Limit, word: 'accept' | 'limit', context: Context): void {
  const { check } = node;
  if (check === undefined) {
    context.say(
      'missing-value',
      keywordOf(node, word),
      say`\`${word}\` needs the name of a check, such as skirt-drop.`,
    );
    return;
  }
  const { all, limits } = context.checks;
  if (word === 'limit' && all.includes(check) && !limits.includes(check)) {
    const instead = say`It has bounds on both sides, or of a body. Accept the finding with a reason instead.`;
    context.say(
      'no-single-limit',
      partOf(node, 'check'),
      `${say`\`${check}\` takes no limit of the file’s own.`} ${instead}`,
    );
    return;
  }
  if (all.includes(check)) return;
  const suggestions = nearest(check, word === 'limit' ? limits : all);
  const message = `${say`There is no check called \`${check}\`.`}${didYouMean(suggestions)}`;
  context.say('unknown-check', partOf(node, 'check'), message, { text: check, suggestions });
}

function checkReason(node: Accept | Limit, word: 'accept' | 'limit', context: Context): void {
  if (node.check === undefined || (node.reason !== undefined && readText(node.reason).value !== '')) return;
  const message = say`Say why: \`because "…"\` after \`${word}\`. The report repeats the reason.`;
  context.say('missing-reason', keywordOf(node, word), message);
}
