import { type DisplayUnit, exampleIn, listOf, say } from '@boothwright/fit';
import { isQuantity, isText, isWord, type Property, type Quantity, type Value as ValueNode } from '../generated/ast.js';
import { readText } from '../syntax/texts.js';
import { loneComma, partOf } from '../syntax/tree.js';
import type { PropertyEntry, Shape } from '../vocabulary/entries.js';
import { readLength } from './lengths.js';
import type { Meaning } from './meaning.js';
import { didYouMean, nearest } from './nearest.js';
import { readAges } from './ages.js';
import { readNumber, readPair, readTextSize } from './numbers.js';
import { complain, type Reading } from './reading.js';
import { needOf } from './words.js';

/**
 * What the values of a property mean where its entry is `entry`. Nothing if they are missing or faulty; every fault is
 * reported once. Reading and checking both come through here, so that they never disagree.
 */
export function interpret(property: Property, entry: PropertyEntry, reading: Reading): Meaning | undefined {
  const meaning = readProperty(property, withOwnExample(entry, reading.show), reading);
  known.set(property, meaning);
  return meaning;
}

/** As `interpret`, for a property that may have been interpreted already; reports nothing. */
export function meaningOf(property: Property, entry: PropertyEntry): Meaning | undefined {
  if (known.has(property)) return known.get(property);
  return interpret(property, entry, { report: () => undefined, show: 'in' });
}

/** The entry with its example in the unit of the file. */
function withOwnExample(entry: PropertyEntry, show: DisplayUnit): PropertyEntry {
  const ofUnit = written.get(show) ?? new Map<PropertyEntry, PropertyEntry>();
  written.set(show, ofUnit);
  const own = ofUnit.get(entry) ?? { ...entry, example: exampleIn(entry.example, show) };
  ofUnit.set(entry, own);
  return own;
}

/** The vocabulary holds so many entries and no more. */
const written = new Map<DisplayUnit, Map<PropertyEntry, PropertyEntry>>();

/** A property means the same for as long as its syntax tree lives. */
const known = new WeakMap<Property, Meaning | undefined>();

function readProperty(property: Property, entry: PropertyEntry, reading: Reading): Meaning | undefined {
  const { shape } = entry;
  const { key } = property;
  const wanted = shape.is === 'point' ? 2 : shape.is === 'words' && shape.many ? Infinity : 1;
  if (property.values.length === 0 || (shape.is === 'point' && property.values.length < 2)) {
    const message = say`\`${key}\` needs ${needOf(entry)}, such as ${entry.example}.`;
    complain(reading, 'missing-value', partOf(property, 'key'), message);
    return undefined;
  }
  const comma = loneComma(property);
  if (comma) {
    complain(reading, 'missing-value', comma, say`A value is missing after this comma.`);
    return undefined;
  }
  if (property.values.length > wanted) {
    const message =
      wanted === 2
        ? say`\`${key}\` takes two values, such as ${entry.example}.`
        : say`\`${key}\` takes one value, such as ${entry.example}.`;
    complain(reading, 'too-many-values', property.values[wanted]!.$cstNode, message);
    return undefined;
  }
  if (shape.is === 'words') return readWords(property, shape, reading);
  if (shape.is === 'text') return readQuoted(property, entry, reading);
  const quantities = property.values.filter(isQuantity);
  const other = property.values.find((value) => !isQuantity(value));
  if (other) {
    const message = say`\`${key}\` needs ${needOf(entry)}, such as ${entry.example}; ${other.$cstNode?.text ?? ''} is not one.`;
    complain(reading, 'wrong-quantity', other.$cstNode, message);
    return undefined;
  }
  return readQuantities(key, entry, quantities, reading);
}

