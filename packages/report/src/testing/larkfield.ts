import { INCH, type Assessment, type DimensionFigures, type Finding, type Subject } from '@boothwright/fit';
import { at } from './given.js';
import { larkfieldBooth } from './larkfield-booth.js';

/** One finding of a passing check; a test overrides what matters to it. */
export function finding(check: string, subject: Subject, rest: Partial<Finding> = {}): Finding {
  return {
    check,
    subject,
    verdict: 'pass',
    message: `${subject.name} is as it should be.`,
    source: 'An invented table 1979, Table 1',
    strength: 'strong',
    related: [],
    remedies: [],
    assumptions: [],
    defaults: [],
    ...rest,
  };
}

const sound: Subject = { kind: 'workstation', name: 'Sound' };
const words: Subject = { kind: 'workstation', name: 'Words' };

/** Hand-written findings: every verdict, an acceptance, a missing input and every strength but one. The figures are made up. */
export const larkfieldFindings: readonly Finding[] = [
  finding('feet-supported', sound, {
    operator: 'Noor',
    posture: 'sit',
    verdict: 'pass',
    measured: -4.2,
    limit: 0,
    margin: 4.2,
    unit: 'mm',
    share: 0.93,
    shareAtLimit: 0.99,
    message: "Noor's feet rest on the ring.",
    origin: at(22, 55, 24),
    assumptions: ['shoe 1 in'],
    defaults: [],
  }),
  finding('seated-elbow', sound, {
    operator: 'Noor',
    posture: 'sit',
    verdict: 'fail',
    measured: 121.3,
    limit: 50,
    margin: -71.3,
    unit: 'mm',
    share: 0,
    shareAtLimit: 0.02,
    message:
      'The desk is 2 3/4 in too high for Noor, sitting. With her elbows below the work her shoulders lift and tire. Lower the desk to 37 1/4 in.',
    terms: '40 in desk − 28 in seat − 7 1/4 in elbow = 4 3/4 in',
    source: 'CCOHS, Working in a sitting position',
    strength: 'weak',
    origin: at(18, 38, 11),
    assumptions: ['shoe 1 in', 'working height 0'],
    defaults: [],
    remedies: [
      {
        title: 'Lower desk Right to 37 1/4 in: suits Noor',
        changes: [{ origin: at(18, 38, 11), text: '37 1/4in' }],
        safe: false,
      },
      { title: 'No single height serves both; a desk adjustable from 37 to 42 in would', changes: [], safe: true },
    ],
  }),
  finding('seated-elbow', sound, {
    operator: 'Tobias',
    posture: 'sit',
    verdict: 'marginal',
    measured: 38,
    limit: 25,
    margin: -13,
    unit: 'mm',
    share: 0.44,
    shareAtLimit: 0.81,
    message: 'The desk may be 1/2 in too high for Tobias, sitting. Measure his sitting elbow height to settle it.',
    terms: '40 in desk − 28 in seat − 10 1/2 in elbow = 1 1/2 in',
    source: 'CCOHS, Working in a sitting position',
    strength: 'weak',
    origin: at(18, 38, 11),
  }),
  finding('standing-work', sound, {
    operator: 'Tobias',
    posture: 'stand',
    share: 0.97,
    shareAtLimit: 1,
    measured: -88,
    limit: -100,
    margin: 12,
    unit: 'mm',
    message: 'The work is at a good height for Tobias, standing.',
    source: 'Grandjean 1988, from memory',
    strength: 'from memory',
  }),
  finding(
    'screen-distance',
    { kind: 'monitor', name: 'Cues' },
    {
      operator: 'Noor',
      posture: 'sit',
      measured: 742,
      limit: 500,
      margin: 242,
      unit: 'mm',
      share: 1,
      shareAtLimit: 1,
      message: 'Cues is 29 1/4 in from the eyes of Noor.',
    },
  ),
  finding(
    'screen-height',
    { kind: 'monitor', name: 'Cues' },
    {
      operator: 'Noor',
      posture: 'sit',
      verdict: 'unknown',
      message: 'The height of Cues is not said, so nobody can tell how Noor looks at it.',
      origin: at(32, 2, 30),
      missing: {
        property: 'bottom',
        of: 'monitor Cues at workstation Sound',
        example: 'bottom 5in above desk',
        origin: at(32, 2, 30),
      },
    },
  ),
  finding('feet-supported', words, {
    operator: 'Volunteers',
    posture: 'sit',
    verdict: 'marginal',
    share: 0.84,
    shareAtLimit: 0.96,
    measured: 2,
    limit: 0,
    margin: -2,
    unit: 'mm',
    message: '84 of 100 Volunteers rest their feet, and 90 were asked for. A ring 1 in higher would reach 93.',
    remedies: [
      {
        title: 'Hang the ring 17 in below the seat: suits 93 of 100',
        changes: [{ origin: at(22, 65, 4), text: '17in' }],
        safe: true,
      },
    ],
  }),
  finding(
    'walkway-width',
    { kind: 'walkway', name: 'Behind' },
    {
      measured: 43 * INCH,
      limit: 42 * INCH,
      margin: INCH,
      unit: 'mm',
      message: 'Behind is 43 in wide, 1 in above the 42 in figure for more than 50 people.',
      terms: '62 in to the wall − 19 in occupied seat = 43 in',
      source: 'IBC 2021, 1029.9.1',
      strength: 'medium',
      caution: 'A planning aid; your local building or fire official decides.',
      origin: at(42, 8, 6),
    },
  ),
  finding(
    'rack-fits',
    { kind: 'rack', name: 'Power' },
    {
      verdict: 'fail',
      measured: 22 * INCH,
      limit: 20 * INCH,
      margin: -2 * INCH,
      unit: 'mm',
      message: 'Rack Power takes the knees of Words: 2 in too wide beside the stool. Move it 2 in to the left.',
      source: 'common practice',
      strength: 'common practice, no source',
      origin: at(43, 5, 5),
    },
  ),
  finding(
    'skirt-drop',
    { kind: 'skirt', name: 'Front' },
    {
      verdict: 'fail',
      measured: -0.5 * INCH,
      limit: 0,
      margin: -0.5 * INCH,
      unit: 'mm',
      message: 'The skirt drags 1/2 in on the floor, and people trip on it. Hem it to 39 1/2 in.',
      source: 'trade habit',
      strength: 'weak',
      accepted: 'hemmed on site',
      origin: at(45, 14, 4),
    },
  ),
  finding(
    'skirt-flame',
    { kind: 'skirt', name: 'Front' },
    {
      verdict: 'unknown',
      message: 'Nobody has written down the flame certificate of the cloth.',
      source: 'IFC 2021, 807',
      strength: 'medium',
      caution: 'A planning aid; your local building or fire official decides.',
      origin: at(45, 6, 5),
      missing: {
        property: 'flame-certificate',
        of: 'skirt Front',
        example: 'flame-certificate "NFPA 701, seen 4 May"',
      },
    },
  ),
];

