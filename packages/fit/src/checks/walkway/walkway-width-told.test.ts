import { describe, expect, it } from 'vitest';
import { aDesk, aRoom, given } from '../../testing/booths.js';
import { aColumn } from '../../testing/floor.js';
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
});
