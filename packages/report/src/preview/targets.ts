import { pieceKey, type Assessment, type PieceKind, type PieceRef, type SideSketch } from '@boothwright/fit';
import type { Drawing, Piece } from '../drawings/drawing.js';
import { judgedOn, type About } from '../drawings/verdicts.js';
import { verdictWords } from '../words.js';

/** What in a plan or a section bears the name of the thing that it draws. */
const byName: Partial<Record<string, PieceKind>> = {
  desk: 'desk',
  rack: 'rack',
  column: 'column',
  platform: 'platform',
  door: 'door',
  'wheelchair-space': 'wheelchair-space',
  watchers: 'watchers',
  walkway: 'walkway',
  skirt: 'skirt',
  'skirt-leader': 'skirt',
  seat: 'seat',
  occupied: 'workstation',
  person: 'workstation',
  workstation: 'workstation',
  reach: 'workstation',
  sight: 'workstation',
  'sight-leader': 'workstation',
};

/** What stands at a workstation and bears a name that others may bear elsewhere. */
const atStation: Partial<Record<string, PieceKind>> = {
  monitor: 'screen',
  bearing: 'screen',
  gaze: 'screen',
  screen: 'screen',
  'screen-leader': 'screen',
  control: 'control',
};

const withoutName: Partial<Record<string, PieceKind>> = {
  wall: 'room',
  'room-width': 'room',
  'room-depth': 'room',
  stage: 'stage',
  'stage-leader': 'stage',
  'stage-distance': 'stage',
  row: 'seating',
  balcony: 'balcony',
};

/** What of a side view belongs to the person, their desk, their seat or their place as a whole. */
const partsOfSide: Partial<Record<string, 'person' | 'desk' | 'seat' | 'place'>> = {
  person: 'person',
  eye: 'person',
  'eye-level': 'person',
  'elbow-level': 'person',
  feet: 'person',
  'feet-leader': 'person',
  'desk-level': 'desk',
  'seat-level': 'seat',
  'ring-level': 'seat',
  'thigh-room': 'place',
  'thigh-room-leader': 'place',
  'knee-room': 'place',
  'knee-room-leader': 'place',
  work: 'place',
  'work-leader': 'place',
  sight: 'place',
};

/** The thing of the booth that a drawn piece stands for; nothing for a frame, a scale or an arrow. */
export function targetOf({ kind: drawing }: Drawing, piece: Piece, side?: SideSketch): PieceRef | undefined {
  const { kind, name } = piece;
  if (side) {
    const part = partsOfSide[kind];
    if (part) return partOfSide(part, side);
  }
  const station = piece.station ?? side?.workstation;
  const standing = atStation[kind];
  if (standing) return name && station ? { kind: standing, name, workstation: station } : undefined;
  const named = byName[kind];
  if (named) return name ? { kind: named, name } : undefined;
  const alone = withoutName[kind];
  return alone && drawing !== 'side' ? { kind: alone } : alone === 'stage' ? { kind: alone } : undefined;
}

function partOfSide(part: 'person' | 'desk' | 'seat' | 'place', side: SideSketch): PieceRef | undefined {
  switch (part) {
    case 'person':
      return { kind: side.kind, name: side.who };
    case 'desk':
      return { kind: 'desk', name: side.desk.name };
    case 'seat':
      return side.seat && { kind: 'seat', name: side.seat.name };
    case 'place':
      return { kind: 'workstation', name: side.workstation };
  }
}

/** How a thing is called: 'desk Left', 'screen Cues at Sound', 'the room'. */
export function calledOf({ kind, name, workstation }: PieceRef): string {
  const word = kind.replaceAll('-', ' ');
  if (name === undefined) return `the ${word}`;
  return `${word} ${name}${workstation === undefined ? '' : ` at ${workstation}`}`;
}

/** As `calledOf`, with what was found about it; remembered for as long as the findings are the same. */
export function labelOf(assessment: Assessment, target: PieceRef): string {
  const { findings } = assessment;
  const known = labels.get(findings) ?? new Map<string, string>();
  labels.set(findings, known);
  const key = pieceKey(target);
  const label = known.get(key) ?? labelled(assessment, target);
  known.set(key, label);
  return label;
}

const labels = new WeakMap<Assessment['findings'], Map<string, string>>();

function labelled(assessment: Assessment, target: PieceRef): string {
  const about = aboutOf(target);
  const judged = about && judgedOn(assessment, about);
  if (!judged) return calledOf(target);
  return `${calledOf(target)}: ${judged.accepted ? 'accepted' : verdictWords[judged.verdict].toLowerCase()}`;
}

/** The findings of a thing; nothing for what no check is about. */
function aboutOf({ kind, name }: PieceRef): About | undefined {
  switch (kind) {
    case 'operator':
    case 'crowd':
      return { who: name };
    case 'screen':
      return { kind: 'monitor', subject: name };
    case 'stage':
    case 'seating':
    case 'balcony':
    case 'door':
    case 'watchers':
    case 'room':
      return undefined;
    default:
      return { kind, subject: name };
  }
}
