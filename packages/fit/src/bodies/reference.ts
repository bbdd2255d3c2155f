import type { DimensionName, Sex } from './dimensions.js';

/** What the survey says of one body dimension of one sex: millimetres, weight in kilograms. */
export interface DimensionSummary {
  readonly mean: number;
  readonly sd: number;
  readonly skewness: number;
  readonly p5: number;
  readonly p50: number;
  readonly p95: number;
}

export interface SexSummary {
  readonly count: number;
  readonly dimensions: Readonly<Record<DimensionName, DimensionSummary>>;
  /** Pearson correlations in the order of `dimensionNames`; row i holds columns 0 to i. */
  readonly correlation: readonly (readonly number[])[];
}

/**
 * Computed from the public-domain data of the 2012 Anthropometric Survey of U.S. Army Personnel (ANSUR II, released
 * 2017). Published summary of the same survey: Gordon et al. 2014, NATICK/TR-15/007. Two dimensions are derived
 * per person: standing elbow height = acromial height − acromion-radiale length; standing eye height = stature −
 * (sitting height − sitting eye height). The people are soldiers of working age: lengths and heights agree well with a
 * general public, while widths, depths, thigh clearance and weight run low for it.
 */
export const referenceSource =
  'ANSUR II: 2012 Anthropometric Survey of U.S. Army Personnel (Gordon et al. 2014, NATICK/TR-15/007)';

