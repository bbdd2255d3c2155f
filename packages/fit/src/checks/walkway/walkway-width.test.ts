import { describe, expect, it } from 'vitest';
import type { Booth, LimitProfile, Walkway } from '../../booth.js';
import { aDesk, anOperator, aPlacement, aRoom, aSeat, aStation, given, nowhere, fixed } from '../../testing/booths.js';
import { aColumn, aMonitorOf, aPlatform, aRack, aScreenAt, aWalkway, aWheelchairSpace } from '../../testing/floor.js';
import { findingOf } from '../../testing/findings.js';
import { bare, behind } from '../../testing/walkways.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';

const width = (booth: Booth) => findingOf(booth, 'walkway-width');

describe('walkway-width: what is left after desks and people who sit', () => {
  it('a desk 27 in deep, its near edge 62 in from the wall, with occupied stools: 62 − 19 = 43 in', () => {
    const finding = width(behind(62 * INCH));
    expect(finding).toMatchObject({ verdict: 'pass', source: 'IBC 2021 1030.9.1 and 2010 ADA Standards 403.5.1' });
    expect(finding.measured).toBeCloseTo(43 * INCH, 6);
    expect(finding.limit).toBeCloseTo(36 * INCH, 6);
    expect(finding.terms).toBe('62 in from Left to the back wall − 19 in occupied seat − 0 in obstacles = 43 in');
  });

  it('a desk where people only stand leaves all 62 in', () => {
    const stations = [aStation('Sound', 'Left', undefined, ['Noor'])];
    expect(width(behind(62 * INCH, {}, { workstations: stations })).measured).toBeCloseTo(62 * INCH, 6);
  });

  it('the far side of the same desk loses nothing to a seat', () => {
    const stage = { origin: nowhere, edge: given(62 * INCH + 27 * INCH + 900) };
    const booth = behind(62 * INCH, aWalkway('Behind', ['booth', 'stage']), {
      room: aRoom(10_000, 20_000, { stage }),
    });
    expect(width(booth).measured).toBeCloseTo(900, 6);
  });

  it(
    outside('IBC 2009 1017.4', 'W1: 19 in of chair on both sides of an accessway of 12 in: 50 in from table to table'),
    () => {
      const booth = behind(0, aWalkway('Between', ['Left', 'Right'], { serves: given(20) }), {
        desks: [aDesk('Left', 740), aDesk('Right', 740)],
        operators: [anOperator('Noor', { stature: 1630 }), anOperator('Tobias', { stature: 1850 })],
        workstations: [aStation('Sound', 'Left', 'Tall', ['Noor']), aStation('Words', 'Right', 'Tall', ['Tobias'])],
        placements: [
          aPlacement(['Left'], 3000, 3000 + 50 * INCH),
          // Turned about: its operator faces the back wall, and its near left corner is the one farthest right.
          aPlacement(['Right'], 4500, 3000, 180),
        ],
      });
      const finding = width(booth);
      expect(finding.measured).toBeCloseTo(12 * INCH, 6);
      expect(finding.terms).toContain('50 in from Left to Right − 38 in occupied seat');
    },
  );

  it.each([
    ['36 in', 55, 36],
    ['42 in', 61, 42],
    ['44 in', 63, 44],
  ])('W2: an aisle of %s behind chairs takes %d in from desk edge to wall', (_, edge, aisle) => {
    const overrides = [
      { check: 'walkway-width', value: aisle * INCH, reason: `an aisle of ${aisle} in is wanted`, origin: nowhere },
    ];
    expect(width(behind(edge * INCH, {}, { overrides }))).toMatchObject({ verdict: 'pass' });
    expect(width(behind((edge - 0.25) * INCH, {}, { overrides }))).toMatchObject({ verdict: 'fail' });
  });

  it('allows 1 mm and no more', () => {
    expect(width(behind(55 * INCH - 1)).verdict).toBe('pass');
    expect(width(behind(55 * INCH - 1.1)).verdict).toBe('fail');
  });
});

