import { describe, expect, it } from 'vitest';
import type { Booth, Platform } from '../../booth.js';
import { aBooth, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aPlatform } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';

function steps(risers: number, tread: number | undefined, handrail: boolean): Partial<Platform> {
  return {
    steps: {
      origin: nowhere,
      risers: given(risers),
      handrail,
      ...(tread !== undefined && { tread: given(tread * INCH) }),
    },
  };
}

function ramp(feet: number, width: number): Partial<Platform> {
  return { ramp: { origin: nowhere, length: given(feet * 12 * INCH), width: given(width * INCH) } };
}

const booth = (inches: number, platform: Partial<Platform>, parts: Partial<Booth> = {}) =>
  aBooth({ show: 'in', platforms: [aPlatform('Riser', inches * INCH, platform)], ...parts });
const step = (...args: Parameters<typeof booth>) => findingOf(booth(...args), 'platform-step');

describe('platform-step: risers 4 to 7 in, treads 11 in; one or two risers: 13 in and a handrail', () => {
  it.each<[string, number, Partial<Platform>, string, number | undefined]>([
    [
      outside(
        'IBC 2018 1011.5.2; IBC 2012 1003.5 exception 2',
        'W38: two risers of 7 in with treads of 13 in and a handrail',
      ),
      14,
      steps(2, 13, true),
      'pass',
      7,
    ],
    ['W38: treads of 12 in', 14, steps(2, 12, true), 'fail', 12],
    ['W38: no handrail', 14, steps(2, 13, false), 'fail', undefined],
    ['16 in in two steps', 16, steps(2, 13, true), 'fail', 8],
    [outside('IBC 2018 1011.5.2', 'risers of 7 in with treads of 11 in'), 21, steps(3, 11, true), 'pass', 7],
    ['21 in in three steps, treads of 10 in', 21, steps(3, 10, true), 'fail', 10],
    ['three steps without a handrail', 21, steps(3, 11, false), 'marginal', undefined],
    ['7 in in one step: the platform itself is its tread', 7, steps(1, undefined, true), 'pass', 7],
    ['3 in in one step is too low to see', 3, steps(1, undefined, true), 'fail', 3],
    ['8 in in one step', 8, steps(1, undefined, true), 'fail', 8],
  ])('%s', (_, height, platform, verdict, inches) => {
    const finding = step(height, platform);
    expect(finding.verdict).toBe(verdict);
    if (inches === undefined) expect(finding.measured).toBeUndefined();
    else expect(finding.measured).toBeCloseTo(inches * INCH, 6);
  });

  it.each<[string, number, Partial<Platform>, string]>([
    [outside('2010 ADA Standards 405.2 and 405.5', 'a ramp of 1:12, 36 in wide'), 8, ramp(8, 36), 'pass'],
    ['8 in high, 7 ft long', 8, ramp(7, 36), 'fail'],
    ['8 in high, 35 in wide', 8, ramp(8, 35), 'fail'],
  ])('a ramp of 1:12: %s', (_, height, platform, verdict) => {
    expect(step(height, platform).verdict).toBe(verdict);
    expect(step(height, platform).terms).toBe('8 in × 12 = 96 in');
  });

  it('steps and a ramp are judged each', () => {
    const both = findingsOf(booth(8, { ...steps(2, 13, true), ...ramp(7, 36) }), 'platform-step');
    expect(both.map(({ verdict }) => verdict)).toEqual(['pass', 'fail']);
  });

  it('says how many steps would do', () => {
    expect(step(16, steps(2, 11, false)).message).toContain('3 steps of 5 3/8 in with treads of 11 in and a handrail');
    expect(step(14, steps(2, 13, false)).message).toContain('Add a handrail');
  });

  it.each<[string, Partial<Platform>, string]>([
    ['how high it is', { height: undefined, ...steps(2, 13, true) }, 'height'],
    ['for a way up', {}, 'steps'],
    ['how many risers', { steps: { origin: nowhere, handrail: true } }, 'risers'],
    ['how deep a tread', steps(2, undefined, true), 'tread'],
    ['how long the ramp', { ramp: { origin: nowhere, width: given(1000) } }, 'length'],
    ['how wide the ramp', { ramp: { origin: nowhere, length: given(3000) } }, 'width'],
  ])('asks %s', (_, platform, property) => {
    expect(step(8, platform)).toMatchObject({ verdict: 'unknown', missing: { property } });
  });

  it('the file may set the highest riser, with its reason', () => {
    const overrides = [{ check: 'platform-step', value: 200, reason: 'stage steps that are there', origin: nowhere }];
    expect(step(7.5 * 2, steps(2, 13, true), { overrides })).toMatchObject({
      verdict: 'pass',
      source: 'the file’s own limit: stage steps that are there',
    });
  });
});
