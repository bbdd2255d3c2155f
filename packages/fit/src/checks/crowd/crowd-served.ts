import type { Posture } from '../../booth.js';
import { growthSource } from '../../bodies/growing.js';
import { formatPercent, seatedOrStanding } from '../../format.js';
import type { Scene } from '../../scene/scene.js';
import { verdictOf } from '../../scene/verdict.js';
import { sharesOf } from '../../stations/shares.js';
import { heightsOf, whereNamed, type Person, type Station } from '../../stations/station.js';
import type { Check, FindingDraft } from '../check.js';
import { said, say } from '../../words/say.js';

export const crowdServed: Check = {
  id: 'crowd-served',
  group: 'crowd',
  title: 'Crowd served',
  question: 'Does the workstation serve the share of a crowd that it should?',
  computes:
    'The share of the crowd for whom all seat checks (sitting) or all stand checks (standing) hold at once, seat and desk set best ' +
    'for each person.',
  limits:
    'Preferred: at least the crowd’s `cover` meet all preferred bands. Outer: at least half meet all outer limits.',
  sources: [
    {
      name: 'ANSUR II: Gordon et al. 2014, NATICK/TR-15/007',
      says: 'Means, spreads, skewness and correlations of body dimensions; soldiers of working age.',
      read: 'in the source',
    },
    {
      name: growthSource,
      says: 'Statures by sex and age, for a crowd younger than 18; the rest of such bodies is taken from adults of that stature.',
      read: 'in a secondary source',
    },
    { name: 'own bound', says: 'Half of a crowd inside the outer limits as the least.', read: 'own bound' },
  ],
  strength: 'medium',
  restsOn: ['crowd', 'shoe', 'task', 'working', 'top'],
  unit: 'ratio',
  example: {
    fires: `desk Left { width 60in  depth 27in  height 42in }
crowd Volunteers { women 55%  cover 90% }
workstation Sound { desk Left  operators Volunteers  posture stand }
`,
    passes: `desk Left { width 60in  depth 27in  height 34in..48in }
crowd Volunteers { women 55%  cover 90% }
workstation Sound { desk Left  operators Volunteers  posture stand }
`,
  },
  ofEachStation: true,
  find: (scene) =>
    scene.stations.flatMap((station) =>
      station.workstation.postures.value.flatMap((posture) =>
        station.people
          .filter(({ kind }) => kind === 'crowd')
          .flatMap((crowd) => judge(scene, station, posture, crowd) ?? []),
      ),
    ),
};

function judge(scene: Scene, station: Station, posture: Posture, crowd: Person): FindingDraft | undefined {
  const heights = heightsOf(station, posture);
  const rules = scene.rules(station, posture);
  if (!heights || rules.length === 0) return undefined;
  const preferred = sharesOf(rules, 'preferred', heights, crowd);
  const outer = sharesOf(rules, 'outer', heights, crowd);
  const verdict = verdictOf(preferred.joint, outer.joint, crowd.wanted);
  const weakest = rules[preferred.byRule.indexOf(Math.min(...preferred.byRule))]!;
  const limit = verdict === 'fail' ? 0.5 : crowd.wanted;
  const measured = verdict === 'fail' ? outer.joint : preferred.joint;
  const [served, wanted] = [formatPercent(preferred.joint), formatPercent(crowd.wanted)];
  const how = seatedOrStanding(posture);
  return {
    subject: { kind: 'workstation', name: station.name },
    operator: crowd.name,
    posture,
    verdict,
    measured,
    limit,
    margin: measured - limit,
    share: preferred.joint,
    shareAtLimit: outer.joint,
    message:
      verdict === 'pass'
        ? say`${served} of ${crowd.name} are served at ${station.name} when ${how}: the ${wanted} wanted are reached.`
        : say`${served} of ${crowd.name} are served at ${station.name} when ${how}, where ${wanted} are wanted; ${formatPercent(outer.joint)} are inside all outer limits. ‘${said(weakest.title)}’ leaves out most: start there.`,
    origin: whereNamed(station, crowd),
    assumptions: crowd.assumes(),
  };
}
