import type { Kilograms, Millimetres, Range } from '../units.js';
import type { Given, Named, Origin, Reference } from './given.js';

export interface Desk extends Named {
  /** Along the near edge. */
  readonly width?: Given<Millimetres>;
  /** From the near edge away from the operator. */
  readonly depth?: Given<Millimetres>;
  /** Top of the work surface above the floor; a range means adjustable. */
  readonly height?: Given<Range>;
  readonly top: Given<Millimetres>;
  readonly hanging: readonly Hanging[];
  readonly legs?: Legs;
  /** A panel closes the front below the top, seen from the operator. */
  readonly closed: boolean;
  readonly toeSpace?: ToeSpace;
  /** What the maker lets it carry. */
  readonly rating?: Given<Kilograms>;
}

/** A tray, apron or drawer under the top. */
export interface Hanging {
  readonly kind: 'tray' | 'apron' | 'drawer';
  readonly origin: Origin;
  /** How far it reaches below the underside of the top. */
  readonly drop?: Given<Millimetres>;
  /** From the near edge to its near side. */
  readonly fromEdge: Given<Millimetres>;
  /** From its near side to its far side; without it, to the desk's far edge. */
  readonly depth?: Given<Millimetres>;
}

export interface Legs {
  readonly origin: Origin;
  /** From outer side to outer side, along the near edge. */
  readonly width?: Given<Millimetres>;
  /** From near side to far side. */
  readonly depth?: Given<Millimetres>;
  /** The thickness of one leg, along the near edge. */
  readonly thickness?: Given<Millimetres>;
  /** From the near edge to the legs. */
  readonly inset: Given<Millimetres>;
}

export interface ToeSpace {
  readonly origin: Origin;
  readonly depth?: Given<Millimetres>;
  readonly height?: Given<Millimetres>;
}

export interface Seat extends Named {
  readonly kind: 'stool' | 'chair';
  /** Top of the loaded seat above the floor; a range means adjustable. */
  readonly seat?: Given<Range>;
  readonly depth?: Given<Millimetres>;
  readonly width?: Given<Millimetres>;
  /** Diameter of the base on the floor. */
  readonly base?: Given<Millimetres>;
  readonly footRing?: FootRing;
}

/** A ring or rest for the feet: a height above the floor, or a drop below the seat that moves with it. */
export interface FootRing {
  readonly from: 'floor' | 'seat';
  readonly distance: Given<Millimetres>;
}

export interface Monitor extends Named {
  readonly diagonal?: Given<Millimetres>;
  readonly aspect: Given<{ readonly across: number; readonly down: number }>;
  readonly pixels?: Given<{ readonly across: number; readonly down: number }>;
  /** Size of the smallest text: a font size in pixels, or the height of a capital letter. */
  readonly text?: Given<{ readonly pixels: number } | { readonly capital: Millimetres }>;
  readonly weight?: Given<Kilograms>;
}

export interface Rack extends Named {
  readonly units?: Given<number>;
  readonly width?: Given<Millimetres>;
  readonly depth?: Given<Millimetres>;
  /** What the frame, feet or castors add to the height of the units. */
  readonly frame: Given<Millimetres>;
  /** What plugs and bends need behind it. */
  readonly plugs: Given<Millimetres>;
  readonly under?: { readonly desk: Reference; readonly at: Given<Millimetres>; readonly setback: Given<Millimetres> };
  readonly weight?: Given<Kilograms>;
}

export interface Skirt extends Named {
  readonly on: readonly Reference[];
  readonly sides: Given<readonly ('front' | 'ends' | 'left-end' | 'right-end')[]>;
  readonly drop?: Given<Millimetres>;
  readonly length?: Given<Millimetres>;
  readonly clips?: Given<Millimetres>;
  /** What somebody wrote down of the cloth's flame certificate. */
  readonly flameCertificate?: Given<string>;
}
