import { INCH, type Advice, type Curve } from '@boothwright/fit';
import { at } from './given.js';

/** A curve that rises to a peak and falls again over four inches on each side. */
function peak(who: string, posture: Curve['posture'], best: number, most: number): Curve {
  const heights = Array.from({ length: 81 }, (_, index) => 550 + index * 10);
  const shareAt = (height: number) => Math.max(0, most * (1 - Math.abs(height - best) / (4 * INCH)));
  const points = heights.map((height) => ({
    height,
    share: shareAt(height),
    shareAtLimit: Math.min(1, shareAt(height) * 1.2),
  }));
  return { part: 'desk', of: 'Right', who, posture, points };
}

/** Hand-written advice on Larkfield Hall: a plan of every kind, a workstation without one. The figures are made up. */
export const larkfieldAdvice: Advice = {
  stations: [
    {
      workstation: 'Sound',
      origin: at(27, 12, 5),
      plans: [
        {
          title: 'Make the desk Right adjustable from 37 to 44 in: serves 1 of 3, most likely Noor too, not Volunteers',
          settings: [{ part: 'desk', of: 'Right', value: { min: 37 * INCH, max: 44 * INCH } }],
          changes: [{ origin: at(18, 38, 11), text: '37in..44in' }],
          serves: ['Tobias'],
          likely: ['Noor'],
          leftOut: [{ who: 'Volunteers', posture: 'sit', workstation: 'Sound', check: 'feet-supported', share: 0.53 }],
        },
        {
          title: 'Set the desk Right to 38 in: serves 1 of 3, not Noor',
          settings: [{ part: 'desk', of: 'Right', value: { min: 38 * INCH, max: 38 * INCH } }],
          changes: [{ origin: at(18, 38, 11), text: '38in' }],
          serves: ['Tobias'],
          likely: [],
          leftOut: [
            { who: 'Noor', posture: 'sit', workstation: 'Sound', check: 'feet-supported', by: 2 * INCH },
            { who: 'Noor', posture: 'sit', workstation: 'Sound', check: 'thigh-room', by: INCH },
          ],
        },
      ],
      notes: ['No one foot ring suits both Noor’s legs and Tobias’ legs.'],
      bands: [
        {
          part: 'desk',
          of: 'Right',
          each: [
            {
              who: 'Noor',
              posture: 'sit',
              workstation: 'Sound',
              basis: 'average',
              band: { min: 36 * INCH, max: 38 * INCH },
            },
            { who: 'Tobias', posture: 'sit', workstation: 'Sound', basis: 'measured', blockedBy: 'feet-supported' },
          ],
        },
        {
          part: 'ring',
          of: 'Tall',
          each: [
            {
              who: 'Volunteers',
              posture: 'sit',
              workstation: 'Sound',
              basis: 'share',
              band: { min: 15 * INCH, max: 16 * INCH },
            },
          ],
        },
      ],
      curves: [peak('Noor', 'sit', 37 * INCH, 0.95), peak('Tobias', 'stand', 44 * INCH, 0.8)],
    },
    {
      workstation: 'Words',
      origin: at(35, 12, 5),
      plans: [],
      notes: [],
      bands: [],
      curves: [peak('Priya', 'sit', 900, 0)],
    },
  ],
  measure: [
    {
      operator: 'Noor',
      dimension: 'poplitealHeight',
      settles: 2,
      how: 'Shoes off, sitting: from the floor to the underside of the thigh.',
    },
  ],
  shopping: [
    {
      item: 'stool Tall',
      wants: ['seat adjustable over at least 27 1/2 to 30 3/4 in', 'foot ring 15 to 16 in below the seat'],
      workstations: ['Sound', 'Words'],
    },
  ],
};
