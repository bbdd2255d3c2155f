import type { Missing } from '../assessment.js';
import type { Desk, Rack } from '../booth.js';
import type { Millimetres } from '../units.js';
import { missing, placeAlong, type Station, racksBelow } from './station.js';
import { say } from '../words/say.js';

/**
 * The least free floor under a desk: width, depth at the knee, depth at the foot (OSHA Computer Workstations, work space;
 * the same figures in ANSI/HFES 100-2007).
 */
export const KNEE_WIDTH: Millimetres = 520;
export const KNEE_DEPTH: Millimetres = 440;
export const FOOT_DEPTH: Millimetres = 600;

/** A free length, and what ends it. */
export interface Free {
  readonly length: Millimetres;
  readonly what: string;
}

/** What is free under a desk for one person's knees and feet. */
export interface KneeSpace {
  /** Where along the desk, from its left end. */
  readonly along: Millimetres;
  /** Side to side with the person in the middle, over the depth at the knee. */
  readonly width: Free;
  readonly knee: Free;
  readonly foot: Free;
}

/** Where legs are said without a thickness. Common practice, no source. */
export const USUAL_LEG: Millimetres = 50;

/** What must be said before the space is known. */
export function lacksKneeSpace(station: Station): Missing | undefined {
  const desk = station.desk!;
  if (!desk.width) return missing('width', `desk ${desk.name}`, 'width 60in', desk.origin);
  if (!desk.depth) return missing('depth', `desk ${desk.name}`, 'depth 27in', desk.origin);
  const rack = racksUnder(station).find(({ width }) => !width);
  return rack && missing('width', `rack ${rack.name}`, 'width 22in', rack.origin);
}

/**
 * The space at the operator's place. Where the file does not say the place, the middle of the desk; or, if that is blocked
 * and another place is not, the middle of the free stretch.
 */
export function kneeSpace(station: Station): KneeSpace {
  const desk = station.desk!;
  const blocks = [...legsOf(desk), ...racksUnder(station).map(blockOf)];
  const middle = spaceAt(desk, blocks, placeAlong(station));
  if (station.workstation.at || isEnough(middle)) return middle;
  const others = freeStretches(desk, blocks).map(([left, right]) => spaceAt(desk, blocks, (left + right) / 2));
  return others.find(isEnough) ?? middle;
}

function isEnough({ width, knee, foot }: KneeSpace): boolean {
  return width.length > KNEE_WIDTH - 1 && knee.length > KNEE_DEPTH - 1 && foot.length > FOOT_DEPTH - 1;
}

/** Something that stands on the floor under a desk. */
interface Block {
  readonly what: string;
  readonly left: Millimetres;
  readonly right: Millimetres;
  /** From the near edge to its near side. */
  readonly near: Millimetres;
}

function spaceAt(desk: Desk, blocks: readonly Block[], along: Millimetres): KneeSpace {
  const isAhead = ({ left, right }: Block) => left + 1 < along && right - 1 > along;
  const ahead = blocks.filter(isAhead);
  const beside = blocks.filter((block) => !isAhead(block) && block.near < KNEE_DEPTH - 1);
  const beyond = blocks.filter(
    ({ left, right, near }) =>
      near >= KNEE_DEPTH - 1 && left + 1 < along + KNEE_WIDTH / 2 && right - 1 > along - KNEE_WIDTH / 2,
  );
  const sides = [
    { what: say`the end of the desk`, gap: along },
    { what: say`the end of the desk`, gap: desk.width!.value - along },
    ...beside.map(({ what, left, right }) => ({ what, gap: right <= along + 1 ? along - right : left - along })),
  ];
  const nearest = sides.reduce((least, side) => (side.gap < least.gap ? side : least));
  return {
    along,
    width: { length: Math.max(0, 2 * nearest.gap), what: nearest.what },
    knee: firstAhead(desk, ahead, 0),
    foot: firstAhead(desk, [...ahead, ...beyond], desk.toeSpace?.depth?.value ?? 0),
  };
}

/** A closed front stands at the near edge and leaves nothing but its toe space. */
function firstAhead(desk: Desk, blocks: readonly Block[], intoFront: Millimetres): Free {
  const ends = [
    { length: desk.depth!.value, what: say`the far edge` },
    ...(desk.closed ? [{ length: intoFront, what: say`the closed front` }] : []),
    ...blocks.map(({ near, what }) => ({ length: near, what })),
  ];
  return ends.reduce((least, end) => (end.length < least.length ? end : least));
}

/** The stretches of a desk that nothing stands in over the depth at the knee. */
function freeStretches(desk: Desk, blocks: readonly Block[]): readonly (readonly [Millimetres, Millimetres])[] {
  const taken = blocks.filter(({ near }) => near < KNEE_DEPTH - 1).sort((a, b) => a.left - b.left);
  const stretches: [Millimetres, Millimetres][] = [];
  let free = 0;
  for (const { left, right } of taken) {
    if (left > free) stretches.push([free, left]);
    free = Math.max(free, right);
  }
  stretches.push([free, Math.max(free, desk.width!.value)]);
  return stretches;
}

/** The leg frame stands in the middle of the desk's width, a leg at each end. */
function legsOf(desk: Desk): readonly Block[] {
  const { legs } = desk;
  if (!legs) return [];
  const thickness = legs.thickness?.value ?? USUAL_LEG;
  const over = legs.width?.value ?? desk.width!.value;
  const left = (desk.width!.value - over) / 2;
  const near = legs.inset.value;
  return [
    { what: say`a leg of the desk`, left, right: left + thickness, near },
    { what: say`a leg of the desk`, left: left + over - thickness, right: left + over, near },
  ];
}

function racksUnder(station: Station): readonly Rack[] {
  return racksBelow(station.booth.racks, station.desk!.name);
}

function blockOf({ name, width, under }: Rack): Block {
  const left = under!.at.value;
  return { what: say`the rack ${name}`, left, right: left + width!.value, near: under!.setback.value };
}
