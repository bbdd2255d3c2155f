import { describe, expect, it } from 'vitest';
import type { Booth, Room, Walkway } from '../../booth.js';
import { aBooth, aDesk, aPlacement, aRoom, given, nowhere } from '../../testing/booths.js';
import { findingOf } from '../../testing/findings.js';
import { aWalkway } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';
import { told } from '../../testing/told.js';

function way(room: Partial<Room>, walkway: Partial<Walkway> = {}, parts: Partial<Booth> = {}): Booth {
  return aBooth({
    room: aRoom(10_000, 20_000, room),
    desks: [aDesk('Left', 1000)],
    placements: [aPlacement(['Left'], 3000, 3000)],
    walkways: [aWalkway('Behind', ['booth', 'back-wall'], walkway)],
    ...parts,
  });
}

const head = (...args: Parameters<typeof way>) => findingOf(way(...args), 'walkway-head');
const balcony = (edge: number, height?: number) => ({
  balcony: { origin: nowhere, edge: given(edge), ...(height !== undefined && { height: given(height) }) },
});

describe('walkway-head: at least 80 in', () => {
  it.each<[string, number, string]>([
    [outside('2010 ADA Standards 307.4 and IBC 2015 1003.3.1', 'headroom of 80 in'), 80 * INCH, 'pass'],
    ['2031 mm, within 1 mm', 2031, 'pass'],
    ['2030 mm', 2030, 'fail'],
    [outside('OSHA 29 CFR 1910.36(g)(1)', 'a ceiling of 7 ft 6 in'), 2286, 'pass'],
    ['78 in', 78 * INCH, 'fail'],
  ])('headroom of %s', (_, headroom, verdict) => {
    expect(head({ height: given(4000) }, { headroom: given(headroom) })).toMatchObject({ verdict, measured: headroom });
  });

  it('the lowest of headroom, balcony and ceiling counts', () => {
    expect(head({ height: given(2000) })).toMatchObject({ verdict: 'fail', measured: 2000 });
    expect(head({ height: given(4000), ...balcony(5000, 1980) })).toMatchObject({ verdict: 'fail', measured: 1980 });
    expect(head({ height: given(4000), ...balcony(5000, 2500) }, { headroom: given(1990) }).measured).toBe(1990);
    expect(head({ height: given(2100), ...balcony(5000, 2300) }, { headroom: given(2500) }).measured).toBe(2100);
  });

  it('a balcony counts over the walkways that it covers', () => {
    const low = { height: given(4000), ...balcony(3500, 1980), stage: { origin: nowhere, edge: given(9000) } };
    expect(head(low).verdict).toBe('fail');
    const front = [aWalkway('Front', ['booth', 'stage'])];
    // The desk's far edge is at 3700, beyond the balcony's edge at 3500.
    expect(head(low, {}, { walkways: front })).toMatchObject({ verdict: 'pass', measured: 4000 });
    expect(head({ ...low, ...balcony(3900, 1980) }, {}, { walkways: front }).verdict).toBe('fail');
    // Beside the desk, from 3000 to 3700.
    const side = [aWalkway('Side', ['booth', 'left-wall'])];
    expect(head(low, {}, { walkways: side }).verdict).toBe('fail');
    expect(head({ ...low, ...balcony(2900, 1980) }, {}, { walkways: side }).verdict).toBe('pass');
  });

  const sideBySide: Partial<Booth> = {
    desks: [aDesk('Left', 1000), aDesk('Right', 1000)],
    placements: [aPlacement(['Left'], 1000, 3400), aPlacement(['Right'], 4000, 3000)],
  };

  it.each<[string, readonly [string, string], Partial<Booth>, number]>([
    // The desk stands at x 3000 to 4500 and y 3000 to 3700: the way behind it starts at the wall, the one before it at 3700.
    ['before the desk', ['booth', 'stage-wall'], {}, 3700],
    ['beside it', ['right-wall', 'booth'], {}, 3000],
    ['between two desks side by side', ['Left', 'Right'], sideBySide, 3000],
  ])('a balcony that ends %s: over it by 1 mm it does not count', (_, between, parts, start) => {
    const at = (edge: number) =>
      head({ height: given(4000), ...balcony(edge, 1980) }, {}, { walkways: [aWalkway('Way', between)], ...parts })
        .verdict;
    expect([at(start + 0.9), at(start + 1.1)]).toEqual(['pass', 'fail']);
  });

  it('where the sides reach into each other, or the balcony has no edge, it may run over', () => {
    const inTheWall = { placements: [aPlacement(['Left'], 3000, -10)] };
    expect(head({ height: given(4000), ...balcony(1, 1980) }, {}, inTheWall).verdict).toBe('fail');
    const endless = { balcony: { origin: nowhere, height: given(1980) } };
    expect(head({ height: given(4000), ...endless }).verdict).toBe('fail');
  });

  it('a balcony without a height is asked for only where nothing else is said to hang lower', () => {
    const found = head({ height: given(4000), ...balcony(5000) }, { headroom: given(2100) });
    expect(found).toMatchObject({ verdict: 'pass', measured: 2100 });
    const away = { stage: { origin: nowhere, edge: given(9000) }, height: given(4000), ...balcony(3500) };
    expect(head(away, {}, { walkways: [aWalkway('Front', ['booth', 'stage'])] })).toMatchObject({ measured: 4000 });
  });

  it('a walkway that the plan does not place may run under the balcony', () => {
    expect(head({ height: given(4000), ...balcony(3500, 1980) }, {}, { placements: [] }).verdict).toBe('fail');
  });

  it('says what it took for granted', () => {
    expect(head({ height: given(4000) }).assumptions).toEqual(['nothing else hangs over Behind']);
    expect(head({}, { headroom: given(2400) }).assumptions).toEqual([]);
    expect(head({}, { headroom: given(2400) }, { limits: 'uk' }).assumptions.join()).toContain('no UK figure');
  });

  it('asks for what is missing', () => {
    expect(head({})).toMatchObject({ verdict: 'unknown', missing: { property: 'headroom', of: 'walkway Behind' } });
    expect(head({ height: given(4000), ...balcony(5000) })).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'height', of: 'balcony' },
    });
  });

  it('the file may set its own limit, with its reason', () => {
    const overrides = [{ check: 'walkway-head', value: 1900, reason: 'a listed building', origin: nowhere }];
    expect(head({}, { headroom: given(1950) }, { overrides })).toMatchObject({ verdict: 'pass', limit: 1900 });
  });
});

