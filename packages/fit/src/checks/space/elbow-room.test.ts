import { describe, expect, it } from 'vitest';
import type { Booth } from '../../booth.js';
import {
  aBooth,
  aCrowd,
  aDesk,
  aMeasuredOperator,
  anOperator,
  aPlacement,
  aStation,
  given,
  nowhere,
} from '../../testing/booths.js';
import { findingOf, findingsOf, wholeBody } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import type { Finding } from '../../assessment.js';
import { told } from '../../testing/told.js';

const INCH = 25.4;
const people = {
  crowds: [aCrowd('Men', 0), aCrowd('Women', 1)],
  operators: ['Noor', 'Tobias'].map((name) => aMeasuredOperator(name, wholeBody({ forearmForearmBreadth: 500 }))),
};

function alone(width: number, parts: Partial<Booth> = {}): Booth {
  return aBooth({
    ...people,
    desks: [aDesk('Left', 740, { width: given(width) })],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'])],
    ...parts,
  });
}

/** Two stations in the middle of a long desk, so far apart. */
function two(apart: number, left: readonly string[], right: readonly string[], parts: Partial<Booth> = {}): Booth {
  return aBooth({
    ...people,
    desks: [aDesk('Left', 740, { width: given(4000) })],
    workstations: [
      aStation('Sound', 'Left', undefined, left, { at: given(2000 - apart / 2) }),
      aStation('Light', 'Left', undefined, right, { at: given(2000 + apart / 2) }),
    ],
    ...parts,
  });
}

function between(...place: Parameters<typeof two>): Finding {
  return findingsOf(two(...place), 'elbow-room').find(({ message }) => message.includes('middle to middle'))!;
}

describe('elbow-room, one operator: width of the desk, preferred 762, outer 610', () => {
  it.each([
    // NUREG-0700 Rev. 2, 12.1.1.3-5; Panero & Zelnik 3.4; CRIOP 2003 760; AS/NZS 4442 1200; ASR A1.2 1200.
    [outside('NUREG-0700 Rev. 2, 12.1.1.3-5', 'T15: 30 in is the minimum'), 762, 'pass'],
    [outside('NUREG-0700 Rev. 2, 12.1.1.3-5', 'T15: 750 mm is below it'), 750, 'marginal'],
    [outside('CRIOP 2003, 1.4.8', '760 mm'), 760, 'marginal'],
    ['1 mm is allowed', 761, 'pass'],
    [outside('Panero & Zelnik 1979, 3.4', '24 in is a minimal place'), 24 * INCH, 'marginal'],
    ['1 mm is allowed there too', 24 * INCH - 1, 'marginal'],
    ['2 mm are not', 24 * INCH - 2, 'fail'],
    [outside('ASR A1.2', '1200 mm beside another workplace'), 1200, 'pass'],
  ] as const)('%s', (_, width, verdict) => {
    expect(findingOf(alone(width), 'elbow-room')).toMatchObject({ verdict, measured: width });
  });

  it('of a shared desk each has the stretch to its end or half way to the next', () => {
    const findings = findingsOf(two(700, ['Noor'], ['Tobias']), 'elbow-room');
    expect(findings.slice(0, 2).map(({ measured }) => measured)).toEqual([2000, 2000]);
    const four = aBooth({
      ...people,
      desks: [aDesk('Left', 740, { width: given(2600) })],
      workstations: ['A', 'B', 'C', 'D'].map((name) => aStation(name, 'Left', undefined, ['Women'])),
    });
    const [first] = findingsOf(four, 'elbow-room');
    expect(first).toMatchObject({
      verdict: 'marginal',
      measured: 650,
      assumptions: ['the people at Left share its width evenly'],
    });
  });

  it('the file’s own limit holds, with its reason', () => {
    const overrides = [{ check: 'elbow-room', value: 700, reason: 'small hands', origin: nowhere }];
    const finding = findingOf(alone(700, { overrides }), 'elbow-room');
    expect(finding).toMatchObject({ verdict: 'pass', limit: 700 });
    expect(finding.source).toContain('small hands');
  });

  it('asks for the width', () => {
    const { width: _, ...bare } = aDesk('Left', 740);
    expect(findingOf(alone(1, { desks: [bare] }), 'elbow-room')).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'width', of: 'desk Left' },
    });
  });
});

