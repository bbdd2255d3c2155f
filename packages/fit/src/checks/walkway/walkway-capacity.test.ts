import { describe, expect, it } from 'vitest';
import type { Booth, LimitProfile, Room, Walkway } from '../../booth.js';
import { aBooth, aDesk, aPlacement, aRoom, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aWalkway } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';
import { told } from '../../testing/told.js';

/** A walkway of a given clear width behind a desk. */
function way(
  clear: number,
  people: number | undefined,
  limits: LimitProfile = 'us',
  room: Partial<Room> = {},
  walkway: Partial<Walkway> = {},
  parts: Partial<Booth> = {},
): Booth {
  return aBooth({
    limits,
    room: aRoom(10_000, 20_000, room),
    desks: [aDesk('Left', 1000)],
    placements: [aPlacement(['Left'], 3000, clear)],
    walkways: [
      aWalkway('Behind', ['booth', 'back-wall'], {
        ...(people !== undefined && { serves: given(people) }),
        ...walkway,
      }),
    ],
    ...parts,
  });
}

const capacity = (...args: Parameters<typeof way>) => findingOf(way(...args), 'walkway-capacity');
const both = { sprinklers: true, voiceAlarm: true };

describe('walkway-capacity: clear width against people × width for each', () => {
  it.each<[string, LimitProfile, Partial<Room>, number, number]>([
    [outside('IBC 2018 1005.3.2', 'W10: 300 people, no sprinklers: 60 in'), 'us', {}, 300, 60 * INCH],
    [outside('IBC 2018 1005.3.2', 'W10: with sprinklers and a voice alarm: 45 in'), 'us', both, 300, 45 * INCH],
    ['sprinklers alone change nothing', 'us', { sprinklers: true }, 300, 60 * INCH],
    ['a voice alarm alone changes nothing', 'us', { voiceAlarm: true }, 300, 60 * INCH],
    [outside('New York City Building Code 2022', 'W9: 100 people: 20 in'), 'us', {}, 100, 20 * INCH],
    [outside('IBC 2018 1005.3.2', 'W11: 36 in serve 180'), 'us', {}, 180, 36 * INCH],
    [outside('IBC 2018 1005.3.2', 'W11: 44 in serve 220'), 'us', {}, 220, 44 * INCH],
    ['generic is as us', 'generic', {}, 300, 60 * INCH],
    [
      outside(
        'Approved Document B vol. 2 (England), in secondary sources',
        'W15: 1000 mm serve 110, by the row for 850',
      ),
      'uk',
      {},
      110,
      850,
    ],
    [
      outside(
        'Approved Document B vol. 2 (England), in secondary sources',
        'W15: 1100 mm serve 220, by the row for 1050',
      ),
      'uk',
      {},
      220,
      1050,
    ],
    [
      outside('Approved Document B vol. 2 (England), in secondary sources', 'W15: 1200 mm serve 240'),
      'uk',
      {},
      240,
      1200,
    ],
    [
      outside('Approved Document B vol. 2 (England), in secondary sources', 'W16: 165 people need 1050 mm'),
      'uk',
      {},
      165,
      1050,
    ],
    ['England has no exception for sprinklers', 'uk', both, 240, 1200],
  ])('%s', (_, limits, room, people, need) => {
    expect(capacity(3000, people, limits, room).limit).toBeCloseTo(need, 6);
    expect(capacity(need, people, limits, room).verdict).toBe('pass');
    expect(capacity(need - 1.5, people, limits, room).verdict).toBe('fail');
  });

  it(outside('IBC 2018 1005.3.2', 'W11: 44 in serve 293 with sprinklers and a voice alarm'), () => {
    expect(capacity(44 * INCH, 293, 'us', both).verdict).toBe('pass');
    expect(capacity(44 * INCH, 294, 'us', both).margin).toBeCloseTo((44 - 44.1) * INCH, 6);
  });

  it('W15: widths are not interpolated: 1000 mm do not serve 111, nor 1100 mm 221', () => {
    expect(capacity(1000, 111, 'uk')).toMatchObject({ verdict: 'fail', limit: 1050 });
    expect(capacity(1100, 221, 'uk')).toMatchObject({ verdict: 'fail', limit: 1105 });
  });

  it('shows the product, and says why sprinklers alone do not help', () => {
    const finding = capacity(1143, 300, 'us', { sprinklers: true }, {}, { show: 'in' });
    expect(finding.terms).toBe('300 people × 0.2 in = 60 in');
    expect(finding.message).toContain('Widen it by 15 in');
    expect(finding.message).toContain('Sprinklers alone do not lower the figure');
    expect(capacity(1143, 300, 'us', {}).terms).toBe('300 people × 5.1 mm = 1524 mm');
    expect(capacity(900, 100, 'uk').terms).toBe('100 people: 850 mm by the table');
  });

  it('counts what people at the desk take', () => {
    const seated = capacity(
      2000,
      300,
      'us',
      {},
      {},
      {
        seats: [{ kind: 'stool', name: 'Tall', origin: nowhere }],
        workstations: [
          {
            name: 'Sound',
            origin: nowhere,
            desk: { name: 'Left', origin: nowhere },
            seat: { name: 'Tall', origin: nowhere },
            people: [],
            postures: given(['sit']),
            task: given('controls'),
            working: given(0),
            lean: given(0),
            screens: [],
            controls: [],
          },
        ],
      },
    );
    expect(seated.measured).toBeCloseTo(2000 - 19 * INCH, 6);
    expect(seated.verdict).toBe('fail');
  });

  it('the file’s own limit counts, with its reason', () => {
    const overrides = [{ check: 'walkway-capacity', value: 900, reason: 'two more ways out', origin: nowhere }];
    expect(capacity(950, 300, 'us', {}, {}, { overrides })).toMatchObject({
      verdict: 'pass',
      limit: 900,
      source: 'the file’s own limit: two more ways out',
    });
  });

  it('asks how many people, but not of a way for operators', () => {
    expect(capacity(950, undefined)).toMatchObject({ verdict: 'unknown', missing: { property: 'serves' } });
    const operators = way(950, undefined, 'us', {}, { users: given('operators') });
    expect(findingsOf(operators, 'walkway-capacity')).toEqual([]);
    expect(capacity(950, 60, 'us', {}, {}, { placements: [] })).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'place' },
    });
  });

  it('defers to officials', () => {
    expect(capacity(950, 100).caution).toContain('fire official');
  });
});

