/** An impeller file to draw on, semi-open with five vanes. */
import type { ImpellerFile, JobFile, MarkFile } from '../../../geometry/job/job-file.ts';

export const IMPELLER: ImpellerFile = {
  id: 'impeller',
  kind: 'impeller',
  density: 7.2,
  rotation: 'clockwise',
  outerDiameter: 300,
  hubDiameter: 60,
  boreDiameter: 30,
  hubHeight: 36,
  shroudThickness: 10,
  vanes: {
    count: 5,
    firstAngle: 0,
    inletDiameter: 130,
    inletAngle: 22,
    outletAngle: 28,
    camber: 'linear',
    thicknessInlet: 8,
    thicknessOutlet: 8,
    heightInlet: 40,
    heightOutlet: 26,
    nose: 'round',
  },
  wear: [],
};

export function impellerJob(wear: readonly MarkFile[] = [], sizes: Partial<ImpellerFile> = {}): JobFile {
  return { format: 1, parts: [{ ...IMPELLER, ...sizes, wear: [...wear] }] };
}
