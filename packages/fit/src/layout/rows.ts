import type { Desk } from '../booth.js';
import type { Scene } from '../scene/scene.js';
import { stationsAt, type Station } from '../stations/station.js';
import type { Millimetres } from '../units.js';
import { placedDesk, type Layout } from './layout.js';
import { dot } from './polygon.js';

/** One station in a row. */
export interface RowPlace {
  readonly station: Station;
  readonly desk: Desk;
  /** The operator's middle, along the row. */
  readonly along: Millimetres;
  /** The stretch of the desk that is this operator's: to its ends, or half way to the next operator at it. */
  readonly from: Millimetres;
  readonly to: Millimetres;
  /** Nobody said where along the desk: it is shared out evenly. */
  readonly evenly: boolean;
}

/** Stations side by side, in the order in which they stand, all facing one way. */
export type Row = readonly RowPlace[];

/** Desks whose near edges are this far out of line are no row. Own figure: a forearm no longer meets its neighbour. */
const OUT_OF_LINE: Millimetres = 300;
/** Desks that stand this far apart are no row: a person walks through, 36 in (Panero & Zelnik 1979, 8.1). */
const APART: Millimetres = 36 * 25.4;

/** The rows of a booth. A desk without a width is left out; one that is not placed is a row of its own. */
export function rowsOf(scene: Scene): readonly Row[] {
  const lines: Line[] = [];
  const desks = scene.booth.desks.filter((desk) => desk.width && stationsAt(scene.stations, desk.name).length > 0);
  for (const desk of desks.map((each) => lineOf(scene.layout, each)).sort((a, b) => a.start - b.start)) {
    const line = lines.find((other) => continues(other, desk));
    if (line) {
      line.desks.push(desk.desks[0]!);
      line.end = desk.end;
    } else lines.push(desk);
  }
  return lines.map(({ desks: own }) => own.flatMap(({ desk, start }) => placesAt(scene, desk, start)));
}

/** Desks end to end along one edge. */
interface Line {
  readonly desks: { readonly desk: Desk; readonly start: Millimetres }[];
  /** The direction along the edge, and how far forward the edge is; absent for a desk that is not placed. */
  readonly edge?: { readonly right: { readonly x: number; readonly y: number }; readonly forward: Millimetres };
  readonly start: Millimetres;
  end: Millimetres;
}

function lineOf(layout: Layout, desk: Desk): Line {
  const placed = placedDesk(layout, desk);
  const start = placed ? dot(placed.frame.origin, placed.frame.right) : 0;
  return {
    desks: [{ desk, start }],
    ...(placed && {
      edge: { right: placed.frame.right, forward: dot(placed.frame.origin, placed.frame.forward) },
    }),
    start,
    end: start + desk.width!.value,
  };
}

function continues(line: Line, next: Line): boolean {
  if (!line.edge || !next.edge) return false;
  const parallel = dot(line.edge.right, next.edge.right) > 0.999;
  return parallel && Math.abs(line.edge.forward - next.edge.forward) < OUT_OF_LINE && next.start - line.end < APART;
}

function placesAt(scene: Scene, desk: Desk, start: Millimetres): RowPlace[] {
  const stations = stationsAt(scene.stations, desk.name);
  const width = desk.width!.value;
  const said = stations.every(({ workstation }) => workstation.at);
  const places = stations
    .map((station, index) => ({
      station,
      at: said ? station.workstation.at!.value : (width * (index + 0.5)) / stations.length,
    }))
    .sort((a, b) => a.at - b.at);
  const between = (a: number, b: number) => (places[a]!.at + places[b]!.at) / 2;
  return places.map(({ station, at }, index) => ({
    station,
    desk,
    along: start + at,
    from: start + (index === 0 ? 0 : between(index - 1, index)),
    to: start + (index === places.length - 1 ? width : between(index, index + 1)),
    evenly: !said && stations.length > 1,
  }));
}
