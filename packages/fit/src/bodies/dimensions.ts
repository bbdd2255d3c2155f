export type Sex = 'female' | 'male';

/**
 * The body dimensions that the checks use, in the order of the reference figures. Millimetres, bare feet, erect;
 * weight in kilograms. Definitions: Hotzman et al. 2011, NATICK/TR-11/017.
 */
export const dimensionNames = [
  'stature',
  'standingEyeHeight',
  'standingShoulderHeight',
  'standingElbowHeight',
  'sittingHeight',
  'sittingEyeHeight',
  'sittingElbowHeight',
  'thighClearance',
  'poplitealHeight',
  'sittingKneeHeight',
  'buttockPoplitealLength',
  'buttockKneeLength',
  'hipBreadthSitting',
  'forearmForearmBreadth',
  'abdominalDepthSitting',
  'thumbTipReach',
  'forearmHandLength',
  'footLength',
  'weight',
] as const;

export type DimensionName = (typeof dimensionNames)[number];
