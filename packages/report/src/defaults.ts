import type { Booth } from '@boothwright/fit';
import { formatAngle } from '@boothwright/fit';
import { percent, spaced, type Units } from './words.js';

/** What one piece or person took from the language because the file is silent. */
export interface DefaultsTaken {
  readonly of: string;
  /** 'working 0 in', 'task keyboard'. */
  readonly values: readonly string[];
}

/** Every default in a booth, by the piece that took it. */
export function defaultsOf(booth: Booth, units: Units): readonly DefaultsTaken[] {
  const taken = new Map<string, string[]>();
  const found = (property: string, value: unknown, owner: string) => {
    const shown = showValue(property, value, units);
    if (shown === undefined) return;
    taken.set(owner, [...(taken.get(owner) ?? []), `${spaced(property)} ${shown}`]);
  };
  const { name: _name, ...rest } = booth;
  visit(rest, 'the booth', found);
  return [...taken].map(([of, values]) => ({ of, values }));
}

type Found = (property: string, value: unknown, owner: string) => void;

function visit(node: unknown, owner: string, found: Found): void {
  if (typeof node !== 'object' || node === null) return;
  const own = ownerOf(node) ?? owner;
  for (const [property, child] of Object.entries(node)) {
    if (isDefault(child)) found(property, child.value, own);
    else visit(child, own, found);
  }
}

function isDefault(node: unknown): node is { value: unknown } {
  return typeof node === 'object' && node !== null && 'isDefault' in node && node.isDefault === true;
}

/** The name of a thing, of the monitor that a workstation uses, or of the pieces that stand together. */
function ownerOf(node: object): string | undefined {
  if (isNamed(node)) return node.name;
  if ('monitor' in node && isNamed(node.monitor)) return node.monitor.name;
  if ('pieces' in node && Array.isArray(node.pieces))
    return node.pieces
      .filter(isNamed)
      .map(({ name }) => name)
      .join(', ');
  return undefined;
}

function isNamed(node: unknown): node is { name: string } {
  return typeof node === 'object' && node !== null && 'name' in node && typeof node.name === 'string';
}

const counted = new Set(['units', 'risers', 'rows', 'occupants', 'serves']);
const weighed = new Set(['weight', 'rating']);
const turned = new Set(['turn', 'tilt']);
const shared = new Set(['women', 'cover']);

function showValue(property: string, value: unknown, { length, range }: Units): string | undefined {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return spaced(value);
  if (Array.isArray(value)) return value.map((item) => spaced(`${item}`)).join(' and ');
  if (typeof value === 'number') {
    if (turned.has(property)) return formatAngle(value);
    if (shared.has(property)) return percent(value);
    if (weighed.has(property)) return `${Math.round(value)} kg`;
    return counted.has(property) ? `${value}` : length(value);
  }
  if (typeof value !== 'object' || value === null) return undefined;
  if ('across' in value && 'down' in value) return `${String(value.across)}:${String(value.down)}`;
  if ('pixels' in value) return `${String(value.pixels)} pixels`;
  if ('capital' in value) return length(Number(value.capital));
  if ('min' in value && 'max' in value) return range({ min: Number(value.min), max: Number(value.max) });
  if ('x' in value && 'y' in value) return `${length(Number(value.x))}, ${length(Number(value.y))}`;
  return undefined;
}
