import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Booth, Desk, Hanging, Legs, Rack, Seat, Workstation } from '../../booth.js';
import {
  aBooth,
  aCrowd,
  aDesk,
  aMeasuredOperator,
  aSeat,
  aStation,
  byDefault,
  given,
  nowhere,
  ringAt,
  ringBelow,
} from '../../testing/booths.js';
import { findingOf, findingsOf, wholeBody } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import { assess } from '../../assess/assess.js';
import { makeScene } from '../../scene/scene.js';
import { kneeSpace } from '../../stations/knee-space.js';
import { told } from '../../testing/told.js';

interface Place {
  readonly desk?: Partial<Desk>;
  readonly height?: number | readonly [number, number];
  readonly racks?: readonly Rack[];
  readonly station?: Partial<Workstation>;
  readonly seat?: number | readonly [number, number];
  readonly ring?: Partial<Seat>;
  readonly knee?: number;
}

const usual = { poplitealHeight: 400, thighClearance: 140, sittingElbowHeight: 280 };

/** A desk 1500 wide and 700 deep with a top of 25, and knees far below it. */
function seated({ desk, height = 720, racks = [], station, seat = 420, ring, knee = 510 }: Place): Booth {
  return aBooth({
    operators: [aMeasuredOperator('Noor', wholeBody({ ...usual, sittingKneeHeight: knee }))],
    desks: [aDesk('Left', height, desk)],
    seats: [aSeat('Low', seat, { kind: 'chair', ...ring })],
    racks,
    workstations: [aStation('Sound', 'Left', 'Low', ['Noor'], station)],
  });
}

const judge = (place: Place) => findingOf(seated(place), 'knee-room');

function legs(width: number, thickness: number, inset = 0): Pick<Desk, 'legs'> {
  const frame: Legs = { origin: nowhere, width: given(width), thickness: given(thickness), inset: byDefault(inset) };
  return { legs: frame };
}

function rack(at: number, setback: number, width = 560): Rack {
  return {
    name: 'Power',
    origin: nowhere,
    units: given(8),
    width: given(width),
    depth: given(400),
    frame: byDefault(50),
    plugs: byDefault(75),
    under: { desk: { name: 'Left', origin: nowhere }, at: given(at), setback: given(setback) },
  };
}

function hanging(drop: number, fromEdge: number, depth = 100): Pick<Desk, 'hanging'> {
  const piece: Hanging = {
    kind: 'drawer',
    origin: nowhere,
    drop: given(drop),
    fromEdge: given(fromEdge),
    depth: given(depth),
  };
  return { hanging: [piece] };
}

const place = (at: number): Partial<Workstation> => ({ at: given(at) });

