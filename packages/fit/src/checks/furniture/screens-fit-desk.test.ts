import { describe, expect, it } from 'vitest';
import type { Booth, Desk, ScreenUse } from '../../booth.js';
import { aBooth, aDesk, anOperator, aPlacement, aStation, given, fixed, range } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aMonitorOf, aScreenAt } from '../../testing/floor.js';
import { told } from '../../testing/told.js';

/** A desk 1500 × 700 with screens 500 wide and 300 high: A, B and C. */
function booth(screens: readonly ScreenUse[], desk: Partial<Desk> = {}, parts: Partial<Booth> = {}): Booth {
  return aBooth({
    operators: [anOperator('Noor', { stature: 1630 })],
    desks: [aDesk('Left', 1000, desk)],
    monitors: ['A', 'B', 'C'].map((name) => aMonitorOf(name, 500, 300)),
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'], { screens })],
    ...parts,
  });
}

const judge = (...args: Parameters<typeof booth>) => findingOf(booth(...args), 'screens-fit-desk');
const all = (...args: Parameters<typeof booth>) => findingsOf(booth(...args), 'screens-fit-desk');

describe('screens-fit-desk: against the desk’s ends and edges', () => {
  it.each<[string, number, number, Partial<ScreenUse>, string, number | undefined]>([
    ['in the middle', 750, 500, {}, 'pass', undefined],
    ['just at the left end', 250, 500, {}, 'pass', undefined],
    ['50 past the left end', 200, 500, {}, 'fail', 50],
    ['50 past the right end', 1300, 500, {}, 'fail', 50],
    // Turned by 60° it takes 250 · cos 60° = 125 to each side.
    ['turned by 60°, 125 from the left end', 125, 400, { turn: given(60) }, 'pass', undefined],
    ['turned by 60°, 100 from the left end', 100, 400, { turn: given(60) }, 'fail', 25],
    // And 250 · sin 60° = 216.5 back and forward.
    [
      'turned by 60°, an end over the far edge',
      750,
      600,
      { turn: given(60) },
      'marginal',
      600 + 250 * Math.sin(Math.PI / 3) - 700,
    ],
    [
      'turned by 60°, an end over the near edge',
      750,
      100,
      { turn: given(60) },
      'marginal',
      250 * Math.sin(Math.PI / 3) - 100,
    ],
    ['with nothing under it', 750, 760, {}, 'fail', 60],
    ['on an arm over the far edge', 750, 760, { rating: given(9) }, 'marginal', 60],
  ])('%s', (_, at, setback, parts, verdict, measured) => {
    const finding = judge([aScreenAt('A', at, setback, parts)]);
    expect(finding.verdict).toBe(verdict);
    if (measured === undefined) expect(finding.measured).toBeUndefined();
    else expect(finding.measured).toBeCloseTo(measured, 6);
  });

  it('a turn alone says where the screen stands: along the line of sight', () => {
    // 45° to the right at a setback of 500: 500 to the right of the operator in the middle of the desk.
    const { at: _, ...turned } = aScreenAt('A', 0, 500, { turn: given(45) });
    expect(judge([turned]).verdict).toBe('pass');
    // Its right half takes 250 · cos 45° more: 500 + 176.8 past the middle of a desk of 1300 is 26.8 too much.
    expect(judge([turned], { width: given(1300) }).measured).toBeCloseTo(500 + 250 * Math.SQRT1_2 - 650, 6);
  });

  it('turned, the end that reaches farthest decides: past which end of the desk, and over which edge', () => {
    // 250 · cos 30° = 216.5 to each side: 116.5 past the left end; its right end 250 · sin 30° = 125 nearer to the person.
    const left = judge([aScreenAt('A', 100, 400, { turn: given(30) })]);
    expect(left.message).toContain('past the left end');
    expect(left.measured).toBeCloseTo(250 * Math.cos(Math.PI / 6) - 100, 6);
    const near = judge([aScreenAt('A', 750, 100, { turn: given(30) })]);
    expect(near.message).toContain('over the near edge');
    expect(near.measured).toBeCloseTo(25, 6);
    // On a desk of 100 × 400 it reaches past both ends and both edges.
    const small = all([aScreenAt('A', 60, 210, { turn: given(60) })], { width: given(100), depth: given(400) });
    expect(
      small.map(({ message, measured }) => [
        message.match(/left end|right end|near edge|far edge/)![0],
        Math.round(measured!),
      ]),
    ).toEqual([
      ['right end', 85],
      ['far edge', 27],
    ]);
  });

  it.each([
    ['its lower edge 1 mm within the upper edge of the other is allowed', 400 - 1, 'pass'],
    ['2 mm are not', 400 - 2, 'fail'],
  ])('one over the other: %s', (_, bottom, verdict) => {
    const above = aScreenAt('B', 500, 500, { height: { line: 'bottom', over: 'desk', distance: fixed(bottom) } });
    expect(judge([aScreenAt('A', 500, 500), above]).verdict).toBe(verdict);
  });

  it('a desk that stands 1 mm beside the end carries what reaches over, one 2 mm beside it does not', () => {
    const desks = [aDesk('Left', 1000), aDesk('Right', 1000)];
    const beside = (gap: number) => ({
      desks,
      placements: [aPlacement(['Left'], 3000, 2000), aPlacement(['Right'], 4500 + gap, 2000)],
    });
    // The screen ends just past its desk.
    const screens = [aScreenAt('A', 1252, 500)];
    expect(judge(screens, {}, beside(2 + 0.9)).verdict).toBe('pass');
    expect(judge(screens, {}, beside(2 + 1.1)).verdict).toBe('fail');
  });

  it('what reaches onto the next desk of a row is carried by it', () => {
    const desks = [aDesk('Left', 1000), aDesk('Right', 1000)];
    const row = { desks, placements: [aPlacement(['Left', 'Right'], 3000, 2000, 20)] };
    expect(judge([aScreenAt('A', 1400, 500)], {}, row).verdict).toBe('pass');
    expect(judge([aScreenAt('A', 100, 500)], {}, row)).toMatchObject({ verdict: 'fail' });
  });
});

