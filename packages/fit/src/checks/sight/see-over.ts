import type { Missing, Remedy } from '../../assessment.js';
import { typeLength, inPosture } from '../../format.js';
import type { Scene } from '../../scene/scene.js';
import { eyePlace, partOfStage, type Obstacle } from '../../scene/sight.js';
import { stageLines, type StageLine, type StageLines } from '../../scene/stage-lines.js';
import { verdictOf } from '../../scene/verdict.js';
import { eyesAt, isAdjustable, lacksEyes, shareOfEyes, type Eyes } from '../../scene/viewing.js';
import { missing, type Station } from '../../stations/station.js';
import { TOLERANCE, type Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

/** A standing performer's waist above the stage floor. */
const WAIST: Millimetres = 900;

export const seeOver: Check = {
  id: 'see-over',
  group: 'sight',
  title: 'View of the stage',
  question:
    'What is the lowest point of the stage that each operator sees over screens, racks and the people in front?',
  computes:
    'A straight line from the eye over every obstacle that stands before each of nine points of the stage’s front edge; the highest ' +
    'of those lines where it meets the edge, above the stage floor. A screen of their own on an arm is set as low as is good for the eye.',
  limits:
    'Preferred: the stage floor. Outer: 900 mm above it, a standing performer’s waist. People in front who stand at times count as 1800 mm high.',
  sources: [
    {
      name: 'NUREG-0700 Rev. 3, 11.2.1.1-1',
      says: 'What is to be seen over must not exceed the eye height of the smallest user.',
      read: 'in the source',
    },
    {
      name: 'CEN/TR 15913:2009',
      says: 'A standing person as an obstacle is 1800 mm high.',
      read: 'in a secondary source',
    },
    { name: 'own bound', says: 'The waist as outer limit.', read: 'own bound' },
  ],
  strength: 'weak',
  restsOn: ['shoe', 'slump', 'lean'],
  chooses: ['screen bottom', 'screen centre', 'screen top'],
  unit: 'mm',
  example: {
    fires: `room { width 30ft  depth 50ft  stage { edge 40ft  height 36in } }
desk Left { width 60in  depth 30in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
monitor Cues { diagonal 24in }
workstation Sound { desk Left  chair Low  operators Noor  monitor Cues { setback 24in  bottom 14in above desk } }
place Left at 12ft, 6ft
`,
    passes: `room { width 30ft  depth 50ft  stage { edge 40ft  height 36in } }
desk Left { width 60in  depth 30in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3"  sitting-eye 29in }
monitor Cues { diagonal 17in }
workstation Sound { desk Left  chair Low  operators Noor  monitor Cues { setback 28in  bottom 1in above desk } }
place Left at 12ft, 6ft
`,
  },
  find(scene) {
    if (!scene.booth.room?.stage) return [];
    return scene.stations.flatMap((station) => {
      const lack = lacksOf(scene, station);
      const subject = { kind: 'workstation', name: station.name } as const;
      if (lack)
        return [
          cannotSay(
            subject,
            say`Cannot say what is seen of the stage from ${station.name}.`,
            lack,
            station.workstation.origin,
          ),
        ];
      return eyesAt(scene, station).flatMap((eyes) => judge(scene, eyes) ?? []);
    });
  },
};

function lacksOf(scene: Scene, station: Station): Missing | undefined {
  const stage = scene.booth.room!.stage!;
  if (!stage.edge) return missing('edge', 'stage', 'edge 55ft', stage.origin);
  if (!stage.height) return missing('height', 'stage', 'height 36in', stage.origin);
  const blind = station.workstation.postures.value.map((posture) => lacksEyes(station, posture)).find((lack) => lack);
  if (blind) return blind;
  return eyePlace(scene, station)
    ? undefined
    : missing(
        'place',
        say`the file, for desk ${station.desk!.name}`,
        `place ${station.desk!.name} at 14ft, 6ft`,
        station.desk!.origin,
      );
}

function judge(scene: Scene, eyes: Eyes): FindingDraft | undefined {
  const sight = stageLines(scene, eyes.station)!;
  const { targets, lines } = sight;
  const measured = sight.highest(eyes);
  const decides = lines.find((line) => sight.above(line, eyes) === measured);
  const key = JSON.stringify([sight.floor, sight.stage, lines.map((line) => [line.at, heightOf(sight, line, eyes)])]);
  const { posture } = eyes;
  const look = { posture, eye: 0, desk: 0 };
  const within = (most: Millimetres) => (eye: Millimetres, desk: Millimetres) => {
    look.eye = eye;
    look.desk = desk;
    return sight.highest(look) <= most + TOLERANCE;
  };
  const share = shareOfEyes(eyes, within(0), `floor ${key}`);
  const shareAtLimit = shareOfEyes(eyes, within(WAIST), `waist ${key}`);
  const verdict = verdictOf(share, shareAtLimit, eyes.person.wanted);
  const limit = verdict === 'fail' ? WAIST : 0;
  const remedies = verdict === 'pass' || !decides ? [] : remediesOf(scene, eyes, decides, sight);
  const who = inPosture(eyes.person.name, eyes.posture);
  const many = eyes.person.kind === 'crowd';
  return {
    subject: { kind: 'workstation', name: eyes.station.name },
    operator: eyes.person.name,
    posture: eyes.posture,
    verdict,
    measured,
    limit,
    margin: limit - measured,
    share,
    shareAtLimit,
    message:
      decides && measured > TOLERANCE
        ? [
            hides(who, many, partOfStage(targets, decides.target), scene.length(measured), decides.obstacle),
            ...remedies.map(({ title }) => `${title}.`),
          ].join(' ')
        : verdict === 'pass'
          ? many
            ? say`${who} see the stage down to its floor.`
            : say`${who} sees the stage down to its floor.`
          : many
            ? say`${who} see the stage floor if of average size; for others something may hide it.`
            : say`${who} sees the stage floor if of average size; for others something may hide it.`,
    origin: decides?.obstacle.view?.use.height?.distance.origin ?? eyes.station.workstation.origin,
    related: decides?.obstacle.origin
      ? [{ origin: decides.obstacle.origin, message: say`${decides.obstacle.what} decides` }]
      : [],
    remedies,
    assumptions: [...loweredFor(sight, eyes), ...assumptionsOf(scene)],
  };
}

/** What the height of a line's obstacle rests on besides the eyes of one posture. */
function heightOf({ top }: StageLines, { obstacle }: StageLine, eyes: Eyes): unknown {
  const { view, onDesk } = obstacle;
  return view && obstacle.owner === eyes.station ? [view.centre, view.half, view.level, onDesk] : top(obstacle, eyes);
}

function hides(who: string, many: boolean, part: string, from: string, { what, plural }: Obstacle): string {
  if (many)
    return plural
      ? say`${who} see ${part} only from ${from} above its floor: ${what} hide the rest.`
      : say`${who} see ${part} only from ${from} above its floor: ${what} hides the rest.`;
  return plural
    ? say`${who} sees ${part} only from ${from} above its floor: ${what} hide the rest.`
    : say`${who} sees ${part} only from ${from} above its floor: ${what} hides the rest.`;
}

function remediesOf(
  scene: Scene,
  eyes: Eyes,
  { obstacle, at }: StageLine,
  { floor, stage, top }: StageLines,
): Remedy[] {
  const z = eyes.eye + floor;
  const allowed = z + (stage - z) * at;
  const lower = top(obstacle, eyes) - allowed;
  const given = obstacle.view?.use.height?.distance;
  if (given) {
    const value = given.value.max - lower - 3;
    const text = typeLength(value, scene.booth.show);
    const aside = obstacle.view.size.width;
    return [
      {
        title:
          value > 0 || obstacle.view.use.height.line !== 'bottom'
            ? say`Lower ${obstacle.what} by ${scene.length(lower)}, or move it ${scene.length(aside)} aside, out of the line`
            : say`Move ${obstacle.what} ${scene.length(aside)} aside, out of the line, or use a smaller screen`,
        changes: value > 0 && given.origin && !isAdjustable(obstacle.view) ? [{ origin: given.origin, text }] : [],
        safe: false,
      },
    ];
  }
  if (!obstacle.plural)
    return [{ title: say`Move ${obstacle.what} out of the line of sight`, changes: [], safe: false }];
  const lift = (z + (obstacle.top - z) / at - stage) / (1 / at - 1);
  const title =
    lift <= HIGHEST_PLATFORM
      ? say`Raise the booth on a platform by ${scene.length(lift)}, with the guards and steps that local codes ask for`
      : say`No platform of a sensible height clears them: keep an aisle or a gap in the rows before the booth`;
  return [{ title, changes: [], safe: false }];
}

/** Above it a platform needs guards (IBC 1015.2), and is more than a hall would build for a booth. */
const HIGHEST_PLATFORM: Millimetres = 30 * 25.4;

function loweredFor(sight: StageLines, eyes: Eyes): readonly string[] {
  return sight
    .lowered(eyes)
    .map((screen) => say`${screen} is set lower on its arm for it, no lower than is good for the eye`);
}

function assumptionsOf(scene: Scene): readonly string[] {
  const { seating, stage } = scene.booth.room!;
  return [
    ...(seating?.first && !(seating.rows && seating.pitch)
      ? [say`only the nearest row of people counts: rows and pitch are not said`]
      : []),
    ...(seating?.first ? [] : [say`nobody sits or stands between booth and stage`]),
    ...(stage?.width ? [] : [say`the stage is as wide as the room`]),
  ];
}
