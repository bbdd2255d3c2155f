import { possessive } from '../../format.js';
import { atMost } from '../../stations/demand.js';
import { lacksSeatHeight, seatAboveFeet } from '../../stations/station.js';
import type { Check } from '../check.js';
import { say } from '../../words/say.js';

/** 20 in: about the 99th percentile of popliteal height; no leg hangs lower. */
const LONGEST_LEG = 20 * 25.4;

export const feetSupported: Check = {
  id: 'feet-supported',
  group: 'seat',
  title: 'Feet supported',
  question: 'Do the feet rest on the floor or the ring?',
  computes:
    'Seat height less the height of the foot support (floor, fixed ring, or a ring that hangs below the seat), less ' +
    'popliteal height with shoes.',
  limits: 'Preferred: at most 0. Outer: at most 25 mm; and never more than 508 mm (20 in) from seat to support.',
  sources: [
    {
      name: 'Panero & Zelnik 1979, Part A 4.3 and 5.2',
      says: 'Popliteal height sets the highest seat; a foot support 23 in below the seat cannot work, since the 99th percentile leg is about 20 in.',
      read: 'in the source',
    },
    {
      name: 'Pheasant, Bodyspace (City University of Hong Kong, Ch2-16)',
      says: 'Popliteal height is the reach that sets the greatest acceptable seat height.',
      read: 'in the source',
    },
  ],
  strength: 'strong',
  restsOn: ['shoe'],
  unit: 'mm',
  example: {
    fires: `desk Left { width 60in  depth 27in  height 42in }
stool Tall { seat 30in  foot-ring 7in }
operator Noor { stature 5'3" }
workstation Sound { desk Left  stool Tall  operators Noor }
`,
    passes: `desk Left { width 60in  depth 27in  height 42in }
stool Tall { seat 30in  foot-ring 15in below seat }
operator Noor { stature 5'3"  popliteal 15in }
workstation Sound { desk Left  stool Tall  operators Noor }
`,
  },
  rule: {
    posture: 'sit',
    order: 10,
    lacks: lacksSeatHeight,
    demands(station) {
      const drop = seatAboveFeet(station);
      const hang = {
        seat: drop.seat,
        desk: 0,
        body: { poplitealHeight: -1 },
        constant: drop.constant - station.shoe,
      } as const;
      const fall = { seat: drop.seat, desk: 0, body: {}, constant: drop.constant } as const;
      return [
        { form: hang, preferred: atMost(0), outer: atMost(25) },
        { form: fall, preferred: atMost(LONGEST_LEG), outer: atMost(LONGEST_LEG) },
      ];
    },
    says({ station, who, demand, value, side, length }) {
      const ring = station.seat?.footRing && station.seat.name;
      if (side === undefined)
        return ring === undefined
          ? say`${who} can rest both feet on the floor.`
          : say`${who} can rest both feet on the foot ring of ${ring}.`;
      if (demand === 1)
        return ring === undefined
          ? say`From the seat down to the floor is ${length(value)}. No leg is longer than about ${length(LONGEST_LEG)}, so feet hang.`
          : say`From the seat down to the foot ring of ${ring} is ${length(value)}. No leg is longer than about ${length(LONGEST_LEG)}, so feet hang.`;
      return ring === undefined
        ? say`${possessive(who)} feet hang ${length(value)} above the floor: the seat is that much too far above it.`
        : say`${possessive(who)} feet hang ${length(value)} above the foot ring of ${ring}: the seat is that much too far above it.`;
    },
    assumes: (station) => (station.seat?.footRing ? [] : [say`no foot ring: the feet rest on the floor`]),
  },
};
