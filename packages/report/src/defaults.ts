import type { Booth } from '@boothwright/fit';
import { formatAngle } from '@boothwright/fit';
import { percent, spaced, type Units } from './words.js';

/** A value that the file left to the language, and the pieces that took it. */
export interface DefaultTaken {
  readonly property: string;
  readonly value: string;
  readonly of: readonly string[];
}

/** Every default in a booth, the same value of the same property once. */
export function defaultsOf(booth: Booth, units: Units): readonly DefaultTaken[] {
  const taken = new Map<string, { property: string; value: string; of: Set<string> }>();
  visit({ ...booth, name: undefined }, 'the booth', (property, value, owner) => {
    const shown = showValue(property, value, units);
    if (shown === undefined) return;
    const key = `${property} ${shown}`;
    const entry = taken.get(key) ?? { property: spaced(property), value: shown, of: new Set() };
    taken.set(key, entry);
    entry.of.add(owner);
  });
  return [...taken.values()].map(({ of, ...rest }) => ({ ...rest, of: [...of] }));
}

type Found = (property: string, value: unknown, owner: string) => void;

function visit(node: unknown, owner: string, found: Found): void {
  if (typeof node !== 'object' || node === null) return;
  const own = ownerOf(node, owner);
  for (const [property, child] of Object.entries(node)) {
    if (isDefault(child)) found(property, child.value, own);
    else visit(child, own, found);
  }
}

function isDefault(node: unknown): node is { value: unknown } {
  return typeof node === 'object' && node !== null && 'isDefault' in node && node.isDefault === true;
}

/** The innermost thing that has a name, or uses a named one. */
function ownerOf(node: object, owner: string): string {
  if (Array.isArray(node)) return owner;
  if (isNamed(node)) return node.name;
  if ('monitor' in node && isNamed(node.monitor)) return node.monitor.name;
  return owner;
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
  if (Array.isArray(value)) return value.map((item) => spaced(`${item}`)).join(', ');
  if (typeof value === 'number') {
    if (turned.has(property)) return formatAngle(value);
    if (shared.has(property)) return percent(value);
    if (weighed.has(property)) return `${Math.round(value)} kg`;
    return counted.has(property) ? `${value}` : length(value);
  }
  if (typeof value !== 'object' || value === null) return undefined;
  if ('across' in value && 'down' in value) return `${value.across}:${value.down}`;
  if ('pixels' in value) return `${value.pixels} pixels`;
  if ('capital' in value) return length(Number(value.capital));
  if ('min' in value && 'max' in value) return range({ min: Number(value.min), max: Number(value.max) });
  if ('x' in value && 'y' in value) return `${length(Number(value.x))}, ${length(Number(value.y))}`;
  return undefined;
}
