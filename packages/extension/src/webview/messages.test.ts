import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFromPage, readPageState, readToPage } from './messages.js';

const desk = { kind: 'desk', name: 'Left' };
const handle = {
  id: 'x desk Left',
  is: 'place',
  pieces: [desk],
  says: 'from the left wall',
  value: 3048,
  told: '120 in',
  min: 0,
  max: 200_000,
  step: 6.35,
  way: { x: 1, y: 0 },
};
const drawn = { is: 'booth', assessment: { booth: {} }, stale: false, handles: [handle] };
const set = { type: 'set', settings: [{ handle: 'x desk Left', value: 3000 }] };
const show = { type: 'show', uri: 'file:///hall.booth', result: drawn };
const state = {
  uri: 'file:///hall.booth',
  zooms: { booth: 2 },
  scroll: 120,
  reached: { booth: '["desk","Left",null]' },
};

const fromPage = [
  { type: 'ready' },
  { type: 'goTo', piece: desk },
  { type: 'goTo', piece: { kind: 'room' } },
  { type: 'figures', piece: { kind: 'screen', name: 'Cues', workstation: 'Sound' } },
  { type: 'goTo', piece: { kind: 'desk', name: '__proto__' } },
  { type: 'try', settings: set.settings },
  set,
];
const toPage = [
  show,
  { type: 'show', uri: '', result: { is: 'nothing', because: 'unread' } },
  { type: 'tried', result: drawn },
  { type: 'lit', pieces: [desk] },
  { type: 'figures', piece: desk, markdown: '**Left**, desk' },
  { type: 'showSide', workstation: 'Sound' },
];

describe('a message of a known shape is read as it is', () => {
  test.each(fromPage)('from the page: %j', (message) => expect(readFromPage(message)).toEqual(message));
  test.each(toPage)('to the page: %j', (message) => expect(readToPage(message)).toEqual(message));
  test.each([state, { ...state, last: { version: '0.1.0', result: drawn } }])('kept: %j', (kept) =>
    expect(readPageState(kept)).toEqual(kept),
  );
});

const long = 'x'.repeat(1_000_000);

describe('anything else is refused', () => {
  test.each([
    ['nothing', undefined],
    ['a word', 'ready'],
    ['no kind', {}],
    ['an unknown kind', { type: 'run', command: 'open' }],
    ['a kind that every object has', { type: 'constructor' }],
    ['a kind of the prototype', JSON.parse('{ "type": "__proto__" }')],
    ['more than it says', { type: 'ready', piece: desk }],
    ['a piece of no known kind', { type: 'goTo', piece: { kind: 'file', name: '/etc/hosts' } }],
    ['a piece whose kind every object has', { type: 'goTo', piece: { kind: 'toString' } }],
    ['a name that is no text', { type: 'goTo', piece: { kind: 'desk', name: { toString: 'Left' } } }],
    ['a huge name', { type: 'goTo', piece: { kind: 'desk', name: long } }],
    ['no settings', { type: 'set', settings: [] }],
    ['too many settings', { type: 'set', settings: Array.from({ length: 11 }, () => set.settings[0]) }],
    ['a number that is a text', { type: 'set', settings: [{ handle: 'x', value: '3000' }] }],
    ['a huge handle', { type: 'try', settings: [{ handle: long, value: 1 }] }],
    ...[NaN, Infinity, -Infinity, 1e300].map((value): [string, unknown] => [
      `${value}`,
      { type: 'set', settings: [{ handle: 'x', value }] },
    ]),
  ] satisfies [string, unknown][])('from the page: %s', (_, message) => expect(readFromPage(message)).toBeUndefined());

  test.each([
    ['what only the page says', { type: 'ready' }],
    ['no assessment', { ...show, result: { ...drawn, assessment: null } }],
    ['an assessment that is a list', { ...show, result: { ...drawn, assessment: [] } }],
    ['another result', { ...show, result: { is: 'booth' } }],
    ['a step of nothing', { ...show, result: { ...drawn, handles: [{ ...handle, step: 0 }] } }],
    ['an end that is nowhere', { ...show, result: { ...drawn, handles: [{ ...handle, max: Infinity }] } }],
    ['a way that is no number', { ...show, result: { ...drawn, handles: [{ ...handle, way: { x: NaN, y: 0 } }] } }],
    ['huge figures', { type: 'figures', piece: desk, markdown: long }],
    ['a workstation that is no text', { type: 'showSide', workstation: 1 }],
  ])('to the page: %s', (_, message) => expect(readToPage(message)).toBeUndefined());

  test.each([
    ['nothing', undefined],
    ['a zoom of nothing', { ...state, zooms: { booth: 0 } }],
    ['a zoom that is no number', { ...state, zooms: { booth: NaN } }],
    ['a place that is nowhere', { ...state, scroll: Infinity }],
    ['no file', { ...state, uri: 7 }],
    [
      'a last drawing of nothing',
      { ...state, last: { version: '0.1.0', result: { is: 'nothing', because: 'unread' } } },
    ],
    ['a last drawing of no version', { ...state, last: { result: drawn } }],
  ])('kept: %s', (_, kept) => expect(readPageState(kept)).toBeUndefined());
});

test('a kept name of the prototype changes no object', () => {
  const given: unknown = JSON.parse('{ "uri": "", "zooms": { "__proto__": 2 }, "scroll": 0, "reached": {} }');
  expect(readPageState(given)?.zooms).toEqual({});
  expect(({} as Record<string, unknown>).booth).toBeUndefined();
});

const readers = [readFromPage, readToPage, readPageState] as const;

test('whatever comes, it is read as it is or not at all, and nothing throws', () => {
  const any = fc.anything({ withBigInt: true, withDate: true, withMap: true, withNullPrototype: true });
  const kind = fc.constantFrom('ready', 'goTo', 'figures', 'try', 'set', 'show', 'tried', 'lit', 'showSide');
  const near = fc.record(
    { type: kind, piece: any, settings: any, result: any, pieces: any, uri: any, workstation: any, markdown: any },
    { requiredKeys: ['type'] },
  );
  fc.assert(
    fc.property(fc.oneof(any, near), (message) => {
      for (const reader of readers) {
        const given = reader(message);
        if (given !== undefined) expect(given).toEqual(message);
      }
    }),
    { numRuns: 1000 },
  );
});

test('a known message with one part put in its place by something else is refused, or is another known one', () => {
  const part = fc.constantFrom<unknown>(null, undefined, NaN, Infinity, -1, '', '__proto__', long, [], {}, [[]], true);
  fc.assert(
    fc.property(fc.constantFrom(...fromPage), part, fc.nat(), (message, other, at) => {
      const places = placesIn(message);
      const changed = withPart(message, places[at % places.length]!, other);
      const given = readFromPage(changed);
      if (given !== undefined) expect(numbersIn(given).every(Number.isFinite)).toBe(true);
      expect(JSON.stringify(given ?? '').length).toBeLessThan(20_000);
    }),
  );
});

type Place = readonly string[];

function placesIn(value: unknown, at: Place = []): Place[] {
  if (typeof value !== 'object' || value === null) return [at];
  return Object.entries(value).flatMap(([key, each]) => [[...at, key], ...placesIn(each, [...at, key])]);
}

function withPart(message: unknown, [key, ...rest]: Place, other: unknown): unknown {
  if (key === undefined) return other;
  const copy: Record<string, unknown> = structuredClone(message) as Record<string, unknown>;
  copy[key] = withPart(copy[key], rest, other);
  return copy;
}

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}
