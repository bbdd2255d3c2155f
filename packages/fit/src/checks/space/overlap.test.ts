import { describe, expect, it } from 'vitest';
import type { Booth, Door, Placement, Room } from '../../booth.js';
import { aBooth, aDesk, aPlacement, aRoom, given } from '../../testing/booths.js';
import { aColumn, aDoor, aPlatform, aRack, under } from '../../testing/floor.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { told } from '../../testing/told.js';

/** Desks of 1500 × 700 in a room of 10 × 20 m. */
function booth(placements: readonly Placement[], room: Partial<Room> = {}, parts: Partial<Booth> = {}): Booth {
  const names = [...new Set(placements.flatMap(({ pieces }) => pieces.map(({ name }) => name)))];
  return aBooth({
    room: aRoom(10_000, 20_000, room),
    desks: names.map((name) => aDesk(name, 740)),
    placements,
    ...parts,
  });
}

const clashes = (...args: Parameters<typeof booth>) =>
  findingsOf(booth(...args), 'overlap').filter(({ verdict }) => verdict === 'fail');

describe('overlap: two pieces in one place', () => {
  it('a row end to end is clear', () => {
    const finding = findingOf(booth([aPlacement(['Left', 'Right'], 3000, 2000)]), 'overlap');
    expect(finding).toMatchObject({ verdict: 'pass', subject: { kind: 'booth' } });
    expect(finding.message).toContain('All 2 placed pieces');
  });

  it.each([
    ['straight, 100 along the row', 4400, 2000, 0, 100],
    ['straight, 100 of the depth', 3000, 2600, 0, 100],
    ['1.5 mm is too much', 4498.5, 2000, 0, 1.5],
    // A quarter turn: its body runs from x 4400 to 5100, and from y 2500 down to 1000.
    ['an arm turned by 90°', 4400, 2500, 90, 100],
  ])('%s', (_, x, y, turn, depth) => {
    const found = clashes([aPlacement(['Left'], 3000, 2000), aPlacement(['Right'], x, y, turn)]);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ subject: { kind: 'desk' }, limit: 0 });
    expect(found[0]!.measured).toBeCloseTo(depth, 6);
    expect(found[0]!.message).toContain('Right and Left stand in one place');
  });

  it('a corner that is turned into a neighbour reaches in by what parts them most easily', () => {
    // Near left corner at (4600, 2000); turned left by 45° the far left corner is 700 · cos 45° = 495 farther left.
    const found = clashes([aPlacement(['Left'], 3000, 2000), aPlacement(['Right'], 4600, 2000, -45)]);
    expect(found).toHaveLength(1);
    expect(found[0]!.measured).toBeCloseTo(4500 - (4600 - 700 * Math.SQRT1_2), 6);
    // Moved by so much to the right it is clear.
    const moved = 4600 + 700 * Math.SQRT1_2 - 100 + 1e-6;
    expect(clashes([aPlacement(['Left'], 3000, 2000), aPlacement(['Right'], moved, 2000, -45)])).toEqual([]);
  });

  it('every pair is named once', () => {
    const all = [aPlacement(['A'], 3000, 2000), aPlacement(['B'], 3100, 2000), aPlacement(['C'], 3200, 2000)];
    expect(clashes(all).map(({ message }) => message.slice(0, 7))).toEqual(['B and A', 'C and A', 'C and B']);
  });

  it('a column in a desk clashes; a platform under it, and a rack said to be under it, do not', () => {
    const placed = [aPlacement(['Left'], 3000, 2000)];
    const column = { columns: [aColumn('North', 3200, 2600, 300, 300)] };
    expect(clashes(placed, column)[0]).toMatchObject({ subject: { kind: 'room', name: 'North' }, measured: 100 });
    const platforms = [aPlatform('Riser', 300, { at: given({ x: 2000, y: 1000 }) })];
    expect(clashes(placed, {}, { platforms, racks: [aRack('Power', 12, under('Left', 100, 50))] })).toEqual([]);
    const loose = [...placed, aPlacement(['Power'], 3100, 2050)];
    expect(clashes(loose, {}, { racks: [aRack('Power', 12)], desks: [aDesk('Left', 740)] })).toHaveLength(1);
  });
});

