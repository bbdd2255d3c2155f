import { say } from '@boothwright/fit';
import type { Quantity as QuantityNode } from '../generated/ast.js';
import { type Malformed, parseQuantity } from '../quantity/quantity.js';
import { nearest } from './nearest.js';
import { type Reading, report } from './reading.js';

const units = ['mm', 'cm', 'm', 'in', 'ft', 'kg', 'lb', 'deg', '%', 'px'];

/** Says once and exactly what is wrong with a number that cannot be read. */
export function reportMalformed(
  malformed: Malformed,
  text: string,
  node: QuantityNode,
  part: 'text' | 'upper',
  example: string,
  reading: Reading,
): void {
  const { fault } = malformed;
  const suggestions = fault === 'unit' ? spellings(text, malformed.part) : malformed.suggestions;
  const code = fault === 'unit' ? 'unknown-unit' : 'malformed-number';
  report(reading, code, node, messageOf(malformed, text, example, suggestions), suggestions, text, part);
}

function messageOf(malformed: Malformed, text: string, example: string, suggestions: readonly string[]): string {
  const meant = suggestions[0];
  switch (malformed.fault) {
    case 'unit':
      return `${say`\`${malformed.part}\` is no unit that is known here.`} ${meant ? say`Did you mean ${meant}?` : say`Write it like ${example}.`}`;
    case 'inch mark':
      return say`The inches of ${text} lack their mark: write ${meant ?? example}.`;
    case 'decimal comma':
      return say`Decimals take a point: write ${meant ?? example}. Two values take a space after the comma.`;
    case 'fraction':
      return say`${text} is not a fraction that can be read. Write it like 41 1/2in.`;
    case 'number':
      return say`${text} is not a number that can be read. Write it like ${example}.`;
  }
}

function spellings(text: string, part: string): string[] {
  const number = text.slice(0, text.length - part.length).trim();
  return nearest(part, units)
    .map((unit) => number + unit)
    .filter((candidate) => parseQuantity(candidate).is !== 'malformed');
}
