import type { Door, Hanging, PlanPoint, Polygon, Posture, Seat, Task } from '../booth.js';
import type { Degrees, Millimetres, Range } from '../units.js';

/**
 * Where everything stands and how everyone sits: what a drawing needs. Of people it holds the average body of what is known, at the seat and
 * desk setting that suits that body best, and how far eye and elbow may lie from it.
 */
export interface SketchFigures {
  readonly plan: PlanSketch;
  /** One for each workstation, person and posture whose heights are known. */
  readonly sides: readonly SideSketch[];
  /** Lines of sight to the stage, one for each workstation, person and posture. */
  readonly sights: readonly StageSight[];
  readonly hall: HallSketch;
}

export type Segment = readonly [PlanPoint, PlanPoint];

/** The room and what stands in it, seen from above; pieces, occupied seats and door swings are in the layout. */
export interface PlanSketch {
  /** From its front edge to the stage wall, or `STAGE_DEPTH` deep where the room's depth is not said. */
  readonly stage?: { readonly outline: Polygon; readonly widthIsSaid: boolean };
  readonly doors: readonly DoorSketch[];
  /** Lines of the backs of seats, the nearest row first. */
  readonly rows: readonly Segment[];
  readonly balcony?: Segment;
  readonly wheelchairSpaces: readonly { readonly name: string; readonly outline: Polygon }[];
  readonly watchers: readonly { readonly name: string; readonly at: PlanPoint }[];
  readonly places: readonly PlaceSketch[];
  readonly walkways: readonly { readonly name: string; readonly across: Segment }[];
  readonly skirts: readonly { readonly name: string; readonly runs: readonly Segment[] }[];
}

export interface DoorSketch {
  readonly name: string;
  readonly opening: Segment;
  readonly opens: Door['opens']['value'];
  readonly hinge: PlanPoint;
  /** The end of the leaf when the door stands open at a right angle. */
  readonly leaf: PlanPoint;
}

/** A workstation's place on the plan. */
export interface PlaceSketch {
  readonly workstation: string;
  readonly people: readonly string[];
  /** Under the eyes and shoulders. */
  readonly at: PlanPoint;
  /** Turned from the stage to the right. */
  readonly facing: Degrees;
  /** The middle of the trunk, and how much room the broadest of them takes at elbow height: the average body. */
  readonly trunk?: { readonly at: PlanPoint; readonly breadth: Millimetres; readonly depth: Millimetres };
  readonly seat?: { readonly name: string; readonly at: PlanPoint; readonly base?: Millimetres };
  /** How far hands go from between the shoulders, on the level of the desk: often, and at most for the shortest arm of them. */
  readonly reach: {
    readonly often: Millimetres;
    readonly farthest?: { readonly who: string; readonly radius: Millimetres };
  };
  readonly screens: readonly PlanScreen[];
  readonly controls: readonly { readonly name: string; readonly outline: Polygon }[];
}

export interface PlanScreen {
  readonly name: string;
  readonly face: Segment;
  readonly middle: PlanPoint;
  /** From straight ahead to the screen's middle, to the right. */
  readonly bearing: Degrees;
  readonly main: boolean;
}

/** A place in the upright plane straight ahead of an operator: forward from the desk's near edge, and above the floor they stand on. */
export interface SidePoint {
  readonly x: Millimetres;
  readonly z: Millimetres;
}

/** A height and where it lies for nine in ten: from the 5th to the 95th percentile of all that is possible, each at their own setting. */
export interface Spread {
  readonly height: Millimetres;
  readonly low: Millimetres;
  readonly high: Millimetres;
}

/** One person at one workstation in one posture, from the side. */
export interface SideSketch {
  readonly workstation: string;
  readonly who: string;
  readonly kind: 'operator' | 'crowd';
  readonly posture: Posture;
  readonly task: Task;
  readonly body: BodySketch;
  readonly eye: Spread;
  readonly elbow: Spread;
  /** Negative if the hands work below the elbow. */
  readonly workAboveElbow: Millimetres;
  readonly desk: DeskProfile;
  readonly seat?: SeatProfile;
  readonly screens: readonly SideScreen[];
  readonly controls: readonly {
    readonly name: string;
    readonly from: Millimetres;
    readonly to: Millimetres;
    readonly height: Millimetres;
  }[];
  /** Between the thigh and what is lowest above it; `room` is negative if they meet. */
  readonly thighRoom?: {
    readonly x: Millimetres;
    readonly thigh: Millimetres;
    readonly underside: Millimetres;
    readonly room: Millimetres;
    /** Where the check is decided by the least gap for anyone, and not by this thigh: the seat, the gap from there, and what is wanted. */
    readonly least?: { readonly seat: Millimetres; readonly gap: Millimetres; readonly wanted: Millimetres };
  };
  /** What is free under the desk at the knees: from the near edge to what ends it, and from side to side. */
  readonly kneeRoom?: { readonly deep: Millimetres; readonly wide: Millimetres; readonly end: string };
  /** The cloth on the desk's far edge, at the desk's setting. */
  readonly skirts: readonly {
    readonly name: string;
    readonly x: Millimetres;
    readonly top: Millimetres;
    readonly hem: Millimetres;
  }[];
}