describe('overlap: outside the room', () => {
  it.each([
    ['the left wall', -200, 2000, 0, 200],
    ['the back wall', 3000, -150, 0, 150],
    ['the right wall', 8600, 2000, 0, 100],
    ['the stage wall', 3000, 19_400, 0, 100],
    // Turned by 45° to the right, the far right corner reaches (1500 + 700) · cos 45° to the right of the near left one.
    ['the right wall', 10_000 - 2200 * Math.SQRT1_2 + 40, 5000, 45, 40],
  ])('through %s at (%d, %d) turned by %d°', (wall, x, y, turn, by) => {
    const found = clashes([aPlacement(['Left'], x, y, turn)]);
    expect(found).toHaveLength(1);
    expect(found[0]!.measured).toBeCloseTo(by, 6);
    expect(found[0]!.message).toContain(`through ${wall}`);
  });

  it('against the walls is inside', () => {
    const corners = [aPlacement(['A'], 0, 0), aPlacement(['B'], 8500, 19_300)];
    expect(clashes(corners)).toEqual([]);
    expect(clashes([aPlacement(['A'], -1, 0)])).toEqual([]);
  });

  it('a corner can be through two walls', () => {
    expect(clashes([aPlacement(['A'], -50, -60)]).map(({ measured }) => measured)).toEqual([50, 60]);
  });

  it('says nothing of walls that nobody drew', () => {
    const found = findingsOf({ ...booth([aPlacement(['A'], -50, -60)]), room: undefined }, 'overlap');
    expect(found.map(({ verdict, message }) => [verdict, message])).toEqual([
      ['pass', 'The one placed piece is alone: the file tells of no room.'],
    ]);
    const two = [aPlacement(['A'], -50, -60), aPlacement(['B'], 5000, 0)];
    const [clear] = findingsOf({ ...booth(two), room: undefined }, 'overlap');
    expect(clear!.message).toBe('All 2 placed pieces stand clear of one another. The file tells of no room.');
  });

  it.each([
    ['width', 8600, 2000, 'through the right wall', 'nothing stands through the stage wall: the room has no depth'],
    ['depth', 3000, 19_400, 'through the stage wall', 'nothing stands through the right wall: the room has no width'],
  ] as const)(
    'of a room of which only the %s is said, one wall more is held against',
    (known, x, y, through, assumed) => {
      const of = (left: number, near: number) => {
        const { room, ...rest } = booth([aPlacement(['A'], left, near)]);
        const { [known]: length, origin } = room!;
        return findingsOf(
          { ...rest, room: { ...room!, width: undefined, depth: undefined, origin, [known]: length } },
          'overlap',
        );
      };
      expect(of(x, y).map(({ message }) => message)).toEqual([expect.stringContaining(through)]);
      expect(of(3000, 2000)).toMatchObject([{ verdict: 'pass', assumptions: [assumed] }]);
    },
  );
});

describe('overlap: in a door’s swing', () => {
  // A leaf of 1000 whose opening runs from 2000 to 3000 along each wall. Seen from the room, the hinge on the left of a door in
  // the back wall is the one farther from the left wall; in the stage wall it is the nearer one.
  type Corner = 'near' | 'far';
  const hinges: [NonNullable<Door['wall']>['value'], 'left' | 'right', Corner][] = [
    ['back-wall', 'left', 'far'],
    ['back-wall', 'right', 'near'],
    ['stage-wall', 'left', 'near'],
    ['stage-wall', 'right', 'far'],
    ['left-wall', 'left', 'near'],
    ['left-wall', 'right', 'far'],
    ['right-wall', 'left', 'far'],
    ['right-wall', 'right', 'near'],
  ];
  /** The point `along` the wall and `out` into a room of 10 × 20 m. */
  const at = (wall: string, along: number, out: number): [number, number] => {
    if (wall === 'back-wall') return [along, out];
    if (wall === 'stage-wall') return [along, 20_000 - out];
    return wall === 'left-wall' ? [out, along] : [10_000 - out, along];
  };
  const swept = (wall: NonNullable<Door['wall']>['value'], hinge: 'left' | 'right', along: number, out: number) => {
    const [x, y] = at(wall, along, out);
    const columns = [aColumn('Post', x - 20, y - 20, 40, 40)];
    const doors = [aDoor('Main', wall, 2000, 1000, { hinge: given(hinge) })];
    const booth = aBooth({ room: aRoom(10_000, 20_000, { doors, columns }) });
    return findingsOf(booth, 'overlap').some(({ verdict }) => verdict === 'fail');
  };

  it.each(hinges)('%s, hinge on the %s: the leaf turns about the %s side', (wall, hinge, corner) => {
    const [pivot, free] = corner === 'near' ? [2000, 3000] : [3000, 2000];
    const toward = Math.sign(free - pivot);
    // The leaf open at a right angle, just beside the hinge.
    expect(swept(wall, hinge, pivot + toward * 30, 950)).toBe(true);
    // As far out beside the free end: outside the quarter circle.
    expect(swept(wall, hinge, free - toward * 30, 950)).toBe(false);
    // On the diagonal: inside up to the leaf's length.
    const diagonal = (r: number) => swept(wall, hinge, pivot + toward * r * Math.SQRT1_2, r * Math.SQRT1_2);
    expect(diagonal(980)).toBe(true);
    expect(diagonal(1060)).toBe(false);
    // Beyond the leaf, behind the hinge.
    expect(swept(wall, hinge, pivot + toward * 30, 1030)).toBe(false);
    expect(swept(wall, hinge, pivot - toward * 30, 500)).toBe(false);
  });

  it('a desk exactly a leaf’s width from the wall lets it open', () => {
    const doors = [aDoor('Main', 'back-wall', 2000, 914.4)];
    expect(clashes([aPlacement(['Left'], 1800, 914.4)], { doors })).toEqual([]);
    const found = clashes([aPlacement(['Left'], 1800, 900)], { doors });
    expect(found).toHaveLength(1);
    expect(found[0]!.message).toContain('in the swing of the door Main');
    expect(found[0]!.measured).toBeCloseTo(14.4, 6);
  });

  it('a door that opens outward sweeps nothing', () => {
    const doors = [aDoor('Main', 'back-wall', 2000, 1000, { opens: given('out') })];
    expect(clashes([aPlacement(['Left'], 1800, 300)], { doors })).toEqual([]);
  });

  it('defers to the fire official', () => {
    const doors = [aDoor('Main', 'back-wall', 2000, 1000)];
    expect(clashes([aPlacement(['Left'], 1800, 300)], { doors })[0]!.caution).toContain('fire official');
  });
});

