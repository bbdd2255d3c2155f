import type { PieceRef, Setting } from '@boothwright/language/protocol';
import {
  decidedBy,
  percent,
  pieceKey,
  pieceOfKey,
  postureWord,
  VerdictMark,
  VerdictShapes,
  viewsOf,
  type StationViews,
  type View,
} from '@boothwright/report/preview';
import type { JSX } from 'preact';
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { KeysHelp } from './help.js';
import { host, keep, kept } from './host.js';
import { keyTaken, pieceByKey, wayOf } from './keys.js';
import type { Drawn } from './messages.js';
import { keysOfPlaces, placesOf } from './move.js';
import { Mover } from './mover.js';
import { reuse } from './reuse.js';
import { Sheet } from './sheet.js';
import { Sliders } from './sliders.js';
import { Summary } from './summary.js';
import { Tip, tipId, type TipShown } from './tip.js';

export interface PageProps {
  readonly result: Drawn;
  /** The number that a slider is being moved to, until the drawing shows what was written. */
  readonly sliding: Setting | undefined;
  /** Whether that is not written yet. */
  readonly isTrying: boolean;
  readonly lit: readonly PieceRef[];
  readonly tip: TipShown | undefined;
  /** A piece is pointed at, or nothing is any more. */
  readonly onPoint: (anchor: Element | undefined) => void;
  readonly onTry: (setting: Setting) => void;
  readonly onSet: (settings: readonly Setting[]) => void;
  /** What is tried is to be forgotten. */
  readonly onCancel: () => void;
}

/** How far one key moves the page, CSS pixels. */
const PAN = 60;

export function Page(props: PageProps) {
  const { lit, tip, onPoint, onSet } = props;
  const { assessment, stale, handles } = props.result;
  const width = usePageWidth();
  const views = useMemo(() => viewsOf(assessment, width), [assessment, width]);
  const litKeys = useMemo(() => new Set(lit.map(pieceKey)), [lit]);
  const [zooms, setZooms] = useState(kept()?.zooms ?? {});
  const [reached, setReached] = useState(kept()?.reached ?? {});
  const [moved, setMoved] = useState<string>();
  const places = useRef<readonly string[]>([]);
  places.current = reuse(places.current, keysOfPlaces(handles));
  const movable = useMemo(() => new Set(places.current), [places.current]);
  const shownTip = tip && document.contains(tip.anchor) ? tip : undefined;
  const describedKey = shownTip && pieceKey(shownTip.piece);
  const described = useMemo(
    () => (describedKey === undefined ? undefined : { key: describedKey, by: tipId }),
    [describedKey],
  );

  const sheet = (view: View) => (
    <Sheet
      key={view.id}
      view={view}
      lit={litKeys}
      current={reached[view.id]}
      described={described}
      movable={movable}
      zoom={zooms[view.id] ?? 1}
      onZoom={(zoom) => {
        const changed = { ...zooms, [view.id]: zoom };
        setZooms(changed);
        keep({ zooms: changed });
      }}
    />
  );
  const mover = useMemo(() => new Mover(setMoved, onSet), []);
  useLayoutEffect(() => mover.drawn(assessment.booth.show, handles), [handles]);
  const onFocus = (event: FocusEvent) => {
    const piece = pieceAround(event.target);
    const drawing = piece?.closest<HTMLElement>('[data-sheet]')?.dataset.sheet;
    if (!piece || drawing === undefined) return;
    const changed = { ...reached, [drawing]: piece.dataset.piece! };
    setReached(changed);
    keep({ reached: changed });
    if (piece.matches(':focus-visible')) onPoint(piece);
  };
  return (
    <main
      onFocusIn={onFocus}
      onFocusOut={() => {
        mover.leave();
        onPoint(undefined);
      }}
      onClick={(event) => goTo(pieceAround(event.target))}
      onPointerDown={(event) => mover.press(event, pieceAround(event.target))}
      onKeyDown={(event) => mover.key(event, pieceAround(event.target)) || onPieceKey(event, onPoint)}
    >
      <VerdictShapes />
      <Summary
        assessment={assessment}
        stale={stale}
        views={views}
        trial={moved ?? (props.isTrying ? tryWords : undefined)}
      />
      {views.plans.length === 0 && <p>Nothing has a place yet: place a desk, and the plan appears here.</p>}
      {views.plans.map(sheet)}
      {views.stations.map((station) => (
        <Station
          key={station.id}
          station={station}
          sheet={sheet}
          sliders={
            <Sliders
              handles={handles.filter(({ is, workstation }) => is === 'height' && workstation === station.name)}
              sliding={props.sliding}
              onTry={props.onTry}
              onSet={(setting) => onSet([setting])}
              onCancel={props.onCancel}
            />
          }
        />
      ))}
      <KeysHelp />
      {shownTip && (
        <Tip
          shown={shownTip}
          places={placesOf(shownTip.piece, handles)}
          decided={decidedBy(assessment, shownTip.piece)}
          onLeave={() => onPoint(undefined)}
        />
      )}
    </main>
  );
}