describe('walkway-head: what a reader is told', () => {
  const tell = (...args: Parameters<typeof way>) => told(way(...args), 'walkway-head');

  it('under a ceiling, a balcony, and what hangs', () => {
    expect(tell({ height: given(3000) })).toMatchInlineSnapshot(`
      "pass, walkway Behind
      The ceiling is 3000 mm above Behind, not below 2032 mm.
      : 3000 against 2032 mm, margin 968
      at walkways.Behind, by IBC 2015 1003.3.1, 2010 ADA Standards 307.4 and OSHA 29 CFR 1910.36(g)(1)
      see room.height: The ceiling: its height
      granted nothing else hangs over Behind"
    `);
    expect(tell(balcony(4000, 1900))).toMatchInlineSnapshot(`
      "fail, walkway Behind
      The balcony is 1900 mm above Behind: people hit their heads. It takes 2032 mm; raise what hangs there, or lead the way round it.
      : 1900 against 2032 mm, margin -132
      at walkways.Behind, by IBC 2015 1003.3.1, 2010 ADA Standards 307.4 and OSHA 29 CFR 1910.36(g)(1)
      see room.balcony.height: The balcony: its height
      granted nothing else hangs over Behind"
    `);
    expect(tell({ height: given(3000) }, { headroom: given(2100) })).toMatchInlineSnapshot(`
      "pass, walkway Behind
      What hangs lowest is 2100 mm above Behind, not below 2032 mm.
      : 2100 against 2032 mm, margin 68
      at walkways.Behind.headroom, by IBC 2015 1003.3.1, 2010 ADA Standards 307.4 and OSHA 29 CFR 1910.36(g)(1)
      see walkways.Behind.headroom: What hangs lowest: its height"
    `);
  });

  it('where something is missing', () => {
    expect(tell({})).toMatchInlineSnapshot(`
      "unknown, walkway Behind
      Cannot say how high it is above Behind. Add \`headroom\` to walkway Behind, such as \`headroom 2290mm\`.
      at walkways.Behind, by IBC 2015 1003.3.1, 2010 ADA Standards 307.4 and OSHA 29 CFR 1910.36(g)(1)
      ask headroom of walkway Behind, as headroom 2290mm, at walkways.Behind"
    `);
    expect(tell(balcony(4000))).toMatchInlineSnapshot(`
      "unknown, walkway Behind
      Cannot say how high it is above Behind. Add \`height\` to balcony, such as \`height 2740mm\`.
      at walkways.Behind, by IBC 2015 1003.3.1, 2010 ADA Standards 307.4 and OSHA 29 CFR 1910.36(g)(1)
      ask height of balcony, as height 2740mm, at room.balcony"
    `);
  });

  it('where the limit is the file’s own, or a borrowed one', () => {
    const overrides = [{ check: 'walkway-head', value: 1900, reason: 'a listed building', origin: nowhere }];
    expect(tell({}, { headroom: given(1850) }, { overrides })).toMatchInlineSnapshot(`
      "fail, walkway Behind
      What hangs lowest is 1850 mm above Behind: people hit their heads. It takes 1900 mm; raise what hangs there, or lead the way round it.
      : 1850 against 1900 mm, margin -50
      at walkways.Behind.headroom, by the file’s own limit: a listed building
      see walkways.Behind.headroom: What hangs lowest: its height; overrides.0: the file’s own limit: a listed building"
    `);
    expect(tell({ height: given(2400) }, {}, { limits: 'uk' })).toMatchInlineSnapshot(`
      "pass, walkway Behind
      The ceiling is 2400 mm above Behind, not below 2032 mm.
      : 2400 against 2032 mm, margin 368
      at walkways.Behind, by IBC 2015 1003.3.1, 2010 ADA Standards 307.4 and OSHA 29 CFR 1910.36(g)(1)
      see room.height: The ceiling: its height
      granted nothing else hangs over Behind; no UK figure was read for this: the US figure stands in"
    `);
  });
});
