import { describe, expect, it } from 'vitest';
import type { Booth, Desk, Rack } from '../../booth.js';
import { aBooth, aDesk, aPlacement, aRoom, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aColumn, aRack, under } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';
import { told } from '../../testing/told.js';

const inch = (value: number) => given(value * INCH);

/** A rack 22 × 20 in under a desk 60 × 27 in with a top of 1 in; nothing is placed. */
function booth(
  deskHeight: number | readonly [number, number],
  units: number,
  rack: Partial<Rack> = {},
  desk: Partial<Desk> = {},
) {
  const height =
    typeof deskHeight === 'number' ? deskHeight * INCH : ([deskHeight[0] * INCH, deskHeight[1] * INCH] as const);
  return aBooth({
    show: 'in',
    desks: [aDesk('Left', height, { width: inch(60), depth: inch(27), top: inch(1), ...desk })],
    racks: [aRack('Power', units, { width: inch(22), depth: inch(20), ...under('Left'), ...rack })],
  });
}

const fit = (...args: Parameters<typeof booth>) => findingOf(booth(...args), 'rack-fits');

describe('rack-fits: under a desk', () => {
  it.each([
    [outside('EIA-310, in secondary sources', 'W28: 1 unit is 44.45 mm'), 1, 44.45],
    [outside('EIA-310, in secondary sources', 'W28: 4 units are 177.8 mm'), 4, 177.8],
    [outside('EIA-310, in secondary sources', 'W28: 10 units are 444.5 mm'), 10, 444.5],
    [outside('EIA-310, in secondary sources', 'W29: 12 units are 21 in'), 12, 21 * INCH],
    [outside('EIA-310, in secondary sources', 'W29: 16 units are 28 in'), 16, 28 * INCH],
    [outside('EIA-310, in secondary sources', 'W29: 20 units are 35 in'), 20, 35 * INCH],
    [outside('EIA-310, in secondary sources', 'W29: 24 units are 42 in'), 24, 42 * INCH],
    [outside('EIA-310, in secondary sources', 'W29: 42 units are 73 1/2 in'), 42, 73.5 * INCH],
  ])('%s', (_, units, height) => {
    const desk = { depth: given(5000), width: given(5000) };
    // A desk that leaves exactly so much, and one that leaves 2 mm less.
    const exact = fit((height + INCH) / INCH, units, {}, desk);
    expect(exact).toMatchObject({ verdict: 'pass' });
    expect(exact.measured).toBeCloseTo(height, 6);
    expect(fit((height + INCH - 2) / INCH, units, {}, desk).verdict).toBe('fail');
  });

  it.each<[string, Parameters<typeof booth>, string, number, number]>([
    ['12 units and a frame of 4 in under 29 in', [29, 12, { frame: inch(4) }], 'pass', 25, 28],
    ['16 units and a frame of 4 in under 29 in', [29, 16, { frame: inch(4) }], 'fail', 32, 28],
    ['a tray of 4 in over it', [29, 12, { frame: inch(4) }, tray(0)], 'fail', 25, 24],
    ['a tray only behind it', [29, 12, { frame: inch(4) }, tray(21)], 'pass', 25, 28],
    ['plugs of 7 in: just', [40, 12, { plugs: inch(7) }], 'pass', 27, 27],
    ['plugs of 8 in', [40, 12, { plugs: inch(8) }], 'fail', 28, 27],
    ['set back by 8 in', [40, 12, under('Left', 0, 8 * INCH)], 'fail', 28, 27],
    ['38 in from the left end: just', [40, 12, under('Left', 38 * INCH)], 'pass', 60, 60],
    ['39 in from the left end', [40, 12, under('Left', 39 * INCH)], 'fail', 61, 60],
    ['an adjustable desk, at its lowest too', [[28, 41], 12], 'pass', 21, 27],
    ['an adjustable desk, only raised', [[21, 41], 12], 'marginal', 21, 20],
  ])('%s', (_, args, verdict, need, room) => {
    const finding = fit(...args);
    expect(finding.verdict).toBe(verdict);
    expect(finding.measured).toBeCloseTo(need * INCH, 6);
    expect(finding.limit).toBeCloseTo(room * INCH, 6);
  });

  function tray(fromEdge: number): Partial<Desk> {
    return { hanging: [{ kind: 'tray', origin: nowhere, drop: inch(4), fromEdge: inch(fromEdge) }] };
  }

  it('shows its sums, and what it took for granted', () => {
    const finding = fit(29, 12, { frame: inch(4) });
    expect(finding.terms).toContain('12 units × 44.45 mm + 4 in frame = 25 in high, under 28 in');
    expect(finding.assumptions).toEqual(['Power needs no room for plugs behind it']);
    expect(fit(29, 12).assumptions).toHaveLength(2);
  });

  it.each<[string, Partial<Rack>, Partial<Desk>, string]>([
    ['its units', { units: undefined }, {}, 'units'],
    ['its width', { width: undefined }, {}, 'width'],
    ['its depth', { depth: undefined }, {}, 'depth'],
    ['the desk’s height', {}, { height: undefined }, 'height'],
    ['the desk’s depth', {}, { depth: undefined }, 'depth'],
  ])('without %s it asks for it', (_, rack, desk, property) => {
    expect(fit(29, 12, rack, desk)).toMatchObject({ verdict: 'unknown', missing: { property } });
  });
});

