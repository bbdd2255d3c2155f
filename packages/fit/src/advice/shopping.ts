import type { ShoppingLine, StationAdvice } from '../assessment.js';
import { percentileOf } from '../bodies/body.js';
import type { Desk, Monitor, Rack, Seat, Skirt, Workstation } from '../booth.js';
import type { Check } from '../checks/check.js';
import { buyingStep, formatRange } from '../format.js';
import { makeScene, type Scene } from '../scene/scene.js';
import { placeOfScreen } from '../scene/screen-place.js';
import { sits, type Person, type Station } from '../stations/station.js';
import { TOLERANCE, type Millimetres, type Range, type DisplayUnit } from '../units.js';
import { freeSeat } from './free-seat.js';
import { dropFor, dropsFor, legsOf } from './legs.js';
import { seatRangeFor, seatSpans } from './seat-range.js';
import { withSettings, type Setting } from './with-settings.js';
import { say } from '../words/say.js';

/** Seat widths and depths: hip breadth + 10 and at least 400; buttock-popliteal length − 30 (Panero & Zelnik, CCOHS). */
const LEAST_SEAT_WIDTH: Millimetres = 400;
const WIDTH_ALLOWANCE: Millimetres = 10;
const DEPTH_ALLOWANCE: Millimetres = 30;

/** What to ask for in a shop, without the tool at hand: the booth as the best plan of each workstation has it. */
export function shoppingFor(
  scene: Scene,
  stations: readonly StationAdvice[],
  checks: readonly Check[],
): readonly ShoppingLine[] {
  const settings = stations.flatMap(({ plans }) => plans[0]?.settings ?? []);
  const planned = settings.length > 0 ? makeScene(withSettings(scene.booth, settings), checks) : scene;
  const { desks, seats, monitors, racks, skirts } = planned.booth;
  return [
    ...desks.map((desk) => deskLine(planned, desk)),
    ...seats.map((seat) => seatLine(planned, seat, settings)),
    ...monitors.map((monitor) => screenLine(planned, monitor)),
    ...racks.map((rack) => rackLine(planned, rack)),
    ...skirts.map((skirt) => skirtLine(planned, skirt)),
  ].filter(({ wants }) => wants.length > 0);
}

function deskLine({ booth, length, stations }: Scene, { name, width, depth, height, top }: Desk): ShoppingLine {
  const users = stations.filter(({ desk }) => desk?.name === name);
  return line(say`desk ${name}`, users, [
    height && surfaceHeight(height.value, booth.show),
    width && say`${length(width.value)} wide`,
    depth && say`${length(depth.value)} deep`,
    !top.isDefault && say`top at most ${length(top.value)} thick`,
  ]);
}

function seatLine(scene: Scene, seat: Seat, settings: readonly Setting[]): ShoppingLine {
  const users = scene.stations.filter((station) => sits(station) && station.seat?.name === seat.name);
  const people = users.flatMap((station) => station.people);
  const set = settings.filter(({ part, of }) => part === 'seat' && of === seat.name).map(({ value }) => value);
  const height = hull([...set, ...neededOf(scene, seat)]) ?? seat.seat?.value;
  const hips = extreme(people, 'hipBreadthSitting', Math.max);
  const thighs = extreme(people, 'buttockPoplitealLength', Math.min);
  return line(seat.kind === 'stool' ? say`stool ${seat.name}` : say`chair ${seat.name}`, users, [
    height && seatHeight(seat, height, scene.booth.show),
    ringOf(scene, seat, people),
    hips !== undefined && say`seat at least ${scene.length(Math.max(LEAST_SEAT_WIDTH, hips + WIDTH_ALLOWANCE))} wide`,
    thighs !== undefined && say`seat at most ${scene.length(thighs - DEPTH_ALLOWANCE)} deep`,
  ]);
}

function surfaceHeight(height: Range, show: DisplayUnit): string {
  const words = formatRange(height, show);
  return height.min === height.max
    ? say`work surface ${words} above the floor`
    : say`work surface adjustable over at least ${words}`;
}

/** Where one height would do for the people here but the file has a range, either may be bought. */
function seatHeight({ seat }: Seat, height: Range, show: DisplayUnit): string {
  const words = formatRange(height, show);
  if (height.min !== height.max) return say`seat adjustable over at least ${words}`;
  return seat && seat.value.max > seat.value.min
    ? say`seat ${words} above the floor, or adjustable across that`
    : say`seat ${words} above the floor`;
}

