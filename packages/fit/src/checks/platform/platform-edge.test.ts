import { describe, expect, it } from 'vitest';
import type { Booth, LimitProfile, Platform } from '../../booth.js';
import { aBooth, given, nowhere } from '../../testing/booths.js';
import { findingOf } from '../../testing/findings.js';
import { aPlatform } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';
import { told } from '../../testing/told.js';

const edge = (height: number, platform: Partial<Platform> = {}, parts: Partial<Booth> = {}) =>
  findingOf(aBooth({ show: 'in', platforms: [aPlatform('Riser', height, platform)], ...parts }), 'platform-edge');
const guard = (inches: number): Partial<Platform> => ({ guard: given(inches * INCH) });

describe('platform-edge: above 30 in, a guard of 42 in', () => {
  it.each<[string, number, Partial<Platform>, string]>([
    ['8 in high', 8, {}, 'pass'],
    [outside('IBC 2018 1015.2', 'W38: 14 in high takes no guard'), 14, {}, 'pass'],
    [outside('IBC 2018 1015.2', '30 in high takes no guard'), 30, {}, 'pass'],
    ['31 in high, no guard', 31, {}, 'fail'],
    [outside('IBC 2018 1015.3', 'above 30 in a guard of 42 in'), 31, guard(42), 'pass'],
    ['31 in high, a guard of 41 in', 31, guard(41), 'fail'],
    ['8 in high, a low rail does no harm', 8, guard(20), 'pass'],
  ])('%s', (_, inches, platform, verdict) => {
    expect(edge(inches * INCH, platform).verdict).toBe(verdict);
  });

  it('is held to the height while it is low, and to the guard when it is high', () => {
    expect(edge(20 * INCH).limit).toBeCloseTo(30 * INCH, 6);
    expect(edge(20 * INCH).margin).toBeCloseTo(10 * INCH, 6);
    const finding = edge(36 * INCH);
    expect(finding).toMatchObject({ measured: 0, remedies: [] });
    expect(finding.limit).toBeCloseTo(42 * INCH, 6);
    expect(finding.message).toContain('the file names no guard');
    expect(edge(36 * INCH, guard(40)).remedies).toMatchObject([{ changes: [{ text: '42in' }], safe: true }]);
  });

  it('defers to officials, and never calls anything compliant', () => {
    expect(edge(36 * INCH).caution).toContain('official’s call');
    expect(JSON.stringify(edge(36 * INCH, guard(42))).toLowerCase()).not.toContain('complian');
  });

  it.each<[LimitProfile, string]>([
    ['us', ''],
    ['generic', ''],
    ['uk', 'no UK figure was read for this: the US figure stands in'],
  ])('%s: %s', (limits, note) => {
    expect(edge(36 * INCH, {}, { limits }).assumptions.join()).toBe(note);
  });

  it('asks for the height; the file may set the guard, with its reason', () => {
    expect(edge(0, { height: undefined })).toMatchObject({ verdict: 'unknown', missing: { property: 'height' } });
    const overrides = [{ check: 'platform-edge', value: 1100, reason: 'asked for by the inspector', origin: nowhere }];
    expect(edge(36 * INCH, guard(42), { overrides })).toMatchObject({
      verdict: 'fail',
      source: 'the file’s own limit: asked for by the inspector',
    });
  });
});

describe('platform-edge: what a reader is told', () => {
  const tell = (height: number, platform: Partial<Platform> = {}, parts: Partial<Booth> = {}) =>
    told(aBooth({ show: 'in', platforms: [aPlatform('Riser', height, platform)], ...parts }), 'platform-edge');

  it('where it is low', () => {
    expect(tell(20 * INCH)).toMatchInlineSnapshot(`
      "pass, platform Riser
      Riser is 20 in high: not more than the 30 in beyond which a guard is published.
      : 508 against 762 mm, margin 254
      at platforms.Riser.height, by IBC 2018 1015.2 and 1015.3"
    `);
  });

  it('where it is high, guarded or not', () => {
    expect(tell(40 * INCH, guard(42))).toMatchInlineSnapshot(`
      "pass, platform Riser
      Riser is 40 in high, and its guard of 42 in is not below 42 in.
      : 1066.8 against 1066.8 mm, margin 0
      at platforms.Riser.guard, by IBC 2018 1015.2 and 1015.3
      see platforms.Riser.height: Riser is this high"
    `);
    expect(tell(40 * INCH, guard(36))).toMatchInlineSnapshot(`
      "fail, platform Riser
      Riser is 40 in high and its guard is only 36 in high: people fall off its edge. Guard it to 42 in above its floor.
      : 914.4 against 1066.8 mm, margin -152.4
      at platforms.Riser.guard, by IBC 2018 1015.2 and 1015.3
      see platforms.Riser.height: Riser is this high
      do Raise the guard of Riser to 42in | platforms.Riser.guard := 42in"
    `);
    expect(tell(40 * INCH)).toMatchInlineSnapshot(`
      "fail, platform Riser
      Riser is 40 in high and the file names no guard: people fall off its edge. Guard it to 42 in above its floor.
      : 0 against 1066.8 mm, margin -1066.8
      at platforms.Riser, by IBC 2018 1015.2 and 1015.3
      see platforms.Riser.height: Riser is this high"
    `);
  });

  it('where its height is not said', () => {
    expect(tell(1, { height: undefined })).toMatchInlineSnapshot(`
      "unknown, platform Riser
      Cannot say whether Riser takes a guard. Add \`height\` to platform Riser, such as \`height 8in\`.
      at platforms.Riser, by IBC 2018 1015.2 and 1015.3
      ask height of platform Riser, as height 8in, at platforms.Riser"
    `);
  });

  it('in England, and where the file has a limit of its own', () => {
    expect(tell(1000, guard(36), { limits: 'uk' })).toMatchInlineSnapshot(`
      "fail, platform Riser
      Riser is 39 3/8 in high and its guard is only 36 in high: people fall off its edge. Guard it to 42 in above its floor.
      : 914.4 against 1066.8 mm, margin -152.4
      at platforms.Riser.guard, by IBC 2018 1015.2 and 1015.3
      see platforms.Riser.height: Riser is this high
      do Raise the guard of Riser to 42in | platforms.Riser.guard := 42in
      granted no UK figure was read for this: the US figure stands in"
    `);
    expect(
      tell(40 * INCH, guard(36), {
        overrides: [{ check: 'platform-edge', value: 30 * INCH, reason: 'a rope', origin: nowhere }],
      }),
    ).toMatchInlineSnapshot(`
      "pass, platform Riser
      Riser is 40 in high, and its guard of 36 in is not below 30 in.
      : 914.4 against 762 mm, margin 152.4
      at platforms.Riser.guard, by the file’s own limit: a rope
      see platforms.Riser.height: Riser is this high; overrides.0: the file’s own limit: a rope"
    `);
  });
});
