import { describe, expect, it } from 'vitest';
import type { Booth, FloorArea } from '../../booth.js';
import { aBooth, aDesk, anOperator, aPlacement, aRoom, aSeat, aStation, given } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aColumn, aPlatform, aRack, aWheelchairSpace } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';
import { told } from '../../testing/told.js';

/** A desk of 1500 × 700 with its near left corner at (3000, 3000), and one wheelchair space. */
function booth(space: FloorArea, parts: Partial<Booth> = {}): Booth {
  return aBooth({
    room: aRoom(10_000, 20_000, { wheelchairSpaces: [space] }),
    operators: [anOperator('Noor', { stature: 1630 })],
    desks: [aDesk('Left', 1000)],
    seats: [aSeat('Tall', 750)],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'])],
    placements: [aPlacement(['Left'], 3000, 3000)],
    ...parts,
  });
}

const judge = (x: number, y: number, parts?: Partial<Booth>) =>
  findingOf(booth(aWheelchairSpace('RowA', x, y, 900, 1200), parts), 'wheelchair-space');

/** Racks stand 100 from three sides of a space of 900 × 1200; the fourth is free as far as `what` of the room, at `way` from it. */
function leftOpen(side: 'left' | 'right' | 'back' | 'front', what: 'wall' | 'column' | 'space', way: number): Booth {
  const [x, y] = what === 'wall' ? [side === 'left' ? way : 2000, side === 'back' ? way : 2000] : [2000, 2000];
  const beside = { left: [x - 650, y], right: [x + 1000, y], back: [x, y - 600], front: [x, y + 1300] } as const;
  const closed = (['left', 'right', 'back', 'front'] as const).filter((one) => one !== side);
  const beyond = {
    left: [x - way - 100, y],
    right: [x + 900 + way, y],
    back: [x, y - way - 100],
    front: [x, y + 1200 + way],
  };
  const [farX, farY] = beyond[side] as [number, number];
  const wall = what === 'wall';
  return booth(aWheelchairSpace('RowA', x, y, 900, 1200), {
    room: aRoom(wall && side === 'right' ? x + 900 + way : 10_000, wall && side === 'front' ? y + 1200 + way : 20_000, {
      wheelchairSpaces: [
        aWheelchairSpace('RowA', x, y, 900, 1200),
        ...(what === 'space' ? [aWheelchairSpace('RowB', farX, farY, 100, 100)] : []),
      ],
      columns: what === 'column' ? [aColumn('Post', farX, farY, 100, 100)] : [],
    }),
    racks: [...closed, 'Away'].map((one) => aRack(one, 12)),
    placements: [aPlacement(['Away'], 8000, 9000), ...closed.map((one) => aPlacement([one], ...beside[one]))],
  });
}

