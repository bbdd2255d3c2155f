import { describe, expect, it } from 'vitest';
import { normalCdf } from '../bodies/normal.js';
import { reference } from '../bodies/reference.js';
import type { Sex } from '../bodies/dimensions.js';
import { aBooth, aCrowd, aMeasuredOperator } from '../testing/booths.js';
import { wholeBody } from '../testing/findings.js';
import { makeScene } from './scene.js';
import { shareOfPairs } from './neighbours.js';

function personsOf(booth: Parameters<typeof aBooth>[0]) {
  const { persons } = makeScene(aBooth(booth), []);
  return (name: string) => persons.get(name)!;
}

const wide = (name: string, breadth: number) => aMeasuredOperator(name, wholeBody({ forearmForearmBreadth: breadth }));

describe('share of pairs by the sum of forearm breadths', () => {
  const person = personsOf({
    crowds: [aCrowd('Men', 0), aCrowd('Women', 1)],
    operators: [wide('Noor', 480), wide('Tobias', 620)],
  });

  it.each([
    [1099, 0],
    [1100, 1],
    [1101, 1],
  ])('two measured people of 480 and 620 need 1100: at %d the share is %d', (most, share) => {
    expect(shareOfPairs(person('Noor'), person('Tobias'), most)).toBe(share);
  });

  it.each([
    ['Men', 'male', 'Men', 'male', 1160],
    ['Men', 'male', 'Men', 'male', 1060],
    ['Women', 'female', 'Men', 'male', 1150],
    ['Women', 'female', 'Women', 'female', 900],
  ] as const)('%s beside %s: as two independent normal breadths, within 2 points', (a, sexA, b, sexB, most) => {
    const breadth = (sex: Sex) => reference[sex].dimensions.forearmForearmBreadth;
    const mean = breadth(sexA).mean + breadth(sexB).mean;
    const sd = Math.hypot(breadth(sexA).sd, breadth(sexB).sd);
    expect(Math.abs(shareOfPairs(person(a), person(b), most) - normalCdf((most - mean) / sd))).toBeLessThan(0.02);
  });

  it.each([
    // Panero & Zelnik 5.1, as men undisturbed on stools at these centres; 100 mm is left between the elbows.
    ['24 in: fewer than 5 in 100', 24, 0, 0.05],
    ['28 in: a compromise', 28, 0.5, 0.9],
    ['30 in: 95 in 100', 30, 0.95, 1],
  ])('T12, %s', (_, inches, least, most) => {
    const share = shareOfPairs(person('Men'), person('Men'), 2 * (inches * 25.4 - 100));
    expect(share).toBeGreaterThanOrEqual(least);
    expect(share).toBeLessThanOrEqual(most);
  });

  it('it does not matter who stands on which side', () => {
    const one = shareOfPairs(person('Men'), person('Women'), 1100);
    expect(shareOfPairs(person('Women'), person('Men'), 1100)).toBeCloseTo(one, 9);
  });
});
