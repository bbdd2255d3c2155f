import { pieceKey, type Assessment, type PieceRef, type SideSketch } from '@boothwright/fit';
import type { Drawing, Piece, Shape, Sheet } from '../drawings/drawing.js';
import { ShapeSvg } from '../drawings/svg.js';
import { extentOnPaper } from './extent.js';
import { labelOf, targetOf } from './targets.js';

export interface LiveDrawingProps {
  readonly assessment: Assessment;
  readonly drawing: Drawing;
  /** Unique on its page. */
  readonly id: string;
  /** The person, of a side view. */
  readonly side?: SideSketch;
  /** Keys of the things that the cursor in the text is on. */
  readonly lit: ReadonlySet<string>;
  /** The key of the thing that the keyboard is on, or was last. */
  readonly current?: string;
  /** The key of the thing whose figures are shown, and the id of the element that shows them. */
  readonly described?: { readonly key: string; readonly by: string };
  /** Keys of the things that can be moved over a plan. */
  readonly movable?: ReadonlySet<string>;
  /** How large it is shown, as a share of the width that it has. */
  readonly zoom: number;
}

/** Free space between a piece and the ring around it, in units of the paper. */
const AROUND = 3;
/** How much larger than its own size a drawing is shown where there is room. */
const LARGEST = 1.1;

/**
 * A drawing whose pieces can be pointed at. Each thing of the booth is one button, the first piece that draws it; other pieces of the
 * same thing are seen and clicked, but not read out. `data-piece` is the key of the thing.
 */
export function LiveDrawing({
  assessment,
  drawing,
  id,
  side,
  lit,
  current,
  described,
  movable,
  zoom,
}: LiveDrawingProps) {
  const { sheet, kind } = drawing;
  const targets = drawing.pieces.map((piece) => targetOf(drawing, piece, side));
  const first = firstOfEach(targets);
  const reached = current !== undefined && first.has(current) ? current : [...first.keys()][0];
  return (
    <svg
      class={`drawing live ${kind}`}
      viewBox={`0 0 ${tenth(sheet.width)} ${tenth(sheet.height)}`}
      style={{ width: `calc(min(100%, ${tenth(sheet.width * LARGEST)}px) * ${zoom})` }}
      role="group"
      aria-labelledby={`${id}-title`}
      aria-describedby={`${id}-desc`}
      data-left={sheet.left.toFixed(1)}
      data-top={sheet.top.toFixed(1)}
      data-scale={sheet.scale.toFixed(5)}
    >
      <desc id={`${id}-desc`}>{drawing.description}</desc>
      {drawing.pieces.map((piece, index) => {
        const target = targets[index];
        if (!target) return <Still piece={piece} sheet={sheet} />;
        const key = pieceKey(target);
        const isFirst = first.get(key) === index;
        return (
          <Target
            piece={piece}
            sheet={sheet}
            name={key}
            isLit={lit.has(key)}
            isMovable={movable?.has(key) ?? false}
            button={
              isFirst
                ? {
                    label: labelOf(assessment, target),
                    isReached: key === reached,
                    describedBy: described?.key === key ? described.by : undefined,
                  }
                : undefined
            }
          />
        );
      })}
    </svg>
  );
}

function firstOfEach(targets: readonly (PieceRef | undefined)[]): ReadonlyMap<string, number> {
  const first = new Map<string, number>();
  targets.forEach((target, index) => {
    const key = target && pieceKey(target);
    if (key !== undefined && !first.has(key)) first.set(key, index);
  });
  return first;
}

function Still({ piece, sheet }: { piece: Piece; sheet: Sheet }) {
  return (
    <g aria-hidden="true" data-kind={piece.kind}>
      {piece.shapes.map((shape) => (
        <ShapeSvg shape={shape} sheet={sheet} />
      ))}
    </g>
  );
}

interface TargetProps {
  readonly piece: Piece;
  readonly sheet: Sheet;
  readonly name: string;
  readonly isLit: boolean;
  readonly isMovable: boolean;
  readonly button?: { readonly label: string; readonly isReached: boolean; readonly describedBy?: string };
}

function Target({ piece, sheet, name, isLit, isMovable, button }: TargetProps) {
  const { x, y, width, height } = extentOnPaper(piece, sheet);
  const role = button
    ? ({
        role: 'button',
        tabindex: button.isReached ? 0 : -1,
        'aria-label': button.label,
        'aria-describedby': button.describedBy,
        'aria-current': isLit ? 'true' : undefined,
      } as const)
    : ({ 'aria-hidden': 'true' } as const);
  return (
    <g
      class={`target${isLit ? ' lit' : ''}${isMovable ? ' movable' : ''}`}
      data-piece={name}
      data-kind={piece.kind}
      data-name={piece.name}
      data-verdict={piece.verdict}
      {...role}
    >
      <rect
        class="ring"
        x={tenth(x - AROUND)}
        y={tenth(y - AROUND)}
        width={tenth(width + 2 * AROUND)}
        height={tenth(height + 2 * AROUND)}
        rx="3"
      />
      {piece.shapes.map((shape) => (
        <>
          <ShapeSvg shape={shape} sheet={sheet} />
          {isThin(shape) && (
            <g class="grip">
              <ShapeSvg shape={{ ...shape, looks: [] }} sheet={sheet} />
            </g>
          )}
        </>
      ))}
    </g>
  );
}

/** A line is hard to hit: an unseen wide one lies over it. */
function isThin(shape: Shape): shape is Shape & { shape: 'path' } {
  return shape.shape === 'path' && !shape.closed;
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10 + 0;
}
