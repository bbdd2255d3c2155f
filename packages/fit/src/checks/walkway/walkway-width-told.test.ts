import { describe, expect, it } from 'vitest';
import { aDesk, aPlacement, aRoom, given, nowhere } from '../../testing/booths.js';
import { findingOf } from '../../testing/findings.js';
import { aColumn, aRack, aWalkway } from '../../testing/floor.js';
import { told } from '../../testing/told.js';
import { behind } from '../../testing/walkways.js';
import { INCH } from '../../units.js';

describe('walkway-width: what a reader is told', () => {
  const tell = (...args: Parameters<typeof behind>) => told(behind(...args), 'walkway-width');

  it('where it is wide enough, and not', () => {
    expect(tell(62 * INCH)).toMatchInlineSnapshot(`
      "pass, walkway Behind
      Behind keeps 43 in clear, not below 36 in.
      = 62 in from Left to the back wall − 19 in occupied seat − 0 in obstacles = 43 in
      : 1092.2 against 914.4 mm, margin 177.8
      at walkways.Behind, by IBC 2021 1030.9.1 and 2010 ADA Standards 403.5.1
      see walkways.Behind.between.booth: one side of the walkway; walkways.Behind.between.back-wall: one side of the walkway"
    `);
    expect(tell(50 * INCH)).toMatchInlineSnapshot(`
      "fail, walkway Behind
      Behind keeps only 31 in clear where 36 in is the least for 20 people. Move Left 5 in away from the back wall.
      = 50 in from Left to the back wall − 19 in occupied seat − 0 in obstacles = 31 in
      : 787.4 against 914.4 mm, margin -127
      at walkways.Behind, by IBC 2021 1030.9.1 and 2010 ADA Standards 403.5.1
      see walkways.Behind.between.booth: one side of the walkway; walkways.Behind.between.back-wall: one side of the walkway
      weigh Move the booth 5 in away from the back wall | placements.0.at := 118 1/8in, 55in"
    `);
    expect(tell(50 * INCH, { seats: given('both-sides') })).toMatchInlineSnapshot(`
      "fail, walkway Behind
      Behind keeps only 31 in clear where 36 in is the least for 20 people with seats on both sides. Move Left 5 in away from the back wall.
      = 50 in from Left to the back wall − 19 in occupied seat − 0 in obstacles = 31 in
      : 787.4 against 914.4 mm, margin -127
      at walkways.Behind, by IBC 2021 1030.9.1 item 4, exception for fewer than 50 seats
      see walkways.Behind.between.booth: one side of the walkway; walkways.Behind.between.back-wall: one side of the walkway
      weigh Move the booth 5 in away from the back wall | placements.0.at := 118 1/8in, 55in"
    `);
  });

  it('where people can stand nearer, or only operators walk', () => {
    expect(tell(40 * INCH, { users: given('operators') })).toMatchInlineSnapshot(`
      "fail, walkway Behind
      Behind keeps only 21 in clear where 28 in is the least for operators. Move Left 7 in away from the back wall.
      = 40 in from Left to the back wall − 19 in occupied seat − 0 in obstacles = 21 in
      : 533.4 against 711.2 mm, margin -177.8
      at walkways.Behind, by OSHA 29 CFR 1910.36(g)(2)
      see walkways.Behind.between.booth: one side of the walkway; walkways.Behind.between.back-wall: one side of the walkway
      weigh Move the booth 7 in away from the back wall | placements.0.at := 118 1/8in, 47in"
    `);
    expect(tell(50 * INCH, { serves: undefined })).toMatchInlineSnapshot(`
      "fail, walkway Behind
      Behind keeps only 31 in clear where 36 in is the least for the public. Move Left 5 in away from the back wall.
      = 50 in from Left to the back wall − 19 in occupied seat − 0 in obstacles = 31 in
      : 787.4 against 914.4 mm, margin -127
      at walkways.Behind, by IBC 2021 1030.9.1 and 2010 ADA Standards 403.5.1
      see walkways.Behind.between.booth: one side of the walkway; walkways.Behind.between.back-wall: one side of the walkway
      weigh Move the booth 5 in away from the back wall | placements.0.at := 118 1/8in, 55in
      granted Behind serves at most 50 people"
    `);
  });

  it('where a column stands in the way', () => {
    expect(
      told(
        { ...behind(62 * INCH), room: aRoom(10_000, 20_000, { columns: [aColumn('Pillar', 3500, 300, 300, 300)] }) },
        'walkway-width',
      ),
    ).toMatchInlineSnapshot(`
      "fail, walkway Behind
      Behind keeps only 19 3/8 in clear (Pillar stands in the way) where 36 in is the least for 20 people. Move Left 16 5/8 in away from the back wall.
      = 62 in from Left to the back wall − 19 in occupied seat − 23 5/8 in obstacles = 19 3/8 in
      : 492.2 against 914.4 mm, margin -422.2
      at walkways.Behind, by IBC 2021 1030.9.1 and 2010 ADA Standards 403.5.1
      see walkways.Behind.between.booth: one side of the walkway; walkways.Behind.between.back-wall: one side of the walkway
      weigh Move the booth 16 3/4 in away from the back wall | placements.0.at := 118 1/8in, 78 3/4in"
    `);
  });

  it('where something is missing', () => {
    expect(tell(62 * INCH, { between: undefined })).toMatchInlineSnapshot(`
      "unknown, walkway Behind
      Cannot say how wide Behind is, or must be. Add \`between\` to walkway Behind, such as \`between booth and back-wall\`.
      at walkways.Behind, by IBC/IFC 2018 1029.9.1 and 1029.13.1 (2021: 1030)
      ask between of walkway Behind, as between booth and back-wall, at walkways.Behind"
    `);
    expect(tell(62 * INCH, {}, { placements: [] })).toMatchInlineSnapshot(`
      "unknown, walkway Behind
      Cannot say how wide Behind is, or must be. Add \`place\` to the file, for Left, such as \`place Left at 14ft, 6ft\`.
      at walkways.Behind, by IBC/IFC 2018 1029.9.1 and 1029.13.1 (2021: 1030)
      ask place of the file, for Left, as place Left at 14ft, 6ft, at desks.Left"
    `);
    expect(tell(62 * INCH, {}, { desks: [aDesk('Left', 1040, { width: undefined })] })).toMatchInlineSnapshot(`
      "unknown, walkway Behind
      Cannot say how wide Behind is, or must be. Add \`width\` to desk Left, such as \`width 60in\`.
      at walkways.Behind, by IBC/IFC 2018 1029.9.1 and 1029.13.1 (2021: 1030)
      ask width of desk Left, as width 60in, at desks.Left"
    `);
    expect(tell(62 * INCH, {}, { desks: [aDesk('Left', 1040, { depth: undefined })] })).toMatchInlineSnapshot(`
      "unknown, walkway Behind
      Cannot say how wide Behind is, or must be. Add \`depth\` to desk Left, such as \`depth 27in\`.
      at walkways.Behind, by IBC/IFC 2018 1029.9.1 and 1029.13.1 (2021: 1030)
      ask depth of desk Left, as depth 27in, at desks.Left"
    `);
  });

  it('where a side has no place yet', () => {
    const to = (side: string, parts: Parameters<typeof behind>[2] = {}) =>
      told(behind(62 * INCH, aWalkway('Way', ['booth', side], { serves: given(20) }), parts), 'walkway-width');
    expect(to('seating')).toMatchInlineSnapshot(`
      "unknown, walkway Way
      Cannot say how wide Way is, or must be. Add \`first\` to seating, such as \`first 3ft\`.
      at walkways.Way, by IBC/IFC 2018 1029.9.1 and 1029.13.1 (2021: 1030)
      ask first of seating, as first 3ft, at undefined"
    `);
    expect(to('stage')).toMatchInlineSnapshot(`
      "unknown, walkway Way
      Cannot say how wide Way is, or must be. Add \`edge\` to stage, such as \`edge 55ft\`.
      at walkways.Way, by IBC/IFC 2018 1029.9.1 and 1029.13.1 (2021: 1030)
      ask edge of stage, as edge 55ft, at undefined"
    `);
    const room = { ...aRoom(1, 1), width: undefined, depth: undefined };
    expect(to('right-wall', { room })).toMatchInlineSnapshot(`
      "unknown, walkway Way
      Cannot say how wide Way is, or must be. Add \`width\` to room, such as \`width 40ft\`.
      at walkways.Way, by IBC/IFC 2018 1029.9.1 and 1029.13.1 (2021: 1030)
      ask width of room, as width 40ft, at room"
    `);
    expect(to('stage-wall', { room })).toMatchInlineSnapshot(`
      "unknown, walkway Way
      Cannot say how wide Way is, or must be. Add \`depth\` to room, such as \`depth 66ft\`.
      at walkways.Way, by IBC/IFC 2018 1029.9.1 and 1029.13.1 (2021: 1030)
      ask depth of room, as depth 66ft, at room"
    `);
    const placements = [aPlacement(['Left'], 3000, 3000), aPlacement(['Power'], 6000, 3000)];
    expect(to('Power', { placements, racks: [aRack('Power', 12, { width: undefined })] })).toMatchInlineSnapshot(`
      "unknown, walkway Way
      Cannot say how wide Way is, or must be. Add \`width\` to rack Power, such as \`width 22in\`.
      at walkways.Way, by IBC/IFC 2018 1029.9.1 and 1029.13.1 (2021: 1030)
      ask width of rack Power, as width 22in, at racks.Power"
    `);
    expect(to('Power', { placements, racks: [aRack('Power', 12, { depth: undefined })] })).toMatchInlineSnapshot(`
      "unknown, walkway Way
      Cannot say how wide Way is, or must be. Add \`depth\` to rack Power, such as \`depth 20in\`.
      at walkways.Way, by IBC/IFC 2018 1029.9.1 and 1029.13.1 (2021: 1030)
      ask depth of rack Power, as depth 20in, at racks.Power"
    `);
  });

  it('of the booth the first piece without a place or a size is asked for', () => {
    const of = (placed: readonly string[], parts: Parameters<typeof behind>[2]) => {
      const placements = placed.map((name, index) => aPlacement([name], 3000 + 2000 * index, 3000));
      const { missing } = findingOf(
        behind(1, aWalkway('Way', ['booth', 'back-wall']), { ...parts, placements }),
        'walkway-width',
      );
      return missing && [missing.property, missing.of];
    };
    const bare = aDesk('Bare', 740, { width: undefined, depth: undefined });
    expect(of([], { desks: [aDesk('Left', 740), bare] })).toEqual(['place', 'the file, for Left']);
    expect(of(['Bare'], { desks: [bare] })).toEqual(['width', 'desk Bare']);
    expect(of([], { desks: [], racks: [aRack('Power', 12)] })).toEqual(['place', 'the file, for Power']);
    // One piece on the plan is a booth to walk round.
    expect(of(['Left'], { desks: [bare, aDesk('Left', 740)] })).toBeUndefined();
  });

  it('where the file sets its own limit, seats are on both sides of an unknown number, or the limit is borrowed', () => {
    const overrides = [{ check: 'walkway-width', value: 1200, reason: 'the warden says so', origin: nowhere }];
    expect(tell(62 * INCH, {}, { overrides })).toMatchInlineSnapshot(`
      "fail, walkway Behind
      Behind keeps only 43 in clear where the file’s own 47 1/4 in is the least for 20 people. Move Left 4 1/4 in away from the back wall.
      = 62 in from Left to the back wall − 19 in occupied seat − 0 in obstacles = 43 in
      : 1092.2 against 1200 mm, margin -107.8
      at walkways.Behind, by the file’s own limit: the warden says so
      see walkways.Behind.between.booth: one side of the walkway; walkways.Behind.between.back-wall: one side of the walkway; overrides.0: the file’s own limit: the warden says so
      weigh Move the booth 4 1/4 in away from the back wall | placements.0.at := 118 1/8in, 66 1/4in"
    `);
    expect(tell(70 * INCH, {}, { overrides })).toMatchInlineSnapshot(`
      "pass, walkway Behind
      Behind keeps 51 in clear, not below the file’s own 47 1/4 in.
      = 70 in from Left to the back wall − 19 in occupied seat − 0 in obstacles = 51 in
      : 1295.4 against 1200 mm, margin 95.4
      at walkways.Behind, by the file’s own limit: the warden says so
      see walkways.Behind.between.booth: one side of the walkway; walkways.Behind.between.back-wall: one side of the walkway; overrides.0: the file’s own limit: the warden says so"
    `);
    expect(tell(50 * INCH, { seats: given('both-sides'), serves: undefined })).toMatchInlineSnapshot(`
      "fail, walkway Behind
      Behind keeps only 31 in clear where 42 in is the least for the public with seats on both sides. Move Left 11 in away from the back wall.
      = 50 in from Left to the back wall − 19 in occupied seat − 0 in obstacles = 31 in
      : 787.4 against 1066.8 mm, margin -279.4
      at walkways.Behind, by IBC 2021 1030.9.1 item 4
      see walkways.Behind.between.booth: one side of the walkway; walkways.Behind.between.back-wall: one side of the walkway
      weigh Move the booth 11 in away from the back wall | placements.0.at := 118 1/8in, 61in
      granted Behind serves 50 people or more"
    `);
    expect(tell(50 * INCH, { users: given('operators') }, { limits: 'uk' })).toMatchInlineSnapshot(`
      "pass, walkway Behind
      Behind keeps 31 in clear, not below 28 in.
      = 50 in from Left to the back wall − 19 in occupied seat − 0 in obstacles = 31 in
      : 787.4 against 711.2 mm, margin 76.2
      at walkways.Behind, by OSHA 29 CFR 1910.36(g)(2)
      see walkways.Behind.between.booth: one side of the walkway; walkways.Behind.between.back-wall: one side of the walkway
      granted no UK figure was read for this: the US figure stands in"
    `);
  });
});
