import { cellAt } from '../depth/depth-at.ts';
import { USUAL_REPAIR } from '../job/defaults.ts';
import { standsFor } from '../job/face-names.ts';
import type { Overrule, Repair } from '../job/job.ts';
import type { Warning } from '../job/warning.ts';
import { type Face, toGridPoint } from '../part/face.ts';
import { type FillMap, isListed } from './fill-map.ts';

/** A face with what becomes of its cells. */
export interface FilledFace {
  /** Id of its part. */
  readonly part: string;
  readonly face: Face;
  readonly fill: Pick<FillMap, 'label'>;
}

/**
 * Choices of the repair that come to nothing: an overrule with no worn patch under its point, a pattern that names no face.
 * @param faces  all of the job; without any there is nothing to be said
 */
export function fillWarnings(repair: Repair, faces: readonly FilledFace[]): Warning[] {
  if (faces.length === 0) return [];
  return [
    ...repair.overrules.flatMap((overrule, i) => overruleWarning(overrule, i, faces)),
    ...patternWarnings('coatedFaces', 'coats', repair.coatedFaces, faces),
    ...patternWarnings('allowanceFaces', 'leaves room for the coat on', repair.allowanceFaces, faces),
  ];
}

function overruleWarning(overrule: Overrule, i: number, faces: readonly FilledFace[]): Warning[] {
  const named = faces.filter(
    ({ part, face }) => part === overrule.part && standsFor(overrule.face, face.name),
  );
  const cells = named.map(({ face, fill }) => ({
    fill,
    face,
    cell: cellAt(face, ...toGridPoint(face, overrule.point)),
  }));
  if (cells.some(({ fill, cell }) => cell >= 0 && fill.label[cell] > 0)) return [];
  const isOff = cells.every(({ face, cell }) => cell < 0 || face.cover?.[cell] === 0);
  const where = `The point on ${overrule.part}:${overrule.face}`;
  return [
    {
      code: 'overrule-unmet',
      field: `repair.overrule[${i}]`,
      text:
        `${where} lies ${isOff ? 'off that face' : 'on sound metal'}, so the choice to ${overrule.action} it changes nothing. ` +
        'Move the point onto the worn patch it is meant for, or take the choice out.',
    },
  ];
}

/** The usual patterns name faces of every kind of part there is, and stand in a job that has only some of them. */
function patternWarnings(
  field: 'coatedFaces' | 'allowanceFaces',
  does: string,
  patterns: readonly string[],
  faces: readonly FilledFace[],
): Warning[] {
  const example = `${faces[0].part}:${faces[0].face.name}`;
  return patterns.flatMap((pattern, i): Warning[] => {
    if (USUAL_REPAIR[field].includes(pattern)) return [];
    if (faces.some(({ part, face }) => isListed([pattern], part, face.name))) return [];
    return [
      {
        code: 'pattern-unmet',
        field: `repair.${field}[${i}]`,
        text: `"${pattern}" names no face of this job, so it ${does} nothing. Give part and face, such as ${example}, * for any.`,
      },
    ];
  });
}
