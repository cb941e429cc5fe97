/**
 * The new value with every branch that equals the old one replaced by the old one itself; the old value when nothing differs.
 * Undo lists and screens that compare by reference then see exactly what changed, however the new value was built.
 * Plain data only: objects, arrays, strings, numbers, booleans, null. The order of keys does not count as a difference.
 */
export function shareUnchanged<T>(before: T, after: T): T {
  return shared(before, after) as T;
}

function shared(before: unknown, after: unknown): unknown {
  if (Object.is(before, after)) return before;
  if (Array.isArray(before) && Array.isArray(after)) return sharedArray(before, after);
  if (isRecord(before) && isRecord(after)) return sharedRecord(before, after);
  return after;
}

function sharedArray(before: readonly unknown[], after: readonly unknown[]): readonly unknown[] {
  const items = after.map((item, i) => shared(before[i], item));
  if (items.length === before.length && items.every((item, i) => Object.is(item, before[i]))) return before;
  return items.every((item, i) => Object.is(item, after[i])) ? after : items;
}

function sharedRecord(before: Plain, after: Plain): Plain {
  const keys = Object.keys(after);
  const entries = keys.map((key) => [key, shared(before[key], after[key])] as const);
  const sameKeys =
    keys.length === Object.keys(before).length && keys.every((key) => Object.hasOwn(before, key));
  if (sameKeys && entries.every(([key, value]) => Object.is(value, before[key]))) return before;
  return entries.every(([key, value]) => Object.is(value, after[key])) ? after : Object.fromEntries(entries);
}

type Plain = Readonly<Record<string, unknown>>;

function isRecord(value: unknown): value is Plain {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
