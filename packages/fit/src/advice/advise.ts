import type { Advice, StationAdvice } from '../assessment.js';
import { assess } from '../assess/assess.js';
import { deskChoice, ringChoice, seatChoice } from '../assess/choices.js';
import type { Booth } from '../booth.js';
import { checks as catalogue } from '../checks/catalogue.js';
import type { Check } from '../checks/check.js';
import { makeScene, type Scene } from '../scene/scene.js';
import { sits, type Station } from '../stations/station.js';
import { bandsOf, curveOf } from './bands.js';
import { measureNext } from './measure-next.js';
import { notesFor } from './notes.js';
import { plansFor } from './plans.js';
import { screenBands } from './screen-bands.js';
import { shoppingFor } from './shopping.js';

/**
 * What would fit everybody: bands, plans and curves of every workstation, what to measure next, and what to buy. Costs
 * more than an assessment; ask for it when somebody wants to know.
 */
export function advise(booth: Booth, checks: readonly Check[] = catalogue): Advice {
  const scene = makeScene(booth, checks);
  const stations = scene.stations.map((station) => stationAdvice(scene, station, checks));
  return {
    stations,
    measure: measureNext(scene, assess(booth, checks).findings),
    shopping: shoppingFor(scene, stations, checks),
  };
}

/** The plans for one workstation, without bands and curves: cheap enough for a light bulb. */
export function adviseStation(
  booth: Booth,
  workstation: string,
  checks: readonly Check[] = catalogue,
): StationAdvice | undefined {
  const scene = makeScene(booth, checks);
  const station = scene.stations.find(({ name }) => name === workstation);
  return station && { ...plansAndNotes(scene, station, checks), bands: [], curves: [] };
}

function stationAdvice(scene: Scene, station: Station, checks: readonly Check[]): StationAdvice {
  const desk = deskChoice(scene, station);
  const seat = sits(station) ? seatChoice(scene, station) : undefined;
  const ring = sits(station) ? ringChoice(scene, station) : undefined;
  return {
    ...plansAndNotes(scene, station, checks),
    bands: [
      ...[desk, seat, ring].flatMap((choice) => (choice && choice.places.length > 0 ? [bandsOf(choice)] : [])),
      ...screenBands(scene, station),
    ],
    curves: [desk, seat].flatMap((choice) =>
      (choice?.places ?? [])
        .filter((place) => place.station.name === station.name)
        .map((place) => curveOf(choice!, place)),
    ),
  };
}

function plansAndNotes(scene: Scene, station: Station, checks: readonly Check[]) {
  return {
    workstation: station.name,
    origin: station.workstation.origin,
    plans: plansFor(scene, station, checks),
    notes: notesFor(scene, station),
  };
}
