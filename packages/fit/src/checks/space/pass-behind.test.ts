import { describe, expect, it } from 'vitest';
import type { Booth } from '../../booth.js';
import {
  aBooth,
  aCrowd,
  aDesk,
  anOperator,
  aPlacement,
  aRoom,
  aSeat,
  aStation,
  nowhere,
} from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import { told } from '../../testing/told.js';

const names = ['Left', 'Middle', 'Right'];

/** So many desks in a row, one seated station at each, so far from the back wall. */
function row(count: number, behind: number, parts: Partial<Booth> = {}): Booth {
  const desks = names.slice(0, count);
  return aBooth({
    room: aRoom(10_000, 20_000),
    operators: [anOperator('Noor', { stature: 1630 }), anOperator('Tobias', { stature: 1850 })],
    crowds: [aCrowd('Volunteers', 0.5)],
    desks: desks.map((name) => aDesk(name, 740)),
    seats: [aSeat('Low', 450)],
    workstations: desks.map((desk) => aStation(`${desk} station`, desk, 'Low', ['Noor'])),
    placements: [aPlacement(desks, 2000, behind)],
    ...parts,
  });
}

const judge = (...place: Parameters<typeof row>) => findingsOf(row(...place), 'pass-behind');

describe('pass-behind: near edge to what stands behind, preferred 1219, outer 965 in a row of three', () => {
  it.each([
    // Panero & Zelnik 3.4: 18 in for the seat and 30 in to walk.
    [outside('Panero & Zelnik 1979, 3.4', 'T13: 18 in for the seat and 30 in to pass are 48 in'), 457 + 762, 'pass'],
    ['48 in', 48 * 25.4, 'pass'],
    ['1 mm is allowed', 1218.2, 'pass'],
    ['2 mm are not', 1217, 'marginal'],
    [outside('NUREG-0700 Rev. 2, 12.1.1.3-5', '36 in is room to rise, not to pass'), 914.4, 'marginal'],
    ['no room at all is for room-behind to fail', 700, 'marginal'],
  ] as const)('two in a row, %s', (_, behind, verdict) => {
    expect(judge(2, behind).map((finding) => finding.verdict)).toEqual([verdict, verdict]);
  });

  it.each([
    ['48 in', 48 * 25.4, 'pass'],
    ['less', 1200, 'marginal'],
    ['18 + 20 in lets a person by sideways', 38 * 25.4, 'marginal'],
    ['1 mm is allowed', 964.3, 'marginal'],
    ['nobody gets by', 960, 'fail'],
  ] as const)('three in a row, %s', (_, behind, verdict) => {
    const findings = judge(3, behind);
    expect(findings.map((finding) => finding.verdict)).toEqual([verdict, verdict, verdict]);
    expect(findings[0]).toMatchObject({ measured: behind, subject: { kind: 'desk', name: 'Left' } });
  });

  it.each([
    // Bell System table: an alley of 914 with a passage of 508 or 686 behind the seats.
    [
      outside('Bell System cable-frame table', 'T14: 36 in and 20 in to pass sideways'),
      1422,
      'past a seat pushed back takes 1524 mm',
    ],
    [
      outside('Bell System cable-frame table', 'T14: 36 in and 27 in to walk past'),
      1600,
      'even past a seat pushed back',
    ],
    ['30 + 30 in', 1524, 'even past a seat pushed back'],
  ])('%s', (_, behind, words) => {
    const [finding] = judge(2, behind);
    expect(finding!.verdict).toBe('pass');
    expect(finding!.message).toContain(words);
  });

  it('says how far to move, and that passes', () => {
    const [finding] = judge(2, 1100);
    expect(finding!.message).toBe(
      'Behind Left there is 1100 mm to the back wall; to pass behind somebody who sits takes 1219 mm. Move the desk 120 mm away from the back wall.',
    );
    expect(judge(2, 1220)[0]!.verdict).toBe('pass');
    expect(judge(3, 900)[0]!.message).toContain('nobody gets by, even sideways');
  });

  it('one station with one person is not asked; one where people take turns is', () => {
    expect(judge(1, 1000)).toEqual([]);
    const shared = (people: readonly string[]) =>
      judge(1, 1000, { workstations: [aStation('Sound', 'Left', 'Low', people)] });
    expect(shared(['Noor', 'Tobias'])).toMatchObject([{ verdict: 'marginal' }]);
    expect(shared(['Volunteers'])).toMatchObject([{ verdict: 'marginal' }]);
  });

  it('two stations at one desk give one finding', () => {
    const workstations = ['Sound', 'Light'].map((name) => aStation(name, 'Left', 'Low', ['Noor']));
    expect(judge(1, 1000, { workstations })).toHaveLength(1);
  });

  it('nobody sits where people stand', () => {
    const workstations = names.map((desk) => aStation(`${desk} station`, desk, undefined, ['Noor']));
    expect(judge(3, 900, { workstations })).toEqual([]);
  });

  it('the file’s own limit holds, with its reason', () => {
    const overrides = [{ check: 'pass-behind', value: 1000, reason: 'nobody passes during a show', origin: nowhere }];
    const [finding] = judge(2, 1000, { overrides });
    expect(finding).toMatchObject({ verdict: 'pass', limit: 1000 });
    expect(finding!.source).toContain('nobody passes during a show');
  });

  it('asks for the place, and for sizes', () => {
    const workstations = [aStation('Sound', 'Left', 'Low', ['Noor', 'Tobias'])];
    expect(judge(1, 1000, { workstations, placements: [] })).toMatchObject([
      { verdict: 'unknown', missing: { property: 'place' } },
    ]);
    const { width: _, ...bare } = aDesk('Left', 740);
    expect(judge(1, 1000, { workstations, desks: [bare] })).toMatchObject([
      { verdict: 'unknown', missing: { property: 'width', of: 'desk Left' } },
    ]);
    const { depth: __, ...flat } = aDesk('Left', 740);
    expect(findingOf(row(1, 1000, { workstations, desks: [flat] }), 'pass-behind')).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'depth', of: 'desk Left' },
    });
  });
});

