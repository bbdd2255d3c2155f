import { EASY } from '../checks/reach/reach.js';
import { placedDesk } from '../layout/layout.js';
import { pointIn, rectangleIn, type Frame } from '../layout/polygon.js';
import type { Scene } from '../scene/scene.js';
import { armsOf, levelReach } from '../scene/reaching.js';
import { screenObstacles } from '../scene/sight.js';
import { eyesAt } from '../scene/viewing.js';
import { placeAlong, type Person, type Station } from '../stations/station.js';
import { bodySketch } from './body.js';
import type { PlaceSketch, PlanScreen } from './figures.js';
import { degrees } from '../units.js';

/** Where people work, for every workstation whose desk has a place. */
export function placesOf(scene: Scene): readonly PlaceSketch[] {
  return scene.stations.flatMap((station) => {
    const placed = station.desk && placedDesk(scene.layout, station.desk);
    return placed ? [placeOf(scene, station, placed.frame)] : [];
  });
}

function placeOf(scene: Scene, station: Station, frame: Frame): PlaceSketch {
  const along = placeAlong(station);
  const { lean, controls } = station.workstation;
  return {
    workstation: station.name,
    people: station.people.map(({ name }) => name),
    at: pointIn(frame, along, lean.value),
    facing: degrees(Math.atan2(frame.forward.x, frame.forward.y)),
    ...bodyAt(station, frame, along),
    reach: reachOf(scene, station),
    screens: screensOf(scene, station),
    controls: controls.flatMap(({ name, at, setback, depth, width }) => {
      if (!setback) return [];
      const middle = at?.value ?? along;
      const sides = [middle - width.value / 2, middle + width.value / 2] as const;
      return [{ name, outline: rectangleIn(frame, sides, [setback.value, setback.value + depth.value]) }];
    }),
  };
}

function bodyAt(station: Station, frame: Frame, along: number): Pick<PlaceSketch, 'trunk' | 'seat'> {
  const broadest = station.people.reduce<Person | undefined>(
    (most, person) =>
      most && most.dimensions.forearmForearmBreadth >= person.dimensions.forearmForearmBreadth ? most : person,
    undefined,
  );
  if (!broadest) return {};
  const { dimensions } = broadest;
  const posture = station.workstation.postures.value[0] ?? 'sit';
  const middle = bodySketch(station, posture, dimensions, ANY_SETTING).hip.x;
  const trunk = {
    at: pointIn(frame, along, middle),
    breadth: dimensions.forearmForearmBreadth,
    depth: dimensions.abdominalDepthSitting,
  };
  const { seat } = station;
  if (!seat) return { trunk };
  return { trunk, seat: { name: seat.name, at: trunk.at, ...(seat.base && { base: seat.base.value }) } };
}

function reachOf(scene: Scene, station: Station): PlaceSketch['reach'] {
  const arms = eyesAt(scene, station).map((eyes) => {
    const { shoulder, arm } = armsOf(eyes);
    return { who: eyes.person.name, radius: levelReach(shoulder, arm, eyes.desk) };
  });
  const farthest = arms.reduce<(typeof arms)[0] | undefined>(
    (least, one) => (least && least.radius <= one.radius ? least : one),
    undefined,
  );
  return { often: EASY, ...(farthest && { farthest }) };
}

/** Seen from above heights do not show. */
const ANY_SETTING = { seat: 0, desk: 0 };

function screensOf(scene: Scene, station: Station): readonly PlanScreen[] {
  return screenObstacles(scene).flatMap(({ owner, view, line }) => {
    if (owner !== station || !view) return [];
    const [left, right] = line;
    return [
      {
        name: view.name,
        face: line,
        middle: { x: (left.x + right.x) / 2, y: (left.y + right.y) / 2 },
        bearing: view.bearing,
        main: view.use.main.value,
      },
    ];
  });
}
