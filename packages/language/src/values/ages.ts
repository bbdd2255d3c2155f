import { say } from '@boothwright/fit';
import type { Years } from '@boothwright/fit';
import type { Quantity as QuantityNode } from '../generated/ast.js';
import { parseQuantity } from '../quantity/quantity.js';
import type { PropertyEntry, Shape } from '../vocabulary/entries.js';
import { readRange } from './lengths.js';
import { reportMalformed } from './malformed.js';
import type { Meaning } from './meaning.js';
import { type Reading, report } from './reading.js';
import { called } from './words.js';

/** One age or a range of ages, in completed years. */
export function readAges(
  key: string,
  { example }: PropertyEntry,
  shape: Shape & { is: 'ages' },
  node: QuantityNode,
  reading: Reading,
): Meaning | undefined {
  const min = readAge(key, example, shape, node, 'text', reading);
  if (!node.range) return min === undefined ? undefined : { is: 'ages', min, max: min };
  const range = readRange(example, node, reading, min, () => readAge(key, example, shape, node, 'upper', reading));
  return range && { is: 'ages', ...range };
}

function readAge(
  key: string,
  example: string,
  { min, max }: Shape & { is: 'ages' },
  node: QuantityNode,
  part: 'text' | 'upper',
  reading: Reading,
): Years | undefined {
  const text = node[part]!;
  const quantity = parseQuantity(text);
  if (quantity.is === 'malformed') {
    reportMalformed(quantity, text, node, part, example, reading);
    return undefined;
  }
  if (quantity.is !== 'number' || !Number.isInteger(quantity.value)) {
    const is = quantity.is === 'number' ? say`not a whole number` : called(quantity);
    const message = say`\`${key}\` needs whole years, such as ${example}; ${text} is ${is}.`;
    report(reading, 'wrong-quantity', node, message, [], text, part);
    return undefined;
  }
  if (quantity.value < min || quantity.value > max) {
    const message = say`\`${key}\` is from ${min} to ${max} years: of other ages the body figures say nothing. Give a range of \`stature\` instead.`;
    report(reading, 'out-of-bounds', node, message, [], text, part);
    return undefined;
  }
  return quantity.value;
}