describe('wheelchair-space: none may be taken', () => {
  it.each([
    ['well away', 7000, 3000, 'pass', undefined],
    ['beside the desk', 4500, 3000, 'pass', undefined],
    ['1 mm is allowed', 4499, 3000, 'pass', undefined],
    ['100 under its right end', 4400, 3000, 'fail', 100],
    ['50 behind its far edge', 3300, 3650, 'fail', 50],
  ])('%s', (_, x, y, verdict, measured) => {
    const finding = judge(x, y);
    expect(finding.verdict).toBe(verdict);
    expect(finding.measured).toBe(measured);
  });

  it(outside('IBC/IFC 2018 1029.13.1', 'a seat at a table takes 19 in behind its edge'), () => {
    const seated = { workstations: [aStation('Sound', 'Left', 'Tall', ['Noor'])] };
    expect(judge(3300, 1500)).toMatchObject({ verdict: 'pass' });
    const finding = judge(3300, 1500, seated);
    expect(finding).toMatchObject({ verdict: 'fail' });
    expect(finding.measured).toBeCloseTo(1500 + 1200 - (3000 - 482.6), 6);
    expect(finding.message).toContain('Whoever sits at Left takes');
  });

  it('platforms and racks take space too', () => {
    const platforms = [aPlatform('Riser', 200, { at: given({ x: 6000, y: 2000 }) })];
    expect(judge(7000, 3000, { platforms }).message).toContain('Riser takes');
    const racks = [aRack('Loose', 12)];
    const placements = [aPlacement(['Loose'], 7100, 3100)];
    expect(judge(7000, 3000, { racks, placements }).message).toContain('Loose takes');
  });

  it('a turned desk takes what its corner reaches', () => {
    // Turned to the left by 45° its far left corner is 700 · cos 45° to the left of (3000, 3000).
    const placements = [aPlacement(['Left'], 3000, 3000, -45)];
    const corner = 3000 - 700 * Math.SQRT1_2;
    expect(judge(corner - 900 + 30, 3000, { placements }).measured).toBeCloseTo(30, 6);
  });

  it('a space that the booth closes in has no way to it', () => {
    // In the back left corner: walls on two sides, the desk 500 to the right, a rack 500 in front.
    const racks = [aRack('Loose', 12)];
    const closed = [aPlacement(['Left'], 1400, 0), aPlacement(['Loose'], 200, 1700)];
    const finding = judge(0, 0, { racks, placements: closed });
    expect(finding.verdict).toBe('fail');
    expect(finding.measured).toBeUndefined();
    expect(finding.message).toContain('Loose');
    expect(finding.message).toContain('No side of the wheelchair space RowA');
    const open = [aPlacement(['Left'], 1400, 0), aPlacement(['Loose'], 200, 2200)];
    expect(judge(0, 0, { racks, placements: open }).verdict).toBe('pass');
  });

  it.each([
    [outside('2010 ADA Standards 403.5.1 and 802.1.4', 'a way of 36 in adjoins the space'), 36 * INCH, 'pass'],
    ['a way of 35 in', 35 * INCH, 'fail'],
  ])('%s', (_, way, verdict) => {
    const racks = [aRack('Loose', 12)];
    const placements = [aPlacement(['Left'], 1400, 0), aPlacement(['Loose'], 200, 1200 + way)];
    expect(judge(0, 0, { racks, placements }).verdict).toBe(verdict);
  });

  it.each(
    (['left', 'right', 'back', 'front'] as const).flatMap((side) =>
      (['wall', 'column', 'space'] as const).map((what) => [side, what] as const),
    ),
  )('a way of 36 in on its %s, up to a %s, is enough alone, and 1 mm is allowed', (side, what) => {
    const verdictAt = (way: number) => findingsOf(leftOpen(side, what, way), 'wheelchair-space')[0]!.verdict;
    expect([36 * INCH, 36 * INCH - 0.9, 36 * INCH - 1.1].map(verdictAt)).toEqual(['pass', 'pass', 'fail']);
  });

  it('a room without a width or a depth closes nothing in there', () => {
    const closed = leftOpen('right', 'wall', 500);
    const { width: _, depth: __, ...room } = closed.room!;
    expect(findingsOf(closed, 'wheelchair-space')[0]!.verdict).toBe('fail');
    expect(findingsOf({ ...closed, room }, 'wheelchair-space')[0]!.verdict).toBe('pass');
  });

  it('of several that reach in the deepest is named', () => {
    const racks = [aRack('Near', 12), aRack('Far', 12), aRack('Mid', 12)];
    const placements = [
      aPlacement(['Near'], 7600, 3100),
      aPlacement(['Far'], 7400, 3600),
      aPlacement(['Mid'], 7500, 4150),
    ];
    // The space ends at 7900 and at 4200: 300 and 500 are taken from its right, 50 from its front.
    const finding = judge(7000, 3000, { racks, placements });
    expect(finding.message).toContain('Far takes 500 mm');
    expect(finding.related).toHaveLength(1);
  });

  it('a space that only walls and columns close in is not the booth’s doing', () => {
    const room = aRoom(10_000, 20_000, {
      wheelchairSpaces: [aWheelchairSpace('RowA', 0, 0, 900, 1200)],
      columns: [aColumn('A', 1200, 0, 300, 300), aColumn('B', 0, 1500, 300, 300)],
    });
    expect(judge(0, 0, { room }).verdict).toBe('pass');
  });

  it('asks nothing where no room is said', () => {
    expect(findingsOf(booth(aWheelchairSpace('RowA', 0, 0), { room: undefined }), 'wheelchair-space')).toEqual([]);
  });

  it('each space is judged; one without a place is asked for it', () => {
    const { at: _, ...nowhereYet } = aWheelchairSpace('RowB', 0, 0);
    const room = aRoom(10_000, 20_000, { wheelchairSpaces: [aWheelchairSpace('RowA', 3100, 3100), nowhereYet] });
    const found = findingsOf(booth(nowhereYet, { room }), 'wheelchair-space');
    expect(found.map(({ verdict }) => verdict)).toEqual(['fail', 'unknown']);
    expect(found[1]!.missing).toMatchObject({ property: 'at', of: 'wheelchair-space RowB' });
    expect(found[0]!.caution).toContain('made up for elsewhere');
  });
});

