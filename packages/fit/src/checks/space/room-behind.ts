import { behindDesk, behindIt } from '../../layout/behind.js';
import { heldTo } from '../../limits/held-to.js';
import { exactVerdict } from '../../scene/verdict.js';
import { missing, sits } from '../../stations/station.js';
import { TOLERANCE } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

const COMFORT = { value: 36 * 25.4, source: 'NUREG-0700 Rev. 2, 12.1.1.3-5' };
const LEAST = 30 * 25.4;

export const roomBehind: Check = {
  id: 'room-behind',
  group: 'space',
  title: 'Room behind the desk',
  question: 'Is there room behind the desk to sit down and rise?',
  computes: 'Distance from the desk’s near edge to the first wall or piece behind it, anywhere along the edge.',
  limits: 'Preferred: at least 914 mm (36 in). Outer: at least 762 mm (30 in).',
  sources: [
    {
      name: COMFORT.source,
      says: 'At least 36 in behind the desk to any surface.',
      read: 'in the source',
    },
    { name: 'Panero & Zelnik 1979, 3.2', says: 'Chair clearance zone of 30 to 36 in.', read: 'in the source' },
  ],
  strength: 'strong',
  takesLimit: true,
  unit: 'mm',
  example: {
    fires: `room { width 30ft  depth 40ft }
desk Left { width 60in  depth 27in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
workstation Sound { desk Left  chair Low  operators Noor }
place Left at 10ft, 28in
`,
    passes: `room { width 30ft  depth 40ft }
desk Left { width 60in  depth 27in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
workstation Sound { desk Left  chair Low  operators Noor }
place Left at 10ft, 48in
`,
  },
  find: (scene) =>
    scene.stations.filter(sits).flatMap((station): FindingDraft[] => {
      const { desk } = station;
      if (!desk) return [];
      const subject = { kind: 'workstation', name: station.name } as const;
      const behind = behindDesk(scene.layout, desk);
      if (!behind) {
        const lack = !desk.width
          ? missing('width', `desk ${desk.name}`, 'width 60in', desk.origin)
          : !desk.depth
            ? missing('depth', `desk ${desk.name}`, 'depth 27in', desk.origin)
            : missing('place', say`the file, for desk ${desk.name}`, `place ${desk.name} at 14ft, 6ft`, desk.origin);
        return [cannotSay(subject, say`Cannot say how much room is behind ${desk.name}.`, lack, desk.origin)];
      }
      const { value: comfort, ...held } = heldTo(scene, 'room-behind', COMFORT);
      const { distance, what } = behind;
      const verdict = exactVerdict(distance >= comfort - TOLERANCE, distance >= Math.min(LEAST, comfort) - TOLERANCE);
      const limit = verdict === 'fail' ? Math.min(LEAST, comfort) : comfort;
      return [
        {
          subject,
          verdict,
          measured: distance,
          limit,
          margin: distance - limit,
          message:
            verdict === 'pass'
              ? say`Behind ${desk.name} there is ${scene.length(distance)} to ${what}: room to sit down and rise.`
              : say`Behind ${desk.name} there is ${scene.length(distance)} to ${what}; sitting down and rising takes ${scene.length(comfort)}. Move the desk ${scene.length(comfort - distance)} away from ${what}.`,
          source: held.source,
          origin: station.workstation.desk?.origin ?? station.workstation.origin,
          related: [...behindIt(scene, behind), ...held.related],
        },
      ];
    }),
};
