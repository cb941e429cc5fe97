import type { JobFile, PartFile } from '../../../geometry/job/job-file.ts';
import type { RegionResult, Result } from '../../../geometry/sheet/result.ts';
import type { DamageOrder } from './damage-view.ts';

/** A damage region in the list. */
export interface ListedRegion {
  readonly part: PartFile;
  readonly region: RegionResult;
  /** Part by part, as on the sheet and on the flat picture, whatever the order of the list. */
  readonly number: number;
}

/** The damage of all parts, the greatest first. Regions alike in that come deepest first. */
export function listedRegions({ parts }: Result, job: JobFile, order: DamageOrder): readonly ListedRegion[] {
  const size = SIZES[order];
  return parts
    .flatMap(({ id, regions }) => {
      const part = job.parts.find((known) => known.id === id);
      return part === undefined ? [] : regions.map((region, i) => ({ part, region, number: i + 1 }));
    })
    .sort((a, b) => size(b.region) - size(a.region) || b.region.deepest - a.region.deepest);
}

const SIZES: Readonly<Record<DamageOrder, (region: RegionResult) => number>> = {
  depth: ({ deepest }) => deepest,
  area: ({ area }) => area,
  volume: ({ lostVolume }) => lostVolume,
};
