import type { Plan, ShoppingLine, StationAdvice } from '../assessment.js';
import type { Desk, Seat } from '../booth.js';
import { percentileOf } from '../bodies/body.js';
import { formatLength } from '../format.js';
import type { Scene } from '../scene/scene.js';
import { sits, type Person } from '../stations/station.js';
import type { Millimetres, Range } from '../units.js';

/** Seat widths and depths: hip breadth + 10 and at least 400; buttock-popliteal length − 30 (Panero & Zelnik, CCOHS). */
const LEAST_SEAT_WIDTH: Millimetres = 400;
const WIDTH_ALLOWANCE: Millimetres = 10;
const DEPTH_ALLOWANCE: Millimetres = 30;
/** A ring that suits legs this much longer or shorter still suits (own bound, as in seat-not-low). */
const RING_PLAY: Millimetres = 50;

/** What to ask for in a shop, without the tool at hand. */
export function shoppingFor(scene: Scene, stations: readonly StationAdvice[]): readonly ShoppingLine[] {
  const best = new Map(
    stations.flatMap(({ plans }) => (plans[0] ? plans[0].settings.map((s) => [`${s.part} ${s.of}`, s] as const) : [])),
  );
  const setting = (part: Plan['settings'][number]['part'], of: string) => best.get(`${part} ${of}`)?.value;
  return [
    ...scene.booth.desks.map((desk) => deskLine(scene, desk, setting('desk', desk.name) ?? desk.height?.value)),
    ...scene.booth.seats.map((seat) =>
      seatLine(scene, seat, setting('seat', seat.name) ?? seat.seat?.value, setting('ring', seat.name)),
    ),
    ...scene.booth.monitors.map(({ name, diagonal }): ShoppingLine => {
      return {
        item: `screen ${name}`,
        wants: diagonal ? [`diagonal ${formatLength(diagonal.value, scene.booth.show)}`] : [],
      };
    }),
    ...scene.booth.racks.map(({ name, units, width, depth }): ShoppingLine => {
      const size = [width && `${scene.length(width.value)} wide`, depth && `${scene.length(depth.value)} deep`];
      return {
        item: `rack ${name}`,
        wants: [...(units ? [`${units.value} units`] : []), ...size.flatMap((one) => one ?? [])],
      };
    }),
    ...skirtLines(scene, setting),
  ].filter(({ wants }) => wants.length > 0);
}

function deskLine(scene: Scene, desk: Desk, height: Range | undefined): ShoppingLine {
  return {
    item: `desk ${desk.name}`,
    wants: [
      ...(desk.width ? [`${scene.length(desk.width.value)} wide`] : []),
      ...(desk.depth ? [`${scene.length(desk.depth.value)} deep`] : []),
      ...(height ? [span(scene, height, 'top at', 'height adjustable over at least')] : []),
      ...(desk.top.isDefault ? [] : [`top at most ${scene.length(desk.top.value)} thick`]),
    ],
  };
}

function seatLine(scene: Scene, seat: Seat, height: Range | undefined, ring: Range | undefined): ShoppingLine {
  const people = scene.stations
    .filter((station) => sits(station) && station.seat?.name === seat.name)
    .flatMap((station) => station.people);
  const hips = extreme(people, 'hipBreadthSitting', Math.max);
  const thighs = extreme(people, 'buttockPoplitealLength', Math.min);
  const drop =
    ring ??
    (seat.footRing?.from === 'seat'
      ? { min: seat.footRing.distance.value, max: seat.footRing.distance.value }
      : undefined);
  const rings = drop && ringBand(people, drop.min, scene.booth.shoe.value);
  return {
    item: `${seat.kind} ${seat.name}`,
    wants: [
      ...(height ? [span(scene, height, 'seat at', 'seat adjustable over at least')] : []),
      ...(rings ? [span(scene, rings, 'foot ring', 'foot ring between', ' below the seat')] : []),
      ...(hips === undefined
        ? []
        : [`seat at least ${scene.length(Math.max(LEAST_SEAT_WIDTH, hips + WIDTH_ALLOWANCE))} wide`]),
      ...(thighs === undefined ? [] : [`seat at most ${scene.length(thighs - DEPTH_ALLOWANCE)} deep`]),
    ],
  };
}

/** Drops that suit every average body; if none does, the one planned. */
function ringBand(people: readonly Person[], planned: Millimetres, shoe: Millimetres): Range {
  const legs = people.map(({ dimensions }) => dimensions.poplitealHeight + shoe);
  const band = { min: Math.max(...legs) - RING_PLAY, max: Math.min(...legs) };
  return legs.length > 0 && band.min <= band.max ? band : { min: planned, max: planned };
}

/** Known people by what was measured or their average, crowds by their own tail. */
function extreme(
  people: readonly Person[],
  dimension: 'hipBreadthSitting' | 'buttockPoplitealLength',
  most: (...values: number[]) => number,
) {
  if (people.length === 0) return undefined;
  const p = most === Math.max ? 0.95 : 0.05;
  return most(...people.map(({ body }) => percentileOf(body, dimension, p)));
}

function skirtLines(scene: Scene, setting: (part: 'desk', of: string) => Range | undefined): ShoppingLine[] {
  return scene.booth.skirts.map(({ name, on, length }) => {
    const heights = on.flatMap(({ name: desk }) => {
      return setting('desk', desk) ?? scene.booth.desks.find((one) => one.name === desk)?.height?.value ?? [];
    });
    const lowest = heights.length > 0 ? Math.min(...heights.map(({ min }) => min)) : undefined;
    return {
      item: `skirt ${name}`,
      wants: [
        ...(lowest === undefined ? [] : [`${scene.length(lowest - HEM)} drop`]),
        ...(length ? [`${scene.length(length.value)} long`] : []),
        'with its flame certificate',
      ],
    };
  });
}

/** Hem above the floor: the middle of 1/2 to 1 in (trade sizes, weak). */
const HEM: Millimetres = 19;

function span(scene: Scene, { min, max }: Range, one: string, several: string, tail = ''): string {
  if (max - min < 1) return `${one} ${scene.length(min)}${tail}`;
  const joint = several.endsWith('between') ? 'and' : 'to';
  return `${several} ${scene.length(min)} ${joint} ${scene.length(max)}${tail}`;
}
