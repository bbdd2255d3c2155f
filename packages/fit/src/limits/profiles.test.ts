import { describe, expect, it } from 'vitest';
import { INCH } from '../units.js';
import { profiles, type Figure } from './profiles.js';

/** Every figure of a profile, with the way to it. */
function figuresOf(part: object, path = ''): [string, Figure][] {
  if ('value' in part && 'source' in part) return [[path, part as Figure]];
  return Object.entries(part).flatMap(([key, value]) =>
    typeof value === 'object' && value !== null ? figuresOf(value as object, `${path}/${key}`) : [],
  );
}

describe('limit profiles', () => {
  it.each(Object.entries(profiles))('%s: every figure is positive and names a document', (_, profile) => {
    const figures = figuresOf(profile);
    expect(figures.length).toBeGreaterThan(20);
    for (const [path, { value, source }] of figures) {
      expect(value, path).toBeGreaterThan(0);
      expect(source, path).toMatch(/IBC|ADA|OSHA|Approved Document|HM Government/);
    }
  });

  it('generic is as us', () => {
    expect(profiles.generic).toBe(profiles.us);
  });

  it('uk says of every figure that is not its own that it is borrowed', () => {
    const us = new Map(figuresOf(profiles.us));
    for (const [path, figure] of figuresOf(profiles.uk)) {
      const own = /Approved Document|HM Government/.test(figure.source);
      if (own) expect(figure.note, path).toBeUndefined();
      else
        expect(figure, path).toEqual({
          ...us.get(path),
          note: 'no UK figure was read for this: the US figure stands in',
        });
    }
  });

  // As the documents print them, in inches.
  it.each<[string, Figure, number]>([
    ['IBC 1030.9.1', profiles.us.walkway.widths[2]!, 36],
    ['IBC 1030.9.1, seats on both sides', profiles.us.walkway.widths[1]!, 42],
    ['OSHA 1910.36(g)(2)', profiles.us.walkway.operatorsOnly, 28],
    ['IBC 1005.3.2', profiles.us.walkway.perPerson, 0.2],
    ['IBC 1005.3.2, exception', profiles.us.walkway.perPersonReduced!, 0.15],
    ['ADA 403.5.2, turn', profiles.us.turn.end, 48],
    ['ADA 403.5.2, exception', profiles.us.turn.wideEnd, 60],
    ['ADA 403.5.1, exception', profiles.us.pinch.width, 32],
    ['ADA 307.4', profiles.us.headroom, 80],
    ['ADA 307.2', profiles.us.projection.reach, 4],
    ['ADA 303.2', profiles.us.cable.bare, 0.25],
    ['IBC 1015.2', profiles.us.platform.guardAbove, 30],
    ['IBC 1015.3', profiles.us.platform.guard, 42],
    ['IBC 1011.5.2', profiles.us.platform.mostRiser, 7],
  ])('%s', (_, figure, inches) => {
    expect(figure.value).toBeCloseTo(inches * INCH, 9);
  });
});
