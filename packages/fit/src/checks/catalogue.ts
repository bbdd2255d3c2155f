// Generated from the folders beside this file by `npm run generate`. Do not edit.
import type { Check } from './check.js';
import { accessibleStation } from './access/accessible-station.js';
import { wheelchairSpace } from './access/wheelchair-space.js';
import { crowdServed } from './crowd/crowd-served.js';
import { legsFitTop } from './furniture/legs-fit-top.js';
import { load } from './furniture/load.js';
import { rackFits } from './furniture/rack-fits.js';
import { screensFitDesk } from './furniture/screens-fit-desk.js';
import { mixPosition } from './listening/mix-position.js';
import { platformEdge } from './platform/platform-edge.js';
import { platformStep } from './platform/platform-step.js';
import { reach } from './reach/reach.js';
import { screenDistance } from './screen/screen-distance.js';
import { screenHeight } from './screen/screen-height.js';
import { screenTilt } from './screen/screen-tilt.js';
import { screenTurn } from './screen/screen-turn.js';
import { textSize } from './screen/text-size.js';
import { feetSupported } from './seat/feet-supported.js';
import { kneeRoom } from './seat/knee-room.js';
import { seatDepth } from './seat/seat-depth.js';
import { seatNotLow } from './seat/seat-not-low.js';
import { seatWidth } from './seat/seat-width.js';
import { seatedElbow } from './seat/seated-elbow.js';
import { stoolDrop } from './seat/stool-drop.js';
import { thighRoom } from './seat/thigh-room.js';
import { seeOver } from './sight/see-over.js';
import { seenPast } from './sight/seen-past.js';
import { skirtDrop } from './skirt/skirt-drop.js';
import { skirtFlame } from './skirt/skirt-flame.js';
import { skirtRun } from './skirt/skirt-run.js';
import { elbowRoom } from './space/elbow-room.js';
import { overlap } from './space/overlap.js';
import { passBehind } from './space/pass-behind.js';
import { roomBehind } from './space/room-behind.js';
import { standingWork } from './stand/standing-work.js';
import { toeSpace } from './stand/toe-space.js';
import { floorCable } from './walkway/floor-cable.js';
import { walkwayCapacity } from './walkway/walkway-capacity.js';
import { walkwayDoor } from './walkway/walkway-door.js';
import { walkwayHead } from './walkway/walkway-head.js';
import { walkwayPinch } from './walkway/walkway-pinch.js';
import { walkwayProjection } from './walkway/walkway-projection.js';
import { walkwayTurn } from './walkway/walkway-turn.js';
import { walkwayWidth } from './walkway/walkway-width.js';

/** Every check, by group and id. */
export const checks: readonly Check[] = [
  accessibleStation,
  wheelchairSpace,
  crowdServed,
  legsFitTop,
  load,
  rackFits,
  screensFitDesk,
  mixPosition,
  platformEdge,
  platformStep,
  reach,
  screenDistance,
  screenHeight,
  screenTilt,
  screenTurn,
  textSize,
  feetSupported,
  kneeRoom,
  seatDepth,
  seatNotLow,
  seatWidth,
  seatedElbow,
  stoolDrop,
  thighRoom,
  seeOver,
  seenPast,
  skirtDrop,
  skirtFlame,
  skirtRun,
  elbowRoom,
  overlap,
  passBehind,
  roomBehind,
  standingWork,
  toeSpace,
  floorCable,
  walkwayCapacity,
  walkwayDoor,
  walkwayHead,
  walkwayPinch,
  walkwayProjection,
  walkwayTurn,
  walkwayWidth,
];
