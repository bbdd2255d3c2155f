import type {
  Assessment,
  DimensionFigures,
  Finding,
  OperatorFigures,
  Related,
  ScreenFigures,
  WalkwayFigures,
} from '../assessment.js';
import { type Body, meanOf, percentileOf, sdOf } from '../bodies/body.js';
import { dimensionNames } from '../bodies/dimensions.js';
import type { Booth } from '../booth.js';
import { checks as catalogue } from '../checks/catalogue.js';
import type { Check, FindingDraft } from '../checks/check.js';
import type { SketchFigures } from '../figures/figures.js';
import { sketchOf } from '../figures/sketch.js';
import { makeScene, type Scene } from '../scene/scene.js';
import { distanceTo, eyesAt, linesOf, viewsAt } from '../scene/viewing.js';
import { assessBodies } from './body-findings.js';
import { said, say } from '../words/say.js';

/** Everything the checks say of a booth, and the figures behind it. Pure: the same booth gives the same assessment. */
export function assess(booth: Booth, checks: readonly Check[] = catalogue): Assessment {
  const scene = makeScene(booth, checks);
  const bodies = assessBodies(
    scene,
    checks.filter((check) => check.rule),
  );
  const findings = checks.flatMap((check) => {
    const drafts = [...(bodies.findings.get(check) ?? []), ...(check.find?.(scene) ?? [])];
    return drafts.map((draft) => finished(check, draft, booth));
  });
  const screens = screensOf(scene);
  let sketch: SketchFigures | undefined;
  return {
    booth,
    findings,
    workstations: bodies.workstations,
    walkways: walkwaysOf(scene, findings),
    ...(screens.length > 0 && { screens }),
    operators: booth.operators.map((operator) => operatorFigures(scene, operator.name)),
    layout: { ...scene.layout },
    get sketch() {
      return (sketch ??= sketchOf(scene));
    },
  };
}

function finished(check: Check, draft: FindingDraft, booth: Booth): Finding {
  const acceptance = booth.accepted.find(
    (one) => one.check === check.id && (one.subject === undefined || one.subject === draft.subject.name),
  );
  return {
    check: check.id,
    strength: check.strength,
    ...(check.caution !== undefined && { caution: said(check.caution) }),
    ...(draft.measured !== undefined && check.unit && { unit: check.unit }),
    remedies: [],
    assumptions: [],
    ...draft,
    related: [...(draft.related ?? []), ...personOf(draft, booth)],
    source: said(draft.source ?? check.sources[0]!.name),
    ...(draft.assumptions && { assumptions: draft.assumptions.map(said) }),
    ...(acceptance && draft.verdict !== 'pass' && { accepted: acceptance.reason }),
  };
}

/** Where the person is declared whom a finding is about, unless it leads there already. */
function personOf({ operator, related = [] }: FindingDraft, { operators, crowds }: Booth): readonly Related[] {
  const person = [...operators, ...crowds].find(({ name }) => name === operator);
  if (!person || related.some(({ origin }) => origin === person.origin)) return [];
  return [{ origin: person.origin, message: say`what is known of ${person.name}` }];
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

function screensOf(scene: Scene): ScreenFigures[] {
  return scene.stations.flatMap((station) =>
    viewsAt(station).views.map((view) => ({
      workstation: station.name,
      monitor: view.name,
      origin: view.use.monitor.origin,
      distances: eyesAt(scene, station).map(({ person, posture, eye, desk }) => ({
        who: person.name,
        posture,
        distance: distanceTo(view, linesOf(view, desk).centre, eye),
      })),
    })),
  );
}

function operatorFigures(scene: Scene, name: string): OperatorFigures {
  const { body, origin } = scene.persons.get(name)!;
  return {
    name,
    origin,
    female: body.sexes.reduce((sum, part) => sum + (part.sex === 'female' ? part.weight : 0), 0),
    dimensions: dimensionsOf(body),
  };
}

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
