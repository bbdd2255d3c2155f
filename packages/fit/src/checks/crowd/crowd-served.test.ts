import { describe, expect, it } from 'vitest';
import { normalCdf } from '../../bodies/normal.js';
import { aBooth, aCrowd, aDesk, anOperator, aSeat, aStation, given } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import { findingsOfEach } from '../../assess/assess.js';
import { told } from '../../testing/told.js';
import { crowdServed } from './crowd-served.js';

function standing(height: number | readonly [number, number], women: number, cover = 0.9) {
  const workstations = [aStation('Sound', 'Left', undefined, ['Volunteers'])];
  return aBooth({ crowds: [aCrowd('Volunteers', women, cover)], desks: [aDesk('Left', height)], workstations });
}

/** Standing elbow height: acromial height less acromion-radiale length. */
const survey = 'ANSUR II: Gordon et al. 2014, NATICK/TR-15/007';

describe('crowd-served', () => {
  // ANSUR II standing elbow height (acromial height − acromion-radiale length), from the published summary: the only body
  // dimension at a standing desk, so the share is a difference of two normal probabilities.
  it.each([
    [outside(survey, 'women’s elbows at 1023.9 mm, spread 45.29'), 1, 970, 1023.9, 45.29],
    ['a higher desk for women', 1, 1000, 1023.9, 45.29],
    [outside(survey, 'men’s elbows at 1105.49 mm, spread 50.1'), 0, 1060, 1105.49, 50.1],
    ['a higher desk for men', 0, 1100, 1105.49, 50.1],
  ] as const)('%s', (_, women, height, mean, sd) => {
    // Whole millimetres: an elbow of 1000 stands for 999.5 to 1000.5.
    const share = (low: number, high: number) =>
      normalCdf((height - 25 - low + 1.5 - mean) / sd) - normalCdf((height - 25 - high - 1.5 - mean) / sd);
    const finding = findingOf(standing(height, women), 'crowd-served');
    // The skewness of 0.14 moves a share by up to 1 percentage point.
    expect(Math.abs(finding.share! - share(-100, -50))).toBeLessThan(0.012);
    expect(Math.abs(finding.shareAtLimit! - share(-150, 0))).toBeLessThan(0.012);
  });

  it('the young are served lower, and the finding says what it takes for granted', () => {
    const workstations = [aStation('Sound', 'Left', undefined, ['Volunteers'])];
    const young = { ...aCrowd('Volunteers', 0), ages: given({ min: 13, max: 13 }) };
    const at = (height: number) => aBooth({ crowds: [young], desks: [aDesk('Left', height)], workstations });
    expect(findingOf(at(950), 'crowd-served').share).toBeGreaterThan(
      findingOf(standing(950, 0), 'crowd-served').share!,
    );
    expect(findingOf(at(950), 'crowd-served').assumptions).toEqual([
      'people below 18 are built like adults of their stature',
    ]);
    expect(findingOf(standing(950, 0), 'crowd-served').assumptions).toEqual([]);
  });

  it('a fixed desk fails, an adjustable one passes', () => {
    expect(findingOf(standing(1067, 0.55), 'crowd-served').verdict).not.toBe('pass');
    expect(findingOf(standing([860, 1220], 0.55), 'crowd-served').verdict).toBe('pass');
  });

  it('passes when the share reaches the cover, and not before', () => {
    const share = findingOf(standing([950, 1000], 1), 'crowd-served').share!;
    expect(findingOf(standing([950, 1000], 1, share - 0.001), 'crowd-served').verdict).toBe('pass');
    expect(findingOf(standing([950, 1000], 1, share + 0.001), 'crowd-served').verdict).toBe('marginal');
  });

  it('names the check that leaves out most', () => {
    const workstations = [aStation('Sound', 'Left', 'Tall', ['Volunteers'])];
    const booth = aBooth({
      crowds: [aCrowd('Volunteers', 0.5)],
      desks: [aDesk('Left', 1000)],
      seats: [aSeat('Tall', 760)],
      workstations,
    });
    expect(findingOf(booth, 'crowd-served').message).toContain('Feet supported');
  });

  it('says nothing of named operators', () => {
    const workstations = [aStation('Sound', 'Left', undefined, ['Noor', 'Volunteers'])];
    const booth = { ...standing(1000, 0.5), operators: [anOperator('Noor', { stature: 1630 })], workstations };
    expect(findingsOf(booth, 'crowd-served').map(({ operator }) => operator)).toEqual(['Volunteers']);
    expect(findingsOf({ ...booth, crowds: [] }, 'crowd-served')).toEqual([]);
  });

  it('says nothing where a height is not known, which the checks of that posture ask for', () => {
    const postures = given(['sit', 'stand'] as const);
    const booth = aBooth({
      crowds: [aCrowd('Volunteers', 0.5)],
      desks: [aDesk('Left', 1000), aDesk('Bare', 1, { height: undefined })],
      seats: [aSeat('Tall', 1, { seat: undefined })],
      workstations: [
        aStation('Sound', 'Left', 'Tall', ['Volunteers'], { postures }),
        aStation('Words', 'Bare', undefined, ['Volunteers']),
      ],
    });
    const found = findingsOf(booth, 'crowd-served');
    expect(found.map(({ subject, posture }) => [subject.name, posture])).toEqual([['Sound', 'stand']]);
  });

  it('says nothing where no check is asked that somebody could meet', () => {
    expect(findingsOfEach(standing(1000, 0.5), [crowdServed])).toEqual([]);
  });
});

