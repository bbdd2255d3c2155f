import { describe, expect, it } from 'vitest';
import type { Booth, Skirt } from '../../booth.js';
import { aBooth, aDesk, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aSkirt } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';
import { told } from '../../testing/told.js';

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

describe('skirt-drop: what a reader is told', () => {
  const tell = (...args: Parameters<typeof booth>) => told(booth(...args), 'skirt-drop');

  it('where it hangs right', () => {
    expect(tell(40, 39.25)).toMatchInlineSnapshot(`
      "pass, skirt Front
      Front hangs 3/4 in above the floor on Left.
      = 40 in desk − 39 1/4 in drop = 3/4 in
      : 19.05 against 25.4 mm, margin 6.35
      at skirts.Front.drop, by table-skirt trade sizes
      see desks.Left.height: Left is this high"
    `);
  });

  it('where it drags', () => {
    expect(tell(40, 41)).toMatchInlineSnapshot(`
      "fail, skirt Front
      Front is 1 in too long on Left: it drags on the floor and people trip on it. A drop of 39 1/4in would hang right.
      = 40 in desk − 41 in drop = −1 in
      : -25.4 against 0 mm, margin -25.4
      at skirts.Front.drop, by table-skirt trade sizes
      see desks.Left.height: Left is this high
      do Set the drop to 39 1/4in: clear of the floor on Left | skirts.Front.drop := 39 1/4in"
    `);
  });

  it('where it hangs too low, and too high', () => {
    expect(tell(40, 39.75)).toMatchInlineSnapshot(`
      "marginal, skirt Front
      Front hangs 1/4 in above the floor on Left, so close that it catches feet and casters. A drop of 39 1/4in would hang right.
      = 40 in desk − 39 3/4 in drop = 1/4 in
      : 6.35 against 12.7 mm, margin -6.35
      at skirts.Front.drop, by table-skirt trade sizes
      see desks.Left.height: Left is this high
      do Set the drop to 39 1/4in: clear of the floor on Left | skirts.Front.drop := 39 1/4in"
    `);
    expect(tell(40, 38.5)).toMatchInlineSnapshot(`
      "marginal, skirt Front
      Front hangs 1 1/2 in above the floor on Left, so high that it shows what is behind it. A drop of 39 1/4in would hang right.
      = 40 in desk − 38 1/2 in drop = 1 1/2 in
      : 38.1 against 25.4 mm, margin -12.7
      at skirts.Front.drop, by table-skirt trade sizes
      see desks.Left.height: Left is this high
      do Set the drop to 39 1/4in: clear of the floor on Left | skirts.Front.drop := 39 1/4in"
    `);
  });

  it('under a desk that moves, with a limit of the file’s own', () => {
    const overrides = [{ check: 'skirt-drop', value: 4 * INCH, reason: 'cables', origin: nowhere }];
    expect(tell([30, 40], 29.25, { overrides })).toMatchInlineSnapshot(`
      "fail, skirt Front
      Front hangs 10 3/4 in above the floor on Left, so high that it shows what is behind it. No one drop suits a desk whose height is adjustable: hem it for the lowest.
      = 40 in desk − 29 1/4 in drop = 10 3/4 in
      : 273.05 against 101.6 mm, margin -171.45
      at skirts.Front.drop, by the file’s own limit: cables
      see desks.Left.height: Left is this high; overrides.0: the file’s own limit: cables"
    `);
  });

  it('where something is missing', () => {
    expect(tell(40, 39, { skirts: [aSkirt('Front', [])] })).toMatchInlineSnapshot(`
      "unknown, skirt Front
      Cannot say where the hem of Front hangs. Add \`on\` to skirt Front, such as \`on Left\`.
      at skirts.Front, by table-skirt trade sizes
      ask on of skirt Front, as on Left, at skirts.Front"
    `);
    expect(tell(40, 39, { skirts: [aSkirt('Front', ['Left'])] })).toMatchInlineSnapshot(`
      "unknown, skirt Front
      Cannot say where the hem of Front hangs. Add \`drop\` to skirt Front, such as \`drop 39in\`.
      at skirts.Front, by table-skirt trade sizes
      ask drop of skirt Front, as drop 39in, at skirts.Front"
    `);
    expect(tell(40, 39, { desks: [aDesk('Left', 1, { height: undefined })] })).toMatchInlineSnapshot(`
      "unknown, skirt Front
      Cannot say where the hem of Front hangs. Add \`height\` to desk Left, such as \`height 40in\`.
      at skirts.Front, by table-skirt trade sizes
      ask height of desk Left, as height 40in, at desks.Left"
    `);
  });

  it('of a platform, which has no height to hang from, nothing', () => {
    expect(tell(40, 39, { skirts: [aSkirt('Hem', ['Riser'], { drop: given(300) })] })).toBe('');
  });

  it('at the edges of what is allowed', () => {
    const gap = (millimetres: number) => judge(40, 40 - millimetres / INCH).verdict;
    expect([11.6, 11.8, 26.3, 26.5].map(gap)).toEqual(['marginal', 'pass', 'pass', 'marginal']);
    expect(judge(30, 30).message).toContain('Front hangs 0 in above the floor on Left');
    expect([-1.1, -0.9, 51.7, 51.9].map(gap)).toEqual(['fail', 'marginal', 'marginal', 'fail']);
  });
});
