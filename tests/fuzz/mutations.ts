import { kinds } from '../../packages/language/src/vocabulary/entries.js';
import { vocabulary } from '../../packages/language/src/vocabulary/vocabulary.js';
import type { Random } from './random.js';

const words = [
  ...Object.keys(kinds),
  ...vocabulary.flatMap(({ properties }) => properties.map(({ key }) => key)),
  ...'in above below floor seat reported left right up down back forward and because on between row a import accept limit'.split(
    ' ',
  ),
];
const marks = [
  ...'{}{}{}"“”\'/\\,.:;-+()[]<>&#@%°×½¾_=*|~`$!?',
  '..',
  '//',
  '/*',
  '*/',
  '5\'3"',
  '1 1/2in',
  '1/0in',
  '1e400in',
];
/** Every white space of Unicode, joiners, bidirectional overrides, control characters, halves of pairs, and far planes. */
const odd = [
  ...'\u0000\u0001\u0007\u0008\u0009\u000b\u000c\u000d\u001b\u007f\u0085\u00a0\u00ad\u1680\u180e',
  ...'\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u200b\u200c\u200d\u200e\u200f\u2028\u2029',
  ...'\u202a\u202b\u202c\u202d\u202e\u202f\u205f\u2060\u2066\u2067\u2068\u2069\u3000\ufeff\ufffd\uffff\u0301\u0e33',
  '\ud800',
  '\udfff',
  '\u{1f4a1}',
  '\u{e0001}',
  '\u{10ffff}',
];

type Mutation = (text: string, random: Random) => string;

const tokens = /[\p{L}_][\p{L}\p{M}\p{N}_-]*|[\d.]+|\s+|[^]/gu;

/** Takes words out, doubles, swaps and strews them. */
const byWord: readonly Mutation[] = [
  onTokens((list, at) => spliceOf(list, at, 1, [])),
  onTokens((list, at) => spliceOf(list, at, 0, [list[at]!])),
  onTokens((list, at, random) => swapped(list, at, random.whole(0, list.length - 1))),
  onTokens((list, at, random) => spliceOf(list, at, 1, [random.pick(random.chance(0.6) ? words : marks)])),
  onTokens((list, at, random) => spliceOf(list, at, 0, [` ${random.pick(words)} `])),
  onTokens((list, at, random) => spliceOf(list, at, 0, [random.pick(marks)])),
  onTokens((list, at, random) => spliceOf(list, at, random.whole(1, 20), [])),
  onTokens((list, at) => list.slice(0, at)),
  onTokens((list, at, random) => spliceOf(list, at, 1, [number(random)])),
  onTokens((list, at, random) =>
    spliceOf(list, random.whole(0, list.length), 0, list.slice(at, at + random.whole(1, 30))),
  ),
];

/** Changes single code units, whatever they belong to. */
const byUnit: readonly Mutation[] = [
  (text, random) => spliced(text, random, 1, ''),
  (text, random) => spliced(text, random, random.whole(0, 1), String.fromCharCode(random.whole(0, 127))),
  (text, random) => spliced(text, random, random.whole(0, 1), String.fromCharCode(random.whole(0, 0xffff))),
  (text, random) => spliced(text, random, random.whole(0, 1), random.pick(odd)),
  (text, random) => spliced(text, random, random.whole(1, 30), ''),
  (text, random) => spliced(text, random, 0, random.pick(marks).repeat(random.whole(1, 40))),
];

/** A text with some words, or some characters, of it changed. */
export function mutated(text: string, random: Random, by: 'word' | 'unit'): string {
  const mutations = by === 'word' ? byWord : byUnit;
  return random
    .times(1, random.pick([1, 3, 12]), () => random.pick(mutations))
    .reduce((now, mutate) => mutate(now, random), text);
}

/** Words and marks, or any characters, in no order at all. */
export function soup(random: Random): string {
  const of = random.pick([words.concat(marks), marks, odd.concat(marks)]);
  return random.times(0, 60, () => random.pick(of)).join(random.pick([' ', '', '\n']));
}

/** A text read as bytes, some of them changed, and read back: as from a file that is not UTF-8. */
export function asBytes(text: string, random: Random): string {
  const bytes = new TextEncoder().encode(text);
  for (let n = random.whole(1, 8); n > 0 && bytes.length > 0; n--)
    bytes[random.whole(0, bytes.length - 1)]! ^= 1 << random.whole(0, 7);
  return new TextDecoder().decode(bytes);
}

function onTokens(change: (list: string[], at: number, random: Random) => string[]): Mutation {
  return (text, random) => {
    const list = text.match(tokens) ?? [];
    return list.length === 0 ? random.pick(words) : change(list, random.whole(0, list.length - 1), random).join('');
  };
}

function swapped(list: readonly string[], a: number, b: number): string[] {
  const result = [...list];
  [result[a], result[b]] = [list[b]!, list[a]!];
  return result;
}

function spliceOf(list: readonly string[], at: number, remove: number, insert: readonly string[]): string[] {
  return [...list.slice(0, at), ...insert, ...list.slice(at + remove)];
}

function number(random: Random): string {
  const digits = random.times(1, random.pick([2, 5, 30]), () => random.pick([...'0123456789.']));
  return `${random.pick(['', '', '-'])}${digits.join('')}${random.pick(['in', 'mm', 'ft', 'kg', 'deg', '%', '', 'e9', ' x 3', ':9'])}`;
}

function spliced(text: string, random: Random, remove: number, insert: string): string {
  const at = random.whole(0, text.length);
  return text.slice(0, at) + insert + text.slice(at + remove);
}
