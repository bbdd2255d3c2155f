import type { Polygon } from '../booth.js';
import type { Scene } from '../scene/scene.js';
import { crowdObstacles, floorAt, RACK_UNIT, screenObstacles } from '../scene/sight.js';
import type { HallBlock, HallSketch } from './figures.js';

export function hallSketch(scene: Scene): HallSketch {
  const { room } = scene.booth;
  const stage = room?.stage;
  const balcony = room?.balcony;
  return {
    ...(room?.depth && { depth: room.depth.value }),
    ...(room?.height && { height: room.height.value }),
    ...(stage?.edge && { stage: { edge: stage.edge.value, ...(stage.height && { height: stage.height.value }) } }),
    ...(balcony?.edge && {
      balcony: { edge: balcony.edge.value, ...(balcony.height && { height: balcony.height.value }) },
    }),
    blocks: [...blocksOf(scene), ...screensOf(scene)],
    rows: crowdObstacles(scene).map(({ line: [{ y }], top }) => ({
      y,
      top,
      standing: room?.seating?.standing ?? false,
    })),
  };
}

/** Pieces with the height that the file says; what has none is left out. A column is as high as the room. */
function blocksOf(scene: Scene): readonly HallBlock[] {
  return scene.layout.pieces.flatMap(({ name, kind, outline }) => {
    const height = heightOf(scene, name, kind);
    if (height === undefined) return [];
    const floor = kind === 'platform' ? 0 : floorAt(scene, outline[0]!);
    return [{ name, kind, y: spanY(outline), z: { min: floor, max: floor + height } }];
  });
}

function heightOf({ booth }: Scene, name: string, kind: HallBlock['kind']): number | undefined {
  const byName = <T extends { readonly name: string }>(pieces: readonly T[]) => pieces.find((one) => one.name === name);
  switch (kind) {
    case 'desk':
      return byName(booth.desks)?.height?.value.max;
    case 'platform':
      return byName(booth.platforms)?.height?.value;
    case 'rack': {
      const rack = byName(booth.racks);
      return rack?.units && rack.units.value * RACK_UNIT + rack.frame.value;
    }
    default:
      return booth.room?.height?.value;
  }
}

/** Screens on a desk stand at its greatest height, on an arm raised as high as it goes. */
function screensOf(scene: Scene): readonly HallBlock[] {
  return screenObstacles(scene).flatMap(({ what, line, top, onDesk, owner, view }) => {
    if (!view) return [];
    const desk = onDesk ? (owner?.desk?.height?.value.max ?? 0) : 0;
    const z = { min: desk + top - 2 * view.half, max: desk + top };
    return [{ name: what, kind: 'screen', ...(owner && { workstation: owner.name }), y: spanY(line), z }];
  });
}

function spanY(outline: Polygon) {
  const ys = outline.map(({ y }) => y);
  return { min: Math.min(...ys), max: Math.max(...ys) };
}
