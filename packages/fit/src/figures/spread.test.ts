import { describe, expect, it } from 'vitest';
import { makeBody } from '../bodies/body.js';
import { peopleOf, quantileOf } from '../bodies/people.js';
import { spreadOf } from './spread.js';

describe('the spread of a height', () => {
  it.each([
    ['a stature alone', { women: 0.5, measured: { stature: 1700 } }],
    ['nothing at all', { women: 0.3, measured: {} }],
  ] as const)('agrees with quantiles found by sorting, knowing %s', (_, knowledge) => {
    const people = peopleOf(makeBody(knowledge));
    const column = people.column('sittingEyeHeight');
    const { low, high } = spreadOf(750, people, column);
    expect(Math.abs(low - quantileOf(people, column, 0.05))).toBeLessThan(1);
    expect(Math.abs(high - quantileOf(people, column, 0.95))).toBeLessThan(1);
  });

  it('is nothing where all is known', () => {
    const people = peopleOf(makeBody({ women: 1, measured: { sittingEyeHeight: 740 } }));
    expect(spreadOf(740, people, people.column('sittingEyeHeight'))).toEqual({ height: 740, low: 740, high: 740 });
  });
});
