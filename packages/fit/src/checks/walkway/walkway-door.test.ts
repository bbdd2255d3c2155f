import { describe, expect, it } from 'vitest';
import type { Booth, Door, Walkway } from '../../booth.js';
import { aDesk, anOperator, aPlacement, aRoom, aSeat, aStation, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aDoor, aWalkway } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { told } from '../../testing/told.js';
import { bare } from '../../testing/walkways.js';
import { INCH } from '../../units.js';

const LEAF = 900;
const main = (parts: Partial<Door> = {}, at = 3300) => aDoor('Main', 'back-wall', at, LEAF, parts);

/** A desk 1500 wide at 3000, so far from the back wall that an open door before its middle leaves `left`; the way behind it serves 20. */
function way(
  left: number,
  doors: readonly Door[] = [main()],
  walkway: Partial<Walkway> = {},
  parts: Partial<Booth> = {},
): Booth {
  return bare(
    [aPlacement(['Left'], 3000, LEAF + left)],
    aWalkway('Behind', ['booth', 'back-wall'], { serves: given(20), ...walkway }),
    { room: aRoom(10_000, 20_000, { doors }), ...parts },
  );
}

const judge = (...args: Parameters<typeof way>) => findingOf(way(...args), 'walkway-door');
const none = (...args: Parameters<typeof way>) => findingsOf(way(...args), 'walkway-door');

describe('walkway-door: half of the least width in any position, all but 7 in fully open', () => {
  it.each<[string, number, string]>([
    [outside('IBC 2015 1005.7.1', 'a door that leaves half of 36 in'), 18 * INCH, 'marginal'],
    [outside('IBC 2015 1005.7.1', 'a door that leaves 36 in less 7 in'), 29 * INCH, 'pass'],
    ['a little less than half of 36 in', 18 * INCH - 1.1, 'fail'],
    ['within 1 mm of half of 36 in', 18 * INCH - 0.9, 'marginal'],
    ['a little less than 29 in', 29 * INCH - 1.1, 'marginal'],
    ['within 1 mm of 29 in', 29 * INCH - 0.9, 'pass'],
    ['all of 36 in', 36 * INCH, 'pass'],
    ['nothing: the leaf touches the desk', 0, 'fail'],
  ])('%s', (_, left, verdict) => {
    const finding = judge(left);
    expect(finding.verdict).toBe(verdict);
    expect(finding.measured).toBeCloseTo(left, 0);
  });

  it.each<[string, Partial<Walkway>, Partial<Booth>, number]>([
    ['42 in for 60 people', { serves: given(60) }, {}, 42 * INCH],
    ['28 in for operators', { users: given('operators') }, {}, 28 * INCH],
    ['850 mm for 90 people in England', { serves: given(90) }, { limits: 'uk' }, 850],
    [
      'the file’s own',
      {},
      { overrides: [{ check: 'walkway-width', value: 1200, reason: 'band gear', origin: nowhere }] },
      1200,
    ],
  ])('the least width is that of walkway-width: %s', (_, walkway, parts, least) => {
    const verdictAt = (left: number) => judge(left, [main()], walkway, parts).verdict;
    expect([verdictAt(least / 2 - 2), verdictAt(least / 2)]).toEqual(['fail', 'marginal']);
    expect([verdictAt(least - 7 * INCH - 2), verdictAt(least - 7 * INCH)]).toEqual(['marginal', 'pass']);
  });

  it('counts from the people who sit there', () => {
    const parts: Partial<Booth> = {
      desks: [aDesk('Left', 740, { width: given(1500), depth: given(700) })],
      operators: [anOperator('Noor', { stature: 1630 })],
      seats: [aSeat('Low', 450)],
      workstations: [aStation('Sound', 'Left', 'Low', ['Noor'])],
    };
    expect(judge(1200, [main()], {}, parts).measured).toBeCloseTo(1200 - 19 * INCH, 0);
  });

  it('says nothing of a door that opens outward, or is not said to stand anywhere, or sweeps elsewhere', () => {
    expect(none(300, [main({ opens: given('out') })])).toEqual([]);
    expect(none(300, [main({ at: undefined })])).toEqual([]);
    expect(none(300, [main({}, 8000)])).toEqual([]);
    expect(none(300, [aDoor('Side', 'stage-wall', 3300, LEAF)])).toEqual([]);
  });

  it('says nothing where the walkway has no sides or no least width', () => {
    expect(none(300, [main()], { between: undefined })).toEqual([]);
    expect(none(300, [main()], {}, { placements: [] })).toEqual([]);
    expect(none(300, [main()], { serves: undefined }, { limits: 'uk' })).toEqual([]);
  });

  it('of a door past the end of the desk counts what is left slantwise, by the side of its hinge', () => {
    // The opening runs from 4600 to 5500, the desk ends at 4500, 1100 from the wall. Hinged at 4600 the end of the open leaf is nearest.
    const of = (hinge: 'left' | 'right') => judge(200, [main({ hinge: given(hinge) }, 4600)]).measured!;
    const [nearer, farther] = [of('left'), of('right')].sort((a, b) => a - b);
    expect(nearer).toBeCloseTo(Math.hypot(100, 200), 0);
    expect(farther! - (Math.hypot(1000, 1100) - LEAF)).toBeCloseTo(0, -1);
  });

  it('offers nothing where enough is left', () => {
    expect(judge(1000, [main({ opens: given('in') })]).remedies).toEqual([]);
    expect(judge(600, [main({ opens: given('in') })]).remedies).toHaveLength(1);
  });

  it('judges each door of each walkway', () => {
    const doors = [main({}, 3000), aDoor('Second', 'back-wall', 4000, 300)];
    const found = none(400, doors);
    expect(found.map(({ verdict, related }) => [verdict, related.length])).toEqual([
      ['fail', 1],
      ['pass', 1],
    ]);
  });
});

