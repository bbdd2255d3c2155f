import type { Walkway } from '../../booth.js';
import { clearWidth } from '../../layout/clear-width.js';
import { PLANNING_AID } from '../../limits/allowances.js';
import { heldTo, profileOf } from '../../limits/held-to.js';
import { widthForPeople } from '../../limits/least-width.js';
import { profiles } from '../../limits/profiles.js';
import { exactVerdict } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { INCH, TOLERANCE, type Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { lacksServes, lacksSide, subjectOf } from './walkways.js';
import { widen } from './widen.js';
import { say } from '../../words/say.js';

export const walkwayCapacity: Check = {
  id: 'walkway-capacity',
  group: 'walkway',
  title: 'Width for the people who need it',
  question: 'Is it wide enough for the people it serves?',
  computes: 'The clear width of the walkway, against the people it serves times the width for each.',
  limits:
    'us and generic: 5.1 mm (0.2 in) for each person; 3.8 mm (0.15 in) only in a room with sprinklers and a voice alarm, both. ' +
    'uk: 750 mm to 60 people, 850 to 110, 1050 to 220, not between; beyond 220, 5 mm for each.',
  sources: [
    {
      name: profiles.us.walkway.perPerson.source,
      says: '0.2 in for each occupant; 0.15 in with sprinklers throughout and an emergency voice and alarm communication system.',
      read: 'in the source',
    },
    {
      name: profiles.uk.walkway.perPerson.source,
      says: '750 / 850 / 1050 mm for 60 / 110 / 220 people, then 5 mm each; widths below 1050 are not interpolated.',
      read: 'in a secondary source',
    },
  ],
  strength: 'strong',
  takesLimit: true,
  chooses: ['seating first'],
  caution:
    'The number of people is what the file says; the load that the building posts rules, and the widest way out may have to be ' +
    `left out of the count. ${PLANNING_AID}`,
  unit: 'mm',
  example: {
    fires: `booth "Example" { limits us }
room { width 30ft  depth 40ft  occupants 240 }
desk Left { width 60in  depth 27in  height 40in }
place Left at 10ft, 45in
walkway Behind { between booth and back-wall  serves 240 }
`,
    passes: `booth "Example" { limits us }
room { width 30ft  depth 40ft  occupants 240  sprinklers  voice-alarm }
desk Left { width 60in  depth 27in  height 40in }
place Left at 10ft, 45in
walkway Behind { between booth and back-wall  serves 240 }
`,
  },
  find: (scene) => scene.booth.walkways.flatMap((walkway) => judge(scene, walkway)),
};

function judge(scene: Scene, walkway: Walkway): FindingDraft[] {
  const people = walkway.serves?.value;
  if (people === undefined && walkway.users.value === 'operators') return [];
  const subject = subjectOf(walkway);
  const topic = say`Cannot say whether ${walkway.name} is wide enough for its people.`;
  if (people === undefined) return [cannotSay(subject, topic, lacksServes(walkway), walkway.origin)];
  const measured = clearWidth(scene, walkway);
  if (!measured || 'unplaced' in measured)
    return [cannotSay(subject, topic, lacksSide(scene, walkway, measured?.unplaced), walkway.origin)];

  const { value: limit, ...held } = heldTo(scene, 'walkway-capacity', widthForPeople(scene, people));
  const { clear } = measured;
  const enough = clear >= limit - TOLERANCE;
  const [keeps, least] = [scene.length(clear), scene.length(limit)];
  return [
    {
      subject,
      verdict: exactVerdict(enough, enough),
      measured: clear,
      limit,
      margin: clear - limit,
      message: enough
        ? held.own
          ? say`${walkway.name} keeps ${keeps} clear; the file’s own least is ${least}.`
          : say`${walkway.name} keeps ${keeps} clear; ${people} people need ${least}.`
        : [
            held.own
              ? say`${walkway.name} keeps ${keeps} clear, but the file’s own least is ${least}: they would queue on their way out.`
              : say`${walkway.name} keeps ${keeps} clear, but ${people} people need ${least}: they would queue on their way out.`,
            say`Widen it by ${scene.length(limit - clear)}, or give some of them another way.`,
            ...halfOfTheException(scene),
          ].join(' '),
      ...(!held.own && { terms: termsOf(scene, people, limit) }),
      source: held.source,
      origin: walkway.serves?.origin ?? walkway.origin,
      related: held.related,
      remedies: enough ? [] : widen(scene, walkway, measured, limit),
      assumptions: held.assumptions,
    },
  ];
}

function termsOf(scene: Scene, people: number, need: Millimetres): string {
  if (people <= profileOf(scene).walkway.perPersonBeyond)
    return say`${people} people: ${scene.length(need)} by the table`;
  return say`${people} people × ${fine(scene, need / people)} = ${scene.length(need)}`;
}

/** Widths for one person are finer than a tape is read. */
function fine(scene: Scene, value: Millimetres): string {
  const inches = scene.booth.show === 'in' || scene.booth.show === 'ft';
  return inches ? `${Number((value / INCH).toFixed(2))} in` : `${Number(value.toFixed(1))} mm`;
}

/** One of the two systems does not lower the figure. */
function halfOfTheException(scene: Scene): string[] {
  const { room } = scene.booth;
  if (!profileOf(scene).walkway.perPersonReduced || !room || room.sprinklers === room.voiceAlarm) return [];
  return room.sprinklers
    ? [say`Sprinklers alone do not lower the figure: it takes a voice alarm too.`]
    : [say`A voice alarm alone does not lower the figure: it takes sprinklers too.`];
}