describe('elbow-room, neighbours: half the sum of their breadths + 100, outer + 50', () => {
  it.each([
    // Panero & Zelnik 5.1: on 24 in centres fewer than 5 in 100 men are undisturbed, 28 in is a compromise, 30 in serves 95.
    [
      outside('Panero & Zelnik 1979, 5.1', 'T12: on 24 in centres fewer than 5 in 100 men are undisturbed'),
      24 * INCH,
      'fail',
      0,
      0.05,
    ],
    [outside('Panero & Zelnik 1979, 5.1', 'T12: 28 in is a compromise'), 28 * INCH, 'marginal', 0, 0.9],
    [outside('Panero & Zelnik 1979, 5.1', 'T12: 30 in serves 95 in 100'), 30 * INCH, 'pass', 0.95, 1],
  ] as const)('%s between men', (_, apart, verdict, least, most) => {
    const finding = between(apart, ['Men'], ['Men']);
    expect(finding.verdict).toBe(verdict);
    expect(finding.share).toBeGreaterThanOrEqual(least);
    expect(finding.share).toBeLessThanOrEqual(most);
  });

  it.each([
    // Two people of 500: 600 is enough for them, but nobody has a place of less than 762.
    [762, 'pass'],
    [761, 'pass'],
    [759, 'marginal'],
    [610, 'marginal'],
    [607, 'fail'],
  ] as const)('two people of 500 mm, %d apart: %s', (apart, verdict) => {
    expect(between(apart, ['Noor'], ['Tobias'])).toMatchObject({ verdict, measured: apart });
  });

  it.each([
    // Two people of 700: 800 preferred, 750 outer.
    [800, 'pass'],
    [799, 'pass'],
    [797, 'marginal'],
    [750, 'marginal'],
    [748, 'fail'],
  ] as const)('two people of 700 mm, %d apart: %s', (apart, verdict) => {
    const operators = ['Noor', 'Tobias'].map((name) =>
      aMeasuredOperator(name, wholeBody({ forearmForearmBreadth: 700 })),
    );
    expect(between(apart, ['Noor'], ['Tobias'], { operators }).verdict).toBe(verdict);
  });

  it('of those who take turns, the pair with least room decides, and is named', () => {
    const broad = aMeasuredOperator('Kai', wholeBody({ forearmForearmBreadth: 720 }));
    const operators = [...people.operators, broad];
    const finding = between(780, ['Noor', 'Tobias'], ['Tobias', 'Kai'], { operators });
    expect(finding.verdict).toBe('pass');
    const closer = between(700, ['Noor', 'Tobias'], ['Tobias', 'Kai'], { operators });
    expect(closer.message).toContain('the elbows of Noor and Kai meet');
  });

  it('names a distance at which they have room', () => {
    const finding = between(600, ['Men'], ['Men']);
    const [, apart] = /set them (\d+) mm apart/.exec(finding.message)!;
    expect(between(Number(apart), ['Men'], ['Men']).verdict).toBe('pass');
    expect(finding.message).toContain('Sound and Light stand 600 mm apart, middle to middle');
  });

  it('desks in a row make neighbours too; desks apart do not', () => {
    const desks = ['Left', 'Right'].map((name) => aDesk(name, 740, { width: given(700) }));
    const workstations = [
      aStation('Sound', 'Left', undefined, ['Noor']),
      aStation('Light', 'Right', undefined, ['Tobias']),
    ];
    const inARow = two(0, [], [], { desks, workstations, placements: [aPlacement(['Left', 'Right'], 2000, 2000)] });
    expect(findingsOf(inARow, 'elbow-room').map(({ measured }) => measured)).toEqual([700, 700, 700]);
    expect(findingsOf({ ...inARow, placements: [] }, 'elbow-room')).toHaveLength(2);
  });

  it('nobody is their own neighbour', () => {
    expect(between(700, ['Noor'], ['Noor'])).toBeUndefined();
  });

  it('without people the places alone are measured', () => {
    expect(between(700, [], []).verdict).toBe('marginal');
    expect(between(800, [], []).verdict).toBe('pass');
  });

  it('people of whom only the stature is known give a share', () => {
    const operators = [anOperator('Noor', { stature: 1900 }), anOperator('Tobias', { stature: 1900 })];
    const finding = between(700, ['Noor'], ['Tobias'], { operators });
    expect(finding.shareAtLimit).toBeGreaterThan(0.5);
    expect(finding.shareAtLimit).toBeLessThan(1);
  });
});

