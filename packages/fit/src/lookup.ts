/** Tables made from lists that never change: a list is looked at once, however often something is looked up in it. */
const named = new WeakMap<readonly object[], ReadonlyMap<string, object>>();

/** The first of several things that has the name. */
export function withName<Thing extends { readonly name: string }>(
  things: readonly Thing[],
  name: string | undefined,
): Thing | undefined {
  let table = named.get(things) as ReadonlyMap<string, Thing> | undefined;
  if (!table) {
    const made = new Map<string, Thing>();
    for (const thing of things) if (!made.has(thing.name)) made.set(thing.name, thing);
    named.set(things, (table = made));
  }
  return name === undefined ? undefined : table.get(name);
}

/** Groups things by the keys that each has, in their order: for one list and one way of grouping the same table each time. */
export function grouping<Thing extends object>(
  keysOf: (thing: Thing) => Iterable<string | undefined>,
): (things: readonly Thing[], key: string | undefined) => readonly Thing[] {
  const tables = new WeakMap<readonly Thing[], Map<string, Thing[]>>();
  return (things, key) => {
    let table = tables.get(things);
    if (!table) {
      table = new Map();
      for (const thing of things) {
        for (const own of new Set(keysOf(thing))) {
          if (own === undefined) continue;
          const group = table.get(own);
          if (group) group.push(thing);
          else table.set(own, [thing]);
        }
      }
      tables.set(things, table);
    }
    return (key === undefined ? undefined : table.get(key)) ?? [];
  };
}
