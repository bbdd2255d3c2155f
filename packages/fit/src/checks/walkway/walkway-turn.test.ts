import { describe, expect, it } from 'vitest';
import type { Booth, Room, Walkway } from '../../booth.js';
import { aBooth, aDesk, aPlacement, aRoom, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aColumn, aWalkway } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';
import { told } from '../../testing/told.js';

interface Plan {
  /** Inches: the lane behind the counter, its depth, its free end, the lane before it. */
  readonly before?: number;
  readonly deep?: number;
  readonly end?: number;
  readonly after?: number;
  readonly walkway?: Partial<Walkway>;
  readonly room?: Partial<Room>;
  readonly booth?: Partial<Booth>;
}

/** A counter against the left wall, 3000 mm long, whose free end is the right one. */
function plan({ before = 42, deep = 40, end = 48, after = 42, walkway, room, booth }: Plan): Booth {
  return aBooth({
    show: 'in',
    room: aRoom(3000 + end * INCH, 20_000, {
      seating: { origin: nowhere, first: given(after * INCH), standing: false },
      ...room,
    }),
    desks: [aDesk('Counter', 1000, { width: given(3000), depth: given(deep * INCH) })],
    placements: [aPlacement(['Counter'], 0, before * INCH)],
    walkways: [aWalkway('Round', ['booth', 'back-wall'], { turns: true, serves: given(20), ...walkway })],
    ...booth,
  });
}

const turn = (parts: Plan) => findingOf(plan(parts), 'walkway-turn');

