import { standsFor } from '../job/face-names.ts';
import type { Mark, Reading } from '../job/job.ts';
import type { Face } from '../part/face.ts';
import { plain } from './figure.ts';
import { type FlatFrame, flatPoint } from './flat-frame.ts';
import type { FlatMark } from './flat-marks.ts';

/** Every gauge reading that marks put on a face, in the order they were taken. */
export function readingsOn(face: Face, marks: readonly Mark[]): readonly Reading[] {
  return marks.flatMap((mark) =>
    mark.kind === 'readings' && standsFor(mark.face, face.name) ? mark.points : [],
  );
}

/** Gauge readings as they stand on the picture of their face, each with its depth, mm to 0.01; the deepest first. */
export function readingMarks(readings: readonly Reading[], face: Face, frame: FlatFrame): FlatMark[] {
  return readings
    .toSorted((a, b) => b.depth - a.depth)
    .map(({ at, depth }) => ({
      at: flatPoint(face, frame, at),
      text: plain(Math.round(depth * 100) / 100),
    }));
}