describe('overlap: what a reader is told', () => {
  const tell = (...args: Parameters<typeof booth>) => told(booth(...args), 'overlap');

  it('where all is clear', () => {
    expect(tell([aPlacement(['Left'], 1000, 1000)])).toMatchInlineSnapshot(`
      "pass, booth Test booth
      The one placed piece stands clear of the walls and of the doors.
      at undefined, by geometry"
    `);
    expect(tell([aPlacement(['Left', 'Right'], 1000, 1000)])).toMatchInlineSnapshot(`
      "pass, booth Test booth
      All 2 placed pieces stand clear of one another, of the walls and of the doors.
      at undefined, by geometry"
    `);
  });

  it('where two stand in one place, or one through walls', () => {
    expect(tell([aPlacement(['Left'], 1000, 1000), aPlacement(['Right'], 2400, 1100)])).toMatchInlineSnapshot(`
      "fail, desk Right
      Right and Left stand in one place: they overlap by 100 mm. Move one of them.
      : 100 against 0 mm, margin -100
      at desks.Right, by geometry
      see desks.Left: Left stands here too"
    `);
    expect(tell([aPlacement(['Left'], -100, -50), aPlacement(['Right'], 8600, 19_400)])).toMatchInlineSnapshot(`
      "fail, desk Left
      Left stands 100 mm through the left wall. Move it into the room.
      : 100 against 0 mm, margin -100
      at desks.Left, by geometry
      see room: the room

      fail, desk Left
      Left stands 50 mm through the back wall. Move it into the room.
      : 50 against 0 mm, margin -50
      at desks.Left, by geometry
      see room: the room

      fail, desk Right
      Right stands 100 mm through the right wall. Move it into the room.
      : 100 against 0 mm, margin -100
      at desks.Right, by geometry
      see room: the room

      fail, desk Right
      Right stands 100 mm through the stage wall. Move it into the room.
      : 100 against 0 mm, margin -100
      at desks.Right, by geometry
      see room: the room"
    `);
  });

  it('where one stands in the way of a door', () => {
    expect(
      tell([aPlacement(['Left'], 0, 0)], {
        doors: [aDoor('Main', 'back-wall', 500, 900), aDoor('Other', 'right-wall', 500, 900)],
      }),
    ).toMatchInlineSnapshot(`
      "fail, desk Left
      Left stands in the swing of the door Main, by 700 mm. Move it so that the door opens fully.
      : 700 against 0 mm, margin -700
      at desks.Left, by geometry
      see room.doors.Main: the door Main"
    `);
  });

  it('of a column in a desk', () => {
    expect(tell([aPlacement(['Left'], 1000, 1000)], { columns: [aColumn('Pillar', 1100, 1100, 300, 300)] }))
      .toMatchInlineSnapshot(`
        "fail, room Pillar
        Pillar and Left stand in one place: they overlap by 400 mm. Move one of them.
        : 400 against 0 mm, margin -400
        at room.columns.Pillar, by geometry
        see desks.Left: Left stands here too"
      `);
  });
});
