import type { PlanPoint } from '../booth.js';
import type { Station } from '../stations/station.js';
import type { Millimetres } from '../units.js';
import type { Scene } from './scene.js';
import {
  crossing,
  crowdObstacles,
  eyePlace,
  floorAt,
  rackObstacles,
  screenObstacles,
  stageTargets,
  type Obstacle,
} from './sight.js';

/** A line of sight to one point of the stage's front edge over one obstacle. */
export interface StageLine {
  readonly obstacle: Obstacle;
  readonly target: PlanPoint;
  /** Where on the way the obstacle stands, 0 at the eye, 1 at the stage. */
  readonly at: number;
}

/** All that stands between the eyes of one station and the stage. */
export interface StageLines {
  readonly place: PlanPoint;
  /** Height of the floor under the eyes. */
  readonly floor: Millimetres;
  /** Height of the stage's floor. */
  readonly stage: Millimetres;
  readonly targets: readonly PlanPoint[];
  readonly lines: readonly StageLine[];
  /** Top of an obstacle above the hall's floor, for a desk of a given height at the station. */
  top(obstacle: Obstacle, desk: Millimetres): Millimetres;
  /** How high above the stage's floor a line meets the stage, for an eye and a desk of given heights. */
  above(line: StageLine, eye: Millimetres, desk: Millimetres): Millimetres;
  /** The same of the line that meets it highest; 0 if the floor itself is seen. */
  highest(eye: Millimetres, desk: Millimetres): Millimetres;
}

/** Undefined if the file does not say where the stage or the station's desk is. */
export function stageLines(scene: Scene, station: Station): StageLines | undefined {
  const ofScene = found.get(scene) ?? new Map<Station, StageLines | undefined>();
  found.set(scene, ofScene);
  if (!ofScene.has(station)) ofScene.set(station, linesFrom(scene, station));
  return ofScene.get(station);
}

/** Everyone at a station asks for the same, and the drawings after the checks. */
const found = new WeakMap<Scene, Map<Station, StageLines | undefined>>();

function linesFrom(scene: Scene, station: Station): StageLines | undefined {
  const place = eyePlace(scene, station);
  const stage = scene.booth.room?.stage?.height?.value;
  if (!place || stage === undefined) return undefined;
  const floor = floorAt(scene, place);
  const targets = stageTargets(scene, place);
  const obstacles = [...screenObstacles(scene), ...rackObstacles(scene), ...crowdObstacles(scene)];
  const lines = targets.flatMap((target) =>
    obstacles.flatMap((obstacle): StageLine[] => {
      const at = crossing(place, target, obstacle.line);
      return at === undefined ? [] : [{ obstacle, target, at }];
    }),
  );
  const top = (obstacle: Obstacle, desk: Millimetres) =>
    obstacle.top + (obstacle.onDesk ? (obstacle.owner === station ? desk : highestDesk(obstacle)) : 0);
  const above = ({ obstacle, at }: StageLine, eye: Millimetres, desk: Millimetres) => {
    const z = eye + floor;
    return z + (top(obstacle, desk) - z) / at - stage;
  };
  return {
    place,
    floor,
    stage,
    targets,
    lines,
    top,
    above,
    highest: (eye, desk) => lines.reduce((most, line) => Math.max(most, above(line, eye, desk)), 0),
  };
}

/** Another station’s screen stands on its own desk, at the greatest height that desk has. */
function highestDesk(obstacle: Obstacle): Millimetres {
  return obstacle.owner?.desk?.height?.value.max ?? 0;
}
