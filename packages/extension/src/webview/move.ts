import type { Handle, PieceRef, Setting } from '@boothwright/language/protocol';
import { pieceKey } from '@boothwright/report/preview';

/** Less than this, CSS pixels, is a click. */
const CLICK = 4;

/** The numbers that say where a piece stands on a plan; none if nothing in the text can say it. */
export function placesOf(piece: PieceRef, handles: readonly Handle[]): readonly Handle[] {
  const key = pieceKey(piece);
  return handles.filter(({ is, pieces }) => is === 'place' && pieces.some((each) => pieceKey(each) === key));
}

/** The keys of all pieces that can be moved. */
export function keysOfPlaces(handles: readonly Handle[]): readonly string[] {
  return handles.filter(({ is }) => is === 'place').flatMap(({ pieces }) => pieces.map(pieceKey));
}

/** How far a piece is being moved over the plan, before the text is written. */
export class Move {
  private readonly svg: SVGSVGElement;
  /** Millimetres of the plan, from where the drawing has the piece: x to the right, y up. */
  private by = { x: 0, y: 0 };
  /** Where the pointer took hold of it, likewise. */
  private from = this.by;

  constructor(
    piece: Element,
    private handles: readonly Handle[],
  ) {
    this.svg = piece.closest('svg')!;
  }

  /** Whether it sets these numbers. */
  sets(handles: readonly Handle[]): boolean {
    return handles[0]?.id === this.handles[0]?.id;
  }

  /** Takes hold of the piece where it is. */
  hold(): void {
    this.from = this.by;
  }

  /** Moves to a distance from where it was taken hold of, in CSS pixels. */
  to(right: number, down: number): void {
    const perPixel = this.scale * (this.svg.viewBox.baseVal.width / this.svg.getBoundingClientRect().width);
    this.by = { x: this.from.x + right * perPixel, y: this.from.y - down * perPixel };
    this.show();
  }

  /** Goes on over a drawing that was made anew: the piece stays where it was moved to. */
  drawnAnew(all: readonly Handle[]): void {
    const fresh = new Map(all.map((handle) => [handle.id, handle]));
    this.handles = this.handles.map((old) => {
      const now = fresh.get(old.id) ?? old;
      const back = { x: (old.value - now.value) * now.way!.x, y: (old.value - now.value) * now.way!.y };
      this.by = { x: this.by.x + back.x, y: this.by.y + back.y };
      this.from = { x: this.from.x + back.x, y: this.from.y + back.y };
      return now;
    });
    this.show();
  }

  /** Moves one step farther. */
  step(right: number, down: number): void {
    const step = Math.max(...this.handles.map((handle) => handle.step));
    this.by = { x: this.by.x + right * step, y: this.by.y - down * step };
    this.show();
  }

  /** What the text is to say; nothing if the piece is where it was. */
  settings(): readonly Setting[] {
    return this.handles.flatMap((handle) => {
      const value = this.valueOf(handle);
      return Math.abs(value - handle.value) < handle.step / 2 ? [] : [{ handle: handle.id, value }];
    });
  }

  /** Where the piece would stand, number by number. */
  values(): readonly { readonly says: string; readonly value: number }[] {
    return this.handles.map((handle) => ({ says: handle.says, value: this.valueOf(handle) }));
  }

  private valueOf({ value, way, step, min, max }: Handle): number {
    const wanted = value + this.by.x * way!.x + this.by.y * way!.y;
    return Math.min(max, Math.max(min, Math.round(wanted / step) * step));
  }

  private show(): void {
    const shift = this.handles.reduce(
      (sum, handle) => {
        const far = this.valueOf(handle) - handle.value;
        return { x: sum.x + far * handle.way!.x, y: sum.y + far * handle.way!.y };
      },
      { x: 0, y: 0 },
    );
    const keys = new Set(this.handles.flatMap(({ pieces }) => pieces.map(pieceKey)));
    for (const element of this.svg.querySelectorAll<SVGElement>('[data-piece]')) {
      if (!keys.has(element.dataset.piece!)) continue;
      element.dataset.moved = '';
      element.setAttribute('transform', `translate(${shift.x / this.scale} ${-shift.y / this.scale})`);
    }
  }

  /** Millimetres of the plan for a unit of the drawing. */
  private get scale(): number {
    return Number(this.svg.dataset.scale);
  }
}

/** Puts everything back where the drawing has it. */
export function forgetMoves(): void {
  for (const element of document.querySelectorAll('[data-moved]')) {
    element.removeAttribute('data-moved');
    element.removeAttribute('transform');
  }
}

/** Follows the pointer with a piece from where it is pressed; tells how it moves, and when it is let go. */
export function drag(event: PointerEvent, piece: SVGElement, move: Move, tell: (isOver: boolean) => void): void {
  const start = { x: event.clientX, y: event.clientY };
  const far = ({ clientX, clientY }: PointerEvent) => Math.hypot(clientX - start.x, clientY - start.y) >= CLICK;
  let isMoving = false;
  const follow = (moved: PointerEvent) => {
    isMoving ||= far(moved);
    if (!isMoving) return;
    piece.setPointerCapture(event.pointerId);
    move.to(moved.clientX - start.x, moved.clientY - start.y);
    tell(false);
  };
  const stop = new AbortController();
  const end = (isKept: boolean) => {
    stop.abort();
    if (!isMoving) return;
    if (!isKept) move.to(0, 0);
    // The click that a browser makes of press and release would lead away to the source.
    const swallow = (click: Event) => click.stopPropagation();
    window.addEventListener('click', swallow, { capture: true });
    window.setTimeout(() => {
      window.removeEventListener('click', swallow, { capture: true });
      tell(true);
    });
  };
  const { signal } = stop;
  window.addEventListener('pointermove', follow, { signal });
  window.addEventListener('pointerup', () => end(true), { signal });
  window.addEventListener('pointercancel', () => end(false), { signal });
  window.addEventListener('keydown', ({ key }) => key === 'Escape' && end(false), { signal });
}
