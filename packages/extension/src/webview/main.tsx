import type { PieceRef, PreviewResult, Setting } from '@boothwright/language/protocol';
import { pieceKey, pieceOfKey } from '@boothwright/report/preview';
import { render } from 'preact';
import { host, keep, kept } from './host.js';
import { keepLast, lastKept } from './last.js';
import { type Drawn, readToPage, type ToPage } from './messages.js';
import { forgetMoves } from './move.js';
import { Page, pieceAround } from './page.js';
import { reuse } from './reuse.js';
import { adoptStyles } from './styles.js';
import { tipId, type TipShown } from './tip.js';
import { revealLit, revealStation } from './reveal.js';

/** A pointer that only passes over a piece asks for nothing. */
const REST = 250;
/** Time to move from a piece to its figures. */
const GRACE = 200;

let shown: Drawn | undefined;
/** With numbers that are tried and not written yet. */
let tried: Drawn | undefined;
let sliding: Setting | undefined;
let isTrying = false;
let nothing: string | undefined;
let lit: readonly PieceRef[] = [];
let tip: TipShown | undefined;
let pointed: Element | undefined;
let waiting = 0;
let station: string | undefined;
let hasScrolled = false;
const isBack = kept() !== undefined;
let hasLit = false;

const root = document.getElementById('page')!;

window.addEventListener('message', ({ data }) => {
  const message = readToPage(data);
  if (message) hear(message);
});

function hear(message: ToPage): void {
  switch (message.type) {
    case 'show':
      if (kept()?.uri !== message.uri) keep({ uri: message.uri });
      take(message.result);
      tried = undefined;
      if (!isTrying) sliding = undefined;
      else if (sliding) onTry(sliding);
      forgetMoves();
      draw();
      if (tip && pointed) host.postMessage({ type: 'figures', piece: tip.piece });
      return afterDrawing();
    case 'tried':
      if (sliding && message.result.is === 'booth') tried = reuse(shown, message.result);
      return draw();
    case 'lit': {
      const isNew = keysOf(message.pieces) !== keysOf(lit);
      lit = reuse(lit, message.pieces);
      draw();
      // A page that comes back stays where it was.
      if (isNew && (hasLit || !isBack)) revealLit();
      hasLit = true;
      if (isNew && !document.hasFocus()) onPoint(undefined);
      return;
    }
    case 'figures':
      return showTip(message.piece, message.markdown);
    case 'showSide':
      station = message.workstation;
      return afterDrawing();
  }
}

document.addEventListener('pointerover', ({ target }) => {
  const figures = (target as Element | null)?.closest(`#${tipId}`);
  onPoint(pieceAround(target) ?? figures ?? undefined);
});
for (const type of ['pointerout', 'mouseout'] as const)
  window.addEventListener(type, ({ relatedTarget }) => relatedTarget === null && onPoint(undefined));
window.addEventListener(
  'scroll',
  () => {
    if (hasScrolled) keep({ scroll: window.scrollY });
    if (!tip) return;
    if (pointed === document.activeElement) tip = { ...tip };
    else onPoint(undefined);
    draw();
  },
  { passive: true },
);

/** Keeps what is drawn, marked stale, while there is nothing newer to draw. */
function take(result: PreviewResult): void {
  if (result.is === 'booth') {
    // Handles are new ones each time: a move that is under way goes on over them.
    shown = { ...reuse(shown, result), handles: result.handles };
    nothing = undefined;
    if (!result.stale) keepLast(shown);
    return;
  }
  const last = result.because === 'unread' ? (shown ?? lastKept()) : undefined;
  if (last) shown = { ...last, stale: true, handles: [] };
  else {
    shown = undefined;
    nothing =
      result.because === 'unread'
        ? 'This file cannot be read yet. Correct the errors marked in it: the drawings appear here.'
        : 'This file holds pieces for other files, and no booth of its own. Open the preview from a file that has a workstation.';
  }
}

function draw(): void {
  const page = shown && (
    <Page
      result={tried ?? shown}
      sliding={sliding}
      isTrying={isTrying}
      lit={lit}
      tip={tip}
      onPoint={onPoint}
      onTry={onTry}
      onSet={onSet}
      onCancel={onCancel}
    />
  );
  render(page ?? <p role="status">{nothing}</p>, root);
}

function onTry(setting: Setting): void {
  sliding = setting;
  isTrying = true;
  host.postMessage({ type: 'try', settings: [setting] });
  draw();
}

function onSet(settings: readonly Setting[]): void {
  isTrying = false;
  host.postMessage({ type: 'set', settings });
  draw();
}

function onCancel(): void {
  sliding = tried = undefined;
  isTrying = false;
  draw();
}

/** Goes back to where the page was in its last life, or to what was asked to be shown. */
function afterDrawing(): void {
  if (!shown) return;
  if (!hasScrolled) {
    hasScrolled = true;
    window.scrollTo(0, kept()?.scroll ?? 0);
  }
  if (station === undefined) return;
  revealStation(station);
  station = undefined;
}

function onPoint(anchor: Element | undefined): void {
  if (anchor === pointed || anchor?.id === tipId) {
    if (anchor) clearTimeout(waiting);
    pointed = anchor?.id === tipId ? pointed : anchor;
    return;
  }
  clearTimeout(waiting);
  pointed = anchor;
  if (anchor) waiting = window.setTimeout(() => host.postMessage({ type: 'figures', piece: pieceOf(anchor) }), REST);
  else waiting = window.setTimeout(hideTip, GRACE);
}

function showTip(piece: PieceRef, markdown: string): void {
  if (!pointed || pieceKey(pieceOf(pointed)) !== pieceKey(piece)) return;
  tip = { piece, anchor: pointed, markdown };
  draw();
}

function hideTip(): void {
  if (document.activeElement?.id === tipId) return;
  tip = undefined;
  draw();
}

function pieceOf(anchor: Element): PieceRef {
  return pieceOfKey((anchor as SVGElement).dataset.piece!);
}

function keysOf(pieces: readonly PieceRef[]): string {
  return pieces.map(pieceKey).join();
}

adoptStyles();
host.postMessage({ type: 'ready' });
