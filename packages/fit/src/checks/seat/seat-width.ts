import type { Missing } from '../../assessment.js';
import type { Seat } from '../../booth.js';
import { possessive } from '../../format.js';
import { atLeast, demandOn } from '../../stations/demand.js';
import { lacksSeat, missing } from '../../stations/station.js';
import type { Check } from '../check.js';
import { sizeUp } from '../sizes.js';
import { say } from '../../words/say.js';

const NARROWEST = 400;
const CLOTHING = 10;

export const seatWidth: Check = {
  id: 'seat-width',
  group: 'seat',
  title: 'Seat width',
  question: 'Is the seat wide enough for the hips?',
  computes: 'Width of the seat less sitting hip breadth; and the width itself, against a least width.',
  limits: 'At least 10 mm wider than the hips, and at least 400 mm for anyone.',
  sources: [
    {
      name: 'CCOHS, working in a sitting or standing position',
      says: 'A seat for sitting and standing by turns: at least 40 cm wide.',
      read: 'in the source',
    },
    {
      name: 'City University of Hong Kong, Online Anthropometry, Ch2-19',
      says: 'The seat not much narrower than the hips; clothing adds 10, 25 or 50 mm.',
      read: 'in the source',
    },
  ],
  strength: 'medium',
  unit: 'mm',
  example: {
    fires: `desk Left { width 60in  depth 27in  height 42in }
stool Tall { seat 30in  seat-width 14in  foot-ring 15in below seat }
operator Noor { stature 5'3" }
workstation Sound { desk Left  stool Tall  operators Noor }
`,
    passes: `desk Left { width 60in  depth 27in  height 42in }
stool Tall { seat 30in  seat-width 19in  foot-ring 15in below seat }
operator Noor { stature 5'3" }
workstation Sound { desk Left  stool Tall  operators Noor }
`,
  },
  rule: {
    posture: 'sit',
    order: 5,
    lacks: (station) => lacksSeat(station) ?? lacksSize(station.seat!),
    demands(station) {
      const width = station.seat!.width!.value;
      return [
        {
          form: { seat: 0, desk: 0, body: { hipBreadthSitting: -1 }, constant: width },
          preferred: atLeast(CLOTHING),
          outer: atLeast(CLOTHING),
          settled: true,
        },
        demandOn(width, atLeast(NARROWEST)),
      ];
    },
    says({ station, who, demand, value, side, length }) {
      const { name, width } = station.seat!;
      if (side === undefined) {
        return demand === 0
          ? say`The seat of ${name} is ${length(value)} wider than ${possessive(who)} hips.`
          : say`The seat of ${name} is ${length(value)} wide: enough for ${who}.`;
      }
      if (demand === 1) {
        return say`The seat of ${name} is ${length(value)} wide; ${length(NARROWEST)} is the least for anyone.`;
      }
      const narrowest = sizeUp(width!.value - value + CLOTHING, station.booth.show);
      return value < 0
        ? say`The seat of ${name} is ${length(-value)} narrower than ${possessive(who)} hips, so its edges press; a seat at least ${length(narrowest)} wide would do.`
        : say`The seat of ${name} is only ${length(value)} wider than ${possessive(who)} hips: too little for clothing; a seat at least ${length(narrowest)} wide would do.`;
    },
  },
};

function lacksSize(seat: Seat): Missing | undefined {
  return seat.width ? undefined : missing('seat-width', `${seat.kind} ${seat.name}`, 'seat-width 17in', seat.origin);
}
