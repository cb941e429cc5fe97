/** Pairs of a plate and an impeller made to order, and what a test asks of their gap; only the two running faces are worked out. */
import { type ClearanceEstimate, clearanceOf } from '../../../geometry/clearance/clearance.ts';
import type { RunningFace } from '../../../geometry/clearance/face-residuals.ts';
import { type Gap, runningGap } from '../../../geometry/clearance/gap.ts';
import { type GapBasis, gapBasis } from '../../../geometry/clearance/gap-basis.ts';
import { settingOf } from '../../../geometry/clearance/gap-setting.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import { decideFill, isListed } from '../../../geometry/fill/fill-map.ts';
import type {
  Clearance,
  Coat,
  Impeller,
  Job,
  Mark,
  Patch,
  Repair,
  RoundPlate,
  Vanes,
  WearPlate,
} from '../../../geometry/job/job.ts';
import { partOf } from '../../../geometry/part/part-of.ts';
import { job, madeImpeller, plate } from '../made.ts';

export interface MadePair {
  readonly shape?: Partial<RoundPlate>;
  readonly wearPlate?: WearPlate;
  readonly vanes?: Partial<Vanes>;
  readonly impeller?: Partial<Impeller>;
  readonly onPlate?: readonly Mark[];
  readonly onTips?: readonly Mark[];
  readonly repair?: Partial<Repair>;
  readonly coat?: Partial<Coat>;
  readonly ask?: Partial<Clearance>;
}

/** What is asked unless a test says otherwise: 0.8 mm as new, nothing uncertain. */
export const ASK: Clearance = {
  plate: 'plate',
  impeller: 'impeller',
  asNew: 0.8,
  asNewHolds: 'everywhere',
  least: 0.4,
  most: 1.2,
  shim: 0,
  dressTips: 0,
  tolerances: { setting: 0, film: 0, dressing: 0, runOut: 0 },
};

/** Two coats of 0.25 mm on both faces, which are filled flush where 1 mm or more is gone. */
export function pairJob(made: MadePair = {}): Job {
  const { shape = { holes: [] }, vanes, impeller, onPlate = [], onTips = [] } = made;
  const base = job([], {}, { allowanceFaces: ['plate:face', 'impeller:vane-*/tip'], ...made.repair });
  return {
    ...base,
    parts: [made.wearPlate ?? plate(shape, onPlate), madeImpeller(vanes, impeller, onTips)],
    coat: { ...base.coat, coats: 2, dryFilm: 0.25, ...made.coat },
    clearance: { ...ASK, ...made.ask },
  };
}

/** Maps by the parts and the cell they were made of: a job that differs in its repair alone has the same. */
const replayed = new WeakMap<Job['parts'], Map<number | null, readonly Worn[]>>();

type Worn = Pick<RunningFace, 'face' | 'map'> & { readonly id: string };

function wornFaces(parts: Job['parts'], cell: number | null): readonly Worn[] {
  const byCell = replayed.get(parts) ?? new Map<number | null, readonly Worn[]>();
  replayed.set(parts, byCell);
  const known =
    byCell.get(cell) ??
    parts.flatMap((worn) =>
      partOf(worn, cell)
        .faces.filter(({ name }) => name === 'face' || name.endsWith('/tip'))
        .map((face) => ({ id: worn.id, face, map: replay(face, worn.marks) })),
    );
  byCell.set(cell, known);
  return known;
}

function runningFaces(
  { parts, repair }: Job,
  cell: number | null,
): { plate: RunningFace; tips: RunningFace[] } {
  const [plate, ...tips] = wornFaces(parts, cell).map(({ id, face, map }): RunningFace => {
    const fill = decideFill(id, face, map, repair);
    return { face, map, fill, coated: isListed(repair.coatedFaces, id, face.name) };
  });
  return { plate, tips };
}

const asked = ({ clearance }: Job): Clearance => clearance ?? ASK;

export function estimateOf(asks: Job, cell: number | null = 1): ClearanceEstimate | null {
  const { plate, tips } = runningFaces(asks, cell);
  return clearanceOf(plate, tips, asked(asks), asks.coat);
}

function basisOf(asks: Job, cell: number | null = 1): GapBasis {
  const { plate, tips } = runningFaces(asks, cell);
  const basis = gapBasis(plate, tips, asks.coat, asked(asks).dressTips);
  if (basis === null) throw new Error('the two share no radius');
  return basis;
}

export const gapIn = (asks: Job, cell: number | null = 1): Gap =>
  runningGap(basisOf(asks, cell), asked(asks), settingOf(asked(asks), asks.coat));

export const gapOf = (made: MadePair = {}, cell: number | null = 1): Gap => gapIn(pairJob(made), cell);

/** A box on a tip: along and across in mm. */
export const onTip = (
  vane: number | '*',
  first: [number, number],
  depth: number | [number, number],
  second: [number, number] = [-100, 100],
): Patch => ({
  kind: 'patch',
  face: `vane-${vane}/tip`,
  blend: 'deepest',
  first,
  second,
  depth: typeof depth === 'number' ? [depth, depth] : depth,
});