/** The seat heights that everyone needs who uses the seat, at whichever desk; none if nobody can be suited. */
function neededOf(scene: Scene, seat: Seat): readonly Range[] {
  const desks = new Map(
    scene.stations
      .filter((station) => station.seat?.name === seat.name && station.desk?.height)
      .map((station) => [station.desk!.name, station]),
  );
  const spans = [...desks.values()].flatMap((station) => {
    const choice = freeSeat(scene, station);
    return choice ? seatSpans(choice, seat.name, station.desk!.height!.value) : [];
  });
  return [seatRangeFor(spans, buyingStep(scene.booth.show)) ?? []].flat();
}

function hull(ranges: readonly Range[]): Range | undefined {
  if (ranges.length === 0) return undefined;
  return { min: Math.min(...ranges.map(({ min }) => min)), max: Math.max(...ranges.map(({ max }) => max)) };
}

/** Drops that suit every leg; if none does, a ring that moves. */
function ringOf({ booth, length }: Scene, { footRing }: Seat, people: readonly Person[]): string | undefined {
  if (!footRing) return undefined;
  if (footRing.from === 'floor') return say`foot ring ${length(footRing.distance.value)} above the floor`;
  const legs = people.flatMap((person) => legsOf(person, booth.shoe.value));
  if (legs.length === 0) return say`foot ring ${length(footRing.distance.value)} below the seat`;
  const drops = dropsFor(legs);
  if (drops.min <= drops.max) return say`foot ring ${formatRange(drops, booth.show)} below the seat`;
  if (drops.min <= drops.max + 2 * TOLERANCE) return say`foot ring ${length(drops.max)} below the seat`;
  const wanted = legs.map(dropFor);
  const reach = formatRange({ min: Math.min(...wanted), max: Math.max(...wanted) }, booth.show);
  return say`foot ring that moves on its column, from ${reach} below the seat`;
}

/** Known people by what was measured or by their own tail, crowds by theirs. */
function extreme(
  people: readonly Person[],
  dimension: 'hipBreadthSitting' | 'buttockPoplitealLength',
  most: (...values: number[]) => number,
): Millimetres | undefined {
  if (people.length === 0) return undefined;
  const p = most === Math.max ? 0.95 : 0.05;
  return most(...people.map(({ body }) => percentileOf(body, dimension, p)));
}

function screenLine({ length, stations, booth }: Scene, { name, diagonal, aspect, pixels }: Monitor): ShoppingLine {
  const users = stations.filter(({ workstation }) => workstation.screens.some(({ monitor }) => monitor.name === name));
  return line(say`screen ${name}`, users, [
    diagonal && say`${length(diagonal.value)} diagonal`,
    !aspect.isDefault && `${aspect.value.across}:${aspect.value.down}`,
    pixels && say`${pixels.value.across} × ${pixels.value.down} pixels`,
    ...new Set(users.flatMap(({ workstation }) => armsFor(workstation, name, booth.show))),
  ]);
}

/** The arms that a monitor hangs on at a workstation: a height that is a range. */
function armsFor({ screens }: Workstation, name: string, show: DisplayUnit): string[] {
  return screens.flatMap(({ monitor, height }) => {
    if (monitor.name !== name || !height || height.distance.value.min === height.distance.value.max) return [];
    const place = placeOfScreen(height.line, height.over, formatRange(height.distance.value, show));
    return [say`an arm that each sets to ${place}`];
  });
}

function rackLine({ length, stations }: Scene, { name, units, width, depth, under }: Rack): ShoppingLine {
  const users = stations.filter(({ desk }) => under !== undefined && desk?.name === under.desk.name);
  return line(say`rack ${name}`, users, [
    units && say`${units.value} rack units high`,
    width && say`${length(width.value)} wide`,
    depth && say`${length(depth.value)} deep`,
  ]);
}

function skirtLine({ booth, length: words, stations }: Scene, { name, on, length }: Skirt): ShoppingLine {
  const heights = on.flatMap((desk) => booth.desks.find((one) => one.name === desk.name)?.height?.value ?? []);
  const lowest = heights.length > 0 ? Math.min(...heights.map(({ min }) => min)) : undefined;
  const moves = heights.some(({ min, max }) => max > min);
  const users = stations.filter(({ desk }) => on.some((one) => one.name === desk?.name));
  return line(say`skirt ${name}`, users, [
    lowest !== undefined &&
      (moves
        ? say`drop ${words(lowest - HEM)}, to end ${words(HEM)} above the floor with the desk at its lowest`
        : say`drop ${words(lowest - HEM)}, to end ${words(HEM)} above the floor`),
    length && say`${words(length.value)} of cloth`,
    say`with its flame certificate`,
  ]);
}

/** Hem above the floor: the middle of 1/2 to 1 in (trade sizes, weak). */
const HEM: Millimetres = 19;

function line(item: string, users: readonly Station[], wants: readonly (string | false | undefined)[]): ShoppingLine {
  return {
    item,
    wants: wants.filter((want): want is string => typeof want === 'string'),
    workstations: users.map(({ name }) => name),
  };
}