describe('walkway-turn: 42, 48 and 42 in, or 60 in at the turn, round something narrower than 48 in', () => {
  it.each<[string, Plan, string]>([
    [outside('2010 ADA Standards 403.5.2', 'W33: round 40 in, lanes of 42 in and 48 in at the turn'), {}, 'pass'],
    [outside('2010 ADA Standards 403.5.2', 'W33: a lane of 40 in is too narrow'), { before: 40 }, 'fail'],
    ['W33: the lane after it 40 in', { after: 40 }, 'fail'],
    [
      outside('2010 ADA Standards 403.5.2', 'W33: unless it is 60 in at the turn'),
      { before: 40, after: 40, end: 60 },
      'pass',
    ],
    ['W33: both lanes 40 in, the end 59 in', { before: 40, after: 40, end: 59 }, 'fail'],
    ['the end 47 in', { end: 47 }, 'fail'],
    [
      outside('2010 ADA Standards 403.5.2', 'W33: round 48 in the rule does not apply'),
      { deep: 48, before: 36, end: 36, after: 36 },
      'pass',
    ],
    ['a counter 47 in wide', { deep: 47, before: 36, end: 36, after: 36 }, 'fail'],
  ])('%s', (_, parts, verdict) => {
    expect(turn(parts).verdict).toBe(verdict);
  });

  const lanes = { before: 60, after: 60, end: 59 };
  it.each<[string, (millimetres: number) => Plan, number]>([
    ['the lane before it 42 in', (by) => ({ before: 42 + by / INCH }), -1],
    ['the lane after it 42 in', (by) => ({ after: 42 + by / INCH }), -1],
    ['the end 48 in', (by) => ({ end: 48 + by / INCH }), -1],
    ['or 60 in', (by) => ({ before: 40, end: 60 + by / INCH }), -1],
    ['round 48 in', (by) => ({ ...lanes, end: 40, deep: 48 + by / INCH }), -1],
  ])('%s, and 1 mm is allowed', (_, parts, bound) => {
    expect([turn(parts(bound + 0.1)).verdict, turn(parts(bound - 0.1)).verdict]).toEqual(['pass', 'fail']);
  });

  it('reports the width that decides, and all three as terms', () => {
    const finding = turn({ end: 44 });
    expect(finding.measured).toBeCloseTo(44 * INCH, 6);
    expect(finding.limit).toBeCloseTo(48 * INCH, 6);
    expect(finding.terms).toBe('42 in before the turn, 44 in at the turn, 42 in after the turn');
    expect(finding.message).toContain('at the turn (the right wall)');
    expect(finding.message).toContain('Widen it by 4 in, or make it 60 in at the turn');
  });

  it('a booth with two free ends is gone round at the roomier one', () => {
    const placements = [aPlacement(['Counter'], 30 * INCH, 42 * INCH)];
    const room = { width: given(30 * INCH + 3000 + 50 * INCH) };
    expect(turn({ room, booth: { placements } })).toMatchObject({ verdict: 'pass' });
    expect(turn({ room: { width: given(30 * INCH + 3000 + 40 * INCH) }, booth: { placements } }).measured).toBeCloseTo(
      40 * INCH,
      6,
    );
  });

  it('a column at the corner of the turn narrows it', () => {
    // 30 in to the right of the end, and 30 in nearer the back wall: 42.4 in from the corner.
    const columns = [aColumn('Post', 3000 + 30 * INCH, 0, 100, 12 * INCH)];
    const finding = turn({ end: 80, room: { columns } });
    expect(finding).toMatchObject({ verdict: 'fail' });
    expect(finding.measured).toBeCloseTo(30 * Math.SQRT2 * INCH, 6);
    expect(finding.message).toContain('(Post)');
  });

  it('people who sit behind the counter narrow the lane before it', () => {
    const seat = { kind: 'stool', name: 'Tall', origin: nowhere } as const;
    const station = {
      name: 'Sound',
      origin: nowhere,
      desk: { name: 'Counter', origin: nowhere },
      seat: { name: 'Tall', origin: nowhere },
      people: [],
      postures: given(['sit'] as const),
      task: given('controls' as const),
      working: given(0),
      lean: given(0),
      screens: [],
      controls: [],
    };
    const finding = turn({ before: 60, booth: { seats: [seat], workstations: [station] } });
    expect(finding.measured).toBeCloseTo(41 * INCH, 6);
    expect(turn({ before: 61, booth: { seats: [seat], workstations: [station] } }).verdict).toBe('pass');
  });

  it('a walkway before the booth that turns back behind it is the same turn', () => {
    const walkways = [aWalkway('Round', ['seating', 'booth'], { turns: true })];
    expect(turn({ booth: { walkways } }).terms).toBe('42 in before the turn, 48 in at the turn, 42 in after the turn');
    expect(turn({ before: 40, booth: { walkways } }).message).toContain('after the turn (the back wall)');
  });

  it('an L is as wide as both its arms', () => {
    // The arm comes back 1500 mm toward the wall: the booth is 1500 + 1016 deep, far more than 48 in.
    const desks = [aDesk('Counter', 1000, { width: given(3000), depth: given(1016) }), aDesk('Arm', 1000)];
    const placements = [aPlacement(['Counter'], 0, 3000), aPlacement(['Arm'], 0, 3000, 90)];
    const finding = turn({ booth: { desks, placements } });
    expect(finding).toMatchObject({ verdict: 'pass' });
    expect(finding.message).toContain('the rule for turns is for less than 48 in');
  });

  it('what the file says narrows the turn counts, if it is less than the plan shows', () => {
    expect(turn({ walkway: { atTurn: given(44 * INCH) } }).measured).toBeCloseTo(44 * INCH, 6);
    expect(turn({ walkway: { atTurn: given(90 * INCH) } }).verdict).toBe('pass');
    expect(turn({ walkway: { afterTurn: given(40 * INCH) } })).toMatchObject({ verdict: 'fail' });
  });

  it('asks for what the plan does not show', () => {
    const open = turn({ room: { width: undefined } });
    expect(open).toMatchObject({ verdict: 'unknown', missing: { property: 'width', of: 'room' } });
    expect(turn({ room: { width: undefined }, walkway: { atTurn: given(48 * INCH) } }).verdict).toBe('pass');
    const endless = turn({ room: { seating: undefined, depth: undefined } });
    expect(endless).toMatchObject({ verdict: 'unknown', missing: { property: 'after-turn' } });
    expect(turn({ booth: { placements: [] } })).toMatchObject({ verdict: 'unknown', missing: { property: 'place' } });
  });

  it('a counter against the back wall leaves no way before the turn', () => {
    const finding = turn({ before: 0, end: 50 });
    expect(finding).toMatchObject({ verdict: 'fail', measured: 0 });
    expect(finding.message).toContain('0 in wide before the turn');
  });

  it('asks nothing of a walkway that does not turn', () => {
    expect(findingsOf(plan({ walkway: { turns: false } }), 'walkway-turn')).toEqual([]);
  });

  it('in England the figure is a borrowed one, and the file may set its own', () => {
    expect(turn({ booth: { limits: 'uk' } }).assumptions.join()).toContain('no UK figure was read');
    const overrides = [{ check: 'walkway-turn', value: 1000, reason: 'agreed with the warden', origin: nowhere }];
    expect(turn({ end: 40, booth: { overrides } })).toMatchObject({
      verdict: 'pass',
      source: 'the file’s own limit: agreed with the warden',
    });
  });
});

