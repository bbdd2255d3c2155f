import { describe, expect, it } from 'vitest';
import type { Booth, Posture, Watchers } from '../../booth.js';
import {
  aBooth,
  aDesk,
  aMeasuredOperator,
  aPlacement,
  aRoom,
  aSeat,
  aStation,
  given,
  nowhere,
  fixed,
} from '../../testing/booths.js';
import { findingOf, findingsOf, wholeBody } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import { aPlatform, aRack } from '../../testing/floor.js';
import { aMonitor, aScreen } from '../../testing/screens.js';
import { told } from '../../testing/told.js';

const stage = { origin: nowhere, edge: given(12_000), height: given(900), width: given(200) };

/** A watcher in the middle of the room, and an operator who stands 2 m before them with an eye of a given height. */
function hall(eye: number, posture: Watchers['posture']['value'], parts: Partial<Booth> = {}): Booth {
  const watchers = [{ name: 'Back', origin: nowhere, at: given({ x: 4000, y: 2000 }), posture: given(posture) }];
  return aBooth({
    room: aRoom(8000, 14_000, { stage, watchers }),
    operators: [aMeasuredOperator('Noor', wholeBody({ standingEyeHeight: eye - 25 }))],
    desks: [aDesk('Left', 1000)],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'])],
    placements: [aPlacement(['Left'], 3250, 4000)],
    ...parts,
  });
}

describe('seen-past: C over the eye of the person in front', () => {
  // The line from an eye of 1600 falls 700 in 10 m: 140 in the first 2 m, so it passes the operator at 1460.
  it.each([
    [
      outside('FIFA stadium guidelines and CEN/TR 15913:2009, in secondary sources', 'C of 120 mm is best'),
      1340,
      'pass',
      120,
    ],
    [
      outside('FIFA stadium guidelines and CEN/TR 15913:2009, in secondary sources', 'C of 90 mm is acceptable'),
      1370,
      'pass',
      90,
    ],
    ['C of 88 is not', 1372, 'marginal', 88],
    [
      outside('FIFA stadium guidelines and CEN/TR 15913:2009, in secondary sources', 'C of 60 mm is the least'),
      1400,
      'marginal',
      60,
    ],
    ['C of 58 fails', 1402, 'fail', 58],
    ['an eye above the line hides the stage floor', 1500, 'fail', -40],
  ])('%s', (_, eye, verdict, measured) => {
    const finding = findingOf(hall(eye, 'stand'), 'seen-past');
    expect(finding.verdict).toBe(verdict);
    expect(finding.measured).toBeCloseTo(measured, 6);
  });

  it(
    outside(
      'AETM, understanding sightlines; CEN/TR 15913:2009',
      'a seated eye at 1200 mm',
      'a wheelchair user’s at 1150 mm',
    ),
    () => {
      expect(findingOf(hall(1000, 'sit'), 'seen-past').measured).toBeCloseTo(1200 - 300 * 0.2 - 1000, 6);
      expect(findingOf(hall(1000, 'wheelchair'), 'seen-past').measured).toBeCloseTo(1150 - 250 * 0.2 - 1000, 6);
    },
  );

  it('a wheelchair space counts as a watcher', () => {
    const space = {
      name: 'Space',
      origin: nowhere,
      at: given({ x: 3500, y: 1400 }),
      width: given(1000),
      depth: given(1200),
    };
    const booth = hall(1500, 'stand');
    const room = { ...booth.room!, watchers: [], wheelchairSpaces: [space] };
    expect(findingOf({ ...booth, room }, 'seen-past')).toMatchObject({ verdict: 'fail', subject: { name: 'Space' } });
  });

  it('a booth out of the line hides nothing', () => {
    const finding = findingOf(hall(1700, 'sit', { placements: [aPlacement(['Left'], 200, 4000)] }), 'seen-past');
    expect(finding).toMatchObject({ verdict: 'pass' });
    expect(finding.message).toContain('Nothing of the booth');
  });

  it('asks nothing where nobody watches from behind', () => {
    const booth = hall(1500, 'stand');
    expect(findingsOf({ ...booth, room: { ...booth.room!, watchers: [] } }, 'seen-past')).toEqual([]);
  });

  it('asks for the stage', () => {
    const booth = hall(1500, 'stand');
    const { stage: _, ...room } = booth.room!;
    expect(findingOf({ ...booth, room }, 'seen-past')).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'stage', of: 'room' },
    });
  });
});

