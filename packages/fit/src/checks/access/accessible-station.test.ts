import { describe, expect, it } from 'vitest';
import type { Booth, Desk, Hanging } from '../../booth.js';
import {
  aBooth,
  aDesk,
  anOperator,
  aPlacement,
  aRoom,
  aSeat,
  aStation,
  fixed,
  given,
  nowhere,
  range,
} from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aPlatform, aRack, aWalkway, under } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';
import { kneeDepthAt } from './accessible-station.js';
import { told } from '../../testing/told.js';

/** A desk 60 in wide, 30 deep and 30 high with a top of 1 in, its near edge 6 ft from the wall. */
function booth(desk: Partial<Desk> = {}, parts: Partial<Booth> = {}): Booth {
  return aBooth({
    show: 'in',
    room: aRoom(10_000, 20_000),
    operators: [anOperator('Noor', { stature: 1630 })],
    desks: [aDesk('Left', 30 * INCH, { width: given(60 * INCH), depth: given(30 * INCH), top: given(INCH), ...desk })],
    seats: [aSeat('Tall', 750)],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'])],
    placements: [aPlacement(['Left'], 3000, 72 * INCH)],
    ...parts,
  });
}

const judge = (...args: Parameters<typeof booth>) => findingOf(booth(...args), 'accessible-station');
const high = (inches: number): Partial<Desk> => ({ height: range(inches * INCH, inches * INCH) });
const tray = (drop: number, fromEdge: number): Partial<Desk> => {
  const hanging: Hanging = {
    kind: 'tray',
    origin: nowhere,
    drop: given(drop * INCH),
    fromEdge: given(fromEdge * INCH),
  };
  return { hanging: [hanging] };
};

