import { describe, expect, it } from 'vitest';
import { meanOf, makeBody } from '../bodies/body.js';
import type { DimensionName, Sex } from '../bodies/dimensions.js';
import { peopleOf, quantileOf } from '../bodies/people.js';
import { levelReach, shoulderToGrip, sittingShoulder } from './reaching.js';

function bodyOf(sex: Sex, measured: Partial<Record<DimensionName, number>> = {}) {
  return makeBody({ women: sex === 'female' ? 1 : 0, measured });
}

function means(sex: Sex, measured: Partial<Record<DimensionName, number>> = {}) {
  const body = bodyOf(sex, measured);
  const mean = (name: DimensionName) => meanOf(body, name);
  return {
    stature: mean('stature'),
    sittingHeight: mean('sittingHeight'),
    standingShoulderHeight: mean('standingShoulderHeight'),
    thumbTipReach: mean('thumbTipReach'),
  };
}

describe('shoulder to grip, derived from thumb-tip reach', () => {
  it.each([
    // Pheasant, Bodyspace, British adults: medians.
    ['Pheasant, men', 'male', {}, 665],
    ['Pheasant, women', 'female', {}, 600],
    // Drillis & Contini: 0.371 of stature, as the Michigan notes print it for their 5th percentile woman.
    ['T22, stature 1504', 'female', { stature: 1504 }, 558],
    ['0.371 of 1756', 'male', { stature: 1756 }, 651],
  ] as const)('%s: within 15 mm', (_, sex, measured, published) => {
    expect(Math.abs(shoulderToGrip(means(sex, measured)) - published)).toBeLessThan(15);
  });

  it.each([
    // Pheasant: 610 / 665 / 715 of men, 555 / 600 / 650 of women.
    ['male', 610, 715],
    ['female', 555, 650],
  ] as const)('the spread of %ss is a published one: within 25 mm at the 5th and 95th percentile', (sex, p5, p95) => {
    const people = peopleOf(bodyOf(sex));
    const [reach, stature] = [people.column('thumbTipReach'), people.column('stature')];
    const arms = reach.map((thumbTipReach, index) => shoulderToGrip({ thumbTipReach, stature: stature[index]! }));
    expect(Math.abs(quantileOf(people, arms, 0.05) - p5)).toBeLessThan(25);
    expect(Math.abs(quantileOf(people, arms, 0.95) - p95)).toBeLessThan(25);
  });
});

describe('sitting shoulder height, derived from the standing one', () => {
  it.each([
    // Medians of the 1988 survey (Gordon et al. 1989, from memory) and of Pheasant.
    ['1988 survey, men', 'male', 598],
    ['1988 survey, women', 'female', 556],
    ['Pheasant, men', 'male', 595],
    ['Pheasant, women', 'female', 555],
  ] as const)('%s: within 10 mm', (_, sex, published) => {
    expect(Math.abs(sittingShoulder(means(sex)) - published)).toBeLessThan(10);
  });

  it('T22: stature 1504 has a standing shoulder at 1230', () => {
    expect(Math.abs(means('female', { stature: 1504 }).standingShoulderHeight - 1230)).toBeLessThan(10);
  });
});

describe('level reach', () => {
  it.each([
    ['at shoulder height the whole arm', 1300, 600, 1300, 600],
    ['a 3-4-5 triangle down', 1300, 500, 1000, 400],
    ['and up', 1300, 500, 1600, 400],
    ['too far down for the arm', 1300, 250, 1000, 0],
  ])('%s', (_, shoulder, arm, height, reach) => {
    expect(levelReach(shoulder, arm, height)).toBeCloseTo(reach);
  });
});
