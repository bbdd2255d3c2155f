import type { Booth, Origin } from '@boothwright/fit';
import { describe, expect, test } from 'vitest';
import { analyseText, silent } from '../testing/analysis.js';

async function read(text: string): Promise<Booth> {
  const { booth } = await analyseText(text, silent);
  if (!booth) throw new Error('no booth was read');
  return booth;
}

/** The text at an origin on one line. */
function textAt(text: string, { start, end }: Origin): string {
  return text.split('\n')[start.line]!.slice(start.character, end.character);
}

const given = (value: unknown) => ({ value, isDefault: false, origin: expect.anything() as unknown });
const usual = (value: unknown) => ({ value, isDefault: true });

describe('the frame of a booth', () => {
  test('has defaults', async () => {
    const booth = await read('booth "Larkfield Hall" { }');
    expect(booth).toMatchObject({
      name: 'Larkfield Hall',
      show: 'in',
      limits: 'us',
      shoe: usual(25),
      slump: usual(40),
    });
    expect(booth.room).toBeUndefined();
  });

  test('is what the file says', async () => {
    const booth = await read('booth "Hall" { show cm  limits uk  shoe 3cm  slump 0 }');
    expect(booth).toMatchObject({ show: 'cm', limits: 'uk', shoe: given(30), slump: given(0) });
  });

  test('without a booth block, takes its name from the file', async () => {
    expect(await read('workstation Sound { }')).toMatchObject({ name: 'hall', show: 'in', limits: 'us' });
  });

  test('a file of furniture is no booth', async () => {
    expect((await analyseText('desk Left { width 60in }', silent)).booth).toBeUndefined();
  });
});

describe('values', () => {
  test('carry the smallest text that a change would replace', async () => {
    const text = [
      'booth "Hall" { }',
      'desk Left { width 5\' 4"  height 37in .. 44in }',
      'stool Tall { foot-ring 18in below seat }',
      'place Left at 14ft, 6ft  turn 90deg left',
    ].join('\n');
    const { desks, seats, placements } = await read(text);
    expect(textAt(text, desks[0]!.origin)).toBe('Left');
    expect(textAt(text, desks[0]!.width!.origin!)).toBe('5\' 4"');
    expect(textAt(text, desks[0]!.height!.origin!)).toBe('37in .. 44in');
    expect(textAt(text, seats[0]!.footRing!.distance.origin!)).toBe('18in');
    expect(textAt(text, placements[0]!.at.origin!)).toBe('14ft, 6ft');
    expect(textAt(text, placements[0]!.turn.origin!)).toBe('90deg left');
    expect(desks[0]!.width!.origin!.uri).toBe('file:///hall/hall.booth');
  });

  test('that are faulty are left out, or as if not said', async () => {
    const text = 'booth "Hall" { shoe 9kg }\ndesk Left { width 60  depth 41ft  top 1in..2in  height 44in..37in }';
    const { desks, shoe } = await read(text);
    expect(shoe).toEqual(usual(25));
    expect(desks[0]).toMatchObject({ name: 'Left', top: usual(25) });
    expect(desks[0]).not.toMatchObject({ width: expect.anything() as unknown });
    expect([desks[0]!.width, desks[0]!.depth, desks[0]!.height]).toEqual([undefined, undefined, undefined]);
  });

  test('said twice count as first said', async () => {
    const { desks } = await read('booth "Hall" { }\ndesk Left { width 60in  width 66in }');
    expect(desks[0]!.width).toEqual(given(1524));
  });
});

test('the room', async () => {
  const { room } = await read(`booth "Hall" { }
room {
  width 40ft  depth 66ft  height 14ft  occupants 180  voice-alarm
  stage { edge 55ft  height 36in  width 24ft }
  seating { first 3ft  pitch 36in  rows 12  standing }
  balcony { edge 20ft  height 9ft }
  door Main { on back-wall  at 3ft  width 36in  opens out }
  column North { at 10ft, 8ft  width 16in  depth 12in }
  wheelchair-space RowA { at 6ft, 20ft }
  watchers Back { at 20ft, 2ft  posture wheelchair }
}`);
  expect(room).toMatchObject({
    width: given(12192),
    occupants: given(180),
    sprinklers: false,
    voiceAlarm: true,
    stage: { edge: given(16764), height: given(914.4), width: given(7315.2) },
    seating: { first: given(914.4), pitch: given(914.4), rows: given(12), standing: true },
    balcony: { edge: given(6096), height: given(2743.2) },
    doors: [{ name: 'Main', wall: given('back-wall'), at: given(914.4), opens: given('out'), hinge: usual('left') }],
    columns: [{ name: 'North', at: given({ x: 3048, y: 2438.4 }), width: given(406.4), depth: given(304.8) }],
    wheelchairSpaces: [{ name: 'RowA', at: given({ x: 1828.8, y: 6096 }), width: usual(914), depth: usual(1220) }],
    watchers: [{ name: 'Back', posture: given('wheelchair') }],
  });
});

