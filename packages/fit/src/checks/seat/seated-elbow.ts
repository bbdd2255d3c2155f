import { possessive } from '../../format.js';
import { lacksDeskHeight, lacksSeatHeight } from '../../stations/station.js';
import type { Check } from '../check.js';
import { say } from '../../words/say.js';

export const seatedElbow: Check = {
  id: 'seated-elbow',
  group: 'seat',
  title: 'Work at elbow height, seated',
  question: 'Is the work at elbow height when seated?',
  computes:
    'Desk height plus the height of the hands above it (`working`), less seat height plus sitting elbow height.',
  limits: 'Preferred: 50 mm below the elbow to 25 mm above it. Outer: 75 mm below to 50 mm above.',
  sources: [
    { name: 'DGUV Information 215-410', says: 'Work surface at elbow height, arms hanging.', read: 'in the source' },
    {
      name: 'University of Pittsburgh EHS, workstation guidance',
      says: 'Keyboard about 2 in below the elbow.',
      read: 'in the source',
    },
    { name: 'own bounds', says: 'No source gives a two-sided band: this one is composed.', read: 'own bound' },
  ],
  strength: 'weak',
  restsOn: ['working'],
  unit: 'mm',
  example: {
    fires: `desk Left { width 60in  depth 27in  height 42in }
stool Tall { seat 26in  foot-ring 15in below seat }
operator Noor { stature 5'3"  sitting-elbow 9in }
workstation Sound { desk Left  stool Tall  operators Noor }
`,
    passes: `desk Left { width 60in  depth 27in  height 36in }
stool Tall { seat 26in..29in  foot-ring 15in below seat }
operator Noor { stature 5'3"  sitting-elbow 9in }
workstation Sound { desk Left  stool Tall  operators Noor }
`,
  },
  rule: {
    posture: 'sit',
    order: 90,
    lacks: (station) => lacksSeatHeight(station) ?? lacksDeskHeight(station),
    demands: (station) => [
      {
        form: { seat: -1, desk: 1, body: { sittingElbowHeight: -1 }, constant: station.working },
        preferred: { min: -50, max: 25 },
        outer: { min: -75, max: 50 },
      },
    ],
    says({ who, value, side, length }) {
      if (side === undefined) return say`The work is at ${possessive(who)} elbow height when seated.`;
      return side === 'above'
        ? say`The work is ${length(value)} above ${possessive(who)} seated elbow, so the shoulders lift.`
        : say`The work is ${length(-value)} below ${possessive(who)} seated elbow, so the back bends.`;
    },
  },
};