describe('knee-room: width 520, depth at the knee 440, at the foot 600, height at the foot 100', () => {
  it.each([
    // OSHA: each figure at its bound, 1 mm short (allowed) and 2 mm short.
    ['520 wide between legs', { desk: legs(620, 50) }, 'pass'],
    ['519', { desk: legs(619, 50) }, 'pass'],
    ['518', { desk: legs(618, 50) }, 'fail'],
    ['600 deep at the foot', { desk: { depth: given(600) } }, 'pass'],
    ['599', { desk: { depth: given(599) } }, 'pass'],
    ['598', { desk: { depth: given(598) } }, 'fail'],
    [
      outside('OSHA Computer Workstations, work space', '4 in high at the foot'),
      { desk: hanging(720 - 25 - 100, 440) },
      'pass',
    ],
    ['99 high at the foot', { desk: hanging(720 - 25 - 99, 440) }, 'pass'],
    ['98 high at the foot', { desk: hanging(720 - 25 - 98, 440) }, 'fail'],
  ] as const)('%s', (_, where, verdict) => {
    expect(judge({ station: place(750), ...where }).verdict).toBe(verdict);
  });

  it.each([
    // Published free space, wide × deep at the knee × deep at the foot.
    [
      outside('OSHA Computer Workstations, work space', '20 in wide, 17 in deep at the knee, 24 in at the foot'),
      520,
      440,
      600,
      'pass',
    ],
    [outside('IMO MSC/Circ.982, 5.3.1.5', '450 mm deep at the knee, 600 at the foot'), 520, 450, 600, 'pass'],
    [outside('AS/NZS 4442:1997, in a secondary source', '650 mm wide, 450 and 600 deep'), 650, 450, 600, 'pass'],
    [outside('EN 527-1:2011, in a secondary source', '1000 mm wide, 600 and 800 deep'), 1000, 600, 800, 'pass'],
    [outside('MIL-STD-1472F, from memory', '20 in wide is too narrow here'), 508, 460, 600, 'fail'],
  ] as const)('%s', (_, width, knee, foot, verdict) => {
    const desk = { ...legs(width + 100, 50), depth: given(Math.max(knee, foot)) };
    expect(judge({ desk, station: place(750) }).verdict).toBe(verdict);
  });

  it.each([
    ['a rack before the knees', [rack(500, 300)], 'fail', 300],
    ['a rack before the feet', [rack(500, 550)], 'fail', 550],
    ['a rack beyond the feet', [rack(500, 600)], 'pass', undefined],
    ['a rack at the left end, 130 from the middle', [rack(60, 0)], 'fail', 260],
    ['a rack 260 from the middle', [rack(0, 0, 490)], 'pass', undefined],
    ['a rack at the right end', [rack(1000, 0, 400)], 'fail', 500],
    ['a narrow rack beside the knees but before a foot', [rack(950, 500, 300)], 'fail', 500],
    [
      'a rack under another desk',
      [{ ...rack(500, 0), under: { ...rack(500, 0).under!, desk: { name: 'Right', origin: nowhere } } }],
      'pass',
      undefined,
    ],
  ] as const)('%s', (_, racks, verdict, measured) => {
    const finding = judge({ racks, station: place(750) });
    expect(finding.verdict).toBe(verdict);
    if (measured !== undefined) expect(finding.measured).toBeCloseTo(measured);
  });

  it('where the file does not say where people sit, they sit where knees have room, and the finding says so', () => {
    const free = judge({ racks: [rack(60, 0)] });
    expect(free).toMatchObject({ verdict: 'pass' });
    expect(free.assumptions).toContain('people at Sound sit where knees have room: at 1060mm');
    expect(judge({ racks: [rack(60, 0)], station: place(750) }).verdict).toBe('fail');
    expect(judge({ racks: [rack(300, 0, 900)] }).verdict).toBe('fail');
  });

  it('a closed front leaves no room, whatever its toe space', () => {
    const toeSpace = { origin: nowhere, depth: given(100), height: given(100) };
    const finding = judge({ desk: { closed: true, toeSpace } });
    expect(finding).toMatchObject({ verdict: 'fail', measured: 100, limit: 600 });
    expect(finding.message).toContain('The front of Left is closed');
  });

  it('legs without a thickness are taken as 50 mm, and the finding says so', () => {
    const frame: Legs = { origin: nowhere, width: given(615), inset: byDefault(0) };
    const finding = judge({ desk: { legs: frame } });
    expect(finding).toMatchObject({ verdict: 'fail', measured: 515 });
    expect(finding.assumptions).toContain('each leg of Left is 50 mm thick');
  });

  it('legs that stand back from the knees do not narrow them', () => {
    expect(judge({ desk: legs(600, 50, 0) }).verdict).toBe('fail');
    expect(judge({ desk: legs(1400, 50, 450) }).verdict).toBe('pass');
  });

  it('what no height can mend is not advised as a height, even where two people want different ones', () => {
    const booth = seated({ racks: [rack(500, 300)], station: place(750) });
    const tobias = wholeBody({ poplitealHeight: 420, sittingElbowHeight: 190, thighClearance: 140 });
    const findings = findingsOf(
      {
        ...booth,
        operators: [...booth.operators, aMeasuredOperator('Tobias', tobias)],
        workstations: [aStation('Sound', 'Left', 'Low', ['Noor', 'Tobias'], place(750))],
      },
      'knee-room',
    );
    expect(findings.map(({ remedies }) => remedies)).toEqual([[], []]);
    expect(findings[0]!.message).toBe('Noor’s feet have 300 mm under Left before the rack Power: give them 600 mm.');
  });
});

