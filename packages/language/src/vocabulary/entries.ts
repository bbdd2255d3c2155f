import type { DimensionName, Millimetres, Years } from '@boothwright/fit';

/** A keyword that opens a block; `screen` is a monitor as it stands at a workstation, `place` a placement. */
export type Kind = keyof typeof kinds;

/** Every kind of block, and how it is called in a sentence. */
export const kinds = {
  booth: 'booth',
  room: 'room',
  operator: 'operator',
  crowd: 'crowd',
  desk: 'desk',
  stool: 'stool',
  chair: 'chair',
  monitor: 'monitor',
  workstation: 'workstation',
  walkway: 'walkway',
  rack: 'rack',
  skirt: 'skirt',
  platform: 'platform',
  cable: 'cable',
  place: 'placement',
  stage: 'stage',
  seating: 'seating',
  balcony: 'balcony',
  door: 'door',
  column: 'column',
  'wheelchair-space': 'wheelchair space',
  watchers: 'group of watchers',
  tray: 'tray',
  apron: 'apron',
  drawer: 'drawer',
  legs: 'leg frame',
  'toe-space': 'toe space',
  steps: 'flight of steps',
  ramp: 'ramp',
  control: 'control',
  pinch: 'pinch',
  projection: 'projection',
  screen: 'screen of a workstation',
} as const;

/** The kinds of things that stand on the floor and that others are measured from. */
export const pieceKinds: readonly Kind[] = ['desk', 'rack', 'platform', 'column', 'skirt'];

/** One kind of block: where it stands, what it is called by and what it can say. */
export interface BlockEntry {
  readonly kind: Kind;
  /** The keyword as typed. */
  readonly word: string;
  readonly within: 'file' | Kind;
  /** `title`: a text in quotes. `reference`: the name of something declared elsewhere. */
  readonly naming: 'title' | 'name' | 'none' | 'reference';
  /** At most one in its container. */
  readonly once?: boolean;
  /** One or two sentences for the hover and the documentation. */
  readonly says: string;
  readonly example: string;
  readonly properties: readonly PropertyEntry[];
}

export interface PropertyEntry {
  readonly key: string;
  /** Other spellings. */
  readonly aliases?: readonly string[];
  readonly shape: Shape;
  readonly says: string;
  /** A value as typed; for a flag, nothing. */
  readonly example: string;
  /** What holds if the file is silent, as it would be typed. */
  readonly default?: string;
  /** Properties that share a slot exclude each other. */
  readonly slot?: string;
  /** May be given more than once; the values add up. */
  readonly repeats?: boolean;
  /** The body dimension it measures. */
  readonly dimension?: DimensionName;
}

/** What a property's value looks like. Bounds are the plausible ones: beyond them a slip is likelier than the thing. */
export type Shape =
  | LengthShape
  | { readonly is: 'point'; readonly max: Millimetres }
  | {
      readonly is: 'angle';
      readonly max: number;
      /** The words that say which way; the first is meant if none is said. */
      readonly directions: readonly [string, string];
    }
  | { readonly is: 'share' }
  | { readonly is: 'weight'; readonly min: number; readonly max: number }
  | { readonly is: 'count'; readonly min: number; readonly max: number }
  /** Completed years, one or a range. */
  | { readonly is: 'ages'; readonly min: Years; readonly max: Years }
  | { readonly is: 'text size' }
  | { readonly is: 'aspect' }
  | { readonly is: 'pixels' }
  | { readonly is: 'words'; readonly words: readonly string[]; readonly many?: boolean }
  | { readonly is: 'names'; readonly kinds: readonly Kind[]; readonly many?: boolean }
  | { readonly is: 'wall' }
  | { readonly is: 'sides' }
  | { readonly is: 'flag' }
  | { readonly is: 'text' };

export interface LengthShape {
  readonly is: 'length';
  readonly min: Millimetres;
  readonly max: Millimetres;
  /** A range means adjustable (`allowed`), or is what is wanted (`wanted`). */
  readonly range?: 'allowed' | 'wanted';
  /** The words that say which way; the first is meant if none is said. */
  readonly directions?: readonly [string, string];
  /** What a height may be measured from; the first is meant if none is said. */
  readonly from?: readonly string[];
  /** May be marked `reported`: said by the person, not measured. */
  readonly reported?: boolean;
}

export const length = (min: Millimetres, max: Millimetres, more: Partial<LengthShape> = {}): LengthShape => ({
  is: 'length',
  min,
  max,
  ...more,
});
export const flag: Shape = { is: 'flag' };
export const point: Shape = { is: 'point', max: 200_000 };
export const weight = (max: number, min = 0): Shape => ({ is: 'weight', min, max });
export const count = (min: number, max: number): Shape => ({ is: 'count', min, max });
export const words = (...list: string[]): Shape => ({ is: 'words', words: list });
export const someWords = (...list: string[]): Shape => ({ is: 'words', words: list, many: true });
export const name = (...list: Kind[]): Shape => ({ is: 'names', kinds: list });
export const names = (...list: Kind[]): Shape => ({ is: 'names', kinds: list, many: true });