describe('walkway-turn: what a reader is told', () => {
  const tell = (...args: Parameters<typeof plan>) => told(plan(...args), 'walkway-turn');

  it('where there is room to turn', () => {
    expect(tell({})).toMatchInlineSnapshot(`
      "pass, walkway Round
      Round has room to turn round the booth’s end: 42 in before the turn, 48 in at the turn, 42 in after the turn.
      = 42 in before the turn, 48 in at the turn, 42 in after the turn
      : 1066.8 against 1066.8 mm, margin 0
      at walkways.Round, by 2010 ADA Standards 403.5.2"
    `);
    expect(tell({ deep: 60, end: 40 })).toMatchInlineSnapshot(`
      "pass, walkway Round
      Round turns round something 60 in wide: the rule for turns is for less than 48 in.
      at walkways.Round, by 2010 ADA Standards 403.5.2"
    `);
  });

  it('where there is not, before, at or after it', () => {
    expect(tell({ before: 36 })).toMatchInlineSnapshot(`
      "fail, walkway Round
      Round is 36 in wide before the turn; a wheelchair that turns back round something 40 in wide needs 42 in there. Widen it by 6 in, or make it 60 in at the turn.
      = 36 in before the turn, 48 in at the turn, 42 in after the turn
      : 914.4 against 1066.8 mm, margin -152.4
      at walkways.Round, by 2010 ADA Standards 403.5.2"
    `);
    expect(tell({ end: 40 })).toMatchInlineSnapshot(`
      "fail, walkway Round
      Round is 40 in wide at the turn (the right wall); a wheelchair that turns back round something 40 in wide needs 48 in there. Widen it by 8 in, or make it 60 in at the turn.
      = 42 in before the turn, 40 in at the turn, 42 in after the turn
      : 1016 against 1219.2 mm, margin -203.2
      at walkways.Round, by 2010 ADA Standards 403.5.2"
    `);
    expect(tell({ after: 36 })).toMatchInlineSnapshot(`
      "fail, walkway Round
      Round is 36 in wide after the turn (the nearest row of seats); a wheelchair that turns back round something 40 in wide needs 42 in there. Widen it by 6 in, or make it 60 in at the turn.
      = 42 in before the turn, 48 in at the turn, 36 in after the turn
      : 914.4 against 1066.8 mm, margin -152.4
      at walkways.Round, by 2010 ADA Standards 403.5.2"
    `);
  });

  it('where the file says what narrows it', () => {
    expect(tell({ walkway: { atTurn: given(40 * INCH) } })).toMatchInlineSnapshot(`
      "fail, walkway Round
      Round is 40 in wide at the turn (what the file says narrows it); a wheelchair that turns back round something 40 in wide needs 48 in there. Widen it by 8 in, or make it 60 in at the turn.
      = 42 in before the turn, 40 in at the turn, 42 in after the turn
      : 1016 against 1219.2 mm, margin -203.2
      at walkways.Round, by 2010 ADA Standards 403.5.2"
    `);
  });

  it('where something is missing', () => {
    expect(tell({ room: { width: undefined } })).toMatchInlineSnapshot(`
      "unknown, walkway Round
      Cannot say whether there is room to turn on Round. Add \`width\` to room, such as \`width 40ft\`.
      at walkways.Round, by 2010 ADA Standards 403.5.2
      ask width of room, as width 40ft, at room"
    `);
    expect(tell({ room: { seating: undefined } })).toMatchInlineSnapshot(`
      "pass, walkway Round
      Round has room to turn round the booth’s end: 42 in before the turn, 48 in at the turn, 58 ft 9 3/8 in after the turn.
      = 42 in before the turn, 48 in at the turn, 58 ft 9 3/8 in after the turn
      : 1066.8 against 1066.8 mm, margin 0
      at walkways.Round, by 2010 ADA Standards 403.5.2"
    `);
  });

  it('where it is 60 in wide at the turn', () => {
    expect(tell({ before: 36, after: 36, end: 60 })).toMatchInlineSnapshot(`
      "pass, walkway Round
      Round has room to turn round the booth’s end: 36 in before the turn, 60 in at the turn, 36 in after the turn.
      = 36 in before the turn, 60 in at the turn, 36 in after the turn
      : 1524 against 1524 mm, margin 0
      at walkways.Round, by 2010 ADA Standards 403.5.2"
    `);
    // With lanes wide enough the wide end is what the finding is measured by all the same.
    expect(tell({ before: 50, after: 50, end: 70 })).toMatchInlineSnapshot(`
      "pass, walkway Round
      Round has room to turn round the booth’s end: 50 in before the turn, 70 in at the turn, 50 in after the turn.
      = 50 in before the turn, 70 in at the turn, 50 in after the turn
      : 1778 against 1524 mm, margin 254
      at walkways.Round, by 2010 ADA Standards 403.5.2"
    `);
  });

  it('where no lane is left before it', () => {
    expect(tell({ before: 0, end: 50 })).toMatchInlineSnapshot(`
      "fail, walkway Round
      Round is 0 in wide before the turn; a wheelchair that turns back round it needs 42 in there. Widen it by 42 in, or make it 60 in at the turn.
      = 0 in before the turn
      : 0 against 1066.8 mm, margin -1066.8
      at walkways.Round, by 2010 ADA Standards 403.5.2"
    `);
  });

  it('where the lane after it is not known, nor the end', () => {
    expect(tell({ room: { seating: undefined, depth: undefined } })).toMatchInlineSnapshot(`
      "unknown, walkway Round
      Cannot say whether there is room to turn on Round. Add \`after-turn\` to walkway Round, such as \`after-turn 42in\`.
      at walkways.Round, by 2010 ADA Standards 403.5.2
      ask after-turn of walkway Round, as after-turn 42in, at walkways.Round"
    `);
    expect(tell({ room: { seating: undefined, depth: undefined }, before: 36 })).toMatchInlineSnapshot(`
      "fail, walkway Round
      Round is 36 in wide before the turn; a wheelchair that turns back round something 40 in wide needs 42 in there. Widen it by 6 in, or make it 60 in at the turn.
      = 36 in before the turn, 48 in at the turn
      : 914.4 against 1066.8 mm, margin -152.4
      at walkways.Round, by 2010 ADA Standards 403.5.2"
    `);
    expect(tell({ booth: { room: undefined } })).toMatchInlineSnapshot(`
      "unknown, walkway Round
      Cannot say whether there is room to turn on Round. Add \`at-turn\` to walkway Round, such as \`at-turn 48in\`.
      at walkways.Round, by 2010 ADA Standards 403.5.2
      ask at-turn of walkway Round, as at-turn 48in, at walkways.Round"
    `);
    expect(tell({ room: { width: undefined }, booth: { placements: [aPlacement(['Counter'], 0, 36 * INCH)] } }))
      .toMatchInlineSnapshot(`
      "unknown, walkway Round
      Cannot say whether there is room to turn on Round. Add \`width\` to room, such as \`width 40ft\`.
      at walkways.Round, by 2010 ADA Standards 403.5.2
      ask width of room, as width 40ft, at room"
    `);
    expect(tell({ room: { width: undefined }, walkway: { atTurn: given(44 * INCH) } })).toMatchInlineSnapshot(`
      "fail, walkway Round
      Round is 44 in wide at the turn (what the file says narrows it); a wheelchair that turns back round something 40 in wide needs 48 in there. Widen it by 4 in, or make it 60 in at the turn.
      = 42 in before the turn, 44 in at the turn, 42 in after the turn
      : 1117.6 against 1219.2 mm, margin -101.6
      at walkways.Round, by 2010 ADA Standards 403.5.2"
    `);
    expect(tell({ booth: { placements: [] } })).toMatchInlineSnapshot(`
      "unknown, walkway Round
      Cannot say whether there is room to turn on Round. Add \`place\` to the file, for Counter, such as \`place Counter at 14ft, 6ft\`.
      at walkways.Round, by 2010 ADA Standards 403.5.2
      ask place of the file, for Counter, as place Counter at 14ft, 6ft, at desks.Counter"
    `);
  });

  it('where the limit is the file’s own, or a borrowed one', () => {
    const overrides = [{ check: 'walkway-turn', value: 1000, reason: 'agreed with the warden', origin: nowhere }];
    expect(tell({ end: 36, booth: { overrides } })).toMatchInlineSnapshot(`
      "fail, walkway Round
      Round is 36 in wide at the turn (the right wall); a wheelchair that turns back round something 40 in wide needs 39 3/8 in there. Widen it by 3 3/8 in, or make it 60 in at the turn.
      = 42 in before the turn, 36 in at the turn, 42 in after the turn
      : 914.4 against 1000 mm, margin -85.6
      at walkways.Round, by the file’s own limit: agreed with the warden
      see overrides.0: the file’s own limit: agreed with the warden"
    `);
    expect(tell({ end: 40, booth: { limits: 'uk' } })).toMatchInlineSnapshot(`
      "fail, walkway Round
      Round is 40 in wide at the turn (the right wall); a wheelchair that turns back round something 40 in wide needs 48 in there. Widen it by 8 in, or make it 60 in at the turn.
      = 42 in before the turn, 40 in at the turn, 42 in after the turn
      : 1016 against 1219.2 mm, margin -203.2
      at walkways.Round, by 2010 ADA Standards 403.5.2
      granted no UK figure was read for this: the US figure stands in"
    `);
  });

  it('where the file says a narrower lane after it', () => {
    expect(tell({ walkway: { afterTurn: given(40 * INCH) } })).toMatchInlineSnapshot(`
      "fail, walkway Round
      Round is 40 in wide after the turn (what the file says narrows it); a wheelchair that turns back round something 40 in wide needs 42 in there. Widen it by 2 in, or make it 60 in at the turn.
      = 42 in before the turn, 48 in at the turn, 40 in after the turn
      : 1016 against 1066.8 mm, margin -50.8
      at walkways.Round, by 2010 ADA Standards 403.5.2"
    `);
    expect(tell({ after: 40, walkway: { afterTurn: given(41 * INCH) } })).toMatchInlineSnapshot(`
      "fail, walkway Round
      Round is 40 in wide after the turn (the nearest row of seats); a wheelchair that turns back round something 40 in wide needs 42 in there. Widen it by 2 in, or make it 60 in at the turn.
      = 42 in before the turn, 48 in at the turn, 40 in after the turn
      : 1016 against 1066.8 mm, margin -50.8
      at walkways.Round, by 2010 ADA Standards 403.5.2"
    `);
  });
});