describe('crowd-served: what a reader is told', () => {
  const tell = (...args: Parameters<typeof standing>) => told(standing(...args), 'crowd-served');

  it('where as many are served as are wanted', () => {
    expect(tell([850, 1150], 0.5)).toMatchInlineSnapshot(`
      "pass, workstation Sound, Volunteers, stand
      99% of Volunteers are served at Sound when standing: the 90% wanted are reached.
      : 0.99 against 0.9 ratio, margin 0.09, shares 0.99 and 1
      at workstations.Sound.people.Volunteers, by ANSUR II: Gordon et al. 2014, NATICK/TR-15/007
      see crowds.Volunteers: what is known of Volunteers
      default shoes of 25 mm; the task is controls; hands 0 mm above the desk; a top of 25 mm"
    `);
  });

  it('where too few are', () => {
    expect(tell(1000, 0.5)).toMatchInlineSnapshot(`
      "marginal, workstation Sound, Volunteers, stand
      31% of Volunteers are served at Sound when standing, where 90% are wanted; 76% are inside all outer limits. ‘Work height, standing’ leaves out most: start there.
      : 0.31 against 0.9 ratio, margin -0.59, shares 0.31 and 0.76
      at workstations.Sound.people.Volunteers, by ANSUR II: Gordon et al. 2014, NATICK/TR-15/007
      see crowds.Volunteers: what is known of Volunteers
      default shoes of 25 mm; the task is controls; hands 0 mm above the desk; a top of 25 mm"
    `);
  });

  it('where fewer than half are inside the outer limits: of those, and at whom it points among others', () => {
    const workstations = [aStation('Sound', 'Left', undefined, ['Noor', 'Volunteers'])];
    // Shod elbows at 1049 mm, spread 45: of a normal spread 26 in 100 are above a desk of 1080 (outer), 4 are 50 above it (preferred).
    const booth = { ...standing(1080, 1), operators: [anOperator('Noor', { stature: 1630 })], workstations };
    expect(told(booth, 'crowd-served')).toMatchInlineSnapshot(`
      "fail, workstation Sound, Volunteers, stand
      4% of Volunteers are served at Sound when standing, where 90% are wanted; 25% are inside all outer limits. ‘Work height, standing’ leaves out most: start there.
      : 0.25 against 0.5 ratio, margin -0.25, shares 0.04 and 0.25
      at workstations.Sound.people.Volunteers, by ANSUR II: Gordon et al. 2014, NATICK/TR-15/007
      see crowds.Volunteers: what is known of Volunteers
      default shoes of 25 mm; the task is controls; hands 0 mm above the desk; a top of 25 mm"
    `);
  });
});