describe('knee-room: U − F − K, at least 25', () => {
  // K is the knee with 25 mm of shoe; the top is 25 thick.
  it.each([
    ['25 mm above the knee', { height: 585, knee: 510, seat: 380 }, 'pass', 25],
    ['1 mm is allowed', { height: 584, knee: 510, seat: 380 }, 'pass', 24],
    ['2 mm is not', { height: 583, knee: 510, seat: 380 }, 'fail', 23],
    ['the knee touches', { height: 560, knee: 510, seat: 350 }, 'fail', 0],
    ['the knee does not fit', { height: 550, knee: 510, seat: 340 }, 'fail', -10],
    ['a drawer over the knee counts', { height: 700, knee: 510, desk: hanging(130, 300) }, 'fail', 10],
    ['a drawer beyond 17 in does not', { height: 700, knee: 510, desk: hanging(130, 17 * 25.4) }, 'pass', 440],
    ['a fixed ring lifts the knee', { height: 1000, knee: 510, seat: 800, ring: ringAt(400) }, 'pass', 40],
    ['a higher ring lifts it too far', { height: 1000, knee: 510, seat: 800, ring: ringAt(450) }, 'fail', -10],
    [
      'a hanging ring goes with the seat: D − S counts',
      { height: 1000, knee: 510, seat: 800, ring: ringBelow(400) },
      'pass',
      40,
    ],
    ['a shorter drop lifts the knee', { height: 1000, knee: 510, seat: 800, ring: ringBelow(370) }, 'fail', 10],
  ] as const)('%s', (_, where, verdict, measured) => {
    const finding = judge(where);
    expect(finding.verdict).toBe(verdict);
    if (verdict !== 'pass' || measured < 25) expect(finding.measured).toBeCloseTo(measured);
  });

  it('an adjustable desk is raised, an adjustable stool with a hanging ring is lowered', () => {
    expect(judge({ height: [500, 700], knee: 560 }).verdict).toBe('pass');
    expect(judge({ height: 1000, knee: 560, seat: [700, 850], ring: ringBelow(400) }).verdict).toBe('pass');
    expect(judge({ height: 1000, knee: 560, seat: [800, 850], ring: ringBelow(400) }).verdict).toBe('fail');
  });

  it(outside('Panero & Zelnik 1979, 9.2', 'T23: an underside at 26 1/2 in clears the knees of most people'), () => {
    const crowd = {
      crowds: [aCrowd('Volunteers', 0.5)],
      workstations: [aStation('Sound', 'Left', 'Low', ['Volunteers'])],
    };
    const finding = findingOf({ ...seated({ height: 673 + 25, seat: [381, 457] }), ...crowd }, 'knee-room');
    expect(finding).toMatchObject({ verdict: 'pass' });
  });

  it('says what to change', () => {
    const finding = judge({ height: 585, knee: 545, seat: 380 });
    expect(finding.message).toContain('Noor’s knees are 10 mm too high for the underside of Left');
    expect(finding.remedies[0]!.title).toMatch(/^Raise the desk Left to \d+ mm: suits Noor$/);
  });

  it.each([
    ['width', 'desk Left', { ...seated({}), desks: [without(aDesk('Left', 720), 'width')] }],
    ['depth', 'desk Left', { ...seated({}), desks: [without(aDesk('Left', 720), 'depth')] }],
    ['width', 'rack Power', seated({ racks: [without(rack(0, 0), 'width')] })],
    ['drop', 'the drawer of desk Left', seated({ desk: { hanging: [without(hanging(1, 0).hanging[0]!, 'drop')] } })],
  ])('asks for the %s of %s, and leaves the joint share alone', (property, of, booth) => {
    expect(findingOf(booth, 'knee-room')).toMatchObject({ verdict: 'unknown', missing: { property, of } });
    expect(assess(booth).workstations[0]!.served[0]).toMatchObject({ share: 1, shareAtLimit: 1 });
  });

  it('asks nothing of people who stand', () => {
    const standing = { ...seated({}), workstations: [aStation('Sound', 'Left', undefined, ['Noor'])] };
    expect(findingsOf(standing, 'knee-room')).toEqual([]);
  });
});

