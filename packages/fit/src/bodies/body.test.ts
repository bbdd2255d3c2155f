import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeBody, meanOf, percentileOf, sdOf } from './body.js';
import { dimensionNames, type DimensionName, type Sex } from './dimensions.js';
import { reference } from './reference.js';

function correlation(sex: Sex, a: DimensionName, b: DimensionName): number {
  const [i, j] = [dimensionNames.indexOf(a), dimensionNames.indexOf(b)];
  return reference[sex].correlation[Math.max(i, j)]![Math.min(i, j)]!;
}

describe('the conditional body', () => {
  // Worked by hand from the summary: mean = μy + r·(σy/σx)·(x − μx), sd = σy·√(1 − r²).
  it.each([
    ['male', 1790, 'standingElbowHeight', 1105.49, 50.1, 1756.21, 68.55],
    ['male', 1790, 'poplitealHeight', 429.8, 24.82, 1756.21, 68.55],
    ['male', 1790, 'sittingElbowHeight', 245.04, 28.65, 1756.21, 68.55],
    ['female', 1500, 'standingElbowHeight', 1023.9, 45.29, 1628.47, 64.2],
    ['female', 1500, 'poplitealHeight', 388.2, 23.59, 1628.47, 64.2],
    ['female', 1500, 'sittingEyeHeight', 747.69, 30.38, 1628.47, 64.2],
    ['female', 1500, 'thighClearance', 167.86, 14.06, 1628.47, 64.2],
  ] as const)('%s of %i mm: %s', (sex, stature, dimension, mean, sd, meanStature, sdStature) => {
    const body = makeBody({ women: sex === 'female' ? 1 : 0, measured: { stature } });
    const r = correlation(sex, 'stature', dimension);
    expect(meanOf(body, dimension)).toBeCloseTo(mean + r * (sd / sdStature) * (stature - meanStature), 1);
    expect(Math.abs(sdOf(body, dimension) - sd * Math.sqrt(1 - r * r))).toBeLessThan(0.1);
  });

  // Figures copied from the correlation table, arithmetic done on paper, so that the formula and the code share nothing.
  it('popliteal height of a man of 1824.76 mm (one sd tall) is 429.8 + 24.82 r', () => {
    const body = makeBody({ women: 0, measured: { stature: 1824.76 } });
    const r = correlation('male', 'stature', 'poplitealHeight');
    expect(Math.abs(meanOf(body, 'poplitealHeight') - (429.8 + 24.82 * r))).toBeLessThan(0.1);
  });

  it('two measurements: the textbook formula for two regressors', () => {
    const measured = { stature: 1700, weight: 60 };
    const body = makeBody({ women: 1, measured });
    const { stature, weight, thighClearance: thigh } = reference.female.dimensions;
    const [a, b, c] = [
      correlation('female', 'stature', 'thighClearance'),
      correlation('female', 'weight', 'thighClearance'),
      correlation('female', 'stature', 'weight'),
    ];
    const [z1, z2] = [(1700 - stature.mean) / stature.sd, (60 - weight.mean) / weight.sd];
    const [b1, b2] = [(a - b * c) / (1 - c * c), (b - a * c) / (1 - c * c)];
    expect(Math.abs(meanOf(body, 'thighClearance') - (thigh.mean + thigh.sd * (b1 * z1 + b2 * z2)))).toBeLessThan(0.1);
    const explained = b1 * a + b2 * b;
    expect(Math.abs(sdOf(body, 'thighClearance') - thigh.sd * Math.sqrt(1 - explained))).toBeLessThan(0.1);
  });

  it('a measured dimension is exact, whatever else is known', () => {
    const body = makeBody({ women: 0.5, measured: { stature: 1700, poplitealHeight: 400, sittingElbowHeight: 260 } });
    expect(meanOf(body, 'poplitealHeight')).toBe(400);
    expect(sdOf(body, 'poplitealHeight')).toBe(0);
    expect(percentileOf(body, 'sittingElbowHeight', 0.05)).toBe(260);
  });

  it('a body of unsaid sex is a mixture, each weighted by its likelihood', () => {
    const density = (sex: Sex, stature: number) => {
      const { mean, sd } = reference[sex].dimensions.stature;
      return Math.exp(-0.5 * ((stature - mean) / sd) ** 2) / sd;
    };
    for (const stature of [1500, 1650, 1700, 1790, 1900]) {
      const body = makeBody({ women: 0.5, measured: { stature } });
      const female = body.sexes.find(({ sex }) => sex === 'female')?.weight ?? 0;
      const expected = density('female', stature) / (density('female', stature) + density('male', stature));
      expect(Math.abs(female - expected)).toBeLessThan(1e-5);
    }
  });

  it('a reported stature is taken down and left open', () => {
    // People report about 25 mm too much (City University of Hong Kong, Online Anthropometry, Ch2-1): T27, 1750 → ~1725.
    const body = makeBody({ women: 0, measured: { stature: 1750 }, reportedStature: true });
    expect(meanOf(body, 'stature')).toBeGreaterThan(1722);
    expect(meanOf(body, 'stature')).toBeLessThan(1730);
    expect(sdOf(body, 'stature')).toBeGreaterThan(15);
    expect(sdOf(body, 'poplitealHeight')).toBeGreaterThan(
      sdOf(makeBody({ women: 0, measured: { stature: 1725 } }), 'poplitealHeight'),
    );
  });

  it('survives contradictory and extreme measurements', () => {
    const number = fc.double({ min: 1, max: 4000, noNaN: true });
    const measured = fc.dictionary(fc.constantFrom(...dimensionNames), number);
    fc.assert(
      fc.property(measured, fc.constantFrom(0, 0.5, 1), (known, women) => {
        const body = makeBody({ women, measured: known });
        expect(body.sexes.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9);
        for (const name of dimensionNames) {
          expect(Number.isFinite(meanOf(body, name))).toBe(true);
          expect(sdOf(body, name)).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });

  it('measuring one more dimension never widens another', () => {
    const pairs = fc.tuple(fc.constantFrom(...dimensionNames), fc.constantFrom(...dimensionNames));
    fc.assert(
      fc.property(pairs, fc.constantFrom(0, 1), ([known, asked], women) => {
        const sex = women === 1 ? 'female' : 'male';
        const value = reference[sex].dimensions[known].mean;
        const before = sdOf(makeBody({ women, measured: {} }), asked);
        expect(sdOf(makeBody({ women, measured: { [known]: value } }), asked)).toBeLessThanOrEqual(before + 1e-9);
      }),
    );
  });
});
