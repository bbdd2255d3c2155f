import { describe, expect, it } from 'vitest';
import type { Booth, Skirt } from '../../booth.js';
import { aBooth, aDesk, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aSkirt } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';

function booth(desk: number | readonly [number, number], drop: number, parts: Partial<Booth> = {}): Booth {
  const height = typeof desk === 'number' ? desk * INCH : ([desk[0] * INCH, desk[1] * INCH] as const);
  return aBooth({
    show: 'in',
    desks: [aDesk('Left', height)],
    skirts: [aSkirt('Front', ['Left'], { drop: given(drop * INCH) })],
    ...parts,
  });
}

const judge = (...args: Parameters<typeof booth>) => findingOf(booth(...args), 'skirt-drop');

describe('skirt-drop: gap between hem and floor, preferred 1/2 to 1 in, outer 0 to 2 in', () => {
  it.each<[string, number, number, string, number, number]>([
    // desk, drop, verdict, gap, the bound that decides
    [outside('table-skirt trade sizes', 'a drop of 29 in on a table of 30 in'), 30, 29, 'pass', 1, 1],
    ['a drop of 39 3/8 in on 40 in', 40, 39.375, 'pass', 0.625, 0.5],
    [
      outside('table-cloth trade sizes', 'W31: a cloth that drops 30 in on a table of 30 in reaches the floor'),
      30,
      30,
      'marginal',
      0,
      0.5,
    ],
    ['1/4 in above the floor', 40, 39.75, 'marginal', 0.25, 0.5],
    ['1 1/2 in above the floor', 40, 38.5, 'marginal', 1.5, 1],
    ['2 in above the floor', 40, 38, 'marginal', 2, 1],
    ['2 1/4 in above the floor', 40, 37.75, 'fail', 2.25, 2],
    ['1 in too long', 40, 41, 'fail', -1, 0],
  ])('%s', (_, desk, drop, verdict, gap, limit) => {
    const finding = judge(desk, drop);
    expect(finding.verdict).toBe(verdict);
    expect(finding.measured).toBeCloseTo(gap * INCH, 6);
    expect(finding.limit).toBeCloseTo(limit * INCH, 6);
    if (verdict === 'pass') expect(finding.margin).toBeGreaterThan(-1);
    else expect(finding.margin).toBeLessThan(-1);
  });

  it('shows its terms and the drop that would hang right', () => {
    const finding = judge(40, 41);
    expect(finding.terms).toBe('40 in desk − 41 in drop = −1 in');
    expect(finding.message).toContain('drags on the floor and people trip');
    expect(finding.remedies).toMatchObject([{ changes: [{ origin: nowhere, text: '39 1/4in' }], safe: true }]);
    const after = judge(40, 39.25);
    expect(after).toMatchObject({ verdict: 'pass', remedies: [] });
  });

  it('an adjustable desk is judged at both its ends', () => {
    expect(judge([40, 40.25], 39.25).verdict).toBe('pass');
    expect(judge([30, 40], 29.25)).toMatchObject({ verdict: 'fail', remedies: [] });
    expect(judge([30, 40], 29.25).measured).toBeCloseTo(10.75 * INCH, 6);
    expect(judge([30, 40], 29.25).message).toContain('hem it for the lowest');
  });

  it('each desk that it hangs on is judged', () => {
    const desks = [aDesk('Left', 40 * INCH), aDesk('Right', 36 * INCH)];
    const skirts = [aSkirt('Front', ['Left', 'Right'], { drop: given(39.25 * INCH) })];
    const found = findingsOf(booth(40, 39, { desks, skirts }), 'skirt-drop');
    expect(found.map(({ verdict }) => verdict)).toEqual(['pass', 'fail']);
    expect(found[1]!.remedies[0]).toMatchObject({ safe: false });
  });

  it('is marked weak, and warns of trips and fire', () => {
    expect(judge(40, 39)).toMatchObject({ strength: 'weak' });
    expect(judge(40, 39).caution).toContain('trip');
  });

  it('the file may set the widest gap, with its reason', () => {
    const overrides = [
      { check: 'skirt-drop', value: 4 * INCH, reason: 'a ramp for cables runs below it', origin: nowhere },
    ];
    expect(judge(40, 36, { overrides })).toMatchObject({
      verdict: 'pass',
      source: 'the file’s own limit: a ramp for cables runs below it',
    });
    expect(judge(40, 35.75, { overrides })).toMatchObject({ verdict: 'fail' });
    expect(judge(40, 41, { overrides })).toMatchObject({ verdict: 'fail', limit: 0 });
  });

  it.each<[string, Partial<Skirt>, Partial<Booth>, string]>([
    ['what it hangs on', { on: [] }, {}, 'on'],
    ['a drop', { drop: undefined }, {}, 'drop'],
    ['the desk’s height', {}, { desks: [aDesk('Left', 1, { height: undefined })] }, 'height'],
  ])('without %s it asks for it', (_, skirt, parts, property) => {
    const skirts = [aSkirt('Front', ['Left'], { drop: given(1000), ...skirt })];
    expect(judge(40, 39, { skirts, ...parts })).toMatchObject({ verdict: 'unknown', missing: { property } });
  });
});
