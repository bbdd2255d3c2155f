import type { Posture } from '../booth.js';
import { keep } from '../scene/kept.js';
import type { Scene } from '../scene/scene.js';
import { linesFor, linesOf } from '../scene/screen-lines.js';
import {
  distanceTo,
  elevation,
  eyesAt,
  isAdjustable,
  viewsAt,
  type Eyes,
  type Look,
  type View,
} from '../scene/viewing.js';
import type { Dimensions } from '../stations/demand.js';
import { kneeSpace, lacksKneeSpace } from '../stations/knee-space.js';
import { settingOf } from '../stations/rules.js';
import {
  heightsOf,
  leastThighGap,
  THIGH_DEPTH,
  thicknessBetween,
  type Person,
  type Station,
} from '../stations/station.js';
import { radians, TOLERANCE, type Millimetres } from '../units.js';
import { bodySketch, supportUnder, type Setting } from './body.js';
import type { BodySketch, DeskProfile, SeatProfile, SideScreen, SideSketch } from './figures.js';
import { spreadOf } from './spread.js';

/** How deep a seat is drawn where the file does not say it. */
const USUAL_SEAT_DEPTH: Millimetres = 400;
const SEAT_BEFORE_BACK: Millimetres = 20;
/** How thick a leg is drawn where the file does not say it. */
const USUAL_LEG: Millimetres = 50;

/** Everyone at a station, from the side, in each posture whose heights are known. */
export function sidesOf(scene: Scene, station: Station): readonly SideSketch[] {
  const sides = keep(station, 'sides', () => eyesAt(scene, station).map((eyes) => sideOf(scene, eyes)));
  return sides.map((side) => ({ ...side, skirts: skirtsAt(station, side.desk.height) }));
}

/** All but the cloth before the desk, which is not among what a station rests on. */
function sideOf(scene: Scene, eyes: Eyes): Omit<SideSketch, 'skirts'> {
  const { station, person, posture } = eyes;
  const setting = settingFor(scene, eyes);
  const body = bodySketch(station, posture, person.dimensions, setting);
  return {
    workstation: station.name,
    who: person.name,
    kind: person.kind,
    posture,
    task: station.workstation.task.value,
    body,
    eye: spreadOf(eyes.eye, person.people, eyes.all.eye),
    elbow: spreadOf(body.elbow.z, person.people, everyElbow(station, person, posture, eyes.all.eye)),
    workAboveElbow: setting.desk + station.working - body.elbow.z,
    desk: deskProfile(station, setting.desk),
    ...(posture === 'sit' && seatOf(station, person.dimensions, body, setting.seat)),
    screens: viewsAt(station).views.map((view) =>
      screenOf(station, view, { posture, desk: setting.desk, eye: body.eye.z }),
    ),
    controls: station.workstation.controls.flatMap(({ name, setback, depth, height }) =>
      setback ? [{ name, from: setback.value, to: setback.value + depth.value, height: height.value }] : [],
    ),
    ...(posture === 'sit' && thighRoomOf(station, setting, body)),
    ...(posture === 'sit' && kneeRoomOf(station)),
  };
}

/** The setting that the mean body takes at the preferred level: the one that its eye is computed from. */
function settingFor(scene: Scene, { station, posture, person }: Eyes): Setting {
  return settingOf(scene.rules(station, posture), heightsOf(station, posture)!, person.dimensions);
}

/** Elbows of everybody, each at their own seat height: the eye is known with it. */
function everyElbow(station: Station, { people }: Person, posture: Posture, eye: Float64Array): Float64Array {
  const elbow = people.column(posture === 'stand' ? 'standingElbowHeight' : 'sittingElbowHeight');
  const heights = new Float64Array(people.count);
  if (posture === 'stand') {
    for (let each = 0; each < heights.length; each++) heights[each] = elbow[each]! + station.shoe;
    return heights;
  }
  const eyeAboveSeat = people.column('sittingEyeHeight');
  for (let each = 0; each < heights.length; each++)
    heights[each] = eye[each]! + station.slump - eyeAboveSeat[each]! + elbow[each]!;
  return heights;
}

