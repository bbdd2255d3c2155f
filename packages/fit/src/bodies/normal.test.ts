import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalCdf, normalQuantile } from './normal.js';

describe('the standard normal distribution', () => {
  // Abramowitz & Stegun 1964, table 26.1 (15 decimals) for the centre; exact tail values from the complementary error
  // function evaluated in extended precision.
  it.each([
    [0, 0.5],
    [0.5, 0.691462461274013],
    [1, 0.841344746068543],
    [1.5, 0.933192798731142],
    [2, 0.977249868051821],
    [2.5, 0.993790334674224],
    [3, 0.99865010196837],
  ])('P(Z ≤ %f) = %f', (z, p) => expect(normalCdf(z)).toBeCloseTo(p, 14));

  it.each([
    [-5, 2.866515718791939e-7],
    [-8, 6.220960574271785e-16],
    [-12, 1.776482112077679e-33],
    [-37, 5.725571222525e-300],
  ])('far tail P(Z ≤ %f) = %e', (z, p) => expect(Math.abs(normalCdf(z) / p - 1)).toBeLessThan(1e-12));

  // National tables of percentage points (for instance Fisher & Yates, table I).
  it.each([
    [0.95, 1.6448536269514722],
    [0.975, 1.959963984540054],
    [0.99, 2.3263478740408408],
    [0.995, 2.5758293035489004],
    [0.999, 3.090232306167813],
  ])('the %f point is %f', (p, z) => expect(normalQuantile(p)).toBeCloseTo(z, 12));

  it('quantile undoes the distribution function', () => {
    fc.assert(
      fc.property(fc.double({ min: -37, max: 5, noNaN: true }), (z) => {
        expect(Math.abs(normalQuantile(normalCdf(z)) - z)).toBeLessThan(1e-8 * Math.max(1, Math.abs(z)));
      }),
    );
  });

  it('has ends', () => {
    expect(normalQuantile(0)).toBe(-Infinity);
    expect(normalQuantile(1)).toBe(Infinity);
    expect(normalQuantile(1.1)).toBeNaN();
    expect(normalCdf(-Infinity)).toBe(0);
    expect(normalCdf(Infinity)).toBe(1);
  });
});