describe('seen-past: the ways out that it names', () => {
  const seated = wholeBody({ standingEyeHeight: 1475, sittingEyeHeight: 760 });
  const atTimes = (seat: number, postures: readonly Posture[]) =>
    hall(1500, 'stand', {
      operators: [aMeasuredOperator('Noor', seated)],
      seats: [aSeat('Stool', seat)],
      workstations: [aStation('Sound', 'Left', 'Stool', ['Noor'], { postures: given(postures) })],
    });
  const onFloor = (height: number) => {
    const under = { at: given({ x: 3500, y: 1500 }), width: given(1000), depth: given(1000) };
    return hall(1500, 'stand', { platforms: [aPlatform('Riser', height, under)] });
  };

  // The line passes at 1460: seated eyes of 1370 are 90 below it, as FIFA stadium guidelines accept.
  it.each([
    ['sitting where that is low enough', 650, ['sit', 'stand'], /seated eyes are low enough/],
    ['not where a seat is too high for it', 652, ['sit', 'stand'], /^(?!.*seated).*raise the floor under Back/],
    ['not to who sits already', 760, ['sit'], /^(?!.*seated).*raise the floor under Back/],
  ] as const)('%s', (_, seat, postures, words) => {
    expect(findingOf(atTimes(seat, postures), 'seen-past').message).toMatch(words);
  });

  it('a floor under the watchers as high as it takes, and no higher', () => {
    // A fifth of the way to the stage the line rises by four fifths of the floor: 130 / 0.8.
    expect(findingOf(hall(1500, 'stand'), 'seen-past').message).toContain('raise the floor under Back by 163 mm');
    expect(findingOf(onFloor(163), 'seen-past')).toMatchObject({ verdict: 'pass' });
    expect(findingOf(onFloor(160), 'seen-past')).toMatchObject({ verdict: 'marginal' });
  });
});