describe('walkway-capacity: what a reader is told', () => {
  const tell = (...args: Parameters<typeof way>) => told(way(...args), 'walkway-capacity');

  it('where it is wide enough, and not', () => {
    expect(tell(1500, 200)).toMatchInlineSnapshot(`
      "pass, walkway Behind
      Behind keeps 1500 mm clear; 200 people need 1016 mm.
      = 200 people × 5.1 mm = 1016 mm
      : 1500 against 1016 mm, margin 484
      at walkways.Behind.serves, by IBC 2018/2021 1005.3.2"
    `);
    expect(tell(1000, 300)).toMatchInlineSnapshot(`
      "fail, walkway Behind
      Behind keeps 1000 mm clear, but 300 people need 1524 mm: they would queue on their way out. Widen it by 524 mm, or give some of them another way.
      = 300 people × 5.1 mm = 1524 mm
      : 1000 against 1524 mm, margin -524
      at walkways.Behind.serves, by IBC 2018/2021 1005.3.2
      weigh Move the booth 525 mm away from the back wall | placements.0.at := 3000mm, 1525mm"
    `);
    expect(tell(1000, 300, 'uk')).toMatchInlineSnapshot(`
      "fail, walkway Behind
      Behind keeps 1000 mm clear, but 300 people need 1500 mm: they would queue on their way out. Widen it by 500 mm, or give some of them another way.
      = 300 people × 5 mm = 1500 mm
      : 1000 against 1500 mm, margin -500
      at walkways.Behind.serves, by Approved Document B vol. 2 (England), table of exit widths
      weigh Move the booth 500 mm away from the back wall | placements.0.at := 3000mm, 1500mm"
    `);
  });

  it('where sprinklers, or a voice alarm, do not help alone', () => {
    expect(tell(1000, 300, 'us', { sprinklers: true })).toMatchInlineSnapshot(`
      "fail, walkway Behind
      Behind keeps 1000 mm clear, but 300 people need 1524 mm: they would queue on their way out. Widen it by 524 mm, or give some of them another way. Sprinklers alone do not lower the figure: it takes a voice alarm too.
      = 300 people × 5.1 mm = 1524 mm
      : 1000 against 1524 mm, margin -524
      at walkways.Behind.serves, by IBC 2018/2021 1005.3.2
      weigh Move the booth 525 mm away from the back wall | placements.0.at := 3000mm, 1525mm"
    `);
    expect(tell(1000, 300, 'us', { voiceAlarm: true })).toMatchInlineSnapshot(`
      "fail, walkway Behind
      Behind keeps 1000 mm clear, but 300 people need 1524 mm: they would queue on their way out. Widen it by 524 mm, or give some of them another way. A voice alarm alone does not lower the figure: it takes sprinklers too.
      = 300 people × 5.1 mm = 1524 mm
      : 1000 against 1524 mm, margin -524
      at walkways.Behind.serves, by IBC 2018/2021 1005.3.2
      weigh Move the booth 525 mm away from the back wall | placements.0.at := 3000mm, 1525mm"
    `);
    expect(tell(1500, 300, 'us', both)).toMatchInlineSnapshot(`
      "pass, walkway Behind
      Behind keeps 1500 mm clear; 300 people need 1143 mm.
      = 300 people × 3.8 mm = 1143 mm
      : 1500 against 1143 mm, margin 357
      at walkways.Behind.serves, by IBC 2018/2021 1005.3.2, exception for sprinklers and voice alarm"
    `);
  });

  it('where something is missing', () => {
    expect(tell(1500, undefined)).toMatchInlineSnapshot(`
      "unknown, walkway Behind
      Cannot say whether Behind is wide enough for its people. Add \`serves\` to walkway Behind, such as \`serves 60\`.
      at walkways.Behind, by IBC 2018/2021 1005.3.2
      ask serves of walkway Behind, as serves 60, at walkways.Behind"
    `);
    expect(tell(1500, 200, 'us', {}, {}, { placements: [] })).toMatchInlineSnapshot(`
      "unknown, walkway Behind
      Cannot say whether Behind is wide enough for its people. Add \`place\` to the file, for Left, such as \`place Left at 4.3m, 1830mm\`.
      at walkways.Behind, by IBC 2018/2021 1005.3.2
      ask place of the file, for Left, as place Left at 4.3m, 1830mm, at desks.Left"
    `);
  });

  it('where the file has a limit of its own', () => {
    expect(
      tell(
        1500,
        200,
        'us',
        {},
        {},
        { overrides: [{ check: 'walkway-capacity', value: 1400, reason: 'the warden says so', origin: nowhere }] },
      ),
    ).toMatchInlineSnapshot(`
      "pass, walkway Behind
      Behind keeps 1500 mm clear; the file’s own least is 1400 mm.
      : 1500 against 1400 mm, margin 100
      at walkways.Behind.serves, by the file’s own limit: the warden says so
      see overrides.0: the file’s own limit: the warden says so"
    `);
    expect(
      tell(
        1300,
        200,
        'us',
        {},
        {},
        { overrides: [{ check: 'walkway-capacity', value: 1400, reason: 'the warden says so', origin: nowhere }] },
      ),
    ).toMatchInlineSnapshot(`
      "fail, walkway Behind
      Behind keeps 1300 mm clear, but the file’s own least is 1400 mm: they would queue on their way out. Widen it by 100 mm, or give some of them another way.
      : 1300 against 1400 mm, margin -100
      at walkways.Behind.serves, by the file’s own limit: the warden says so
      see overrides.0: the file’s own limit: the warden says so
      weigh Move the booth 100 mm away from the back wall | placements.0.at := 3000mm, 1400mm"
    `);
  });

  it('where the figure is borrowed, or the way is for operators, of whom the file says how many', () => {
    expect(tell(1500, 100, 'us', {}, { users: given('operators') })).toMatchInlineSnapshot(`
      "pass, walkway Behind
      Behind keeps 1500 mm clear; 100 people need 508 mm.
      = 100 people × 5.1 mm = 508 mm
      : 1500 against 508 mm, margin 992
      at walkways.Behind.serves, by IBC 2018/2021 1005.3.2"
    `);
    expect(tell(700, 60, 'uk', { sprinklers: true })).toMatchInlineSnapshot(`
      "fail, walkway Behind
      Behind keeps 700 mm clear, but 60 people need 750 mm: they would queue on their way out. Widen it by 50 mm, or give some of them another way.
      = 60 people: 750 mm by the table
      : 700 against 750 mm, margin -50
      at walkways.Behind.serves, by Approved Document B vol. 2 (England), table of exit widths
      weigh Move the booth 50 mm away from the back wall | placements.0.at := 3000mm, 750mm"
    `);
    expect(tell(1500, 300, 'us', both, {}, { show: 'in' })).toMatchInlineSnapshot(`
      "pass, walkway Behind
      Behind keeps 59 in clear; 300 people need 45 in.
      = 300 people × 0.15 in = 45 in
      : 1500 against 1143 mm, margin 357
      at walkways.Behind.serves, by IBC 2018/2021 1005.3.2, exception for sprinklers and voice alarm"
    `);
  });
});