describe('rack-fits: getting at it', () => {
  /** A loose rack 500 deep in a room 3000 deep, its front `y` from the back wall. */
  function service(y: number, parts: Partial<Booth> = {}) {
    const loose = aBooth({
      room: aRoom(10_000, 3000),
      racks: [aRack('Loose', 20)],
      placements: [aPlacement(['Loose'], 3000, y)],
      ...parts,
    });
    return findingOf(loose, 'rack-fits');
  }

  it.each([
    [outside('makers’ manuals of two racks', '36 in before it'), 36 * INCH, 'pass', 36],
    ['35 in before it', 35 * INCH, 'marginal', 36],
    [outside('makers’ manual of a distribution rack', '30 in before it, the least'), 30 * INCH, 'marginal', 36],
    ['29 in before it', 29 * INCH, 'fail', 30],
    [outside('makers’ manual of a server rack', '24 in behind it'), 2500 - 24 * INCH, 'pass', 24],
    ['23 in behind it', 2500 - 23 * INCH, 'marginal', 24],
    ['nothing behind it: it can be pulled out', 2500, 'marginal', 24],
  ])('%s', (_, y, verdict, limit) => {
    const finding = service(y);
    expect(finding.verdict).toBe(verdict);
    expect(finding.limit).toBeCloseTo(limit * INCH, 6);
  });

  it('a turned rack looks the other way', () => {
    // Facing the back wall: its front is toward the stage wall.
    const placements = [aPlacement(['Loose'], 4000, 1500, 180)];
    const finding = service(0, { placements });
    expect(finding.terms).toBe('1500 mm before it, to the stage wall; 1000 mm behind it, to the back wall');
  });

  it('a column before it counts, and so does the nearest row of seats behind it', () => {
    const seating = { origin: nowhere, first: given(500), standing: false };
    const behind = service(1200, { room: aRoom(10_000, 9000, { seating }) });
    expect(behind).toMatchObject({ verdict: 'marginal', measured: 500 });
    expect(behind.message).toContain('the nearest row of seats');
    const columns = [aColumn('North', 3100, 200, 300, 300)];
    expect(service(1200, { room: aRoom(10_000, 3000, { columns }) })).toMatchObject({ verdict: 'fail', measured: 700 });
  });

  it('under a desk its own desk is not in the way, and its setback counts', () => {
    const desks = [aDesk('Left', 1000)];
    const racks = [aRack('Power', 12, under('Left', 100, 100)), aRack('Amps', 12, under('Left', 800, 0))];
    const placements = [aPlacement(['Left'], 3000, 850)];
    const found = findingsOf(aBooth({ room: aRoom(10_000, 9000), desks, racks, placements }), 'rack-fits');
    // For each rack one finding of the fit and one of the floor.
    expect(found).toHaveLength(4);
    expect(found[1]).toMatchObject({ verdict: 'pass' });
    expect(found[1]!.terms).toContain('950 mm before it, to the back wall');
    expect(found[3]!).toMatchObject({ verdict: 'marginal', measured: 850 });
  });

  it('asks nothing of a loose rack that nobody placed; the file may set the floor before it', () => {
    const loose = aBooth({ racks: [aRack('Loose', 20)] });
    expect(findingsOf(loose, 'rack-fits')).toEqual([]);
    const overrides = [{ check: 'rack-fits', value: 700, reason: 'served from the rear', origin: nowhere }];
    expect(service(710, { overrides })).toMatchObject({
      verdict: 'pass',
      source: 'the file’s own limit: served from the rear',
    });
    expect(service(690, { overrides }).verdict).toBe('fail');
  });
});

