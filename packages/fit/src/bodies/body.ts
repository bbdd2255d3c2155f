import type { Millimetres, Share, Years } from '../units.js';
import { dimensionNames, type DimensionName, type Sex } from './dimensions.js';
import { statureOfAges } from './growing.js';
import { normalCdf, normalDensity } from './normal.js';
import { reference } from './reference.js';

/** What is known of a person, or of people: the input of a Body. Millimetres; weight in kilograms. */
export interface Knowledge {
  /** Prior share of women: 0 or 1 if the sex is known. */
  readonly women: Share;
  readonly measured: Readonly<Partial<Record<DimensionName, number>>>;
  /** The stature is self-reported, not measured. */
  readonly reportedStature?: boolean;
  /** Only people of these ages, in completed years, both ends included; see `AGES`. */
  readonly ages?: { readonly min: Years; readonly max: Years };
  /** Only people of a stature in this range. */
  readonly statureRange?: { readonly min: Millimetres; readonly max: Millimetres };
}

/** A body of one sex: every dimension is `mean + sd · Σ loading · residual` over independent standard residuals. */
export interface BodyOfSex {
  readonly sex: Sex;
  /** Probability that the body is of this sex, given what is known. */
  readonly weight: Share;
  /** By dimension: conditional mean. */
  readonly mean: Readonly<Record<DimensionName, number>>;
  /** By dimension: loadings on the residuals, already in millimetres (weight: kilograms). */
  readonly loadings: Readonly<Record<DimensionName, readonly number[]>>;
  /** Skewness of each residual. */
  readonly skewness: readonly number[];
  /** By dimension: which residual is its own, if it was not measured. */
  readonly own: Readonly<Partial<Record<DimensionName, number>>>;
  /** Standard range of the first residual, if the stature is limited. */
  readonly firstResidual?: { readonly min: number; readonly max: number };
}

/**
 * What is known of a person: a distribution of all dimensions, narrowed by what was measured. A mixture of both sexes
 * unless the sex is known, each weighted by how well it explains the measurements.
 */
export interface Body {
  readonly sexes: readonly BodyOfSex[];
  readonly measured: ReadonlySet<DimensionName>;
}

/** People report their stature 25 mm too tall on average (City University of Hong Kong, Online Anthropometry, Ch2-1). */
export const REPORTED_STATURE_EXCESS: Millimetres = 25;
/** Spread of that excess between people. Own figure, no source: wide enough to cover no excess and twice the excess. */
export const REPORTED_STATURE_SD: Millimetres = 20;

/** A sex less likely than this is left out. */
const NEGLIGIBLE_WEIGHT = 1e-6;
/** A pivot below this means that the dimension is settled by those before it, but for the rounding of correlations. */
const SETTLED_PIVOT = 1e-4;
const LARGEST_RESIDUAL_SKEWNESS = 0.9;

/**
 * Dimensions in the order in which residuals are given out. Those that decide most checks come first, but sitting elbow
 * height comes after all that stand with it in a seat check: its own residual then moves nothing else, and a share can be
 * integrated over it exactly.
 */
const residualOrder: readonly DimensionName[] = [
  'stature',
  'poplitealHeight',
  'thighClearance',
  'sittingKneeHeight',
  'hipBreadthSitting',
  'buttockPoplitealLength',
  'standingElbowHeight',
  'sittingElbowHeight',
  'sittingEyeHeight',
  'standingEyeHeight',
  'standingShoulderHeight',
  'thumbTipReach',
  'buttockKneeLength',
  'abdominalDepthSitting',
  'forearmForearmBreadth',
  'sittingHeight',
  'forearmHandLength',
  'footLength',
  'weight',
];

/** The distribution of a body given what is known: the exact conditional of a multivariate normal per sex. */
export function makeBody(knowledge: Knowledge): Body {
  const priors: readonly [Sex, Share][] = [
    ['female', knowledge.women],
    ['male', 1 - knowledge.women],
  ];
  const candidates = priors.filter(([, prior]) => prior > 0).map(([sex, prior]) => conditional(sex, prior, knowledge));
  const best = Math.max(...candidates.map((candidate) => candidate.logWeight));
  const raw = candidates.map((candidate) => Math.exp(candidate.logWeight - best));
  const total = raw.reduce((sum, weight) => sum + weight, 0);
  const sexes = candidates
    .map((candidate, index) => ({ ...candidate.body, weight: raw[index]! / total }))
    .filter((body) => body.weight > NEGLIGIBLE_WEIGHT);
  const kept = sexes.reduce((sum, body) => sum + body.weight, 0);
  const measured = new Set(
    measuredNames(knowledge).filter((name) => !(name === 'stature' && knowledge.reportedStature)),
  );
  return { sexes: sexes.map((body) => ({ ...body, weight: body.weight / kept })), measured };
}

