import { deskChoice, SEAT_HEIGHTS, type Choice, type Place } from '../assess/choices.js';
import type { Scene } from '../scene/scene.js';
import type { Station } from '../stations/station.js';
import type { Millimetres, Range } from '../units.js';

/** The desk's choice where the station's seat may take any height that its ring allows. */
export function freeSeat(scene: Scene, station: Station): Choice | undefined {
  const own = scene.stations.find(({ name }) => name === station.name)!;
  const choice = deskChoice(scene, own);
  if (!choice) return undefined;
  const loosen = (place: Place): Place => {
    const isFree = place.posture === 'sit' && place.station.seat?.name === own.seat?.name;
    const seat = isFree ? seatHeights(place.station) : place.setup.heights.seat;
    return { ...place, setup: { ...place.setup, heights: { ...place.setup.heights, seat } } };
  };
  return { ...choice, places: choice.places.map(loosen) };
}

/** A ring that hangs below the seat stays above the stool's base (own bound). */
const RING_ABOVE_FLOOR: Millimetres = 75;

function seatHeights({ seat }: Station): Range {
  const ring = seat?.footRing;
  if (ring?.from !== 'seat') return SEAT_HEIGHTS;
  return { ...SEAT_HEIGHTS, min: Math.max(SEAT_HEIGHTS.min, ring.distance.value + RING_ABOVE_FLOOR) };
}
