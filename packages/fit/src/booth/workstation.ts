import type { Degrees, Kilograms, Millimetres, Range } from '../units.js';
import type { Given, Named, Origin, Reference } from './given.js';

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

/** A monitor as it stands or hangs at one workstation. */
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
  /** A range means an arm, on which each sets it to their own eyes. */
  readonly distance: Given<Range>;
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