describe('rack-fits: what a reader is told', () => {
  const tell = (...args: Parameters<typeof booth>) => told(booth(...args), 'rack-fits');
  const loose = (x: number, y: number) =>
    aBooth({
      room: aRoom(10_000, 20_000),
      racks: [aRack('Power', 12)],
      placements: [aPlacement(['Power'], x, y)],
    });

  it('where it fits', () => {
    expect(tell(30, 12)).toMatchInlineSnapshot(`
      "pass, rack Power
      Power fits under Left, with 7 in to spare where it is tightest.
      = 12 units × 44.45 mm + 0 in frame = 21 in high, under 29 in; 0 in setback + 20 in + 0 in plugs = 20 in deep, under 27 in; 0 in from the left + 22 in = 22 in wide, under 60 in
      : 508 against 685.8 mm, margin 177.8
      at racks.Power.under.desk, by EIA-310 for the unit; geometry
      see desks.Left: the desk Left
      granted Power has no frame, feet or castors beyond its units; Power needs no room for plugs behind it"
    `);
  });

  it('where it is too high, and where the desk can be raised', () => {
    expect(tell(20, 12)).toMatchInlineSnapshot(`
      "fail, rack Power
      Power is 21 in high and Left leaves 19 in below it: 2 in too much. Choose a smaller rack, or another place for it.
      = 12 units × 44.45 mm + 0 in frame = 21 in high, under 19 in; 0 in setback + 20 in + 0 in plugs = 20 in deep, under 27 in; 0 in from the left + 22 in = 22 in wide, under 60 in
      : 533.4 against 482.6 mm, margin -50.8
      at racks.Power.under.desk, by EIA-310 for the unit; geometry
      see desks.Left: the desk Left
      granted Power has no frame, feet or castors beyond its units; Power needs no room for plugs behind it"
    `);
    expect(tell([20, 40], 12)).toMatchInlineSnapshot(`
      "marginal, rack Power
      Power is 21 in high and Left leaves 19 in below it: 2 in too much. It fits only with Left raised.
      = 12 units × 44.45 mm + 0 in frame = 21 in high, under 19 in; 0 in setback + 20 in + 0 in plugs = 20 in deep, under 27 in; 0 in from the left + 22 in = 22 in wide, under 60 in
      : 533.4 against 482.6 mm, margin -50.8
      at racks.Power.under.desk, by EIA-310 for the unit; geometry
      see desks.Left: the desk Left
      granted Power has no frame, feet or castors beyond its units; Power needs no room for plugs behind it"
    `);
  });

  it('where it is too deep, or too wide', () => {
    expect(tell(30, 12, { depth: inch(30) })).toMatchInlineSnapshot(`
      "fail, rack Power
      Power reaches 30 in from the near edge of Left, plugs included, and the desk is 27 in deep: 3 in too much. Choose a smaller rack, or another place for it.
      = 12 units × 44.45 mm + 0 in frame = 21 in high, under 29 in; 0 in setback + 30 in + 0 in plugs = 30 in deep, under 27 in; 0 in from the left + 22 in = 22 in wide, under 60 in
      : 762 against 685.8 mm, margin -76.2
      at racks.Power.under.desk, by EIA-310 for the unit; geometry
      see desks.Left: the desk Left
      granted Power has no frame, feet or castors beyond its units; Power needs no room for plugs behind it"
    `);
    expect(tell(30, 12, under('Left', 50 * INCH))).toMatchInlineSnapshot(`
      "fail, rack Power
      Power reaches 72 in from the left end of Left, and the desk is 60 in wide: 12 in too much. Choose a smaller rack, or another place for it.
      = 12 units × 44.45 mm + 0 in frame = 21 in high, under 29 in; 0 in setback + 20 in + 0 in plugs = 20 in deep, under 27 in; 50 in from the left + 22 in = 72 in wide, under 60 in
      : 1828.8 against 1524 mm, margin -304.8
      at racks.Power.under.desk, by EIA-310 for the unit; geometry
      see desks.Left: the desk Left
      granted Power has no frame, feet or castors beyond its units; Power needs no room for plugs behind it"
    `);
  });

  it('where something is missing', () => {
    expect(tell(30, 12, { units: undefined })).toMatchInlineSnapshot(`
      "unknown, rack Power
      Cannot say whether Power fits under Left. Add \`units\` to rack Power, such as \`units 12\`.
      at racks.Power, by EIA-310
      ask units of rack Power, as units 12, at racks.Power"
    `);
    expect(tell(30, 12, { width: undefined })).toMatchInlineSnapshot(`
      "unknown, rack Power
      Cannot say whether Power fits under Left. Add \`width\` to rack Power, such as \`width 22in\`.
      at racks.Power, by EIA-310
      ask width of rack Power, as width 22in, at racks.Power"
    `);
    expect(tell(30, 12, { depth: undefined })).toMatchInlineSnapshot(`
      "unknown, rack Power
      Cannot say whether Power fits under Left. Add \`depth\` to rack Power, such as \`depth 20in\`.
      at racks.Power, by EIA-310
      ask depth of rack Power, as depth 20in, at racks.Power"
    `);
    expect(tell(30, 12, {}, { height: undefined })).toMatchInlineSnapshot(`
      "unknown, rack Power
      Cannot say whether Power fits under Left. Add \`height\` to desk Left, such as \`height 40in\`.
      at racks.Power, by EIA-310
      ask height of desk Left, as height 40in, at desks.Left"
    `);
    expect(tell(30, 12, {}, { width: undefined })).toMatchInlineSnapshot(`
      "unknown, rack Power
      Cannot say whether Power fits under Left. Add \`width\` to desk Left, such as \`width 60in\`.
      at racks.Power, by EIA-310
      ask width of desk Left, as width 60in, at desks.Left"
    `);
    expect(tell(30, 12, {}, { depth: undefined })).toMatchInlineSnapshot(`
      "unknown, rack Power
      Cannot say whether Power fits under Left. Add \`depth\` to desk Left, such as \`depth 27in\`.
      at racks.Power, by EIA-310
      ask depth of desk Left, as depth 27in, at desks.Left"
    `);
  });

  it('of the floor before and behind one that stands alone', () => {
    expect(told(loose(3000, 3000), 'rack-fits')).toMatchInlineSnapshot(`
      "pass, rack Power
      There is room to get at Power: 3000 mm before it, 16500 mm behind it.
      = 3000 mm before it, to the back wall; 16500 mm behind it, to the stage wall
      : 3000 against 914.4 mm, margin 2085.6
      at racks.Power, by service clearances in three makers’ manuals
      granted seats near the rack can be moved"
    `);
    expect(told(loose(3000, 500), 'rack-fits')).toMatchInlineSnapshot(`
      "fail, rack Power
      500 mm is free before Power, to the back wall; working on it takes 914 mm. Move it, or keep it on castors to pull it out.
      = 500 mm before it, to the back wall; 19000 mm behind it, to the stage wall
      : 500 against 762 mm, margin -262
      at racks.Power, by service clearances in three makers’ manuals
      granted seats near the rack can be moved"
    `);
    expect(
      told(
        {
          ...loose(3000, 3000),
          desks: [aDesk('Left', 1000)],
          placements: [aPlacement(['Power'], 3000, 3000), aPlacement(['Left'], 3000, 3700)],
        },
        'rack-fits',
      ),
    ).toMatchInlineSnapshot(`
      "marginal, rack Power
      200 mm is free behind Power, to Left; working on it takes 610 mm. Move it, or keep it on castors to pull it out.
      = 3000 mm before it, to the back wall; 200 mm behind it, to Left
      : 200 against 609.6 mm, margin -409.6
      at racks.Power, by service clearances in three makers’ manuals
      see desks.Left: Left stands there
      granted seats near the rack can be moved"
    `);
  });
});
