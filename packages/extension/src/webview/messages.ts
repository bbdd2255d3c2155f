import {
  type Handle,
  pieceKinds,
  type PieceRef,
  type PreviewResult,
  type Setting,
} from '@boothwright/language/protocol';
import * as v from 'valibot';

/*
 * Nothing that comes over the border between the extension and the preview's page is believed unread. What is of another shape is
 * undefined here, and whoever reads it does nothing.
 */

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
  /** The last drawing of a text without errors, for a window that is loaded anew while the text has some. */
  readonly last?: LastGood;
}

export interface LastGood {
  /** Of the extension: another one may draw from other data. */
  readonly version: string;
  readonly result: Drawn;
}

export type Drawn = Extract<PreviewResult, { is: 'booth' }>;

export function readToPage(message: unknown): ToPage | undefined {
  return read(toPage, message);
}

export function readFromPage(message: unknown): FromPage | undefined {
  return read(fromPage, message);
}

export function readPageState(state: unknown): PageState | undefined {
  return read(pageState, state);
}

/** Names are bounded by the language, identifiers hold a few of them, figures are a page of Markdown. */
const longest = { name: 2000, id: 10_000, markdown: 500_000 } as const;
/** Millimetres and CSS pixels: farther is no place in a hall or on a page. */
const FARTHEST = 10_000_000;
/** More drawings than a page can show. */
const MOST_DRAWINGS = 5000;
/** More pieces, and numbers of them, than the language lets a booth have. */
const MOST_PIECES = 100_000;

const name = v.pipe(v.string(), v.maxLength(longest.name));
const id = v.pipe(v.string(), v.maxLength(longest.id));
/** Finite, as every number with both bounds is. */
const length = v.pipe(v.number(), v.minValue(-FARTHEST), v.maxValue(FARTHEST));

const piece: v.GenericSchema<unknown, PieceRef> = v.strictObject({
  kind: v.picklist(pieceKinds),
  name: v.exactOptional(name),
  workstation: v.exactOptional(name),
});
const pieces = v.pipe(v.array(piece), v.maxLength(MOST_PIECES));

const setting: v.GenericSchema<unknown, Setting> = v.strictObject({ handle: id, value: length });
const settings = v.pipe(v.array(setting), v.minLength(1), v.maxLength(10));

const handle: v.GenericSchema<unknown, Handle> = v.strictObject({
  id,
  is: v.picklist(['place', 'height']),
  pieces,
  says: id,
  value: length,
  told: name,
  min: length,
  max: length,
  step: v.pipe(length, v.gtValue(0)),
  way: v.exactOptional(v.strictObject({ x: length, y: length })),
  workstation: v.exactOptional(name),
});

const isObject = (value: unknown) => typeof value === 'object' && value !== null && !Array.isArray(value);

const drawn = v.strictObject({
  is: v.literal('booth'),
  /** The server's own, and drawn as elements: what is in it is not read again. */
  assessment: v.custom<Drawn['assessment']>(isObject),
  stale: v.boolean(),
  handles: v.pipe(v.array(handle), v.maxLength(MOST_PIECES)),
});

const result: v.GenericSchema<unknown, PreviewResult> = v.variant('is', [
  drawn,
  v.strictObject({ is: v.literal('nothing'), because: v.picklist(['unread', 'no booth']) }),
]);

const toPage: v.GenericSchema<unknown, ToPage> = v.variant('type', [
  v.strictObject({ type: v.literal('show'), uri: id, result }),
  v.strictObject({ type: v.literal('tried'), result }),
  v.strictObject({ type: v.literal('lit'), pieces }),
  v.strictObject({
    type: v.literal('figures'),
    piece,
    markdown: v.pipe(v.string(), v.maxLength(longest.markdown)),
  }),
  v.strictObject({ type: v.literal('showSide'), workstation: name }),
]);

const fromPage: v.GenericSchema<unknown, FromPage> = v.variant('type', [
  v.strictObject({ type: v.literal('ready') }),
  v.strictObject({ type: v.literal('goTo'), piece }),
  v.strictObject({ type: v.literal('figures'), piece }),
  v.strictObject({ type: v.literal('try'), settings }),
  v.strictObject({ type: v.literal('set'), settings }),
]);

const perDrawing = <T>(value: v.GenericSchema<unknown, T>) =>
  v.pipe(v.record(name, value), v.maxEntries(MOST_DRAWINGS));

const pageState: v.GenericSchema<unknown, PageState> = v.strictObject({
  uri: id,
  zooms: perDrawing(v.pipe(v.number(), v.minValue(1), v.maxValue(8))),
  scroll: v.pipe(length, v.minValue(0)),
  reached: perDrawing(id),
  last: v.exactOptional(v.strictObject({ version: name, result: drawn })),
});

function read<T>(schema: v.GenericSchema<unknown, T>, value: unknown): T | undefined {
  const { success, output } = v.safeParse(schema, value, { abortEarly: true });
  return success ? output : undefined;
}
