import type { Scene } from '../scene/scene.js';
import type { SketchFigures } from './figures.js';
import { hallSketch } from './hall.js';
import { planSketch } from './plan.js';
import { sidesOf } from './side.js';
import { sightsOf } from './sights.js';

/** The figures that drawings need. */
export function sketchOf(scene: Scene): SketchFigures {
  return {
    plan: planSketch(scene),
    sides: scene.stations.flatMap((station) => sidesOf(scene, station)),
    sights: sightsOf(scene),
    hall: hallSketch(scene),
  };
}
