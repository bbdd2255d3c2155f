import { describe, expect, it } from 'vitest';
import type { Booth, FloorArea } from '../../booth.js';
import { aBooth, aDesk, anOperator, aPlacement, aRoom, aSeat, aStation, given } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aColumn, aPlatform, aRack, aWheelchairSpace } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { INCH } from '../../units.js';

/** A desk of 1500 × 700 with its near left corner at (3000, 3000), and one wheelchair space. */
function booth(space: FloorArea, parts: Partial<Booth> = {}): Booth {
  return aBooth({
    room: aRoom(10_000, 20_000, { wheelchairSpaces: [space] }),
    operators: [anOperator('Noor', { stature: 1630 })],
    desks: [aDesk('Left', 1000)],
    seats: [aSeat('Tall', 750)],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'])],
    placements: [aPlacement(['Left'], 3000, 3000)],
    ...parts,
  });
}

const judge = (x: number, y: number, parts?: Partial<Booth>) =>
  findingOf(booth(aWheelchairSpace('RowA', x, y, 900, 1200), parts), 'wheelchair-space');

describe('wheelchair-space: none may be taken', () => {
  it.each([
    ['well away', 7000, 3000, 'pass', undefined],
    ['beside the desk', 4500, 3000, 'pass', undefined],
    ['1 mm is allowed', 4499, 3000, 'pass', undefined],
    ['100 under its right end', 4400, 3000, 'fail', 100],
    ['50 behind its far edge', 3300, 3650, 'fail', 50],
  ])('%s', (_, x, y, verdict, measured) => {
    const finding = judge(x, y);
    expect(finding.verdict).toBe(verdict);
    expect(finding.measured).toBe(measured);
  });

  it(outside('IBC/IFC 2018 1029.13.1', 'a seat at a table takes 19 in behind its edge'), () => {
    const seated = { workstations: [aStation('Sound', 'Left', 'Tall', ['Noor'])] };
    expect(judge(3300, 1500)).toMatchObject({ verdict: 'pass' });
    const finding = judge(3300, 1500, seated);
    expect(finding).toMatchObject({ verdict: 'fail' });
    expect(finding.measured).toBeCloseTo(1500 + 1200 - (3000 - 482.6), 6);
    expect(finding.message).toContain('the seat at Left takes');
  });

  it('platforms and racks take space too', () => {
    const platforms = [aPlatform('Riser', 200, { at: given({ x: 6000, y: 2000 }) })];
    expect(judge(7000, 3000, { platforms }).message).toContain('Riser takes');
    const racks = [aRack('Loose', 12)];
    const placements = [aPlacement(['Loose'], 7100, 3100)];
    expect(judge(7000, 3000, { racks, placements }).message).toContain('Loose takes');
  });

  it('a turned desk takes what its corner reaches', () => {
    // Turned to the left by 45° its far left corner is 700 · cos 45° to the left of (3000, 3000).
    const placements = [aPlacement(['Left'], 3000, 3000, -45)];
    const corner = 3000 - 700 * Math.SQRT1_2;
    expect(judge(corner - 900 + 30, 3000, { placements }).measured).toBeCloseTo(30, 6);
  });

  it('a space that the booth closes in has no way to it', () => {
    // In the back left corner: walls on two sides, the desk 500 to the right, a rack 500 in front.
    const racks = [aRack('Loose', 12)];
    const closed = [aPlacement(['Left'], 1400, 0), aPlacement(['Loose'], 200, 1700)];
    const finding = judge(0, 0, { racks, placements: closed });
    expect(finding.verdict).toBe('fail');
    expect(finding.measured).toBeUndefined();
    expect(finding.message).toContain('Loose');
    expect(finding.message).toContain('No side of the wheelchair space RowA');
    const open = [aPlacement(['Left'], 1400, 0), aPlacement(['Loose'], 200, 2200)];
    expect(judge(0, 0, { racks, placements: open }).verdict).toBe('pass');
  });

  it.each([
    [outside('2010 ADA Standards 403.5.1 and 802.1.4', 'a way of 36 in adjoins the space'), 36 * INCH, 'pass'],
    ['a way of 35 in', 35 * INCH, 'fail'],
  ])('%s', (_, way, verdict) => {
    const racks = [aRack('Loose', 12)];
    const placements = [aPlacement(['Left'], 1400, 0), aPlacement(['Loose'], 200, 1200 + way)];
    expect(judge(0, 0, { racks, placements }).verdict).toBe(verdict);
  });

  it('a space that only walls and columns close in is not the booth’s doing', () => {
    const room = aRoom(10_000, 20_000, {
      wheelchairSpaces: [aWheelchairSpace('RowA', 0, 0, 900, 1200)],
      columns: [aColumn('A', 1200, 0, 300, 300), aColumn('B', 0, 1500, 300, 300)],
    });
    expect(judge(0, 0, { room }).verdict).toBe('pass');
  });

  it('each space is judged; one without a place is asked for it', () => {
    const { at: _, ...nowhereYet } = aWheelchairSpace('RowB', 0, 0);
    const room = aRoom(10_000, 20_000, { wheelchairSpaces: [aWheelchairSpace('RowA', 3100, 3100), nowhereYet] });
    const found = findingsOf(booth(nowhereYet, { room }), 'wheelchair-space');
    expect(found.map(({ verdict }) => verdict)).toEqual(['fail', 'unknown']);
    expect(found[1]!.missing).toMatchObject({ property: 'at', of: 'wheelchair-space RowB' });
    expect(found[0]!.caution).toContain('made up for elsewhere');
  });
});
