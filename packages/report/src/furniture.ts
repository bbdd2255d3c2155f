import type { Booth, Desk, Monitor, Platform, Rack, Seat, Skirt } from '@boothwright/fit';
import { listOf } from '@boothwright/fit';
import { spaced, type Units } from './words.js';

/** A piece as the file describes it, in words. */
export interface PieceFacts {
  readonly kind: string;
  readonly name: string;
  readonly facts: readonly string[];
}

export function furnitureOf(booth: Booth, units: Units): readonly PieceFacts[] {
  return [
    ...booth.desks.map((desk) => ({ kind: 'desk', name: desk.name, facts: deskFacts(desk, units) })),
    ...booth.seats.map((seat) => ({ kind: seat.kind, name: seat.name, facts: seatFacts(seat, units) })),
    ...booth.monitors.map((monitor) => ({ kind: 'monitor', name: monitor.name, facts: monitorFacts(monitor, units) })),
    ...booth.racks.map((rack) => ({ kind: 'rack', name: rack.name, facts: rackFacts(rack, units) })),
    ...booth.skirts.map((skirt) => ({ kind: 'skirt', name: skirt.name, facts: skirtFacts(skirt, units) })),
    ...booth.platforms.map((platform) => ({
      kind: 'platform',
      name: platform.name,
      facts: platformFacts(platform, units),
    })),
  ];
}

function deskFacts({ width, depth, height, hanging, closed }: Desk, { length, range }: Units): string[] {
  return said(
    width && `${length(width.value)} wide`,
    depth && `${length(depth.value)} deep`,
    height && `${range(height.value)} high`,
    ...hanging.map(({ kind, drop }) => (drop ? `${kind} reaching ${length(drop.value)} below the top` : kind)),
    closed && 'closed front',
  );
}

function seatFacts({ seat, depth, width, footRing }: Seat, { length, range }: Units): string[] {
  return said(
    seat && `seat ${range(seat.value)} high`,
    depth && `seat ${length(depth.value)} deep`,
    width && `seat ${length(width.value)} wide`,
    footRing &&
      `foot ring ${length(footRing.distance.value)} ${footRing.from === 'seat' ? 'below the seat' : 'above the floor'}`,
  );
}

function monitorFacts({ diagonal, aspect, pixels }: Monitor, { length }: Units): string[] {
  return said(
    diagonal && `${length(diagonal.value)} diagonal`,
    `${aspect.value.across}:${aspect.value.down}`,
    pixels && `${pixels.value.across} × ${pixels.value.down} pixels`,
  );
}

function rackFacts({ units, width, depth, under }: Rack, { length }: Units): string[] {
  return said(
    units && `${units.value} units`,
    width && `${length(width.value)} wide`,
    depth && `${length(depth.value)} deep`,
    under && `under desk ${under.desk.name}`,
  );
}

function skirtFacts({ on, sides, drop, length: run }: Skirt, { length }: Units): string[] {
  return said(
    on.length > 0 && `on ${listOf(on.map(({ name }) => name))}`,
    `at the ${listOf(sides.value.map(spaced))}`,
    drop && `drop ${length(drop.value)}`,
    run && `${length(run.value)} of cloth`,
  );
}

function platformFacts({ width, depth, height, guard }: Platform, { length }: Units): string[] {
  return said(
    width && `${length(width.value)} wide`,
    depth && `${length(depth.value)} deep`,
    height && `${length(height.value)} high`,
    guard && `guard ${length(guard.value)} high`,
  );
}

function said(...facts: readonly (string | false | undefined)[]): string[] {
  return facts.filter((fact): fact is string => typeof fact === 'string');
}