describe('screens-fit-desk: against each other', () => {
  it.each<[string, ScreenUse, ScreenUse, number | undefined]>([
    ['side by side', aScreenAt('A', 500, 500), aScreenAt('B', 1000, 500), undefined],
    ['20 into one another', aScreenAt('A', 500, 500), aScreenAt('B', 980, 500), 20],
    ['one 60 behind the other', aScreenAt('A', 500, 400), aScreenAt('B', 700, 460), undefined],
    ['one 30 behind the other: 20 into its body', aScreenAt('A', 500, 400), aScreenAt('B', 700, 430), 20],
    [
      'one above the other',
      aScreenAt('A', 500, 500),
      aScreenAt('B', 500, 500, { height: { line: 'bottom', over: 'desk', distance: fixed(400) } }),
      undefined,
    ],
    [
      'one above the other, 50 too low',
      aScreenAt('A', 500, 500),
      aScreenAt('B', 500, 500, { height: { line: 'bottom', over: 'desk', distance: fixed(350) } }),
      500,
    ],
    [
      'one over the other on an arm, as low as it goes',
      aScreenAt('A', 500, 500),
      aScreenAt('B', 500, 500, { height: { line: 'bottom', over: 'desk', distance: range(400, 600) } }),
      undefined,
    ],
    [
      'one over the other on an arm that goes lower',
      aScreenAt('A', 500, 500),
      aScreenAt('B', 500, 500, { height: { line: 'bottom', over: 'desk', distance: range(350, 600) } }),
      500,
    ],
    [
      'one that stands and one under it on an arm that goes higher',
      aScreenAt('A', 500, 500, { height: { line: 'bottom', over: 'desk', distance: range(10, 250) } }),
      aScreenAt('B', 500, 500, { height: { line: 'bottom', over: 'desk', distance: fixed(400) } }),
      500,
    ],
  ])('%s', (_, first, second, overlap) => {
    const finding = judge([first, second]);
    expect(finding.verdict).toBe(overlap === undefined ? 'pass' : 'fail');
    if (overlap !== undefined) {
      expect(finding.measured).toBeCloseTo(overlap, 6);
      expect(finding.message).toContain('B and A stand in one place');
    }
  });

  it('two that are turned toward the operator need room for their corners', () => {
    // Turned by 30° to each side, their inner ends stand farther away and meet in the middle: 250 · cos 30° from each middle.
    const pair = (x: number) => [
      aScreenAt('A', 750 - x, 500, { turn: given(-30) }),
      aScreenAt('B', 750 + x, 500, { turn: given(30) }),
    ];
    const meeting = 250 * Math.cos(Math.PI / 6);
    // Their bodies behind the faces lean toward each other by 50 · sin 30° more.
    expect(judge(pair(meeting + 24)).verdict).toBe('pass');
    expect(judge(pair(meeting - 24)).verdict).toBe('fail');
  });

  it('screens of all workstations at the desk count; one that two of them watch is one', () => {
    const workstations = [
      aStation('Sound', 'Left', undefined, ['Noor'], {
        screens: [aScreenAt('A', 500, 500), aScreenAt('C', 1200, 500)],
      }),
      aStation('Words', 'Left', undefined, ['Noor'], {
        screens: [aScreenAt('B', 600, 500), aScreenAt('C', 1210, 500)],
      }),
    ];
    const found = all([], {}, { workstations });
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ verdict: 'fail', subject: { kind: 'monitor', name: 'B' } });
    expect(found[0]!.measured).toBeCloseTo(400, 6);
  });

  it('screens on another desk do not count', () => {
    const workstations = [
      aStation('Sound', 'Left', undefined, ['Noor'], { screens: [aScreenAt('A', 500, 500)] }),
      aStation('Words', 'Right', undefined, ['Noor'], { screens: [aScreenAt('B', 500, 500)] }),
    ];
    const desks = [aDesk('Left', 1000), aDesk('Right', 1000)];
    expect(all([], {}, { workstations, desks }).map(({ verdict }) => verdict)).toEqual(['pass', 'pass']);
  });
});