function without<T extends object, K extends keyof T>(whole: T, key: K): Omit<T, K> {
  const { [key]: _, ...rest } = whole;
  return rest;
}

it('behind an open front the depth at the knee never decides: feet have no more of it, and need more', () => {
  const length = (max: number) => fc.integer({ min: 0, max });
  fc.assert(
    fc.property(length(1500), length(900), length(700), length(940), length(700), (at, depth, inset, left, setback) => {
      const booth = seated({
        desk: { depth: given(depth), ...legs(1400, 50, inset) },
        racks: [rack(left, setback)],
        station: place(at),
      });
      const { knee, foot } = kneeSpace(makeScene(booth, []).stations[0]!);
      expect(foot.length).toBeLessThanOrEqual(knee.length);
    }),
  );
});

describe('knee-room: what a reader is told', () => {
  const tell = (...args: Parameters<typeof seated>) => told(seated(...args), 'knee-room');

  it('where there is room', () => {
    expect(tell({})).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, sit
      Noor’s knees and feet have room under Left.
      : 700 against 600 mm, margin 100, shares 1 and 1
      at workstations.Sound.people.Noor, by OSHA Computer Workstations, work space
      see desks.Left.height: the desk Left; seats.Low.seat: the chair Low; operators.Noor: what is known of Noor
      granted Left stands on its ends
      default shoes of 25 mm; a top of 25 mm"
    `);
  });

  it('where legs of the desk stand next to the knees', () => {
    expect(tell({ desk: legs(560, 40) })).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      Noor’s knees have 480 mm from side to side under Left, where a leg of the desk stands next to them: give them 520 mm.
      : 480 against 520 mm, margin -40, shares 0 and 0
      at workstations.Sound.people.Noor, by OSHA Computer Workstations, work space
      see desks.Left.height: the desk Left; seats.Low.seat: the chair Low; operators.Noor: what is known of Noor
      default shoes of 25 mm; a top of 25 mm"
    `);
  });

  it('where a rack stands before the feet', () => {
    expect(tell({ racks: [rack(470, 500)] })).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      Noor’s feet have 500 mm under Left before the rack Power: give them 600 mm.
      : 500 against 600 mm, margin -100, shares 0 and 0
      at workstations.Sound.people.Noor, by OSHA Computer Workstations, work space
      see desks.Left.height: the desk Left; seats.Low.seat: the chair Low; operators.Noor: what is known of Noor
      granted Left stands on its ends
      default shoes of 25 mm; a top of 25 mm"
    `);
  });

  it('where a drawer takes the height of the feet, and of the knees', () => {
    expect(tell({ desk: hanging(640, 450) })).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      Noor’s feet have 55 mm of height under Left: give them 100 mm. Without the drawer they have 640 mm more. Raise the desk Left to 765 mm: nearest for Noor.
      : 55 against 100 mm, margin -45, shares 0 and 0
      at workstations.Sound.people.Noor, by OSHA Computer Workstations, work space
      see desks.Left.height: the desk Left; seats.Low.seat: the chair Low; operators.Noor: what is known of Noor
      weigh Raise the desk Left to 765 mm: nearest for Noor | desks.Left.height := 765mm
      granted Left stands on its ends
      default shoes of 25 mm; a top of 25 mm"
    `);
    expect(tell({ knee: 690 })).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      Noor’s knees are 20 mm too high for the underside of Left. Raise the desk Left to 765 mm: nearest for Noor.
      : -20 against 25 mm, margin -45, shares 0 and 0
      at workstations.Sound.people.Noor, by OSHA Computer Workstations, work space
      see desks.Left.height: the desk Left; seats.Low.seat: the chair Low; operators.Noor: what is known of Noor
      weigh Raise the desk Left to 765 mm: nearest for Noor | desks.Left.height := 765mm
      granted Left stands on its ends
      default shoes of 25 mm; a top of 25 mm"
    `);
    const under = { knee: 690, desk: hanging(60, 100) };
    expect(tell(under)).toContain('the underside of Left. Without the drawer they have 60 mm more.');
  });

  it('where the front is closed', () => {
    expect(tell({ desk: { closed: true } })).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      The front of Left is closed, so Noor’s knees have no room under it: open the front, or stand there.
      : 0 against 600 mm, margin -600, shares 0 and 0
      at workstations.Sound.people.Noor, by OSHA Computer Workstations, work space
      see desks.Left.height: the desk Left; seats.Low.seat: the chair Low; operators.Noor: what is known of Noor
      granted Left stands on its ends
      default shoes of 25 mm; a top of 25 mm"
    `);
  });

  it('where people sit beside what is in the way', () => {
    expect(tell({ racks: [rack(0, 0, 600)] })).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, sit
      Noor’s knees and feet have room under Left.
      : 700 against 600 mm, margin 100, shares 1 and 1
      at workstations.Sound.people.Noor, by OSHA Computer Workstations, work space
      see desks.Left.height: the desk Left; seats.Low.seat: the chair Low; operators.Noor: what is known of Noor
      granted Left stands on its ends; people at Sound sit where knees have room: at 1050mm
      default shoes of 25 mm; a top of 25 mm"
    `);
  });

  it('where something is not said', () => {
    expect(tell({ desk: { depth: undefined } })).toMatchInlineSnapshot(`
      "unknown, workstation Sound, sit
      Cannot say anything of knee and foot room at Sound. Add \`depth\` to desk Left, such as \`depth 690mm\`.
      at workstations.Sound, by OSHA Computer Workstations, work space
      ask depth of desk Left, as depth 690mm, at desks.Left"
    `);
    expect(tell({ desk: { hanging: [{ kind: 'drawer', origin: nowhere, fromEdge: given(0) }] } }))
      .toMatchInlineSnapshot(`
        "unknown, workstation Sound, sit
        Cannot say anything of knee and foot room at Sound. Add \`drop\` to the drawer of desk Left, such as \`drop 100mm\`.
        at workstations.Sound, by OSHA Computer Workstations, work space
        ask drop of the drawer of desk Left, as drop 100mm, at desks.Left.hanging.0"
      `);
  });

  it('where the room above the knees is the least of all, and where it is too little', () => {
    // 720 less a top of 25 and knees of 560 and 25 in shoes: 110. And of knees of 660: 10.
    expect(tell({ knee: 560 })).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, sit
      110 mm is left above Noor’s knees under Left.
      : 110 against 25 mm, margin 85, shares 1 and 1
      at workstations.Sound.people.Noor, by OSHA Computer Workstations, work space
      see desks.Left.height: the desk Left; seats.Low.seat: the chair Low; operators.Noor: what is known of Noor
      granted Left stands on its ends
      default shoes of 25 mm; a top of 25 mm"
    `);
    expect(tell({ knee: 660 })).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      Only 10 mm is left above Noor’s knees under Left: too little for clothing and moving. Raise the desk Left to 735 mm: nearest for Noor.
      : 10 against 25 mm, margin -15, shares 0 and 0
      at workstations.Sound.people.Noor, by OSHA Computer Workstations, work space
      see desks.Left.height: the desk Left; seats.Low.seat: the chair Low; operators.Noor: what is known of Noor
      weigh Raise the desk Left to 735 mm: nearest for Noor | desks.Left.height := 735mm
      granted Left stands on its ends
      default shoes of 25 mm; a top of 25 mm"
    `);
  });
});
