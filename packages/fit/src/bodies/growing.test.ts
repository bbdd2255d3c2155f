import { describe, expect, it } from 'vitest';
import { makeBody, meanOf, percentileOf, sdOf } from './body.js';
import { AGES, statureOfAges } from './growing.js';
import { peopleOf, quantileOf } from './people.js';
import { reference } from './reference.js';

describe('stature by age', () => {
  // 5th and 95th percentile in millimetres, from the percentile columns of the same growth charts (rows 162.5, 174.5, 186.5,
  // 198.5 and 210.5 months). Our normal curve leaves out their Box-Cox power of 0.9 to 2.2: up to 10 mm at a tail.
  it.each([
    ['female', 13, 1481.5, 1702.1],
    ['female', 14, 1506.4, 1720.8],
    ['female', 15, 1516.7, 1729.8],
    ['female', 16, 1521.4, 1734.3],
    ['female', 17, 1523.8, 1736.8],
    ['male', 13, 1470.5, 1734.0],
    ['male', 14, 1538.1, 1800.7],
    ['male', 15, 1589.8, 1842.0],
    ['male', 16, 1621.2, 1863.6],
    ['male', 17, 1637.7, 1874.7],
  ] as const)('%s, %i years: 90 in 100 between %d and %d mm', (sex, age, p5, p95) => {
    const { mean, sd } = statureOfAges(sex, { min: age, max: age });
    expect(Math.abs(mean - 1.6449 * sd - p5)).toBeLessThan(10);
    expect(Math.abs(mean + 1.6449 * sd - p95)).toBeLessThan(10);
  });

  it('adults of any age are the survey', () => {
    const all = makeBody({ women: 0.5, measured: {} });
    const adults = makeBody({ women: 0.5, measured: {}, ages: { min: 18, max: AGES.max } });
    for (const dimension of ['stature', 'poplitealHeight', 'weight'] as const) {
      expect(meanOf(adults, dimension)).toBeCloseTo(meanOf(all, dimension), 9);
      expect(sdOf(adults, dimension)).toBeCloseTo(sdOf(all, dimension), 9);
    }
  });

  it('a range of ages is wider than each of its years', () => {
    const range = statureOfAges('male', { min: 13, max: 17 });
    const years = [13, 14, 15, 16, 17].map((age) => statureOfAges('male', { min: age, max: age }));
    expect(range.mean).toBeCloseTo(years.reduce((sum, { mean }) => sum + mean, 0) / 5, 6);
    for (const { sd } of years) expect(range.sd).toBeGreaterThan(sd);
  });

  it('what goes with stature follows it: a girl of 13 is 36 mm shorter than the women, her lower leg by its correlation', () => {
    const body = makeBody({ women: 1, measured: {}, ages: { min: 13, max: 13 } });
    const { stature, poplitealHeight, sittingElbowHeight } = reference.female.dimensions;
    const fall = stature.mean - meanOf(body, 'stature');
    expect(fall).toBeCloseTo(1628.47 - 1592.07, 6);
    // Popliteal height on stature: r = 0.82 in the survey, so 0.82 × 23.59 / 64.2 = 0.30 mm for each millimetre.
    expect((poplitealHeight.mean - meanOf(body, 'poplitealHeight')) / fall).toBeCloseTo(0.3, 1);
    expect(sittingElbowHeight.mean - meanOf(body, 'sittingElbowHeight')).toBeLessThan(4);
  });

  it('can be limited by stature too', () => {
    const knowledge = { women: 0.5, measured: {}, ages: { min: 13, max: 17 }, statureRange: { min: 1500, max: 1700 } };
    const people = peopleOf(makeBody(knowledge));
    const column = people.column('stature');
    expect(Math.min(...column)).toBeGreaterThanOrEqual(1500 - 1e-6);
    expect(Math.max(...column)).toBeLessThanOrEqual(1700 + 1e-6);
  });

  it('people and percentiles agree', () => {
    const body = makeBody({ women: 1, measured: {}, ages: { min: 13, max: 16 } });
    const people = peopleOf(body);
    expect(
      Math.abs(quantileOf(people, people.column('stature'), 0.9) - percentileOf(body, 'stature', 0.9)),
    ).toBeLessThan(4);
  });
});
