import { describe, expect, it } from 'vitest';
import type { Booth, Projection, ScreenUse } from '../../booth.js';
import {
  aBooth,
  aDesk,
  anOperator,
  aPlacement,
  aRoom,
  aStation,
  given,
  nowhere,
  fixed,
  range,
} from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aMonitorOf, aScreenAt, aWalkway } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';
import { told } from '../../testing/told.js';

function projection(height: number, reach: number): Projection {
  return { origin: nowhere, height: given(height), reach: given(reach) };
}

/** A desk 1500 × 700 and 1000 high, and a walkway of 2000 between it and the stage. */
function way(
  projections: readonly Projection[],
  screens: readonly ScreenUse[] = [],
  parts: Partial<Booth> = {},
): Booth {
  const stage = { origin: nowhere, edge: given(5700) };
  return aBooth({
    room: aRoom(10_000, 20_000, { stage }),
    operators: [anOperator('Noor', { stature: 1630 })],
    desks: [aDesk('Left', 1000)],
    monitors: [aMonitorOf('Cues', 500, 300)],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'], { screens })],
    placements: [aPlacement(['Left'], 3000, 3000)],
    walkways: [aWalkway('Front', ['booth', 'stage'], { projections })],
    ...parts,
  });
}

const judge = (...args: Parameters<typeof way>) => findingOf(way(...args), 'walkway-projection');

