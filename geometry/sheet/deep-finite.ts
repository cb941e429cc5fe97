/**
 * Hands back `value` when every number in it is finite, at any depth.
 * Throws otherwise, naming the place: `toResult: needs a finite parts[0].lostMass, got NaN`.
 */
export function deepFinite<T>(value: T, caller: string): T {
  check(value, '', caller);
  return value;
}

function check(value: unknown, path: string, caller: string): void {
  if (typeof value === 'number' && !Number.isFinite(value)) {
    throw new Error(`${caller}: needs a finite ${path}, got ${value}`);
  }
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inner] of Object.entries(value)) {
    const step = Array.isArray(value) ? `[${key}]` : path === '' ? key : `.${key}`;
    check(inner, path + step, caller);
  }
}
