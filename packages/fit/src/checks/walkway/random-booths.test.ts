import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '../../assess/assess.js';
import type { Booth, Desk, Given, Placement, Walkway } from '../../booth.js';
import { aBooth, aDesk, anOperator, aPlacement, aRoom, aSeat, aStation, given, nowhere } from '../../testing/booths.js';
import {
  aCable,
  aColumn,
  aDoor,
  aMonitorOf,
  aPlatform,
  aRack,
  aScreenAt,
  aSkirt,
  aWalkway,
  aWheelchairSpace,
  under,
} from '../../testing/floor.js';
import { checks } from '../catalogue.js';

const groups = new Set(['walkway', 'access', 'platform', 'skirt', 'furniture', 'listening', 'space']);
const mine = checks.filter(({ group, find }) => groups.has(group) && find);

const length = (max: number) => fc.integer({ min: 0, max });
/** A value that the file may not say. */
const perhaps = (min: number, max: number): fc.Arbitrary<Given<number> | undefined> =>
  fc.option(fc.integer({ min, max }).map(given), { nil: undefined, freq: 6 });
const flag = fc.boolean();
const sides = ['booth', 'back-wall', 'left-wall', 'right-wall', 'stage-wall', 'stage', 'seating', 'A', 'B'] as const;

const desk = fc.record({
  width: perhaps(200, 3000),
  depth: perhaps(150, 1500),
  height: fc.integer({ min: 250, max: 1600 }),
  drop: perhaps(5, 300),
  inset: length(200),
});
const place = fc.record({ x: length(9000), y: length(9000), turn: fc.constantFrom(0, 0, 90, -90, 180, 33) });
const walkway = fc.record({
  between: fc.tuple(fc.constantFrom(...sides), fc.constantFrom(...sides)),
  serves: perhaps(1, 600),
  users: fc.constantFrom('public' as const, 'operators' as const),
  seats: fc.constantFrom('none' as const, 'both-sides' as const),
  turns: flag,
  headroom: perhaps(1000, 3000),
  atTurn: perhaps(200, 2000),
  pinch: fc.record({ at: perhaps(0, 5000), width: perhaps(300, 1200), length: perhaps(10, 900) }),
  projection: fc.record({ height: perhaps(0, 2500), reach: perhaps(1, 400) }),
});

const booth: fc.Arbitrary<Booth> = fc
  .record({
    desks: fc.tuple(desk, desk),
    places: fc.array(place, { maxLength: 2 }),
    walkways: fc.array(walkway, { minLength: 1, maxLength: 2 }),
    limits: fc.constantFrom('us' as const, 'uk' as const, 'generic' as const),
    show: fc.constantFrom('in' as const, 'mm' as const, 'ft' as const),
    room: fc.record({
      width: perhaps(13000, 20000),
      depth: perhaps(13000, 20000),
      height: perhaps(1800, 5000),
      edge: perhaps(1000, 14000),
      first: perhaps(0, 3000),
    }),
    spots: fc.array(place, { minLength: 4, maxLength: 4 }),
    screen: fc.record({ at: length(3000), setback: perhaps(0, 1500), turn: fc.integer({ min: -80, max: 80 }) }),
    rest: fc.record({
      cable: perhaps(1, 40),
      cover: fc.constantFrom('none' as const, 'bevelled' as const, 'ramp' as const),
      riser: perhaps(10, 1500),
      risers: perhaps(1, 8),
      tread: perhaps(100, 500),
      ramp: perhaps(300, 20_000),
    }),
    skirt: fc.record({ drop: perhaps(50, 1400), length: perhaps(100, 9000), clips: perhaps(20, 900) }),
  })
  .map(({ desks, places, walkways, limits, show, room, spots, screen, rest, skirt }) => {
    const [post, space, riser] = spots;
    return aBooth({
      limits,
      show,
      room: aRoom(room.width?.value ?? 1, room.depth?.value ?? 1, {
        width: room.width,
        depth: room.depth,
        height: room.height,
        stage: { origin: nowhere, edge: room.edge },
        seating: { origin: nowhere, first: room.first, standing: false },
        columns: [aColumn('Post', post!.x, post!.y, 300, 400)],
        wheelchairSpaces: [aWheelchairSpace('Row', space!.x, space!.y)],
        doors: [aDoor('Main', 'back-wall', 2000, 900)],
      }),
      operators: [anOperator('Noor', { stature: 1630 })],
      desks: desks.map((one, index) => aDeskOf(index === 0 ? 'A' : 'B', one)),
      seats: [aSeat('Tall', 700)],
      monitors: [aMonitorOf('Cues', 500, 300)],
      workstations: [
        aStation('Sound', 'A', 'Tall', ['Noor'], {
          screens: [aScreenAt('Cues', screen.at, 0, { setback: screen.setback, turn: given(screen.turn) })],
        }),
      ],
      placements: places.map(({ x, y, turn }, index): Placement => aPlacement([index === 0 ? 'A' : 'B'], x, y, turn)),
      racks: [aRack('Power', 12, under('A', 50, 50))],
      platforms: [
        aPlatform('Riser', 0, {
          height: rest.riser,
          at: given({ x: riser!.x, y: riser!.y }),
          steps: { origin: nowhere, risers: rest.risers, tread: rest.tread, handrail: screen.turn > 0 },
          ramp: { origin: nowhere, length: rest.ramp, width: rest.ramp },
        }),
      ],
      skirts: [aSkirt('Front', ['A', 'B'], { sides: given(['front', 'ends'] as const), ...skirt })],
      cables: [
        aCable('Snake', 0, {
          across: { name: 'W0', origin: nowhere },
          height: rest.cable,
          cover: given(rest.cover),
          slope: rest.cable,
        }),
      ],
      walkways: walkways.map((one, index) => aWalkwayOf(`W${index}`, one)),
    });
  });

