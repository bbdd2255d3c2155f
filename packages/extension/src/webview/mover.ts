import type { Handle, Setting } from '@boothwright/language/protocol';
import { type DisplayUnit, formatLength, pieceOfKey } from '@boothwright/report/preview';
import { keyTaken, wayOf } from './keys.js';
import { drag, forgetMoves, Move, placesOf } from './move.js';

/** Keys that follow each other faster than this write one change, in milliseconds. */
const PAUSE = 700;

/** Moves pieces over a plan by pointer and by keys; what is let go is written as one change. */
export class Mover {
  private show: DisplayUnit = 'in';
  private handles: readonly Handle[] = [];
  /** The last one, until the drawing shows what it wrote. */
  private move: Move | undefined;
  /** Whether that is being made, and not written yet. */
  private isUnderway = false;
  private waiting = 0;

  constructor(
    /** Says in words where a piece would stand; nothing once that is written or taken back. */
    private readonly tell: (words: string | undefined) => void,
    private readonly write: (settings: readonly Setting[]) => void,
  ) {}

  /** The drawing was made anew, in this unit and with these numbers; a move that is under way goes on. */
  drawn(show: DisplayUnit, handles: readonly Handle[]): void {
    this.show = show;
    this.handles = handles;
    if (this.isUnderway) this.move?.drawnAnew(handles);
    else this.move = undefined;
  }

  press(event: PointerEvent, piece: SVGElement | undefined): void {
    const move = event.button === 0 && piece && this.take(piece);
    if (!move) return;
    move.hold();
    drag(event, piece, move, (isOver) => (isOver ? this.finish() : this.say(move)));
  }

  /** Whether the key was one that moves. */
  key(event: KeyboardEvent, piece: SVGElement | undefined): boolean {
    if (event.key === 'Escape' && this.isUnderway) {
      this.stop();
      keyTaken(event);
      return true;
    }
    const way = wayOf(event);
    if (!event.altKey || !way || !piece) return false;
    keyTaken(event);
    const move = this.take(piece);
    if (!move) return true;
    move.step(...way);
    this.say(move);
    clearTimeout(this.waiting);
    this.waiting = window.setTimeout(() => this.finish(), PAUSE);
    return true;
  }

  /** Writes at once what keys have moved. */
  leave(): void {
    if (this.waiting !== 0) this.finish();
  }

  /** A new move of a piece, or the last one if the drawing does not show yet what that wrote. */
  private take(piece: SVGElement): Move | undefined {
    if (!piece.closest('.booth-plan, .room-plan')) return undefined;
    const places = placesOf(pieceOfKey(piece.dataset.piece!), this.handles);
    if (this.move?.sets(places)) return this.move;
    if (this.isUnderway) this.finish();
    return (this.move = places.length > 0 ? new Move(piece, places) : undefined);
  }

  private say(move: Move): void {
    this.isUnderway = true;
    const values = move.values().map(({ says, value }) => `${formatLength(value, this.show)} ${says}`);
    this.tell(`Moving: ${values.join(', ')}.`);
  }

  private finish(): void {
    const settings = this.move?.settings() ?? [];
    this.end();
    if (settings.length > 0) this.write(settings);
    else this.forget();
  }

  private stop(): void {
    this.end();
    this.forget();
  }

  private end(): void {
    clearTimeout(this.waiting);
    this.waiting = 0;
    this.isUnderway = false;
    this.tell(undefined);
  }

  private forget(): void {
    this.move = undefined;
    forgetMoves();
  }
}
