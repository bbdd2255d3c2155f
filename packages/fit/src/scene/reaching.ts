import type { DimensionName } from '../bodies/dimensions.js';
import type { People } from '../bodies/people.js';
import type { Millimetres } from '../units.js';
import type { Eyes } from './viewing.js';

/** A person's shoulder above the floor and arm, in one posture: of the mean body, and of everybody the body may be. */
export interface Arms {
  readonly eyes: Eyes;
  readonly shoulder: Millimetres;
  /** Shoulder to grip. */
  readonly arm: Millimetres;
  /** Made when it is asked for. */
  readonly all: { readonly shoulder: Float64Array; readonly arm: Float64Array };
}

/** Hand length by stature: 0.108 (Drillis & Contini 1966). A grip is 20 % of a hand short of the thumb tip (CityU, Ch2-34). */
const GRIP_BEFORE_THUMB = 0.2 * 0.108;
/**
 * From the wall behind the back to the shoulder joint: forward grip reach less shoulder-grip length, 115 mm of men and 105 of
 * women at the median (Pheasant, Bodyspace, from memory).
 */
const WALL_TO_SHOULDER: Millimetres = 110;

type Named = Readonly<Partial<Record<DimensionName, number>>>;
type Has<K extends DimensionName> = Named & Readonly<Record<K, number>>;

/**
 * Shoulder to grip, from the survey's thumb-tip reach, which is measured from a wall behind the back. Derived: within
 * 10 mm of the shoulder-grip lengths of Pheasant (665 and 600 mm) and of 0.371 of stature.
 */
export function shoulderToGrip({ thumbTipReach, stature }: Has<'thumbTipReach' | 'stature'>): Millimetres {
  return thumbTipReach - GRIP_BEFORE_THUMB * stature - WALL_TO_SHOULDER;
}

/**
 * Seat to shoulder, sitting erect; the survey used here has it standing only. Derived: from the seat up, the trunk is
 * what it is standing, so the shoulder is as far below the crown. Within 10 mm of published tables at the median.
 */
export function sittingShoulder(body: Has<'standingShoulderHeight' | 'stature' | 'sittingHeight'>): Millimetres {
  return body.sittingHeight - (body.stature - body.standingShoulderHeight);
}

/** The arms that go with a pair of eyes: a slump and a seat lower the shoulder as they lower the eye. */
export function armsOf(eyes: Eyes): Arms {
  const { dimensions } = eyes.person;
  const fromEye =
    eyes.posture === 'sit'
      ? sittingShoulder(dimensions) - dimensions.sittingEyeHeight
      : dimensions.standingShoulderHeight - dimensions.standingEyeHeight;
  return {
    eyes,
    shoulder: eyes.eye + fromEye,
    arm: shoulderToGrip(dimensions),
    get all() {
      return everybody(eyes);
    },
  };
}

/** The same eyes of the same people have the same arms, from one assessment to the next. */
function everybody(eyes: Eyes): Arms['all'] {
  const { all: every } = eyes;
  const known = armsOfEyes.get(every);
  if (known) return known;
  const { people } = eyes.person;
  const fromEye = (eyes.posture === 'sit' ? fromEyeSitting : fromEyeStanding)(people);
  const all = { shoulder: every.eye.map((eye, index) => eye + fromEye[index]!), arm: everyArm(people) };
  armsOfEyes.set(every, all);
  return all;
}

const armsOfEyes = new WeakMap<Eyes['all'], Arms['all']>();

/** A length of everybody that follows from dimensions alone, and that no place changes: found once for the same people. */
function lengthOf<K extends DimensionName>(
  names: readonly K[],
  of: (body: Has<K>) => Millimetres,
): (people: People) => Float64Array {
  const known = new WeakMap<People, Float64Array>();
  return (people) => {
    const found = known.get(people);
    if (found) return found;
    const columns = names.map((name) => people.column(name));
    const body = {} as Record<K, number>;
    const lengths = Float64Array.from({ length: people.count }, (_, index) => {
      names.forEach((name, at) => (body[name] = columns[at]![index]!));
      return of(body);
    });
    known.set(people, lengths);
    return lengths;
  };
}

const fromEyeSitting = lengthOf(
  ['standingShoulderHeight', 'stature', 'sittingHeight', 'sittingEyeHeight'],
  (body) => sittingShoulder(body) - body.sittingEyeHeight,
);
const fromEyeStanding = lengthOf(
  ['standingShoulderHeight', 'standingEyeHeight'],
  (body) => body.standingShoulderHeight - body.standingEyeHeight,
);
const everyArm = lengthOf(['thumbTipReach', 'stature'], shoulderToGrip);

/** How far away on the level a hand grips something at a height; 0 if the arm is too short for the height alone. */
export function levelReach(shoulder: Millimetres, arm: Millimetres, height: Millimetres): Millimetres {
  const fall = shoulder - height;
  return Math.sqrt(Math.max(0, arm * arm - fall * fall));
}

/** How far each person that the body may be grips on the level, at a height above the desk as they set it. */
export function levelReaches({ eyes, all }: Arms, aboveDesk: Millimetres): Float64Array {
  const ofArms = reachesOfArms.get(all) ?? new Map<Millimetres, Float64Array>();
  reachesOfArms.set(all, ofArms);
  const known = ofArms.get(aboveDesk);
  if (known) return known;
  const { desk } = eyes.all;
  const reaches = all.shoulder.map((shoulder, index) =>
    levelReach(shoulder, all.arm[index]!, desk[index]! + aboveDesk),
  );
  if (ofArms.size >= REMEMBERED_HEIGHTS) ofArms.clear();
  ofArms.set(aboveDesk, reaches);
  return reaches;
}

const reachesOfArms = new WeakMap<Arms['all'], Map<Millimetres, Float64Array>>();
const REMEMBERED_HEIGHTS = 8;
