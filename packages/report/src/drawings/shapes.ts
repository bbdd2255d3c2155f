import type { Verdict } from '@boothwright/fit';
import type { CircleShape, Look, MarkShape, PathShape, Point, SilhouetteShape } from './drawing.js';

export function line(points: readonly Point[], ...looks: readonly Look[]): PathShape {
  return { shape: 'path', points, closed: false, looks };
}

export function area(points: readonly Point[], ...looks: readonly Look[]): PathShape {
  return { shape: 'path', points, closed: true, looks };
}

export function silhouette(outlines: readonly (readonly Point[])[], ...looks: readonly Look[]): SilhouetteShape {
  return { shape: 'silhouette', outlines, looks };
}

export function disc(centre: Point, radius: number, ...looks: readonly Look[]): CircleShape {
  return { shape: 'circle', centre, radius, looks };
}

export function mark(at: Point, verdict: Verdict): MarkShape {
  return { shape: 'mark', at, verdict };
}