describe('wheelchair-space: what a reader is told', () => {
  const tell = (x: number, y: number, parts?: Partial<Booth>) =>
    told(booth(aWheelchairSpace('RowA', x, y, 900, 1200), parts), 'wheelchair-space');

  it('where it stays free', () => {
    expect(tell(500, 500)).toMatchInlineSnapshot(`
      "pass, wheelchair-space RowA
      The booth stays out of the wheelchair space RowA, and leaves a way to it.
      at room.wheelchairSpaces.RowA, by 28 CFR 35.151(g)(3) and 36.406(f)(3)"
    `);
  });

  it('where the booth stands in it, or people who sit', () => {
    expect(tell(3100, 3100)).toMatchInlineSnapshot(`
      "fail, wheelchair-space RowA
      Left takes 600 mm of the wheelchair space RowA. Move it out.
      : 600 against 0 mm, margin -600
      at room.wheelchairSpaces.RowA, by 28 CFR 35.151(g)(3) and 36.406(f)(3)
      see desks.Left: Left stands there"
    `);
    expect(
      tell(3100, 1700, { seats: [aSeat('Tall', 750)], workstations: [aStation('Sound', 'Left', 'Tall', ['Noor'])] }),
    ).toMatchInlineSnapshot(`
      "fail, wheelchair-space RowA
      Whoever sits at Left takes 383 mm of the wheelchair space RowA. Move the seat out.
      : 382.6 against 0 mm, margin -382.6
      at room.wheelchairSpaces.RowA, by 28 CFR 35.151(g)(3) and 36.406(f)(3)
      see desks.Left: Left stands there"
    `);
  });

  it('where it is closed in', () => {
    expect(
      told(
        booth(aWheelchairSpace('RowA', 0, 0, 900, 1200), {
          desks: [aDesk('Left', 1000), aDesk('Right', 1000)],
          placements: [aPlacement(['Left'], 0, 1300), aPlacement(['Right'], 1000, 100)],
        }),
        'wheelchair-space',
      ),
    ).toMatchInlineSnapshot(`
      "fail, wheelchair-space RowA
      No side of the wheelchair space RowA has 914 mm of free floor beside it: the back wall, Left, the left wall, Right close it in. Leave a way to it.
      at room.wheelchairSpaces.RowA, by 2010 ADA Standards 802.1.4 and 802.1.5"
    `);
  });

  it('where it has no place', () => {
    expect(told(booth({ ...aWheelchairSpace('RowA', 0, 0), at: undefined }), 'wheelchair-space'))
      .toMatchInlineSnapshot(`
        "unknown, wheelchair-space RowA
        Cannot say whether RowA stays free. Add \`at\` to wheelchair-space RowA, such as \`at 1830mm, 6.1m\`.
        at room.wheelchairSpaces.RowA, by 28 CFR 35.151(g)(3) and 36.406(f)(3)
        ask at of wheelchair-space RowA, as at 1830mm, 6.1m, at room.wheelchairSpaces.RowA"
      `);
  });

  it('where walls, columns, other spaces or people who sit close it in', () => {
    const closed = (...args: Parameters<typeof leftOpen>) =>
      told(leftOpen(...args), 'wheelchair-space').split('\n\n')[0];
    expect(closed('right', 'wall', 500)).toMatchInlineSnapshot(`
      "fail, wheelchair-space RowA
      No side of the wheelchair space RowA has 914 mm of free floor beside it: back, front, left, the right wall close it in. Leave a way to it.
      at room.wheelchairSpaces.RowA, by 2010 ADA Standards 802.1.4 and 802.1.5"
    `);
    expect(closed('front', 'wall', 500)).toMatchInlineSnapshot(`
      "fail, wheelchair-space RowA
      No side of the wheelchair space RowA has 914 mm of free floor beside it: back, the stage wall, left, right close it in. Leave a way to it.
      at room.wheelchairSpaces.RowA, by 2010 ADA Standards 802.1.4 and 802.1.5"
    `);
    expect(closed('left', 'column', 500)).toMatchInlineSnapshot(`
      "fail, wheelchair-space RowA
      No side of the wheelchair space RowA has 914 mm of free floor beside it: back, front, Post, right close it in. Leave a way to it.
      at room.wheelchairSpaces.RowA, by 2010 ADA Standards 802.1.4 and 802.1.5"
    `);
    expect(closed('back', 'space', 500)).toMatchInlineSnapshot(`
      "fail, wheelchair-space RowA
      No side of the wheelchair space RowA has 914 mm of free floor beside it: RowB, front, left, right close it in. Leave a way to it.
      at room.wheelchairSpaces.RowA, by 2010 ADA Standards 802.1.4 and 802.1.5"
    `);
    const seated = { seats: [aSeat('Tall', 750)], workstations: [aStation('Sound', 'Left', 'Tall', ['Noor'])] };
    const behindSeats = booth(aWheelchairSpace('RowA', 0, 0, 900, 1200), {
      ...seated,
      racks: [aRack('Loose', 12)],
      placements: [aPlacement(['Left'], 0, 2500), aPlacement(['Loose'], 1000, 0)],
    });
    expect(told(behindSeats, 'wheelchair-space')).toMatchInlineSnapshot(`
      "fail, wheelchair-space RowA
      No side of the wheelchair space RowA has 914 mm of free floor beside it: the back wall, the seat at Left, the left wall, Loose close it in. Leave a way to it.
      at room.wheelchairSpaces.RowA, by 2010 ADA Standards 802.1.4 and 802.1.5"
    `);
  });
});