describe('accessible-station: advice, marginal at worst', () => {
  it.each<[string, Partial<Desk>, string]>([
    [outside('2010 ADA Standards 902.3 and 306.3', 'a surface 28 in high, 27 in over the knees'), high(28), 'pass'],
    [outside('2010 ADA Standards 902.3', 'a surface 34 in high'), high(34), 'pass'],
    ['34 1/4 in high', high(34.25), 'marginal'],
    ['27 in high', high(27), 'marginal'],
    ['adjustable from 25 to 28 in', { height: range(25 * INCH, 28 * INCH) }, 'pass'],
    ['adjustable from 33 to 42 in', { height: range(33 * INCH, 42 * INCH) }, 'pass'],
    ['28 in high with a top of 2 in', { ...high(28), top: given(2 * INCH) }, 'marginal'],
    ['closed at the front', { closed: true }, 'marginal'],
    [outside('2010 ADA Standards 306.3', 'knee space 30 in wide'), { width: given(30 * INCH) }, 'pass'],
    ['29 in wide', { width: given(29 * INCH) }, 'marginal'],
    ['16 in deep', { depth: given(16 * INCH) }, 'marginal'],
    ['a tray that leaves 27 in', tray(2, 0), 'pass'],
    ['a tray that leaves 25 in, at the near edge', tray(4, 0), 'marginal'],
    // 25 in high the knees reach 11 − (25 − 9) / 6 = 8 1/3 in deep.
    ['a tray that leaves 25 in, 8 1/2 in from the edge', tray(4, 8.5), 'pass'],
    ['a tray that leaves 25 in, 8 in from the edge', tray(4, 8), 'marginal'],
    ['a box that leaves 6 in, 16 in from the edge: toes have no room', tray(23, 16), 'marginal'],
    ['a box that leaves 6 in, 17 in from the edge', tray(23, 17), 'pass'],
    ['legs that leave 30 in', { legs: legs(34, 2) }, 'pass'],
    ['legs that leave 29 in', { legs: legs(33, 2) }, 'marginal'],
    // A leg without a thickness is 50 mm: 34 in less 100 mm is more than 30 in, 33 in less 100 mm is less.
    [
      'legs of the usual thickness, 34 in from side to side',
      { legs: { ...legs(34, 2), thickness: undefined } },
      'pass',
    ],
    ['33 in from side to side', { legs: { ...legs(33, 2), thickness: undefined } }, 'marginal'],
    [
      'legs at the ends of a desk 33 in wide',
      { width: given(33 * INCH), legs: { ...legs(1, 2), width: undefined } },
      'marginal',
    ],
    ['a tray behind the knees, however low', { hanging: [{ ...tray(1, 17).hanging![0]!, drop: undefined }] }, 'pass'],
  ])('%s', (_, desk, verdict) => {
    expect(judge(desk).verdict).toBe(verdict);
  });

  // By a tenth of a millimetre inside and outside of what is allowed.
  const near = (parts: Partial<Booth>, desk: Partial<Desk> = {}) => judge(desk, parts).verdict;
  const behind = (floor: number, walkways: Booth['walkways'] = []) =>
    near({ placements: [aPlacement(['Left'], 3000, floor)], walkways });
  const front = [aWalkway('Front', ['booth', 'stage-wall'])];
  const trayAt = (drop: number, fromEdge: number) => near({}, tray(drop / INCH, fromEdge / INCH));
  const platform = (parts: Parameters<typeof aPlatform>[2]) =>
    near({ platforms: [aPlatform('Riser', 8 * INCH, { at: given({ x: 2500, y: 1000 }), ...parts })] });
  const ramp = (length: number, width: number) =>
    platform({ ramp: { origin: nowhere, length: given(length), width: given(width) } });
  const surface = (height: number) => near({}, { height: range(height, height), top: given(10) });

  it.each<[string, number, (value: number) => string]>([
    ['the surface at most 863.6 high', 863.6 + 1, (value) => surface(2 * 864.6 - value)],
    ['the surface at least 711.2 high', 711.2 - 1, surface],
    ['685.8 over the knees', 685.8 - 1, (under) => near({}, { top: given(30 * INCH - under) })],
    ['762 from side to side', 762 - 1, (width) => near({}, { width: given(width) })],
    ['431.8 from front to back', 431.8 - 1, (depth) => near({}, { depth: given(depth) })],
    [
      '431.8 from front to back, two places apart',
      431.8 - 1,
      (depth) => near({}, { depth: given(depth), legs: legs(60, 2) }),
    ],
    ['787.4 of floor behind the edge', 787.4 - 1, (floor) => behind(floor, front)],
    ['914.4 on the way', 914.4 - 1, (way) => behind(way)],
    ['under a tray 685.8 at the near edge', 685.8 - 1, (clear) => trayAt(29 * INCH - clear, 0)],
    // 25 in high knees reach 8 1/3 in deep.
    ['a tray 25 in high, 211.7 from the edge', (25 * INCH) / 3 - 1, (fromEdge) => trayAt(4 * INCH, fromEdge)],
    ['a ramp twelve times as long as it rises', 12 * 8 * INCH - 1, (length) => ramp(length, 36 * INCH)],
    ['a ramp 914.4 wide', 914.4 - 1, (width) => ramp(96 * INCH, width)],
    ['the desk behind the platform', 828.8 + 1, (depth) => platform({ depth: given(2 * 829.8 - depth) })],
  ])('%s, and 1 mm is allowed', (_, bound, at) => {
    expect([at(bound + 0.1), at(bound - 0.1)]).toEqual(['pass', 'marginal']);
  });

  it.each<[string, Partial<Desk>, string, number]>([
    // Set to 34 in, not to 42, with 34 − 7 = 27 in over the knees.
    ['a desk that goes higher than suits', { height: range(33 * INCH, 42 * INCH), top: given(7 * INCH) }, 'pass', 0],
    ['with a top thicker by 1 in', { height: range(33 * INCH, 42 * INCH), top: given(8 * INCH) }, 'marginal', 26],
    ['a desk that does not go so high', { height: range(29 * INCH, 30 * INCH), top: given(4 * INCH) }, 'marginal', 26],
  ])('%s: what counts is the room with the desk as high as suits', (_, desk, verdict, over) => {
    const finding = judge(desk);
    expect(finding.verdict).toBe(verdict);
    expect(finding.measured ?? 0).toBeCloseTo(over * INCH, 6);
  });

  function legs(width: number, thickness: number): NonNullable<Desk['legs']> {
    const inch = (value: number) => given(value * INCH);
    return { origin: nowhere, width: inch(width), thickness: inch(thickness), inset: inch(0) };
  }

  it(
    outside(
      '2010 ADA Standards 306.3',
      'W35: knees reach 11 in deep at 9 in',
      '10 in at 15 in',
      '9 in at 21 in',
      '8 in at 27 in',
    ),
    () => {
      for (const [height, depth] of [
        [9, 11],
        [15, 10],
        [21, 9],
        [27, 8],
      ] as const)
        expect(kneeDepthAt(height * INCH)).toBeCloseTo(depth * INCH, 9);
      expect(kneeDepthAt(8 * INCH)).toBeCloseTo(17 * INCH, 9);
    },
  );

  it(
    outside(
      'J. Kent FAIA, on 2010 ADA Standards 305.3 and 306',
      'W34: a wheelchair takes 48 − 17 = 31 in behind the edge',
    ),
    () => {
      const walkways = [aWalkway('Front', ['booth', 'stage-wall'])];
      const at = (y: number) => ({ placements: [aPlacement(['Left'], 3000, y)], walkways });
      expect(judge({}, at(787)).verdict).toBe('pass');
      expect(judge({}, at(780))).toMatchObject({ verdict: 'marginal', measured: 780 });
      expect(judge({}, at(780)).limit).toBeCloseTo(31 * INCH, 6);
    },
  );

  it('the way to it is the widest walkway along the booth, or the floor behind the desk', () => {
    const at = (y: number, ...walkways: ReturnType<typeof aWalkway>[]) =>
      judge({}, { placements: [aPlacement(['Left'], 3000, y)], walkways });
    expect(at(36 * INCH)).toMatchObject({ verdict: 'pass' });
    expect(at(36 * INCH).assumptions.join()).toContain('no walkway says');
    expect(at(35 * INCH)).toMatchObject({ verdict: 'marginal' });
    expect(at(35 * INCH).message).toContain('35 in on the way to it');
    expect(at(35 * INCH, aWalkway('Behind', ['booth', 'back-wall'])).verdict).toBe('marginal');
    // Of these none says how wide the way to this desk is: the floor behind it stays the way.
    const others = [
      { ...aWalkway('Bare', ['booth', 'back-wall']), between: undefined },
      aWalkway('Far', ['left-wall', 'right-wall']),
      aWalkway('Lost', ['Left', 'Nowhere']),
    ];
    expect(at(35 * INCH, ...others)).toMatchObject({ verdict: 'marginal', measured: 35 * INCH });
    expect(at(36 * INCH, ...others).assumptions.join()).toContain('no walkway says');
    expect(
      at(35 * INCH, aWalkway('Behind', ['booth', 'back-wall']), aWalkway('Side', ['Left', 'left-wall'])).verdict,
    ).toBe('pass');
  });

  it('racks under the desk take from its width', () => {
    const rack = (at: number) => ({
      racks: [aRack('Power', 12, { width: given(22 * INCH), ...under('Left', at * INCH) })],
    });
    expect(judge({}, rack(0)).verdict).toBe('pass');
    expect(judge({}, rack(19)).message).toContain('from side to side');
  });

  it.each([
    // From leg to rack: 32 − 2, 58 − 28, and with the frame 2 in from the desk's ends 34 − 4 and 56 − 26.
    ['between the left leg and a rack', 60, 32],
    ['between a rack and the right leg', 60, 28 - 22],
    ['the same where the frame is narrower than the desk', 56, 34],
    ['on the right too', 56, 26 - 22],
  ])('%s 30 in are free, and no more', (_, frame, at) => {
    const free = (more: number) =>
      judge(
        { legs: legs(frame, 2) },
        { racks: [aRack('Power', 12, { width: given(22 * INCH), ...under('Left', (at + more) * INCH) })] },
      );
    const away = at > 22 ? -0.25 : 0.25;
    expect([free(0).verdict, free(away).verdict]).toEqual(['pass', 'marginal']);
  });

  it('on a platform it takes a ramp', () => {
    const on = (parts: Parameters<typeof aPlatform>[2]) =>
      judge({}, { platforms: [aPlatform('Riser', 8 * INCH, { at: given({ x: 2500, y: 1000 }), ...parts })] });
    const ramp = (length: number, width: number) => ({
      ramp: { origin: nowhere, length: given(length * INCH), width: given(width * INCH) },
    });
    expect(on({}).message).toContain('stands on Riser, which has no ramp');
    expect(on(ramp(96, 36)).verdict).toBe('pass');
    expect(on(ramp(90, 36)).verdict).toBe('marginal');
    expect(on(ramp(96, 30)).verdict).toBe('marginal');
    expect(on({ ...ramp(96, 36), height: undefined }).verdict).toBe('marginal');
    expect(on({ ramp: { origin: nowhere, width: given(36 * INCH) } }).verdict).toBe('marginal');
    expect(on({ ramp: { origin: nowhere, length: given(96 * INCH) } }).verdict).toBe('marginal');
    expect(on({ at: given({ x: 6000, y: 6000 }) }).verdict).toBe('pass');
    expect(on({})).not.toHaveProperty('margin');
    const riser = (name: string, parts: Parameters<typeof aPlatform>[2]) => aPlatform(name, 8 * INCH, parts);
    const elsewhere = riser('Other', { at: given({ x: 6000, y: 6000 }) });
    const below = (parts: Parameters<typeof aPlatform>[2]) =>
      riser('Riser', { at: given({ x: 2500, y: 1000 }), ...parts });
    expect(judge({}, { platforms: [elsewhere, below(ramp(96, 36))] }).verdict).toBe('pass');
    expect(judge({}, { platforms: [elsewhere, below({})] }).message).toContain('stands on Riser');
    expect(judge({}, { platforms: [elsewhere], placements: [] }).missing).toMatchObject({ property: 'place' });
  });

  it('one good workstation is enough; else the nearest is named', () => {
    const parts: Partial<Booth> = {
      desks: [aDesk('High', 41 * INCH, { closed: true }), aDesk('Low', 41 * INCH)],
      workstations: [aStation('Sound', 'High', undefined, ['Noor']), aStation('Words', 'Low', undefined, ['Noor'])],
      placements: [aPlacement(['High', 'Low'], 3000, 72 * INCH)],
    };
    const none = judge({}, parts);
    expect(none).toMatchObject({ verdict: 'marginal', subject: { kind: 'booth' } });
    expect(none.message).toContain('The nearest is Words, but its surface is 41 in high');
    expect(none.measured).toBeCloseTo(41 * INCH, 6);
    const one = judge({}, { ...parts, desks: [aDesk('High', 41 * INCH), aDesk('Low', 30 * INCH)] });
    expect(one).toMatchObject({ verdict: 'pass' });
    expect(one.message).toContain('at Words');
  });

  it('of two with as many obstacles the one is nearest that lacks less, whichever comes first', () => {
    const desks = [aDesk('High', 43 * INCH), aDesk('Lower', 40 * INCH)];
    const workstations = desks.map(({ name }) => aStation(`At${name}`, name, undefined, ['Noor']));
    const placements = [aPlacement(['High', 'Lower'], 3000, 72 * INCH)];
    for (const stations of [workstations, [...workstations].reverse()]) {
      const { message, measured } = judge({}, { desks, placements, workstations: stations });
      expect(message).toContain('The nearest is AtLower, but its surface is 40 in high');
      expect(measured).toBeCloseTo(40 * INCH, 6);
    }
  });

  it('never fails, whatever is wrong', () => {
    const worst = judge(
      { ...high(60), closed: true, width: given(300), depth: given(200) },
      { placements: [aPlacement(['Left'], 3000, 10)] },
    );
    expect(worst.verdict).toBe('marginal');
    expect(worst.caution).toContain('duties to employees and volunteers remain');
  });

  it.each<[string, Partial<Booth>, string]>([
    ['a height', { desks: [aDesk('Left', 1, { height: undefined })] }, 'height'],
    ['a width', { desks: [aDesk('Left', 740, { width: undefined })] }, 'width'],
    ['a drop', { desks: [aDesk('Left', 740, { hanging: [{ ...tray(1, 0).hanging![0]!, drop: undefined }] })] }, 'drop'],
    ['a place', { placements: [] }, 'place'],
  ])('without %s it asks for it', (_, parts, property) => {
    expect(judge({}, parts)).toMatchObject({ verdict: 'unknown', missing: { property } });
  });

  it('asks nothing of a booth without workstations; the file may set the route', () => {
    expect(findingsOf(booth({}, { workstations: [] }), 'accessible-station')).toEqual([]);
    const overrides = [{ check: 'accessible-station', value: 1200, reason: 'power chairs', origin: nowhere }];
    const placements = [aPlacement(['Left'], 3000, 1100)];
    expect(judge({}, { overrides, placements })).toMatchObject({
      verdict: 'marginal',
      source: 'the file’s own limit: power chairs',
    });
  });
});

