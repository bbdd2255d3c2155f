import { possessive, typeLength } from '../../format.js';
import { atLeast, demandOn, type Demand } from '../../stations/demand.js';
import { FOOT_DEPTH, KNEE_DEPTH, KNEE_WIDTH, kneeSpace, lacksKneeSpace, USUAL_LEG } from '../../stations/knee-space.js';
import {
  lacksDeskHeight,
  lacksDrop,
  lacksSeatHeight,
  seatAboveFeet,
  THIGH_DEPTH,
  thicknessBetween,
  type Station,
} from '../../stations/station.js';
import type { Reading } from '../body-rule.js';
import type { Check } from '../check.js';
import { withHangingThere } from '../hanging-there.js';
import { sizeUp } from '../sizes.js';
import { say } from '../../words/say.js';

const FOOT_HEIGHT = 100;
/** What is left above the knee for clothing and moving. */
const ABOVE_KNEE = 25;

export const kneeRoom: Check = {
  id: 'knee-room',
  group: 'seat',
  title: 'Knee and foot room',
  question: 'Is there room under the desk for the knees and the feet?',
  computes:
    'What legs, racks and a closed front leave free under the desk at the operator’s place: width, depth at the knee, depth at ' +
    'the foot, height at the foot. And the height from the foot support (floor, fixed ring, or a ring that hangs below the seat) ' +
    'to the underside of the desk, less sitting knee height with shoes; trays and drawers count where they hang over the knees. ' +
    'A desk without legs in the file is taken to stand on its ends, and a rack counts at any height.',
  limits:
    'At least 520 mm wide, 440 mm deep at the knee, 600 mm deep and 100 mm high at the foot. At least 25 mm ' +
    'above the knee.',
  sources: [
    {
      name: 'OSHA Computer Workstations, work space',
      says: 'Clear width 520 mm (20 in), depth at knee 440 (17 in), depth at foot 600 (24 in), height at foot 100 (4 in).',
      read: 'in the source',
    },
    { name: 'ANSI/HFES 100-2007', says: 'The same four figures.', read: 'from memory' },
    {
      name: 'IMO MSC/Circ.982, 5.3.1.5',
      says: 'Leg room 450 mm deep at the knee, 600 at the foot.',
      read: 'in the source',
    },
    { name: 'own allowance', says: '25 mm above the knee for clothing and moving.', read: 'own bound' },
  ],
  strength: 'strong',
  restsOn: ['shoe', 'top'],
  unit: 'mm',
  example: {
    fires: `desk Left { width 60in  depth 30in  height 29in }
chair Low { seat 15in..18in }
operator Noor { stature 5'3" }
rack Power { units 8  width 22in  depth 20in  under Left at 20in }
workstation Sound { desk Left  chair Low  operators Noor  at 30in }
`,
    passes: `desk Left { width 60in  depth 30in  height 29in }
chair Low { seat 15in..18in }
operator Noor { stature 5'3" }
rack Power { units 8  width 22in  depth 20in  under Left at 2in }
workstation Sound { desk Left  chair Low  operators Noor  at 40in }
`,
  },
  rule: {
    posture: 'sit',
    order: 40,
    lacks: (station) =>
      lacksSeatHeight(station) ??
      lacksDeskHeight(station) ??
      lacksKneeSpace(station) ??
      lacksDrop(station.desk!, 0, FOOT_DEPTH),
    demands(station) {
      const { width, knee, foot } = kneeSpace(station);
      return [
        demandOn(width.length, atLeast(KNEE_WIDTH)),
        demandOn(knee.length, atLeast(KNEE_DEPTH)),
        demandOn(foot.length, atLeast(FOOT_DEPTH)),
        {
          form: underside(station, THIGH_DEPTH, FOOT_DEPTH),
          preferred: atLeast(FOOT_HEIGHT),
          outer: atLeast(FOOT_HEIGHT),
        },
        aboveKnee(station),
      ];
    },
    says,
    assumes(station) {
      const { along } = kneeSpace(station);
      const { desk, booth, name, workstation } = station;
      const moved = !workstation.at && Math.abs(along - desk!.width!.value / 2) > 1;
      return [
        ...(desk!.legs ? [] : [say`${desk!.name} stands on its ends`]),
        ...(desk!.legs && !desk!.legs.thickness ? [say`each leg of ${desk!.name} is ${USUAL_LEG} mm thick`] : []),
        ...(moved ? [say`people at ${name} sit where knees have room: at ${typeLength(along, booth.show)}`] : []),
      ];
    },
  },
};

/** From the foot support up to the desk's underside between two depths: U − F. */
function underside(station: Station, from: number, to: number) {
  const drop = seatAboveFeet(station);
  const thickness = thicknessBetween(station.desk!, from, to);
  return {
    seat: drop.seat === 1 ? 0 : -1,
    desk: 1,
    body: {},
    constant: drop.constant - thickness,
  } as const;
}

function aboveKnee(station: Station): Demand {
  const form = underside(station, 0, THIGH_DEPTH);
  return {
    form: { ...form, body: { sittingKneeHeight: -1 }, constant: form.constant - station.shoe },
    preferred: atLeast(ABOVE_KNEE),
    outer: atLeast(ABOVE_KNEE),
  };
}

function says(reading: Reading): string {
  const { station, who, demand, value, side, length } = reading;
  const { name, closed } = station.desk!;
  const whose = possessive(who);
  if (side === undefined) {
    return demand === 4
      ? say`${length(value)} is left above ${whose} knees under ${name}.`
      : say`${whose} knees and feet have room under ${name}.`;
  }
  if (closed && demand < 3) {
    return say`The front of ${name} is closed, so ${whose} knees have no room under it: open the front, or stand there.`;
  }
  const { width, foot } = kneeSpace(station);
  const least = (figure: number) => length(sizeUp(figure, station.booth.show));
  switch (demand) {
    case 0:
      return say`${whose} knees have ${length(value)} from side to side under ${name}, where ${width.what} stands next to them: give them ${least(KNEE_WIDTH)}.`;
    case 3:
      return withHangingThere(
        say`${whose} feet have ${length(value)} of height under ${name}: give them ${least(FOOT_HEIGHT)}.`,
        reading,
        THIGH_DEPTH,
        FOOT_DEPTH,
      );
    case 4:
      return withHangingThere(
        value < 0
          ? say`${whose} knees are ${length(-value)} too high for the underside of ${name}.`
          : say`Only ${length(value)} is left above ${whose} knees under ${name}: too little for clothing and moving.`,
        reading,
        0,
        THIGH_DEPTH,
      );
    // Behind an open front the depth at the knee never decides: what ends it ends the feet’s too, and they lack 160 more.
    default:
      return say`${whose} feet have ${length(value)} under ${name} before ${foot.what}: give them ${least(FOOT_DEPTH)}.`;
  }
}