describe('elbow-room: what a reader is told', () => {
  const tell = (...args: Parameters<typeof alone>) => told(alone(...args), 'elbow-room');

  it('where an operator has room, little, and none', () => {
    expect(tell(900)).toMatchInlineSnapshot(`
      "pass, workstation Sound
      Sound has 900 mm of the width of Left: room for elbows.
      : 900 against 762 mm, margin 138
      at workstations.Sound, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see desks.Left.width: the desk Left"
    `);
    expect(tell(700)).toMatchInlineSnapshot(`
      "marginal, workstation Sound
      Sound has 700 mm of the width of Left, too little for elbows: give it 765 mm.
      : 700 against 762 mm, margin -62
      at workstations.Sound, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see desks.Left.width: the desk Left"
    `);
    expect(tell(500)).toMatchInlineSnapshot(`
      "fail, workstation Sound
      Sound has 500 mm of the width of Left, too little for elbows: give it 765 mm.
      : 500 against 609.6 mm, margin -109.6
      at workstations.Sound, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see desks.Left.width: the desk Left"
    `);
  });

  it('where the desk’s width is not said', () => {
    expect(tell(1, { desks: [aDesk('Left', 740, { width: undefined })] })).toMatchInlineSnapshot(`
      "unknown, workstation Sound
      Cannot say how much width there is at Sound. Add \`width\` to desk Left, such as \`width 1520mm\`.
      at desks.Left, by NUREG-0700 Rev. 2, 12.1.1.3-5
      ask width of desk Left, as width 1520mm, at desks.Left"
    `);
  });

  it('where the file has a limit of its own', () => {
    expect(tell(700, { overrides: [{ check: 'elbow-room', value: 680, reason: 'one hand is used', origin: nowhere }] }))
      .toMatchInlineSnapshot(`
        "pass, workstation Sound
        Sound has 700 mm of the width of Left: room for elbows.
        : 700 against 680 mm, margin 20
        at workstations.Sound, by the file’s own limit: one hand is used
        see desks.Left.width: the desk Left; overrides.0: the file’s own limit: one hand is used"
      `);
  });

  it('of neighbours', () => {
    expect(told(two(800, ['Noor'], ['Tobias']), 'elbow-room')).toMatchInlineSnapshot(`
      "pass, workstation Sound
      Sound has 2000 mm of the width of Left: room for elbows.
      : 2000 against 762 mm, margin 1238
      at workstations.Sound.at, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see desks.Left.width: the desk Left

      pass, workstation Light
      Light has 2000 mm of the width of Left: room for elbows.
      : 2000 against 762 mm, margin 1238
      at workstations.Light.at, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see desks.Left.width: the desk Left

      pass, workstation Light
      Sound and Light stand 800 mm apart, middle to middle: Noor and Tobias have room for their elbows.
      : 800 against 762 mm, margin 38, shares 1 and 1
      at workstations.Light.at, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see workstations.Sound: Sound, next to it"
    `);
    expect(told(two(580, ['Noor'], ['Tobias']), 'elbow-room')).toMatchInlineSnapshot(`
      "pass, workstation Sound
      Sound has 2000 mm of the width of Left: room for elbows.
      : 2000 against 762 mm, margin 1238
      at workstations.Sound.at, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see desks.Left.width: the desk Left

      pass, workstation Light
      Light has 2000 mm of the width of Left: room for elbows.
      : 2000 against 762 mm, margin 1238
      at workstations.Light.at, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see desks.Left.width: the desk Left

      fail, workstation Light
      Sound and Light stand 580 mm apart, middle to middle, so the elbows of Noor and Tobias meet: set them 765 mm apart.
      : 580 against 609.6 mm, margin -29.6, shares 0 and 0
      at workstations.Light.at, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see workstations.Sound: Sound, next to it"
    `);
    expect(told(two(700, ['Women'], ['Men']), 'elbow-room')).toMatchInlineSnapshot(`
      "pass, workstation Sound
      Sound has 2000 mm of the width of Left: room for elbows.
      : 2000 against 762 mm, margin 1238
      at workstations.Sound.at, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see desks.Left.width: the desk Left

      pass, workstation Light
      Light has 2000 mm of the width of Left: room for elbows.
      : 2000 against 762 mm, margin 1238
      at workstations.Light.at, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see desks.Left.width: the desk Left

      marginal, workstation Light
      Sound and Light stand 700 mm apart, middle to middle, so the elbows of Women and Men meet: set them 765 mm apart.
      : 700 against 762 mm, margin -62, shares 0 and 1
      at workstations.Light.at, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see workstations.Sound: Sound, next to it"
    `);
  });

  it('of places without people, that share a desk evenly', () => {
    expect(
      tell(1300, {
        workstations: [aStation('Sound', 'Left', undefined, []), aStation('Light', 'Left', undefined, [])],
      }),
    ).toMatchInlineSnapshot(`
      "marginal, workstation Sound
      Sound has 650 mm of the width of Left, too little for elbows: give it 765 mm.
      : 650 against 762 mm, margin -112
      at workstations.Sound, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see desks.Left.width: the desk Left
      granted the people at Left share its width evenly

      marginal, workstation Light
      Light has 650 mm of the width of Left, too little for elbows: give it 765 mm.
      : 650 against 762 mm, margin -112
      at workstations.Light, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see desks.Left.width: the desk Left
      granted the people at Left share its width evenly

      marginal, workstation Light
      Sound and Light stand 650 mm apart, middle to middle, so the elbows of their operators meet: set them 765 mm apart.
      : 650 against 762 mm, margin -112
      at workstations.Light, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see workstations.Sound: Sound, next to it
      granted the people at Left share its width evenly"
    `);
  });
});
