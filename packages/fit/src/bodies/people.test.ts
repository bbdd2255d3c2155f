import { describe, expect, it } from 'vitest';
import { makeBody } from './body.js';
import { dimensionNames, type Sex } from './dimensions.js';
import { peopleOf, quantileOf, shareOf } from './people.js';
import { reference } from './reference.js';

const sexes: readonly Sex[] = ['female', 'male'];

describe('people of one sex stand for the survey', () => {
  it.each(sexes.flatMap((sex) => dimensionNames.map((name) => [sex, name] as const)))('%s %s', (sex, name) => {
    const { mean, sd, p5, p50, p95 } = reference[sex].dimensions[name];
    const people = peopleOf(makeBody({ women: sex === 'female' ? 1 : 0, measured: {} }));
    const column = people.column(name);
    const average = column.reduce((sum, value) => sum + value, 0) / column.length;
    const variance = column.reduce((sum, value) => sum + (value - average) ** 2, 0) / column.length;
    expect(Math.abs(average - mean)).toBeLessThan(0.01 * sd);
    expect(Math.abs(Math.sqrt(variance) / sd - 1)).toBeLessThan(0.025);
    // The survey's own percentiles, which the model was not given: within a seventh of a standard deviation.
    expect(Math.abs(quantileOf(people, column, 0.05) - p5) / sd).toBeLessThan(0.14);
    expect(Math.abs(quantileOf(people, column, 0.5) - p50) / sd).toBeLessThan(0.14);
    expect(Math.abs(quantileOf(people, column, 0.95) - p95) / sd).toBeLessThan(0.14);
  });

  it('the share below each of the survey’s own percentiles, which the model was not given, is 5, 50 and 95 in 100', () => {
    const errors = sexes.flatMap((sex) => {
      const people = peopleOf(makeBody({ women: sex === 'female' ? 1 : 0, measured: {} }), 1 << 15);
      return dimensionNames.flatMap((name) => {
        const { p5, p50, p95 } = reference[sex].dimensions[name];
        const column = people.column(name);
        const below = (value: number) => shareOf(people, (person) => column[person]! < value);
        // A percentile written in whole millimetres stands for the share below it and the share up to it.
        const error = (value: number, p: number) => Math.max(below(value - 0.5) - p, p - below(value + 0.5), 0);
        return [error(p5, 0.05), error(p50, 0.5), error(p95, 0.95)];
      });
    });
    expect(errors).toHaveLength(2 * 19 * 3);
    expect(Math.max(...errors)).toBeLessThan(0.016);
    expect(errors.reduce((sum, error) => sum + error, 0) / errors.length).toBeLessThan(0.003);
  });

  it('skewed residuals bring the percentiles of the skewed dimensions nearer to the survey’s, all in all', () => {
    let skewed = 0;
    let plain = 0;
    for (const sex of sexes) {
      const people = peopleOf(makeBody({ women: sex === 'female' ? 1 : 0, measured: {} }));
      for (const name of ['thighClearance', 'hipBreadthSitting', 'abdominalDepthSitting', 'weight'] as const) {
        const { mean, sd, ...percentiles } = reference[sex].dimensions[name];
        const points = [
          [0.05, percentiles.p5, -1.645],
          [0.5, percentiles.p50, 0],
          [0.95, percentiles.p95, 1.645],
        ] as const;
        for (const [p, counted, z] of points) {
          skewed += Math.abs(quantileOf(people, people.column(name), p) - counted) / sd;
          plain += Math.abs(mean + z * sd - counted) / sd;
        }
      }
    }
    expect(skewed).toBeLessThan(0.6 * plain);
  });

  it('keeps the correlations', () => {
    const people = peopleOf(makeBody({ women: 0, measured: {} }));
    dimensionNames.slice(0, 13).forEach((a, i) =>
      dimensionNames.slice(0, i).forEach((b, j) => {
        const [x, y] = [people.column(a), people.column(b)];
        const [p, q] = [reference.male.dimensions[a], reference.male.dimensions[b]];
        let sum = 0;
        x.forEach((value, person) => (sum += ((value - p.mean) / p.sd) * ((y[person]! - q.mean) / q.sd)));
        expect(Math.abs(sum / x.length - reference.male.correlation[i]![j]!)).toBeLessThan(0.04);
      }),
    );
  });
});

describe('counting', () => {
  it('orthant probabilities have a closed form: P(both above the mean) = 1/4 + asin(r)/2π', () => {
    // Sheppard 1899; the skewness of each dimension moves its mean off its median, so the medians are counted from.
    const people = peopleOf(makeBody({ women: 0, measured: {} }), 1 << 15);
    const pairs = [
      ['stature', 'poplitealHeight'],
      ['stature', 'sittingElbowHeight'],
      ['poplitealHeight', 'sittingKneeHeight'],
    ] as const;
    for (const [a, b] of pairs) {
      const [x, y] = [people.column(a), people.column(b)];
      const [mx, my] = [quantileOf(people, x, 0.5), quantileOf(people, y, 0.5)];
      const both = shareOf(people, (i) => x[i]! > mx && y[i]! > my);
      const [i, j] = [dimensionNames.indexOf(a), dimensionNames.indexOf(b)];
      const r = reference.male.correlation[Math.max(i, j)]![Math.min(i, j)]!;
      expect(Math.abs(both - (0.25 + Math.asin(r) / (2 * Math.PI)))).toBeLessThan(0.01);
    }
  });

  it('the same body gives the same people', () => {
    const body = () => peopleOf(makeBody({ women: 0.55, measured: {} })).column('thighClearance');
    expect(body()).toEqual(body());
  });

  it('a body of which all is known is one person', () => {
    const all = Object.fromEntries(dimensionNames.map((name) => [name, reference.female.dimensions[name].mean]));
    const people = peopleOf(makeBody({ women: 1, measured: all }));
    expect(people.count).toBe(1);
    expect(people.column('poplitealHeight')[0]).toBe(reference.female.dimensions.poplitealHeight.mean);
  });

  it('a stature range keeps everybody inside it, and shifts the sexes', () => {
    const people = peopleOf(makeBody({ women: 0.5, measured: {}, statureRange: { min: 1500, max: 1600 } }));
    const column = people.column('stature');
    expect(Math.min(...column)).toBeGreaterThanOrEqual(1500 - 1e-6);
    expect(Math.max(...column)).toBeLessThanOrEqual(1600 + 1e-6);
    expect(people.weights[0]! * (people.count / 2)).toBeGreaterThan(0.9);
  });
});

describe('the value that a share of people stays below', () => {
  const measured = { stature: 1700 };
  it.each([0, 0.2, 0.5, 1])('is the first, from the least, at which so many are counted, of %f women', (women) => {
    const people = peopleOf(makeBody({ women, measured }), 64);
    const column = people.column('sittingEyeHeight');
    const order = [...column.keys()].sort((a, b) => column[a]! - column[b]!);
    for (const p of [0, 0.001, 0.05, 0.5, 0.9, 0.95, 0.9999, 1]) {
      let share = 0;
      const found = order.find((person) => (share += people.weights[person]!) >= p - 1e-12) ?? order.at(-1)!;
      expect(quantileOf(people, column, p)).toBe(column[found]);
    }
  });
});
