import type { Degrees, DisplayUnit, Kilograms, Millimetres, Range, Share, Years } from './units.js';
import type { DimensionName, Sex } from './bodies/dimensions.js';

/**
 * The Booth: what a booth file says, resolved. Lengths are millimetres, names are bound (by name), a default is marked
 * as a default, and every value carries the place in the text that gave it. The computation never reads that place; it
 * only hands it back, so that a face can point at it.
 */
export interface Booth {
  readonly name: string;
  readonly origin?: Origin;
  /** The unit that findings are written in. */
  readonly show: DisplayUnit;
  readonly limits: LimitProfile;
  /** What a shoe adds to every height measured from the floor, standing or seated. */
  readonly shoe: Given<Millimetres>;
  /** What a relaxed sitter loses of erect sitting eye and shoulder height. */
  readonly slump: Given<Millimetres>;
  readonly overrides: readonly LimitOverride[];
  readonly accepted: readonly Acceptance[];
  readonly room?: Room;
  readonly operators: readonly Operator[];
  readonly crowds: readonly Crowd[];
  readonly desks: readonly Desk[];
  readonly seats: readonly Seat[];
  readonly monitors: readonly Monitor[];
  readonly workstations: readonly Workstation[];
  readonly walkways: readonly Walkway[];
  readonly racks: readonly Rack[];
  readonly skirts: readonly Skirt[];
  readonly platforms: readonly Platform[];
  readonly cables: readonly Cable[];
  readonly placements: readonly Placement[];
}

/** A zero-based place in a text; `character` counts UTF-16 units. */
export interface TextPosition {
  readonly line: number;
  readonly character: number;
}

/** Where in which text something was said. */
export interface Origin {
  readonly uri: string;
  readonly start: TextPosition;
  readonly end: TextPosition;
}

/** A value, where it was said, and whether nobody said it. */
export interface Given<T> {
  readonly value: T;
  /** The value's own text; absent for a default. */
  readonly origin?: Origin;
  /** True if the file is silent and the value is the language's default. */
  readonly isDefault: boolean;
}

export type LimitProfile = 'us' | 'uk' | 'generic';

/** The file holds one check to a number of its own. */
export interface LimitOverride {
  readonly check: string;
  readonly value: Millimetres;
  readonly reason: string;
  readonly origin: Origin;
}

/** A finding that is tolerated on purpose. */
export interface Acceptance {
  readonly check: string;
  /** The subject's name, if the acceptance is for one subject only. */
  readonly subject?: string;
  readonly reason: string;
  readonly origin: Origin;
}

export interface Named {
  readonly name: string;
  /** The place of the name in its declaration. */
  readonly origin: Origin;
}

export type WallName = 'back-wall' | 'left-wall' | 'right-wall' | 'stage-wall';

/** The room. Plan x runs from the left wall, y from the back wall, as an operator who faces the stage sees them. */
export interface Room {
  readonly origin: Origin;
  readonly width?: Given<Millimetres>;
  readonly depth?: Given<Millimetres>;
  readonly height?: Given<Millimetres>;
  readonly occupants?: Given<number>;
  /** Sprinklers throughout. */
  readonly sprinklers: boolean;
  /** An emergency voice and alarm communication system. */
  readonly voiceAlarm: boolean;
  readonly stage?: Stage;
  readonly seating?: Seating;
  readonly balcony?: Balcony;
  readonly doors: readonly Door[];
  readonly columns: readonly Column[];
  readonly wheelchairSpaces: readonly FloorArea[];
  /** People who look at the stage from behind or beside the booth. */
  readonly watchers: readonly Watchers[];
}

export interface Stage {
  readonly origin: Origin;
  /** From the back wall to the stage's front edge. */
  readonly edge?: Given<Millimetres>;
  readonly height?: Given<Millimetres>;
  readonly width?: Given<Millimetres>;
}

