import { describe, expect, it } from 'vitest';
import type { Booth, Placement, Skirt } from '../../booth.js';
import { aBooth, aDesk, aPlacement, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aPlatform, aRack, aSkirt, under } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';
import { told } from '../../testing/told.js';

type Size = readonly [name: string, width: number, depth: number];

/** Desks by size in inches, and one skirt on all of them. */
function booth(
  sizes: readonly Size[],
  placements: readonly Placement[],
  skirt: Partial<Skirt>,
  parts: Partial<Booth> = {},
): Booth {
  return aBooth({
    show: 'in',
    desks: sizes.map(([name, width, depth]) =>
      aDesk(name, 1000, { width: given(width * INCH), depth: given(depth * INCH) }),
    ),
    placements,
    skirts: [
      aSkirt(
        'Front',
        sizes.map(([name]) => name),
        { length: given(1000 * INCH), ...skirt },
      ),
    ],
    ...parts,
  });
}

const judge = (...args: Parameters<typeof booth>) => findingOf(booth(...args), 'skirt-run');
/** What the edges add up to, from the terms. */
const run = (...args: Parameters<typeof booth>) => judge(...args).terms!.split(' = ')[1];
const sides = (...value: Skirt['sides']['value'][number][]): Partial<Skirt> => ({ sides: given(value) });
const left: Size = ['Left', 66, 27];
const right: Size = ['Right', 48, 27];

describe('skirt-run: cloth against the edges it covers and one overlap', () => {
  it.each<[string, Size, string]>([
    [
      outside('table-linen trade tables', 'W30: an 8 ft table 30 in wide takes 13 ft on three sides'),
      ['Table', 96, 30],
      '156 in',
    ],
    [outside('table-linen trade tables', 'W30: a 6 ft table takes 11 ft'), ['Table', 72, 30], '132 in'],
  ])('%s', (_, size, edges) => {
    expect(run([size], [], sides('front', 'ends'))).toBe(edges);
  });

  it.each<[number, string]>([
    [156, 'marginal'],
    [155, 'fail'],
    [161, 'marginal'],
    [162, 'pass'],
  ])('W30: %d in of cloth on three sides of an 8 ft table', (cloth, verdict) => {
    const finding = judge([['Table', 96, 30]], [], { ...sides('front', 'ends'), length: given(cloth * INCH) });
    expect(finding.verdict).toBe(verdict);
    expect(finding.measured).toBeCloseTo(cloth * INCH, 6);
  });

  it.each<[string, readonly Placement[], Partial<Skirt>, string]>([
    [
      'a row shares the end between its desks',
      [aPlacement(['Left', 'Right'], 0, 2000)],
      sides('front', 'ends'),
      '168 in',
    ],
    [
      'the same row, placed one by one',
      [aPlacement(['Left'], 0, 2000), aPlacement(['Right'], 66 * INCH, 2000)],
      sides('front', 'ends'),
      '168 in',
    ],
    [
      '20 mm apart they still hide it',
      [aPlacement(['Left'], 0, 2000), aPlacement(['Right'], 66 * INCH + 20, 2000)],
      sides('front', 'ends'),
      '168 in',
    ],
    [
      'a foot apart they do not',
      [aPlacement(['Left'], 0, 2000), aPlacement(['Right'], 78 * INCH, 2000)],
      sides('front', 'ends'),
      '222 in',
    ],
    ['the front alone', [aPlacement(['Left', 'Right'], 0, 2000)], sides('front'), '114 in'],
    ['the left end of a row', [aPlacement(['Left', 'Right'], 0, 2000)], sides('left-end'), '27 in'],
    ['the right end of a row', [aPlacement(['Left', 'Right'], 0, 2000)], sides('right-end'), '27 in'],
    ['nothing placed: each stands alone', [], sides('front', 'ends'), '222 in'],
  ])('%s', (_, placements, skirt, edges) => {
    expect(run([left, right], placements, skirt)).toBe(edges);
  });

  it('a deeper neighbour shows what it has more', () => {
    const sizes: Size[] = [
      ['Left', 60, 24],
      ['Right', 60, 30],
    ];
    // Both near edges on one line: 6 in of the deeper one’s left end stand free.
    expect(run(sizes, [aPlacement(['Left', 'Right'], 0, 2000)], sides('front', 'ends'))).toBe('180 in');
    expect(judge(sizes, [aPlacement(['Left', 'Right'], 0, 2000)], sides('left-end')).terms).toBe(
      '24 in left end of Left + 6 in left end of Right = 30 in',
    );
  });

  it('an L: the arm hides the part of the front’s end that it stands against', () => {
    const sizes: Size[] = [
      ['Front', 60, 27],
      ['Arm', 60, 27],
    ];
    // The arm faces right, beside the right end, its left end flush with the far edge: 27 in of the front’s right end are hidden.
    const placements = [aPlacement(['Front'], 0, 2000), aPlacement(['Arm'], 60 * INCH, 2000 + 27 * INCH, 90)];
    const finding = judge(sizes, placements, sides('front', 'ends'));
    // Front 60, its left end 27; the arm’s far edge 60 and both its ends 27.
    expect(finding.terms).toBe(
      '60 in front of Front + 27 in left end of Front + 60 in front of Arm + 27 in left end of Arm + 27 in right end of Arm = 201 in',
    );
  });

  it('a turned row counts as a straight one', () => {
    expect(run([left, right], [aPlacement(['Left', 'Right'], 3000, 5000, 37)], sides('front', 'ends'))).toBe('168 in');
  });

  it('an unskirted neighbour and a loose rack hide an end too; a rack under the desk does not', () => {
    const desks = [
      aDesk('Left', 1000, { width: given(66 * INCH), depth: given(27 * INCH) }),
      aDesk('Bare', 1000, { width: given(48 * INCH), depth: given(27 * INCH) }),
    ];
    const row = [aPlacement(['Left', 'Bare'], 0, 2000)];
    expect(run([left], row, sides('ends'), { desks })).toBe('27 in');
    const tucked = { racks: [aRack('Power', 12, under('Left', 66 * INCH - 100))] };
    expect(run([left], [aPlacement(['Left'], 0, 2000)], sides('ends'), tucked)).toBe('54 in');
    const loose = { racks: [aRack('Loose', 12, { depth: given(27 * INCH) })] };
    const beside = [aPlacement(['Left'], 0, 2000), aPlacement(['Loose'], 66 * INCH, 2000)];
    expect(run([left], beside, sides('ends'), loose)).toBe('27 in');
  });

  it('a platform may wear a skirt', () => {
    const platforms = [aPlatform('Riser', 300, { width: given(120 * INCH), depth: given(96 * INCH) })];
    const skirts = [aSkirt('Hem', ['Riser'], { ...sides('front', 'ends'), length: given(320 * INCH) })];
    expect(judge([], [], {}, { platforms, skirts })).toMatchObject({ verdict: 'pass' });
    expect(run([], [], {}, { platforms, skirts })).toBe('312 in');
  });

  it('says how much to take, in steps that people cut', () => {
    const finding = judge([left, right], [aPlacement(['Left', 'Right'], 0, 2000)], {
      ...sides('front', 'ends'),
      length: given(160 * INCH),
    });
    expect(finding.message).toContain('8 in stays bare. Take 174 in');
    expect(finding.remedies).toMatchObject([{ changes: [{ text: '174in' }], safe: true }]);
    expect(finding.strength).toBe('weak');
  });

  it('names what it took for granted', () => {
    expect(judge([left, right], [], {}).assumptions).toEqual([
      'Left stands on its own: the plan does not place it',
      'Right stands on its own: the plan does not place it',
    ]);
    expect(judge([left], [], {}).assumptions).toEqual([]);
  });

  it.each<[string, readonly Size[], Partial<Skirt>, Partial<Booth>, string]>([
    ['what it hangs on', [], {}, {}, 'on'],
    ['its length', [left], { length: undefined }, {}, 'length'],
    ['a width', [left], {}, { desks: [aDesk('Left', 1000, { width: undefined })] }, 'width'],
    ['a depth', [left], {}, { desks: [aDesk('Left', 1000, { depth: undefined })] }, 'depth'],
  ])('without %s it asks for it', (_, sizes, skirt, parts, property) => {
    expect(judge(sizes, [], skirt, parts)).toMatchObject({ verdict: 'unknown', missing: { property } });
  });
});

