import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxesMeet, isInside, lengthInside } from './geometry.js';
import { labelSize, Labels, spotsAround, spread } from './labels.js';
import { shortened, textWidth, wrapped } from './text-width.js';

const paper = { x: 0, y: 0, width: 400, height: 300 };

describe('labels', () => {
  const wanted = fc.array(
    fc.record({
      x: fc.integer({ min: 0, max: 400 }),
      y: fc.integer({ min: 0, max: 300 }),
      lines: fc.array(fc.string({ minLength: 1, maxLength: 14 }), { minLength: 1, maxLength: 3 }),
    }),
    { maxLength: 25 },
  );

  it('never cover one another, and stay on the paper', () => {
    fc.assert(
      fc.property(wanted, (all) => {
        const labels = new Labels(paper);
        const boxes = all.flatMap(({ x, y, lines }) => labels.place({ lines }, spotsAround({ x, y }, 5))?.box ?? []);
        boxes.forEach((box, index) => {
          expect(isInside(box, paper)).toBe(true);
          for (const other of boxes.slice(index + 1)) expect(boxesMeet(box, other)).toBe(false);
        });
      }),
    );
  });

  it('take the nearest spot, and keep off lines where they can', () => {
    const free = new Labels(paper).place({ lines: ['desk'] }, spotsAround({ x: 100, y: 100 }, 5))!;
    expect(free.box.x).toBe(105);
    const labels = new Labels(paper);
    labels.avoid([
      { x: 103, y: 100 },
      { x: 300, y: 100 },
    ]);
    const moved = labels.place({ lines: ['desk'] }, spotsAround({ x: 100, y: 100 }, 5))!;
    expect(moved.box.x + moved.box.width).toBe(95);
  });

  it('are left out where there is no place, or none cheap enough', () => {
    const labels = new Labels(paper);
    labels.keepFree({ x: 0, y: 0, width: 400, height: 150 });
    expect(
      labels.place({ lines: ['desk'] }, [{ x: 50, y: 50, anchor: 'start', hang: 'middle', cost: 0 }]),
    ).toBeUndefined();
    const far = { x: 50, y: 250, anchor: 'start', hang: 'middle', cost: 9 } as const;
    expect(labels.place({ lines: ['desk'] }, [far], 8)).toBeUndefined();
    expect(labels.place({ lines: ['desk'] }, [far], 9)!.box.x).toBe(50);
  });

  it('have room for their mark', () => {
    const plain = labelSize({ lines: ['desk', 'a much longer line'] });
    expect(labelSize({ lines: ['desk', 'a much longer line'], mark: 'fail' })).toEqual(plain);
    expect(labelSize({ lines: ['desk'], mark: 'fail' }).width).toBe(labelSize({ lines: ['desk'] }).width + 15);
  });
});

describe('spreading along a line', () => {
  const boxes = fc.array(
    fc.record({ middle: fc.double({ min: 0, max: 300, noNaN: true }), height: fc.integer({ min: 5, max: 30 }) }),
    { maxLength: 12 },
  );

  it('keeps the order, covers nothing, and stays inside where all fit', () => {
    fc.assert(
      fc.property(boxes, (wanted) => {
        const tops = spread(wanted, 0, 400);
        const order = wanted.map((_, index) => index).sort((a, b) => wanted[a]!.middle - wanted[b]!.middle);
        order.forEach((index, place) => {
          expect(tops[index]!).toBeGreaterThanOrEqual(-1e-9);
          expect(tops[index]! + wanted[index]!.height).toBeLessThanOrEqual(400 + 1e-9);
          const next = order[place + 1];
          if (next !== undefined)
            expect(tops[next]! - tops[index]!).toBeGreaterThanOrEqual(wanted[index]!.height - 1e-9);
        });
      }),
    );
  });

  it('moves nothing that is free', () => {
    expect(
      spread(
        [
          { middle: 200, height: 20 },
          { middle: 50, height: 20 },
        ],
        0,
        300,
      ),
    ).toEqual([190, 40]);
  });
});

describe('texts', () => {
  it('are wrapped to lines that fit, without a word lost', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-z]{1,10}$/), { minLength: 1 }), (words) => {
        const lines = wrapped(words.join(' '), 90);
        for (const line of lines) expect(textWidth(line)).toBeLessThanOrEqual(90);
        expect(lines.join(' ')).toBe(words.join(' '));
      }),
    );
  });

  it('are cut where they are too long', () => {
    expect(shortened('Cues', 100)).toBe('Cues');
    const cut = shortened('A very long name for one small desk', 100);
    expect(cut).toMatch(/^A very .*…$/);
    expect(textWidth(cut)).toBeLessThanOrEqual(100);
  });
});

describe('a line through a box', () => {
  const box = { x: 10, y: 10, width: 30, height: 40 };
  it.each([
    ['across', [0, 20, 100, 20], 30],
    ['from inside', [20, 20, 20, 100], 30],
    ['beside', [0, 5, 100, 5], 0],
    ['short of it', [0, 20, 9, 20], 0],
    ['slanting: 3-4-5', [10, 10, 40, 50], 50],
  ] as const)('%s', (_, [x1, y1, x2, y2], length) => {
    expect(lengthInside({ x: x1, y: y1 }, { x: x2, y: y2 }, box)).toBeCloseTo(length, 9);
  });
});
