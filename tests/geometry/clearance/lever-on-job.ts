import type { ClearanceEstimate } from '../../../geometry/clearance/clearance.ts';
import type { Lever } from '../../../geometry/clearance/levers.ts';
import type { Job, Repair } from '../../../geometry/job/job.ts';
import { ASK } from './made-gap.ts';

const TIPS = [1, 2, 3, 4, 5].map((i) => `impeller:vane-${i}/tip`);
const PLATE = ['plate:face'];

/** The job as a person would change it at a lever's word; only the coats of the running faces are looked after. */
export function leverOnJob(
  job: Job,
  { kind, amount }: Lever,
  { left }: Pick<ClearanceEstimate, 'left'>,
): Job {
  const clearance = job.clearance ?? ASK;
  const by = amount ?? 0;
  const repaired = (repair: Partial<Repair>): Job => ({ ...job, repair: { ...job.repair, ...repair } });
  const bare = (faces: readonly string[]): Job => {
    const { coatedFaces } = job.repair;
    const coated = [...PLATE, ...TIPS].filter(
      (face) => coatedFaces.includes('*') || coatedFaces.includes(face),
    );
    return repaired({ coatedFaces: coated.filter((face) => !faces.includes(face)) });
  };
  switch (kind) {
    case 'flush':
      return repaired({ coatAllowance: 0 });
    case 'stop-short':
      return repaired({ coatAllowance: by, allowanceFaces: ['plate:face', 'impeller:vane-*/tip'] });
    case 'bare-plate':
      return bare(PLATE);
    case 'bare-tips':
      return bare(TIPS);
    case 'bare-both':
      return bare([...PLATE, ...TIPS]);
    case 'one-coat-less':
      return { ...job, coat: { ...job.coat, coats: job.coat.coats - 1 } };
    case 'shim':
      return { ...job, clearance: { ...clearance, shim: clearance.shim + by } };
    case 'dress-tips':
      return { ...job, clearance: { ...clearance, dressTips: clearance.dressTips + by } };
    case 'fill-left': {
      const overrules = left.map(({ part, face, at }) => ({
        part,
        face,
        point: at,
        action: 'fill' as const,
      }));
      return repaired({ overrules: [...job.repair.overrules, ...overrules] });
    }
  }
}
