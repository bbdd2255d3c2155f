import type { Task } from '../../booth.js';
import { possessive } from '../../format.js';
import type { Band } from '../../stations/demand.js';
import { lacksDeskHeight } from '../../stations/station.js';
import type { Check } from '../check.js';
import { say } from '../../words/say.js';

const BANDS: Readonly<Record<Task, { readonly preferred: Band; readonly outer: Band }>> = {
  controls: { preferred: { min: -100, max: -50 }, outer: { min: -150, max: 0 } },
  writing: { preferred: { min: -50, max: 0 }, outer: { min: -100, max: 25 } },
  keyboard: { preferred: { min: -50, max: 0 }, outer: { min: -100, max: 25 } },
  precision: { preferred: { min: 50, max: 100 }, outer: { min: 0, max: 125 } },
};

export const standingWork: Check = {
  id: 'standing-work',
  group: 'stand',
  title: 'Work height, standing',
  question: 'Is the work at the right height for the task when standing?',
  computes: 'Desk height plus the height of the hands above it (`working`), less standing elbow height with shoes.',
  limits:
    'Preferred / outer, against the elbow: controls 100 to 50 mm below / 150 below to 0; writing and keyboard 50 below to 0 / ' +
    '100 below to 25 above; precision 50 to 100 above / 0 to 125 above.',
  sources: [
    {
      name: 'Panero & Zelnik 1979, Table 1',
      says: 'A comfortable counter is 3 in (76 mm) below the elbow.',
      read: 'in the source',
    },
    {
      name: 'Sanders & McCormick, summary',
      says: 'Light work 50 to 100 mm below the elbow.',
      read: 'in a secondary source',
    },
    {
      name: 'NIOSH 97-117 and California State Fund guidance',
      says: 'Precision work 4 in above the elbow, light work just below it.',
      read: 'in the source',
    },
  ],
  strength: 'medium',
  restsOn: ['shoe', 'task', 'working'],
  unit: 'mm',
  example: {
    fires: `desk Left { width 60in  depth 27in  height 42in }
operator Priya { stature 150cm }
workstation Sound { desk Left  operators Priya  posture stand }
`,
    passes: `desk Left { width 60in  depth 27in  height 42in }
operator Tobias { stature 179cm  standing-elbow 44 1/2in }
workstation Sound { desk Left  operators Tobias  posture stand }
`,
  },
  rule: {
    posture: 'stand',
    order: 90,
    lacks: lacksDeskHeight,
    demands(station) {
      const band = BANDS[station.workstation.task.value];
      return [
        {
          form: { seat: 0, desk: 1, body: { standingElbowHeight: -1 }, constant: station.working - station.shoe },
          ...band,
        },
      ];
    },
    says({ station, who, value, side, length }) {
      const task = wordFor(station.workstation.task.value);
      const where =
        value < 0
          ? say`${length(-value)} below ${possessive(who)} standing elbow`
          : say`${length(value)} above ${possessive(who)} standing elbow`;
      if (side === undefined) return say`The work is ${where}: right for ${task}.`;
      return side === 'above'
        ? say`The work is ${where}: too high for ${task}, so the shoulders lift.`
        : say`The work is ${where}: too low for ${task}, so the back bends.`;
    },
  },
};

function wordFor(task: Task): string {
  switch (task) {
    case 'controls':
      return say`controls`;
    case 'writing':
      return say`writing`;
    case 'keyboard':
      return say`a keyboard`;
    case 'precision':
      return say`precision work`;
  }
}
