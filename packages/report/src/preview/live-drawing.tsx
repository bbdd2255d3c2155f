import { pieceKey, type Assessment, type PieceRef, type SideSketch } from '@boothwright/fit';
import { useMemo } from 'preact/hooks';
import type { Drawing, Piece, Shape, Sheet } from '../drawings/drawing.js';
import { ShapeSvg } from '../drawings/svg.js';
import { extentOnPaper } from './extent.js';
import { labelOf, targetOf } from './targets.js';

export interface LiveDrawingProps {
  readonly assessment: Assessment;
  /** Pieces that are the same objects as before are not drawn anew. */
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
  const entries = useMemo(() => entriesOf(drawing, side), [drawing, side]);
  const first = useMemo(() => firstOfEach(entries), [entries]);
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
      {entries.map((entry) => {
        const { place, piece, target, key } = entry;
        if (!target || key === undefined) return <Still key={place} piece={piece} sheet={sheet} />;
        const isButton = first.get(key) === entry;
        return (
          <Target
            key={place}
            piece={piece}
            sheet={sheet}
            name={key}
            isLit={lit.has(key)}
            isMovable={movable?.has(key) ?? false}
            label={isButton ? labelOf(assessment, target) : undefined}
            isReached={isButton && key === reached}
            describedBy={isButton && described?.key === key ? described.by : undefined}
          />
        );
      })}
    </svg>
  );
}

/** A piece with the thing that it stands for. */
interface Entry {
  /** The same for the same piece of a later drawing, unique in this one. */
  readonly place: string;
  readonly piece: Piece;
  readonly target?: PieceRef;
  /** Of the target. */
  readonly key?: string;
}

function entriesOf(drawing: Drawing, side: SideSketch | undefined): readonly Entry[] {
  const counts = new Map<string, number>();
  return drawing.pieces.map((piece) => {
    const { kind, name, station } = piece;
    const like = JSON.stringify([kind, name, station]);
    const count = counts.get(like) ?? 0;
    counts.set(like, count + 1);
    const target = targetOf(drawing, piece, side);
    return { place: `${like}${count}`, piece, ...(target && { target, key: pieceKey(target) }) };
  });
}

function firstOfEach(entries: readonly Entry[]): ReadonlyMap<string, Entry> {
  const first = new Map<string, Entry>();
  for (const entry of entries) if (entry.key !== undefined && !first.has(entry.key)) first.set(entry.key, entry);
  return first;
}

interface PieceProps {
  readonly piece: Piece;
  readonly sheet: Sheet;
}

function Still({ piece, sheet }: PieceProps) {
  return useMemo(
    () => (
      <g aria-hidden="true" data-kind={piece.kind}>
        {piece.shapes.map((shape) => (
          <ShapeSvg shape={shape} sheet={sheet} />
        ))}
      </g>
    ),
    [piece, sheet],
  );
}

interface TargetProps extends PieceProps {
  readonly name: string;
  readonly isLit: boolean;
  readonly isMovable: boolean;
  /** What is read out; only of what is a button. */
  readonly label: string | undefined;
  readonly isReached: boolean;
  readonly describedBy: string | undefined;
}

function Target({ piece, sheet, name, isLit, isMovable, label, isReached, describedBy }: TargetProps) {
  const shapes = useMemo(() => <TargetShapes piece={piece} sheet={sheet} />, [piece, sheet]);
  return useMemo(() => {
    const role =
      label === undefined
        ? ({ 'aria-hidden': 'true' } as const)
        : ({
            role: 'button',
            tabindex: isReached ? 0 : -1,
            'aria-label': label,
            'aria-describedby': describedBy,
            'aria-current': isLit ? 'true' : undefined,
          } as const);
    return (
      <g
        class={`target${isLit ? ' lit' : ''}${isMovable ? ' movable' : ''}`}
        data-piece={name}
        data-kind={piece.kind}
        data-name={piece.name}
        data-verdict={piece.verdict}
        {...role}
      >
        {shapes}
      </g>
    );
  }, [piece, shapes, name, isLit, isMovable, label, isReached, describedBy]);
}

/** The shapes of a piece in the ring that lights it. */
function TargetShapes({ piece, sheet }: PieceProps) {
  const { x, y, width, height } = extentOnPaper(piece, sheet);
  return (
    <>
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
    </>
  );
}

/** A line is hard to hit: an unseen wide one lies over it. */
function isThin(shape: Shape): shape is Shape & { shape: 'path' } {
  return shape.shape === 'path' && !shape.closed;
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10 + 0;
}