describe('walkway-projection: at most 4 in between 27 and 80 in high', () => {
  it.each<[string, Projection[], string, number | undefined]>([
    [
      outside('2010 ADA Standards 307.2', '4 in between 27 and 80 in high'),
      [projection(50 * INCH, 4 * INCH)],
      'pass',
      4 * INCH,
    ],
    [outside('2010 ADA Standards 307.2', '100 mm, as it is printed'), [projection(1200, 100)], 'pass', 100],
    ['within 1 mm', [projection(1200, 102.5)], 'pass', 102.5],
    ['5 in at 50 in', [projection(50 * INCH, 5 * INCH)], 'fail', 5 * INCH],
    [
      outside('2010 ADA Standards 307.2', 'any reach at 27 in: a cane finds it'),
      [projection(27 * INCH, 12 * INCH)],
      'pass',
      undefined,
    ],
    ['a foot at 28 in', [projection(28 * INCH, 12 * INCH)], 'fail', 12 * INCH],
    [
      outside('2010 ADA Standards 307.2', '80 in is still in the way'),
      [projection(80 * INCH, 12 * INCH)],
      'fail',
      12 * INCH,
    ],
    ['a foot above heads', [projection(81 * INCH, 12 * INCH)], 'pass', undefined],
    ['the farthest of several', [projection(1200, 50), projection(1300, 150)], 'fail', 150],
  ])('%s', (_, projections, verdict, measured) => {
    const finding = judge(projections);
    expect(finding.verdict).toBe(verdict);
    if (measured === undefined) expect(finding.measured).toBeUndefined();
    else expect(finding.measured).toBeCloseTo(measured, 6);
  });

  it.each<[string, number, Partial<ScreenUse>, string, number]>([
    ['its face 150 beyond the edge', 850, {}, 'fail', 150],
    ['its face 80 beyond the edge', 780, {}, 'pass', 80],
    // Turned by 30°, an end of a screen 500 wide swings 250 · sin 30° = 125 back.
    ['turned by 30°, one end 50 beyond the edge', 625, { turn: given(30) }, 'pass', 50],
    ['turned by 30°, one end 125 beyond the edge', 700, { turn: given(30) }, 'fail', 125],
  ])('a screen over the far edge: %s', (_, setback, parts, verdict, reach) => {
    const finding = judge([], [aScreenAt('Cues', 750, setback, parts)]);
    expect(finding.verdict).toBe(verdict);
    expect(finding.measured).toBeCloseTo(reach, 6);
    expect(finding.message).toContain('Cues sticks out');
    expect(finding.message).toContain('1100 mm above the floor');
    expect(finding.assumptions.join()).toContain('counted from its face');
  });

  // By a tenth of a millimetre within what is allowed, and beyond.
  it.each<[string, (by: number) => readonly Projection[], string, string]>([
    ['reaching 4 in and 1 mm', (by) => [projection(1200, 4 * INCH + 1 + by)], 'pass', 'fail'],
    ['27 in and 1 mm high', (by) => [projection(27 * INCH + 1 + by, 300)], 'pass', 'fail'],
    ['80 in high, of which nothing is allowed', (by) => [projection(80 * INCH + by, 300)], 'fail', 'pass'],
  ])('%s', (_, projections, within, beyond) => {
    expect([judge(projections(-0.1)).verdict, judge(projections(0.1)).verdict]).toEqual([within, beyond]);
  });

  it('a screen counts from 1 mm beyond the edge, whichever side of the walkway its desk is', () => {
    const over = (by: number) => findingsOf(way([], [aScreenAt('Cues', 750, 700 + by)]), 'walkway-projection');
    expect([over(0.9).length, over(1.1).length]).toEqual([0, 1]);
    const turned = { walkways: [aWalkway('Front', ['stage', 'booth'])] };
    expect(judge([], [aScreenAt('Cues', 750, 850)], turned).measured).toBeCloseTo(150, 6);
  });

  it('is measured from the edge of its own desk, toward the nearest of the other side', () => {
    // Beyond stands 1000 off to the right, and far away before the stage: toward it the screen sticks out to the right.
    const parts = (walkway: readonly [string, string]): Partial<Booth> => ({
      desks: [aDesk('Left', 1000), aDesk('Beyond', 1000)],
      placements: [aPlacement(['Left'], 3000, 3000), aPlacement(['Beyond'], 5500, 3000)],
      walkways: [aWalkway('Way', walkway)],
    });
    const screens = [aScreenAt('Cues', 1400, 400)];
    expect(judge([], screens, parts(['Left', 'Beyond'])).measured).toBeCloseTo(150, 6);
    expect(judge([], screens, parts(['Beyond', 'Left'])).measured).toBeCloseTo(150, 6);
    expect(findingsOf(way([], screens, parts(['Beyond', 'stage'])), 'walkway-projection')).toEqual([]);
  });

  it('where the sides touch there is no way that a screen could stand out into', () => {
    const stage = { origin: nowhere, edge: given(3700) };
    const room = aRoom(10_000, 20_000, { stage });
    expect(findingsOf(way([], [aScreenAt('Cues', 750, 850)], { room }), 'walkway-projection')).toEqual([]);
    expect(findingsOf(way([], [aScreenAt('Cues', 750, 850)], { placements: [] }), 'walkway-projection')).toEqual([]);
  });

  it('a screen over the desk, or over an edge that no walkway passes, sticks out into none', () => {
    expect(findingsOf(way([], [aScreenAt('Cues', 750, 600)]), 'walkway-projection')).toEqual([]);
    const behind = { walkways: [aWalkway('Behind', ['booth', 'back-wall'])] };
    expect(findingsOf(way([], [aScreenAt('Cues', 750, 900)], behind), 'walkway-projection')).toEqual([]);
  });

  it('a screen past the desk’s end sticks out into the way beside it', () => {
    const side = { walkways: [aWalkway('Side', ['left-wall', 'booth'])] };
    // Its middle 100 from the left end, half of it 250.
    expect(judge([], [aScreenAt('Cues', 100, 400)], side)).toMatchObject({ verdict: 'fail' });
    expect(judge([], [aScreenAt('Cues', 100, 400)], side).measured).toBeCloseTo(150, 6);
  });

  it('a screen on an arm hangs as low as that goes', () => {
    const arm = (min: number) => {
      const height = { line: 'bottom', over: 'desk', distance: range(min, 1500) } as const;
      return judge([], [aScreenAt('Cues', 750, 900, { height })]);
    };
    // Over a desk 1000 high: what sticks out counts up to 2032.
    expect(arm(1033).verdict).toBe('pass');
    expect(arm(1032)).toMatchObject({ verdict: 'fail' });
  });

  it('a screen on a raised platform hangs that much higher', () => {
    const screen = aScreenAt('Cues', 750, 900, { height: { line: 'bottom', over: 'desk', distance: fixed(950) } });
    expect(judge([], [screen])).toMatchObject({ verdict: 'fail' });
    const riser = {
      name: 'Riser',
      origin: nowhere,
      at: given({ x: 2000, y: 2000 }),
      width: given(4000),
      depth: given(3000),
    };
    const platforms = [{ ...riser, height: given(200) }];
    expect(judge([], [screen], { platforms }).verdict).toBe('pass');
  });

  it('asks for what a projection does not say', () => {
    const bare: Projection = { origin: nowhere };
    expect(judge([bare])).toMatchObject({ verdict: 'unknown', missing: { property: 'height' } });
    expect(judge([{ ...bare, height: given(1200) }])).toMatchObject({ missing: { property: 'reach' } });
  });

  it('the file may set its own limit, with its reason', () => {
    const overrides = [{ check: 'walkway-projection', value: 160, reason: 'padded edge', origin: nowhere }];
    expect(judge([projection(1200, 150)], [], { overrides })).toMatchObject({ verdict: 'pass', limit: 160 });
  });
});

