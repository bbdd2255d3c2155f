import { describe, expect, it } from 'vitest';
import type { Booth, Column, Pinch } from '../../booth.js';
import { aBooth, aDesk, aPlacement, aRoom, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aColumn, aRack, aWalkway } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';
import { told } from '../../testing/told.js';

function pinch(at: number | undefined, width: number, length: number): Pinch {
  return { origin: nowhere, ...(at !== undefined && { at: given(at) }), width: given(width), length: given(length) };
}

/** A walkway 2000 mm wide behind a desk of 6000. */
function way(pinches: readonly Pinch[], columns: readonly Column[] = [], parts: Partial<Booth> = {}): Booth {
  return aBooth({
    room: aRoom(10_000, 20_000, { columns }),
    desks: [aDesk('Left', 1000, { width: given(6000) })],
    placements: [aPlacement(['Left'], 2000, 2000)],
    walkways: [aWalkway('Behind', ['booth', 'back-wall'], { serves: given(20), pinches })],
    ...parts,
  });
}

const judge = (...args: Parameters<typeof way>) => findingOf(way(...args), 'walkway-pinch');

describe('walkway-pinch: 32 in wide over at most 24 in, 48 in apart', () => {
  it.each<[string, Pinch[], string, number]>([
    [
      outside('2010 ADA Standards 403.5.1, exception', 'W32: 815 mm wide, 610 long, 1220 apart'),
      [pinch(1000, 815, 610), pinch(2830, 815, 610)],
      'pass',
      610,
    ],
    [
      outside('2010 ADA Standards 403.5.1, exception', 'W32: 900 apart is too near'),
      [pinch(1000, 815, 610), pinch(2510, 815, 610)],
      'fail',
      900,
    ],
    [
      outside('2010 ADA Standards 403.5.1, exception', 'W32: 611 long is too long'),
      [pinch(1000, 815, 611)],
      'fail',
      611,
    ],
    [
      outside('2010 ADA Standards 403.5.1, exception', 'W32: 812 wide is too narrow'),
      [pinch(1000, 812, 610)],
      'fail',
      812,
    ],
    ['32 in wide and 24 in long, as printed in inches', [pinch(undefined, 32 * INCH, 24 * INCH)], 'pass', 32 * INCH],
    ['the order in the text does not matter', [pinch(2510, 815, 610), pinch(1000, 815, 610)], 'fail', 900],
    [
      'three of them: the nearest two count',
      [pinch(0, 815, 100), pinch(3000, 815, 100), pinch(4000, 815, 100)],
      'fail',
      900,
    ],
    ['a way of 36 in is no pinch, however long', [pinch(0, 914, 5000), pinch(5000, 850, 300)], 'pass', 850],
  ])('%s', (_, pinches, verdict, measured) => {
    const finding = judge(pinches);
    expect(finding.verdict).toBe(verdict);
    expect(finding.measured).toBeCloseTo(measured, 6);
  });

  // Half a millimetre is allowed, of a figure that is an exception already.
  it.each<[string, (millimetres: number) => readonly Pinch[], number]>([
    ['32 in wide', (by) => [pinch(0, 32 * INCH + by, 300)], -0.5],
    ['24 in long', (by) => [pinch(0, 850, 24 * INCH - by)], -0.5],
    ['48 in apart', (by) => [pinch(0, 850, 300), pinch(300 + 48 * INCH + by, 850, 300)], -0.5],
  ])('%s, and half a millimetre is allowed', (_, pinches, bound) => {
    const verdict = (by: number) => judge(pinches(by)).verdict;
    expect([verdict(bound + 0.1), verdict(bound - 0.1)]).toEqual(['pass', 'fail']);
  });

  it('a way within half a millimetre of 36 in is none', () => {
    expect(findingsOf(way([pinch(0, 36 * INCH - 0.4, 5000)]), 'walkway-pinch')).toEqual([]);
    expect(judge([pinch(0, 36 * INCH - 0.6, 5000)]).verdict).toBe('fail');
  });

  it('points of the plan and of the text are not measured from each other', () => {
    // Where along the walkway the text counts from is not said.
    const both = judge([pinch(1000, 850, 300)], [aColumn('C', 3000, 0, 400, 1150)]);
    expect(both).toMatchObject({ verdict: 'pass', measured: 850 });
    expect(both.message).toContain('at 2 points');
  });

  it('where the plan does not show it, only what the text names counts', () => {
    const column = aColumn('C', 3000, 0, 400, 1200);
    expect(findingsOf(way([], [column], { placements: [] }), 'walkway-pinch')).toEqual([]);
    expect(findingsOf(way([], [column], { placements: [aPlacement(['Left'], 2000, 0)] }), 'walkway-pinch')).toEqual([]);
    expect(judge([pinch(0, 850, 300)], [column], { placements: [] })).toMatchObject({ verdict: 'pass', measured: 850 });
  });

  it('a column beside a walkway that runs across the room is measured along it', () => {
    const walkways = [aWalkway('Side', ['left-wall', 'Left'])];
    const columns = [aColumn('C', 0, 2100, 1150, 590)];
    expect(judge([], columns, { walkways })).toMatchObject({ verdict: 'pass', measured: 590 });
    expect(judge([], [aColumn('C', 0, 2100, 1150, 620)], { walkways })).toMatchObject({
      verdict: 'fail',
      measured: 620,
    });
  });

  it('W32: a stretch of 1220 between them may not be narrower than 915 itself', () => {
    // A third point of 900 between two good ones is a pinch too, and too near to both.
    const finding = judge([pinch(0, 815, 610), pinch(1200, 900, 300), pinch(2830, 815, 610)]);
    expect(finding).toMatchObject({ verdict: 'fail', measured: 590 });
  });

  it('asks nothing where nothing is narrow', () => {
    expect(findingsOf(way([]), 'walkway-pinch')).toEqual([]);
    expect(findingsOf(way([pinch(0, 1000, 300)]), 'walkway-pinch')).toEqual([]);
    expect(findingsOf(way([], [aColumn('C', 3000, 0, 300, 1000)]), 'walkway-pinch')).toEqual([]);
  });

  it('a column of the plan is a pinch: what it leaves beside it, over its own length', () => {
    // 2000 less 1150: 850 is left, over 400.
    expect(judge([], [aColumn('C', 3000, 0, 400, 1150)])).toMatchObject({ verdict: 'pass', measured: 850 });
    const long = judge([], [aColumn('C', 3000, 0, 700, 1150)]);
    expect(long).toMatchObject({ verdict: 'fail', measured: 700 });
    expect(long.message).toContain('The narrow point at C is 700 mm long');
    expect(judge([], [aColumn('C', 3000, 0, 400, 1200)])).toMatchObject({ verdict: 'fail', measured: 800 });
  });

  it('two columns need 48 in between them', () => {
    const pair = (x: number) => judge([], [aColumn('A', 3000, 0, 400, 1150), aColumn('B', x, 0, 400, 1150)]);
    expect(pair(3400 + 1220)).toMatchObject({ verdict: 'pass' });
    expect(pair(3400 + 1000)).toMatchObject({ verdict: 'fail' });
    expect(pair(3400 + 1000).measured).toBeCloseTo(1000, 6);
    expect(pair(3400 + 1000).message).toMatch(/between (A and B|B and A)/);
  });

  it('a loose rack between a desk and the wall is one too', () => {
    const racks = [aRack('Loose', 12, { width: given(600), depth: given(1150) })];
    const placements = [aPlacement(['Left'], 2000, 2000), aPlacement(['Loose'], 3000, 0)];
    const walkways = [aWalkway('Behind', ['Left', 'back-wall'])];
    expect(judge([], [], { racks, placements, walkways })).toMatchObject({ verdict: 'pass', measured: 600 });
  });

  it('asks for what a pinch does not say', () => {
    const bare: Pinch = { origin: nowhere };
    expect(judge([bare])).toMatchObject({ verdict: 'unknown', missing: { property: 'width' } });
    expect(judge([{ ...bare, width: given(820) }])).toMatchObject({ missing: { property: 'length' } });
    expect(judge([pinch(undefined, 820, 100), pinch(100, 820, 100)])).toMatchObject({ missing: { property: 'at' } });
  });

  it('the file may set the width, with its reason', () => {
    const overrides = [{ check: 'walkway-pinch', value: 760, reason: 'an old door case', origin: nowhere }];
    expect(judge([pinch(0, 765, 300)], [], { overrides })).toMatchObject({
      verdict: 'pass',
      source: 'the file’s own limit: an old door case',
    });
  });
});

