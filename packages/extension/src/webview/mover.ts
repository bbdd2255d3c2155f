import type { Handle, Setting } from '@boothwright/language/protocol';
import { type DisplayUnit, formatLength, pieceOfKey } from '@boothwright/report/preview';
import { keyTaken, wayOf } from './keys.js';
import { drag, forgetMoves, Move, placesOf } from './move.js';

/** Keys that follow each other faster than this write one change, in milliseconds. */
const PAUSE = 700;

/** Moves pieces over a plan by pointer and by keys; what is let go is written as one change. */
export class Mover {
  private byKeys: { readonly piece: Element; readonly move: Move } | undefined;
  private waiting = 0;

  constructor(
    private readonly show: DisplayUnit,
    private readonly handles: readonly Handle[],
    /** Says in words where a piece would stand; nothing once that is written or taken back. */
    private readonly tell: (words: string | undefined) => void,
    private readonly write: (settings: readonly Setting[]) => void,
  ) {}

  press(event: PointerEvent, piece: SVGElement | undefined): void {
    const move = event.button === 0 && piece && this.moveOf(piece);
    if (!move) return;
    drag(event, piece, move, (isOver) => (isOver ? this.finish(move) : this.say(move)));
  }

  /** Whether the key was one that moves. */
  key(event: KeyboardEvent, piece: SVGElement | undefined): boolean {
    if (event.key === 'Escape' && this.byKeys) {
      this.stop();
      keyTaken(event);
      return true;
    }
    const way = wayOf(event);
    if (!event.altKey || !way || !piece) return false;
    keyTaken(event);
    if (this.byKeys?.piece !== piece) {
      const move = this.moveOf(piece);
      this.byKeys = move && { piece, move };
    }
    if (!this.byKeys) return true;
    const { move } = this.byKeys;
    move.step(...way);
    this.say(move);
    clearTimeout(this.waiting);
    this.waiting = window.setTimeout(() => this.finish(move), PAUSE);
    return true;
  }

  private moveOf(piece: SVGElement): Move | undefined {
    if (!piece.closest('.booth-plan, .room-plan')) return undefined;
    const places = placesOf(pieceOfKey(piece.dataset.piece!), this.handles);
    return places.length > 0 ? new Move(piece, places) : undefined;
  }

  private say(move: Move): void {
    const values = move.values().map(({ says, value }) => `${formatLength(value, this.show)} ${says}`);
    this.tell(`Moving: ${values.join(', ')}.`);
  }

  private finish(move: Move): void {
    const settings = move.settings();
    this.byKeys = undefined;
    this.tell(undefined);
    if (settings.length > 0) this.write(settings);
    else forgetMoves();
  }

  private stop(): void {
    clearTimeout(this.waiting);
    this.byKeys = undefined;
    this.tell(undefined);
    forgetMoves();
  }
}
