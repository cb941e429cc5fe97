import type { Section } from '../job/job.ts';
import type { Coordinate, Face } from '../part/face.ts';
import { type FacePoint, toDegrees } from '../units.ts';
import { gauge, plain } from './figure.ts';
import { type DeepestUnder, isThrough, type SectionProfile } from './section.ts';

/** Where a section lies on its face, in the file's units: `straight from A at radius 70 mm, angle 30 deg to B at radius 150 mm, angle 30 deg`. */
export function sectionPlaceText(face: Face, section: Section): string {
  if (section.kind === 'line')
    return `straight from A at ${pointText(face, section.from)} to B at ${pointText(face, section.to)}`;
  const runs = section.kind === 'along-first' ? 0 : 1;
  const along = face.coordinates[runs];
  const fixed = valueText(face.coordinates[1 - runs], section.at);
  if (along.isAngle) return `ring at ${fixed}, round from ${valueText(along, along.from)}`;
  const ends = `from A at ${valueText(along, along.from)} to B at ${valueText(along, along.to)}`;
  return `${along.label === 'radius' ? 'spoke' : 'straight'} at ${fixed}, ${ends}`;
}

/** The deepest place and what becomes of it: `deepest 5.42 mm at radius 108 mm, angle 62 deg, 43.1 mm from A; 5.42 mm of putty there`. */
export function deepestText(face: Face, { deepest, isFillKnown }: SectionProfile): string {
  if (deepest === null) return 'no metal under it';
  if (deepest.depth <= 0) return 'no wear under it';
  const where = `deepest ${gauge(deepest.depth)} mm at ${pointText(face, deepest.point)}, ${tenths(deepest.at)} mm from A`;
  if (isThrough(deepest)) return `${where}; worn through there`;
  return isFillKnown ? `${where}; ${repairText(deepest)}` : where;
}

/** What becomes of a place: filled, left to the coat, or neither. */
function repairText({ action, putty, depth }: DeepestUnder): string {
  if (action === 'fill' && putty > 0) {
    const free = depth - putty;
    return `${gauge(putty)} mm of putty there${free > 0 ? `, up to ${gauge(free)} mm below the sound line` : ''}`;
  }
  return action === 'leave' ? 'left to the coat there' : 'no putty there';
}

/** `depth drawn 10 times`, `depth drawn true to length`. */
export function timesText(times: number): string {
  return times === 1 ? 'depth drawn true to length' : `depth drawn ${times} times`;
}

function pointText(face: Face, point: FacePoint): string {
  return face.coordinates.map((coordinate, i) => valueText(coordinate, point[i])).join(', ');
}

function valueText({ label, isAngle }: Coordinate, value: number): string {
  if (label === 'below') return `${tenths(value)} mm below the face`;
  return `${label} ${tenths(isAngle ? toDegrees(value) : value)} ${isAngle ? 'deg' : 'mm'}`;
}

/** mm or deg to a tenth, as someone can lay a rule. */
export const tenths = (value: number): string => plain(Math.round(value * 10) / 10 + 0);
