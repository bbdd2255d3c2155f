import type { BlockEntry, Kind, PropertyEntry } from './entries.js';
import { floorEntries } from './floor.js';
import { furnitureEntries } from './furniture.js';
import { peopleEntries } from './people.js';
import { roomEntries } from './room.js';
import { stationEntries } from './stations.js';

/** All that the language can say. Reading, checking, completion, hovers and the documentation follow this table. */
export const vocabulary: readonly BlockEntry[] = [
  ...roomEntries,
  ...peopleEntries,
  ...furnitureEntries,
  ...stationEntries,
  ...floorEntries,
];

const byKind = new Map(vocabulary.map((entry) => [entry.kind, entry]));
const byKey = new Map(
  vocabulary.map((entry) => [
    entry.kind,
    new Map(entry.properties.flatMap((property) => spellings(property).map((key) => [key, property] as const))),
  ]),
);
const nestedIn = new Map(
  vocabulary.map(({ kind }) => [kind, vocabulary.filter((nested) => nested.within === kind)] as const),
);

export function entryOf(kind: Kind): BlockEntry {
  const entry = byKind.get(kind);
  if (!entry) throw new Error(`The vocabulary has no '${kind}'.`);
  return entry;
}

/** The property of that block by any of its spellings. */
export function propertyOf(kind: Kind, key: string): PropertyEntry | undefined {
  return byKey.get(kind)?.get(key);
}

export function spellings(property: PropertyEntry): readonly string[] {
  return [property.key, ...(property.aliases ?? [])];
}

/** The blocks that stand directly in that one. */
export function nestedBlocks(kind: Kind): readonly BlockEntry[] {
  return nestedIn.get(kind) ?? [];
}

/** The blocks that have a property of that name. */
export function blocksWith(key: string): readonly BlockEntry[] {
  return vocabulary.filter(({ kind }) => propertyOf(kind, key) !== undefined);
}

export const topLevel: readonly BlockEntry[] = vocabulary.filter(({ within }) => within === 'file');