/**
 * A jointed figure. Its heights and lengths are the body's own dimensions; how far the trunk leans and where a joint lies inside its limb are
 * drawn, not measured.
 */
export interface BodySketch {
  readonly crown: SidePoint;
  readonly eye: SidePoint;
  readonly neck: SidePoint;
  /** Its bony top. */
  readonly shoulder: SidePoint;
  /** Its underside. */
  readonly elbow: SidePoint;
  /** The fingertips, from below. */
  readonly hand: SidePoint;
  readonly hip: SidePoint;
  readonly knee: SidePoint;
  readonly ankle: SidePoint;
  readonly heel: SidePoint;
  readonly toe: SidePoint;
  /** From back to belly. */
  readonly trunk: Millimetres;
  /** From the seat to the top of the thigh. */
  readonly thigh: Millimetres;
  /** How far the soles hang above what should carry them; 0 if they rest. */
  readonly feetHang: Millimetres;
}

export interface DeskProfile {
  readonly name: string;
  readonly height: Millimetres;
  readonly range: Range;
  readonly top: Millimetres;
  readonly depth?: Millimetres;
  /** Height of the hands. */
  readonly work: Millimetres;
  readonly hanging: readonly {
    readonly kind: Hanging['kind'];
    readonly from: Millimetres;
    readonly to: Millimetres;
    readonly drop: Millimetres;
  }[];
  readonly legs?: { readonly from: Millimetres; readonly to: Millimetres; readonly thickness: Millimetres };
  /** A closed front at the near edge, with what it leaves for the toes. */
  readonly front?: { readonly toeDepth: Millimetres; readonly toeHeight: Millimetres };
}

export interface SeatProfile {
  readonly name: string;
  readonly kind: Seat['kind'];
  readonly height: Millimetres;
  readonly range: Range;
  /** From its back to its front edge. */
  readonly pan: { readonly from: Millimetres; readonly to: Millimetres; readonly depthIsSaid: boolean };
  readonly base?: Millimetres;
  /** Height of the foot ring. */
  readonly ring?: Millimetres;
}

/** A screen swung into the plane of the drawing, so that distance and angles are the true ones. */
export interface SideScreen {
  readonly name: string;
  readonly main: boolean;
  readonly bearing: Degrees;
  readonly top: SidePoint;
  readonly centre: SidePoint;
  readonly bottom: SidePoint;
  /** On an arm: its bottom edge at its lowest and its top edge at its highest, above the floor. */
  readonly reach?: Range;
  /** From the eye to the centre. */
  readonly distance: Millimetres;
  /** Elevation of the centre and of the top, seen from the eye. */
  readonly gaze: Degrees;
  readonly gazeTop: Degrees;
}

/** The lowest that one person sees of the stage, and what decides it. Heights are above the hall's floor. */
export interface StageSight {
  readonly workstation: string;
  readonly who: string;
  readonly posture: Posture;
  readonly eye: PlanPoint & { readonly z: Millimetres };
  /** Where the line meets the stage's front edge. */
  readonly lands: PlanPoint & { readonly z: Millimetres };
  /** How steeply the line rises from the eye, seen from the side. */
  readonly rise: Degrees;
  /** Above the stage's floor; 0 if the floor itself is seen. */
  readonly above: Millimetres;
  /** What the line passes over, if anything hides the floor. */
  readonly over?: PlanPoint & { readonly z: Millimetres; readonly what: string };
  /** Screens that the person sets lower on their arms for it than they are drawn. */
  readonly lowered: readonly string[];
}

/** The hall from the side: `y` from the back wall as on the plan, `z` above the hall's floor. */
export interface HallSketch {
  readonly depth?: Millimetres;
  readonly height?: Millimetres;
  readonly stage?: { readonly edge: Millimetres; readonly height?: Millimetres };
  readonly balcony?: { readonly edge: Millimetres; readonly height?: Millimetres };
  readonly blocks: readonly HallBlock[];
  readonly rows: readonly { readonly y: Millimetres; readonly top: Millimetres; readonly standing: boolean }[];
}

export interface HallBlock {
  readonly name: string;
  readonly kind: 'desk' | 'rack' | 'column' | 'platform' | 'screen';
  /** Of a screen: where it stands. */
  readonly workstation?: string;
  readonly y: Range;
  readonly z: Range;
}

/** How deep a stage is drawn where the file does not say where the room ends behind it. */
export const STAGE_DEPTH: Millimetres = 2000;
