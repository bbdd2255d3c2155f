import { withName } from '../lookup.js';
import type { Monitor, Posture, ScreenUse } from '../booth.js';
import type { Body } from '../bodies/body.js';
import { shareOf, type People } from '../bodies/people.js';
import type { Missing } from '../assessment.js';
import { keyOfRules, settingOf, settingsOf, type Heights, type Rule } from '../stations/rules.js';
import {
  heightsOf,
  lacksDeskHeight,
  lacksSeatHeight,
  missing,
  placeAlong,
  type Person,
  type Station,
} from '../stations/station.js';
import { degrees, radians, type Degrees, type Millimetres, type Range, type Share } from '../units.js';
import type { Scene } from './scene.js';

/** Heights above the floor of an eye and of the desk it looks over. */
export interface Look {
  readonly posture: Posture;
  readonly eye: Millimetres;
  readonly desk: Millimetres;
}

/** A person's eye and desk, in one posture: of the mean body, and of everybody the body may be. */
export interface Eyes extends Look {
  readonly station: Station;
  readonly person: Person;
  /** The same for places at which everybody's eyes are the same, if the body is. */
  readonly key: string;
  /** Made when it is asked for. */
  readonly all: AllEyes;
}

/** Heights of the eye and of the desk, and of the eye over the desk: a column of everybody each. */
export interface AllEyes {
  readonly eye: Float64Array;
  readonly desk: Float64Array;
  readonly overDesk: Float64Array;
}

/** Eyes of everyone at a station in each posture it is used in; a posture whose heights are unknown is left out. */
export function eyesAt(scene: Scene, station: Station): readonly Eyes[] {
  return station.workstation.postures.value.flatMap((posture) =>
    station.people.flatMap((person) => eyesOf(scene, station, person, posture) ?? []),
  );
}

const remembered = new WeakMap<Scene, Map<string, Eyes>>();

function eyesOf(scene: Scene, station: Station, person: Person, posture: Posture): Eyes | undefined {
  const heights = heightsOf(station, posture);
  if (!heights) return undefined;
  const ofScene = eyesIn(scene);
  const key = keyOfEyes(station, person, posture);
  const known = ofScene.get(key);
  if (known) return known;
  const rules = scene.rules(station, posture);
  const mean = settingOf(rules, heights, person.dimensions);
  const eyes: Eyes = {
    station,
    person,
    posture,
    eye: eyeAbove(station, posture, mean.seat, person.dimensions),
    desk: mean.desk,
    key: JSON.stringify([posture, station.slump, station.shoe, heights, keyOfRules(rules)]),
    get all() {
      return everybody(this, rules, heights);
    },
  };
  ofScene.set(key, eyes);
  return eyes;
}

/** Lets a scene take over eyes that were found for the same station in another. */
export function adoptEyes(scene: Scene, station: Station, found: readonly Eyes[]): void {
  const ofScene = eyesIn(scene);
  for (const eyes of found)
    ofScene.set(keyOfEyes(station, eyes.person, eyes.posture), {
      ...withoutAll(eyes),
      station,
      get all() {
        return eyes.all;
      },
    });
}

function withoutAll({ person, posture, eye, desk, key }: Eyes) {
  return { person, posture, eye, desk, key };
}

function eyesIn(scene: Scene): Map<string, Eyes> {
  const known = remembered.get(scene) ?? new Map<string, Eyes>();
  remembered.set(scene, known);
  return known;
}

function keyOfEyes(station: Station, person: Person, posture: Posture): string {
  return JSON.stringify([station.name, person.name, posture]);
}

function eyeAbove(
  station: Station,
  posture: Posture,
  seat: Millimetres,
  body: { readonly sittingEyeHeight: number; readonly standingEyeHeight: number },
): Millimetres {
  return posture === 'sit' ? seat + body.sittingEyeHeight - station.slump : body.standingEyeHeight + station.shoe;
}

/** Eye and desk heights of everybody that a body may be; the same as last time if nothing that they depend on changed. */
function everybody({ station, person, posture, key }: Eyes, rules: readonly Rule[], heights: Heights): AllEyes {
  const { people } = person;
  const ofPeople = everybodyOf.get(people) ?? new Map<string, AllEyes>();
  everybodyOf.set(people, ofPeople);
  const known = ofPeople.get(key);
  if (known) return known;
  const { seat, desk } = settingsOf(rules, heights, people);
  const column = people.column(posture === 'sit' ? 'sittingEyeHeight' : 'standingEyeHeight');
  const above = posture === 'sit' ? -station.slump : station.shoe;
  const eye = new Float64Array(people.count);
  const overDesk = new Float64Array(people.count);
  for (let each = 0; each < eye.length; each++) {
    const height = column[each]! + above + (posture === 'sit' ? seat[each]! : 0);
    eye[each] = height;
    overDesk[each] = height - desk[each]!;
  }
  const all = { eye, desk, overDesk };
  if (ofPeople.size >= REMEMBERED_PLACES) ofPeople.clear();
  ofPeople.set(key, all);
  return all;
}

const everybodyOf = new WeakMap<People, Map<string, AllEyes>>();
/** A hundred kilobytes each. */
const REMEMBERED_PLACES = 8;

/** What must be said before an eye height is known. */
export function lacksEyes(station: Station, posture: Posture): Missing | undefined {
  return lacksDeskHeight(station) ?? (posture === 'sit' ? lacksSeatHeight(station) : undefined);
}

