import { describe, expect, it } from 'vitest';
import type { Booth, Placement } from '../../booth.js';
import { aBooth, aDesk, anOperator, aPlacement, aRoom, aSeat, aStation, given, nowhere } from '../../testing/booths.js';
import { aColumn, aRack } from '../../testing/floor.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';
import { told } from '../../testing/told.js';

/** A seated desk of 1500 × 700 in a room of 10 × 20 m, and what else stands there. */
function booth(placements: readonly Placement[], parts: Partial<Booth> = {}): Booth {
  const names = [...new Set(placements.flatMap(({ pieces }) => pieces.map(({ name }) => name)))];
  return aBooth({
    room: aRoom(10_000, 20_000),
    operators: [anOperator('Noor', { stature: 1630 })],
    desks: names.map((name) => aDesk(name, 740)),
    seats: [aSeat('Low', 450)],
    workstations: [aStation('Sound', 'Left', 'Low', ['Noor'])],
    placements,
    ...parts,
  });
}

const behind = (placements: readonly Placement[], parts?: Partial<Booth>) =>
  findingOf(booth(placements, parts), 'room-behind');

describe('room-behind: near edge to the first thing behind it, preferred 914, outer 762', () => {
  it.each([
    [outside('NUREG-0700 Rev. 2, 12.1.1.3-5', 'T15: 36 in to the wall is exactly enough'), 914, 'pass', 914.4],
    ['36 in', 36 * INCH, 'pass', 914.4],
    [outside('NUREG-0700 Rev. 2, 12.1.1.3-5', 'T15: 900 mm is not'), 900, 'marginal', 914.4],
    [outside('Panero & Zelnik 1979, 3.2', 'the chair’s clearance zone of 30 in'), 30 * INCH, 'marginal', 914.4],
    ['1 mm is allowed', 761.2, 'marginal', 914.4],
    ['750 mm fails', 750, 'fail', 762],
  ])('%s', (_, y, verdict, limit) => {
    const finding = behind([aPlacement(['Left'], 3000, y)]);
    expect(finding).toMatchObject({ verdict, measured: y });
    expect(finding.limit).toBeCloseTo(limit, 6);
    expect(finding.margin).toBeCloseTo(y - limit, 6);
  });

  // The desk's near left corner, and the way its operator faces.
  it.each([
    ['facing the stage: the back wall', 3000, 2000, 0, 2000, 'the back wall'],
    ['facing right: the left wall', 800, 5000, 90, 800, 'the left wall'],
    ['facing left: the right wall', 9100, 5000, -90, 900, 'the right wall'],
    ['facing the back wall: the stage wall', 5000, 19_000, 180, 1000, 'the stage wall'],
    // The near right corner stands 1500 · sin 45° nearer the back wall; from there straight back, at 45°, × √2.
    ['turned by 45°', 5000, 2000, 45, (2000 - 1500 * Math.SQRT1_2) * Math.SQRT2, 'the back wall'],
  ])('%s', (_, x, y, turn, distance, what) => {
    const finding = behind([aPlacement(['Left'], x, y, turn)]);
    expect(finding.measured).toBeCloseTo(distance, 6);
    expect(finding.message).toContain(what);
  });

  it('a piece anywhere behind the edge counts, one beside it does not', () => {
    const columns = (x: number) => ({
      room: aRoom(10_000, 20_000, { columns: [aColumn('North', x, 1000, 200, 200)] }),
    });
    const placed = [aPlacement(['Left'], 3000, 2000)];
    expect(behind(placed, columns(3100))).toMatchObject({ verdict: 'marginal', measured: 800 });
    expect(behind(placed, columns(4400)).message).toContain('to North');
    expect(behind(placed, columns(4600)).measured).toBe(2000);
    expect(behind(placed, columns(2800)).measured).toBe(2000);
  });

  it('a turned piece counts with the corner that comes nearest', () => {
    const placed = [aPlacement(['Left'], 3000, 3000), aPlacement(['Other'], 3500, 1000, -45)];
    // Turned to the left by 45°, its far right corner is 1500 along and 700 away, both at 45°: the one nearest to the desk.
    const nearest = 1000 + (1500 + 700) * Math.SQRT1_2;
    const within = 3500 + (1500 - 700) * Math.SQRT1_2;
    expect(within).toBeLessThan(4500);
    expect(behind(placed).measured).toBeCloseTo(3000 - nearest, 6);
  });

  it('an L: an arm that butts against the near edge leaves the room behind the rest of it', () => {
    const placed = [aPlacement(['Left'], 3000, 2000), aPlacement(['Arm'], 3800, 2000, 90)];
    expect(behind(placed)).toMatchObject({ measured: 2000, verdict: 'pass' });
    const ajar = [aPlacement(['Left'], 3000, 2000), aPlacement(['Arm'], 3800, 1990, 90)];
    expect(behind(ajar)).toMatchObject({ measured: 2000, verdict: 'pass' });
  });

  it('a piece that butts against nearly all of the near edge leaves none', () => {
    // Back to back: the other desk's near edge is this one's.
    const touching = [aPlacement(['Left'], 3000, 2000), aPlacement(['Other'], 4500, 2000, 180)];
    expect(behind(touching)).toMatchObject({ measured: 0, verdict: 'fail' });
    const shifted = [aPlacement(['Left'], 3000, 2000), aPlacement(['Other'], 5000, 1990, 180)];
    expect(behind(shifted)).toMatchObject({ measured: 10, verdict: 'fail' });
  });

  it('a U: each arm has the other behind it', () => {
    // Both face outward, 850 apart.
    const placed = [aPlacement(['Left'], 3000, 2000, -90), aPlacement(['Arm'], 3850, 3500, 90)];
    expect(behind(placed)).toMatchObject({ measured: 850, verdict: 'marginal' });
    expect(behind(placed).message).toContain('to Arm');
  });

  it('a rack under the desk is not behind it, a rack on the floor may be', () => {
    const placed = [aPlacement(['Left'], 3000, 2000)];
    const tucked = { desk: { name: 'Left', origin: nowhere }, at: given(0), setback: given(50) };
    expect(behind(placed, { racks: [aRack('Power', 12, { under: tucked })] }).measured).toBe(2000);
    const racks = [aRack('Loose', 12)];
    expect(behind([...placed, aPlacement(['Loose'], 3000, 700)], { racks, desks: [aDesk('Left', 740)] })).toMatchObject(
      {
        measured: 800,
      },
    );
  });

  it('says how far to move', () => {
    const finding = behind([aPlacement(['Left'], 3000, 28 * INCH)], { show: 'in' });
    expect(finding.message).toBe(
      'Behind Left there is 28 in to the back wall; sitting down and rising takes 36 in. Move the desk 8 in away from the back wall.',
    );
  });

  it('the file’s own limit counts, with its reason', () => {
    const overrides = [{ check: 'room-behind', value: 700, reason: 'stools without backs', origin: nowhere }];
    const finding = behind([aPlacement(['Left'], 3000, 720)], { overrides });
    expect(finding).toMatchObject({
      verdict: 'pass',
      limit: 700,
      source: 'the file’s own limit: stools without backs',
    });
    expect(behind([aPlacement(['Left'], 3000, 690)], { overrides }).verdict).toBe('fail');
  });

  it('asks nothing where people only stand', () => {
    const workstations = [aStation('Sound', 'Left', undefined, ['Noor'])];
    expect(findingsOf(booth([aPlacement(['Left'], 3000, 300)], { workstations }), 'room-behind')).toEqual([]);
  });

  it.each<[string, Partial<Booth>, string]>([
    ['a place', { placements: [], desks: [aDesk('Left', 740)] }, 'place'],
    ['a width', { desks: [aDesk('Left', 740, { width: undefined })] }, 'width'],
    ['a depth', { desks: [aDesk('Left', 740, { depth: undefined })] }, 'depth'],
  ])('without %s it asks for it', (_, parts, property) => {
    expect(behind([aPlacement(['Left'], 3000, 2000)], parts)).toMatchObject({
      verdict: 'unknown',
      missing: { property },
    });
  });
});

