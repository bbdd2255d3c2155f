import { describe, expect, it } from 'vitest';
import type { Booth, Room, ScreenUse } from '../../booth.js';
import {
  aBooth,
  aCrowd,
  aDesk,
  aMeasuredOperator,
  anOperator,
  aPlacement,
  aRoom,
  aSeat,
  aStation,
  byDefault,
  given,
  nowhere,
  fixed,
  range,
} from '../../testing/booths.js';
import { findingOf, findingsOf, wholeBody } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import { assess } from '../../assess/assess.js';
import { aRack } from '../../testing/floor.js';
import { told } from '../../testing/told.js';

/** A stage 900 high at 10 m from the back wall; the eye stands 2 m from it, 1200 + 25 − 25 high where it says so. */
const stage = { origin: nowhere, edge: given(10_000), height: given(900), width: given(200) };

function screen(bottom: number, parts: Partial<ScreenUse> = {}): ScreenUse {
  return {
    monitor: { name: 'Cues', origin: nowhere },
    origin: nowhere,
    setback: given(600),
    height: { line: 'bottom', over: 'floor', distance: fixed(bottom) },
    tilt: byDefault(0),
    main: byDefault(true),
    ...parts,
  };
}

function hall(
  eyeHeight: number,
  screens: readonly ScreenUse[],
  room: Partial<Room> = {},
  parts: Partial<Booth> = {},
): Booth {
  return aBooth({
    room: aRoom(8000, 14_000, { stage, ...room }),
    operators: [aMeasuredOperator('Noor', wholeBody({ standingEyeHeight: eyeHeight - 25 }))],
    desks: [aDesk('Left', 1000)],
    monitors: [{ name: 'Cues', origin: nowhere, diagonal: given(500), aspect: byDefault({ across: 4, down: 3 }) }],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'], { screens })],
    placements: [aPlacement(['Left'], 3250, 2000)],
    ...parts,
  });
}

describe('see-over: similar triangles over one screen', () => {
  // The screen is 300 high (a 3-4-5 triangle of 500), 600 before the eye; the stage edge 8000 before it.
  it.each([
    // eye 1500: a top of 1455 lets the line fall 45 in 600, so 600 in 8000: it meets the edge at 900, the floor.
    ['just sees the floor', 1500, 1155, 'pass', 0],
    ['hides 133 mm of it: 10 mm higher at the screen', 1500, 1165, 'marginal', 133.3],
    ['a top at eye height hides up to the eye', 1500, 1200, 'marginal', 600],
    ['a top above the eye hides the waist', 1500, 1260, 'fail', 1400],
  ])('%s', (_, eye, bottom, verdict, measured) => {
    const finding = findingOf(hall(eye, [screen(bottom)]), 'see-over');
    expect(finding.verdict).toBe(verdict);
    expect(finding.measured).toBeCloseTo(measured, 0);
  });

  describe('on an arm', () => {
    const arm = (min: number, max: number) => {
      return screen(0, { height: { line: 'centre', over: 'floor', distance: range(min, max) } });
    };

    it('is set lower for it by the one who looks over it, as far as is good for the eye', () => {
      // 600 away the best middle of one 300 high is 150 below the eye, its top edge level with it; its bottom edge 33° down is 390 below it, and
      // then the top edge is 90 below. 45 are enough for the floor.
      const seen = findingOf(hall(1500, [arm(1000, 1600)]), 'see-over');
      expect(seen).toMatchObject({ verdict: 'pass', share: 1, shareAtLimit: 1, measured: 0 });
      expect(seen.assumptions).toContain('Cues is set lower on its arm for it, no lower than is good for the eye');
      // An arm that does not go so low.
      expect(findingOf(hall(1500, [arm(1304, 1600)]), 'see-over').verdict).toBe('pass');
      const held = findingOf(hall(1500, [arm(1315, 1600)]), 'see-over');
      expect(held.measured).toBeCloseTo(133.3, 0);
      expect(held.verdict).toBe('marginal');
      expect(held.assumptions).toContain('Cues is set lower on its arm for it, no lower than is good for the eye');
    });

    it('is not said to be lowered where it need not be, and not lowered farther than is good for the eye', () => {
      const low = findingOf(hall(1500, [arm(1000, 1300)]), 'see-over');
      expect(low.verdict).toBe('pass');
      expect(low.assumptions.join()).not.toContain('arm');
      // One 900 high has no good height so near, so it stays as for reading.
      const monitors = [
        { name: 'Cues', origin: nowhere, diagonal: given(1500), aspect: byDefault({ across: 4, down: 3 }) },
      ];
      const large = findingOf(hall(1500, [arm(600, 1600)], {}, { monitors }), 'see-over');
      expect(large.verdict).toBe('fail');
      expect(large.assumptions.join()).not.toContain('arm');
    });

    it('of another workstation counts raised as high as it goes', () => {
      const other = (reach: ScreenUse) => {
        const [sound] = hall(1500, []).workstations;
        const words = aStation('Words', 'Left', undefined, [], { at: given(750), screens: [reach] });
        return findingOf(hall(1500, [], {}, { workstations: [sound!, words] }), 'see-over').measured;
      };
      expect(other(arm(1000, 1350))).toBeCloseTo(600, 0);
      expect(other(arm(1000, 1360))).toBeCloseTo(733.3, 0);
    });

    it('is not lowered for good by a remedy: who looks over it can set it so', () => {
      const { message, remedies } = findingOf(hall(1500, [arm(1340, 1600)]), 'see-over');
      expect(message).toContain('Lower Cues by 35 mm');
      expect(remedies.map(({ changes }) => changes)).toEqual([[]]);
    });
  });

  it('names the obstacle that decides and a remedy that works when it is taken', () => {
    const finding = findingOf(hall(1500, [screen(1200)]), 'see-over');
    expect(finding.message).toContain('Cues hides the rest');
    expect(finding.message).toContain('Lower Cues by 45 mm');
    const text = finding.remedies[0]!.changes[0]!.text;
    expect(findingOf(hall(1500, [screen(Number(text.replace('mm', '')))]), 'see-over').verdict).toBe('pass');
  });

  it('a screen beside the line of sight hides nothing', () => {
    const aside = screen(1260, { at: given(1400) });
    expect(findingOf(hall(1500, [aside]), 'see-over')).toMatchObject({ verdict: 'pass', measured: 0 });
  });
});

