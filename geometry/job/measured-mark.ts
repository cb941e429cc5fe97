import { type FacePoint, TURN, toRadians } from '../units.ts';
import { USUAL_GAUGE_ERROR } from './defaults.ts';
import { angleCoordinate } from './face-names.ts';
import type { Mark } from './job.ts';
import type { MarkFile, PartFile } from './job-file.ts';

/**
 * A mark in our units: degrees to radians along the coordinate of its face that is an angle, diameter to radius.
 * A patch's angle range becomes from < to, at most a turn apart: [350, 20] deg runs from 350 to 380, a turn or more is the whole ring.
 * @returns null for the kind that is not worked out yet (scan)
 */
export function measuredMark(mark: MarkFile, part: PartFile): Mark | null {
  const point = pointOn(part, mark.face);
  const blend = ('blend' in mark ? mark.blend : undefined) ?? 'deepest';
  switch (mark.kind) {
    case 'patch': {
      const { face, first, second, depth } = mark;
      const angle = angleCoordinate(part, face);
      return {
        kind: 'patch',
        face,
        blend,
        first: angle === 0 ? angleRange(first) : first,
        second: angle === 1 ? angleRange(second) : second,
        depth: typeof depth === 'number' ? [depth, depth] : depth,
      };
    }
    case 'area':
      return { kind: 'area', face: mark.face, blend, outline: mark.outline.map(point), depth: mark.depth };
    case 'pit': {
      const { face, at, diameter, depth, form } = mark;
      return { kind: 'pit', face, blend, at: point(at), radius: diameter / 2, depth, form };
    }
    case 'stroke': {
      const { face, path, radius, depth = 0, edge = 'hard', clear = false } = mark;
      return { kind: 'stroke', face, blend, path: path.map(point), radius, depth, edge, clear };
    }
    case 'smooth': {
      const { face, path, radius, strength } = mark;
      return { kind: 'smooth', face, path: path.map(point), radius, strength };
    }
    case 'edge':
      return { kind: 'edge', face: mark.face, blend, profile: mark.profile };
    case 'readings':
      return {
        kind: 'readings',
        face: mark.face,
        blend,
        points: mark.points.map(([first, second, depth]) => ({ at: point([first, second]), depth })),
        gaugeError: mark.gaugeError ?? USUAL_GAUGE_ERROR,
        within: mark.within?.map(point) ?? null,
        covariance: mark.covariance ?? {},
      };
    default:
      return null;
  }
}

/** Takes a point of the face from the file's units to ours. */
export function pointOn(part: PartFile, face: string): (point: FacePoint) => FacePoint {
  const angle = angleCoordinate(part, face);
  if (angle === 0) return ([first, second]) => [toRadians(first), second];
  if (angle === 1) return ([first, second]) => [first, toRadians(second)];
  return (point) => point;
}

function angleRange([from, to]: FacePoint): FacePoint {
  const start = toRadians(from);
  const turns = to < from ? Math.ceil((from - to) / 360) : 0;
  // Reckoned in degrees: a whole turn in the file is one to the last bit.
  const span = Math.min(to + turns * 360 - from, 360);
  return [start, span === 360 ? start + TURN : toRadians(from + span)];
}
