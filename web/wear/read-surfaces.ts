/**
 * The surfaces that gauge readings speak for, as the worker has found them: kriging takes too long for the hand to wait. Until the
 * one of the readings as they are now has come, the last one of that mark stands in for it.
 */
import type { ReadSurface } from '../../geometry/depth/read-surface.ts';
import type { JobFile, MarkFile, PartFile } from '../../geometry/job/job-file.ts';

/** A surface and the readings it belongs to, by their places in the job. */
export interface FoundSurface {
  /** Place of the part in the job, and of the mark in its list of wear. */
  readonly part: number;
  readonly mark: number;
  readonly surface: ReadSurface;
}

/** Kept at most; undo finds the ones before at once. */
const MOST_KEPT = 60;

const byReadings = new Map<string, ReadSurface>();
const lastOfMark = new Map<string, ReadSurface>();
const listeners = new Set<() => void>();

/** Takes surfaces found for a job. */
export function takeSurfaces(job: JobFile, found: readonly FoundSurface[]): void {
  let isNew = false;
  for (const { part, mark, surface } of found) {
    const file = job.parts[part];
    const key = readingsKey(file, file.wear[mark]);
    if (byReadings.has(key)) continue;
    isNew = true;
    byReadings.set(key, surface);
    lastOfMark.set(markKey(file, mark), surface);
    const [oldest] = byReadings.keys();
    if (byReadings.size > MOST_KEPT) byReadings.delete(oldest);
  }
  if (isNew) for (const listener of listeners) listener();
}

/** The surface of a mark of readings; of its readings as they were last where those of now are not known yet, null before that. */
export function surfaceOfMark(part: PartFile, mark: number): ReadSurface | null {
  const known = byReadings.get(readingsKey(part, part.wear[mark]));
  if (known === undefined) return lastOfMark.get(markKey(part, mark)) ?? null;
  lastOfMark.set(markKey(part, mark), known);
  return known;
}

/** Hears when surfaces come. @returns stops it */
export function onSurfaces(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Everything a surface rests on: the metal as new, and the readings. */
function readingsKey(part: PartFile, mark: MarkFile): string {
  return JSON.stringify([shapeOf(part), mark]);
}

function markKey(part: PartFile, mark: number): string {
  return JSON.stringify([shapeOf(part), mark, part.wear[mark].face]);
}

/** Everything of a part but what it weighs, may wear down to, has been marked with and is seen in section. */
export function shapeOf({ wear, sections, density, leastThickness, ...shape }: PartFile): object {
  return shape;
}
