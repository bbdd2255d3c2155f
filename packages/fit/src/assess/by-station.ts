import type { Finding, ScreenFigures, WorkstationFigures } from '../assessment.js';
import type { Booth, Crowd, Desk, Monitor, Operator, Rack, Seat, Workstation } from '../booth.js';
import type { Check } from '../checks/check.js';
import { adoptKept } from '../scene/kept.js';
import { byName, makeScene, type Scene } from '../scene/scene.js';
import { linesFor } from '../scene/screen-lines.js';
import { adoptEyes, distanceTo, eyesAt, viewsAt, type Eyes } from '../scene/viewing.js';
import type { Station } from '../stations/station.js';
import { languageSpoken } from '../words/say.js';
import { assessBodies } from './body-findings.js';
import { finished } from './finished.js';
import type { Steps } from './steps.js';

/** What the checks that ask each workstation by itself say of one. */
export interface StationAssessment {
  readonly findings: ReadonlyMap<Check, readonly Finding[]>;
  readonly figures: WorkstationFigures;
  readonly screens: readonly ScreenFigures[];
  readonly eyes: readonly Eyes[];
  /** What the checks of the whole booth kept of it. */
  readonly kept: Map<string, unknown>;
}

/**
 * Each station is assessed in a booth cut down to what it refers to and to the stations that share its desk or seat, whose people its
 * remedies must not forget. So nothing else can matter to it, and as long as all of that is the same (the same objects), so is
 * the answer. Each that is found anew is a step.
 */
export function* assessStations(scene: Scene, checks: readonly Check[]): Steps<readonly StationAssessment[]> {
  const surroundings = new Surroundings(scene, checks);
  const known = ofWorkstation(checks);
  const all: StationAssessment[] = [];
  for (const station of scene.stations) {
    const parts = surroundings.partsOf(station);
    const last = known.get(station.workstation);
    const isKnown = last !== undefined && isSame(last.parts, parts);
    const assessment = isKnown
      ? last.assessment
      : assessStation(surroundings.cutDownTo(station), checks, surroundings.indexOf(station));
    if (!isKnown) known.set(station.workstation, { parts, assessment });
    adoptEyes(scene, station, assessment.eyes);
    adoptKept(station, assessment.kept);
    all.push(assessment);
    if (!isKnown) yield;
  }
  return all;
}

/** The last assessment of a workstation, and all that it rests on. */
interface Known {
  readonly parts: readonly unknown[];
  readonly assessment: StationAssessment;
}

type OfWorkstation = WeakMap<Workstation, Known>;

/** By language, since findings hold texts: a report in English and an editor in another ask by turns. */
const remembered = new WeakMap<object, WeakMap<readonly Check[], OfWorkstation>>();

function ofWorkstation(checks: readonly Check[]): OfWorkstation {
  const inLanguage = remembered.get(languageSpoken()) ?? new WeakMap<readonly Check[], OfWorkstation>();
  remembered.set(languageSpoken(), inLanguage);
  const known = inLanguage.get(checks) ?? new WeakMap<Workstation, Known>();
  inLanguage.set(checks, known);
  return known;
}

function assessStation(scene: Scene, checks: readonly Check[], index: number): StationAssessment {
  const { booth } = scene;
  const station = scene.stations[index]!;
  const { findings: drafts, figures } = assessBodies(
    scene,
    station,
    checks.filter(({ rule }) => rule),
  );
  const alone = withOnly(scene, station);
  const findings = new Map<Check, readonly Finding[]>();
  for (const check of checks) {
    const own = [...(drafts.get(check) ?? []), ...(check.ofEachStation ? (check.find?.(alone) ?? []) : [])];
    if (own.length > 0)
      findings.set(
        check,
        own.map((draft) => finished(check, draft, booth)),
      );
  }
  return { findings, figures, screens: screensOf(alone, station), eyes: eyesAt(alone, station), kept: new Map() };
}

function withOnly(scene: Scene, station: Station): Scene {
  return scene.stations.length === 1
    ? scene
    : (Object.create(scene, { stations: { value: [station], enumerable: true } }) as Scene);
}

function screensOf(scene: Scene, station: Station): ScreenFigures[] {
  return viewsAt(station).views.map((view) => ({
    workstation: station.name,
    monitor: view.name,
    origin: view.use.monitor.origin,
    distances: eyesAt(scene, station).map((eyes) => ({
      who: eyes.person.name,
      posture: eyes.posture,
      distance: distanceTo(view, linesFor(view, eyes).centre, eyes.eye),
    })),
  }));
}

/** Finds for each station of a booth what it rests on. */
class Surroundings {
  private readonly monitors: ReadonlyMap<string | undefined, Monitor>;
  private readonly operators: ReadonlyMap<string | undefined, Operator>;
  private readonly crowds: ReadonlyMap<string | undefined, Crowd>;
  private readonly racks = new Map<string, Rack[]>();
  private readonly sharing = new Map<Desk | Seat, Station[]>();
  private readonly tokens = new Map<Desk | Seat, object>();
  private readonly frame: readonly unknown[];

