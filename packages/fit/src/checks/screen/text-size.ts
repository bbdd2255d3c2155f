import { withName } from '../../lookup.js';
import type { Missing } from '../../assessment.js';
import type { Monitor, Workstation } from '../../booth.js';
import { quantileOf } from '../../bodies/people.js';
import { verdictOf } from '../../scene/verdict.js';
import { keep } from '../../scene/kept.js';
import { risesAt } from '../../scene/screen-angles.js';
import type { Scene } from '../../scene/scene.js';
import { linesFor, shareOver } from '../../scene/screen-lines.js';
import { distanceTo, eyesAt, viewsAt, type Eyes, type Look, type View } from '../../scene/viewing.js';
import { missing, type Station } from '../../stations/station.js';
import type { Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { aboutView, eachViewAt, whoLooks } from './each-view.js';
import { say } from '../../words/say.js';

/** Arcminutes. */
const EASY = 20;
const LEAST = 16;
/** Rounding of a printed size, in arcminutes: half a hundredth of the preferred bound. */
const SLACK = 0.1;
/** A capital letter's share of a font's size. Common practice, no source. */
const CAPITAL_SHARE = 0.7;
/** Height = 6.283 · distance · arcminutes / 21600 (NUREG-0700 Rev. 2, 1.3.1-4). */
const ARCMINUTES = 21600 / 6.283;

export const textSize: Check = {
  id: 'text-size',
  group: 'screen',
  title: 'Text size',
  question: 'Is the smallest text large enough to read from there?',
  computes:
    'The angle at which a capital letter is seen, in arcminutes: its height × 21600 / (6.283 × distance from the eye to the middle ' +
    'of the screen). A font size in pixels counts as a capital of 0.7 of it (common practice, no source).',
  limits: 'Preferred: at least 20 arcminutes. Outer: at least 16.',
  sources: [
    {
      name: 'NUREG-0700 Rev. 2, 1.3.1-4',
      says: 'Character height at least 16 arcminutes, preferred 20 to 22; the formula.',
      read: 'in the source',
    },
    { name: 'ISO 9241-3', says: 'The same: 16 at least, 20 to 22 preferred.', read: 'in a secondary source' },
    {
      name: 'ISO 11064-4:2013',
      says: 'Farthest distance 215 times the height of a Latin capital, which is 16 arcminutes.',
      read: 'in a secondary source',
    },
    {
      name: 'common practice',
      says: 'A capital is about 0.7 of the font size; no source seen gives it.',
      read: 'own bound',
    },
  ],
  strength: 'strong',
  restsOn: ['shoe', 'slump', 'lean', 'aspect'],
  chooses: ['monitor text'],
  unit: 'arcmin',
  example: {
    fires: `desk Left { width 60in  depth 30in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
monitor Lyrics { diagonal 24in  pixels 1920 x 1080  text 12px }
workstation Words { desk Left  chair Low  operators Noor  monitor Lyrics { setback 28in  bottom 4in above desk } }
`,
    passes: `desk Left { width 60in  depth 30in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
monitor Lyrics { diagonal 24in  pixels 1920 x 1080  text 28px }
workstation Words { desk Left  chair Low  operators Noor  monitor Lyrics { setback 28in  bottom 4in above desk } }
`,
  },
  find: (scene) => [
    ...scene.booth.monitors.filter((monitor) => isWatched(scene, monitor)).flatMap(unsaid),
    ...scene.stations.flatMap((station) => textAt(scene, station)),
  ],
};

/** How it looks rests on the station alone; advice asks everybody who looks at the monitor, wherever that is. */
function textAt(scene: Scene, station: Station): readonly FindingDraft[] {
  const looks = keep(station, 'how large text looks', () =>
    eachViewAt(
      scene,
      station,
      (what) => say`Cannot say how large the text looks on ${what}.`,
      (eyes, view) => (lacksText(view.monitor) ? undefined : judge(scene, eyes, view)),
    ),
  );
  return looks.map((draft) =>
    draft.verdict === 'marginal' || draft.verdict === 'fail' ? advised(scene, draft) : draft,
  );
}

function judge(scene: Scene, eyes: Eyes, view: View): FindingDraft {
  const { monitor, name } = view;
  const capital = capitalOf(monitor);
  const within = (least: number) =>
    shareOver(eyes, view, risesAt(view, { min: 0, max: (capital * ARCMINUTES) / (least - SLACK) }));
  const share = within(EASY);
  const shareAtLimit = within(LEAST);
  const verdict = verdictOf(share, shareAtLimit, eyes.person.wanted);
  const limit = verdict === 'fail' ? LEAST : EASY;
  const away = distanceOf(view, eyes);
  const measured = (capital * ARCMINUTES) / away;
  const distance = scene.length(away);
  const [high, angle] = [capital.toFixed(1), (Math.floor(measured * 10) / 10).toFixed(1)];
  const who = whoLooks(eyes);
  return {
    ...aboutView(eyes, view),
    verdict,
    measured,
    limit,
    margin: measured - limit,
    share,
    shareAtLimit,
    origin: monitor.text!.origin ?? monitor.origin,
    message:
      verdict === 'pass'
        ? say`Capitals on ${name} are ${high} mm high, ${angle} arcminutes at ${distance}, for ${who}: easy to read.`
        : measured < EASY
          ? say`Capitals on ${name} are ${high} mm high, ${angle} arcminutes at ${distance}, for ${who}; ${EASY} read easily, below ${LEAST} eyes strain.`
          : say`Capitals on ${name} are ${high} mm high, ${angle} arcminutes at ${distance}, for ${who}, and less to eyes farther off; ${EASY} read easily, below ${LEAST} eyes strain.`,
  };
}

function advised(scene: Scene, draft: FindingDraft): FindingDraft {
  const monitor = withName(scene.booth.monitors, draft.subject.name)!;
  const text = sizeFor(monitor, farthest(scene, monitor));
  const title = say`Make the smallest text of ${monitor.name} ${text}: easy to read for everyone who looks at it`;
  const origin = monitor.text!.origin;
  return {
    ...draft,
    message: `${draft.message} ${say`Make the smallest text ${text}.`}`,
    remedies: origin ? [{ title, changes: [{ origin, text }], safe: true }] : [],
  };
}

function distanceOf(view: View, eyes: Look): Millimetres {
  return distanceTo(view, linesFor(view, eyes).centre, eyes.eye);
}

function capitalOf({ text, diagonal, pixels }: Monitor): Millimetres {
  const size = text!.value;
  return 'capital' in size ? size.capital : size.pixels * CAPITAL_SHARE * pitchOf(diagonal!.value, pixels!.value);
}

function pitchOf(diagonal: Millimetres, { across, down }: { across: number; down: number }): Millimetres {
  return diagonal / Math.hypot(across, down);
}

/** The distance that covers everyone who looks at a monitor, wherever it is used: as many of each body as must pass. */
function farthest(scene: Scene, monitor: Monitor): Millimetres {
  const ofScene = remembered.get(scene) ?? new Map<Monitor, Millimetres>();
  remembered.set(scene, ofScene);
  const known = ofScene.get(monitor);
  if (known !== undefined) return known;
  const distances = scene.stations
    .filter(({ workstation }) => watchedAt(workstation).includes(monitor.name))
    .map((station) =>
      keep(station, `the farthest from ${monitor.name}`, () => farthestAt(scene, station, monitor.name)),
    );
  const distance = Math.max(...distances);
  ofScene.set(monitor, distance);
  return distance;
}

function farthestAt(scene: Scene, station: Station, monitor: string): Millimetres {
  const views = viewsAt(station).views.filter(({ name }) => name === monitor);
  if (views.length === 0) return -Infinity;
  const distances = eyesAt(scene, station).flatMap(({ person, posture, all }) =>
    views.map((view) => {
      const column = all.eye.map((eye, index) => distanceOf(view, { posture, eye, desk: all.desk[index]! }));
      return quantileOf(person.people, column, person.wanted);
    }),
  );
  return Math.max(...distances);
}

const remembered = new WeakMap<Scene, Map<Monitor, Millimetres>>();

/** The smallest text that is easy to read from a distance, as it would be typed. */
function sizeFor({ text, diagonal, pixels }: Monitor, distance: Millimetres): string {
  const capital = (EASY * distance) / ARCMINUTES;
  if ('capital' in text!.value) return `${(Math.ceil(capital * 10 - 1e-9) / 10).toFixed(1)}mm`;
  return `${Math.ceil(capital / CAPITAL_SHARE / pitchOf(diagonal!.value, pixels!.value) - 1e-9)}px`;
}

function isWatched(scene: Scene, { name }: Monitor): boolean {
  const known = watched.get(scene) ?? new Set(scene.stations.flatMap(({ workstation }) => watchedAt(workstation)));
  watched.set(scene, known);
  return known.has(name);
}

const watched = new WeakMap<Scene, ReadonlySet<string>>();

function watchedAt({ screens }: Workstation): readonly string[] {
  return screens.map(({ monitor }) => monitor.name);
}

function unsaid(monitor: Monitor): FindingDraft[] {
  const subject = { kind: 'monitor', name: monitor.name } as const;
  const lack = lacksText(monitor);
  return lack
    ? [cannotSay(subject, say`Cannot say how large the text of ${monitor.name} looks.`, lack, monitor.origin)]
    : [];
}

function lacksText({ name, text, pixels, origin }: Monitor): Missing | undefined {
  if (!text) return missing('text', `monitor ${name}`, 'text 14px', origin);
  if (!pixels && 'pixels' in text.value) return missing('pixels', `monitor ${name}`, 'pixels 1920 x 1080', origin);
  return undefined;
}
