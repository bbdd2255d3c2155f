import type { DimensionName } from './dimensions.js';

/** How to take a dimension with a tape and a helper. After the definitions of Hotzman et al. 2011, in our own words. */
export const howToMeasure: Readonly<Record<DimensionName, string>> = {
  stature: 'Shoes off, back to a wall, heels together: from the floor to a book held level on the head.',
  standingEyeHeight: 'Shoes off, looking straight ahead: from the floor to the outer corner of the eye.',
  standingShoulderHeight: 'Shoes off, arms hanging: from the floor to the bony point on top of the shoulder.',
  standingElbowHeight: 'Shoes off, arm hanging: from the floor to the joint line on the outside of the elbow.',
  sittingHeight: 'Sitting upright on a hard seat: from the seat to a book held level on the head.',
  sittingEyeHeight:
    'Sitting upright on a hard seat, looking straight ahead: from the seat to the outer corner of the eye.',
  sittingElbowHeight:
    'Sitting upright on a hard seat, upper arm hanging, forearm level: from the seat to the underside of the elbow.',
  thighClearance: 'Sitting on a hard seat, feet flat: from the seat to the highest point of the thigh.',
  poplitealHeight:
    'Shoes off, sitting, knees square: from the floor to the underside of the thigh just behind the knee.',
  sittingKneeHeight: 'Shoes off, sitting, knees square: from the floor to the top of the kneecap.',
  buttockPoplitealLength: 'Sitting with the back against a wall: from the wall to the hollow behind the knee.',
  buttockKneeLength: 'Sitting with the back against a wall: from the wall to the front of the kneecap.',
  hipBreadthSitting: 'Sitting, knees together: between two books held upright against the widest points of the hips.',
  forearmForearmBreadth:
    'Sitting, upper arms hanging, forearms level: across the outsides of both forearms where they are widest.',
  abdominalDepthSitting: 'Sitting with the back against a wall: from the wall to the foremost point of the belly.',
  thumbTipReach:
    'Back against a wall, arm level and straight ahead, thumb on forefinger: from the wall to the tip of the thumb.',
  forearmHandLength: 'Forearm level, hand straight: from the back of the elbow to the tip of the middle finger.',
  footLength: 'Shoes off, heel against a wall, standing: from the wall to the longest toe.',
  weight: 'Shoes off, on a scale.',
};
