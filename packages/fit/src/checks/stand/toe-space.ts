import type { Missing } from '../../assessment.js';
import type { Desk } from '../../booth.js';
import { atLeast, demandOn } from '../../stations/demand.js';
import { missing } from '../../stations/station.js';
import type { Check } from '../check.js';
import { sizeUp } from '../sizes.js';
import { say } from '../../words/say.js';

const DEPTH = 100;
const HEIGHT = 100;

export const toeSpace: Check = {
  id: 'toe-space',
  group: 'stand',
  title: 'Toe space',
  question: 'Can the feet come close to a closed front?',
  computes: 'Depth and height of the space at the foot of a front that is closed. An open desk is not asked.',
  limits: 'At least 100 mm deep and 100 mm high.',
  sources: [
    {
      name: 'Panero & Zelnik 1979, counter drawing',
      says: 'Toe space of 4 in (102 mm).',
      read: 'in the source',
    },
    { name: 'MIL-STD-1472F, 5.7.1.1', says: 'Kick space 100 mm deep and 100 mm high.', read: 'from memory' },
    {
      name: 'EN 527-1:2011',
      says: 'For the feet of a standing person, better: 150 mm deep and 120 mm high.',
      read: 'in a secondary source',
    },
  ],
  strength: 'medium',
  unit: 'mm',
  example: {
    fires: `desk Left { width 60in  depth 27in  height 42in  closed  toe-space { depth 2in  height 4in } }
operator Noor { stature 5'3" }
workstation Sound { desk Left  operators Noor  posture stand }
`,
    passes: `desk Left { width 60in  depth 27in  height 42in  closed  toe-space { depth 4in  height 4in } }
operator Noor { stature 5'3" }
workstation Sound { desk Left  operators Noor  posture stand }
`,
  },
  rule: {
    posture: 'stand',
    order: 50,
    applies: ({ desk }) => desk?.closed === true,
    lacks: ({ desk }) => lacksToeSpace(desk!),
    demands({ desk }) {
      const { depth, height } = desk!.toeSpace!;
      return [demandOn(depth!.value, atLeast(DEPTH)), demandOn(height!.value, atLeast(HEIGHT))];
    },
    says({ station, demand, value, side, length }) {
      const desk = station.desk!.name;
      const wanted = length(sizeUp(demand === 0 ? DEPTH : HEIGHT, station.booth.show));
      if (side === undefined) return say`Feet have room at the closed front of ${desk}.`;
      return demand === 0
        ? say`The toe space of ${desk} is ${length(value)} deep, so people stand back and bend: make it ${wanted}.`
        : say`The toe space of ${desk} is ${length(value)} high, so shoes do not fit in: make it ${wanted}.`;
    },
  },
};

function lacksToeSpace({ name, origin, toeSpace: space }: Desk): Missing | undefined {
  if (!space) return missing('toe-space', `desk ${name}`, 'toe-space { depth 4in  height 4in }', origin);
  if (!space.depth) return missing('depth', say`the toe-space of desk ${name}`, 'depth 4in', space.origin);
  if (!space.height) return missing('height', say`the toe-space of desk ${name}`, 'height 4in', space.origin);
  return undefined;
}