describe('walkway-projection: what a reader is told', () => {
  const tell = (...args: Parameters<typeof way>) => told(way(...args), 'walkway-projection');

  it('where nothing is in the way', () => {
    expect(tell([projection(300, 500)])).toMatchInlineSnapshot(`
      "pass, walkway Front
      What sticks out into Front is so low that a cane finds it, or above heads.
      at walkways.Front, by 2010 ADA Standards 307.2"
    `);
    expect(tell([projection(1000, 90)])).toMatchInlineSnapshot(`
      "pass, walkway Front
      The projection sticks out 90 mm into Front, 1000 mm above the floor: not more than 102 mm.
      : 90 against 101.6 mm, margin 11.6
      at walkways.Front.projections.0, by 2010 ADA Standards 307.2"
    `);
  });

  it('where people walk into it', () => {
    expect(tell([projection(1000, 150)])).toMatchInlineSnapshot(`
      "fail, walkway Front
      The projection sticks out 150 mm into Front, 1000 mm above the floor, where people walk into it and a cane does not find it. Pull it back by 48 mm, or put something on the floor below it.
      : 150 against 101.6 mm, margin -48.4
      at walkways.Front.projections.0, by 2010 ADA Standards 307.2"
    `);
    expect(tell([projection(1000, 150), projection(1500, 200)])).toMatchInlineSnapshot(`
      "fail, walkway Front
      Projection 2 sticks out 200 mm into Front, 1500 mm above the floor, where people walk into it and a cane does not find it. Pull it back by 98 mm, or put something on the floor below it.
      : 200 against 101.6 mm, margin -98.4
      at walkways.Front.projections.1, by 2010 ADA Standards 307.2"
    `);
  });

  it('of a screen that stands out', () => {
    expect(tell([], [aScreenAt('Cues', 750, 850)])).toMatchInlineSnapshot(`
      "fail, walkway Front
      Cues sticks out 150 mm into Front, 1100 mm above the floor, where people walk into it and a cane does not find it. Pull it back by 48 mm, or put something on the floor below it.
      : 150 against 101.6 mm, margin -48.4
      at walkways.Front, by 2010 ADA Standards 307.2
      granted a screen is counted from its face: its body and its arm reach farther"
    `);
  });

  it('where something is missing', () => {
    expect(tell([{ origin: nowhere }])).toMatchInlineSnapshot(`
      "unknown, walkway Front
      Cannot say what sticks out into Front. Add \`height\` to a projection of walkway Front, such as \`height 1270mm\`.
      at walkways.Front.projections.0, by 2010 ADA Standards 307.2
      ask height of a projection of walkway Front, as height 1270mm, at walkways.Front.projections.0"
    `);
    expect(tell([{ origin: nowhere, height: given(1000) }])).toMatchInlineSnapshot(`
      "unknown, walkway Front
      Cannot say what sticks out into Front. Add \`reach\` to a projection of walkway Front, such as \`reach 75mm\`.
      at walkways.Front.projections.0, by 2010 ADA Standards 307.2
      ask reach of a projection of walkway Front, as reach 75mm, at walkways.Front.projections.0"
    `);
  });

  it('where the limit is the file’s own, or a borrowed one', () => {
    const overrides = [{ check: 'walkway-projection', value: 160, reason: 'padded edge', origin: nowhere }];
    expect(tell([projection(1200, 170)], [], { overrides })).toMatchInlineSnapshot(`
      "fail, walkway Front
      The projection sticks out 170 mm into Front, 1200 mm above the floor, where people walk into it and a cane does not find it. Pull it back by 10 mm, or put something on the floor below it.
      : 170 against 160 mm, margin -10
      at walkways.Front.projections.0, by the file’s own limit: padded edge
      see overrides.0: the file’s own limit: padded edge"
    `);
    expect(tell([projection(300, 170)], [], { limits: 'uk' })).toMatchInlineSnapshot(`
      "pass, walkway Front
      What sticks out into Front is so low that a cane finds it, or above heads.
      at walkways.Front, by 2010 ADA Standards 307.2
      granted no UK figure was read for this: the US figure stands in"
    `);
    expect(tell([projection(1200, 90)], [], { limits: 'uk' })).toMatchInlineSnapshot(`
      "pass, walkway Front
      The projection sticks out 90 mm into Front, 1200 mm above the floor: not more than 102 mm.
      : 90 against 101.6 mm, margin 11.6
      at walkways.Front.projections.0, by 2010 ADA Standards 307.2
      granted no UK figure was read for this: the US figure stands in"
    `);
  });
});
