import type { DimensionName } from './dimensions.js';

/** Body dimensions as people say them. */
export const dimensionWords: Readonly<Record<DimensionName, string>> = {
  stature: 'stature',
  standingEyeHeight: 'standing eye height',
  standingShoulderHeight: 'standing shoulder height',
  standingElbowHeight: 'standing elbow height',
  sittingHeight: 'sitting height',
  sittingEyeHeight: 'sitting eye height',
  sittingElbowHeight: 'sitting elbow height',
  thighClearance: 'thigh clearance',
  poplitealHeight: 'popliteal height',
  sittingKneeHeight: 'sitting knee height',
  buttockPoplitealLength: 'buttock-popliteal length',
  buttockKneeLength: 'buttock-knee length',
  hipBreadthSitting: 'sitting hip breadth',
  forearmForearmBreadth: 'forearm-forearm breadth',
  abdominalDepthSitting: 'sitting abdominal depth',
  thumbTipReach: 'thumb-tip reach',
  forearmHandLength: 'forearm-hand length',
  footLength: 'foot length',
  weight: 'weight',
};
