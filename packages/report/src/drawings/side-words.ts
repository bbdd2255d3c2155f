import {
  formatAngle,
  radians,
  type Assessment,
  type SideScreen,
  type SideSketch,
  type StageSight,
  type Verdict,
} from '@boothwright/fit';
import type { Units } from '../words.js';
import { judgedOn, type About } from './verdicts.js';

/** What is written beside a place in the side view. */
export interface Note {
  readonly kind: string;
  readonly name?: string;
  readonly title: string;
  readonly lines: readonly string[];
  readonly verdict?: Verdict;
  /** The place it speaks of, millimetres. */
  readonly at: { readonly x: number; readonly z: number };
}

/** Less than this is no turn that anybody would name. */
const STRAIGHT_AHEAD = 3;
const TOLERANCE = 1;
const BELOW_KNEE = 190;
/** What ends the room under a desk that nothing stands in. */
const FAR_EDGE = 'the far edge';

/** What the view tells of one person, from the eye down; what the file accepts is said to be accepted. */
export function notesOf(assessment: Assessment, side: SideSketch, units: Units, skyline: number): readonly Note[] {
  const note = (part: Omit<Note, 'verdict'>, about: About): Note => {
    const judged = judgedOn(assessment, about);
    if (!judged) return part;
    const lines = judged.accepted ? [...part.lines, 'accepted'] : part.lines;
    return { ...part, lines, verdict: judged.verdict };
  };
  const { workstation: subject, who, posture } = side;
  const here = (checks: readonly string[]): About => ({ kind: 'workstation', subject, who, posture, checks });
  const seen = sightOf(assessment, side);
  const feet = here(['feet-supported', 'seat-not-low']);
  return [
    ...(seen ? [note(stageNote(seen, side, units, skyline), here(['see-over']))] : []),
    ...side.screens.map((screen) =>
      note(screenNote(screen, units), { kind: 'monitor', subject: screen.name, who, posture }),
    ),
    note(workNote(side, units), here(['seated-elbow', 'standing-work'])),
    ...thighNotes(side, units).map((part) => note(part, here(['thigh-room']))),
    ...kneeNotes(side, units).map((part) => note(part, here(['knee-room']))),
    ...(posture === 'sit' ? [note(feetNote(side, units), feet)] : []),
    ...side.skirts.map((skirt) =>
      note(skirtNote(skirt, units), { kind: 'skirt', subject: skirt.name, checks: ['skirt-drop'] }),
    ),
  ];
}

type Told = Omit<Note, 'verdict'>;

function stageNote(seen: StageSight, { body }: SideSketch, units: Units, skyline: number): Told {
  const rise = (skyline - body.eye.x) * Math.tan(radians(seen.rise));
  return { kind: 'stage', title: 'Stage', lines: stageLines(seen, units), at: { x: skyline, z: body.eye.z + rise } };
}

function screenNote(screen: SideScreen, units: Units): Told {
  return {
    kind: 'screen',
    name: screen.name,
    title: screen.name,
    lines: screenLines(screen, units),
    at: screen.centre,
  };
}

function workNote({ body, desk, workAboveElbow }: SideSketch, units: Units): Told {
  return {
    kind: 'work',
    title: 'Work',
    lines: [workLine(workAboveElbow, units)],
    at: { x: body.hand.x, z: desk.work },
  };
}

function thighNotes({ thighRoom }: SideSketch, { length }: Units): readonly Told[] {
  if (!thighRoom) return [];
  const { x, thigh, underside, room, least } = thighRoom;
  const lines = least
    ? [`${length(least.gap)} from the seat`, `${length(least.wanted)} is the least`]
    : [room < -TOLERANCE ? `${length(-room)} short` : length(room)];
  return [{ kind: 'thigh-room', title: 'Thigh room', lines, at: { x, z: (thigh + underside) / 2 } }];
}

function kneeNotes({ kneeRoom, body }: SideSketch, { length }: Units): readonly Told[] {
  if (!kneeRoom) return [];
  const { deep, wide, end } = kneeRoom;
  const to = end === FAR_EDGE ? '' : `, to ${end}`;
  const lines = [`${length(deep)} deep${to}`, `${length(wide)} wide`];
  return [{ kind: 'knee-room', title: 'Knee room', lines, at: { x: deep, z: kneeRoomHeight(body) } }];
}

/** Where the depth at the knee is drawn: below the kneecap, where it meets no thigh. */
export function kneeRoomHeight({ knee }: SideSketch['body']): number {
  return knee.z - BELOW_KNEE;
}

function feetNote(side: SideSketch, units: Units): Told {
  return { kind: 'feet', title: 'Feet', lines: [feetLine(side, units)], at: side.body.toe };
}

function skirtNote({ name, x, hem }: SideSketch['skirts'][number], { length }: Units): Told {
  const line = hem < -TOLERANCE ? `drags ${length(-hem)}` : `${length(hem)} off the floor`;
  return { kind: 'skirt', name, title: `Skirt ${name}`, lines: [line], at: { x, z: Math.max(0, hem / 2) } };
}

/** What this person sees of the stage. */
export function sightOf({ sketch }: Assessment, { workstation, who, posture }: SideSketch): StageSight | undefined {
  return sketch?.sights.find((one) => one.workstation === workstation && one.who === who && one.posture === posture);
}

/** Of each workstation the person who sees least of the stage. */
export function worstSights(sights: readonly StageSight[]): readonly StageSight[] {
  const worst = new Map<string, StageSight>();
  for (const sight of sights) {
    const other = worst.get(sight.workstation);
    if (!other || sight.above > other.above) worst.set(sight.workstation, sight);
  }
  return [...worst.values()];
}

export function stageLines({ above, over, lowered }: StageSight, { length }: Units): string[] {
  const arms = lowered.length > 0 ? [`with ${lowered.join(' and ')} lower`] : [];
  if (above <= TOLERANCE) return ['seen to its floor', ...arms];
  return [`seen from ${length(above)} above its floor`, ...(over ? [`over ${over.what}`] : []), ...arms];
}

export function screenLines({ distance, gaze, bearing }: SideScreen, { length }: Units): string[] {
  const turned =
    Math.abs(bearing) < STRAIGHT_AHEAD
      ? []
      : [`${formatAngle(Math.abs(bearing))} to the ${bearing > 0 ? 'right' : 'left'}`];
  return [`${length(distance)} away`, gazeWords(gaze), ...turned];
}

function gazeWords(gaze: number): string {
  if (Math.abs(gaze) < 0.5) return 'level';
  return `${formatAngle(Math.abs(gaze))} ${gaze < 0 ? 'down' : 'up'}`;
}

export function workLine(above: number, { length }: Units): string {
  if (Math.abs(above) <= TOLERANCE) return 'at elbow height';
  return above > 0 ? `${length(above)} above elbow` : `${length(-above)} below elbow`;
}

export function feetLine({ body, seat }: SideSketch, { length }: Units): string {
  if (body.feetHang > TOLERANCE) return `hang ${length(body.feetHang)}`;
  return seat?.ring === undefined ? 'on the floor' : 'on the ring';
}