describe('see-over: people in front', () => {
  const seating = (standing: boolean) => ({ origin: nowhere, first: given(1000), standing });

  it(outside('CEN/TR 15913:2009, in a secondary source', 'people who stand are 1800 mm high'), () => {
    // From 2000 + 700 depth + 1000: the row stands 1700 before the eye; (1800 − 1600) × 8000 / 1700 above the eye.
    const finding = findingOf(hall(1600, [], { seating: seating(true) }), 'see-over');
    expect(finding.measured).toBeCloseTo(1600 + (200 * 8000) / 1700 - 900, 6);
    expect(finding.verdict).toBe('fail');
    expect(finding.message).toContain('people who stand');
    expect(finding.message).toContain('platform');
  });

  it(
    outside(
      'Panero & Zelnik 1979, 9.3; AETM, understanding sightlines',
      'from eye to crown 127 mm',
      'a seated eye at 1200 mm',
    ),
    () => {
      const finding = findingOf(hall(1600, [], { seating: seating(false) }), 'see-over');
      expect(finding.measured).toBeCloseTo(Math.max(0, 1600 + ((1327 - 1600) * 8000) / 1700 - 900), 6);
      expect(finding.verdict).toBe('pass');
    },
  );

  it('the platform named in the remedy is enough', () => {
    const booth = hall(1600, [], { seating: seating(true) });
    const lift = Number(/platform by (\d+) mm/.exec(findingOf(booth, 'see-over').message)![1]);
    const platform = {
      name: 'Riser',
      origin: nowhere,
      at: given({ x: 2000, y: 1000 }),
      width: given(4000),
      depth: given(3000),
      height: given(lift + 1),
    };
    expect(findingOf({ ...booth, platforms: [platform] }, 'see-over').verdict).toBe('pass');
  });

  it('names the row that hides most', () => {
    const rows = { ...seating(true), rows: given(3), pitch: given(900) };
    expect(findingOf(hall(1600, [], { seating: rows }), 'see-over').message).toContain(
      'people who stand in row 1 hide',
    );
  });

  it('says that it counts the nearest row only when rows and pitch are not said', () => {
    const finding = findingOf(hall(1600, [], { seating: seating(false) }), 'see-over');
    expect(finding.assumptions.join()).toContain('nearest row');
  });
});

