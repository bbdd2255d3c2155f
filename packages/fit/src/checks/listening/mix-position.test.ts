import { describe, expect, it } from 'vitest';
import type { Booth, Room } from '../../booth.js';
import { aBooth, aDesk, anOperator, aPlacement, aRoom, aStation, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import { told } from '../../testing/told.js';

/** A desk 1500 wide with its near left corner at (x, y), in a room 10 m wide with a stage 15 m from the back wall. */
function booth(x: number, y: number, room: Partial<Room> = {}, parts: Partial<Booth> = {}): Booth {
  return aBooth({
    room: aRoom(10_000, 20_000, { stage: { origin: nowhere, edge: given(15_000) }, ...room }),
    operators: [anOperator('Noor', { stature: 1630 })],
    desks: [aDesk('Left', 1000)],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'])],
    placements: [aPlacement(['Left'], x, y)],
    ...parts,
  });
}

const judge = (...args: Parameters<typeof booth>) => findingOf(booth(...args), 'mix-position');
const balcony = (edge: number) => ({ balcony: { origin: nowhere, edge: given(edge), height: given(3000) } });

describe('mix-position: information, never a fault', () => {
  it.each([
    ['on the centre line', 4250, 3000, 'on the centre line'],
    ['1 m to the right', 5250, 3000, '1000 mm right of the centre line'],
    ['2 m to the left', 2250, 3000, '2000 mm left of the centre line'],
  ])('%s', (_, x, y, words) => {
    const finding = judge(x, y);
    expect(finding).toMatchObject({ verdict: 'pass', measured: 12_000 });
    expect(finding.limit).toBeUndefined();
    expect(finding.message).toContain('12000 mm from the stage');
    expect(finding.message).toContain(words);
    expect(finding.message).toContain('80% of the way');
  });

  it('stands where the operator stands, however the desk is turned', () => {
    const workstations = [aStation('Sound', 'Left', undefined, ['Noor'], { at: given(500), lean: given(100) })];
    expect(judge(4250, 3000, {}, { workstations }).measured).toBe(15_000 - 3100);
    const turned = { placements: [aPlacement(['Left'], 3000, 3000, 90)] };
    // Facing right: its near edge runs from (3000, 3000) to (3000, 1500), and its middle is at 2250.
    expect(judge(0, 0, {}, turned).measured).toBe(15_000 - 2250);
  });

  it('says when it is under the balcony', () => {
    expect(judge(4250, 3000, balcony(4000)).message).toContain('under the balcony');
    expect(judge(4250, 3000, balcony(4000)).verdict).toBe('pass');
    expect(judge(4250, 3000, balcony(2900)).message).not.toContain('under the balcony');
  });

  it.each([
    [outside('practitioners’ forum, on board placement', 'about two thirds of the way back'), 5000, '67% of the way'],
    [
      outside('American Society of Theatre Consultants, on the sound mix position', 'in front of the overhang'),
      4000,
      'on the centre line, under the balcony',
    ],
    [
      outside('American Society of Theatre Consultants, on the sound mix position', 'on the centre line'),
      5000,
      '10000 mm from the stage, on the centre line.',
    ],
    [outside('C. Taipale, on the house mixing desk', 'not exactly on the centre line'), 5000, 'or to be kept off'],
  ])('%s', (_, y, words) => {
    expect(judge(4250, y, balcony(4500)).message).toContain(words);
  });

  it('states that sources disagree', () => {
    const finding = judge(4250, 3000);
    expect(finding.message).toContain('Sources disagree');
    expect(finding.message).toContain('Information only');
    expect(finding.source).toContain('disagree');
  });

  it('asks for the stage once, whatever the number of workstations', () => {
    const workstations = [aStation('A', 'Left', undefined, ['Noor']), aStation('B', 'Left', undefined, ['Noor'])];
    expect(judge(4250, 3000, { stage: undefined }, { workstations })).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'stage', of: 'room', example: 'stage { edge 16.8m }' },
    });
    expect(judge(4250, 3000, { stage: { origin: nowhere } })).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'edge', of: 'stage', example: 'edge 16.8m' },
    });
    expect(judge(4250, 3000, {}, { room: undefined })).toMatchObject({ verdict: 'unknown' });
  });

  it('asks for the desk’s place; asks nothing where nobody works controls', () => {
    expect(judge(0, 0, {}, { placements: [] })).toMatchObject({ verdict: 'unknown', missing: { property: 'place' } });
    const workstations = [aStation('Words', 'Left', undefined, ['Noor'], { task: given('keyboard') })];
    expect(findingsOf(booth(0, 0, {}, { workstations }), 'mix-position')).toEqual([]);
  });
});

