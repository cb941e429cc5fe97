/** A job with something of everything to print: two parts, wear on face and bore, a hand-chosen region, a wall that is thin. */
import { estimate } from '../../../geometry/estimate.ts';
import type { Job, Mark } from '../../../geometry/job/job.ts';
import { toRadians } from '../../../geometry/units.ts';
import { COAT, FILLER, NOTHING_PLANNED, REPAIR } from '../material/generic-materials.ts';

const angles = (from: number, to: number) => [toRadians(from), toRadians(to)] as const;

/** Scoured ring across the mark, a deeper wedge, a stray pit that is left, and a groove in the bore. */
const PLATE_MARKS: readonly Mark[] = [
  {
    kind: 'patch',
    face: 'face',
    blend: 'deepest',
    first: [90, 120],
    second: angles(300, 400),
    depth: [3, 3],
  },
  { kind: 'patch', face: 'face', blend: 'deepest', first: [95, 125], second: angles(60, 100), depth: [2, 5] },
  {
    kind: 'pit',
    face: 'face',
    blend: 'deepest',
    at: [80, toRadians(180)],
    radius: 8,
    depth: 0.8,
    form: 'bowl',
  },
  {
    kind: 'patch',
    face: 'bore',
    blend: 'deepest',
    first: angles(200, 260),
    second: [4, 9],
    depth: [1.5, 1.5],
  },
];

export const WORN_JOB: Job = {
  title: 'Scoured plate <script>alert("mark")</script> & spare',
  notes: '',
  parts: [
    {
      id: 'plate',
      kind: 'wear-plate',
      density: 7.2e-3,
      shape: {
        kind: 'round',
        outerRadius: 160,
        boreRadius: 60,
        coneAngle: 0,
        holes: [
          { x: 145, y: 0, radius: 7 },
          { x: -145, y: 0, radius: 7 },
        ],
      },
      thickness: 18,
      leastThickness: 14,
      marks: PLATE_MARKS,
      sections: [],
    },
    {
      id: 'wing "B"',
      kind: 'wear-plate',
      density: 7.2e-3,
      shape: {
        kind: 'outline',
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
      thickness: 12,
      leastThickness: null,
      sections: [],
      marks: [
        {
          kind: 'stroke',
          face: 'face',
          blend: 'deepest',
          path: [
            [60, 25],
            [110, 25],
          ],
          radius: 12,
          depth: 2.4,
          edge: 'soft',
          clear: false,
        },
      ],
    },
  ],
  filler: FILLER,
  coat: COAT,
  repair: {
    ...REPAIR,
    overbuild: 0.3,
    overrules: [{ part: 'plate', face: 'face', point: [80, toRadians(180)], action: 'fill' }],
  },
  rotor: null,
  surface: 20,
  clearance: null,
  flowTest: null,
  history: { hours: null, repairs: [] },
  unsupported: [],
  ...NOTHING_PLANNED,
};

/** Coarse cells: enough for every figure to differ, quick to make. */
export const worn = () => estimate(WORN_JOB, { cell: 1.5 });
/** The same plate as new. */
export const unworn = () =>
  estimate(
    { ...WORN_JOB, title: '', parts: WORN_JOB.parts.map((part) => ({ ...part, marks: [] })) },
    { cell: 3 },
  );