describe('seen-past: what a reader is told', () => {
  const tell = (...args: Parameters<typeof hall>) => told(hall(...args), 'seen-past');
  const watchers = hall(1, 'sit').room!.watchers;
  const screen = aScreen('Cues', 500, 'bottom', 1, { height: { line: 'bottom', over: 'desk', distance: fixed(100) } });
  const screened = {
    monitors: [aMonitor('Cues')],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'], { screens: [screen] })],
  };

  it('where the line clears the booth, all but, and not', () => {
    expect(tell(1340, 'stand')).toMatchInlineSnapshot(`
      "pass, room Back
      Back looks over the booth at the left of the stage: the line clears Noor by 120 mm.
      : 120 against 90 mm, margin 30
      at room.watchers.Back, by CEN/TR 15913:2009 and FIFA stadium guidelines
      see workstations.Sound: Noor stands in the line of sight"
    `);
    expect(tell(1400, 'stand')).toMatchInlineSnapshot(`
      "marginal, room Back
      From Back, Noor all but hides the floor of the left of the stage: the line of sight passes 60 mm above the eyes there. Move the place out of the line, or raise the floor under Back by 38 mm.
      : 60 against 90 mm, margin -30
      at room.watchers.Back, by CEN/TR 15913:2009 and FIFA stadium guidelines
      see workstations.Sound: Noor stands in the line of sight"
    `);
    expect(tell(1500, 'stand')).toMatchInlineSnapshot(`
      "fail, room Back
      From Back, Noor hides the floor of the left of the stage: the line of sight passes 40 mm below the eyes there. Move the place out of the line, or raise the floor under Back by 163 mm.
      : -40 against 60 mm, margin -100
      at room.watchers.Back, by CEN/TR 15913:2009 and FIFA stadium guidelines
      see workstations.Sound: Noor stands in the line of sight"
    `);
  });

  it('where nothing stands in the line', () => {
    expect(tell(1700, 'sit', { placements: [aPlacement(['Left'], 200, 4000)] })).toMatchInlineSnapshot(`
      "pass, room Back
      Nothing of the booth stands between Back and the stage.
      at room.watchers.Back, by CEN/TR 15913:2009 and FIFA stadium guidelines"
    `);
  });

  it('of a screen on a desk, and of a rack', () => {
    expect(tell(1340, 'sit', screened)).toMatchInlineSnapshot(`
      "fail, room Back
      From Back, Cues hides the floor of the left of the stage: the line of sight passes 275 mm below its top. Lower it by 365 mm, or move it out of the line.
      : -275 against 60 mm, margin -335
      at room.watchers.Back, by CEN/TR 15913:2009 and FIFA stadium guidelines
      see workstations.Sound.screens.0.monitor: Cues stands in the line of sight"
    `);
    expect(
      tell(1000, 'sit', {
        racks: [aRack('Tower', 30)],
        placements: [aPlacement(['Left'], 200, 4000), aPlacement(['Tower'], 3800, 5000)],
      }),
    ).toMatchInlineSnapshot(`
      "fail, room Back
      From Back, Tower hides the floor of the left of the stage: the line of sight passes 239 mm below its top. Lower it by 329 mm, or move it out of the line.
      : -238.5 against 60 mm, margin -298.5
      at room.watchers.Back, by CEN/TR 15913:2009 and FIFA stadium guidelines
      see racks.Tower: Tower stands in the line of sight"
    `);
  });

  it('where something is missing', () => {
    expect(tell(1340, 'stand', { room: aRoom(8000, 14_000, { watchers }) })).toMatchInlineSnapshot(`
      "unknown, room Back
      Cannot say what Back sees of the stage. Add \`stage\` to room, such as \`stage { edge 16.8m  height 910mm }\`.
      at room.watchers.Back, by CEN/TR 15913:2009 and FIFA stadium guidelines
      ask stage of room, as stage { edge 16.8m  height 910mm }, at room"
    `);
    expect(tell(1340, 'stand', { room: aRoom(8000, 14_000, { watchers, stage: { origin: nowhere } }) }))
      .toMatchInlineSnapshot(`
        "unknown, room Back
        Cannot say what Back sees of the stage. Add \`edge\` to stage, such as \`edge 16.8m\`.
        at room.watchers.Back, by CEN/TR 15913:2009 and FIFA stadium guidelines
        ask edge of stage, as edge 16.8m, at room.stage"
      `);
    expect(
      tell(1340, 'stand', { room: aRoom(8000, 14_000, { watchers, stage: { origin: nowhere, edge: given(12_000) } }) }),
    ).toMatchInlineSnapshot(`
      "unknown, room Back
      Cannot say what Back sees of the stage. Add \`height\` to stage, such as \`height 910mm\`.
      at room.watchers.Back, by CEN/TR 15913:2009 and FIFA stadium guidelines
      ask height of stage, as height 910mm, at room.stage"
    `);
    expect(
      tell(1340, 'stand', { room: aRoom(8000, 14_000, { watchers: [{ ...watchers[0]!, at: undefined }], stage }) }),
    ).toMatchInlineSnapshot(`
      "unknown, room Back
      Cannot say what Back sees of the stage. Add \`at\` to Back, such as \`at 3m, 610mm\`.
      at room.watchers.Back, by CEN/TR 15913:2009 and FIFA stadium guidelines
      ask at of Back, as at 3m, 610mm, at room.watchers.Back"
    `);
  });
});