describe('see-over: what it needs', () => {
  it('asks nothing of a room without a stage', () => {
    expect(findingsOf(aBooth({ room: aRoom(8000, 9000) }), 'see-over')).toEqual([]);
  });

  it('asks for the place of the desk', () => {
    const finding = findingOf(hall(1500, [], {}, { placements: [] }), 'see-over');
    expect(finding).toMatchObject({ verdict: 'unknown', missing: { property: 'place' } });
  });

  it('an uncertain eye gives a share', () => {
    const operators = [anOperator('Noor', { stature: 1620 }, 'female')];
    const booth = hall(0, [screen(1155)], {}, { operators });
    const finding = findingOf(booth, 'see-over');
    expect(finding.share).toBeGreaterThan(0.5);
    expect(finding.share).toBeLessThan(1);
  });

  it('a seated eye is lower by the slump', () => {
    const seats = [aSeat('Tall', 700)];
    const operators = [aMeasuredOperator('Noor', wholeBody({ sittingEyeHeight: 840 }))];
    const workstations = [aStation('Sound', 'Left', 'Tall', ['Noor'], { screens: [screen(1155)] })];
    const booth = hall(0, [], {}, { seats, operators, workstations });
    expect(findingOf(booth, 'see-over').verdict).toBe('pass');
    expect(findingOf({ ...booth, slump: given(80) }, 'see-over').verdict).toBe('marginal');
  });

  it('is one of the assessment’s findings for each posture', () => {
    const postures = given(['sit', 'stand'] as const);
    const workstations = [aStation('Sound', 'Left', 'Tall', ['Noor'], { postures, screens: [screen(1155)] })];
    const booth = hall(1500, [], {}, { seats: [aSeat('Tall', 700)], workstations });
    const found = assess(booth).findings.filter(({ check }) => check === 'see-over');
    expect(found.map(({ posture }) => posture)).toEqual(['sit', 'stand']);
  });
});

