import { type Fault, fieldPath, shown, WHOLE_FILE } from './fault.ts';

/** Deeper than any job; keeps what walks a job from running out of room. */
const DEEPEST_NESTING = 40;

/**
 * What no file may hold in any field, known or not: numbers that are not finite (they could not be saved), and nesting without end.
 * Nesting that is too deep is the only fault then.
 */
export function oddValues(value: unknown): {
  readonly tooDeep: Fault | null;
  readonly faults: readonly Fault[];
} {
  const faults: Fault[] = [];
  const isShallow = look(value, [], faults);
  return isShallow ? { tooDeep: null, faults } : { tooDeep: nestedTooDeep(), faults: [] };
}

/** Adds to `faults`; false when it gave up for depth. `path` is as it was on return. */
function look(value: unknown, path: PropertyKey[], faults: Fault[]): boolean {
  if (typeof value === 'number' && !Number.isFinite(value)) {
    faults.push({ field: fieldPath(path), found: shown(value), needs: 'a finite number' });
  }
  if (typeof value !== 'object' || value === null) return true;
  if (path.length >= DEEPEST_NESTING) return false;
  const keys = Array.isArray(value) ? value.keys() : Object.keys(value);
  for (const key of keys) {
    path.push(key);
    const isShallow = look(Reflect.get(value, key), path, faults);
    path.pop();
    if (!isShallow) return false;
  }
  return true;
}

function nestedTooDeep(): Fault {
  const found = `nested more than ${DEEPEST_NESTING} deep`;
  return { field: WHOLE_FILE, found, needs: 'a job', problem: `${found}, needs a job` };
}
