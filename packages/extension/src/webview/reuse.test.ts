import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { reuse } from './reuse.js';

describe('what did not change is the same object', () => {
  const old = { desks: [{ name: 'Left', at: { x: 1, y: 2 } }, { name: 'Right' }], show: 'in' };

  test('all of it', () => expect(reuse(old, structuredClone(old))).toBe(old));

  test('all but what did', () => {
    const now = structuredClone(old);
    now.desks[0]!.at!.x = 3;
    const made = reuse(old, now);
    expect(made).toEqual(now);
    expect(made.desks).not.toBe(old.desks);
    expect(made.desks[0]).not.toBe(old.desks[0]);
    expect(made.desks[1]).toBe(old.desks[1]);
  });

  test('a list that grew keeps what it had', () => {
    const made = reuse(old.desks, [...structuredClone(old.desks), { name: 'Third' }]);
    expect(made[1]).toBe(old.desks[1]);
    expect(made).toHaveLength(3);
  });

  test.each([
    ['a part that is gone', { a: 1, b: 2 }, { a: 1 }],
    ['a part that is new', { a: 1 }, { a: 1, b: undefined }],
    ['a list in place of an object', {}, []],
    ['an object in place of a list', [], {}],
    ['a shorter list', [1, 2], [1]],
    ['minus nothing', [0], [-0]],
  ])('%s is a change', (_, before, now) => {
    const made = reuse(before, now);
    expect(made).toEqual(now);
    expect(made).not.toBe(before);
  });

  test('a name of the prototype is a name', () => {
    const now: unknown = JSON.parse('{ "__proto__": { "a": 1 }, "constructor": 2 }');
    expect(JSON.stringify(reuse({}, now))).toBe(JSON.stringify(now));
    expect(reuse(now, structuredClone(now))).toEqual(now);
  });
});

test('it is equal to the new value, whatever the old one was', () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.jsonValue(), (old, now) => {
      expect(reuse(old, now)).toEqual(now);
    }),
  );
});

test('it is the old value if they are equal', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(reuse(value, structuredClone(value))).toBe(value);
    }),
  );
});
