import { listOf, say } from '@boothwright/fit';
import type { Quantity as QuantityNode } from '../generated/ast.js';
import { parseQuantity, type Quantity } from '../quantity/quantity.js';
import type { PropertyEntry, Shape } from '../vocabulary/entries.js';
import { readLength } from './lengths.js';
import { reportMalformed } from './malformed.js';
import type { Meaning } from './meaning.js';
import { type Reading, report } from './reading.js';
import { called, needOf } from './words.js';

/** An angle, a share, a weight or a count. */
export function readNumber(
  key: string,
  entry: PropertyEntry,
  node: QuantityNode,
  reading: Reading,
): Meaning | undefined {
  const { shape } = entry;
  const quantity = single(key, entry, node, reading);
  if (!quantity) return undefined;
  const value = valueFor(shape, quantity);
  if (value === undefined) {
    const suggestions = quantity.is === 'number' ? unitsFor(shape).map((unit) => node.text + unit) : [];
    const code = suggestions.length > 0 ? 'no-unit' : 'wrong-quantity';
    const message =
      suggestions.length > 0
        ? say`\`${key}\` needs ${needOf(entry)}, such as ${entry.example}: write ${listOf(suggestions, 'or')}.`
        : say`\`${key}\` needs ${needOf(entry)}, such as ${entry.example}: ${node.text} is ${called(quantity)}.`;
    report(reading, code, node, message, suggestions, node.text, 'text');
    return undefined;
  }
  const bounds = boundsOf(shape);
  if (value < bounds.min || value > bounds.max) {
    report(reading, 'out-of-bounds', node, say`\`${key}\` is from ${bounds.says}; ${node.text} is not.`);
    return undefined;
  }
  if (shape.is === 'count' && !Number.isInteger(value)) {
    report(reading, 'wrong-quantity', node, say`\`${key}\` needs a whole number, such as ${entry.example}.`);
    return undefined;
  }
  const turnsBack = shape.is === 'angle' && node.direction === shape.directions[1];
  return { is: 'number', value: turnsBack ? -value : value };
}

export function readTextSize(
  key: string,
  entry: PropertyEntry,
  node: QuantityNode,
  reading: Reading,
): Meaning | undefined {
  const quantity = single(key, entry, node, reading);
  if (!quantity) return undefined;
  if (quantity.is === 'pixels') {
    if (quantity.value >= 4 && quantity.value <= 1000) return { is: 'text size', size: { pixels: quantity.value } };
    report(reading, 'out-of-bounds', node, say`\`${key}\` is from 4px to 1000px; ${node.text} is not.`);
    return undefined;
  }
  if (quantity.is === 'number') {
    const suggestions = [`${node.text}px`, `${node.text}mm`];
    report(reading, 'no-unit', node, say`${node.text} has no unit: write ${listOf(suggestions, 'or')}.`, suggestions);
    return undefined;
  }
  const capital = readLength(key, entry.example, { is: 'length', min: 1, max: 500 }, node, reading);
  return capital && { is: 'text size', size: { capital: capital.min } };
}

/** `16:9` or `1920 x 1080`. */
export function readPair(key: string, entry: PropertyEntry, node: QuantityNode, reading: Reading): Meaning | undefined {
  const quantity = single(key, entry, node, reading);
  if (!quantity) return undefined;
  const wanted = entry.shape.is === 'aspect' ? 'ratio' : 'size';
  if (quantity.is !== wanted) {
    const turned = 'across' in quantity ? [turnedPair(quantity, wanted)] : [];
    const message = say`\`${key}\` needs ${needOf(entry)}, such as ${entry.example}; ${node.text} is ${called(quantity)}.`;
    report(reading, 'wrong-quantity', node, message, turned);
    return undefined;
  }
  const { across, down } = quantity;
  const isPlausible =
    wanted === 'ratio' ? across / down > 0.2 && across / down < 5 : Math.min(across, down) >= 100 && across < 20_000;
  if (isPlausible && Number.isInteger(wanted === 'size' ? across + down : 1)) return { is: 'pair', across, down };
  report(
    reading,
    'out-of-bounds',
    node,
    say`${node.text} is not a plausible \`${key}\`. Write it like ${entry.example}.`,
  );
  return undefined;
}

function turnedPair({ across, down }: { across: number; down: number }, wanted: 'ratio' | 'size'): string {
  return wanted === 'ratio' ? `${across}:${down}` : `${across} x ${down}`;
}

/** One quantity that can be read and is no range. */
function single(key: string, entry: PropertyEntry, node: QuantityNode, reading: Reading): Quantity | undefined {
  if (node.range) {
    const message = say`\`${key}\` is one value, such as ${entry.example}; a range has no meaning here.`;
    report(reading, 'range-unwanted', node, message);
    return undefined;
  }
  const quantity = parseQuantity(node.text);
  if (quantity.is !== 'malformed') return quantity;
  reportMalformed(quantity, node.text, node, 'text', entry.example, reading);
  return undefined;
}

function valueFor(shape: Shape, quantity: Quantity): number | undefined {
  if (shape.is === 'count') return quantity.is === 'number' ? quantity.value : undefined;
  if (shape.is === 'angle' && quantity.is === 'number' && quantity.value === 0) return 0;
  return 'value' in quantity && quantity.is === shape.is ? quantity.value : undefined;
}

function unitsFor(shape: Shape): string[] {
  if (shape.is === 'angle') return ['deg'];
  if (shape.is === 'share') return ['%'];
  return shape.is === 'weight' ? ['lb', 'kg'] : [];
}

function boundsOf(shape: Shape): { min: number; max: number; says: string } {
  switch (shape.is) {
    case 'angle':
      return { min: 0, max: shape.max, says: rangeOf('0deg', `${shape.max}deg`) };
    case 'weight':
      return { min: shape.min, max: shape.max, says: rangeOf(`${shape.min}kg`, `${shape.max}kg`) };
    case 'count':
      return { min: shape.min, max: shape.max, says: rangeOf(`${shape.min}`, `${shape.max}`) };
    default:
      return { min: 0, max: 1, says: rangeOf('0%', '100%') };
  }
}

function rangeOf(least: string, most: string): string {
  return say`${least} to ${most}`;
}