describe('skirt-run: clips', () => {
  const clips = (inches: number, parts: Partial<Booth> = {}) => {
    const found = findingsOf(booth([['Left', 120, 27]], [], { clips: given(inches * INCH) }, parts), 'skirt-run');
    expect(found).toHaveLength(2);
    return found[1]!;
  };

  it.each([
    [12, 'pass', 12],
    [13, 'marginal', 12],
    [24, 'marginal', 12],
    [25, 'fail', 24],
  ])('each %d in: %s', (inches, verdict, limit) => {
    expect(clips(inches).verdict).toBe(verdict);
    expect(clips(inches).limit).toBeCloseTo(limit * INCH, 6);
    expect(clips(inches).source).toContain('from memory');
  });

  it('counts them: one more than there are gaps', () => {
    expect(clips(12).message).toContain('It takes 11 clips');
    expect(clips(24).message).toContain('It takes 11 clips');
    expect(clips(7).message).toContain('It takes 19 clips');
  });

  it('the file may set the distance, with its reason', () => {
    const overrides = [{ check: 'skirt-run', value: 18 * INCH, reason: 'stiff cloth', origin: nowhere }];
    expect(clips(18, { overrides })).toMatchObject({ verdict: 'pass', source: 'the file’s own limit: stiff cloth' });
    expect(clips(19, { overrides }).verdict).toBe('fail');
  });
});