describe('walkway-door: what a reader is told', () => {
  const tell = (...args: Parameters<typeof way>) => told(way(...args), 'walkway-door');

  it('where a door leaves enough, too little, or too little unless it opens back', () => {
    expect(tell(1000, [main({ hinge: given('left') })])).toMatchInlineSnapshot(`
      "pass, walkway Behind
      The door Main opens into Behind and leaves 1000 mm in any position: of the least width of 914 mm a door may take 178 mm.
      : 1000 against 736.6 mm, margin 263.4
      at room.doors.Main, by IBC 2015 1005.7.1
      see walkways.Behind: the walkway Behind
      granted the door Main opens into the room"
    `);
    expect(tell(600, [main({ hinge: given('left'), opens: given('in') })])).toMatchInlineSnapshot(`
      "marginal, walkway Behind
      Open at a right angle, the door Main leaves 600 mm of Behind, where 914 mm is the least. Let it open outward, or back until it lies along its wall.
      : 600 against 736.6 mm, margin -136.6
      at room.doors.Main.opens, by IBC 2015 1005.7.1
      see walkways.Behind: the walkway Behind
      weigh Let the door Main open outward | room.doors.Main.opens := out"
    `);
    expect(tell(300, [main()])).toMatchInlineSnapshot(`
      "fail, walkway Behind
      The door Main sweeps through Behind and leaves only 300 mm, where half of 914 mm is to stay free in any position. Let it open outward, or widen the walkway there by 157 mm.
      : 300 against 457.2 mm, margin -157.2
      at room.doors.Main, by IBC 2015 1005.7.1
      see walkways.Behind: the walkway Behind
      granted the door Main opens into the room; its hinge is on the left"
    `);
  });

  it('where the limit is a borrowed one', () => {
    expect(tell(300, [main()], {}, { limits: 'uk' })).toMatchInlineSnapshot(`
      "fail, walkway Behind
      The door Main sweeps through Behind and leaves only 300 mm, where half of 750 mm is to stay free in any position. Let it open outward, or widen the walkway there by 75 mm.
      : 300 against 375 mm, margin -75
      at room.doors.Main, by IBC 2015 1005.7.1
      see walkways.Behind: the walkway Behind
      granted the door Main opens into the room; its hinge is on the left; no UK figure was read for this: the US figure stands in"
    `);
  });
});
