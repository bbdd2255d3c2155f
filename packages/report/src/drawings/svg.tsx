import type { Verdict } from '@boothwright/fit';
import { MARK_SIZE, type Drawing, type Piece, type Point, type Shape, type Sheet } from './drawing.js';

/** A drawing as SVG. `id` is unique on its page. Colours and weights come from `drawingStyles`. */
export function DrawingSvg({ drawing, id }: { drawing: Drawing; id: string }) {
  const { sheet, kind } = drawing;
  return (
    <svg
      class={`drawing ${kind}`}
      viewBox={`0 0 ${round(sheet.width)} ${round(sheet.height)}`}
      style={{ maxWidth: `${round(sheet.width * LARGEST)}px` }}
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
      data-left={sheet.left.toFixed(1)}
      data-top={sheet.top.toFixed(1)}
      data-scale={sheet.scale.toFixed(5)}
    >
      <title id={`${id}-title`}>{drawing.title}</title>
      <desc id={`${id}-desc`}>{drawing.description}</desc>
      {drawing.pieces.map((piece) => (
        <PieceSvg piece={piece} sheet={sheet} />
      ))}
    </svg>
  );
}

/** How much larger than its own size a drawing is shown where there is room. */
const LARGEST = 1.1;

function PieceSvg({ piece, sheet }: { piece: Piece; sheet: Sheet }) {
  const { kind, name, verdict, shapes } = piece;
  return (
    <g data-kind={kind} data-name={name} data-verdict={verdict}>
      {shapes.map((shape) => (
        <ShapeSvg shape={shape} sheet={sheet} />
      ))}
    </g>
  );
}

export function ShapeSvg({ shape, sheet }: { shape: Shape; sheet: Sheet }) {
  const at = (point: Point) => ({ x: (point.x - sheet.left) / sheet.scale, y: (sheet.top - point.y) / sheet.scale });
  switch (shape.shape) {
    case 'path':
      return <path class={shape.looks.join(' ')} d={pathOf(shape.points.map(at), shape.closed)} />;
    case 'silhouette':
      return (
        <path
          class={['silhouette', ...shape.looks].join(' ')}
          d={shape.outlines.map((outline) => pathOf(outline.map(at), true)).join('')}
        />
      );
    case 'circle': {
      const { x, y } = at(shape.centre);
      return <circle class={shape.looks.join(' ')} cx={round(x)} cy={round(y)} r={round(shape.radius / sheet.scale)} />;
    }
    case 'text': {
      const { x, y } = at(shape.at);
      return (
        <text class={shape.looks.join(' ') || undefined} x={round(x)} y={round(y)} text-anchor={shape.anchor}>
          {shape.text}
        </text>
      );
    }
    case 'mark': {
      const { x, y } = at(shape.at);
      return <Mark verdict={shape.verdict} x={x} y={y} />;
    }
  }
}

function pathOf(points: readonly Point[], closed: boolean): string {
  return `M${points.map(({ x, y }) => `${round(x)} ${round(y)}`).join('L')}${closed ? 'Z' : ''}`;
}

/** The same four shapes as in the text: disc, triangle, square, ring. */
function Mark({ verdict, x, y }: { verdict: Verdict; x: number; y: number }) {
  const scale = MARK_SIZE / 16;
  const corner = `${round(x - MARK_SIZE / 2)} ${round(y - MARK_SIZE / 2)}`;
  return (
    <g class={`mark ${verdict}`} transform={`translate(${corner}) scale(${scale})`}>
      {markParts[verdict].map(({ d, filled }) => (
        <path class={filled ? 'whole' : 'sign'} d={d} />
      ))}
    </g>
  );
}

/** Paths of a mark in a box of 16 by 16. */
export const markParts: Record<Verdict, readonly { readonly d: string; readonly filled: boolean }[]> = {
  pass: [
    { d: 'M.5 8a7.5 7.5 0 0 1 15 0a7.5 7.5 0 0 1-15 0z', filled: true },
    { d: 'M4.6 8.4 7 10.8l4.4-5.2', filled: false },
  ],
  marginal: [
    { d: 'M8 .8 15.6 15H.4z', filled: true },
    { d: 'M8 6v4M8 12.6v.1', filled: false },
  ],
  fail: [
    { d: 'M1 1h14v14H1z', filled: true },
    { d: 'm4.8 4.8 6.4 6.4m0-6.4-6.4 6.4', filled: false },
  ],
  unknown: [
    { d: 'M1.3 8a6.7 6.7 0 0 1 13.4 0a6.7 6.7 0 0 1-13.4 0z', filled: false },
    { d: 'M6 6.4a2 2 0 1 1 2.6 1.9q-.6.3-.6 1.2M8 11.9v.1', filled: false },
  ],
};

/** A tenth of a unit is finer than any screen or printer shows. */
function round(value: number): number {
  return Math.round(value * 10) / 10 + 0;
}
