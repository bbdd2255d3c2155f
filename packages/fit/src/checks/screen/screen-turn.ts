import { formatAngle } from '../../format.js';
import { exactVerdict } from '../../scene/verdict.js';
import { viewsAt } from '../../scene/viewing.js';
import type { Check, FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

const MAIN = { preferred: 15, outer: 35 };
const OTHER = { preferred: 35, outer: 60 };
const SLACK = 0.1;

export const screenTurn: Check = {
  id: 'screen-turn',
  group: 'screen',
  title: 'Head turn to a screen',
  question: 'How far must the head turn to see the screen?',
  computes: 'Bearing of the middle of the screen from straight ahead of its operator.',
  limits:
    'Main screen, preferred: at most 15°, outer: at most 35°. Other screens, preferred: at most 35°, outer: at most 60°.',
  sources: [
    {
      name: 'NUREG-0700 Rev. 3, 11.2.1.1-6',
      says: 'Displays watched often: preferred within 15° left or right, required within 35°; 60° where several screens are arrayed and the head turns.',
      read: 'in the source',
    },
  ],
  strength: 'strong',
  restsOn: ['lean'],
  chooses: ['screen turn'],
  unit: 'deg',
  example: {
    fires: `desk Left { width 60in  depth 30in  height 29in }
operator Noor { stature 5'3" }
monitor Cues { diagonal 22in }
workstation Sound { desk Left  operators Noor  monitor Cues { setback 24in  bottom 4in above desk  turn 36deg left  main } }
`,
    passes: `desk Left { width 60in  depth 30in  height 29in }
operator Noor { stature 5'3" }
monitor Cues { diagonal 22in }
workstation Sound { desk Left  operators Noor  monitor Cues { setback 24in  bottom 4in above desk  turn 15deg left  main } }
`,
  },
  ofEachStation: true,
  find: (scene) =>
    scene.stations.flatMap((station) =>
      viewsAt(station).views.map((view): FindingDraft => {
        const main = view.use.main.value;
        const { preferred, outer } = main ? MAIN : OTHER;
        const turn = Math.abs(view.bearing);
        const verdict = exactVerdict(turn <= preferred + SLACK, turn <= outer + SLACK);
        const limit = verdict === 'fail' ? outer : preferred;
        const side = view.bearing < 0 ? 'left' : 'right';
        const role = main ? say`main screen` : say`screen`;
        const change = view.use.at ? undefined : view.use.turn?.origin;
        return {
          subject: { kind: 'monitor', name: view.name },
          verdict,
          measured: turn,
          limit,
          margin: limit - turn,
          message:
            verdict === 'pass'
              ? say`The ${role} ${view.name} stands ${formatAngle(turn)} from straight ahead at ${station.name}: an easy look.`
              : side === 'left'
                ? say`The ${role} ${view.name} stands ${formatAngle(turn)} to the left at ${station.name}, so the neck stays turned. Bring it within ${formatAngle(preferred)}.`
                : say`The ${role} ${view.name} stands ${formatAngle(turn)} to the right at ${station.name}, so the neck stays turned. Bring it within ${formatAngle(preferred)}.`,
          origin: view.use.turn?.origin ?? view.use.at?.origin ?? view.use.monitor.origin,
          remedies:
            verdict === 'pass' || !change
              ? []
              : [
                  {
                    title: say`Turn ${view.name} to ${preferred}°: an easy look`,
                    changes: [{ origin: change, text: `${preferred}deg ${side}` }],
                    safe: true,
                  },
                ],
          assumptions: view.use.turn || view.use.at ? [] : [say`${view.name} stands straight ahead`],
        };
      }),
    ),
};