  constructor(
    private readonly scene: Scene,
    private readonly checks: readonly Check[],
  ) {
    const { booth, stations } = scene;
    this.monitors = byName(booth.monitors);
    this.operators = byName(booth.operators);
    this.crowds = byName(booth.crowds);
    for (const rack of booth.racks) if (rack.under) add(this.racks, rack.under.desk.name, rack);
    for (const station of stations) for (const shared of sharedBy(station)) add(this.sharing, shared, station);
    const { name, origin, show, limits, shoe, slump, overrides, accepted, room } = booth;
    const frame = [name, show, limits, shoe.value, slump.value, origin, room, ...overrides, null, ...accepted];
    this.frame = [tokenFor(frames, frame)];
  }

  /** All that the answer for a station depends on, as objects that are compared by identity. */
  partsOf(station: Station): readonly unknown[] {
    return [...this.frame, ...this.own(station), ...sharedBy(station).map((shared) => this.tokenOf(shared))];
  }

  indexOf(station: Station): number {
    return this.around(station).indexOf(station);
  }

  /** The booth of the station and of those that share its desk or seat. */
  cutDownTo(station: Station): Scene {
    const { booth } = this.scene;
    const around = this.around(station);
    const people = [...new Set(around.flatMap((each) => each.people.map(({ name }) => name)))];
    const cut: Booth = {
      ...booth,
      operators: people.flatMap((name) => this.operators.get(name) ?? []),
      crowds: people.flatMap((name) => this.crowds.get(name) ?? []),
      desks: unique(around.flatMap(({ desk }) => desk ?? [])),
      seats: unique(around.flatMap(({ seat }) => seat ?? [])),
      monitors: unique(around.flatMap((each) => this.monitorsOf(each))),
      workstations: around.map(({ workstation }) => workstation),
      walkways: [],
      racks: unique(around.flatMap((each) => this.racksOf(each))),
      skirts: [],
      platforms: [],
      cables: [],
      placements: [],
    };
    return makeScene(cut, this.checks);
  }

  /** The station and its mates, in the order of the booth. */
  private around(station: Station): readonly Station[] {
    const shared = sharedBy(station);
    if (shared.length === 0) return [station];
    const [first = [], second = []] = shared.map((each) => this.sharing.get(each)!);
    if (second.length <= 1 || first === second) return first;
    if (first.length <= 1) return second;
    const all = new Set([...first, ...second]);
    return this.scene.stations.filter((each) => all.has(each));
  }

  private own(station: Station): readonly unknown[] {
    const { workstation, desk, seat, people } = station;
    return [workstation, desk, seat, ...people, ...this.monitorsOf(station), ...this.racksOf(station)];
  }

  private monitorsOf({ workstation }: Station): readonly Monitor[] {
    return workstation.screens.flatMap(({ monitor }) => this.monitors.get(monitor.name) ?? []);
  }

  private racksOf({ desk }: Station): readonly Rack[] {
    return (desk && this.racks.get(desk.name)) ?? [];
  }

  /** One object for all stations at a desk or seat, the same as last time if none of them changed. */
  private tokenOf(shared: Desk | Seat): object {
    const made = this.tokens.get(shared);
    if (made) return made;
    const parts = this.sharing.get(shared)!.flatMap((station) => this.own(station));
    const known = groups.get(shared);
    const token = known && isSame(known.parts, parts) ? known.token : {};
    groups.set(shared, { parts, token });
    this.tokens.set(shared, token);
    return token;
  }
}

interface Token {
  readonly parts: readonly unknown[];
  readonly token: object;
}

const groups = new WeakMap<Desk | Seat, Token>();
/** Of the booths that are looked at by turns. */
const frames: Token[] = [];
const REMEMBERED_FRAMES = 8;

function tokenFor(known: Token[], parts: readonly unknown[]): object {
  const index = known.findIndex((each) => isSame(each.parts, parts));
  const [found = { parts, token: {} }] = index < 0 ? [] : known.splice(index, 1);
  known.unshift(found);
  known.length = Math.min(known.length, REMEMBERED_FRAMES);
  return found.token;
}

function sharedBy({ desk, seat }: Station): readonly (Desk | Seat)[] {
  return [...(desk ? [desk] : []), ...(seat ? [seat] : [])];
}

function isSame(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((part, index) => part === b[index]);
}

function unique<Thing>(things: readonly Thing[]): readonly Thing[] {
  return [...new Set(things)];
}

function add<Key, Value>(map: Map<Key, Value[]>, key: Key, value: Value): void {
  const known = map.get(key);
  if (known) known.push(value);
  else map.set(key, [value]);
}
