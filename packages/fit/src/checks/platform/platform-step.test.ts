import { describe, expect, it } from 'vitest';
import type { Booth, Platform } from '../../booth.js';
import { aBooth, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aPlatform } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';
import { told } from '../../testing/told.js';

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

describe('platform-step: what a reader is told', () => {
  const tell = (...args: Parameters<typeof booth>) => told(booth(...args), 'platform-step');

  it('where steps are right', () => {
    expect(tell(6, steps(1, undefined, true))).toMatchInlineSnapshot(`
      "pass, platform Riser
      The step up to Riser: risers of 6 in, with a handrail.
      = 6 in / 1 = 6 in
      : 152.4 against 177.8 mm, margin 25.4
      at platforms.Riser.steps.risers, by IBC 2018 1011.5.2"
    `);
    expect(tell(6, steps(1, 13, true))).toMatchInlineSnapshot(`
      "pass, platform Riser
      The step up to Riser: risers of 6 in, treads of 13 in, with a handrail.
      = 6 in / 1 = 6 in
      : 152.4 against 177.8 mm, margin 25.4
      at platforms.Riser.steps.risers, by IBC 2018 1011.5.2"
    `);
    expect(tell(12, steps(2, 13, true))).toMatchInlineSnapshot(`
      "pass, platform Riser
      The 2 steps up to Riser: risers of 6 in, treads of 13 in, with a handrail.
      = 12 in / 2 = 6 in
      : 330.2 against 330.2 mm, margin 0
      at platforms.Riser.steps.risers, by IBC 2012 1003.5 exception 2"
    `);
    expect(tell(24, steps(4, 11, true))).toMatchInlineSnapshot(`
      "pass, platform Riser
      The 4 steps up to Riser: risers of 6 in, treads of 11 in, with a handrail.
      = 24 in / 4 = 6 in
      : 279.4 against 279.4 mm, margin 0
      at platforms.Riser.steps.risers, by IBC 2018 1011.5.2"
    `);
  });

  it('where they are too high, too low or too shallow', () => {
    expect(tell(16, steps(2, 13, true))).toMatchInlineSnapshot(`
      "fail, platform Riser
      Each step of Riser is 8 in high, where 7 in is the most. People stumble there. 3 steps of 5 3/8 in with treads of 11 in would do.
      = 16 in / 2 = 8 in
      : 203.2 against 177.8 mm, margin -25.4
      at platforms.Riser.steps.risers, by IBC 2018 1011.5.2"
    `);
    expect(tell(6, steps(2, 13, true))).toMatchInlineSnapshot(`
      "fail, platform Riser
      Each step of Riser is 3 in high: so low that people do not see it, where 4 in is the least. People stumble there. One step of 6 in with treads of 13 in would do.
      = 6 in / 2 = 3 in
      : 76.2 against 101.6 mm, margin -25.4
      at platforms.Riser.steps.risers, by IBC 2018 1011.5.2"
    `);
    expect(tell(24, steps(4, 9, true))).toMatchInlineSnapshot(`
      "fail, platform Riser
      The treads of Riser are 9 in deep, where 11 in is the least. People stumble there. 4 steps of 6 in with treads of 11 in would do.
      = 24 in / 4 = 6 in
      : 228.6 against 279.4 mm, margin -50.8
      at platforms.Riser.steps.risers, by IBC 2018 1011.5.2"
    `);
  });

  it('where there is no handrail', () => {
    expect(tell(12, steps(2, 13, false))).toMatchInlineSnapshot(`
      "fail, platform Riser
      One or two steps take a handrail, and the file names none. People stumble there. Add a handrail.
      = 12 in / 2 = 6 in
      at platforms.Riser.steps.risers, by IBC 2012 1003.5 exception 2"
    `);
    expect(tell(24, steps(4, 11, false))).toMatchInlineSnapshot(`
      "marginal, platform Riser
      The file names no handrail. People stumble there. Add a handrail.
      = 24 in / 4 = 6 in
      at platforms.Riser.steps.risers, by IBC 1011.11, from memory"
    `);
    expect(tell(8, steps(1, undefined, false))).toMatchInlineSnapshot(`
      "fail, platform Riser
      Each step of Riser is 8 in high, where 7 in is the most; one or two steps take a handrail, and the file names none. People stumble there. 2 steps of 4 in with treads of 13 in and a handrail would do.
      = 8 in / 1 = 8 in
      : 203.2 against 177.8 mm, margin -25.4
      at platforms.Riser.steps.risers, by IBC 2018 1011.5.2"
    `);
    expect(tell(40, steps(2, 13, false))).toMatchInlineSnapshot(`
      "fail, platform Riser
      Each step of Riser is 20 in high, where 7 in is the most; one or two steps take a handrail, and the file names none. People stumble there. 6 steps of 6 5/8 in with treads of 11 in and a handrail would do.
      = 40 in / 2 = 20 in
      : 508 against 177.8 mm, margin -330.2
      at platforms.Riser.steps.risers, by IBC 2018 1011.5.2"
    `);
  });

  it('of ramps', () => {
    expect(tell(8, ramp(8, 36))).toMatchInlineSnapshot(`
      "pass, platform Riser
      The ramp up to Riser runs 96 in for 8 in: not steeper than 1:12, and 36 in wide.
      = 8 in × 12 = 96 in
      : 2438.4 against 2438.4 mm, margin 0
      at platforms.Riser.ramp.length, by 2010 ADA Standards 405.2"
    `);
    expect(tell(8, ramp(6, 36))).toMatchInlineSnapshot(`
      "fail, platform Riser
      The ramp up to Riser is 72 in long, where 96 in is the least. A wheelchair may not get up there.
      = 8 in × 12 = 96 in
      : 1828.8 against 2438.4 mm, margin -609.6
      at platforms.Riser.ramp.length, by 2010 ADA Standards 405.2"
    `);
    expect(tell(8, ramp(8, 30))).toMatchInlineSnapshot(`
      "fail, platform Riser
      The ramp up to Riser is 30 in wide, where 36 in is the least. A wheelchair may not get up there.
      = 8 in × 12 = 96 in
      : 762 against 914.4 mm, margin -152.4
      at platforms.Riser.ramp.length, by 2010 ADA Standards 405.5"
    `);
  });

  it('where something is missing', () => {
    expect(tell(8, {})).toMatchInlineSnapshot(`
      "unknown, platform Riser
      Cannot say whether people can walk up to Riser. Add \`steps\` to platform Riser, such as \`steps { risers 2  tread 13in  handrail }\`.
      at platforms.Riser, by IBC 2018 1011.5.2
      ask steps of platform Riser, as steps { risers 2  tread 13in  handrail }, at platforms.Riser"
    `);
    expect(tell(8, { height: undefined })).toMatchInlineSnapshot(`
      "unknown, platform Riser
      Cannot say whether people can walk up to Riser. Add \`height\` to platform Riser, such as \`height 8in\`.
      at platforms.Riser, by IBC 2018 1011.5.2
      ask height of platform Riser, as height 8in, at platforms.Riser"
    `);
    expect(tell(8, { steps: { origin: nowhere, handrail: true } })).toMatchInlineSnapshot(`
      "unknown, platform Riser
      Cannot say whether people can walk up to Riser. Add \`risers\` to the steps of platform Riser, such as \`risers 2\`.
      at platforms.Riser.steps, by IBC 2018 1011.5.2
      ask risers of the steps of platform Riser, as risers 2, at platforms.Riser.steps"
    `);
    expect(tell(12, steps(2, undefined, true))).toMatchInlineSnapshot(`
      "unknown, platform Riser
      Cannot say whether people can walk up to Riser. Add \`tread\` to the steps of platform Riser, such as \`tread 13in\`.
      at platforms.Riser.steps, by IBC 2018 1011.5.2
      ask tread of the steps of platform Riser, as tread 13in, at platforms.Riser.steps"
    `);
    expect(tell(8, { ramp: { origin: nowhere } })).toMatchInlineSnapshot(`
      "unknown, platform Riser
      Cannot say whether people can walk up to Riser. Add \`length\` to the ramp of platform Riser, such as \`length 8ft\`.
      at platforms.Riser.ramp, by IBC 2018 1011.5.2
      ask length of the ramp of platform Riser, as length 8ft, at platforms.Riser.ramp"
    `);
    expect(tell(8, { ramp: { origin: nowhere, length: given(3000) } })).toMatchInlineSnapshot(`
      "unknown, platform Riser
      Cannot say whether people can walk up to Riser. Add \`width\` to the ramp of platform Riser, such as \`width 36in\`.
      at platforms.Riser.ramp, by IBC 2018 1011.5.2
      ask width of the ramp of platform Riser, as width 36in, at platforms.Riser.ramp"
    `);
  });

  it('where the file has a limit of its own', () => {
    expect(
      tell(16, steps(2, 13, true), {
        overrides: [{ check: 'platform-step', value: 8 * INCH, reason: 'there was no room', origin: nowhere }],
      }),
    ).toMatchInlineSnapshot(`
      "pass, platform Riser
      The 2 steps up to Riser: risers of 8 in, treads of 13 in, with a handrail.
      = 16 in / 2 = 8 in
      : 203.2 against 203.2 mm, margin 0
      at platforms.Riser.steps.risers, by the file’s own limit: there was no room
      see overrides.0: the file’s own limit: there was no room"
    `);
  });
});
