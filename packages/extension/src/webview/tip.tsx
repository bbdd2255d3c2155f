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

/** The figures of a piece beside it: below, or above where there is more room. */
export function Tip({ shown, places, decided, onLeave }: TipProps) {
  const box = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const element = box.current!;
    const anchor = shown.anchor.getBoundingClientRect();
    const { clientWidth, clientHeight } = document.documentElement;
    const [width, height] = [element.offsetWidth, element.offsetHeight];
    const below = Math.min(anchor.bottom, clientHeight - 8) + 6;
    const above = Math.max(anchor.top, 8) - height - 6;
    const top = below + height <= clientHeight - 8 || above < 8 ? below : above;
    element.style.left = `${Math.max(8, Math.min(anchor.left, clientWidth - width - 8))}px`;
    element.style.top = `${Math.max(8, Math.min(top, clientHeight - height - 8))}px`;
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

/** A row moves as one. */
function movedWith(places: readonly Handle[]): string {
  const { pieces } = places[0]!;
  return pieces.length > 1 ? `the whole row: ${pieces.map(({ name }) => name).join(', ')}` : 'it';
}