describe('walkway-width: the published least width', () => {
  it.each<[string, LimitProfile, Partial<Walkway>, number]>([
    [
      outside('IBC/IFC 2018 1029.9.1', 'W8: 60 people, seats on both sides: 42 in'),
      'us',
      { serves: given(60), seats: given('both-sides') },
      42 * INCH,
    ],
    [
      outside('IBC/IFC 2018 1029.9.1', 'W8: 49 people, seats on both sides: 36 in'),
      'us',
      { serves: given(49), seats: given('both-sides') },
      36 * INCH,
    ],
    ['50 people, seats on both sides', 'us', { serves: given(50), seats: given('both-sides') }, 42 * INCH],
    ['50 people', 'us', { serves: given(50) }, 36 * INCH],
    ['51 people', 'us', { serves: given(51) }, 42 * INCH],
    ['nobody says how many', 'us', { serves: undefined }, 36 * INCH],
    ['nobody says how many, seats on both sides', 'us', { serves: undefined, seats: given('both-sides') }, 42 * INCH],
    [outside('OSHA 29 CFR 1910.36(g)(2)', 'exit access of 28 in'), 'us', { users: given('operators') }, 28 * INCH],
    ['generic is as us', 'generic', { serves: given(51) }, 42 * INCH],
    [
      outside('Approved Document B vol. 2 (England), in secondary sources', '60 people: 750 mm'),
      'uk',
      { serves: given(60) },
      750,
    ],
    ['61 people in England', 'uk', { serves: given(61) }, 850],
    [
      outside('Approved Document B vol. 2 (England), in secondary sources', '110 people: 850 mm'),
      'uk',
      { serves: given(110) },
      850,
    ],
    [
      outside('Approved Document B vol. 2 (England), in secondary sources', '220 people: 1050 mm'),
      'uk',
      { serves: given(220) },
      1050,
    ],
    ['240 people in England', 'uk', { serves: given(240) }, 1200],
    ['operators in England', 'uk', { users: given('operators') }, 28 * INCH],
  ])('%s', (_, limits, walkway, least) => {
    expect(width(behind(3000, walkway, { limits })).limit).toBeCloseTo(least, 6);
    const edge = 19 * INCH + least;
    expect(width(behind(edge, walkway, { limits })).verdict).toBe('pass');
    expect(width(behind(edge - 2, walkway, { limits })).verdict).toBe('fail');
  });

  it('W8: 762 mm for 14 seats is for ways that need not be accessible: the file must say so itself', () => {
    const walkway: Partial<Walkway> = { serves: given(14), seats: given('both-sides') };
    expect(width(behind(3000, walkway)).limit).toBeCloseTo(36 * INCH, 6);
    const reason = 'fewer than 15 seats, and not an accessible route';
    const overrides = [{ check: 'walkway-width', value: 762, reason, origin: nowhere }];
    const finding = width(behind(19 * INCH + 762, walkway, { overrides }));
    expect(finding).toMatchObject({ verdict: 'pass', limit: 762, source: `the file’s own limit: ${reason}` });
    expect(finding.message).toContain('the file’s own 30 in');
  });

  it('a room that keeps a wheelchair space asks for 900 mm in England', () => {
    const room = aRoom(10_000, 20_000, { wheelchairSpaces: [aWheelchairSpace('RowA', 8000, 10_000)] });
    expect(width(behind(3000, { serves: given(20) }, { limits: 'uk', room })).limit).toBe(900);
    expect(width(behind(3000, { serves: given(200) }, { limits: 'uk', room })).limit).toBe(1050);
  });

  it('England needs the number of people, and says so', () => {
    const finding = width(behind(3000, { serves: undefined }, { limits: 'uk' }));
    expect(finding).toMatchObject({ verdict: 'unknown', missing: { property: 'serves', of: 'walkway Behind' } });
  });

  it('states what it took for granted and that others decide', () => {
    const finding = width(behind(3000, { serves: undefined }));
    expect(finding.assumptions).toEqual(['Behind serves at most 50 people']);
    expect(finding.caution).toContain('fire official');
    const operators = width(behind(3000, { users: given('operators') }, { limits: 'uk' }));
    expect(operators.assumptions.join()).toContain('no UK figure was read');
  });
});

