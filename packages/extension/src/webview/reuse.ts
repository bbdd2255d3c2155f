/**
 * The new value, made of parts of the old one wherever they are equal: what did not change is the same object as before, so that whoever
 * asks whether it is need not look inside. Plain data only.
 */
export function reuse<T>(old: unknown, now: T): T {
  if (Object.is(old, now)) return now;
  if (typeof old !== 'object' || old === null || typeof now !== 'object' || now === null) return now;
  if (Array.isArray(old) && Array.isArray(now)) return reuseList(old, now) as T;
  if (Array.isArray(old) || Array.isArray(now)) return now;
  return reuseObject(old as Plain, now as Plain) as T;
}

type Plain = Readonly<Record<string, unknown>>;

function reuseList(old: readonly unknown[], now: readonly unknown[]): readonly unknown[] {
  const made = now.map((each, index) => reuse(old[index], each));
  return made.length === old.length && made.every((each, index) => Object.is(each, old[index])) ? old : made;
}

function reuseObject(old: Plain, now: Plain): Plain {
  const keys = Object.keys(now);
  let isSame = keys.length === Object.keys(old).length;
  const made = keys.map((key) => {
    const has = Object.hasOwn(old, key);
    const part = reuse(has ? old[key] : undefined, now[key]);
    isSame &&= has && Object.is(part, old[key]);
    return part;
  });
  return isSame ? old : Object.fromEntries(keys.map((key, index) => [key, made[index]]));
}
