import type { PlanPoint } from '../booth.js';
import type { Station } from '../stations/station.js';
import { TOLERANCE, type Millimetres } from '../units.js';
import type { Scene } from './scene.js';
import { linesFor, loweredLines } from './screen-lines.js';
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
import { isAdjustable, type Look } from './viewing.js';

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
  /**
   * Top of an obstacle above the hall's floor, as somebody at the station looks over it: a screen of the station's own on an arm as low as it is
   * good for their eyes.
   */
  top(obstacle: Obstacle, eyes: Look): Millimetres;
  /** How high above the stage's floor a line of theirs meets the stage. */
  above(line: StageLine, eyes: Look): Millimetres;
  /** The same of the line that meets it highest; 0 if the floor itself is seen. */
  highest(eyes: Look): Millimetres;
  /** The station's own screens that hide more of the stage where they are best to read than lowered on their arms. */
  lowered(eyes: Look): readonly string[];
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
  // Asked for thousands of people: what stands is found without an object for each.
  const top = (obstacle: Obstacle, eyes: Look) => {
    const { view, onDesk } = obstacle;
    const isOwn = obstacle.owner === station;
    if (isOwn && view && isAdjustable(view)) return loweredLines(view, eyes).top + floor;
    return obstacle.top + (onDesk ? (isOwn ? eyes.desk : highestDesk(obstacle)) : 0);
  };
  const over = (height: Millimetres, at: number, eye: Millimetres) => eye + floor + (height - eye - floor) / at - stage;
  const above = ({ obstacle, at }: StageLine, eyes: Look) => over(top(obstacle, eyes), at, eyes.eye);
  const highest = (eyes: Look) => lines.reduce((most, line) => Math.max(most, above(line, eyes)), 0);
  const lowered = (eyes: Look) => {
    const most = highest(eyes) + TOLERANCE;
    const hiding = lines.filter(({ obstacle: { view, owner }, at }) => {
      return (
        view && owner === station && isAdjustable(view) && over(linesFor(view, eyes).top + floor, at, eyes.eye) > most
      );
    });
    return [...new Set(hiding.map(({ obstacle }) => obstacle.what))];
  };
  return {
    place,
    floor,
    stage,
    targets,
    lines,
    top,
    above,
    highest,
    lowered,
  };
}

/** Another station’s screen stands on its own desk, at the greatest height that desk has. */
function highestDesk(obstacle: Obstacle): Millimetres {
  return obstacle.owner?.desk?.height?.value.max ?? 0;
}
