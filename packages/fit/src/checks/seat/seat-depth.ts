import type { Missing } from '../../assessment.js';
import type { Seat } from '../../booth.js';
import { possessive } from '../../format.js';
import { atMost } from '../../stations/demand.js';
import { lacksSeat, missing } from '../../stations/station.js';
import type { Check } from '../check.js';
import { sizeDown } from '../sizes.js';
import { say } from '../../words/say.js';

/** What is left between the front edge of the seat and the lower leg. */
const GAP = 30;

export const seatDepth: Check = {
  id: 'seat-depth',
  group: 'seat',
  title: 'Seat depth',
  question: 'Is the seat short enough for the thigh?',
  computes: 'Depth of the seat less buttock-popliteal length: what is left before the back of the lower leg.',
  limits: 'At least 30 mm left before the lower leg.',
  sources: [
    {
      name: 'Panero & Zelnik 1979, Part A 4.4',
      says: 'The shortest thighs set the seat depth: 16 in at most for 99 in 100 women; 17 in serves about 95 in 100.',
      read: 'in the source',
    },
    {
      name: 'own allowance',
      says: '30 mm between the seat’s edge and the leg, so that the edge does not press.',
      read: 'own bound',
    },
  ],
  strength: 'medium',
  unit: 'mm',
  example: {
    fires: `desk Left { width 60in  depth 27in  height 42in }
stool Tall { seat 30in  seat-depth 20in  foot-ring 15in below seat }
operator Noor { stature 5'3" }
workstation Sound { desk Left  stool Tall  operators Noor }
`,
    passes: `desk Left { width 60in  depth 27in  height 42in }
stool Tall { seat 30in  seat-depth 15in  foot-ring 15in below seat }
operator Noor { stature 5'3" }
workstation Sound { desk Left  stool Tall  operators Noor }
`,
  },
  rule: {
    posture: 'sit',
    order: 4,
    lacks: (station) => lacksSeat(station) ?? lacksSize(station.seat!),
    demands: (station) => [
      {
        form: { seat: 0, desk: 0, body: { buttockPoplitealLength: -1 }, constant: station.seat!.depth!.value },
        preferred: atMost(-GAP),
        outer: atMost(-GAP),
        settled: true,
      },
    ],
    says({ station, who, value, side, length }) {
      const { name, depth } = station.seat!;
      if (side === undefined)
        return say`The seat of ${name} leaves ${length(-value)} before ${possessive(who)} lower legs.`;
      const deepest = sizeDown(depth!.value - value - GAP, station.booth.show);
      return value > 0
        ? say`The seat of ${name} is ${length(value)} deeper than ${possessive(who)} thighs are long, so the back gets no support; a seat at most ${length(deepest)} deep would do.`
        : say`The seat of ${name} leaves only ${length(-value)} before ${possessive(who)} lower legs, so its edge presses; a seat at most ${length(deepest)} deep would do.`;
    },
  },
};

function lacksSize(seat: Seat): Missing | undefined {
  return seat.depth ? undefined : missing('seat-depth', `${seat.kind} ${seat.name}`, 'seat-depth 16in', seat.origin);
}