describe('accessible-station: what a reader is told', () => {
  const tell = (...args: Parameters<typeof booth>) => told(booth(...args), 'accessible-station');

  it('where one place suits', () => {
    expect(tell(high(32))).toMatchInlineSnapshot(`
      "pass, booth Test booth
      A wheelchair user can work at Sound: surface, knees, floor and route have room.
      at undefined, by 2010 ADA Standards 403.5.1
      see workstations.Sound: this workstation
      granted the way to the booth is as wide as the floor behind the desk: no walkway says"
    `);
  });

  it('where the surface is too high, or too low', () => {
    expect(tell(high(40))).toMatchInlineSnapshot(`
      "marginal, booth Test booth
      No workstation suits a wheelchair user. Sound: its surface is 40 in high, where 28 to 34 in is wanted. Think of making one place that does.
      : 1016 against 863.6 mm, margin -152.4
      at undefined, by 2010 ADA Standards 305, 306, 403.5.1 and 902.3, as advice
      see workstations.Sound: the workstation that comes nearest
      granted the way to the booth is as wide as the floor behind the desk: no walkway says"
    `);
    expect(tell(high(26))).toMatchInlineSnapshot(`
      "marginal, booth Test booth
      No workstation suits a wheelchair user. Sound: its surface is 26 in high, where 28 to 34 in is wanted; it has 25 in over the knees, where 27 in is wanted. Think of making one place that does.
      : 660.4 against 711.2 mm, margin -50.8
      at undefined, by 2010 ADA Standards 305, 306, 403.5.1 and 902.3, as advice
      see workstations.Sound: the workstation that comes nearest
      granted the way to the booth is as wide as the floor behind the desk: no walkway says"
    `);
  });

  it('where a tray, legs or the depth take the room of the knees', () => {
    expect(tell({ ...high(32), ...tray(7 * INCH, 100) })).toMatchInlineSnapshot(`
      "pass, booth Test booth
      A wheelchair user can work at Sound: surface, knees, floor and route have room.
      at undefined, by 2010 ADA Standards 403.5.1
      see workstations.Sound: this workstation
      granted the way to the booth is as wide as the floor behind the desk: no walkway says"
    `);
    expect(tell({ ...high(32), width: given(700) })).toMatchInlineSnapshot(`
      "marginal, booth Test booth
      No workstation suits a wheelchair user. Sound: it has 27 1/2 in from side to side under it, where 30 in is wanted. Think of making one place that does.
      : 700 against 762 mm, margin -62
      at undefined, by 2010 ADA Standards 305, 306, 403.5.1 and 902.3, as advice
      see workstations.Sound: the workstation that comes nearest
      granted the way to the booth is as wide as the floor behind the desk: no walkway says"
    `);
    expect(tell({ ...high(32), depth: given(300) })).toMatchInlineSnapshot(`
      "marginal, booth Test booth
      No workstation suits a wheelchair user. Sound: it has 11 3/4 in from front to back under it, where 17 in is wanted. Think of making one place that does.
      : 300 against 431.8 mm, margin -131.8
      at undefined, by 2010 ADA Standards 305, 306, 403.5.1 and 902.3, as advice
      see workstations.Sound: the workstation that comes nearest
      granted the way to the booth is as wide as the floor behind the desk: no walkway says"
    `);
  });

  it('where a tray hangs over the knees, a rack takes their room, or legs stand close', () => {
    expect(tell({ ...high(30), ...tray(4, 0) })).toMatchInlineSnapshot(`
      "marginal, booth Test booth
      No workstation suits a wheelchair user. Sound: it has 25 in over the knees, under the tray, where 27 in is wanted. Think of making one place that does.
      : 635 against 685.8 mm, margin -50.8
      at undefined, by 2010 ADA Standards 305, 306, 403.5.1 and 902.3, as advice
      see workstations.Sound: the workstation that comes nearest
      granted the way to the booth is as wide as the floor behind the desk: no walkway says"
    `);
    const racks = [aRack('Power', 12, { width: given(22 * INCH), ...under('Left', 19 * INCH) })];
    expect(tell(high(32), { racks })).toMatchInlineSnapshot(`
      "marginal, booth Test booth
      No workstation suits a wheelchair user. Sound: it has 19 in from side to side under it, where 30 in is wanted. Think of making one place that does.
      : 482.6 against 762 mm, margin -279.4
      at undefined, by 2010 ADA Standards 305, 306, 403.5.1 and 902.3, as advice
      see workstations.Sound: the workstation that comes nearest
      granted the way to the booth is as wide as the floor behind the desk: no walkway says"
    `);
    const inch = (value: number) => given(value * INCH);
    const legs = { origin: nowhere, width: inch(33), thickness: inch(2), inset: inch(0) };
    expect(tell({ ...high(32), legs })).toMatchInlineSnapshot(`
      "marginal, booth Test booth
      No workstation suits a wheelchair user. Sound: it has 29 in from side to side under it, where 30 in is wanted. Think of making one place that does.
      : 736.6 against 762 mm, margin -25.4
      at undefined, by 2010 ADA Standards 305, 306, 403.5.1 and 902.3, as advice
      see workstations.Sound: the workstation that comes nearest
      granted the way to the booth is as wide as the floor behind the desk: no walkway says"
    `);
    expect(tell({ ...high(32), legs: { ...legs, width: undefined, thickness: undefined } })).toMatchInlineSnapshot(`
      "pass, booth Test booth
      A wheelchair user can work at Sound: surface, knees, floor and route have room.
      at undefined, by 2010 ADA Standards 403.5.1
      see workstations.Sound: this workstation
      granted the way to the booth is as wide as the floor behind the desk: no walkway says"
    `);
  });

  it('of several: the first that suits, else the first of those with the fewest faults', () => {
    const three = (high: Partial<Desk>, low: Partial<Desk>, last: Partial<Desk>): Partial<Booth> => ({
      origin: nowhere,
      desks: [aDesk('High', 41 * INCH, high), aDesk('Low', 41 * INCH, low), aDesk('Last', 41 * INCH, last)],
      workstations: ['High', 'Low', 'Last'].map((desk) => aStation(`At${desk}`, desk, undefined, ['Noor'])),
      placements: [aPlacement(['High', 'Low', 'Last'], 3000, 72 * INCH)],
    });
    expect(tell({}, three({ closed: true }, {}, {}))).toMatchInlineSnapshot(`
      "marginal, booth Test booth
      No workstation suits a wheelchair user. The nearest is AtLow, but its surface is 41 in high, where 28 to 34 in is wanted. Think of making one place that does.
      : 1041.4 against 863.6 mm, margin -177.8
      at , by 2010 ADA Standards 305, 306, 403.5.1 and 902.3, as advice
      see workstations.AtLow: the workstation that comes nearest
      granted the way to the booth is as wide as the floor behind the desk: no walkway says"
    `);
    expect(tell({}, three({ height: undefined }, {}, {}))).toMatchInlineSnapshot(`
      "unknown, booth Test booth
      Cannot say whether a wheelchair user can work at AtHigh. Add \`height\` to desk High, such as \`height 40in\`.
      at , by 2010 ADA Standards 902.3
      ask height of desk High, as height 40in, at desks.High"
    `);
    expect(tell({}, three({ height: undefined }, {}, { height: fixed(760) }))).toMatchInlineSnapshot(`
      "pass, booth Test booth
      A wheelchair user can work at AtLast: surface, knees, floor and route have room.
      at , by 2010 ADA Standards 403.5.1
      see workstations.AtLast: this workstation
      granted the way to the booth is as wide as the floor behind the desk: no walkway says"
    `);
  });

  it('where the file sets its own route', () => {
    const overrides = [{ check: 'accessible-station', value: 1200, reason: 'power chairs', origin: nowhere }];
    const at = (y: number) => tell(high(32), { overrides, placements: [aPlacement(['Left'], 3000, y)] });
    expect(at(1100)).toMatchInlineSnapshot(`
      "marginal, booth Test booth
      No workstation suits a wheelchair user. Sound: it has 43 1/4 in on the way to it, where 47 1/4 in is wanted. Think of making one place that does.
      : 1100 against 1200 mm, margin -100
      at undefined, by the file’s own limit: power chairs
      see workstations.Sound: the workstation that comes nearest; overrides.0: the file’s own limit: power chairs
      granted the way to the booth is as wide as the floor behind the desk: no walkway says"
    `);
    expect(at(1300)).toMatchInlineSnapshot(`
      "pass, booth Test booth
      A wheelchair user can work at Sound: surface, knees, floor and route have room.
      at undefined, by the file’s own limit: power chairs
      see workstations.Sound: this workstation; overrides.0: the file’s own limit: power chairs
      granted the way to the booth is as wide as the floor behind the desk: no walkway says"
    `);
  });

  it('where the floor and the way to it are narrow', () => {
    expect(tell(high(32), { placements: [aPlacement(['Left'], 3000, 700)] })).toMatchInlineSnapshot(`
      "marginal, booth Test booth
      No workstation suits a wheelchair user. Sound: it has 27 1/2 in of floor behind its edge, where 31 in is wanted; it has 27 1/2 in on the way to it, where 36 in is wanted. Think of making one place that does.
      : 700 against 787.4 mm, margin -87.4
      at undefined, by 2010 ADA Standards 305, 306, 403.5.1 and 902.3, as advice
      see workstations.Sound: the workstation that comes nearest
      granted the way to the booth is as wide as the floor behind the desk: no walkway says"
    `);
    expect(
      tell(high(32), {
        walkways: [aWalkway('Beside', ['Left', 'left-wall'], {})],
        placements: [aPlacement(['Left'], 600, 3000)],
      }),
    ).toMatchInlineSnapshot(`
      "marginal, booth Test booth
      No workstation suits a wheelchair user. Sound: it has 23 5/8 in on the way to it, where 36 in is wanted. Think of making one place that does.
      : 600 against 914.4 mm, margin -314.4
      at undefined, by 2010 ADA Standards 305, 306, 403.5.1 and 902.3, as advice
      see workstations.Sound: the workstation that comes nearest"
    `);
  });

  it('where it stands on a platform', () => {
    expect(tell(high(32), { platforms: [aPlatform('Riser', 300, { width: given(9000), depth: given(6000) })] }))
      .toMatchInlineSnapshot(`
      "marginal, booth Test booth
      No workstation suits a wheelchair user. Sound: it stands on Riser, which has no ramp of 1:12. Think of making one place that does.
      at undefined, by 2010 ADA Standards 305, 306, 403.5.1 and 902.3, as advice
      see workstations.Sound: the workstation that comes nearest
      granted the way to the booth is as wide as the floor behind the desk: no walkway says"
    `);
  });

  it('where something is missing', () => {
    expect(tell(high(32), { placements: [] })).toMatchInlineSnapshot(`
      "unknown, booth Test booth
      Cannot say whether a wheelchair user can work at Sound. Add \`place\` to the file, for desk Left, such as \`place Left at 14ft, 6ft\`.
      at workstations.Sound, by 2010 ADA Standards 902.3
      ask place of the file, for desk Left, as place Left at 14ft, 6ft, at desks.Left"
    `);
    expect(tell({ height: undefined })).toMatchInlineSnapshot(`
      "unknown, booth Test booth
      Cannot say whether a wheelchair user can work at Sound. Add \`height\` to desk Left, such as \`height 40in\`.
      at workstations.Sound, by 2010 ADA Standards 902.3
      ask height of desk Left, as height 40in, at desks.Left"
    `);
  });
});
