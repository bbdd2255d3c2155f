import {
  formatAngle,
  type Assessment,
  type SideScreen,
  type SideSketch,
  type StageSight,
  type Verdict,
} from '@boothwright/fit';
import type { Units } from '../words.js';
import { verdictOn } from './verdicts.js';

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

/** What the view tells of one person, from the eye down. */
export function notesOf(assessment: Assessment, side: SideSketch, units: Units, skyline: number): readonly Note[] {
  const { workstation, who, posture } = side;
  const about = { kind: 'workstation', subject: workstation, who, posture } as const;
  const seen = sightOf(assessment, side);
  const { thighRoom, body } = side;
  return [
    ...(seen
      ? [
          {
            kind: 'stage',
            title: 'Stage',
            lines: stageLines(seen, units),
            verdict: verdictOn(assessment, { ...about, checks: ['see-over'] }),
            at: { x: skyline, z: body.eye.z + (skyline - body.eye.x) * Math.tan((seen.rise * Math.PI) / 180) },
          },
        ]
      : []),
    ...side.screens.map((screen) => ({
      kind: 'screen',
      name: screen.name,
      title: screen.name,
      lines: screenLines(screen, units),
      verdict: verdictOn(assessment, { kind: 'monitor', subject: screen.name, who, posture }),
      at: screen.centre,
    })),
    {
      kind: 'elbow',
      title: 'Work',
      lines: [workLine(side.workAboveElbow, units)],
      verdict: verdictOn(assessment, { ...about, checks: ['seated-elbow', 'standing-work'] }),
      at: { x: body.hand.x, z: side.desk.work },
    },
    ...(thighRoom
      ? [
          {
            kind: 'thigh-room',
            title: 'Thigh room',
            lines: [
              thighRoom.room < -TOLERANCE ? `${units.length(-thighRoom.room)} short` : units.length(thighRoom.room),
            ],
            verdict: verdictOn(assessment, { ...about, checks: ['thigh-room'] }),
            at: { x: thighRoom.x, z: (thighRoom.thigh + thighRoom.underside) / 2 },
          },
        ]
      : []),
    ...(posture === 'sit'
      ? [
          {
            kind: 'feet',
            title: 'Feet',
            lines: [feetLine(side, units)],
            verdict: verdictOn(assessment, { ...about, checks: ['feet-supported', 'seat-not-low'] }),
            at: { x: body.toe.x, z: body.toe.z },
          },
        ]
      : []),
    ...side.skirts.map(({ name, x, hem }) => ({
      kind: 'skirt',
      name,
      title: `Skirt ${name}`,
      lines: [hem < -TOLERANCE ? `drags ${units.length(-hem)}` : `${units.length(hem)} off the floor`],
      verdict: verdictOn(assessment, { kind: 'skirt', subject: name, checks: ['skirt-drop'] }),
      at: { x, z: Math.max(0, hem / 2) },
    })),
  ];
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

export function stageLines({ above, over }: StageSight, { length }: Units): string[] {
  if (above <= TOLERANCE) return ['seen to its floor'];
  return [`seen from ${length(above)} above its floor`, ...(over ? [`over ${over.what}`] : [])];
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
