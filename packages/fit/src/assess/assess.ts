import type {
  Assessment,
  DimensionFigures,
  Finding,
  HeightPart,
  OperatorFigures,
  Remedy,
  WalkwayFigures,
} from '../assessment.js';
import { type Body, meanOf, percentileOf, sdOf } from '../bodies/body.js';
import { dimensionNames } from '../bodies/dimensions.js';
import type { Booth, Operator } from '../booth.js';
import { checks as catalogue } from '../checks/catalogue.js';
import type { Check, ChosenProperty } from '../checks/check.js';
import type { SketchFigures } from '../figures/figures.js';
import { sketchOf } from '../figures/sketch.js';
import { makeScene, type Scene } from '../scene/scene.js';
import { askOnce } from './ask-once.js';
import { assessStations, type StationAssessment } from './by-station.js';
import { finished } from './finished.js';
import { type Steps, taken } from './steps.js';

/** Everything the checks say of a booth, and the figures behind it. Pure: the same booth gives the same assessment. */
export function assess(booth: Booth, checks: readonly Check[] = catalogue): Assessment {
  return taken(assessing(booth, checks));
}

/** The same in steps: each workstation that is not known yet, and each check of the whole booth. */
export function* assessing(booth: Booth, checks: readonly Check[] = catalogue): Steps<Assessment> {
  const scene = makeScene(booth, checks);
  const stations = yield* assessStations(scene, checks);
  const findings = askOnce(yield* eachOf(scene, checks, stations));
  const screens = stations.flatMap((each) => each.screens);
  let sketch: SketchFigures | undefined;
  return {
    booth,
    findings,
    workstations: stations.map(({ figures }) => figures),
    walkways: walkwaysOf(scene, findings),
    ...(screens.length > 0 && { screens }),
    operators: booth.operators.map((operator) => operatorFigures(scene, operator)),
    layout: { ...scene.layout },
    get sketch() {
      return (sketch ??= sketchOf(scene));
    },
  };
}

/** What every check says on its own, each asking for what it lacks. */
export function findingsOfEach(booth: Booth, checks: readonly Check[] = catalogue): readonly Finding[] {
  const scene = makeScene(booth, checks);
  return taken(eachOf(scene, checks, taken(assessStations(scene, checks))));
}

/**
 * What to change of one property, as far as checks can choose a value for it: of the height of a desk, a seat or a foot ring, or of another
 * property. Checks of the whole booth that cannot are not asked.
 */
export function remediesOf(
  booth: Booth,
  property: HeightPart | ChosenProperty,
  checks: readonly Check[] = catalogue,
): readonly Remedy[] {
  const scene = makeScene(booth, checks);
  const asked = checks.filter((check) => isChosenBy(check, property));
  return taken(eachOf(scene, asked, taken(assessStations(scene, checks))))
    .filter(({ verdict }) => verdict !== 'pass')
    .flatMap(({ remedies }) => remedies);
}

function isChosenBy({ rule, chooses }: Check, property: HeightPart | ChosenProperty): boolean {
  return property === 'desk' || property === 'seat' || property === 'ring'
    ? rule !== undefined
    : chooses?.includes(property) === true;
}

function* eachOf(
  scene: Scene,
  checks: readonly Check[],
  stations: readonly StationAssessment[],
): Steps<readonly Finding[]> {
  const found = new Map<Check, Finding[]>(checks.map((check) => [check, []]));
  for (const { findings } of stations) for (const [check, own] of findings) found.get(check)?.push(...own);
  for (const check of checks) {
    if (!check.find || check.ofEachStation) continue;
    const own = found.get(check)!;
    for (const draft of check.find(scene)) own.push(finished(check, draft, scene.booth));
    yield;
  }
  return checks.flatMap((check) => found.get(check)!);
}

function walkwaysOf(scene: Scene, findings: readonly Finding[]): WalkwayFigures[] {
  return scene.booth.walkways.map(({ name, origin }) => {
    const finding = findings.find(({ check, subject }) => check === 'walkway-width' && subject.name === name);
    return {
      name,
      origin,
      ...(finding?.measured !== undefined && { clear: finding.measured }),
      ...(finding?.terms !== undefined && { terms: finding.terms }),
    };
  });
}

function operatorFigures(scene: Scene, operator: Operator): OperatorFigures {
  const known = rememberedOperators.get(operator);
  if (known) return known;
  const { body, origin } = scene.persons.get(operator.name)!;
  const figures = {
    name: operator.name,
    origin,
    female: body.sexes.reduce((sum, part) => sum + (part.sex === 'female' ? part.weight : 0), 0),
    get dimensions() {
      return dimensionsOf(body);
    },
  };
  rememberedOperators.set(operator, figures);
  return figures;
}

const rememberedOperators = new WeakMap<Operator, OperatorFigures>();

function dimensionsOf(body: Body): readonly DimensionFigures[] {
  const known = remembered.get(body);
  if (known) return known;
  const figures = dimensionNames.map((dimension) => ({
    dimension,
    mean: meanOf(body, dimension),
    sd: sdOf(body, dimension),
    p5: percentileOf(body, dimension, 0.05),
    p50: percentileOf(body, dimension, 0.5),
    p95: percentileOf(body, dimension, 0.95),
    measured: body.measured.has(dimension),
  }));
  remembered.set(body, figures);
  return figures;
}

const remembered = new WeakMap<Body, readonly DimensionFigures[]>();
