import type { Scene } from '../scene/scene.js';
import { stageLines } from '../scene/stage-lines.js';
import { eyesAt, type Eyes } from '../scene/viewing.js';
import { degrees, TOLERANCE } from '../units.js';
import type { StageSight } from './figures.js';

/** What everyone sees of the stage; nobody whose desk, or whose stage, has no place. */
export function sightsOf(scene: Scene): readonly StageSight[] {
  return scene.stations.flatMap((station) => eyesAt(scene, station).flatMap((eyes) => sightOf(scene, eyes)));
}

function sightOf(scene: Scene, eyes: Eyes): StageSight[] {
  const { station, person, posture, eye } = eyes;
  const sight = stageLines(scene, station);
  const ahead = sight?.targets[Math.floor(sight.targets.length / 2)];
  if (!sight || !ahead) return [];
  const { place, floor, stage } = sight;
  const above = sight.highest(eyes);
  const decides = sight.lines.find((line) => above > TOLERANCE && sight.above(line, eyes) === above);
  const target = decides?.target ?? ahead;
  const lands = { ...target, z: stage + above };
  return [
    {
      workstation: station.name,
      who: person.name,
      posture,
      eye: { ...place, z: eye + floor },
      lands,
      rise: degrees(Math.atan2(lands.z - eye - floor, Math.hypot(target.x - place.x, target.y - place.y))),
      above,
      lowered: sight.lowered(eyes),
      ...(decides && {
        over: {
          what: decides.obstacle.what,
          x: place.x + decides.at * (target.x - place.x),
          y: place.y + decides.at * (target.y - place.y),
          z: sight.top(decides.obstacle, eyes),
        },
      }),
    },
  ];
}
