import { possessive } from '../../format.js';
import { atMost } from '../../stations/demand.js';
import { lacksSeatHeight, seatAboveFeet } from '../../stations/station.js';
import type { Check } from '../check.js';
import { say } from '../../words/say.js';

export const seatNotLow: Check = {
  id: 'seat-not-low',
  group: 'seat',
  title: 'Seat not too low',
  question: 'Are the knees not pushed up?',
  computes: 'Popliteal height with shoes, less the height of the seat above the foot support.',
  limits: 'Preferred: at most 50 mm. Outer: at most 100 mm.',
  sources: [
    {
      name: 'own bound on the popliteal rule of Panero & Zelnik 1979, 4.3',
      says: 'A low seat suits a tall person better than a high seat suits a short one; no source seen says how low is too low.',
      read: 'own bound',
    },
  ],
  strength: 'weak',
  restsOn: ['shoe'],
  unit: 'mm',
  example: {
    fires: `desk Left { width 60in  depth 27in  height 29in }
chair Low { seat 13in }
operator Tobias { stature 6'1" }
workstation Sound { desk Left  chair Low  operators Tobias }
`,
    passes: `desk Left { width 60in  depth 27in  height 29in }
chair Low { seat 16in..20in }
operator Tobias { stature 6'1" }
workstation Sound { desk Left  chair Low  operators Tobias }
`,
  },
  rule: {
    posture: 'sit',
    order: 20,
    lacks: lacksSeatHeight,
    demands(station) {
      const drop = seatAboveFeet(station);
      const seat = drop.seat === 1 ? -1 : 0;
      return [
        {
          form: { seat, desk: 0, body: { poplitealHeight: 1 }, constant: station.shoe - drop.constant },
          preferred: atMost(50),
          outer: atMost(100),
        },
      ];
    },
    says: ({ who, value, side, length }) =>
      side === undefined
        ? say`${possessive(who)} knees are not pushed up by the seat.`
        : say`The seat is ${length(value)} lower above the feet than ${possessive(who)} lower leg is long, so the knees are pushed up.`,
  },
};