describe('room-behind: what a reader is told', () => {
  const tell = (...args: Parameters<typeof booth>) => told(booth(...args), 'room-behind');

  it('where there is room, little, and none', () => {
    expect(tell([aPlacement(['Left'], 3000, 1000)])).toMatchInlineSnapshot(`
      "pass, workstation Sound
      Behind Left there is 1000 mm to the back wall: room to sit down and rise.
      : 1000 against 914.4 mm, margin 85.6
      at workstations.Sound.desk, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see room: the back wall"
    `);
    expect(tell([aPlacement(['Left'], 3000, 850)])).toMatchInlineSnapshot(`
      "marginal, workstation Sound
      Behind Left there is 850 mm to the back wall; sitting down and rising takes 914 mm. Move the desk 64 mm away from the back wall.
      : 850 against 914.4 mm, margin -64.4
      at workstations.Sound.desk, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see room: the back wall"
    `);
    expect(tell([aPlacement(['Left'], 3000, 700)])).toMatchInlineSnapshot(`
      "fail, workstation Sound
      Behind Left there is 700 mm to the back wall; sitting down and rising takes 914 mm. Move the desk 214 mm away from the back wall.
      : 700 against 762 mm, margin -62
      at workstations.Sound.desk, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see room: the back wall"
    `);
  });

  it('where a piece stands behind', () => {
    expect(tell([aPlacement(['Left'], 3000, 3000), aPlacement(['Other'], 3000, 1500)])).toMatchInlineSnapshot(`
      "marginal, workstation Sound
      Behind Left there is 800 mm to Other; sitting down and rising takes 914 mm. Move the desk 114 mm away from Other.
      : 800 against 914.4 mm, margin -114.4
      at workstations.Sound.desk, by NUREG-0700 Rev. 2, 12.1.1.3-5
      see desks.Other: Other stands behind it"
    `);
  });

  it('where something is missing', () => {
    expect(tell([])).toMatchInlineSnapshot(`""`);
    expect(tell([], { desks: [aDesk('Left', 740)] })).toMatchInlineSnapshot(`
      "unknown, workstation Sound
      Cannot say how much room is behind Left. Add \`place\` to the file, for desk Left, such as \`place Left at 4.3m, 1830mm\`.
      at desks.Left, by NUREG-0700 Rev. 2, 12.1.1.3-5
      ask place of the file, for desk Left, as place Left at 4.3m, 1830mm, at desks.Left"
    `);
    expect(tell([], { desks: [aDesk('Left', 740, { width: undefined })] })).toMatchInlineSnapshot(`
      "unknown, workstation Sound
      Cannot say how much room is behind Left. Add \`width\` to desk Left, such as \`width 1520mm\`.
      at desks.Left, by NUREG-0700 Rev. 2, 12.1.1.3-5
      ask width of desk Left, as width 1520mm, at desks.Left"
    `);
    expect(tell([], { desks: [aDesk('Left', 740, { depth: undefined })] })).toMatchInlineSnapshot(`
      "unknown, workstation Sound
      Cannot say how much room is behind Left. Add \`depth\` to desk Left, such as \`depth 690mm\`.
      at desks.Left, by NUREG-0700 Rev. 2, 12.1.1.3-5
      ask depth of desk Left, as depth 690mm, at desks.Left"
    `);
  });
});
