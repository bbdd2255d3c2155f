import {
  type DisplayUnit,
  formatLength,
  INCH,
  listOf,
  type Millimetres,
  type Range as LengthRange,
  say,
} from '@boothwright/fit';
import type { Quantity as QuantityNode } from '../generated/ast.js';
import { parseQuantity, type Quantity } from '../quantity/quantity.js';
import type { LengthShape } from '../vocabulary/entries.js';
import type { Range } from 'vscode-languageserver-types';
import { reportMalformed } from './malformed.js';
import { type Reading, report } from './reading.js';
import { partOf } from '../syntax/tree.js';
import { called } from './words.js';

/** The length or the range that a quantity says; nothing if it says neither or says it wrongly. */
export function readLength(
  key: string,
  example: string,
  shape: LengthShape,
  node: QuantityNode,
  reading: Reading,
): LengthRange | undefined {
  const min = readBound(key, example, shape, node, 'text', reading);
  if (!node.range) {
    if (shape.range === 'wanted' && min !== undefined)
      report(reading, 'missing-value', node, say`\`${key}\` needs a range, such as ${example}.`);
    return min === undefined || shape.range === 'wanted' ? undefined : { min, max: min };
  }
  if (!shape.range && node.upper !== undefined) {
    report(
      reading,
      'range-unwanted',
      node,
      say`\`${key}\` is one length, such as ${example}; a range has no meaning here.`,
    );
    return undefined;
  }
  return readRange(example, node, reading, min, () => readBound(key, example, shape, node, 'upper', reading));
}

/** A range of which the lower end is read; nothing if it has no upper one, or ends below where it begins. */
export function readRange(
  example: string,
  node: QuantityNode,
  reading: Reading,
  min: number | undefined,
  readUpper: () => number | undefined,
): { readonly min: number; readonly max: number } | undefined {
  if (node.upper === undefined) {
    report(reading, 'missing-value', node, say`This range needs an upper end, such as ${lengthIn(example)}.`);
    return undefined;
  }
  const max = readUpper();
  if (min === undefined || max === undefined) return undefined;
  if (min <= max) return { min, max };
  const turned = `${node.upper}..${node.text}`;
  const message = say`This range is upside down: write ${turned}.`;
  const { text, range } = endsOf(node);
  reading.report({ code: 'range-reversed', message, range, data: { text, suggestions: [turned] } });
  return undefined;
}

function readBound(
  key: string,
  example: string,
  shape: LengthShape,
  node: QuantityNode,
  part: 'text' | 'upper',
  reading: Reading,
): Millimetres | undefined {
  const text = node[part]!;
  const quantity = parseQuantity(text);
  const length = lengthOf(quantity, text, node, part, key, example, reading);
  if (length === undefined) return undefined;
  if (length < 0) {
    const suggestions = shape.directions ? [`${text.slice(1)} ${shape.directions[1]}`] : [text.slice(1)];
    const hint = shape.directions ? ` ${say`Write ${suggestions[0]!} instead.`}` : '';
    report(reading, 'out-of-bounds', node, `${say`\`${key}\` cannot be negative.`}${hint}`, suggestions, text, part);
    return undefined;
  }
  if (length < shape.min - 0.5 || length > shape.max + 0.5) {
    reportImplausible(key, shape, node, part, length, reading);
    return undefined;
  }
  return length;
}

function lengthOf(
  quantity: Quantity,
  text: string,
  node: QuantityNode,
  part: 'text' | 'upper',
  key: string,
  example: string,
  reading: Reading,
): Millimetres | undefined {
  if (quantity.is === 'malformed') {
    reportMalformed(quantity, text, node, part, example, reading);
    return undefined;
  }
  if (quantity.is === 'length') {
    if (quantity.curly !== undefined) reportCurly(text, quantity.curly, node, part, reading);
    return quantity.value;
  }
  if (quantity.is === 'number') {
    if (quantity.value === 0) return 0;
    const suggestions = unitsFor(text, node, part, reading.show);
    report(
      reading,
      'no-unit',
      node,
      say`${text} has no unit: write ${listOf(suggestions, 'or')}.`,
      suggestions,
      text,
      part,
    );
    return undefined;
  }
  report(
    reading,
    'wrong-quantity',
    node,
    say`\`${key}\` needs a length, such as ${example}; ${text} is ${called(quantity)}.`,
    [],
    text,
    part,
  );
  return undefined;
}

/** A bare number with the units that are likely meant, in the file's own first. */
function unitsFor(text: string, node: QuantityNode, part: 'text' | 'upper', show: DisplayUnit): string[] {
  const other = part === 'text' ? node.upper : node.text;
  const unit = other && /[^\d.\s/¼-¾⅐-⅞-].*$/.exec(other)?.[0];
  if (unit && parseQuantity(other).is === 'length') return [`${text}${unit}`, `${text}cm`].filter(unique);
  const shown = show === 'ft' ? ['ft', 'in', 'cm'] : show === 'in' ? ['in', 'cm'] : [show, 'in'];
  return shown.map((each) => text + each);
}

function unique<T>(item: T, index: number, all: readonly T[]): boolean {
  return all.indexOf(item) === index;
}

function reportImplausible(
  key: string,
  shape: LengthShape,
  node: QuantityNode,
  part: 'text' | 'upper',
  length: Millimetres,
  reading: Reading,
): void {
  const { show } = reading;
  const text = node[part]!;
  const number = /^[\d.]+/.exec(text)?.[0];
  const suggestions = number
    ? ['in', 'cm', 'mm', 'ft', 'm'].map((unit) => number + unit).filter((candidate) => isPlausible(candidate, shape))
    : [];
  const bounds = say`${about(shape.min, show)} to ${about(shape.max, show)}`;
  const meant = suggestions.length > 0 ? ` ${say`Did you mean ${suggestions[0]!}?`}` : '';
  const message = `${say`\`${key}\` is ${formatLength(length, show)} here; plausible is ${bounds}.`}${meant}`;
  report(reading, 'out-of-bounds', node, message, suggestions.slice(0, 2), text, part);
}

/** Bounds are rough: inches to the nearest inch. */
function about(length: Millimetres, show: DisplayUnit): string {
  const isInches = show === 'in' || show === 'ft';
  return formatLength(isInches && length > 4 * INCH ? Math.round(length / INCH) * INCH : length, show);
}

function isPlausible(text: string, shape: LengthShape): boolean {
  const quantity = parseQuantity(text);
  return quantity.is === 'length' && quantity.value >= shape.min && quantity.value <= shape.max;
}

function reportCurly(
  text: string,
  straight: string,
  node: QuantityNode,
  part: 'text' | 'upper',
  reading: Reading,
): void {
  report(reading, 'curly-quotes', node, say`These marks are curly quotes: write ${straight}.`, [straight], text, part);
}

/** An example without the words around it: ‘4in’ of ‘4in above desk’. */
function lengthIn(example: string): string {
  return example.replace(/ (?:above|below|forward|back) ?.*$/, '');
}

/** A range from its lower to its upper end, without the words around it. */
function endsOf(node: QuantityNode): { readonly text: string; readonly range: Range } {
  const [first, last] = [partOf(node, 'text')!, partOf(node, 'upper')!];
  const text = node.$cstNode!.text.slice(first.offset - node.$cstNode!.offset, last.end - node.$cstNode!.offset);
  return { text, range: { start: first.range.start, end: last.range.end } };
}
