import { describe, expect, it } from 'vitest';
import type { Booth, Cable } from '../../booth.js';
import { aBooth, given, nowhere } from '../../testing/booths.js';
import { findingOf } from '../../testing/findings.js';
import { aCable, aWalkway } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';
import { told } from '../../testing/told.js';

function crossing(height: number, cable: Partial<Cable> = {}, parts: Partial<Booth> = {}): Booth {
  return aBooth({
    show: 'in',
    walkways: [aWalkway('Behind', ['booth', 'back-wall'])],
    cables: [aCable('Snake', height, cable)],
    ...parts,
  });
}

const judge = (...args: Parameters<typeof crossing>) => findingOf(crossing(...args), 'floor-cable');
const bevelled: Partial<Cable> = { cover: given('bevelled') };
const ramp = (slope: number): Partial<Cable> => ({ cover: given('ramp'), slope: given(slope) });

describe('floor-cable: 1/4 in bare, 1/2 in bevelled, beyond that a ramp of 1:12', () => {
  it.each<[string, number, Partial<Cable>, string]>([
    [outside('2010 ADA Standards 303.2', '1/4 in upright'), INCH / 4, {}, 'pass'],
    ['6.4 mm bare', 6.4, {}, 'pass'],
    ['7 mm bare', 7, {}, 'fail'],
    ['1/2 in bare', INCH / 2, {}, 'fail'],
    [outside('2010 ADA Standards 303.3', '1/2 in bevelled'), INCH / 2, bevelled, 'pass'],
    [outside('2010 ADA Standards 303.3', '13 mm bevelled, as it is printed'), 13, bevelled, 'pass'],
    ['14 mm bevelled', 14, bevelled, 'fail'],
    [outside('2010 ADA Standards 303.4 and 405.2', 'above it a ramp of 1:12'), 0.75 * INCH, ramp(9 * INCH), 'pass'],
    ['3/4 in under a ramp of 8 in', 0.75 * INCH, ramp(8 * INCH), 'fail'],
    ['1/2 in under a ramp of 1 in: a ramp is held to its own rule', INCH / 2, ramp(INCH), 'fail'],
    ['1/4 in needs no ramp, however short', INCH / 4, ramp(10), 'pass'],
  ])('%s', (_, height, cable, verdict) => {
    expect(judge(height, cable).verdict).toBe(verdict);
  });

  // Half a millimetre is allowed.
  it.each<[string, (by: number) => readonly [number, Partial<Cable>]]>([
    ['1/4 in bare', (by) => [INCH / 4 + by, {}]],
    ['1/4 in under a cover', (by) => [INCH / 4 + by, ramp(10)]],
    ['1/2 in bevelled', (by) => [INCH / 2 + by, bevelled]],
    ['a ramp of 1:12', (by) => [INCH, ramp(12 * INCH - by)]],
  ])('%s, and half a millimetre is allowed', (_, parts) => {
    const verdict = (by: number) => judge(...parts(by)).verdict;
    expect([verdict(0.49), verdict(0.51)]).toEqual(['pass', 'fail']);
  });

  it('says bevels up to 1/2 in, and half a millimetre, beyond that a ramp', () => {
    expect(judge(INCH / 2 + 0.49).message).toContain('Cover it with bevelled edges');
    expect(judge(INCH / 2 + 0.51).message).toContain('a ramp that has');
  });

  it('a ramp is measured by its run', () => {
    const finding = judge(INCH, ramp(8 * INCH));
    expect(finding.measured).toBeCloseTo(8 * INCH, 6);
    expect(finding.limit).toBeCloseTo(12 * INCH, 6);
    expect(finding.remedies).toMatchObject([{ changes: [{ text: '12in' }], safe: true }]);
  });

  it('where only operators walk, a step is marginal', () => {
    const walkways = [aWalkway('Behind', ['booth', 'back-wall'], { users: given('operators') })];
    expect(judge(20, {}, { walkways }).verdict).toBe('marginal');
    expect(judge(6, {}, { walkways }).verdict).toBe('pass');
    // Of the walkway that it crosses, not of another one.
    const staff = aWalkway('Staff', ['booth', 'stage'], { users: given('operators') });
    expect(judge(20, {}, { walkways: [staff, aWalkway('Behind', ['booth', 'back-wall'])] }).verdict).toBe('fail');
  });

  it('says what to do', () => {
    expect(judge(0.75 * INCH).message).toContain('9 in of slope on each side');
    expect(judge(10).message).toContain('bevelled edges');
    expect(judge(20).caution).toContain('licensed electrician');
  });

  it.each<[string, Partial<Cable>, string]>([
    ['which walkway', { across: undefined }, 'across'],
    ['how high', { height: undefined }, 'height'],
    ['how long a slope', { cover: given('ramp') }, 'slope'],
  ])('asks %s', (_, cable, property) => {
    expect(judge(20, cable)).toMatchObject({ verdict: 'unknown', missing: { property, of: 'cable Snake' } });
  });

  it('the file may set its own limit for a bare cable, with its reason', () => {
    const overrides = [{ check: 'floor-cable', value: 10, reason: 'taped down for one evening', origin: nowhere }];
    expect(judge(9, {}, { overrides })).toMatchObject({
      verdict: 'pass',
      source: 'the file’s own limit: taped down for one evening',
    });
  });
});

