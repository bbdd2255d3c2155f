import type { Missing } from '../../assessment.js';
import type { LimitProfile, Walkway } from '../../booth.js';
import { clearWidth } from '../../layout/clear-width.js';
import { exactVerdict } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { missing } from '../../stations/station.js';
import { TOLERANCE, type Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';

/** A published least width: the figure, for whom, and where it stands. */
interface LeastWidth {
  readonly width: Millimetres;
  readonly source: string;
  readonly assumption?: string;
}

const US_SINGLE = { width: 36 * 25.4, source: 'IBC 2021 1030.9.1 and 2010 ADA Standards 403.5.1' };
const US_BUSY = {
  width: 42 * 25.4,
  source: 'IBC 2021 1030.9.1 item 4 (seats on both sides), used here for over 50 people too',
};
const OPERATORS = { width: 28 * 25.4, source: 'OSHA 29 CFR 1910.36(g)(2)' };
const UK_TABLE: readonly (readonly [people: number, width: Millimetres])[] = [
  [60, 750],
  [110, 850],
  [220, 1050],
];
const UK_SOURCE = 'Approved Document B vol. 2 (England), table of exit widths';

export const walkwayWidth: Check = {
  id: 'walkway-width',
  group: 'walkway',
  title: 'Clear width of a walkway',
  question: 'How wide is the way that is left for people to pass?',
  computes:
    'The narrowest distance between the two sides, less 19 in (483 mm) from the edge of a desk that people sit at, less what ' +
    'stands in the way.',
  limits:
    'us and generic: 914 mm (36 in); 1067 mm (42 in) with seats on both sides or over 50 people. uk: 750 mm to 60 people, 850 to 110, ' +
    '1050 to 220, then 5 mm each. Operators only: 711 mm (28 in).',
  sources: [
    {
      name: 'IBC/IFC 2018 1029.9.1 and 1029.13.1 (2021: 1030)',
      says: 'Level aisle 42 in with seats both sides, 36 in with seats on one side; a seat at a table counts 19 in from the table edge.',
      read: 'in the source',
    },
    { name: '2010 ADA Standards 403.5.1', says: 'Accessible route 36 in wide.', read: 'in the source' },
    { name: UK_SOURCE, says: '750 / 850 / 1050 mm for 60 / 110 / 220 people.', read: 'in a secondary source' },
    { name: OPERATORS.source, says: 'Exit access at least 28 in at all points.', read: 'in the source' },
  ],
  strength: 'strong',
  caution:
    'A planning aid, not a code review. A published least width is a minimum for one route; your local building or fire official, and ' +
    'licensed professionals, decide.',
  unit: 'mm',
  example: {
    fires: `booth "Example" { limits us }
room { width 30ft  depth 40ft }
desk Left { width 60in  depth 27in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
workstation Sound { desk Left  chair Low  operators Noor }
place Left at 10ft, 50in
walkway Behind { between booth and back-wall  serves 20 }
`,
    passes: `booth "Example" { limits us }
room { width 30ft  depth 40ft }
desk Left { width 60in  depth 27in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
workstation Sound { desk Left  chair Low  operators Noor }
place Left at 10ft, 62in
walkway Behind { between booth and back-wall  serves 20 }
`,
  },
  find: (scene) => scene.booth.walkways.map((walkway) => judge(scene, walkway)),
};

function judge(scene: Scene, walkway: Walkway): FindingDraft {
  const subject = { kind: 'walkway', name: walkway.name } as const;
  const of = `walkway ${walkway.name}`;
  const measured = clearWidth(scene, walkway);
  if (!measured) return unknown(walkway, missing('between', of, 'between booth and back-wall', walkway.origin));
  if ('unplaced' in measured) {
    const lack = missing('place', `the file, for ${measured.unplaced}`, 'place Left at 14ft, 6ft', walkway.origin);
    return unknown(walkway, lack);
  }
  const least = leastWidth(scene.booth.limits, walkway);
  if (!least) return unknown(walkway, missing('serves', of, 'serves 60', walkway.origin));

  const limit = scene.limit('walkway-width', least.width);
  const override = scene.booth.overrides.find(({ check }) => check === 'walkway-width');
  const { from, seat, projection, clear, between } = measured;
  const wide = clear >= limit - TOLERANCE;
  const terms =
    `${scene.length(from)} from ${between[0]} to ${between[1]} − ${scene.length(seat)} occupied seat − ` +
    `${scene.length(projection)} in the way = ${scene.length(clear)}`;
  return {
    subject,
    verdict: exactVerdict(wide, wide),
    measured: clear,
    limit,
    margin: clear - limit,
    message: wide
      ? `${walkway.name} keeps ${scene.length(clear)} clear, not below ${scene.length(limit)}.`
      : `${walkway.name} keeps only ${scene.length(clear)} clear where ${scene.length(limit)} is the least for ${servedBy(walkway)}. Move ${between[0]} ${scene.length(limit - clear)} away from ${between[1]}.`,
    terms,
    source: override ? `the file’s own limit: ${override.reason}` : least.source,
    origin: walkway.origin,
    related: walkway.between!.map(({ origin }) => ({ origin, message: 'one side of the walkway' })),
    assumptions: !override && least.assumption ? [least.assumption] : [],
  };
}

function unknown(walkway: Walkway, lack: Missing): FindingDraft {
  const subject = { kind: 'walkway', name: walkway.name } as const;
  return cannotSay(subject, `how wide ${walkway.name} is, or must be`, lack, walkway.origin);
}

function leastWidth(limits: LimitProfile, walkway: Walkway): LeastWidth | undefined {
  if (walkway.users.value === 'operators') return OPERATORS;
  const people = walkway.serves?.value;
  if (limits === 'uk') {
    if (people === undefined) return undefined;
    const row = UK_TABLE.find(([most]) => people <= most);
    return { width: row ? row[1] : people * 5, source: UK_SOURCE };
  }
  if (walkway.seats.value === 'both-sides' || (people ?? 0) > 50) return US_BUSY;
  return people === undefined ? { ...US_SINGLE, assumption: `${walkway.name} serves at most 50 people` } : US_SINGLE;
}

function servedBy(walkway: Walkway): string {
  if (walkway.users.value === 'operators') return 'operators';
  const people = walkway.serves?.value;
  const seats = walkway.seats.value === 'both-sides' ? ' with seats on both sides' : '';
  return people === undefined ? `the public${seats}` : `${people} people${seats}`;
}