test('people', async () => {
  const { operators, crowds } = await read(`booth "Hall" { }
operator Noor { body female  stature 5'3" reported  sitting-elbow-height 9in  popliteal 40cm  weight 70kg }
operator Tobias { stature 6'1" }
crowd Volunteers { women 55%  stature 150cm..190cm }
crowd Anyone { }`);
  expect(operators[0]).toMatchObject({ name: 'Noor', sex: given('female'), statureIsReported: true });
  expect(operators[0]!.measured).toEqual({
    stature: given(1600.2),
    sittingElbowHeight: given(228.6),
    poplitealHeight: given(400),
    weight: given(70),
  });
  expect(operators[1]).toMatchObject({ statureIsReported: false });
  expect(operators[1]!.sex).toBeUndefined();
  expect(crowds).toMatchObject([
    { women: given(0.55), cover: usual(0.9), stature: given({ min: 1500, max: 1900 }) },
    { women: usual(0.5), cover: usual(0.9) },
  ]);
});

test('furniture', async () => {
  const { desks, seats, monitors } = await read(`booth "Hall" { }
desk Left {
  width 60in  depth 30in  height 104cm..110cm  rating 100kg  closed
  tray { drop 4in  from-edge 2in }
  drawer { drop 5in  depth 18in }
  legs { width 56in  depth 26in  thickness 2in }
  toe-space { depth 4in  height 4in }
}
stool Tall { seat 28in..32in  foot-ring 18in below seat }
chair Low { seat 18in  seat-depth 16in  seat-width 17in  base 20in  foot-ring 7in }
monitor Lyrics { diagonal 24in  pixels 1920 x 1080  text 14px  weight 5kg }
monitor Cues { aspect 4:3  text 3mm }`);
  expect(desks).toMatchObject([
    {
      height: given({ min: 1040, max: 1100 }),
      top: usual(25),
      closed: true,
      rating: given(100),
      hanging: [
        { kind: 'tray', drop: given(101.6), fromEdge: given(50.8) },
        { kind: 'drawer', drop: given(127), fromEdge: usual(0), depth: given(457.2) },
      ],
      legs: { width: given(1422.4), inset: usual(0) },
      toeSpace: { depth: given(101.6), height: given(101.6) },
    },
  ]);
  expect(seats).toMatchObject([
    { kind: 'stool', seat: given({ min: 711.2, max: 812.8 }), footRing: { from: 'seat', distance: given(457.2) } },
    { kind: 'chair', depth: given(406.4), base: given(508), footRing: { from: 'floor', distance: given(177.8) } },
  ]);
  expect(monitors).toMatchObject([
    {
      aspect: usual({ across: 16, down: 9 }),
      pixels: given({ across: 1920, down: 1080 }),
      text: given({ pixels: 14 }),
    },
    { aspect: given({ across: 4, down: 3 }), text: given({ capital: 3 }) },
  ]);
});

describe('workstations', () => {
  const known = `booth "Hall" { }
desk Left { }  stool Tall { }  monitor Lyrics { }  monitor Cues { }
operator Noor { }  operator Tobias { }  crowd Volunteers { }`;

  test('say what they say', async () => {
    const { workstations } = await read(`${known}
workstation Sound {
  desk Left  stool Tall  operators Tobias, Noor  crowd Volunteers  posture sit, stand  task writing
  at 24in  working 3in  lean 2in back
  monitor Cues { setback 20in  at 10in  centre 14in above floor  turn 25deg left  tilt 10deg forward  arm 9kg }
  control Faders { at 30in  setback 4in  depth 20in  height 3in above desk  occasional }
}`);
    expect(workstations).toMatchObject([
      {
        desk: { name: 'Left' },
        seat: { name: 'Tall' },
        people: [{ name: 'Tobias' }, { name: 'Noor' }, { name: 'Volunteers' }],
        postures: given(['sit', 'stand']),
        task: given('writing'),
        working: given(76.2),
        lean: given(-50.8),
        screens: [
          {
            monitor: { name: 'Cues' },
            height: { line: 'centre', over: 'floor', distance: given({ min: 355.6, max: 355.6 }) },
            turn: given(-25),
            tilt: given(-10),
            main: usual(true),
            rating: given(9),
          },
        ],
        controls: [{ name: 'Faders', height: given(76.2), width: usual(0), use: given('occasional') }],
      },
    ]);
  });

  test('stand without a seat, and sit with one', async () => {
    const { workstations } = await read(`${known}\nworkstation A { desk Left }\nworkstation B { stool Tall }`);
    expect(workstations).toMatchObject([
      {
        postures: usual(['stand']),
        task: usual('controls'),
        working: usual(0),
        lean: usual(0),
        people: [],
        screens: [],
      },
      { postures: usual(['sit']) },
    ]);
  });

  test('have one main screen: the first, or the one that is marked', async () => {
    const { workstations } = await read(`${known}
workstation A { monitor Cues { }  monitor Lyrics { bottom 3in..12in } }
workstation B { monitor Cues { }  monitor Lyrics { main } }`);
    expect(workstations.map(({ screens }) => screens.map(({ main }) => main))).toEqual([
      [usual(true), usual(false)],
      [usual(false), given(true)],
    ]);
    expect(workstations[0]!.screens[1]!.height).toMatchObject({
      line: 'bottom',
      over: 'desk',
      distance: given({ min: 76.2, max: 304.8 }),
    });
  });

  test('leave out what is not known or of the wrong kind', async () => {
    const { workstations } = await read(`${known}
workstation A { desk Tall  stool Left  operators Nobody, Noor  monitor Left { }  monitor Nothing { } }`);
    expect(workstations).toMatchObject([{ people: [{ name: 'Noor' }], screens: [] }]);
    expect([workstations[0]!.desk, workstations[0]!.seat]).toEqual([undefined, undefined]);
  });
});

