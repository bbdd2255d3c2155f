import { possessive } from '../../format.js';
import { atLeast } from '../../stations/demand.js';
import {
  lacksDeskHeight,
  lacksDrop,
  lacksSeatHeight,
  leastThighGap,
  THIGH_DEPTH,
  thicknessBetween,
} from '../../stations/station.js';
import type { Reading } from '../body-rule.js';
import type { Check } from '../check.js';
import { withHangingThere } from '../hanging-there.js';
import { say } from '../../words/say.js';

export const thighRoom: Check = {
  id: 'thigh-room',
  group: 'seat',
  title: 'Thigh room',
  question: 'Do the thighs fit under the desk?',
  computes:
    'Desk height, less the top and whatever hangs below it over the 17 in (432 mm) that the thighs take, less seat height, ' +
    'less thigh clearance; and the same gap without the thigh, against a least height.',
  limits:
    'Preferred: at least 15 mm above the thigh. Outer: at least 0. And from seat to underside at least 178 mm (7 in) with a chair, 191 mm (7 1/2 in) with a stool.',
  sources: [
    {
      name: 'Panero & Zelnik 1979, Table 1, 3.2 and 7.3',
      says: 'The 95th percentile thigh sets the clearance: 7 in at a desk, 7 1/2 in at a drafting table or stool counter.',
      read: 'in the source',
    },
    {
      name: 'own allowance',
      says: '15 mm for clothing; Hong Kong figures give 35 mm for heavy outdoor clothing.',
      read: 'own bound',
    },
  ],
  strength: 'strong',
  restsOn: ['top'],
  unit: 'mm',
  example: {
    fires: `desk Left { width 60in  depth 27in  height 36in  tray { drop 4in } }
stool Tall { seat 28in  foot-ring 17in below seat }
operator Noor { stature 5'3" }
workstation Sound { desk Left  stool Tall  operators Noor }
`,
    passes: `desk Left { width 60in  depth 27in  height 38in }
stool Tall { seat 28in  foot-ring 17in below seat }
operator Noor { stature 5'3" }
workstation Sound { desk Left  stool Tall  operators Noor }
`,
  },
  rule: {
    posture: 'sit',
    order: 30,
    lacks: (station) =>
      lacksSeatHeight(station) ?? lacksDeskHeight(station) ?? lacksDrop(station.desk!, 0, THIGH_DEPTH),
    demands(station) {
      const thickness = thicknessBetween(station.desk!, 0, THIGH_DEPTH);
      const least = leastThighGap(station);
      const gap = { seat: -1, desk: 1, constant: -thickness } as const;
      return [
        { form: { ...gap, body: { thighClearance: -1 } }, preferred: atLeast(15), outer: atLeast(0) },
        { form: { ...gap, body: {} }, preferred: atLeast(least), outer: atLeast(least) },
      ];
    },
    says(reading) {
      return reading.side === undefined
        ? say`${possessive(reading.who)} thighs fit under the desk.`
        : withHangingThere(shortage(reading), reading, 0, THIGH_DEPTH);
    },
  },
};

function shortage({ station, who, demand, value, length }: Reading): string {
  if (demand === 1) {
    return say`From the seat to the underside of the desk is ${length(value)}; ${length(leastThighGap(station))} is the least for anyone.`;
  }
  return value < 0
    ? say`${possessive(who)} thighs are ${length(-value)} too thick for the gap between seat and desk.`
    : say`Only ${length(value)} is left above ${possessive(who)} thighs: too little for clothing and moving.`;
}