export interface Seating {
  readonly origin: Origin;
  /** From the front of the booth to the backs of the nearest row. */
  readonly first?: Given<Millimetres>;
  /** Row to row. */
  readonly pitch?: Given<Millimetres>;
  readonly rows?: Given<number>;
  /** The people there stand at times. */
  readonly standing: boolean;
}

export interface Balcony {
  readonly origin: Origin;
  /** From the back wall to the balcony's front edge. */
  readonly edge?: Given<Millimetres>;
  /** The height of its underside. */
  readonly height?: Given<Millimetres>;
}

export interface Door extends Named {
  readonly wall?: Given<WallName>;
  /** Along the wall from the left wall, or from the back wall, to the opening's nearer side. */
  readonly at?: Given<Millimetres>;
  readonly width?: Given<Millimetres>;
  readonly opens: Given<'in' | 'out'>;
  /** The hinge's side, for a person who stands in the room and faces the door. */
  readonly hinge: Given<'left' | 'right'>;
}

export interface Column extends Named {
  readonly at?: Given<PlanPoint>;
  readonly width?: Given<Millimetres>;
  readonly depth?: Given<Millimetres>;
}

export interface FloorArea extends Named {
  readonly at?: Given<PlanPoint>;
  readonly width: Given<Millimetres>;
  readonly depth: Given<Millimetres>;
}

export interface Watchers extends Named {
  readonly at?: Given<PlanPoint>;
  readonly posture: Given<'sit' | 'stand' | 'wheelchair'>;
}

export interface PlanPoint {
  readonly x: Millimetres;
  readonly y: Millimetres;
}

/** A person of whom something is known. */
export interface Operator extends Named {
  readonly sex?: Given<Sex>;
  /** Measured dimensions: millimetres, `weight` in kilograms. */
  readonly measured: Partial<Record<DimensionName, Given<number>>>;
  /** The stature is what the person says, not what a tape says. */
  readonly statureIsReported: boolean;
}

/** People who are not known yet. */
export interface Crowd extends Named {
  readonly women: Given<Share>;
  /** The share of the crowd that wants to be served. */
  readonly cover: Given<Share>;
  readonly stature?: Given<Range>;
  /** Completed years of age. */
  readonly ages?: Given<{ readonly min: Years; readonly max: Years }>;
}

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

export type Posture = 'sit' | 'stand';
export type Task = 'controls' | 'writing' | 'keyboard' | 'precision';

export interface Workstation extends Named {
  readonly desk?: Reference;
  readonly seat?: Reference;
  /** Operators and crowds, in the order of the text. */
  readonly people: readonly Reference[];
  readonly postures: Given<readonly Posture[]>;
  readonly task: Given<Task>;
  /** Along the desk from its left end to the operator's middle; without it, the desk's middle. */
  readonly at?: Given<Millimetres>;
  /** Height of the hands above the desk: a keyboard's or a console's thickness. */
  readonly working: Given<Millimetres>;
  /** How far the eye and shoulders stand in front of the near edge: positive is over the desk. */
  readonly lean: Given<Millimetres>;
  readonly screens: readonly ScreenUse[];
  readonly controls: readonly Control[];
}

/** A name used, and where. */
export interface Reference {
  readonly name: string;
  readonly origin: Origin;
}

/** A monitor as it stands at one workstation. */
export interface ScreenUse {
  readonly monitor: Reference;
  readonly origin: Origin;
  /** From the desk's near edge to the screen's face, square to the edge. */
  readonly setback?: Given<Millimetres>;
  /** Along the desk from its left end to the screen's middle. */
  readonly at?: Given<Millimetres>;
  /** Which line of the screen has which height, over what. */
  readonly height?: ScreenHeight;
  /** The bearing of the screen's middle from straight ahead, to the right. */
  readonly turn?: Given<Degrees>;
  /** The screen's face leans back from upright. */
  readonly tilt: Given<Degrees>;
  /** The screen that is watched most of the time. */
  readonly main: Given<boolean>;
  /** What the arm it hangs on may carry. */
  readonly rating?: Given<Kilograms>;
}