describe('walkway-width: booths of every shape', () => {
  it('an L: the arm that comes back towards the wall is what counts', () => {
    // Front desk 700 deep at y 3000. The arm faces right: 700 wide (x 4500 to 5200), 1500 long, from y 3500 down to 2000.
    const placements = [aPlacement(['Front'], 3000, 3000), aPlacement(['Arm'], 4500, 3500, 90)];
    const booth = bare(placements, aWalkway('Behind', ['booth', 'back-wall']));
    const finding = width(booth);
    expect(finding.measured).toBeCloseTo(2000, 6);
    expect(finding.terms).toContain('from Arm to the back wall');
    // From the arm's far edge at x 5200 to the right wall at 10 000.
    expect(width({ ...booth, walkways: [aWalkway('Right', ['booth', 'right-wall'])] }).measured).toBeCloseTo(4800, 6);
  });

  it('a U: between its arms, and between each arm and its wall', () => {
    // The left arm faces left: its near edge at x 3000, its body x 2300 to 3000; the right arm's body x 4500 to 5200.
    const placements = [
      aPlacement(['Front'], 3000, 3000),
      aPlacement(['LeftArm'], 3000, 2000, -90),
      aPlacement(['RightArm'], 4500, 3500, 90),
    ];
    const inside = bare(placements, aWalkway('Inside', ['LeftArm', 'RightArm'], { users: given('operators') }));
    expect(width(inside).measured).toBeCloseTo(1500, 6);
    const left = { ...inside, walkways: [aWalkway('Left', ['booth', 'left-wall'])] };
    expect(width(left).measured).toBeCloseTo(2300, 6);
    expect(width(left).terms).toContain('LeftArm');
  });

  it('a U with people at both arms: 1500 − 2 × 483', () => {
    const placements = [aPlacement(['LeftArm'], 3000, 2000, -90), aPlacement(['RightArm'], 4500, 3500, 90)];
    const booth = bare(placements, aWalkway('Inside', ['LeftArm', 'RightArm'], { users: given('operators') }), {
      operators: [anOperator('Noor', { stature: 1630 })],
      seats: [aSeat('Tall', 700)],
      workstations: [aStation('A', 'LeftArm', 'Tall', ['Noor']), aStation('B', 'RightArm', 'Tall', ['Noor'])],
    });
    expect(width(booth).measured).toBeCloseTo(1500 - 2 * 19 * INCH, 6);
    expect(width(booth).verdict).toBe('fail');
  });

  it('a desk turned by 30° comes nearest with a corner', () => {
    // Near left corner at (3000, 3000), turned right: the near right corner is 1500 · sin 30° = 750 nearer the wall.
    const booth = bare([aPlacement(['Slanted'], 3000, 3000, 30)], aWalkway('Behind', ['booth', 'back-wall']));
    expect(width(booth).measured).toBeCloseTo(2250, 6);
    // And to the left it is the near left corner itself: turned right, the far left corner stands at 3000 + 700 · sin 30°.
    expect(width({ ...booth, walkways: [aWalkway('Left', ['booth', 'left-wall'])] }).measured).toBeCloseTo(3000, 6);
  });

  it('turned by 45°, an occupied seat reaches back from the slanted edge', () => {
    // The zone's corner is 1500 · sin 45° + 482.6 · cos 45° nearer the wall than the near left corner.
    const booth = bare([aPlacement(['Slanted'], 3000, 4000, 45)], aWalkway('Behind', ['booth', 'back-wall']), {
      operators: [anOperator('Noor', { stature: 1630 })],
      seats: [aSeat('Tall', 700)],
      workstations: [aStation('A', 'Slanted', 'Tall', ['Noor'])],
    });
    expect(width(booth).measured).toBeCloseTo(4000 - (1500 + 19 * INCH) * Math.SQRT1_2, 6);
  });

  it('a rack under a desk is in nobody’s way, a loose one is', () => {
    const placements = [aPlacement(['Front'], 3000, 3000)];
    const tucked = aRack('Power', 12, {
      under: { desk: { name: 'Front', origin: nowhere }, at: given(0), setback: given(-300) },
    });
    const walkway = aWalkway('Behind', ['Front', 'back-wall']);
    expect(width(bare(placements, walkway, { racks: [tucked] })).measured).toBeCloseTo(3000, 6);
    const loose = bare([...placements], walkway, { racks: [aRack('Loose', 12)] });
    const placed = { ...loose, placements: [...placements, aPlacement(['Loose'], 3200, 0)] };
    expect(width(placed)).toMatchObject({ measured: 2500 });
    expect(width(placed).message).toContain('Loose stands in the way');
  });
});

