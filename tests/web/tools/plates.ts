/** Plate files of each shape a tool may draw on. */
import type { JobFile, MarkFile, WearPlateFile } from '../../../geometry/job/job-file.ts';
import { measured } from '../../../geometry/job/measured.ts';
import type { Face } from '../../../geometry/part/face.ts';
import type { Part } from '../../../geometry/part/part.ts';
import { partOf as builtPart } from '../../../geometry/part/part-of.ts';

const ROUND: WearPlateFile = {
  id: 'plate',
  kind: 'wear-plate',
  density: 7.2,
  outerDiameter: 200,
  boreDiameter: 80,
  thickness: 16,
  boltHoles: [{ count: 6, circleDiameter: 180, holeDiameter: 9 }],
  wear: [],
};

export const PLATES = {
  round: ROUND,
  dished: { ...ROUND, coneAngle: 4 },
  outline: {
    id: 'plate',
    kind: 'wear-plate',
    density: 7.2,
    thickness: 16,
    outline: {
      edge: [
        [0, 0],
        [120, 0],
        [120, 50],
        [60, 50],
        [60, 90],
        [0, 90],
      ],
      holes: [
        [
          [10, 10],
          [40, 10],
          [40, 30],
          [10, 30],
        ],
      ],
    },
    wear: [],
  },
} as const satisfies Record<string, WearPlateFile>;

export type PlateName = keyof typeof PLATES;

export function jobOf(plate: WearPlateFile, wear: readonly MarkFile[] = []): JobFile {
  return { format: 1, parts: [{ ...plate, wear: [...wear] }] };
}

/** The part at a cell of 1 mm, coarse enough for many tries. */
export function partOf(plate: WearPlateFile): Part {
  return builtPart(measured(jobOf(plate)).parts[0], 1);
}

export function faceNamed(part: Part, name: string): Face {
  const face = part.faces.find((known) => known.name === name);
  if (face === undefined) throw new Error(`no face ${name}`);
  return face;
}
