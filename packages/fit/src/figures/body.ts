import type { Posture } from '../booth.js';
import { sittingShoulder } from '../scene/reaching.js';
import { seatAboveFeet, type Station } from '../stations/station.js';
import type { Dimensions } from '../stations/demand.js';
import type { Millimetres } from '../units.js';
import type { BodySketch, SidePoint } from './figures.js';

/** Heights at which one body uses a place. */
export interface Setting {
  readonly seat: Millimetres;
  readonly desk: Millimetres;
}

/** Proportions of the drawing: where joints lie inside their limbs. None of them enters a check. */
const BELLY_TO_EDGE = 30;
const UPRIGHT = 30;
const NECK_BEHIND_SHOULDER = 45;
const NECK_ABOVE_SHOULDER = 45;
const CROWN_BEHIND_EYE = 80;
const ANKLE_ABOVE_SOLE = 75;
const HEEL_BEHIND_ANKLE = 50;
const KNEE_BELOW_KNEECAP = 60;

/** The average body as it sits or stands at the near edge, eye and shoulders where the workstation puts them. */
export function bodySketch(station: Station, posture: Posture, body: Dimensions, setting: Setting): BodySketch {
  const lean = station.workstation.lean.value;
  const sits = posture === 'sit';
  const lower = sits ? seatedLegs(station, body, setting.seat, lean) : standingLegs(station, body, lean);
  const base = sits ? setting.seat - station.slump : body.stature - body.sittingHeight + station.shoe;
  const shoulder = { x: lean, z: base + sittingShoulder(body) };
  const elbow = elbowOf(station, body, setting.seat, shoulder, sits);
  return {
    crown: { x: lean - CROWN_BEHIND_EYE, z: base + body.sittingHeight },
    eye: { x: lean, z: sits ? base + body.sittingEyeHeight : body.standingEyeHeight + station.shoe },
    neck: { x: lean - NECK_BEHIND_SHOULDER, z: shoulder.z + NECK_ABOVE_SHOULDER },
    shoulder,
    elbow,
    hand: handFrom(elbow, setting.desk + station.working, body.forearmHandLength),
    ...lower,
    trunk: body.abdominalDepthSitting,
    thigh: body.thighClearance,
  };
}

type Lower = Pick<BodySketch, 'hip' | 'knee' | 'ankle' | 'heel' | 'toe' | 'feetHang'>;

/** The belly stays clear of the edge; who leans back takes the hips along. */
function hipAt({ abdominalDepthSitting: depth }: Dimensions, lean: Millimetres): Millimetres {
  return Math.min(-BELLY_TO_EDGE - depth / 2, lean - UPRIGHT);
}

/** Thighs lie on the seat unless the feet are pushed up; feet rest if the leg is long enough. */
function seatedLegs(station: Station, body: Dimensions, seat: Millimetres, lean: Millimetres): Lower {
  const support = supportUnder(station, seat);
  const lowerLeg = body.poplitealHeight + station.shoe;
  const hollow = Math.max(seat, support + lowerLeg);
  const sole = hollow - lowerLeg;
  const kneecap = sole + body.sittingKneeHeight + station.shoe;
  const hip = { x: hipAt(body, lean), z: seat + body.thighClearance / 2 };
  const kneeZ = (hollow + kneecap) / 2;
  const thigh = body.buttockKneeLength - body.abdominalDepthSitting / 2 - (kneecap - hollow) / 2;
  const knee = { x: hip.x + legOf(thigh, kneeZ - hip.z), z: kneeZ };
  return { hip, knee, ...footBelow(station, body, knee.x, sole), feetHang: sole - support };
}

function standingLegs(station: Station, body: Dimensions, lean: Millimetres): Lower {
  const hip = {
    x: hipAt(body, lean),
    z: body.stature - body.sittingHeight + station.shoe + body.thighClearance / 2,
  };
  const knee = { x: hip.x + UPRIGHT / 2, z: body.sittingKneeHeight + station.shoe - KNEE_BELOW_KNEECAP };
  return { hip, knee, ...footBelow(station, body, hip.x, 0), feetHang: 0 };
}

function footBelow(station: Station, body: Dimensions, x: Millimetres, sole: Millimetres) {
  const heel = { x: x - HEEL_BEHIND_ANKLE, z: sole };
  return {
    ankle: { x, z: sole + station.shoe + ANKLE_ABOVE_SOLE },
    heel,
    toe: { x: heel.x + body.footLength, z: sole },
  };
}

/** Height of what should carry the feet of who sits at this height. */
export function supportUnder(station: Station, seat: Millimetres): Millimetres {
  const drop = seatAboveFeet(station);
  return seat - (drop.seat * seat + drop.constant);
}

/** Slumped shoulders push the elbow forward, for the upper arm keeps its length. */
function elbowOf(station: Station, body: Dimensions, seat: Millimetres, shoulder: SidePoint, sits: boolean): SidePoint {
  if (!sits) return { x: shoulder.x, z: body.standingElbowHeight + station.shoe };
  const z = seat + body.sittingElbowHeight;
  return { x: shoulder.x + legOf(shoulder.z + station.slump - z, shoulder.z - z), z };
}

/** Fingertips on the work, as far away as the forearm lets them. */
function handFrom(elbow: SidePoint, work: Millimetres, length: Millimetres): SidePoint {
  const z = Math.max(elbow.z - length, Math.min(elbow.z + length, work));
  return { x: elbow.x + legOf(length, z - elbow.z), z };
}

/** The other leg of a right triangle; 0 if there is none. */
function legOf(hypotenuse: number, leg: number): number {
  return Math.sqrt(Math.max(0, hypotenuse ** 2 - leg ** 2));
}
