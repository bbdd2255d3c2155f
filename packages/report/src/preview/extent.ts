import type { Box } from '../drawings/geometry.js';
import { MARK_SIZE, TEXT_SIZE, type Piece, type Point, type Shape, type Sheet } from '../drawings/drawing.js';
import { textWidth } from '../drawings/text-width.js';

/** The box around a piece on the paper, in units. */
export function extentOnPaper({ shapes }: Piece, sheet: Sheet): Box {
  const corners = shapes.flatMap((shape) => cornersOf(shape, sheet));
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return { x: left, y: top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
}

function cornersOf(shape: Shape, sheet: Sheet): readonly Point[] {
  const at = ({ x, y }: Point) => ({ x: (x - sheet.left) / sheet.scale, y: (sheet.top - y) / sheet.scale });
  switch (shape.shape) {
    case 'path':
      return shape.points.map(at);
    case 'silhouette':
      return shape.outlines.flat().map(at);
    case 'circle':
      return around(at(shape.centre), shape.radius / sheet.scale, shape.radius / sheet.scale);
    case 'mark':
      return around(at(shape.at), MARK_SIZE / 2, MARK_SIZE / 2);
    case 'text': {
      const width = textWidth(shape.text, shape.looks.includes('strong'));
      const { x, y } = at(shape.at);
      const left = shape.anchor === 'start' ? x : shape.anchor === 'end' ? x - width : x - width / 2;
      return [
        { x: left, y: y - TEXT_SIZE * 0.8 },
        { x: left + width, y: y + TEXT_SIZE * 0.25 },
      ];
    }
  }
}

function around({ x, y }: Point, across: number, down: number): readonly Point[] {
  return [
    { x: x - across, y: y - down },
    { x: x + across, y: y + down },
  ];
}
