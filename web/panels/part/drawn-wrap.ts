import type { ImpellerFile } from '../../../geometry/job/job-file.ts';
import { measuredImpeller } from '../../../geometry/job/measured-impeller.ts';
import { camberLine } from '../../../geometry/part/camber.ts';
import { type Deg, toDegrees } from '../../../geometry/units.ts';

export type CamberName = NonNullable<ImpellerFile['vanes']['camber']>;

/** How far each camber turns about the shaft between the end angles given; null where it can't be drawn. */
export function drawnWraps(impeller: ImpellerFile): Readonly<Record<CamberName, Deg | null>> {
  const { vanes, outerRadius } = measuredImpeller(impeller, []);
  const wrap = (camber: CamberName): Deg | null => {
    try {
      return toDegrees(camberLine({ ...vanes, camber }, outerRadius).wrap);
    } catch {
      return null;
    }
  };
  return { linear: wrap('linear'), arc: wrap('arc') };
}

/** The camber whose wrap comes closest to the measured one. */
export function nearestCamber(wraps: Readonly<Record<CamberName, Deg | null>>, measured: Deg): CamberName {
  const off = (camber: CamberName) => Math.abs((wraps[camber] ?? Number.POSITIVE_INFINITY) - measured);
  return off('arc') < off('linear') ? 'arc' : 'linear';
}