describe('see-over: what a reader is told', () => {
  const tell = (...args: Parameters<typeof hall>) => told(hall(...args), 'see-over');

  it('where the stage is seen down to its floor', () => {
    expect(tell(1500, [])).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, stand
      Noor standing sees the stage down to its floor.
      : 0 against 0 mm, margin 0, shares 1 and 1
      at workstations.Sound, by NUREG-0700 Rev. 3, 11.2.1.1-1
      see operators.Noor: what is known of Noor
      granted nobody sits or stands between booth and stage
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
    `);
  });

  it('where a screen hides it', () => {
    expect(tell(1200, [screen(800)])).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, stand
      Noor standing sees the stage down to its floor.
      : 0 against 0 mm, margin 0, shares 1 and 1
      at workstations.Sound, by NUREG-0700 Rev. 3, 11.2.1.1-1
      see operators.Noor: what is known of Noor
      granted nobody sits or stands between booth and stage
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
    `);
    expect(tell(1200, [screen(1250)])).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, stand
      Noor standing sees the left of the stage only from 4967 mm above its floor: Cues hides the rest. Lower Cues by 373 mm, or move it 400 mm aside, out of the line.
      : 4966.67 against 900 mm, margin -4066.67, shares 0 and 0
      at workstations.Sound.screens.0.height.distance, by NUREG-0700 Rev. 3, 11.2.1.1-1
      see workstations.Sound.screens.0.monitor: Cues decides; operators.Noor: what is known of Noor
      weigh Lower Cues by 373 mm, or move it 400 mm aside, out of the line | workstations.Sound.screens.0.height.distance := 875mm
      granted nobody sits or stands between booth and stage
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
    `);
    expect(tell(1200, [screen(300, { height: { line: 'bottom', over: 'desk', distance: fixed(1) } })]))
      .toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, stand
      Noor standing sees the left of the stage only from 1647 mm above its floor: Cues hides the rest. Move Cues 400 mm aside, out of the line, or use a smaller screen.
      : 1646.67 against 900 mm, margin -746.67, shares 0 and 0
      at workstations.Sound.screens.0.height.distance, by NUREG-0700 Rev. 3, 11.2.1.1-1
      see workstations.Sound.screens.0.monitor: Cues decides; operators.Noor: what is known of Noor
      weigh Move Cues 400 mm aside, out of the line, or use a smaller screen
      granted nobody sits or stands between booth and stage
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
    `);
  });

  it('where people do', () => {
    expect(tell(1500, [], { seating: { origin: nowhere, first: given(1000), standing: true } })).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, stand
      Noor standing sees the left of the stage only from 2012 mm above its floor: people who stand in front hide the rest. Raise the booth on a platform by 543 mm, with the guards and steps that local codes ask for.
      : 2011.76 against 900 mm, margin -1111.76, shares 0 and 0
      at workstations.Sound, by NUREG-0700 Rev. 3, 11.2.1.1-1
      see room.seating: people who stand in front decides; operators.Noor: what is known of Noor
      weigh Raise the booth on a platform by 543 mm, with the guards and steps that local codes ask for
      granted only the nearest row of people counts: rows and pitch are not said
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
    `);
    expect(
      tell(1500, [], {
        seating: { origin: nowhere, first: given(1000), pitch: given(900), rows: given(3), standing: false },
      }),
    ).toMatchInlineSnapshot(`
      "marginal, workstation Sound, Noor, stand
      Noor standing sees the left of the stage only from 205 mm above its floor: people on seats in row 3 hide the rest. Raise the booth on a platform by 159 mm, with the guards and steps that local codes ask for.
      : 204.57 against 0 mm, margin -204.57, shares 0 and 1
      at workstations.Sound, by NUREG-0700 Rev. 3, 11.2.1.1-1
      see room.seating: people on seats in row 3 decides; operators.Noor: what is known of Noor
      weigh Raise the booth on a platform by 159 mm, with the guards and steps that local codes ask for
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
    `);
  });

  it('where a rack does, on its own or beside a crowd', () => {
    expect(
      tell(
        1500,
        [],
        {},
        {
          racks: [aRack('Tower', 40)],
          placements: [aPlacement(['Left'], 3250, 2000), aPlacement(['Tower'], 3800, 5000)],
        },
      ),
    ).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, stand
      Noor standing sees the left of the stage only from 1341 mm above its floor: Tower hides the rest. Move Tower out of the line of sight.
      : 1341.33 against 900 mm, margin -441.33, shares 0 and 0
      at workstations.Sound, by NUREG-0700 Rev. 3, 11.2.1.1-1
      see racks.Tower: Tower decides; operators.Noor: what is known of Noor
      weigh Move Tower out of the line of sight
      granted nobody sits or stands between booth and stage
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
    `);
    expect(
      tell(
        1500,
        [],
        {},
        {
          crowds: [aCrowd('Rota', 0.5)],
          racks: [aRack('Tower', 40)],
          placements: [aPlacement(['Left'], 3250, 2000), aPlacement(['Tower'], 3800, 5000)],
          workstations: [aStation('Sound', 'Left', undefined, ['Rota'])],
        },
      ),
    ).toMatchInlineSnapshot(`
      "fail, workstation Sound, Rota, stand
      Rota standing see the left of the stage only from 1165 mm above its floor: Tower hides the rest. Move Tower out of the line of sight.
      : 1164.69 against 900 mm, margin -264.69, shares 0 and 0.04
      at workstations.Sound, by NUREG-0700 Rev. 3, 11.2.1.1-1
      see racks.Tower: Tower decides; crowds.Rota: what is known of Rota
      weigh Move Tower out of the line of sight
      granted nobody sits or stands between booth and stage
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
    `);
  });

  it('of somebody of whom little is known', () => {
    expect(
      tell(
        1500,
        [],
        { seating: { origin: nowhere, first: given(1000), standing: false } },
        { operators: [anOperator('Noor', { stature: 1330 })] },
      ),
    ).toMatchInlineSnapshot(`
      "marginal, workstation Sound, Noor, stand
      Noor standing sees the left of the stage only from 676 mm above its floor: people on seats in front hide the rest. Raise the booth on a platform by 183 mm, with the guards and steps that local codes ask for.
      : 676.49 against 0 mm, margin -676.49, shares 0 and 1
      at workstations.Sound, by NUREG-0700 Rev. 3, 11.2.1.1-1
      see room.seating: people on seats in front decides; operators.Noor: what is known of Noor
      weigh Raise the booth on a platform by 183 mm, with the guards and steps that local codes ask for
      granted only the nearest row of people counts: rows and pitch are not said
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
    `);
  });

  it('where something is missing', () => {
    expect(tell(1500, [], { stage: { origin: nowhere } })).toMatchInlineSnapshot(`
      "unknown, workstation Sound
      Cannot say what is seen of the stage from Sound. Add \`edge\` to stage, such as \`edge 16.8m\`.
      at workstations.Sound, by NUREG-0700 Rev. 3, 11.2.1.1-1
      ask edge of stage, as edge 16.8m, at room.stage"
    `);
    expect(tell(1500, [], { stage: { origin: nowhere, edge: given(10_000) } })).toMatchInlineSnapshot(`
      "unknown, workstation Sound
      Cannot say what is seen of the stage from Sound. Add \`height\` to stage, such as \`height 910mm\`.
      at workstations.Sound, by NUREG-0700 Rev. 3, 11.2.1.1-1
      ask height of stage, as height 910mm, at room.stage"
    `);
    expect(tell(1500, [], {}, { placements: [] })).toMatchInlineSnapshot(`
      "unknown, workstation Sound
      Cannot say what is seen of the stage from Sound. Add \`place\` to the file, for desk Left, such as \`place Left at 4.3m, 1830mm\`.
      at workstations.Sound, by NUREG-0700 Rev. 3, 11.2.1.1-1
      ask place of the file, for desk Left, as place Left at 4.3m, 1830mm, at desks.Left"
    `);
    expect(tell(1500, [], {}, { desks: [aDesk('Left', 1, { height: undefined })] })).toMatchInlineSnapshot(`
      "unknown, workstation Sound
      Cannot say what is seen of the stage from Sound. Add \`height\` to desk Left, such as \`height 1020mm\`.
      at workstations.Sound, by NUREG-0700 Rev. 3, 11.2.1.1-1
      ask height of desk Left, as height 1020mm, at desks.Left"
    `);
  });
});
