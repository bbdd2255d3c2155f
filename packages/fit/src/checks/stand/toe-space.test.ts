import { describe, expect, it } from 'vitest';
import type { Booth, Desk } from '../../booth.js';
import { assess } from '../../assess/assess.js';
import { aBooth, aCrowd, aDesk, anOperator, aSeat, aStation, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import { told } from '../../testing/told.js';

function counter(desk: Partial<Desk>, parts: Partial<Booth> = {}): Booth {
  return aBooth({
    operators: [anOperator('Noor', { stature: 1650, standingElbowHeight: 1040 })],
    desks: [aDesk('Left', 990, { closed: true, ...desk })],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'])],
    ...parts,
  });
}

function space(depth: number, height: number): Partial<Desk> {
  return { toeSpace: { origin: nowhere, depth: given(depth), height: given(height) } };
}

const judge = (...place: Parameters<typeof counter>) => findingOf(counter(...place), 'toe-space');

describe('toe-space: 100 deep × 100 high', () => {
  it.each([
    [outside('MIL-STD-1472F, 5.7.1.1, from memory', '100 mm deep, 100 high'), 100, 100, 'pass'],
    ['1 mm is allowed', 99, 99, 'pass'],
    ['too shallow', 98, 100, 'fail'],
    ['too low', 100, 98, 'fail'],
    [outside('Panero & Zelnik 1979, counter drawing', '4 in deep'), 102, 102, 'pass'],
    [outside('EN 527-1:2011, in a secondary source', '150 mm deep, 120 high'), 150, 120, 'pass'],
    ['none at all', 0, 0, 'fail'],
  ] as const)('%s: %d × %d', (_, depth, height, verdict) => {
    expect(judge(space(depth, height)).verdict).toBe(verdict);
  });

  it('says what is short, and what to make it', () => {
    expect(judge(space(60, 100))).toMatchObject({
      measured: 60,
      limit: 100,
      margin: -40,
      message: 'The toe space of Left is 60 mm deep, so people stand back and bend: make it 100 mm.',
    });
    expect(judge(space(100, 60)).message).toContain('60 mm high, so shoes do not fit in: make it 100 mm.');
  });

  it('names a size that passes in inches too', () => {
    expect(judge(space(60, 100), { show: 'in' }).message).toContain('make it 4 in.');
    expect(judge(space(4 * 25.4, 100)).verdict).toBe('pass');
  });

  it.each([
    ['toe-space', 'desk Left', {}],
    ['depth', 'the toe-space of desk Left', { toeSpace: { origin: nowhere, height: given(100) } }],
    ['height', 'the toe-space of desk Left', { toeSpace: { origin: nowhere, depth: given(100) } }],
  ])('asks for the %s of %s', (property, of, desk) => {
    expect(judge(desk)).toMatchObject({ verdict: 'unknown', missing: { property, of } });
  });

  it('asks nothing of an open desk, or of people who sit', () => {
    expect(findingsOf(counter({ ...space(0, 0), closed: false }), 'toe-space')).toEqual([]);
    const seated = { seats: [aSeat('Tall', 700)], workstations: [aStation('Sound', 'Left', 'Tall', ['Noor'])] };
    expect(findingsOf(counter(space(0, 0), seated), 'toe-space')).toEqual([]);
  });

  it('counts in the joint share, and leaves the work height to its own check', () => {
    const joint = (desk: Partial<Desk>) => assess(counter(desk)).workstations[0]!.served[0]!.share;
    expect(joint(space(100, 100))).toBeCloseTo(1);
    expect(joint(space(50, 100))).toBe(0);
    expect(joint({})).toBeCloseTo(1);
    expect(findingOf(counter(space(50, 100)), 'standing-work').verdict).toBe('pass');
  });

  it('tells a crowd what is short instead of counting it', () => {
    const crowd = {
      crowds: [aCrowd('Volunteers', 0.5)],
      workstations: [aStation('Sound', 'Left', undefined, ['Volunteers'])],
    };
    expect(judge(space(60, 100), crowd).message).toContain('The toe space of Left is 60 mm deep');
  });
});

describe('toe-space: what a reader is told', () => {
  const tell = (...args: Parameters<typeof counter>) => told(counter(...args), 'toe-space');

  it('where feet have room', () => {
    expect(tell(space(120, 120))).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, stand
      Feet have room at the closed front of Left.
      : 120 against 100 mm, margin 20, shares 1 and 1
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, counter drawing
      see desks.Left.height: the desk Left; operators.Noor: what is known of Noor"
    `);
  });

  it('where it is too shallow, and too low', () => {
    expect(tell(space(60, 120))).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, stand
      The toe space of Left is 60 mm deep, so people stand back and bend: make it 100 mm.
      : 60 against 100 mm, margin -40, shares 0 and 0
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, counter drawing
      see desks.Left.height: the desk Left; operators.Noor: what is known of Noor"
    `);
    expect(tell(space(120, 60))).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, stand
      The toe space of Left is 60 mm high, so shoes do not fit in: make it 100 mm.
      : 60 against 100 mm, margin -40, shares 0 and 0
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, counter drawing
      see desks.Left.height: the desk Left; operators.Noor: what is known of Noor"
    `);
  });

  it('where it is not said', () => {
    expect(tell({})).toMatchInlineSnapshot(`
      "unknown, workstation Sound, stand
      Cannot say anything of toe space at Sound. Add \`toe-space\` to desk Left, such as \`toe-space { depth 100mm  height 100mm }\`.
      at workstations.Sound, by Panero & Zelnik 1979, counter drawing
      ask toe-space of desk Left, as toe-space { depth 100mm  height 100mm }, at desks.Left"
    `);
    expect(tell({ toeSpace: { origin: nowhere } })).toMatchInlineSnapshot(`
      "unknown, workstation Sound, stand
      Cannot say anything of toe space at Sound. Add \`depth\` to the toe-space of desk Left, such as \`depth 100mm\`.
      at workstations.Sound, by Panero & Zelnik 1979, counter drawing
      ask depth of the toe-space of desk Left, as depth 100mm, at desks.Left.toeSpace"
    `);
    expect(tell({ toeSpace: { origin: nowhere, depth: given(100) } })).toMatchInlineSnapshot(`
      "unknown, workstation Sound, stand
      Cannot say anything of toe space at Sound. Add \`height\` to the toe-space of desk Left, such as \`height 100mm\`.
      at workstations.Sound, by Panero & Zelnik 1979, counter drawing
      ask height of the toe-space of desk Left, as height 100mm, at desks.Left.toeSpace"
    `);
  });
});