interface StationProps {
  readonly station: StationViews;
  readonly sheet: (view: View) => JSX.Element;
  readonly sliders: JSX.Element;
}

const tryWords = 'Trying a height. The text is written when the slider is let go; Escape takes it back.';

function Station({ station: { id, name, served, views, between }, sheet, sliders }: StationProps) {
  return (
    <section aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`} data-station={name}>{`${name} from the side`}</h2>
      <ul class="served">
        {served.map(({ who, posture, share, verdict }) => (
          <li key={`${who} ${posture}`}>
            <VerdictMark verdict={verdict} /> {`${who}, ${postureWord(posture)}: everything fits ${percent(share)}`}
          </li>
        ))}
      </ul>
      {sliders}
      {views.length === 0 && <p>Nobody can be drawn here yet: the heights of the desk and of a person are needed.</p>}
      <div class="sides">{views.map(sheet)}</div>
      {between.length > 0 && <p>{`Between the lowest and the highest eyes that are drawn: ${between.join(', ')}.`}</p>}
    </section>
  );
}

function usePageWidth(): number {
  const [width, setWidth] = useState(document.documentElement.clientWidth);
  const waiting = useRef(0);
  useEffect(() => {
    const observer = new ResizeObserver(() => {
      clearTimeout(waiting.current);
      waiting.current = window.setTimeout(() => setWidth(document.documentElement.clientWidth), 100);
    });
    observer.observe(document.documentElement);
    return () => observer.disconnect();
  }, []);
  return width;
}

/** The drawn piece that a place of the page belongs to. */
export function pieceAround(target: EventTarget | null): SVGElement | undefined {
  return (target as Element | null)?.closest<SVGElement>('[data-piece]') ?? undefined;
}

function goTo(piece: SVGElement | undefined): void {
  if (piece) host.postMessage({ type: 'goTo', piece: pieceOfKey(piece.dataset.piece!) });
}

/** What keys do on a piece, and in its figures. */
function onPieceKey(event: KeyboardEvent, onPoint: PageProps['onPoint']): void {
  const { key, shiftKey, ctrlKey, metaKey, altKey } = event;
  if (key === 'Escape') {
    if (document.activeElement?.id === tipId) lastPiece?.focus();
    onPoint(undefined);
    return;
  }
  const piece = pieceAround(event.target);
  if (!piece || ctrlKey || metaKey || altKey) return;
  const way = wayOf(event);
  if (shiftKey && way) {
    const area = piece.closest('.zoomed') ?? document.scrollingElement;
    area?.scrollBy(way[0] * PAN, way[1] * PAN);
  } else if (key === 'Enter') goTo(piece);
  else if (key === ' ') {
    lastPiece = piece;
    document.getElementById(tipId)?.focus();
  } else {
    const next = pieceByKey(event, piece);
    if (!next && !way) return;
    next?.focus();
  }
  keyTaken(event);
}

let lastPiece: SVGElement | undefined;
