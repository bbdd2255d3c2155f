import type { Missing } from '../../assessment.js';
import type { Desk, PlanPoint, Platform, Polygon, Rack, Skirt } from '../../booth.js';
import { typeLength } from '../../format.js';
import { exposedLength } from '../../layout/exposed.js';
import { heldTo } from '../../limits/held-to.js';
import { exactVerdict } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { missing } from '../../stations/station.js';
import { INCH, TOLERANCE, type Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { sizeUp } from '../sizes.js';
import { say } from '../../words/say.js';

const OVERLAP = 6 * INCH;
const CLIPS = { value: 12 * INCH, source: 'makers’ usual instructions: common practice, from memory' };
const FARTHEST_CLIPS = 24 * INCH;

export const skirtRun: Check = {
  id: 'skirt-run',
  group: 'skirt',
  title: 'Cloth and clips',
  question: 'Is there cloth enough for the edges it covers, and a clip often enough?',
  computes:
    'The fronts and ends that the skirt covers, added up; what a neighbour hides, as in a row, needs no cloth. Against the cloth’s length ' +
    'less one overlap; and the stated distance from clip to clip.',
  limits:
    'Preferred: the edges and one overlap of 152 mm (6 in). Outer: the edges. Clips, preferred: each 305 mm (12 in). Outer: each 610 mm (24 in). ' +
    '`limit skirt-run` sets the distance between clips.',
  sources: [
    {
      name: 'table-linen trade tables',
      says: 'A 6 ft table 30 in wide takes 11 ft of skirt on three sides, an 8 ft one 13 ft.',
      read: 'in a secondary source',
    },
    { name: CLIPS.source, says: 'A clip about each 12 in, at most each 18 to 24.', read: 'from memory' },
    {
      name: 'own allowance',
      says: 'One overlap of 6 in, where the cloth’s ends meet or turn a corner.',
      read: 'own bound',
    },
  ],
  strength: 'weak',
  takesLimit: true,
  chooses: ['skirt length'],
  unit: 'mm',
  example: {
    fires: `booth "Example" { }
desk Left { width 60in  depth 27in  height 40in }
desk Right { width 48in  depth 27in  height 40in }
place Left, Right in a row at 14ft, 6ft
skirt Front { on Left, Right  sides front, ends  drop 39in  length 13ft }
`,
    passes: `booth "Example" { }
desk Left { width 60in  depth 27in  height 40in }
desk Right { width 48in  depth 27in  height 40in }
place Left, Right in a row at 14ft, 6ft
skirt Front { on Left, Right  sides front, ends  drop 39in  length 14ft  clips 12in }
`,
  },
  find: (scene) => scene.booth.skirts.flatMap((skirt) => [cloth(scene, skirt), ...clips(scene, skirt)]),
};

function cloth(scene: Scene, skirt: Skirt): FindingDraft {
  const edges = edgesOf(scene, skirt);
  const subject = { kind: 'skirt', name: skirt.name } as const;
  const unknown = (lack: Missing) =>
    cannotSay(
      subject,
      say`Cannot say whether the cloth of ${skirt.name} is long enough.`,
      lack,
      lack.origin ?? skirt.origin,
    );
  if ('property' in edges) return unknown(edges);
  if (!skirt.length) return unknown(missing('length', `skirt ${skirt.name}`, 'length 15ft', skirt.origin));
  const run = edges.reduce((sum, { length }) => sum + length, 0);
  const wanted = run + OVERLAP;
  const length = skirt.length.value;
  const verdict = exactVerdict(length >= wanted - TOLERANCE, length >= run - TOLERANCE);
  const limit = verdict === 'fail' ? run : wanted;
  const text = typeLength(sizeUp(wanted, scene.booth.show), scene.booth.show);
  const [cloth, needed] = [scene.length(length), scene.length(run)];
  const enough = scene.length(sizeUp(wanted, scene.booth.show));
  const alone = unplacedOf(scene, skirt);
  return {
    subject,
    verdict,
    measured: length,
    limit,
    margin: length - limit,
    message:
      verdict === 'pass'
        ? say`${skirt.name} has ${cloth} of cloth for ${needed} of edges: enough, with an overlap.`
        : verdict === 'marginal'
          ? say`${skirt.name} has ${cloth} of cloth for ${needed} of edges: nothing is left to overlap where its ends meet. Take ${enough}.`
          : say`${skirt.name} has ${cloth} of cloth for ${needed} of edges: ${scene.length(run - length)} stays bare. Take ${enough}, an overlap included.`,
    terms: `${edges.map((edge) => `${scene.length(edge.length)} ${edge.name}`).join(' + ')} = ${scene.length(run)}`,
    origin: skirt.length.origin ?? skirt.origin,
    remedies:
      verdict === 'pass' || !skirt.length.origin
        ? []
        : [
            {
              title: say`Set the cloth’s length to ${text}`,
              changes: [{ origin: skirt.length.origin, text }],
              safe: true,
            },
          ],
    related: hungOn(scene, skirt).map(({ piece }) => ({
      origin: piece.origin,
      message: say`it hangs on ${piece.name}`,
    })),
    assumptions: alone.map((name) => say`${name} stands on its own: the plan does not place it`),
  };
}

function clips(scene: Scene, skirt: Skirt): FindingDraft[] {
  if (!skirt.clips) return [];
  const edges = edgesOf(scene, skirt);
  const { value: limit, ...held } = heldTo(scene, 'skirt-run', CLIPS);
  const spacing = skirt.clips.value;
  const outer = held.own ? limit : FARTHEST_CLIPS;
  const verdict = exactVerdict(spacing <= limit + TOLERANCE, spacing <= outer + TOLERANCE);
  const run = 'property' in edges ? undefined : edges.reduce((sum, { length }) => sum + length, 0);
  const many =
    run === undefined ? [] : [say`It takes ${Math.ceil((run - TOLERANCE) / Math.min(spacing, limit)) + 1} clips.`];
  const nearest = verdict === 'fail' ? outer : limit;
  return [
    {
      subject: { kind: 'skirt', name: skirt.name },
      verdict,
      measured: spacing,
      limit: nearest,
      margin: nearest - spacing,
      message: [
        verdict === 'pass'
          ? say`${skirt.name} has a clip each ${scene.length(spacing)}.`
          : say`${skirt.name} has a clip each ${scene.length(spacing)}: between them the cloth sags. Set one each ${scene.length(limit)}.`,
        ...many,
      ].join(' '),
      source: held.source,
      origin: skirt.clips.origin ?? skirt.origin,
      related: held.related,
    },
  ];
}

interface CoveredEdge {
  readonly name: string;
  readonly length: Millimetres;
}

type Hung = Desk | Platform | Rack;

/** The edges that a skirt covers, without what neighbours hide; or what must be said before their lengths are known. */
function edgesOf(scene: Scene, skirt: Skirt): readonly CoveredEdge[] | Missing {
  if (skirt.on.length === 0) return missing('on', `skirt ${skirt.name}`, 'on Left', skirt.origin);
  const sides = new Set<string>(
    skirt.sides.value.flatMap((side) => (side === 'ends' ? ['left-end', 'right-end'] : [side])),
  );
  const edges: CoveredEdge[] = [];
  for (const { kind, piece } of hungOn(scene, skirt)) {
    const of = `${kind} ${piece.name}`;
    if (!piece.width) return missing('width', of, 'width 60in', piece.origin);
    if (!piece.depth) return missing('depth', of, 'depth 27in', piece.origin);
    const outline = scene.layout.pieces.find((one) => one.kind === kind && one.name === piece.name)?.outline;
    const others = kind === 'platform' ? [] : neighboursOf(scene, piece);
    const lengthOf = (edge: readonly [PlanPoint, PlanPoint] | undefined, size: Millimetres) =>
      edge ? exposedLength(edge, others) : size;
    if (sides.has('front'))
      edges.push({ name: say`front of ${piece.name}`, length: lengthOf(sideOf(outline, 2), piece.width.value) });
    if (sides.has('left-end'))
      edges.push({ name: say`left end of ${piece.name}`, length: lengthOf(sideOf(outline, 3), piece.depth.value) });
    if (sides.has('right-end'))
      edges.push({ name: say`right end of ${piece.name}`, length: lengthOf(sideOf(outline, 1), piece.depth.value) });
  }
  return edges.filter(({ length }) => length > TOLERANCE);
}

/** Outlines run from the near left corner along the near edge: right end, far edge and left end follow. */
function sideOf(outline: Polygon | undefined, index: number): readonly [PlanPoint, PlanPoint] | undefined {
  return outline && [outline[index]!, outline[(index + 1) % outline.length]!];
}

function hungOn({ booth }: Scene, skirt: Skirt): { kind: 'desk' | 'platform' | 'rack'; piece: Hung }[] {
  const named = <K extends 'desk' | 'platform' | 'rack'>(kind: K, pieces: readonly Hung[]) =>
    pieces.filter(({ name }) => skirt.on.some((each) => each.name === name)).map((piece) => ({ kind, piece }));
  return [...named('desk', booth.desks), ...named('platform', booth.platforms), ...named('rack', booth.racks)];
}

/** Desks and racks that may stand against a piece; a rack under a desk hides no edge. */
function neighboursOf(scene: Scene, piece: Hung): readonly Polygon[] {
  const tucked = new Set(scene.booth.racks.filter(({ under }) => under).map(({ name }) => name));
  return scene.layout.pieces
    .filter(({ kind, name }) => (kind === 'desk' || kind === 'rack') && name !== piece.name && !tucked.has(name))
    .map(({ outline }) => outline);
}

function unplacedOf(scene: Scene, skirt: Skirt): string[] {
  const hung = hungOn(scene, skirt);
  const placed = new Set(scene.layout.pieces.map(({ name }) => name));
  return hung.length < 2 ? [] : hung.map(({ piece }) => piece.name).filter((name) => !placed.has(name));
}