describe('skirt-run: what a reader is told', () => {
  const tell = (...args: Parameters<typeof booth>) => told(booth(...args), 'skirt-run');
  const row = [aPlacement(['Left', 'Right'], 0, 2000)];
  const cloth = (inches: number, parts: Partial<Skirt> = {}) =>
    tell([left, right], row, { ...sides('front', 'ends'), length: given(inches * INCH), ...parts });

  it('where there is cloth enough, and clips', () => {
    expect(cloth(174, { clips: given(12 * INCH) })).toMatchInlineSnapshot(`
      "pass, skirt Front
      Front has 174 in of cloth for 168 in of edges: enough, with an overlap.
      = 66 in front of Left + 27 in left end of Left + 48 in front of Right + 27 in right end of Right = 168 in
      : 4419.6 against 4419.6 mm, margin 0
      at skirts.Front.length, by table-linen trade tables
      see desks.Left: it hangs on Left; desks.Right: it hangs on Right

      pass, skirt Front
      Front has a clip each 12 in. It takes 15 clips.
      : 304.8 against 304.8 mm, margin 0
      at skirts.Front.clips, by makers’ usual instructions: common practice, from memory"
    `);
  });

  it('where nothing is left to overlap, and the cloth sags', () => {
    expect(cloth(170, { clips: given(18 * INCH) })).toMatchInlineSnapshot(`
      "marginal, skirt Front
      Front has 170 in of cloth for 168 in of edges: nothing is left to overlap where its ends meet. Take 174 in.
      = 66 in front of Left + 27 in left end of Left + 48 in front of Right + 27 in right end of Right = 168 in
      : 4318 against 4419.6 mm, margin -101.6
      at skirts.Front.length, by table-linen trade tables
      see desks.Left: it hangs on Left; desks.Right: it hangs on Right
      do Set the cloth’s length to 174in | skirts.Front.length := 174in

      marginal, skirt Front
      Front has a clip each 18 in: between them the cloth sags. Set one each 12 in. It takes 15 clips.
      : 457.2 against 304.8 mm, margin -152.4
      at skirts.Front.clips, by makers’ usual instructions: common practice, from memory"
    `);
  });

  it('where an edge stays bare, and clips are far apart', () => {
    expect(cloth(160, { clips: given(30 * INCH) })).toMatchInlineSnapshot(`
      "fail, skirt Front
      Front has 160 in of cloth for 168 in of edges: 8 in stays bare. Take 174 in, an overlap included.
      = 66 in front of Left + 27 in left end of Left + 48 in front of Right + 27 in right end of Right = 168 in
      : 4064 against 4267.2 mm, margin -203.2
      at skirts.Front.length, by table-linen trade tables
      see desks.Left: it hangs on Left; desks.Right: it hangs on Right
      do Set the cloth’s length to 174in | skirts.Front.length := 174in

      fail, skirt Front
      Front has a clip each 30 in: between them the cloth sags. Set one each 12 in. It takes 15 clips.
      : 762 against 609.6 mm, margin -152.4
      at skirts.Front.clips, by makers’ usual instructions: common practice, from memory"
    `);
  });

  it('where something is missing', () => {
    expect(tell([], [], {})).toMatchInlineSnapshot(`
      "unknown, skirt Front
      Cannot say whether the cloth of Front is long enough. Add \`on\` to skirt Front, such as \`on Left\`.
      at skirts.Front, by table-linen trade tables
      ask on of skirt Front, as on Left, at skirts.Front"
    `);
    expect(cloth(170, { length: undefined })).toMatchInlineSnapshot(`
      "unknown, skirt Front
      Cannot say whether the cloth of Front is long enough. Add \`length\` to skirt Front, such as \`length 15ft\`.
      at skirts.Front, by table-linen trade tables
      ask length of skirt Front, as length 15ft, at skirts.Front"
    `);
    const desks = [aDesk('Left', 1000, { width: undefined })];
    expect(tell([left], [], { clips: given(12 * INCH) }, { desks })).toMatchInlineSnapshot(`
      "unknown, skirt Front
      Cannot say whether the cloth of Front is long enough. Add \`width\` to desk Left, such as \`width 60in\`.
      at desks.Left, by table-linen trade tables
      ask width of desk Left, as width 60in, at desks.Left

      pass, skirt Front
      Front has a clip each 12 in.
      : 304.8 against 304.8 mm, margin 0
      at skirts.Front.clips, by makers’ usual instructions: common practice, from memory"
    `);
  });

  it('of a platform that wears it', () => {
    const skirts = [aSkirt('Hem', ['Riser'], { length: given(320 * INCH) })];
    expect(tell([], [], {}, { platforms: [aPlatform('Riser', 300)], skirts })).toMatchInlineSnapshot(`
      "pass, skirt Hem
      Hem has 320 in of cloth for 157 1/2 in of edges: enough, with an overlap.
      = 157 1/2 in front of Riser = 157 1/2 in
      : 8128 against 4152.4 mm, margin 3975.6
      at skirts.Hem.length, by table-linen trade tables
      see platforms.Riser: it hangs on Riser"
    `);
  });

  it('at the edges of what is allowed', () => {
    const verdict = (millimetres: number) =>
      judge([['Table', 96, 30]], [], { ...sides('front', 'ends'), length: given(millimetres) }).verdict;
    const [run, wanted] = [156 * INCH, 162 * INCH];
    expect([run - 1.1, run - 0.9, wanted - 1.1, wanted - 0.9].map(verdict)).toEqual([
      'fail',
      'marginal',
      'marginal',
      'pass',
    ]);
  });
});