describe('screens-fit-desk: what is missing', () => {
  it.each<[string, ScreenUse[], Partial<Desk>, string]>([
    ['a setback', [aScreenAt('A', 500, 500, { setback: undefined })], {}, 'setback'],
    ['a height', [aScreenAt('A', 500, 500, { height: undefined })], {}, 'bottom'],
    ['the desk’s width', [aScreenAt('A', 500, 500)], { width: undefined }, 'width'],
    ['the desk’s depth', [aScreenAt('A', 500, 500)], { depth: undefined }, 'depth'],
  ])('without %s it asks for it', (_, screens, desk, property) => {
    expect(judge(screens, desk)).toMatchObject({ verdict: 'unknown', missing: { property } });
  });

  it('asks nothing of a desk without screens, and says how deep it takes a screen to be', () => {
    expect(all([])).toEqual([]);
    expect(judge([aScreenAt('A', 750, 500)]).assumptions).toEqual(['a screen is 50 mm deep behind its face']);
  });
});

describe('screens-fit-desk: what a reader is told', () => {
  const tell = (...args: Parameters<typeof booth>) => told(booth(...args), 'screens-fit-desk');

  it('where they fit', () => {
    expect(tell([aScreenAt('A', 400, 300), aScreenAt('B', 1100, 300)])).toMatchInlineSnapshot(`
      "pass, desk Left
      The screens on Left fit: A 500 mm wide, B 500 mm wide, on 1500 mm.
      at desks.Left, by geometry
      granted a screen is 50 mm deep behind its face"
    `);
  });

  it('where one reaches past an end, or over an edge', () => {
    expect(tell([aScreenAt('A', 100, 300)])).toMatchInlineSnapshot(`
      "fail, monitor A
      A is 500 mm wide and reaches 150 mm past the left end of Left. Move it, or take a wider desk.
      : 150 against 0 mm, margin -150
      at workstations.Sound.screens.0.monitor, by geometry
      granted a screen is 50 mm deep behind its face"
    `);
    expect(tell([aScreenAt('A', 1400, 300)])).toMatchInlineSnapshot(`
      "fail, monitor A
      A is 500 mm wide and reaches 150 mm past the right end of Left. Move it, or take a wider desk.
      : 150 against 0 mm, margin -150
      at workstations.Sound.screens.0.monitor, by geometry
      granted a screen is 50 mm deep behind its face"
    `);
    expect(tell([aScreenAt('A', 750, 690)])).toMatchInlineSnapshot(`
      "pass, desk Left
      The screens on Left fit: A 500 mm wide, on 1500 mm.
      at desks.Left, by geometry
      granted a screen is 50 mm deep behind its face"
    `);
    expect(tell([aScreenAt('A', 750, 10, { turn: given(40) })])).toMatchInlineSnapshot(`
      "marginal, monitor A
      A reaches 151 mm over the near edge of Left. See that nobody runs into it.
      : 150.7 against 0 mm, margin -150.7
      at workstations.Sound.screens.0.monitor, by geometry
      granted a screen is 50 mm deep behind its face"
    `);
    expect(tell([aScreenAt('A', 750, 690, { rating: given(10) })])).toMatchInlineSnapshot(`
      "pass, desk Left
      The screens on Left fit: A 500 mm wide, on 1500 mm.
      at desks.Left, by geometry
      granted a screen is 50 mm deep behind its face"
    `);
  });

  it('where nothing holds it over the edge, and where an arm does', () => {
    expect(tell([aScreenAt('A', 750, 760)])).toMatchInlineSnapshot(`
      "fail, monitor A
      A reaches 60 mm over the far edge of Left. Nothing holds it there: bring it onto the desk, or hang it on an arm and say so with \`arm\`.
      : 60 against 0 mm, margin -60
      at workstations.Sound.screens.0.monitor, by geometry
      granted a screen is 50 mm deep behind its face"
    `);
    expect(tell([aScreenAt('A', 750, 760, { rating: given(10) })])).toMatchInlineSnapshot(`
      "marginal, monitor A
      A reaches 60 mm over the far edge of Left. See that nobody runs into it.
      : 60 against 0 mm, margin -60
      at workstations.Sound.screens.0.monitor, by geometry
      granted a screen is 50 mm deep behind its face"
    `);
  });

  it('where two stand in one place', () => {
    expect(tell([aScreenAt('A', 600, 300), aScreenAt('B', 900, 300)])).toMatchInlineSnapshot(`
      "fail, monitor B
      B and A stand in one place: they overlap by 200 mm. Move them apart, or set one above the other.
      : 200 against 0 mm, margin -200
      at workstations.Sound.screens.1.monitor, by geometry
      see workstations.Sound.screens.0.monitor: A stands here too
      granted a screen is 50 mm deep behind its face"
    `);
  });

  it('where something is missing', () => {
    expect(tell([aScreenAt('A', 750, 300)], { width: undefined })).toMatchInlineSnapshot(`
      "unknown, desk Left
      Cannot say whether the screens fit on Left. Add \`width\` to desk Left, such as \`width 1520mm\`.
      at desks.Left, by geometry
      ask width of desk Left, as width 1520mm, at desks.Left"
    `);
    expect(tell([aScreenAt('A', 750, 300)], { depth: undefined })).toMatchInlineSnapshot(`
      "unknown, desk Left
      Cannot say whether the screens fit on Left. Add \`depth\` to desk Left, such as \`depth 690mm\`.
      at desks.Left, by geometry
      ask depth of desk Left, as depth 690mm, at desks.Left"
    `);
    expect(tell([aScreenAt('A', 750, 300, { setback: undefined })])).toMatchInlineSnapshot(`
      "unknown, monitor A
      Cannot say whether A fits on Left. Add \`setback\` to monitor A, such as \`setback 510mm\`.
      at workstations.Sound.screens.0.monitor, by geometry
      ask setback of monitor A, as setback 510mm, at workstations.Sound.screens.0"
    `);
  });
});
