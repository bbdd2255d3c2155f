import type { Handle, PieceRef } from '@boothwright/language/protocol';
import { calledOf } from '@boothwright/report/preview';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { Markdown } from './markdown.js';

export interface TipShown {
  readonly piece: PieceRef;
  /** What is drawn of the piece that is pointed at. */
  readonly anchor: Element;
  /** What the text's hover says of it. */
  readonly markdown: string;
}

export const tipId = 'figures';

interface TipProps {
  readonly shown: TipShown;
  /** What says where the piece stands, if the text can say it. */
  readonly places: readonly Handle[];
  /** What decides where it stands, if the text has no number for that. */
  readonly decided: string;
  readonly onLeave: () => void;
}

/** The figures of a piece beside it. */
export function Tip({ shown, places, decided, onLeave }: TipProps) {
  const box = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    placeBeside(box.current!, shown.anchor.getBoundingClientRect());
  }, [shown]);
  return (
    <div class="tip" id={tipId} role="tooltip" tabIndex={0} ref={box} onPointerLeave={onLeave}>
      {shown.markdown === '' && <p>{`Nothing is said of ${calledOf(shown.piece)}.`}</p>}
      <Markdown text={shown.markdown} />
      {decided !== '' && <p>{decided}</p>}
      {places.length > 0 && <p>{`On a plan, drag it or press Alt and an arrow key to move ${movedWith(places)}.`}</p>}
    </div>
  );
}

/** From the piece, and from the edges of the window, CSS pixels. */
const GAP = 6;
const EDGE = 8;
/** Less room than this, and figures lie over the end of the piece: nobody could read them. */
const LEAST = 96;

/** Below the piece, or above it where there is more room, and no taller than the room there: it does not cover what it tells of. */
function placeBeside(element: HTMLElement, anchor: DOMRect): void {
  const { clientWidth, clientHeight } = document.documentElement;
  const bottom = clientHeight - EDGE;
  const below = bottom - (anchor.bottom + GAP);
  const above = anchor.top - GAP - EDGE;
  element.style.maxHeight = '';
  const isBelow = element.offsetHeight <= below || below >= above;
  element.style.maxHeight = `${Math.min(element.offsetHeight, Math.max(LEAST, isBelow ? below : above))}px`;
  const { offsetWidth: width, offsetHeight: height } = element;
  const top = isBelow ? anchor.bottom + GAP : anchor.top - GAP - height;
  element.style.left = `${Math.max(EDGE, Math.min(anchor.left, clientWidth - width - EDGE))}px`;
  element.style.top = `${Math.max(EDGE, Math.min(top, bottom - height))}px`;
}

/** A row moves as one. */
function movedWith(places: readonly Handle[]): string {
  const { pieces } = places[0]!;
  return pieces.length > 1 ? `the whole row: ${pieces.map(({ name }) => name).join(', ')}` : 'it';
}
