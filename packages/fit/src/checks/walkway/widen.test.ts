import { describe, expect, it } from 'vitest';
import type { Booth } from '../../booth.js';
import { aPlacement, aRoom, given, nowhere } from '../../testing/booths.js';
import { findingOf } from '../../testing/findings.js';
import { aColumn, aWalkway } from '../../testing/floor.js';
import { bare, behind } from '../../testing/walkways.js';
import { INCH } from '../../units.js';

const width = (booth: Booth) => findingOf(booth, 'walkway-width');

describe('widen: what makes a walkway wide enough', () => {
  it('moves the whole booth off the wall, by what people can measure', () => {
    const finding = width(behind(50 * INCH));
    expect(finding.remedies).toEqual([
      {
        title: 'Move the booth 5 in away from the back wall',
        changes: [{ origin: nowhere, text: '118 1/8in, 55in' }],
        safe: false,
      },
    ]);
    expect(width(behind(55 * INCH)).remedies).toEqual([]);
  });

  it('moves every placement, and away from whichever wall it is', () => {
    const placements = [aPlacement(['Left'], 600, 4000), aPlacement(['Right'], 2100, 4000)];
    const booth = bare(placements, aWalkway('Side', ['left-wall', 'booth'], { serves: given(20) }));
    expect(width(booth).remedies).toMatchObject([
      {
        title: 'Move the booth 315 mm away from the left wall',
        changes: [{ text: '915mm, 4000mm' }, { text: '2415mm, 4000mm' }],
      },
    ]);
    const right = bare(
      [aPlacement(['Left'], 8000, 4000)],
      aWalkway('Side', ['booth', 'right-wall'], { serves: given(20) }),
    );
    expect(width(right).remedies[0]!.changes).toMatchObject([{ text: '7585mm, 4000mm' }]);
  });

  it('keeps the nearest row of seats farther off', () => {
    const seating = { origin: nowhere, first: given(30 * INCH), standing: false };
    const booth = behind(2000, aWalkway('Front', ['booth', 'seating'], { serves: given(20) }), {
      room: aRoom(10_000, 20_000, { seating }),
    });
    expect(width(booth).remedies).toMatchObject([{ changes: [{ text: '36in' }] }]);
  });

  it('offers no move that would not help: a column keeps its gap to the wall', () => {
    const room = aRoom(10_000, 20_000, { columns: [aColumn('C', 3500, 800, 300, 1000)] });
    const booth = bare([aPlacement(['Front'], 3000, 2000)], aWalkway('Behind', ['booth', 'back-wall']), { room });
    expect(width(booth)).toMatchObject({ verdict: 'fail', measured: 800 });
    // By 115 mm the gap between column and desk grows from 200 to 315: the wider one stays 800.
    expect(width(booth).remedies).toEqual([]);
  });

  it('offers none between two pieces', () => {
    const placements = [aPlacement(['A'], 3000, 3000), aPlacement(['B'], 5000, 3000)];
    const booth = bare(placements, aWalkway('Between', ['A', 'B']));
    expect(width(booth)).toMatchObject({ verdict: 'fail', remedies: [] });
  });

  it('offers none where a text does not say what to change', () => {
    const unsaid = { isDefault: false } as const;
    const seating = { origin: nowhere, first: { ...unsaid, value: 30 * INCH }, standing: false };
    const front = behind(2000, aWalkway('Front', ['booth', 'seating'], { serves: given(20) }), {
      room: aRoom(10_000, 20_000, { seating }),
    });
    expect(width(front)).toMatchObject({ verdict: 'fail', remedies: [] });
    const at = { ...unsaid, value: { x: 3000, y: 500 } };
    const placed = behind(500, {}, { placements: [{ ...aPlacement(['Left'], 0, 0), at }] });
    expect(width(placed)).toMatchObject({ verdict: 'fail', remedies: [] });
  });

  it('offers none where the booth touches the wall: which way is away is not said', () => {
    expect(width(behind(0))).toMatchObject({ verdict: 'fail', measured: 0, remedies: [] });
  });

  it('offers none between two walls', () => {
    const booth = behind(2000, aWalkway('Hall', ['left-wall', 'right-wall'], { serves: given(20) }), {
      room: aRoom(800, 20_000),
    });
    expect(width(booth)).toMatchObject({ verdict: 'fail', remedies: [] });
  });

  it.each([
    // A desk of 1500 × 700 in a room of 10 000 × 9000, 800 from one side: 914.4 are wanted, 115 in steps of 5.
    ['back-wall', [3000, 800], '3000mm, 915mm', 'Move the booth 115 mm away from the back wall'],
    ['stage-wall', [3000, 7500], '3000mm, 7385mm', 'Move the booth 115 mm away from the stage wall'],
    ['stage', [3000, 4500], '3000mm, 4385mm', 'Move the booth 115 mm away from the stage'],
    ['left-wall', [800, 3000], '915mm, 3000mm', 'Move the booth 115 mm away from the left wall'],
    ['right-wall', [7700, 3000], '7585mm, 3000mm', 'Move the booth 115 mm away from the right wall'],
  ] as const)('away from %s, whichever side of the walkway it is', (side, [x, y], text, title) => {
    const room = aRoom(10_000, 9000, { stage: { origin: nowhere, edge: given(6000) } });
    for (const between of [
      ['booth', side],
      [side, 'booth'],
    ] as const) {
      const booth = bare([aPlacement(['Left'], x, y)], aWalkway('Way', between), { room });
      expect(width(booth).remedies).toEqual([{ title, changes: [{ origin: nowhere, text }], safe: false }]);
    }
  });

  it('of the nearest row: what it says, and to what', () => {
    const seating = { origin: nowhere, first: given(800), standing: false };
    const booth = bare([aPlacement(['Left'], 3000, 2000)], aWalkway('Front', ['seating', 'booth']), {
      room: aRoom(10_000, 20_000, { seating }),
    });
    expect(width(booth).remedies).toEqual([
      {
        title: 'Keep the nearest row of seats 915 mm from the booth',
        changes: [{ origin: nowhere, text: '915mm' }],
        safe: false,
      },
    ]);
  });
});