/** Mean of one dimension over both sexes. */
export function meanOf(body: Body, dimension: DimensionName): number {
  return body.sexes.reduce((sum, part) => sum + part.weight * part.mean[dimension], 0);
}

/** Standard deviation of one dimension over both sexes; 0 if it was measured. */
export function sdOf(body: Body, dimension: DimensionName): number {
  const mean = meanOf(body, dimension);
  const variance = body.sexes.reduce((sum, part) => {
    const own = part.loadings[dimension].reduce((squares, loading) => squares + loading * loading, 0);
    return sum + part.weight * (own + (part.mean[dimension] - mean) ** 2);
  }, 0);
  return Math.sqrt(variance);
}

/**
 * The value that a share `p` of such people stays below, in one dimension; the residuals' skewness is left out, which
 * moves a 5th or 95th percentile by about 2 mm at most.
 */
export function percentileOf(body: Body, dimension: DimensionName, p: Share): number {
  const parts = body.sexes.map((part) => ({
    weight: part.weight,
    mean: part.mean[dimension],
    sd: Math.hypot(...part.loadings[dimension]),
  }));
  const spread = Math.max(...parts.map(({ sd }) => sd));
  if (spread === 0) return parts[0]!.mean;
  let low = Math.min(...parts.map(({ mean }) => mean)) - 8 * spread;
  let high = Math.max(...parts.map(({ mean }) => mean)) + 8 * spread;
  for (let round = 0; round < 40; round++) {
    const middle = (low + high) / 2;
    const below = parts.reduce((sum, { weight, mean, sd }) => sum + weight * normalCdf((middle - mean) / sd), 0);
    if (below < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function measuredNames(knowledge: Knowledge): DimensionName[] {
  return residualOrder.filter((name) => knowledge.measured[name] !== undefined);
}

/** One observed number: of which dimension, how many standard deviations from the mean, and with what error. */
interface Observation {
  readonly dimension: DimensionName;
  readonly z: number;
  readonly errorVariance: number;
}

function observe(sex: Sex, knowledge: Knowledge): Observation[] {
  return measuredNames(knowledge).map((dimension) => {
    const { mean, sd } = reference[sex].dimensions[dimension];
    const reported = dimension === 'stature' && knowledge.reportedStature === true;
    const value = knowledge.measured[dimension]! - (reported ? REPORTED_STATURE_EXCESS : 0);
    return { dimension, z: (value - mean) / sd, errorVariance: reported ? (REPORTED_STATURE_SD / sd) ** 2 : 0 };
  });
}

/**
 * Cholesky factor of the correlations with the observations first. Forward substitution through its upper left block
 * gives the conditional means; the rows below, right of that block, are the loadings of the conditional covariance.
 */
function conditional(sex: Sex, prior: Share, knowledge: Knowledge): { body: BodyOfSex; logWeight: number } {
  const observations = observe(sex, knowledge);
  const settled = new Set(observations.filter((o) => o.errorVariance === 0).map((o) => o.dimension));
  const free = residualOrder.filter((dimension) => !settled.has(dimension));
  const order = [...observations.map((o) => o.dimension), ...free];
  const known = observations.length;
  const factor = cholesky(order.length, (row, column) => {
    const error = row === column && row < known ? observations[row]!.errorVariance : 0;
    return correlationOf(sex, order[row]!, order[column]!) + error;
  });
  const residuals = forwardSubstitute(factor, observations);
  const summary = reference[sex].dimensions;

  const mean = {} as Record<DimensionName, number>;
  const loadings = {} as Record<DimensionName, readonly number[]>;
  for (const dimension of settled) {
    mean[dimension] = knowledge.measured[dimension]!;
    loadings[dimension] = [];
  }
  free.forEach((dimension, index) => {
    const row = factor[known + index]!;
    const { mean: average, sd } = summary[dimension];
    const shift = residuals.reduce((sum, residual, column) => sum + row[column]! * residual, 0);
    mean[dimension] = average + sd * shift;
    loadings[dimension] = row.slice(known, known + index + 1).map((loading) => loading * sd);
  });

  const logLikelihood = observations.reduce((sum, observation, index) => {
    const pivot = factor[index]![index]!;
    const sd = summary[observation.dimension].sd;
    return pivot === 0 ? sum : sum + Math.log(normalDensity(residuals[index]!) / (pivot * sd));
  }, 0);
  if (knowledge.ages && known === 0) takeAges(sex, knowledge.ages, mean, loadings);
  const limited = limitStature(knowledge, mean.stature, loadings.stature);
  const firstResidual = limited?.range;
  return {
    body: {
      sex,
      weight: 0,
      mean,
      loadings,
      skewness: residualSkewness(sex, order, factor).slice(known),
      own: Object.fromEntries(free.map((dimension, index) => [dimension, index])),
      ...(firstResidual && { firstResidual }),
    },
    logWeight: Math.log(prior) + finite(logLikelihood) + Math.log(limited?.share ?? 1),
  };
}

/** exp(−z²/2) underflows beyond 38 standard deviations: such a body is as unlikely under one sex as under the other. */
function finite(logLikelihood: number): number {
  return Number.isFinite(logLikelihood) ? logLikelihood : -1e4;
}

/**
 * Moves the stature to that of the ages. Every other dimension follows it as it does among adults: whether the young are built
 * like adults of their stature, no figure at hand says.
 */
function takeAges(
  sex: Sex,
  ages: { readonly min: Years; readonly max: Years },
  mean: Record<DimensionName, number>,
  loadings: Record<DimensionName, readonly number[]>,
): void {
  const adult = reference[sex].dimensions.stature;
  const young = statureOfAges(sex, ages);
  const shift = (young.mean - adult.mean) / adult.sd;
  const spread = young.sd / adult.sd;
  for (const dimension of dimensionNames) {
    const [first = 0, ...others] = loadings[dimension];
    mean[dimension] += first * shift;
    loadings[dimension] = [first * spread, ...others];
  }
}

function limitStature(knowledge: Knowledge, mean: number, loadings: readonly number[]) {
  const sd = loadings[0];
  if (!knowledge.statureRange || sd === undefined || sd === 0) return undefined;
  const min = (knowledge.statureRange.min - mean) / sd;
  const max = (knowledge.statureRange.max - mean) / sd;
  return { range: { min, max }, share: Math.max(normalCdf(max) - normalCdf(min), 1e-300) };
}

/**
 * Skewness to give each residual so that every dimension has the skewness that the survey counts. Kept within bounds:
 * a small residual cannot carry a whole dimension's skewness.
 */
function residualSkewness(sex: Sex, order: readonly DimensionName[], factor: readonly (readonly number[])[]): number[] {
  const skewness: number[] = [];
  order.forEach((dimension, row) => {
    const pivot = factor[row]![row]!;
    const carried = skewness.reduce((sum, value, column) => sum + factor[row]![column]! ** 3 * value, 0);
    const wanted = (reference[sex].dimensions[dimension].skewness - carried) / pivot ** 3;
    const bounded = Math.max(-LARGEST_RESIDUAL_SKEWNESS, Math.min(LARGEST_RESIDUAL_SKEWNESS, wanted));
    skewness.push(pivot === 0 ? 0 : bounded);
  });
  return skewness;
}

function correlationOf(sex: Sex, a: DimensionName, b: DimensionName): number {
  const i = dimensionNames.indexOf(a);
  const j = dimensionNames.indexOf(b);
  return reference[sex].correlation[Math.max(i, j)]![Math.min(i, j)]!;
}

/** Lower factor of a correlation matrix; a dimension that those before it settle gets a pivot of 0. */
function cholesky(size: number, entry: (row: number, column: number) => number): number[][] {
  const factor: number[][] = [];
  for (let row = 0; row < size; row++) {
    const current: number[] = new Array<number>(size).fill(0);
    factor.push(current);
    for (let column = 0; column <= row; column++) {
      let rest = entry(row, column);
      for (let k = 0; k < column; k++) rest -= current[k]! * factor[column]![k]!;
      if (column < row) current[column] = factor[column]![column] === 0 ? 0 : rest / factor[column]![column]!;
      else current[row] = rest > SETTLED_PIVOT ? Math.sqrt(rest) : 0;
    }
  }
  return factor;
}

function forwardSubstitute(factor: readonly (readonly number[])[], observations: readonly Observation[]): number[] {
  const residuals: number[] = [];
  observations.forEach((observation, row) => {
    const explained = residuals.reduce((sum, residual, column) => sum + factor[row]![column]! * residual, 0);
    const pivot = factor[row]![row]!;
    residuals.push(pivot === 0 ? 0 : (observation.z - explained) / pivot);
  });
  return residuals;
}
