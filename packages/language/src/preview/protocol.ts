import type { Assessment, PieceRef, TextPosition } from '@boothwright/fit';

export { pieceKinds, type PieceKind, type PieceRef } from '@boothwright/fit';

/** What an editor asks for a preview: drawings beside the text. */

/** Asks for what there is to draw of an open file. Params `PreviewParams`, result `PreviewResult | null`: null if it is not open. */
export const previewRequest = 'boothwright/preview';

export interface PreviewParams {
  /** The URI of the booth file's text document. */
  readonly uri: string;
}

export type PreviewResult =
  | {
      readonly is: 'booth';
      /** As far as drawings show it: without the bodies of operators, and of each finding its verdict and subject: its texts are empty. */
      readonly assessment: Assessment;
      /** True if the text cannot be read now, and this is of the last text that could. */
      readonly stale: boolean;
      /** What a drawing can change; nothing while the text cannot be read. */
      readonly handles: readonly Handle[];
    }
  /** The file has errors and could never be read, or it only holds furniture for other files. */
  | { readonly is: 'nothing'; readonly because: 'unread' | 'no booth' };

/** Asks which things of a booth a place in a text speaks of. Params `PiecesAtParams`, result `PieceRef[]`. */
export const piecesAtRequest = 'boothwright/piecesAt';

export interface PiecesAtParams {
  /** The URI of the booth file's text document. */
  readonly booth: string;
  /** The URI of the text document where the place is: the booth's or one that it imports. */
  readonly uri: string;
  readonly position: TextPosition;
}

/** Asks where a thing is declared. Params `PieceParams`, result `Origin | null`. */
export const pieceSourceRequest = 'boothwright/pieceSource';

/** Asks what the text's hover says of a thing. Params `PieceParams`, result `string`: Markdown, empty if it says nothing. */
export const pieceFiguresRequest = 'boothwright/pieceFigures';

export interface PieceParams {
  /** The URI of the booth file's text document. */
  readonly uri: string;
  readonly piece: PieceRef;
}

/** The editor's command that shows a workstation from the side. Its one argument: `ShowSideParams`. */
export const showSideCommand = 'boothwright.showSide';

export interface ShowSideParams {
  readonly uri: string;
  readonly workstation: string;
}

/** A number of the booth that a drawing can change: where a piece stands, or how high something is. */
export interface Handle {
  /** The same for the same number after a change of the text. */
  readonly id: string;
  /** `place`: the pieces move on the plan as it grows, along `way`. `height`: it is seen from the side. */
  readonly is: 'place' | 'height';
  /** What it moves. */
  readonly pieces: readonly PieceRef[];
  /** 'desk Left', 'from the left wall'. */
  readonly says: string;
  /** Millimetres, as are all below. */
  readonly value: number;
  /** The value as it is told, in the unit that the file shows. */
  readonly told: string;
  readonly min: number;
  readonly max: number;
  /** A quarter inch or 5 mm, as the value is written. */
  readonly step: number;
  /** The way that the pieces go on the plan as the number grows; its length is 1. */
  readonly way?: { readonly x: number; readonly y: number };
  /** Of a height: where it is seen from the side. */
  readonly workstation?: string;
}

/** A number as it is to be. */
export interface Setting {
  /** The id of a handle. */
  readonly handle: string;
  /** Millimetres; the nearest whole step is meant. */
  readonly value: number;
}

/** Asks for the edit that sets numbers. Params `SettingsParams`, result `WorkspaceEdit | null`: null if the text has no such number now. */
export const setRequest = 'boothwright/set';

/** Asks for the assessment with the numbers set, and changes nothing. Params `SettingsParams`, result `PreviewResult | null`. */
export const tryRequest = 'boothwright/try';

export interface SettingsParams {
  /** The URI of the booth file's text document. */
  readonly uri: string;
  readonly settings: readonly Setting[];
}
