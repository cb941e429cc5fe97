import type { JobFile } from './job-file.ts';

/** A job with `null` wherever what stood there could not be read. What is absent stays absent. */
export type Readable<T> = T extends readonly (infer Item)[]
  ? [Item] extends [number | string | readonly unknown[]]
    ? T
    : readonly (Readable<Item> | null)[]
  : T extends object
    ? { readonly [K in keyof T]?: Readable<T[K]> | null }
    : T;

/** Lists whose items are read one by one; a fault inside any other list makes the whole list unreadable. */
const LISTS_OF_OBJECTS: ReadonlySet<PropertyKey> = new Set([
  'parts',
  'wear',
  'boltHoles',
  'packs',
  'overrule',
  'runs',
  'corrections',
  'breaks',
  'log',
  'repairs',
]);

/**
 * The part of `value` that a schema found nothing wrong with.
 * @param paths  of the faults. A wrong `kind` leaves its whole object unchecked, so all of that is unreadable.
 */
export function readableJob(value: unknown, paths: readonly (readonly PropertyKey[])[]): Readable<JobFile> {
  const copies = new Set<object>();
  const own = (there: unknown): unknown => {
    if (typeof there !== 'object' || there === null || copies.has(there)) return there;
    const copy: object = Array.isArray(there) ? [...there] : { ...there };
    copies.add(copy);
    return copy;
  };
  const job = own(value);
  for (const path of paths) {
    let holder = job;
    const trimmed = unreadablePath(path);
    for (let i = 0; i < trimmed.length && typeof holder === 'object' && holder !== null; i++) {
      const key = trimmed[i];
      const inner = i === trimmed.length - 1 ? null : own(Reflect.get(holder, key));
      Reflect.set(holder, key, inner);
      holder = inner;
    }
  }
  return typeof job === 'object' && job !== null && !Array.isArray(job) ? job : {};
}

function unreadablePath(path: readonly PropertyKey[]): readonly PropertyKey[] {
  let end = path.length;
  if (path[end - 1] === 'kind') end -= 1;
  const list = path.findIndex((key, i) => typeof key === 'number' && !LISTS_OF_OBJECTS.has(path[i - 1]));
  return path.slice(0, list >= 0 ? Math.min(list, end) : end);
}