export interface ScreenHeight {
  readonly line: 'bottom' | 'centre' | 'top';
  readonly over: 'desk' | 'floor';
  readonly distance: Given<Millimetres>;
}

export interface Control extends Named {
  /** Along the desk from its left end to the control's middle. */
  readonly at?: Given<Millimetres>;
  /** From the near edge to the control's near side. */
  readonly setback?: Given<Millimetres>;
  readonly depth: Given<Millimetres>;
  readonly width: Given<Millimetres>;
  /** Height above the desk. */
  readonly height: Given<Millimetres>;
  readonly use: Given<'constant' | 'occasional'>;
  readonly weight?: Given<Kilograms>;
}

/** Something a walkway runs along: a wall, the booth as a whole, or one piece. */
export type Side =
  | { readonly kind: 'landmark'; readonly name: WallName | 'booth' | 'stage' | 'seating'; readonly origin: Origin }
  | { readonly kind: 'piece'; readonly name: string; readonly origin: Origin };

export interface Walkway extends Named {
  readonly between?: readonly [Side, Side];
  /** How many people may need it at once. */
  readonly serves?: Given<number>;
  readonly users: Given<'public' | 'operators'>;
  readonly seats: Given<'none' | 'one-side' | 'both-sides'>;
  /** The walkway turns back round the booth's end. */
  readonly turns: boolean;
  /** Clear width beside the booth's end, where the walkway turns, if something narrows it that the plan does not show. */
  readonly atTurn?: Given<Millimetres>;
  /** Clear width after the turn, if something narrows it that the plan does not show. */
  readonly afterTurn?: Given<Millimetres>;
  /** Floor to the lowest thing overhead: a beam, a balcony, a cable. */
  readonly headroom?: Given<Millimetres>;
  /** Short narrow points that the plan does not show. */
  readonly pinches?: readonly Pinch[];
  /** What sticks out into the walkway from one of its sides, and the plan does not show. */
  readonly projections?: readonly Projection[];
}

/** A short narrow point of a walkway. */
export interface Pinch {
  readonly origin: Origin;
  /** Along the walkway, from wherever it is counted to where the pinch begins. */
  readonly at?: Given<Millimetres>;
  /** Clear width. */
  readonly width?: Given<Millimetres>;
  /** Along the walkway. */
  readonly length?: Given<Millimetres>;
}

/** Something that sticks out into a walkway, off the floor. */
export interface Projection {
  readonly origin: Origin;
  /** Floor to its lower edge. */
  readonly height?: Given<Millimetres>;
  /** How far it sticks out. */
  readonly reach?: Given<Millimetres>;
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

export interface Platform extends Named {
  readonly at?: Given<PlanPoint>;
  readonly width?: Given<Millimetres>;
  readonly depth?: Given<Millimetres>;
  readonly height?: Given<Millimetres>;
  readonly guard?: Given<Millimetres>;
  readonly steps?: {
    readonly origin: Origin;
    readonly risers?: Given<number>;
    readonly tread?: Given<Millimetres>;
    readonly handrail: boolean;
  };
  readonly ramp?: {
    readonly origin: Origin;
    readonly length?: Given<Millimetres>;
    readonly width?: Given<Millimetres>;
  };
}

export interface Cable extends Named {
  readonly across?: Reference;
  readonly height?: Given<Millimetres>;
  readonly cover: Given<'none' | 'bevelled' | 'ramp'>;
  /** Length of the slope on each side of a ramped cover. */
  readonly slope?: Given<Millimetres>;
}

/** Pieces on the floor: one piece, or several end to end along their near edges from left to right. */
export interface Placement {
  readonly pieces: readonly Reference[];
  readonly origin: Origin;
  /** The near left corner of the first piece. */
  readonly at: Given<PlanPoint>;
  /** Which way their operators face, turned from the stage to the right. */
  readonly turn: Given<Degrees>;
}