describe('floor-cable: what a reader is told', () => {
  const tell = (...args: Parameters<typeof crossing>) => told(crossing(...args), 'floor-cable');

  it('where people step over it', () => {
    expect(tell(6)).toMatchInlineSnapshot(`
      "pass, cable Snake
      Snake lies across Behind bare, 1/4 in high: people can step and roll over it.
      : 6 against 6.35 mm, margin 0.35
      at cables.Snake.height, by 2010 ADA Standards 303.2-303.4
      see walkways.Behind: the walkway that it crosses"
    `);
    expect(tell(12, bevelled)).toMatchInlineSnapshot(`
      "pass, cable Snake
      Snake lies across Behind with bevelled edges, 1/2 in high: people can step and roll over it.
      : 12 against 12.7 mm, margin 0.7
      at cables.Snake.height, by 2010 ADA Standards 303.2-303.4
      see walkways.Behind: the walkway that it crosses"
    `);
    expect(tell(25.4, ramp(12 * INCH))).toMatchInlineSnapshot(`
      "pass, cable Snake
      Snake lies across Behind under a ramp, 1 in high: people can step and roll over it.
      : 304.8 against 304.8 mm, margin 0
      at cables.Snake.height, by 2010 ADA Standards 303.4 and 405.2
      see walkways.Behind: the walkway that it crosses"
    `);
  });

  it('where they trip', () => {
    expect(tell(12)).toMatchInlineSnapshot(`
      "fail, cable Snake
      Snake lies across Behind bare, 1/2 in high: people trip and wheels stop. Cover it with bevelled edges, or lead it overhead.
      : 12 against 6.35 mm, margin -5.65
      at cables.Snake.height, by 2010 ADA Standards 303.2-303.4
      see walkways.Behind: the walkway that it crosses"
    `);
    expect(tell(20, bevelled)).toMatchInlineSnapshot(`
      "fail, cable Snake
      Snake lies across Behind with bevelled edges, 3/4 in high: people trip and wheels stop. Lead it overhead or round, or cover it with a ramp that has 9 1/2 in of slope on each side: \`cover ramp  slope 9 1/2in\`.
      : 20 against 12.7 mm, margin -7.3
      at cables.Snake.height, by 2010 ADA Standards 303.2-303.4
      see walkways.Behind: the walkway that it crosses"
    `);
    expect(tell(25.4, ramp(6 * INCH))).toMatchInlineSnapshot(`
      "fail, cable Snake
      Snake lies across Behind under a ramp, 1 in high: people trip and wheels stop. A ramp of 1:12 takes 12 in of slope on each side.
      : 152.4 against 304.8 mm, margin -152.4
      at cables.Snake.height, by 2010 ADA Standards 303.4 and 405.2
      see walkways.Behind: the walkway that it crosses
      do Give the ramp over Snake a slope of 12in on each side: 1:12 | cables.Snake.slope := 12in"
    `);
    expect(tell(12, {}, { walkways: [aWalkway('Behind', ['booth', 'back-wall'], { users: given('operators') })] }))
      .toMatchInlineSnapshot(`
      "marginal, cable Snake
      Snake lies across Behind bare, 1/2 in high: people trip and wheels stop. Cover it with bevelled edges, or lead it overhead.
      : 12 against 6.35 mm, margin -5.65
      at cables.Snake.height, by 2010 ADA Standards 303.2-303.4
      see walkways.Behind: the walkway that it crosses"
    `);
  });

  it('where something is missing', () => {
    expect(tell(6, { across: undefined })).toMatchInlineSnapshot(`
      "unknown, cable Snake
      Cannot say whether people trip over Snake. Add \`across\` to cable Snake, such as \`across Behind\`.
      at cables.Snake, by 2010 ADA Standards 303.2-303.4
      ask across of cable Snake, as across Behind, at cables.Snake"
    `);
    expect(tell(6, { height: undefined })).toMatchInlineSnapshot(`
      "unknown, cable Snake
      Cannot say whether people trip over Snake. Add \`height\` to cable Snake, such as \`height 3/4in\`.
      at cables.Snake, by 2010 ADA Standards 303.2-303.4
      ask height of cable Snake, as height 3/4in, at cables.Snake"
    `);
    expect(tell(6, { cover: given('ramp') })).toMatchInlineSnapshot(`
      "unknown, cable Snake
      Cannot say whether people trip over Snake. Add \`slope\` to cable Snake, such as \`slope 9in\`.
      at cables.Snake, by 2010 ADA Standards 303.2-303.4
      ask slope of cable Snake, as slope 9in, at cables.Snake"
    `);
  });

  it('where the limit is the file’s own, or a borrowed one', () => {
    const overrides = [{ check: 'floor-cable', value: 10, reason: 'taped down for one evening', origin: nowhere }];
    expect(tell(9, {}, { overrides })).toMatchInlineSnapshot(`
      "pass, cable Snake
      Snake lies across Behind bare, 3/8 in high: people can step and roll over it.
      : 9 against 10 mm, margin 1
      at cables.Snake.height, by the file’s own limit: taped down for one evening
      see walkways.Behind: the walkway that it crosses; overrides.0: the file’s own limit: taped down for one evening"
    `);
    expect(tell(12, bevelled, { overrides })).toMatchInlineSnapshot(`
      "pass, cable Snake
      Snake lies across Behind with bevelled edges, 1/2 in high: people can step and roll over it.
      : 12 against 12.7 mm, margin 0.7
      at cables.Snake.height, by 2010 ADA Standards 303.2-303.4
      see walkways.Behind: the walkway that it crosses"
    `);
    expect(tell(12, bevelled, { limits: 'uk' })).toMatchInlineSnapshot(`
      "pass, cable Snake
      Snake lies across Behind with bevelled edges, 1/2 in high: people can step and roll over it.
      : 12 against 12.7 mm, margin 0.7
      at cables.Snake.height, by 2010 ADA Standards 303.2-303.4
      see walkways.Behind: the walkway that it crosses
      granted no UK figure was read for this: the US figure stands in"
    `);
    expect(tell(6, {}, { limits: 'uk', walkways: [] })).toMatchInlineSnapshot(`
      "pass, cable Snake
      Snake lies across Behind bare, 1/4 in high: people can step and roll over it.
      : 6 against 6.35 mm, margin 0.35
      at cables.Snake.height, by 2010 ADA Standards 303.2-303.4
      granted no UK figure was read for this: the US figure stands in"
    `);
  });

  it('of a ramp whose slope the text does not say where, nothing is offered', () => {
    expect(judge(25.4, { cover: given('ramp'), slope: { value: 100, isDefault: false } })).toMatchObject({
      verdict: 'fail',
      remedies: [],
    });
    // In steps of 1/4 in: 3/4 in × 12 = 9 in are enough, and 20 mm × 12 = 9.45 in take 9 1/2.
    expect(judge(0.75 * INCH, ramp(100)).remedies[0]!.changes[0]!.text).toBe('9in');
    expect(judge(20, ramp(100)).remedies[0]!.changes[0]!.text).toBe('9 1/2in');
  });
});