describe('walkway-pinch: what a reader is told', () => {
  const tell = (...args: Parameters<typeof way>) => told(way(...args), 'walkway-pinch');

  it('where it is short and wide enough', () => {
    expect(tell([pinch(1000, 900, 500)])).toMatchInlineSnapshot(`
      "pass, walkway Behind
      Behind narrows to 900 mm at one point, each short and far enough from the next.
      : 900 against 812.8 mm, margin 87.2
      at walkways.Behind, by 2010 ADA Standards 403.5.1, exception"
    `);
    expect(tell([pinch(1000, 850, 500), pinch(4000, 850, 500)])).toMatchInlineSnapshot(`
      "pass, walkway Behind
      Behind narrows to 850 mm at 2 points, each short and far enough from the next.
      : 850 against 812.8 mm, margin 37.2
      at walkways.Behind, by 2010 ADA Standards 403.5.1, exception"
    `);
  });

  it('where it is narrow, long, or near another', () => {
    expect(tell([pinch(1000, 700, 500)])).toMatchInlineSnapshot(`
      "fail, walkway Behind
      700 mm is left at pinch 1 on Behind; a narrow point needs 813 mm. A wheelchair may not pass. Widen it by 113 mm.
      : 700 against 812.8 mm, margin -112.8
      at walkways.Behind, by 2010 ADA Standards 403.5.1, exception"
    `);
    expect(tell([pinch(1000, 850, 900)])).toMatchInlineSnapshot(`
      "fail, walkway Behind
      The narrow point at pinch 1 is 900 mm long on Behind; it may be at most 610 mm. A wheelchair may not pass. Shorten it, or widen all of it.
      : 900 against 609.6 mm, margin -290.4
      at walkways.Behind, by 2010 ADA Standards 403.5.1"
    `);
    expect(tell([pinch(1000, 850, 500), pinch(1800, 850, 500)])).toMatchInlineSnapshot(`
      "fail, walkway Behind
      Only 300 mm lies between pinch 1 and pinch 2 on Behind; two narrow points need 1219 mm between them. A wheelchair may not pass. Move one of them, or widen one.
      : 300 against 1219.2 mm, margin -919.2
      at walkways.Behind, by 2010 ADA Standards 403.5.1"
    `);
  });

  it('of a column', () => {
    expect(tell([], [aColumn('Pillar', 4000, 700, 600, 600)])).toMatchInlineSnapshot(`
      "fail, walkway Behind
      700 mm is left at Pillar on Behind; a narrow point needs 813 mm. A wheelchair may not pass. Widen it by 113 mm.
      : 700 against 812.8 mm, margin -112.8
      at walkways.Behind, by 2010 ADA Standards 403.5.1, exception"
    `);
  });

  it('where something is missing', () => {
    expect(tell([{ origin: nowhere }])).toMatchInlineSnapshot(`
      "unknown, walkway Behind
      Cannot say whether the pinches of Behind are passable. Add \`width\` to a pinch of walkway Behind, such as \`width 810mm\`.
      at walkways.Behind.pinches.0, by 2010 ADA Standards 403.5.1, exception
      ask width of a pinch of walkway Behind, as width 810mm, at walkways.Behind.pinches.0"
    `);
    expect(tell([{ origin: nowhere, width: given(850) }])).toMatchInlineSnapshot(`
      "unknown, walkway Behind
      Cannot say whether the pinches of Behind are passable. Add \`length\` to a pinch of walkway Behind, such as \`length 510mm\`.
      at walkways.Behind.pinches.0, by 2010 ADA Standards 403.5.1, exception
      ask length of a pinch of walkway Behind, as length 510mm, at walkways.Behind.pinches.0"
    `);
    expect(tell([pinch(undefined, 850, 500), pinch(undefined, 850, 500)])).toMatchInlineSnapshot(`
      "unknown, walkway Behind
      Cannot say whether the pinches of Behind are passable. Add \`at\` to a pinch of walkway Behind, such as \`at 1830mm\`.
      at walkways.Behind.pinches.0, by 2010 ADA Standards 403.5.1, exception
      ask at of a pinch of walkway Behind, as at 1830mm, at walkways.Behind.pinches.0"
    `);
  });

  it('where the limit is the file’s own, or a borrowed one', () => {
    const overrides = [{ check: 'walkway-pinch', value: 760, reason: 'an old door case', origin: nowhere }];
    expect(tell([pinch(0, 700, 300)], [], { overrides })).toMatchInlineSnapshot(`
      "fail, walkway Behind
      700 mm is left at pinch 1 on Behind; a narrow point needs 760 mm. A wheelchair may not pass. Widen it by 60 mm.
      : 700 against 760 mm, margin -60
      at walkways.Behind, by the file’s own limit: an old door case
      see overrides.0: the file’s own limit: an old door case"
    `);
    expect(tell([pinch(0, 850, 300)], [], { limits: 'uk' })).toMatchInlineSnapshot(`
      "pass, walkway Behind
      Behind narrows to 850 mm at one point, each short and far enough from the next.
      : 850 against 812.8 mm, margin 37.2
      at walkways.Behind, by 2010 ADA Standards 403.5.1, exception
      granted no UK figure was read for this: the US figure stands in"
    `);
  });

  it('of two columns too near each other', () => {
    expect(tell([], [aColumn('A', 3000, 0, 400, 1150), aColumn('B', 4400, 0, 400, 1150)])).toMatchInlineSnapshot(`
      "fail, walkway Behind
      Only 1000 mm lies between A and B on Behind; two narrow points need 1219 mm between them. A wheelchair may not pass. Move one of them, or widen one.
      : 1000 against 1219.2 mm, margin -219.2
      at walkways.Behind, by 2010 ADA Standards 403.5.1"
    `);
  });
});