test('what stands on the floor', async () => {
  const booth = await read(`booth "Hall" { }
desk Left { }  desk Right { }
walkway Behind { between booth and back-wall  serves 60  users operators  seats both-sides  turns  at-turn 48in  headroom 2m
  pinch { width 33in  length 12in }  projection { height 48in  reach 6in } }
walkway Side { between Left and right-wall }
rack Power { units 12  under Left  at 2in  frame 3in }
rack Loose { units 4 }
skirt Front { on Left, Right  sides front, ends  drop 39in  flame-certificate "hall file" }
skirt Back { on Right }
platform Riser { at 3m, 2m  height 20cm  guard 1.1m  steps { risers 2  tread 11in  handrail }  ramp { length 2m } }
cable Snake { across Behind  height 3/4in  cover ramp  slope 9in }
place Left, Right in a row at 14ft, 6ft  turn 90deg right
place Loose at 1m, 1m`);
  expect(booth.walkways).toMatchObject([
    {
      between: [
        { kind: 'landmark', name: 'booth' },
        { kind: 'landmark', name: 'back-wall' },
      ],
      serves: given(60),
      users: given('operators'),
      seats: given('both-sides'),
      turns: true,
      atTurn: given(1219.2),
      headroom: given(2000),
      pinches: [{ width: given(838.2), length: given(304.8) }],
      projections: [{ height: given(1219.2), reach: given(152.4) }],
    },
    {
      between: [{ kind: 'piece', name: 'Left' }, { name: 'right-wall' }],
      users: usual('public'),
      seats: usual('none'),
    },
  ]);
  expect(booth.racks).toMatchObject([
    {
      units: given(12),
      frame: given(76.2),
      plugs: usual(0),
      under: { desk: { name: 'Left' }, at: given(50.8), setback: usual(0) },
    },
    { units: given(4) },
  ]);
  expect(booth.racks[1]!.under).toBeUndefined();
  expect(booth.skirts).toMatchObject([
    {
      on: [{ name: 'Left' }, { name: 'Right' }],
      sides: given(['front', 'ends']),
      flameCertificate: given('hall file'),
    },
    { sides: usual(['front']) },
  ]);
  expect(booth.platforms).toMatchObject([
    {
      at: given({ x: 3000, y: 2000 }),
      guard: given(1100),
      steps: { risers: given(2), handrail: true },
      ramp: { length: given(2000) },
    },
  ]);
  expect(booth.cables).toMatchObject([{ across: { name: 'Behind' }, cover: given('ramp'), slope: given(228.6) }]);
  expect(booth.placements).toMatchObject([
    { pieces: [{ name: 'Left' }, { name: 'Right' }], at: given({ x: 4267.2, y: 1828.8 }), turn: given(90) },
    { pieces: [{ name: 'Loose' }], turn: usual(0) },
  ]);
});

test('reasons: accepted findings and limits of its own', async () => {
  const booth = await read(`booth "Hall" { limit skirt-drop 1in because "our rule"  accept reach because "all of it" }
skirt Front { accept skirt-drop because "hemmed on site" }
workstation Sound { control Faders { accept reach because "rarely used" } }
accept reach on Faders because "rarely used"
accept reach because "no subject"
accept reach on Nobody because "not read"
accept reach
limit reach 1in because "not here"`);
  expect(booth.overrides).toMatchObject([{ check: 'skirt-drop', value: 25.4, reason: 'our rule' }]);
  expect(booth.accepted.map(({ check, subject, reason }) => [check, subject, reason])).toEqual([
    ['reach', 'Faders', 'rarely used'],
    ['reach', undefined, 'no subject'],
    ['reach', undefined, 'all of it'],
    ['skirt-drop', 'Front', 'hemmed on site'],
    ['reach', 'Faders', 'rarely used'],
  ]);
});