describe('mix-position: what a reader is told', () => {
  const tell = (...args: Parameters<typeof booth>) => told(booth(...args), 'mix-position');

  it('on the centre line, and beside it', () => {
    expect(tell(4250, 5000)).toMatchInlineSnapshot(`
      "pass, workstation Sound
      If sound is mixed at Sound: it is 10000 mm from the stage, on the centre line. That is 67% of the way from the stage to the back wall. Sources disagree whether the centre line is best or to be kept off. Information only: listen there before you build.
      = 15000 mm from back wall to stage − 5000 mm = 10000 mm
      : 10000 against nothing mm, margin nothing
      at workstations.Sound, by sources disagree: American Society of Theatre Consultants; C. Taipale
      granted the stage is in the middle of the room"
    `);
    expect(tell(2000, 5000)).toMatchInlineSnapshot(`
      "pass, workstation Sound
      If sound is mixed at Sound: it is 10000 mm from the stage, 2250 mm left of the centre line. That is 67% of the way from the stage to the back wall. Sources disagree whether the centre line is best or to be kept off. Information only: listen there before you build.
      = 15000 mm from back wall to stage − 5000 mm = 10000 mm
      : 10000 against nothing mm, margin nothing
      at workstations.Sound, by sources disagree: American Society of Theatre Consultants; C. Taipale
      granted the stage is in the middle of the room"
    `);
    expect(tell(7000, 5000)).toMatchInlineSnapshot(`
      "pass, workstation Sound
      If sound is mixed at Sound: it is 10000 mm from the stage, 2750 mm right of the centre line. That is 67% of the way from the stage to the back wall. Sources disagree whether the centre line is best or to be kept off. Information only: listen there before you build.
      = 15000 mm from back wall to stage − 5000 mm = 10000 mm
      : 10000 against nothing mm, margin nothing
      at workstations.Sound, by sources disagree: American Society of Theatre Consultants; C. Taipale
      granted the stage is in the middle of the room"
    `);
  });

  it('under a balcony', () => {
    expect(tell(4250, 5000, balcony(8000))).toMatchInlineSnapshot(`
      "pass, workstation Sound
      If sound is mixed at Sound: it is 10000 mm from the stage, on the centre line, under the balcony. That is 67% of the way from the stage to the back wall. Sources disagree whether the centre line is best or to be kept off; most advise against a place under a balcony. Information only: listen there before you build.
      = 15000 mm from back wall to stage − 5000 mm = 10000 mm
      : 10000 against nothing mm, margin nothing
      at workstations.Sound, by sources disagree: American Society of Theatre Consultants; C. Taipale
      granted the stage is in the middle of the room"
    `);
  });

  it('where something is missing', () => {
    expect(tell(4250, 5000, { stage: undefined })).toMatchInlineSnapshot(`
      "unknown, booth Test booth
      Cannot say how far the sound operator is from the stage. Add \`stage\` to room, such as \`stage { edge 16.8m }\`.
      at room, by American Society of Theatre Consultants, on the sound mix position
      ask stage of room, as stage { edge 16.8m }, at room"
    `);
    expect(tell(4250, 5000, {}, { room: undefined })).toMatchInlineSnapshot(`
      "unknown, booth Test booth
      Cannot say how far the sound operator is from the stage. Add \`stage\` to the file, in its room, such as \`stage { edge 16.8m }\`.
      at undefined, by American Society of Theatre Consultants, on the sound mix position
      ask stage of the file, in its room, as stage { edge 16.8m }, at undefined"
    `);
    expect(tell(4250, 5000, {}, { placements: [] })).toMatchInlineSnapshot(`
      "unknown, workstation Sound
      Cannot say how far Sound is from the stage. Add \`place\` to the file, for desk Left, such as \`place Left at 4.3m, 1830mm\`.
      at workstations.Sound, by American Society of Theatre Consultants, on the sound mix position
      ask place of the file, for desk Left, as place Left at 4.3m, 1830mm, at desks.Left"
    `);
    expect(tell(4250, 5000, { stage: { origin: nowhere } })).toMatchInlineSnapshot(`
      "unknown, booth Test booth
      Cannot say how far the sound operator is from the stage. Add \`edge\` to stage, such as \`edge 16.8m\`.
      at room.stage, by American Society of Theatre Consultants, on the sound mix position
      ask edge of stage, as edge 16.8m, at room.stage"
    `);
    expect(tell(4250, 5000, { width: undefined })).toMatchInlineSnapshot(`
      "pass, workstation Sound
      If sound is mixed at Sound: it is 10000 mm from the stage. That is 67% of the way from the stage to the back wall. Sources disagree whether the centre line is best or to be kept off. Information only: listen there before you build.
      = 15000 mm from back wall to stage − 5000 mm = 10000 mm
      : 10000 against nothing mm, margin nothing
      at workstations.Sound, by sources disagree: American Society of Theatre Consultants; C. Taipale"
    `);
  });
});