function predicted(dimension: string, mean: number, sd: number): DimensionFigures {
  return { dimension, mean, sd, p5: mean - 1.645 * sd, p50: mean, p95: mean + 1.645 * sd, measured: false };
}

function measured(dimension: string, mean: number): DimensionFigures {
  return { dimension, mean, sd: 0, p5: mean, p50: mean, p95: mean, measured: true };
}

export const larkfield: Assessment = {
  booth: larkfieldBooth,
  findings: larkfieldFindings,
  workstations: [
    {
      name: 'Sound',
      origin: at(27, 12, 5),
      served: [
        { who: 'Noor', posture: 'sit', share: 0, shareAtLimit: 0.0213, verdict: 'fail' },
        { who: 'Noor', posture: 'stand', share: 0.3, shareAtLimit: 0.71, verdict: 'marginal' },
        { who: 'Tobias', posture: 'sit', share: 0.441234, shareAtLimit: 0.81, verdict: 'marginal' },
        { who: 'Tobias', posture: 'stand', share: 0.97, shareAtLimit: 1, verdict: 'pass' },
      ],
    },
    {
      name: 'Words',
      origin: at(35, 12, 5),
      served: [
        { who: 'Priya', posture: 'sit', share: 0.92, shareAtLimit: 0.99, verdict: 'pass' },
        { who: 'Volunteers', posture: 'sit', share: 0.8, shareAtLimit: 0.95, cover: 0.9, verdict: 'marginal' },
      ],
    },
  ],
  walkways: [
    {
      name: 'Behind',
      origin: at(42, 8, 6),
      clear: 43 * INCH,
      terms: '62 in to the wall − 19 in occupied seat = 43 in',
    },
  ],
  operators: [
    {
      name: 'Noor',
      origin: at(12, 9),
      female: 0.86,
      dimensions: [
        measured('stature', 63 * INCH),
        predicted('sittingElbowHeight', 226, 24),
        predicted('weight', 66.3, 10),
      ],
    },
    {
      name: 'Tobias',
      origin: at(13, 9, 6),
      female: 0.02,
      dimensions: [
        measured('stature', 73 * INCH),
        measured('sittingElbowHeight', 10.5 * INCH),
        predicted('weight', 92.1, 13),
      ],
    },
  ],
  layout: { room: { width: 12192, depth: 20116.8 }, pieces: [], occupied: [], doorSwings: [] },
};
