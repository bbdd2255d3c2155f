import type { PieceRef, PreviewResult, Setting } from '@boothwright/language/protocol';

/** What the extension tells the preview's page. */
export type ToPage =
  | { readonly type: 'show'; readonly uri: string; readonly result: PreviewResult }
  /** What would be drawn with numbers that are tried, and are in no text yet. */
  | { readonly type: 'tried'; readonly result: PreviewResult }
  /** The cursor in the text is on these. */
  | { readonly type: 'lit'; readonly pieces: readonly PieceRef[] }
  | { readonly type: 'figures'; readonly piece: PieceRef; readonly markdown: string }
  | { readonly type: 'showSide'; readonly workstation: string };

/** What the page tells the extension. */
export type FromPage =
  | { readonly type: 'ready' }
  | { readonly type: 'goTo'; readonly piece: PieceRef }
  | { readonly type: 'figures'; readonly piece: PieceRef }
  | { readonly type: 'try'; readonly settings: readonly Setting[] }
  | { readonly type: 'set'; readonly settings: readonly Setting[] };

/** What the page keeps from one life to the next. */
export interface PageState {
  /** The URI of the booth file's text document. */
  readonly uri: string;
  /** By drawing; 1 if not said. */
  readonly zooms: Readonly<Record<string, number>>;
  readonly scroll: number;
  /** By drawing, the key of the thing that the keyboard was on last. */
  readonly reached: Readonly<Record<string, string>>;
}
