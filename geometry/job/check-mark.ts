import { toRadians } from '../units.ts';
import { checkPolygon } from './check-outline.ts';
import type { Corner } from './corners.ts';
import { angleCoordinate, faceChoices, hasFace, radiusCoordinate } from './face-names.ts';
import { type Fault, missing, shown } from './fault.ts';
import type { MarkFile, PartFile } from './job-file.ts';
import type { Readable } from './readable.ts';
import { wallBehind } from './wall.ts';

type Mark = Readable<MarkFile>;
type Part = Readable<PartFile>;

/**
 * What a mark must agree on with its part: the face exists, ranges run upwards, no radius below 0, no depth beyond the wall
 * (as deep as the wall is allowed: worn through). A mark that misses its face is no fault.
 */
export function checkMark(mark: Mark, part: Part, field: string): Fault[] {
  const { face } = mark;
  if (face == null) return checkClearing(mark, field);
  if (!hasFace(part, face)) {
    const needs = `a face of this part: ${faceChoices(part)}`;
    return [{ field: `${field}.face`, found: shown(face), needs }, ...checkClearing(mark, field)];
  }
  return [
    ...checkClearing(mark, field),
    ...checkRanges(mark, part, face, field),
    ...checkRadii(mark, part, face, field),
    ...checkPolygons(mark, part, face, field),
    ...checkDepths(mark, part, face, field),
    ...checkScan(mark, field),
  ];
}

/** Only a stroke that clears has no use for a depth. */
function checkClearing(mark: Mark, field: string): Fault[] {
  if (mark.kind !== 'stroke' || mark.depth !== undefined || mark.clear === true || mark.clear === null)
    return [];
  return [missing(`${field}.depth`, 'a depth in mm, or "clear": true')];
}

function checkRanges(mark: Mark, part: Part, face: string, field: string): Fault[] {
  if (mark.kind === 'edge') {
    if (angleCoordinate(part, face) === 0) {
      const needs = 'a face whose first coordinate is a length: an edge or a tip of a vane';
      return [{ field: `${field}.face`, found: shown(face), needs }];
    }
    const back = mark.profile?.findIndex(([along], i, profile) => i > 0 && along < profile[i - 1][0]) ?? -1;
    if (back < 0 || mark.profile == null) return [];
    const [along] = mark.profile[back];
    const needs = `at least ${mark.profile[back - 1][0]}, where the point before it stands`;
    return [{ field: `${field}.profile[${back}][0]`, found: shown(along), needs }];
  }
  if (mark.kind !== 'patch') return [];
  const angle = angleCoordinate(part, face);
  return [mark.first, mark.second].flatMap((range, i) => {
    if (range == null || (angle === i ? spansAngle(range) : range[0] < range[1])) return [];
    const needs =
      angle === i
        ? 'two different angles; the whole turn is [0, 360]'
        : 'from the smaller number to the larger';
    return [{ field: `${field}.${i === 0 ? 'first' : 'second'}`, found: shown(range), needs }];
  });
}

/** False for an angle and itself, however many turns back it is written: [360, 0] may mean all or nothing. */
function spansAngle([from, to]: readonly [number, number]): boolean {
  return to > from || (from - to) % 360 !== 0;
}

function checkRadii(mark: Mark, part: Part, face: string, field: string): Fault[] {
  if (radiusCoordinate(part, face) === null) return [];
  if (mark.kind === 'patch') {
    const [from] = mark.first ?? [0];
    return from < 0 ? [radiusBelowZero(`${field}.first[0]`, from)] : [];
  }
  const { name, points } = pointsOf(mark);
  const at = points.findIndex(([radius]) => radius < 0);
  if (at < 0) return [];
  return [radiusBelowZero(`${field}.${name}${mark.kind === 'pit' ? '' : `[${at}]`}[0]`, points[at][0])];
}

function radiusBelowZero(field: string, radius: number): Fault {
  return { field, found: shown(radius), needs: 'a radius, at least 0' };
}

function pointsOf(mark: Mark): { name: string; points: readonly (readonly number[])[] } {
  if (mark.kind === 'pit') return { name: 'at', points: mark.at ? [mark.at] : [] };
  if (mark.kind === 'stroke' || mark.kind === 'smooth') return { name: 'path', points: mark.path ?? [] };
  if (mark.kind === 'area') return { name: 'outline', points: mark.outline ?? [] };
  if (mark.kind === 'readings') return { name: 'points', points: mark.points ?? [] };
  return { name: '', points: [] };
}

function checkPolygons(mark: Mark, part: Part, face: string, field: string): Fault[] {
  const name = mark.kind === 'area' ? 'outline' : 'within';
  const corners = mark.kind === 'area' ? mark.outline : mark.kind === 'readings' ? mark.within : null;
  if (corners == null) return [];
  const angle = angleCoordinate(part, face);
  return checkPolygon(corners, `${field}.${name}`, angle === 1 ? inPlan : angle === 0 ? unrolled : undefined);
}

/** Radius and angle as x and y seen along the shaft. */
function inPlan(corners: readonly Corner[]): readonly Corner[] {
  return corners.map(([radius, angle]) => {
    const turned = toRadians(angle);
    return [radius * Math.cos(turned), radius * Math.sin(turned)];
  });
}

/** Angles counted on past the 0/360 line, each the short way from the one before. */
function unrolled(corners: readonly Corner[]): readonly Corner[] {
  let turned = corners[0][0];
  return corners.map(([angle, below]) => {
    const ahead = (((angle - turned) % 360) + 540) % 360;
    turned += ahead - 180;
    return [turned, below];
  });
}

function checkDepths(mark: Mark, part: Part, face: string, field: string): Fault[] {
  const wall = wallBehind(part, face);
  if (wall === null) return [];
  return depthsOf(mark)
    .filter(({ depth }) => depth > wall.size)
    .map(({ depth, name }) => ({
      field: `${field}.${name}`,
      found: shown(depth),
      needs: `at most the wall, ${wall.words}`,
    }));
}

function depthsOf(mark: Mark): { name: string; depth: number }[] {
  if (mark.kind === 'readings') {
    return (mark.points ?? []).map(([, , depth], i) => ({ name: `points[${i}][2]`, depth }));
  }
  if (mark.kind === 'patch' && typeof mark.depth === 'object') {
    return (mark.depth ?? []).map((depth, i) => ({ name: `depth[${i}]`, depth }));
  }
  if (mark.kind === 'edge') {
    return (mark.profile ?? []).map(([, depth], i) => ({ name: `profile[${i}][1]`, depth }));
  }
  if (mark.kind === 'stroke' && mark.clear === true) return [];
  return 'depth' in mark && typeof mark.depth === 'number' ? [{ name: 'depth', depth: mark.depth }] : [];
}

function checkScan(mark: Mark, field: string): Fault[] {
  if (mark.kind !== 'scan' || mark.depths == null || mark.columns == null || mark.rows == null) return [];
  const { depths, columns, rows } = mark;
  const bytes = (depths.length * 3) / 4 - (depths.endsWith('==') ? 2 : depths.endsWith('=') ? 1 : 0);
  const wanted = columns * rows * 4;
  if (bytes === wanted) return [];
  const needs = `the ${wanted} of ${columns} columns and ${rows} rows of 4 each`;
  return [{ field: `${field}.depths`, found: `base64 of ${bytes} bytes`, needs }];
}