/** A screen as its operator meets it: lengths from the eye's place over the near edge. */
export interface View {
  readonly use: ScreenUse;
  readonly name: string;
  readonly monitor: Monitor;
  /** Straight ahead and to the right, from the eye to the middle of the screen. */
  readonly ahead: Millimetres;
  readonly aside: Millimetres;
  /** Level distance. */
  readonly level: Millimetres;
  readonly bearing: Degrees;
  readonly size: { readonly width: Millimetres; readonly height: Millimetres };
  /** From the middle of the picture up to its upper edge, as it leans. */
  readonly half: Millimetres;
  /** From the line whose height the file says up to its middle. */
  readonly toCentre: Millimetres;
  /** Between what heights its middle can be, over what the file measures them from. */
  readonly centre: Range;
  readonly tilt: Degrees;
  /** How far the face is swung from squarely facing the operator. */
  readonly swing: Degrees;
}

/** The screens of a station, or what keeps one from being placed. */
export function viewsAt(station: Station): { readonly views: readonly View[]; readonly gaps: readonly Gap[] } {
  const views: View[] = [];
  const gaps: Gap[] = [];
  for (const use of station.workstation.screens) {
    const monitor = withName(station.booth.monitors, use.monitor.name);
    if (!monitor) continue;
    const lack = lacksOf(use, monitor);
    if (lack) gaps.push({ use, missing: lack });
    else views.push(viewOf(station, use, monitor));
  }
  return { views, gaps };
}

export interface Gap {
  readonly use: ScreenUse;
  readonly missing: Missing;
}

function lacksOf(use: ScreenUse, monitor: Monitor): Missing | undefined {
  if (!use.setback) return missing('setback', `monitor ${monitor.name}`, 'setback 20in', use.origin);
  if (!use.height) return missing('bottom', `monitor ${monitor.name}`, 'bottom 4in above desk', use.origin);
  if (!monitor.diagonal) return missing('diagonal', `monitor ${monitor.name}`, 'diagonal 24in', monitor.origin);
  return undefined;
}

function viewOf(station: Station, use: ScreenUse, monitor: Monitor): View {
  const turn = use.turn?.value ?? 0;
  const { ahead, aside } = placeOf(station, use, turn);
  const bearing = degrees(Math.atan2(aside, ahead));
  const { across, down } = monitor.aspect.value;
  const diagonal = monitor.diagonal!.value;
  const scale = diagonal / Math.hypot(across, down);
  const half = (down * scale * Math.cos(radians(use.tilt.value))) / 2;
  const { line, distance } = use.height!;
  const toCentre = line === 'bottom' ? half : line === 'top' ? -half : 0;
  return {
    use,
    name: monitor.name,
    monitor,
    ahead,
    aside,
    level: Math.hypot(ahead, aside),
    bearing,
    size: { width: across * scale, height: down * scale },
    half,
    toCentre,
    centre: { min: distance.value.min + toCentre, max: distance.value.max + toCentre },
    tilt: use.tilt.value,
    swing: use.at && use.turn ? turn - bearing : use.at && !use.turn ? -bearing : 0,
  };
}

/** A screen turned to from the side or behind stands beside no edge: there the setback is its distance. */
function placeOf(station: Station, use: ScreenUse, turn: Degrees): { ahead: Millimetres; aside: Millimetres } {
  const ahead = use.setback!.value - station.workstation.lean.value;
  const angle = radians(turn);
  if (use.at) return { ahead, aside: use.at.value - placeAlong(station) };
  if (Math.abs(turn) < 90) return { ahead, aside: ahead * Math.tan(angle) };
  return { ahead: ahead * Math.cos(angle), aside: ahead * Math.sin(angle) };
}

/** Whether it hangs on an arm on which each sets its height. */
export function isAdjustable({ centre }: View): boolean {
  return centre.max > centre.min;
}

/** How high an eye is over what the file measures a screen's height from. */
export function eyeOver({ use }: View, eye: Millimetres, desk: Millimetres): Millimetres {
  return use.height!.over === 'desk' ? eye - desk : eye;
}

/** The same of everybody that a body may be. */
export function eyesOver({ use }: View, { all }: Eyes): Float64Array {
  return use.height!.over === 'desk' ? all.overDesk : all.eye;
}

/** Elevation of a height seen from the eye: negative is below eye level. */
export function elevation(view: View, height: Millimetres, eye: Millimetres): Degrees {
  return degrees(Math.atan2(height - eye, view.level));
}

export function distanceTo(view: View, height: Millimetres, eye: Millimetres): Millimetres {
  return Math.hypot(view.level, height - eye);
}

/**
 * The share of everybody a body may be for whom something of eye and desk height holds. `key` names all else that it depends on: the
 * share is remembered from one assessment to the next.
 */
export function shareOfEyes(eyes: Eyes, holds: (eye: Millimetres, desk: Millimetres) => boolean, key: string): Share {
  const { body, people } = eyes.person;
  const ofBody = sharesOfEyes.get(body) ?? new Map<string, Share>();
  sharesOfEyes.set(body, ofBody);
  const whole = `${key} ${eyes.key}`;
  const known = ofBody.get(whole);
  if (known !== undefined) return known;
  const { eye, desk } = eyes.all;
  const share = shareOf(people, (person) => holds(eye[person]!, desk[person]!));
  if (ofBody.size >= REMEMBERED_SHARES) ofBody.clear();
  ofBody.set(whole, share);
  return share;
}

const sharesOfEyes = new WeakMap<Body, Map<string, Share>>();
const REMEMBERED_SHARES = 200;