function readQuantities(
  key: string,
  entry: PropertyEntry,
  [first, second]: Quantity[],
  reading: Reading,
): Meaning | undefined {
  const { shape, example } = entry;
  if (!first || !wordsFit(key, shape, first, reading)) return undefined;
  switch (shape.is) {
    case 'length': {
      const range = readLength(key, example, shape, first, reading);
      if (!range) return undefined;
      const { direction, landmark, reported } = first;
      return { is: 'length', ...range, direction, from: landmark, reported };
    }
    case 'point': {
      const bounds = { is: 'length', min: 0, max: shape.max } as const;
      const [x, y] = [first, second!].map((each) => {
        const fits = each === first || wordsFit(key, shape, each, reading);
        return fits ? readLength(key, example, bounds, each, reading) : undefined;
      });
      return x && y && { is: 'point', point: { x: x.min, y: y.min } };
    }
    case 'ages':
      return readAges(key, entry, shape, first, reading);
    case 'text size':
      return readTextSize(key, entry, first, reading);
    case 'aspect':
    case 'pixels':
      return readPair(key, entry, first, reading);
    default:
      return readNumber(key, entry, first, reading);
  }
}

/** Reports words around a quantity that have no meaning for this property: `width 3in left`. */
function wordsFit(key: string, shape: Shape, node: Quantity, reading: Reading): boolean {
  const { direction, relation, landmark, reported } = node;
  const directions: readonly string[] = 'directions' in shape ? (shape.directions ?? []) : [];
  const from: readonly string[] = 'from' in shape ? (shape.from ?? []) : [];
  const stray = (part: string, word: string, allowed: readonly string[]) => {
    const hint = allowed.length > 0 ? ` ${say`It can be ${listOf(allowed, 'or')}.`}` : '';
    complain(
      reading,
      'unwanted-word',
      partOf(node, part),
      `${say`\`${word}\` has no meaning for \`${key}\`.`}${hint}`,
      word,
      allowed,
    );
    return false;
  };
  if (direction && !directions.includes(direction)) return stray('direction', direction, directions);
  if (relation && !landmark) {
    const message = say`Say what it is ${relation}: ${
      listOf(
        from.map((each) => `${relation} ${each}`),
        'or',
      ) || `${relation} …`
    }.`;
    complain(reading, 'missing-value', partOf(node, 'relation'), message);
    return false;
  }
  if (relation && relation !== (landmark === 'seat' ? 'below' : 'above')) {
    const right = landmark === 'seat' ? 'below' : 'above';
    return stray('relation', relation, [right]);
  }
  if (landmark && !from.includes(landmark)) return stray('landmark', landmark, from);
  if (reported && !('reported' in shape && shape.reported)) return stray('reported', 'reported', []);
  return true;
}

function readWords(property: Property, shape: Shape & { is: 'words' }, reading: Reading): Meaning | undefined {
  const words: string[] = [];
  for (const value of property.values) {
    const word = isWord(value) ? value.text : undefined;
    if (word === undefined || !shape.words.includes(word)) {
      reportWord(property.key, value, shape.words, reading);
      return undefined;
    }
    if (words.includes(word)) {
      complain(reading, 'repeated-name', value.$cstNode, say`\`${word}\` is already in this list.`);
      return undefined;
    }
    words.push(word);
  }
  return { is: 'words', words };
}

function reportWord(key: string, value: ValueNode, words: readonly string[], reading: Reading): void {
  const typed = value.$cstNode?.text ?? '';
  const near = nearest(typed, words);
  const message = `${say`\`${key}\` is one of ${words.join(', ')}.`}${didYouMean(near)}`;
  complain(reading, 'unknown-word', value.$cstNode, message, typed, near.length > 0 ? near : words.slice(0, 3));
}

function readQuoted(property: Property, entry: PropertyEntry, reading: Reading): Meaning | undefined {
  const value = property.values[0];
  if (!isText(value)) {
    complain(
      reading,
      'wrong-quantity',
      value?.$cstNode,
      say`\`${property.key}\` needs a text in quotes, such as ${entry.example}.`,
    );
    return undefined;
  }
  const text = readText(value.raw).value;
  if (text) return { is: 'text', text };
  complain(
    reading,
    'missing-value',
    value.$cstNode,
    say`\`${property.key}\` is empty. Write something, such as ${entry.example}.`,
  );
  return undefined;
}