function deskProfile(station: Station, height: Millimetres): DeskProfile {
  const desk = station.desk!;
  const depth = desk.depth?.value;
  return {
    name: desk.name,
    height,
    range: desk.height!.value,
    top: desk.top.value,
    ...(depth !== undefined && { depth }),
    work: height + station.working,
    hanging: desk.hanging.flatMap(({ kind, drop, fromEdge, depth: own }) => {
      const to = own ? fromEdge.value + own.value : depth;
      return drop && to !== undefined ? [{ kind, from: fromEdge.value, to, drop: drop.value }] : [];
    }),
    ...(desk.legs && {
      legs: {
        from: desk.legs.inset.value,
        to: desk.legs.inset.value + (desk.legs.depth?.value ?? 0),
        thickness: desk.legs.thickness?.value ?? USUAL_LEG,
      },
    }),
    ...(desk.closed && {
      front: { toeDepth: desk.toeSpace?.depth?.value ?? 0, toeHeight: desk.toeSpace?.height?.value ?? 0 },
    }),
  };
}

function seatOf(station: Station, body: Dimensions, { hip }: BodySketch, height: Millimetres): { seat: SeatProfile } {
  const seat = station.seat!;
  const from = hip.x - body.abdominalDepthSitting / 2 + SEAT_BEFORE_BACK;
  return {
    seat: {
      name: seat.name,
      kind: seat.kind,
      height,
      range: seat.seat!.value,
      pan: { from, to: from + (seat.depth?.value ?? USUAL_SEAT_DEPTH), depthIsSaid: seat.depth !== undefined },
      ...(seat.base && { base: seat.base.value }),
      ...(seat.footRing && { ring: supportUnder(station, height) }),
    },
  };
}

function screenOf(station: Station, view: View, eyes: Look): SideScreen {
  const { top, centre, bottom } = linesFor(view, eyes);
  const { eye } = eyes;
  const x = station.workstation.lean.value + view.level;
  const back = (view.size.height / 2) * Math.sin(radians(view.tilt));
  return {
    name: view.name,
    main: view.use.main.value,
    bearing: view.bearing,
    top: { x: x + back, z: top },
    centre: { x, z: centre },
    bottom: { x: x - back, z: bottom },
    ...(isAdjustable(view) && {
      reach: {
        min: linesOf(view, eyes.desk, 'lowest').bottom,
        max: linesOf(view, eyes.desk, 'highest').top,
      },
    }),
    distance: distanceTo(view, centre, eye),
    gaze: elevation(view, centre, eye),
    gazeTop: elevation(view, top, eye),
  };
}

/** Drawn in the middle of what is lowest above the thighs. */
function thighRoomOf(station: Station, setting: Setting, { thigh }: BodySketch): Pick<SideSketch, 'thighRoom'> {
  const desk = station.desk!;
  const underside = setting.desk - thicknessBetween(desk, 0, THIGH_DEPTH);
  const lowest = desk.hanging.find(
    ({ drop, fromEdge }) =>
      drop && fromEdge.value < THIGH_DEPTH && Math.abs(setting.desk - desk.top.value - drop.value - underside) < 1e-9,
  );
  const near = lowest?.fromEdge.value ?? 0;
  const far = Math.min(THIGH_DEPTH, lowest?.depth ? near + lowest.depth.value : THIGH_DEPTH);
  const top = setting.seat + thigh;
  const room = underside - top;
  const least = leastGapOf(station, setting.seat, underside, room);
  return { thighRoom: { x: (near + far) / 2, thigh: top, underside, room, ...(least && { least }) } };
}

/** The least gap, if it is missed, and by more than the thigh misses its own. */
function leastGapOf(station: Station, seat: Millimetres, underside: Millimetres, room: Millimetres) {
  const gap = underside - seat;
  const wanted = leastThighGap(station);
  return gap < wanted - TOLERANCE && gap - wanted <= room ? { seat, gap, wanted } : undefined;
}

function kneeRoomOf(station: Station): Pick<SideSketch, 'kneeRoom'> {
  if (lacksKneeSpace(station)) return {};
  const { knee, width } = kneeSpace(station);
  return { kneeRoom: { deep: knee.length, wide: width.length, end: knee.what } };
}

function skirtsAt(station: Station, height: Millimetres): SideSketch['skirts'] {
  const { name, depth } = station.desk!;
  return station.booth.skirts.flatMap((skirt) => {
    const isInFront = skirt.on.some((desk) => desk.name === name) && skirt.sides.value.includes('front');
    if (!isInFront || !skirt.drop || !depth) return [];
    return [{ name: skirt.name, x: depth.value, top: height, hem: height - skirt.drop.value }];
  });
}