describe('pass-behind: what a reader is told', () => {
  const tell = (...args: Parameters<typeof row>) => told(row(...args), 'pass-behind');

  it('where a colleague passes, even past a seat pushed back', () => {
    expect(tell(2, 1600)).toMatchInlineSnapshot(`
      "pass, desk Left
      Behind Left there is 1600 mm to the back wall: a colleague passes behind somebody who sits, even past a seat pushed back.
      : 1600 against 1219.2 mm, margin 380.8
      at desks.Left, by Panero & Zelnik 1979, 3.4
      see room: the back wall

      pass, desk Middle
      Behind Middle there is 1600 mm to the back wall: a colleague passes behind somebody who sits, even past a seat pushed back.
      : 1600 against 1219.2 mm, margin 380.8
      at desks.Middle, by Panero & Zelnik 1979, 3.4
      see room: the back wall"
    `);
    expect(tell(2, 1300)).toMatchInlineSnapshot(`
      "pass, desk Left
      Behind Left there is 1300 mm to the back wall: a colleague passes behind somebody who sits; past a seat pushed back takes 1524 mm.
      : 1300 against 1219.2 mm, margin 80.8
      at desks.Left, by Panero & Zelnik 1979, 3.4
      see room: the back wall

      pass, desk Middle
      Behind Middle there is 1300 mm to the back wall: a colleague passes behind somebody who sits; past a seat pushed back takes 1524 mm.
      : 1300 against 1219.2 mm, margin 80.8
      at desks.Middle, by Panero & Zelnik 1979, 3.4
      see room: the back wall"
    `);
  });

  it('where nobody sits between, and where somebody does', () => {
    expect(tell(2, 1100)).toMatchInlineSnapshot(`
      "marginal, desk Left
      Behind Left there is 1100 mm to the back wall; to pass behind somebody who sits takes 1219 mm. Move the desk 120 mm away from the back wall.
      : 1100 against 1219.2 mm, margin -119.2
      at desks.Left, by Panero & Zelnik 1979, 3.4
      see room: the back wall

      marginal, desk Middle
      Behind Middle there is 1100 mm to the back wall; to pass behind somebody who sits takes 1219 mm. Move the desk 120 mm away from the back wall.
      : 1100 against 1219.2 mm, margin -119.2
      at desks.Middle, by Panero & Zelnik 1979, 3.4
      see room: the back wall"
    `);
    expect(tell(3, 1100)).toMatchInlineSnapshot(`
      "marginal, desk Left
      Behind Left there is 1100 mm to the back wall; to pass behind somebody who sits takes 1219 mm. Move the desk 120 mm away from the back wall.
      : 1100 against 1219.2 mm, margin -119.2
      at desks.Left, by Panero & Zelnik 1979, 3.4
      see room: the back wall

      marginal, desk Middle
      Behind Middle there is 1100 mm to the back wall; to pass behind somebody who sits takes 1219 mm. Move the desk 120 mm away from the back wall.
      : 1100 against 1219.2 mm, margin -119.2
      at desks.Middle, by Panero & Zelnik 1979, 3.4
      see room: the back wall

      marginal, desk Right
      Behind Right there is 1100 mm to the back wall; to pass behind somebody who sits takes 1219 mm. Move the desk 120 mm away from the back wall.
      : 1100 against 1219.2 mm, margin -119.2
      at desks.Right, by Panero & Zelnik 1979, 3.4
      see room: the back wall"
    `);
    expect(tell(3, 900)).toMatchInlineSnapshot(`
      "fail, desk Left
      Behind Left there is 900 mm to the back wall; nobody gets by, even sideways: to pass behind somebody who sits takes 1219 mm. Move the desk 320 mm away from the back wall.
      : 900 against 965.2 mm, margin -65.2
      at desks.Left, by Panero & Zelnik 1979, 3.4
      see room: the back wall

      fail, desk Middle
      Behind Middle there is 900 mm to the back wall; nobody gets by, even sideways: to pass behind somebody who sits takes 1219 mm. Move the desk 320 mm away from the back wall.
      : 900 against 965.2 mm, margin -65.2
      at desks.Middle, by Panero & Zelnik 1979, 3.4
      see room: the back wall

      fail, desk Right
      Behind Right there is 900 mm to the back wall; nobody gets by, even sideways: to pass behind somebody who sits takes 1219 mm. Move the desk 320 mm away from the back wall.
      : 900 against 965.2 mm, margin -65.2
      at desks.Right, by Panero & Zelnik 1979, 3.4
      see room: the back wall"
    `);
  });

  it('where something is missing', () => {
    expect(tell(2, 1300, { placements: [] })).toMatchInlineSnapshot(`""`);
    expect(
      tell(1, 1300, {
        desks: [aDesk('Left', 740, { width: undefined })],
        workstations: [aStation('Sound', 'Left', 'Low', ['Noor', 'Tobias'])],
      }),
    ).toMatchInlineSnapshot(`
      "unknown, desk Left
      Cannot say whether people can pass behind Left. Add \`width\` to desk Left, such as \`width 1520mm\`.
      at desks.Left, by Panero & Zelnik 1979, 3.4
      ask width of desk Left, as width 1520mm, at desks.Left"
    `);
  });
});
