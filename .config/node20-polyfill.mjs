// The grammar generator calls Object.groupBy, which Node has from version 21. Loaded for generation only.
Object.groupBy ??= (items, key) => {
  const groups = Object.create(null);
  let index = 0;
  for (const item of items) (groups[key(item, index++)] ??= []).push(item);
  return groups;
};
Map.groupBy ??= (items, key) => {
  const groups = new Map();
  let index = 0;
  for (const item of items) {
    const name = key(item, index++);
    groups.set(name, [...(groups.get(name) ?? []), item]);
  }
  return groups;
};