describe('walkway-width: what stands in the way', () => {
  const placements = [aPlacement(['Front'], 3000, 2000)];
  const walkway = aWalkway('Behind', ['booth', 'back-wall']);
  const withColumn = (...columns: ReturnType<typeof aColumn>[]) =>
    width(bare(placements, walkway, { room: aRoom(10_000, 20_000, { columns }) }));

  it('a column leaves the wider of the two gaps beside it', () => {
    expect(withColumn(aColumn('C', 3500, 700, 400, 400)).measured).toBeCloseTo(900, 6);
    expect(withColumn(aColumn('C', 3500, 1000, 400, 400)).measured).toBeCloseTo(1000, 6);
    expect(withColumn(aColumn('C', 3500, 0, 400, 400)).measured).toBeCloseTo(1600, 6);
    expect(withColumn(aColumn('C', 3500, 700, 400, 400)).terms).toContain('1100 mm obstacles = 900 mm');
  });

  it('the tightest of several columns counts', () => {
    const finding = withColumn(aColumn('A', 3100, 0, 100, 900), aColumn('B', 4000, 700, 400, 400));
    expect(finding.measured).toBeCloseTo(900, 6);
    expect(finding.message).toContain('B stands in the way');
  });

  it('a column elsewhere in the room does not count', () => {
    expect(withColumn(aColumn('C', 9000, 700, 400, 400)).measured).toBeCloseTo(2000, 6);
    expect(withColumn(aColumn('C', 3500, 6000, 400, 400)).measured).toBeCloseTo(2000, 6);
  });

  it('a walkway does not run through a wheelchair space', () => {
    const room = aRoom(10_000, 20_000, { wheelchairSpaces: [aWheelchairSpace('RowA', 3500, 0)] });
    expect(width(bare(placements, walkway, { room }))).toMatchObject({ measured: 780, verdict: 'fail' });
  });

  it('the public walks round a platform, operators walk on it', () => {
    const riser = aPlatform('Riser', 200, { at: given({ x: 2500, y: 1100 }), width: given(2500), depth: given(2000) });
    const on = (users: 'public' | 'operators', height = 200) =>
      width(
        bare(placements, { ...walkway, users: given(users) }, { platforms: [{ ...riser, height: given(height) }] }),
      );
    expect(on('public').measured).toBeCloseTo(1100, 6);
    expect(on('public').terms).toContain('from Riser to the back wall');
    expect(on('operators').measured).toBeCloseTo(2000, 6);
    expect(on('public', 10).measured).toBeCloseTo(2000, 6);
  });

  it('what the file names as a projection is taken off', () => {
    const reach = { origin: nowhere, height: given(1200), reach: given(150) };
    expect(width(bare(placements, { ...walkway, projections: [reach] })).measured).toBeCloseTo(1850, 6);
    const above = { ...reach, height: given(2100) };
    expect(width(bare(placements, { ...walkway, projections: [above] })).measured).toBeCloseTo(2000, 6);
  });

  it('a screen that stands out over the far edge narrows the way there, unless it hangs above heads', () => {
    const stage = { origin: nowhere, edge: given(2000 + 700 + 1200) };
    const front = aWalkway('Front', ['booth', 'stage'], { serves: given(20) });
    const screens = (height: number) => {
      const screen = aScreenAt('Cues', 750, 1000, {
        height: { line: 'bottom', over: 'floor', distance: fixed(height) },
      });
      return bare(placements, front, {
        room: aRoom(10_000, 20_000, { stage }),
        monitors: [aMonitorOf('Cues', 500, 300)],
        workstations: [aStation('Sound', 'Front', undefined, ['Noor'], { screens: [screen] })],
        operators: [anOperator('Noor', { stature: 1630 })],
      });
    };
    expect(width(screens(1200))).toMatchObject({ verdict: 'fail' });
    expect(width(screens(1200)).measured).toBeCloseTo(900, 6);
    expect(width(screens(1200)).message).toContain('Cues stands in the way');
    expect(width(screens(2100)).measured).toBeCloseTo(1200, 6);
  });
});

describe('walkway-width: what is missing', () => {
  it.each<[string, Partial<Booth>, string]>([
    ['its sides', { walkways: [{ ...aWalkway('Behind', ['booth', 'back-wall']), between: undefined }] }, 'between'],
    ['the desk’s place', { placements: [] }, 'place'],
    ['the room’s width', { room: undefined, walkways: [aWalkway('Side', ['booth', 'right-wall'])] }, 'width'],
    ['the nearest row', { walkways: [aWalkway('Front', ['booth', 'seating'])] }, 'first'],
    ['the stage', { walkways: [aWalkway('Front', ['booth', 'stage'])] }, 'edge'],
    ['the desk’s width', { desks: [aDesk('Left', 1040, { width: undefined })] }, 'width'],
    ['the desk’s depth', { desks: [aDesk('Left', 1040, { depth: undefined })] }, 'depth'],
  ])('asks for %s', (_, parts, property) => {
    const finding = width(behind(2000, {}, parts));
    expect(finding).toMatchObject({ verdict: 'unknown', missing: { property } });
    expect(finding.measured).toBeUndefined();
  });

  it('names the piece that has no place yet', () => {
    expect(width(behind(2000, {}, { placements: [] })).missing).toMatchObject({
      of: 'the file, for Left',
      example: 'place Left at 14ft, 6ft',
    });
    const walkways = [aWalkway('Behind', ['Gone', 'back-wall'])];
    expect(width(behind(2000, {}, { walkways })).missing).toMatchObject({ example: 'place Gone at 14ft, 6ft' });
  });

  it('the nearest row of seats is counted from the front of the booth', () => {
    const seating = { origin: nowhere, first: given(36 * INCH), standing: false };
    const booth = behind(2000, aWalkway('Front', ['booth', 'seating']), { room: aRoom(10_000, 20_000, { seating }) });
    expect(width(booth)).toMatchObject({ verdict: 'pass' });
    expect(width(booth).measured).toBeCloseTo(36 * INCH, 6);
  });
});
