import type { Missing } from '../../assessment.js';
import type { Walkway } from '../../booth.js';
import { clearWidth } from '../../layout/clear-width.js';
import { PLANNING_AID } from '../../limits/allowances.js';
import { heldTo } from '../../limits/held-to.js';
import { leastWidth } from '../../limits/least-width.js';
import { profiles } from '../../limits/profiles.js';
import { exactVerdict } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { TOLERANCE } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { lacksServes, lacksSide, subjectOf, termsOf } from './walkways.js';
import { widen } from './widen.js';
import { say } from '../../words/say.js';

export const walkwayWidth: Check = {
  id: 'walkway-width',
  group: 'walkway',
  title: 'Clear width of a walkway',
  question: 'How wide is the way that is left for people to pass?',
  computes:
    'The narrowest distance between the two sides, less 19 in (483 mm) from the edge of a desk that people sit at, less what ' +
    'stands in the way: screens over the edge, columns, wheelchair spaces, and what the walkway names as a projection. The public walks ' +
    'round a platform, not on it.',
  limits:
    'us and generic: 914 mm (36 in); 1067 mm (42 in) over 50 people, or with seats on both sides and 50 people or more. uk: 750 mm to 60 people, ' +
    '850 to 110, 1050 to 220, then 5 mm each; at least 900 where the room keeps a wheelchair space. Operators only: 711 mm (28 in).',
  sources: [
    {
      name: 'IBC/IFC 2018 1029.9.1 and 1029.13.1 (2021: 1030)',
      says: 'Level aisle 42 in with seats both sides (36 in for fewer than 50 seats), 36 in with seats on one side; a seat at a table counts 19 in from the table edge.',
      read: 'in the source',
    },
    { name: '2010 ADA Standards 403.5.1', says: 'Accessible route 36 in wide.', read: 'in the source' },
    {
      name: profiles.uk.walkway.perPerson.source,
      says: '750 / 850 / 1050 mm for 60 / 110 / 220 people.',
      read: 'in a secondary source',
    },
    {
      name: profiles.uk.walkway.wheelchair!.source,
      says: '900 mm where wheelchair users are likely.',
      read: 'in a secondary source',
    },
    {
      name: profiles.us.walkway.operatorsOnly.source,
      says: 'Exit access at least 28 in at all points.',
      read: 'in the source',
    },
  ],
  strength: 'strong',
  takesLimit: true,
  chooses: ['seating first'],
  caution: `A published least width is a minimum for one route. ${PLANNING_AID}`,
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
  const measured = clearWidth(scene, walkway);
  if (!measured || 'unplaced' in measured) return unknown(walkway, lacksSide(scene, walkway, measured?.unplaced));
  const published = leastWidth(scene, walkway);
  if (!published) return unknown(walkway, lacksServes(walkway));

  const { value: limit, ...held } = heldTo(scene, 'walkway-width', published);
  const { clear, between, inTheWay } = measured;
  const wide = clear >= limit - TOLERANCE;
  const kept =
    inTheWay === undefined
      ? say`${scene.length(clear)} clear`
      : say`${scene.length(clear)} clear (${inTheWay} stands in the way)`;
  const least = held.own ? say`the file’s own ${scene.length(limit)}` : scene.length(limit);
  return {
    subject: subjectOf(walkway),
    verdict: exactVerdict(wide, wide),
    measured: clear,
    limit,
    margin: clear - limit,
    message: wide
      ? say`${walkway.name} keeps ${kept}, not below ${least}.`
      : say`${walkway.name} keeps only ${kept} where ${least} is the least for ${servedBy(walkway)}. Move ${between[0]} ${scene.length(limit - clear)} away from ${between[1]}.`,
    terms: termsOf(scene, measured),
    source: held.source,
    origin: walkway.origin,
    related: [
      ...walkway.between!.map(({ origin }) => ({ origin, message: say`one side of the walkway` })),
      ...held.related,
    ],
    remedies: wide ? [] : widen(scene, walkway, measured, limit),
    assumptions: held.assumptions,
  };
}

function unknown(walkway: Walkway, lack: Missing): FindingDraft {
  return cannotSay(subjectOf(walkway), say`Cannot say how wide ${walkway.name} is, or must be.`, lack, walkway.origin);
}

function servedBy(walkway: Walkway): string {
  if (walkway.users.value === 'operators') return say`operators`;
  const people = walkway.serves?.value;
  if (walkway.seats.value === 'both-sides')
    return people === undefined
      ? say`the public with seats on both sides`
      : say`${people} people with seats on both sides`;
  return people === undefined ? say`the public` : say`${people} people`;
}