type Drawn<T> = T extends fc.Arbitrary<infer V> ? V : never;

function aDeskOf(name: string, { width, depth, height, drop, inset }: Drawn<typeof desk>): Desk {
  const legs = { origin: nowhere, width: given(900), depth: given(500), inset: given(inset) };
  const hanging = [{ kind: 'tray' as const, origin: nowhere, drop, fromEdge: given(100) }];
  return aDesk(name, height, { width, depth, legs, hanging });
}

function aWalkwayOf(
  name: string,
  { between, users, seats, pinch, projection, ...rest }: Drawn<typeof walkway>,
): Walkway {
  return aWalkway(name, between, {
    ...rest,
    users: given(users),
    seats: given(seats),
    pinches: [{ origin: nowhere, ...pinch }],
    projections: [{ origin: nowhere, ...projection }],
  });
}

describe('checks of the floor, over random booths', () => {
  it('say something sound of each, and never call it compliant', () => {
    fc.assert(
      fc.property(booth, (one) => {
        for (const finding of assess(one, mine).findings) {
          const { check, verdict, measured, limit, margin, message, missing, terms } = finding;
          const text = [message, terms, ...finding.remedies.map(({ title }) => title)].join(' ');
          expect(text, check).not.toMatch(/NaN|undefined|Infinity|\?\s|\[object/);
          expect(text.toLowerCase(), check).not.toContain('complian');
          for (const number of [measured, limit, margin])
            if (number !== undefined) expect(Number.isFinite(number), check).toBe(true);
          expect(missing !== undefined, check).toBe(verdict === 'unknown');
          if (measured !== undefined && limit !== undefined)
            expect(Math.abs(margin!), check).toBeCloseTo(Math.abs(measured - limit), 6);
          if (verdict === 'pass' && margin !== undefined)
            expect(margin, `${check}: ${message}`).toBeGreaterThanOrEqual(-1.001);
          if (verdict === 'fail' && margin !== undefined) expect(margin, `${check}: ${message}`).toBeLessThan(0);
        }
      }),
      { numRuns: 150 },
    );
  }, 60_000);

  it('a wider room never narrows a walkway', () => {
    fc.assert(
      fc.property(booth, length(3000), (one, more) => {
        const clear = (room: Booth['room']) => assess({ ...one, room }, mine).walkways.map((figures) => figures.clear);
        const { width } = one.room!;
        fc.pre(width !== undefined);
        const wider = clear({ ...one.room!, width: given(width.value + more) });
        clear(one.room).forEach((before, index) => {
          if (before !== undefined) expect(wider[index]).toBeGreaterThanOrEqual(before - 1e-6);
        });
      }),
      { numRuns: 80 },
    );
  }, 60_000);
});
