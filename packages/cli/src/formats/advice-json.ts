import type { Advice, HeightBands, LeftOut, Plan, Range, StationAdvice } from '@boothwright/fit';
import type { Reading } from '../reading.js';
import { changeObject, printed, problemObject, rounded } from './values.js';

/** The version of the object's form: `schema/advice-1.schema.json`. A field may be added; none changes its meaning. */
const SCHEMA = 'boothwright-advice-1';

/** One object. Without advice, because the file was not understood, its problems alone. */
export function formatAdviceJson({ file, understood, problems, assessment }: Reading, advice?: Advice): string {
  return printed([
    {
      schema: SCHEMA,
      file,
      understood,
      booth: (advice && assessment?.booth.name) ?? null,
      workstations: advice?.stations.map(stationObject) ?? [],
      measure:
        advice?.measure.map(({ operator, dimension, settles, how }) => ({ operator, dimension, settles, how })) ?? [],
      shopping: advice?.shopping.map(({ item, wants, workstations }) => ({ item, wants, workstations })) ?? [],
      problems: problems.map(problemObject),
    },
  ]);
}

function stationObject({ workstation, plans, notes, bands, curves }: StationAdvice) {
  return {
    name: workstation,
    plans: plans.map(planObject),
    notes,
    bands: bands.map(bandsObject),
    curves: curves.map(({ part, of, who, posture, points }) => ({
      part,
      of,
      who,
      posture,
      points: points.map(({ height, share, shareAtLimit }) => ({
        height: rounded(height, 1),
        share: rounded(share, 4),
        shareAtLimit: rounded(shareAtLimit, 4),
      })),
    })),
  };
}

function planObject({ title, settings, changes, serves, likely, leftOut }: Plan) {
  return {
    title,
    settings: settings.map(({ part, of, value }) => ({ part, of, ...bandObject(value) })),
    changes: changes.map(changeObject),
    serves,
    likely,
    leftOut: leftOut.map(leftOutObject),
  };
}

function leftOutObject({ who, posture, workstation, check, by, share }: LeftOut) {
  return { who, posture, workstation, check, by: rounded(by, 1), share: rounded(share, 4) };
}

function bandsObject({ part, of, each, all }: HeightBands) {
  return {
    part,
    of,
    each: each.map(({ who, posture, workstation, band, basis, blockedBy }) => ({
      who,
      posture,
      workstation,
      band: band ? bandObject(band) : null,
      basis,
      blockedBy: blockedBy ?? null,
    })),
    all: all ? bandObject(all) : null,
  };
}

function bandObject({ min, max }: Range) {
  return { min: rounded(min, 1), max: rounded(max, 1) };
}
