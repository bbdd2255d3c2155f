import type { PlanPoint } from '../../booth.js';
import { eyePlace } from '../../scene/sight.js';
import type { Scene } from '../../scene/scene.js';
import { missing, type Station } from '../../stations/station.js';
import type { Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

export const mixPosition: Check = {
  id: 'mix-position',
  group: 'listening',
  title: 'Where the sound is mixed',
  question: 'Where in the hall does the sound operator stand?',
  computes:
    'For each workstation whose task is `controls`: the distance to the stage’s front edge, the offset from the middle of the room, and whether a balcony ' +
    'is above.',
  limits: 'None: information only. Sources disagree, so no place fails.',
  sources: [
    {
      name: 'American Society of Theatre Consultants, on the sound mix position',
      says: 'On the centre line, on the main floor, in front of the balcony’s overhang; yet such places cost good seats.',
      read: 'in the source',
    },
    {
      name: 'C. Taipale, on the house mixing desk',
      says: 'Not exactly on the centre line: a symmetric room has a peak or a null of low notes there.',
      read: 'in the source',
    },
    {
      name: 'practitioners’ forum, on board placement',
      says: 'About two thirds back, central, not under a balcony.',
      read: 'in the source',
    },
  ],
  strength: 'weak',
  unit: 'mm',
  example: {
    fires: `room { width 40ft  depth 66ft }
desk Left { width 60in  depth 27in  height 40in }
operator Noor { stature 5'3" }
workstation Sound { desk Left  operators Noor }
place Left at 14ft, 6ft
`,
    passes: `room { width 40ft  depth 66ft  stage { edge 55ft } }
desk Left { width 60in  depth 27in  height 40in }
operator Noor { stature 5'3" }
workstation Sound { desk Left  operators Noor }
place Left at 14ft, 6ft
`,
  },
  find(scene) {
    const stations = scene.stations.filter(({ workstation }) => workstation.task.value === 'controls');
    return stations.length === 0 ? [] : (withoutStage(scene) ?? stations.map((station) => describe(scene, station)));
  },
};

/** One question for the whole booth, not one for each workstation. */
function withoutStage(scene: Scene): FindingDraft[] | undefined {
  const { room } = scene.booth;
  if (room?.stage?.edge) return undefined;
  const lack = room?.stage
    ? missing('edge', 'stage', 'edge 55ft', room.stage.origin)
    : missing('stage', room ? 'room' : say`the file, in its room`, 'stage { edge 55ft }', room?.origin);
  const subject = { kind: 'booth', name: scene.booth.name } as const;
  return [
    cannotSay(
      subject,
      say`Cannot say how far the sound operator is from the stage.`,
      lack,
      lack.origin ?? scene.booth.origin,
    ),
  ];
}

function describe(scene: Scene, station: Station): FindingDraft {
  const subject = { kind: 'workstation', name: station.name } as const;
  const { origin } = station.workstation;
  const place = eyePlace(scene, station);
  if (!place) {
    const { desk } = station;
    const lack = !desk
      ? missing('desk', `workstation ${station.name}`, 'desk Left', origin)
      : missing('place', say`the file, for desk ${desk.name}`, `place ${desk.name} at 14ft, 6ft`, desk.origin);
    return cannotSay(subject, say`Cannot say how far ${station.name} is from the stage.`, lack, origin);
  }
  const room = scene.booth.room!;
  const edge = room.stage!.edge!.value;
  const distance = edge - place.y;
  const balcony = room.balcony?.edge && place.y < room.balcony.edge.value;
  const facts = [
    say`${scene.length(distance)} from the stage`,
    ...(room.width ? [offset(scene, place, room.width.value)] : []),
    ...(balcony ? [say`under the balcony`] : []),
  ];
  return {
    subject,
    verdict: 'pass',
    measured: distance,
    message: [
      say`If sound is mixed at ${station.name}: it is ${facts.join(', ')}.`,
      depthIn(distance, edge),
      balcony
        ? say`Sources disagree whether the centre line is best or to be kept off; most advise against a place under a balcony.`
        : say`Sources disagree whether the centre line is best or to be kept off.`,
      say`Information only: listen there before you build.`,
    ].join(' '),
    terms: say`${scene.length(edge)} from back wall to stage − ${scene.length(place.y)} = ${scene.length(distance)}`,
    source: say`sources disagree: American Society of Theatre Consultants; C. Taipale`,
    origin,
    assumptions: room.width ? [say`the stage is in the middle of the room`] : [],
  };
}

function offset(scene: Scene, { x }: PlanPoint, width: Millimetres): string {
  const aside = x - width / 2;
  const text = scene.length(Math.abs(aside));
  if (Math.abs(aside) < 10) return say`on the centre line`;
  return aside > 0 ? say`${text} right of the centre line` : say`${text} left of the centre line`;
}

/** How far back, as a share of the way from the stage to the back wall. */
function depthIn(distance: Millimetres, edge: Millimetres): string {
  return say`That is ${Math.round((distance / edge) * 100)}% of the way from the stage to the back wall.`;
}
