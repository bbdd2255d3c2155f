import { LiveDrawing, type LiveDrawingProps, type View } from '@boothwright/report/preview';
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { useDrawn } from './drawn.js';
import { Facts } from './facts.js';
import { keyTaken } from './keys.js';

export interface SheetProps extends Omit<LiveDrawingProps, 'assessment' | 'drawing' | 'id' | 'side'> {
  readonly view: View;
  readonly onZoom: (zoom: number) => void;
}

/** One step of zoom, and how far zoom goes. */
const STEP = 1.25;
const LARGEST = 8;

/** A drawing that can be enlarged and moved about, with its figures as a list below it. */
export function Sheet({ view: wanted, onZoom, lit, current, described, movable, zoom }: SheetProps) {
  const area = useRef<HTMLDivElement>(null);
  const { view, drawing } = useDrawn(wanted, area);
  const { id, caption, assessment, side } = view;
  const before = useRef({ zoom, at: undefined as Point | undefined });

  const zoomTo = (wanted: number, at?: Point) => {
    before.current = { zoom, at };
    onZoom(Math.min(LARGEST, Math.max(1, wanted < 1.01 ? 1 : wanted)));
  };

  /** What was under the pointer, or in the middle, stays there. */
  useLayoutEffect(() => {
    const element = area.current;
    const { zoom: old, at } = before.current;
    if (!element || old === zoom) return;
    const { x, y } = at ?? { x: element.clientWidth / 2, y: element.clientHeight / 2 };
    element.scrollLeft = ((element.scrollLeft + x) * zoom) / old - x;
    element.scrollTop = ((element.scrollTop + y) * zoom) / old - y;
    before.current = { zoom, at: undefined };
  }, [zoom]);

  const onWheel = (event: WheelEvent) => {
    if (!event.ctrlKey && !event.metaKey) return;
    event.preventDefault();
    const box = area.current!.getBoundingClientRect();
    zoomTo(zoom * Math.exp(-event.deltaY / 300), { x: event.clientX - box.left, y: event.clientY - box.top });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === '+' || event.key === '=') zoomTo(zoom * STEP);
    else if (event.key === '-') zoomTo(zoom / STEP);
    else if (event.key === '0') zoomTo(1);
    else return;
    keyTaken(event);
  };

  const live = useMemo(
    () => <LiveDrawing {...{ assessment, drawing, id, side, lit, current, described, movable, zoom }} />,
    [assessment, drawing, id, side, lit, current, described, movable, zoom],
  );
  const facts = useMemo(() => <Facts caption={caption} facts={drawing.facts} />, [caption, drawing.facts]);

  return (
    <figure aria-labelledby={`${id}-title`} onKeyDown={onKeyDown}>
      <figcaption>
        <span id={`${id}-title`}>{caption}</span>
        <span class="zoom">
          <button
            type="button"
            aria-label={`Smaller: ${caption}`}
            disabled={zoom <= 1}
            onClick={() => zoomTo(zoom / STEP)}
          >
            −
          </button>
          <button type="button" aria-label={`Larger: ${caption}`} onClick={() => zoomTo(zoom * STEP)}>
            +
          </button>
          {zoom > 1 && (
            <button type="button" aria-label={`Whole: ${caption}`} onClick={() => zoomTo(1)}>
              Whole
            </button>
          )}
        </span>
      </figcaption>
      <div
        class={`sheet${zoom > 1 ? ' zoomed' : ''}`}
        ref={area}
        data-sheet={id}
        onWheel={onWheel}
        onPointerDown={(event) => startPan(event, area.current!)}
      >
        {live}
      </div>
      {facts}
    </figure>
  );
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Moves an enlarged drawing with the pointer, from a place where no piece lies. */
function startPan(event: PointerEvent, element: HTMLElement): void {
  if (event.button !== 0 || !element.classList.contains('zoomed')) return;
  if ((event.target as Element).closest('[data-piece]')) return;
  const from = { x: event.clientX + element.scrollLeft, y: event.clientY + element.scrollTop };
  const move = ({ clientX, clientY }: PointerEvent) => element.scrollTo(from.x - clientX, from.y - clientY);
  element.setPointerCapture(event.pointerId);
  element.addEventListener('pointermove', move);
  element.addEventListener('lostpointercapture', () => element.removeEventListener('pointermove', move), {
    once: true,
  });
}
