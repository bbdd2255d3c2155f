import type { Millimetres, PlanPoint, Years } from '@boothwright/fit';

/** What a property says, in the units of the computation. */
export type Meaning =
  | {
      readonly is: 'length';
      readonly min: Millimetres;
      readonly max: Millimetres;
      readonly direction?: string;
      readonly from?: string;
      readonly reported: boolean;
    }
  | { readonly is: 'point'; readonly point: PlanPoint }
  /** Angle in degrees (negative against the first direction), share, kilograms, count. */
  | { readonly is: 'number'; readonly value: number }
  | { readonly is: 'ages'; readonly min: Years; readonly max: Years }
  | { readonly is: 'text size'; readonly size: { readonly pixels: number } | { readonly capital: Millimetres } }
  | { readonly is: 'pair'; readonly across: number; readonly down: number }
  | { readonly is: 'words'; readonly words: readonly string[] }
  | { readonly is: 'text'; readonly text: string };