// prettier-ignore
export const reference: Readonly<Record<Sex, SexSummary>> = {
  female: {
    count: 1986,
    dimensions: {
      stature: { mean: 1628.47, sd: 64.2, skewness: 0.088, p5: 1525.0, p50: 1626.0, p95: 1740.0 },
      standingEyeHeight: { mean: 1519.53, sd: 61.74, skewness: 0.067, p5: 1421.25, p50: 1517.0, p95: 1626.0 },
      standingShoulderHeight: { mean: 1335.1, sd: 58.08, skewness: 0.088, p5: 1242.0, p50: 1332.0, p95: 1433.75 },
      standingElbowHeight: { mean: 1023.9, sd: 45.29, skewness: 0.135, p5: 951.0, p50: 1022.0, p95: 1100.0 },
      sittingHeight: { mean: 856.63, sd: 33.05, skewness: 0.015, p5: 803.0, p50: 857.0, p95: 912.0 },
      sittingEyeHeight: { mean: 747.69, sd: 30.38, skewness: -0.005, p5: 698.0, p50: 748.0, p95: 799.0 },
      sittingElbowHeight: { mean: 232.42, sd: 26.25, skewness: -0.066, p5: 189.0, p50: 233.0, p95: 275.75 },
      thighClearance: { mean: 167.86, sd: 14.06, skewness: 0.307, p5: 145.0, p50: 167.0, p95: 191.0 },
      poplitealHeight: { mean: 388.2, sd: 23.59, skewness: 0.099, p5: 350.0, p50: 387.0, p95: 428.0 },
      sittingKneeHeight: { mean: 511.29, sd: 27.07, skewness: 0.17, p5: 469.25, p50: 510.0, p95: 557.0 },
      buttockPoplitealLength: { mean: 485.12, sd: 28.72, skewness: 0.172, p5: 441.0, p50: 483.0, p95: 535.0 },
      buttockKneeLength: { mean: 590.59, sd: 32.6, skewness: 0.216, p5: 541.0, p50: 589.0, p95: 646.0 },
      hipBreadthSitting: { mean: 398.96, sd: 32.75, skewness: 0.357, p5: 348.0, p50: 397.0, p95: 456.0 },
      forearmForearmBreadth: { mean: 494.83, sd: 41.01, skewness: 0.273, p5: 432.0, p50: 492.0, p95: 563.75 },
      abdominalDepthSitting: { mean: 229.65, sd: 31.46, skewness: 0.529, p5: 184.0, p50: 227.0, p95: 285.0 },
      thumbTipReach: { mean: 744.01, sd: 42.75, skewness: 0.169, p5: 674.25, p50: 742.0, p95: 816.0 },
      forearmHandLength: { mean: 439.86, sd: 23.38, skewness: 0.28, p5: 404.25, p50: 438.0, p95: 480.0 },
      footLength: { mean: 246.29, sd: 12.44, skewness: 0.105, p5: 226.0, p50: 246.0, p95: 267.75 },
      weight: { mean: 67.76, sd: 10.98, skewness: 0.555, p5: 51.3, p50: 66.8, p95: 87.07 },
    },
    correlation: [
      [1.0],
      [0.9924, 1.0],
      [0.972, 0.9702, 1.0],
      [0.9461, 0.9443, 0.9751, 1.0],
      [0.7643, 0.7368, 0.6978, 0.7242, 1.0],
      [0.7352, 0.737, 0.677, 0.7078, 0.9704, 1.0],
      [0.1153, 0.0976, 0.1447, 0.2587, 0.5701, 0.575, 1.0],
      [0.3223, 0.3235, 0.3475, 0.3293, 0.2298, 0.2262, 0.0872, 1.0],
      [0.8061, 0.8065, 0.8085, 0.7566, 0.388, 0.3579, -0.1857, 0.0636, 1.0],
      [0.8768, 0.8773, 0.884, 0.8268, 0.4465, 0.4158, -0.1624, 0.4002, 0.8803, 1.0],
      [0.7303, 0.7346, 0.7483, 0.6779, 0.2781, 0.2521, -0.2397, 0.3914, 0.7193, 0.819, 1.0],
      [0.7479, 0.7503, 0.7641, 0.7007, 0.3302, 0.3039, -0.1927, 0.5727, 0.6402, 0.8335, 0.9505, 1.0],
      [0.3692, 0.3696, 0.3888, 0.3659, 0.3131, 0.3115, 0.1427, 0.7001, 0.0792, 0.3965, 0.4821, 0.6096, 1.0],
      [0.2955, 0.3002, 0.342, 0.31, 0.1948, 0.1975, 0.1425, 0.6662, 0.0861, 0.3419, 0.3657, 0.4921, 0.6156, 1.0],
      [0.1744, 0.1772, 0.2149, 0.1858, 0.0738, 0.072, 0.0383, 0.6724, -0.0175, 0.2533, 0.3533, 0.4863, 0.6499, 0.7294, 1.0],
      [0.671, 0.6788, 0.6712, 0.5986, 0.3396, 0.3311, -0.1912, 0.3855, 0.5905, 0.7297, 0.6435, 0.6842, 0.3641, 0.3652, 0.3144, 1.0],
      [0.7537, 0.7565, 0.7536, 0.6802, 0.3269, 0.3006, -0.2633, 0.3524, 0.7816, 0.8649, 0.7543, 0.7653, 0.2996, 0.2825, 0.214, 0.7494, 1.0],
      [0.7222, 0.7186, 0.709, 0.6658, 0.4184, 0.3895, -0.105, 0.3899, 0.6758, 0.7834, 0.664, 0.7044, 0.356, 0.3289, 0.2459, 0.6534, 0.8127, 1.0],
      [0.5335, 0.5285, 0.5565, 0.5202, 0.4063, 0.3889, 0.1474, 0.8311, 0.2536, 0.57, 0.5868, 0.7395, 0.8299, 0.7979, 0.7913, 0.5091, 0.4904, 0.5365, 1.0],
    ],
  },
  male: {
    count: 4082,
    dimensions: {
      stature: { mean: 1756.21, sd: 68.55, skewness: 0.111, p5: 1648.0, p50: 1755.0, p95: 1870.0 },
      standingEyeHeight: { mean: 1642.44, sd: 66.54, skewness: 0.116, p5: 1536.05, p50: 1640.0, p95: 1753.0 },
      standingShoulderHeight: { mean: 1440.74, sd: 63.29, skewness: 0.124, p5: 1339.0, p50: 1439.0, p95: 1546.0 },
      standingElbowHeight: { mean: 1105.49, sd: 50.1, skewness: 0.139, p5: 1025.0, p50: 1104.0, p95: 1190.0 },
      sittingHeight: { mean: 918.29, sd: 35.7, skewness: 0.016, p5: 860.0, p50: 918.0, p95: 977.0 },
      sittingEyeHeight: { mean: 804.51, sd: 33.16, skewness: 0.039, p5: 750.0, p50: 804.0, p95: 860.0 },
      sittingElbowHeight: { mean: 245.04, sd: 28.65, skewness: -0.122, p5: 197.0, p50: 246.0, p95: 291.0 },
      thighClearance: { mean: 180.46, sd: 15.59, skewness: 0.388, p5: 157.0, p50: 180.0, p95: 207.0 },
      poplitealHeight: { mean: 429.8, sd: 24.82, skewness: 0.138, p5: 390.0, p50: 430.0, p95: 471.0 },
      sittingKneeHeight: { mean: 554.16, sd: 27.95, skewness: 0.172, p5: 509.0, p50: 553.0, p95: 602.0 },
      buttockPoplitealLength: { mean: 502.92, sd: 27.43, skewness: 0.122, p5: 459.0, p50: 502.0, p95: 548.0 },
      buttockKneeLength: { mean: 617.95, sd: 30.59, skewness: 0.136, p5: 569.0, p50: 617.0, p95: 669.0 },
      hipBreadthSitting: { mean: 379.3, sd: 30.21, skewness: 0.399, p5: 333.0, p50: 378.0, p95: 431.0 },
      forearmForearmBreadth: { mean: 579.93, sd: 50.93, skewness: 0.125, p5: 497.05, p50: 579.0, p95: 666.95 },
      abdominalDepthSitting: { mean: 254.65, sd: 37.33, skewness: 0.493, p5: 200.0, p50: 251.0, p95: 320.0 },
      thumbTipReach: { mean: 811.93, sd: 43.68, skewness: 0.211, p5: 742.0, p50: 811.0, p95: 886.0 },
      forearmHandLength: { mean: 480.21, sd: 23.29, skewness: 0.239, p5: 444.0, p50: 480.0, p95: 519.95 },
      footLength: { mean: 271.18, sd: 13.1, skewness: 0.046, p5: 250.0, p50: 271.0, p95: 293.0 },
      weight: { mean: 85.52, sd: 14.22, skewness: 0.482, p5: 64.4, p50: 84.6, p95: 110.69 },
    },
    correlation: [
      [1.0],
      [0.9916, 1.0],
      [0.9669, 0.9652, 1.0],
      [0.9439, 0.9401, 0.9792, 1.0],
      [0.7791, 0.7489, 0.7024, 0.722, 1.0],
      [0.761, 0.7628, 0.694, 0.7123, 0.9686, 1.0],
      [0.1754, 0.1541, 0.2227, 0.3278, 0.5677, 0.5577, 1.0],
      [0.25, 0.2523, 0.3015, 0.3014, 0.2208, 0.2271, 0.2667, 1.0],
      [0.8441, 0.8436, 0.8374, 0.7921, 0.4324, 0.4133, -0.146, 0.0369, 1.0],
      [0.8911, 0.8972, 0.9024, 0.8602, 0.4924, 0.4882, -0.046, 0.317, 0.916, 1.0],
      [0.7625, 0.7623, 0.7841, 0.7366, 0.3326, 0.3115, -0.1263, 0.2741, 0.7682, 0.8021, 1.0],
      [0.8001, 0.804, 0.8265, 0.7831, 0.4077, 0.3982, -0.0398, 0.4676, 0.7262, 0.8469, 0.9453, 1.0],
      [0.3657, 0.3625, 0.4109, 0.4111, 0.3715, 0.3713, 0.3512, 0.7528, 0.1113, 0.3881, 0.3617, 0.525, 1.0],
      [0.212, 0.2155, 0.2794, 0.2781, 0.1816, 0.1896, 0.324, 0.6979, 0.0437, 0.2777, 0.2438, 0.397, 0.7115, 1.0],
      [0.1443, 0.15, 0.2244, 0.2239, 0.1166, 0.1284, 0.2689, 0.6984, -0.0543, 0.2184, 0.2319, 0.3867, 0.7448, 0.7218, 1.0],
      [0.6912, 0.7, 0.7048, 0.6376, 0.3792, 0.3839, -0.0677, 0.3512, 0.6474, 0.7519, 0.6503, 0.7054, 0.3683, 0.3161, 0.2612, 1.0],
      [0.7872, 0.7926, 0.7913, 0.7311, 0.4112, 0.4058, -0.1178, 0.2691, 0.817, 0.863, 0.747, 0.7732, 0.2965, 0.2238, 0.1421, 0.7692, 1.0],
      [0.7181, 0.7191, 0.7105, 0.6803, 0.4579, 0.4513, 0.0179, 0.3218, 0.6758, 0.7593, 0.6355, 0.6955, 0.3711, 0.2703, 0.1881, 0.6524, 0.7974, 1.0],
      [0.4689, 0.4656, 0.5255, 0.5171, 0.405, 0.401, 0.349, 0.8291, 0.2319, 0.5066, 0.4594, 0.6376, 0.8825, 0.8242, 0.8293, 0.4833, 0.4327, 0.4836, 1.0],
    ],
  },
};
