import { type Fault, fieldPath, shown, WHOLE_FILE } from './fault.ts';

/** Deeper than any job; keeps what walks a job from running out of room. */
const DEEPEST_NESTING = 40;
/** More than these are the same slip over and over: the walk ends there, so that a file of millions of them is told at once. */
const MOST_ODD = 10_000;

/**
 * What no file may hold in any field, known or not: numbers that are not finite (they could not be saved), and nesting without end.
 * Nesting that is too deep is the only fault then.
 */
export function oddValues(value: unknown): {
  readonly tooDeep: Fault | null;
  readonly faults: readonly Fault[];
} {
  const faults: Fault[] = [];
  if (isOdd(value)) faults.push(notFinite(value, []));
  const isShallow = isHolder(value) ? look(value, [], faults) : true;
  return isShallow ? { tooDeep: null, faults } : { tooDeep: nestedTooDeep(), faults: [] };
}

/** Looks at everything in `holder` and adds to `faults`; false when it gave up for depth. `path` is as it was on return. */
function look(holder: object, path: PropertyKey[], faults: Fault[]): boolean {
  if (path.length >= DEEPEST_NESTING) return false;
  const keys = Array.isArray(holder) ? holder.keys() : Object.keys(holder);
  for (const key of keys) {
    if (faults.length >= MOST_ODD) break;
    const value: unknown = Reflect.get(holder, key);
    if (isOdd(value)) faults.push(notFinite(value, [...path, key]));
    if (!isHolder(value)) continue;
    path.push(key);
    const isShallow = look(value, path, faults);
    path.pop();
    if (!isShallow) return false;
  }
  return true;
}

const isOdd = (value: unknown): boolean => typeof value === 'number' && !Number.isFinite(value);
const isHolder = (value: unknown): value is object => typeof value === 'object' && value !== null;

function notFinite(value: unknown, path: readonly PropertyKey[]): Fault {
  return { field: fieldPath(path), found: shown(value), needs: 'a finite number' };
}

function nestedTooDeep(): Fault {
  const found = `nested more than ${DEEPEST_NESTING} deep`;
  return { field: WHOLE_FILE, found, needs: 'a job', problem: `${found}, needs a job` };
}
