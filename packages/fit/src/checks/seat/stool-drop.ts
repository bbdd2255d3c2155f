import { lacksDeskHeight, lacksSeatHeight } from '../../stations/station.js';
import type { Check } from '../check.js';
import { say } from '../../words/say.js';

const USUAL = { min: 190, max: 350 };
/** The least and the most that any source seen gives. */
const PUBLISHED = { min: 179, max: 381 };

export const stoolDrop: Check = {
  id: 'stool-drop',
  group: 'seat',
  title: 'Stool below the desk',
  question: 'Is the stool at a usual distance below the desk, whoever sits there?',
  computes: 'Desk height less seat height, for stools only.',
  limits:
    'Preferred: 190 to 350 mm. Outer: 179 to 381 mm, the least and the most that any source seen gives. Sources disagree.',
  sources: [
    {
      name: 'CCOHS, working in a sitting or standing position',
      says: 'Seat 25 to 35 cm below the work surface.',
      read: 'in the source',
    },
    {
      name: 'Panero & Zelnik 1979, 5.1 and 7.3',
      says: 'Bars 11 to 12 in above the seat; a 36 in drafting table with a stool of 21 to 27 1/2 in leaves up to 15 in.',
      read: 'in the source',
    },
    {
      name: 'ANSI/HFS 100-1988',
      says: 'Keyboard surface less seat: 179 to 190 mm, by stature.',
      read: 'in a secondary source',
    },
    { name: 'MIL-STD-1472F, table XXII', says: 'Writing surface 215 mm above the seat.', read: 'from memory' },
  ],
  strength: 'medium',
  unit: 'mm',
  example: {
    fires: `desk Left { width 60in  depth 27in  height 42in }
stool Tall { seat 24in  foot-ring 15in below seat }
operator Noor { stature 5'3" }
workstation Sound { desk Left  stool Tall  operators Noor }
`,
    passes: `desk Left { width 60in  depth 27in  height 42in }
stool Tall { seat 32in  foot-ring 15in below seat }
operator Noor { stature 5'3" }
workstation Sound { desk Left  stool Tall  operators Noor }
`,
  },
  rule: {
    posture: 'sit',
    order: 50,
    applies: (station) => station.seat?.kind === 'stool',
    lacks: (station) => lacksSeatHeight(station) ?? lacksDeskHeight(station),
    demands: () => [{ form: { seat: -1, desk: 1, body: {}, constant: 0 }, preferred: USUAL, outer: PUBLISHED }],
    says({ station, value, side, length }) {
      const seat = station.seat!.name;
      const desk = station.desk!.name;
      if (side === undefined)
        return say`From the seat of ${seat} up to the top of ${desk} is ${length(value)}: a usual distance.`;
      return side === 'below'
        ? say`From the seat of ${seat} up to the top of ${desk} is ${length(value)}; below ${length(USUAL.min)} thighs and arms lack room.`
        : say`From the seat of ${seat} up to the top of ${desk} is ${length(value)}; above ${length(USUAL.max)} people work with their shoulders up.`;
    },
  },
};
