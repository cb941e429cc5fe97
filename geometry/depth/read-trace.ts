import type { Mark, Readings } from '../job/job.ts';

/** Where gauge readings decide how deep a face is, at the end of all its marks. */
export interface ReadTrace {
  readonly mark: Readings;
  /** 1 where a change of their surface changes the depth by as much, row-major; 0 where it changes nothing. */
  readonly decides: Uint8Array;
}

/** The trace of readings that were just pressed: the cells they changed. */
export function traceOf(mark: Readings, before: Float32Array, depth: Float32Array): ReadTrace {
  const decides = new Uint8Array(depth.length);
  for (let cell = 0; cell < depth.length; cell++) if (depth[cell] !== before[cell]) decides[cell] = 1;
  return { mark, decides };
}

/** Takes the cells out that a later mark decides instead. What adds to the depth or evens it leaves them in. Writes into `trace`. */
export function overlay(
  { decides }: ReadTrace,
  later: Mark,
  before: Float32Array,
  depth: Float32Array,
): void {
  if (later.kind === 'smooth' || (later.kind !== 'stroke' && later.blend === 'add')) return;
  if (later.kind === 'stroke' && later.blend === 'add' && !later.clear) return;
  for (let cell = 0; cell < depth.length; cell++) if (depth[cell] !== before[cell]) decides[cell] = 0;
}
