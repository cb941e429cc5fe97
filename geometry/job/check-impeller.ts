import { toRadians } from '../units.ts';
import { checkLeast } from './check-plate.ts';
import { type Fault, shown } from './fault.ts';
import type { ImpellerFile } from './job-file.ts';
import type { Readable } from './readable.ts';

/** What the sizes of an impeller must agree on: hub within inlet within rim, and vanes that stand apart. */
export function checkImpeller(impeller: Readable<ImpellerFile>, field: string): Fault[] {
  const { outerDiameter: outer, hubDiameter: hub, shroudThickness, vanes } = impeller;
  const inlet = vanes?.inletDiameter;
  const faults: Fault[] = [];
  if (inlet != null && outer != null && inlet >= outer) {
    const needs = `smaller than outerDiameter ${outer}`;
    faults.push({ field: `${field}.vanes.inletDiameter`, found: shown(inlet), needs });
  }
  if (hub != null && inlet != null && hub > inlet) {
    faults.push({
      field: `${field}.hubDiameter`,
      found: shown(hub),
      needs: `at most vanes.inletDiameter ${inlet}`,
    });
  } else if (hub != null && outer != null && hub >= outer) {
    faults.push({
      field: `${field}.hubDiameter`,
      found: shown(hub),
      needs: `smaller than outerDiameter ${outer}`,
    });
  }
  const { boreDiameter: bore } = impeller;
  if (bore != null && hub != null && bore >= hub) {
    faults.push({
      field: `${field}.boreDiameter`,
      found: shown(bore),
      needs: `smaller than hubDiameter ${hub}`,
    });
  }
  const { count, thicknessInlet, thicknessOutlet, inletAngle } = vanes ?? {};
  if (count != null && thicknessInlet != null && inletAngle != null && inlet != null) {
    // A vane of thickness t at blade angle b takes t / sin b of the circle.
    const room = Math.floor((Math.PI * inlet * Math.sin(toRadians(inletAngle))) / thicknessInlet);
    if (count > room) {
      const needs = `at most ${room}, as many as stand apart at inletDiameter ${inlet}`;
      faults.push({ field: `${field}.vanes.count`, found: shown(count), needs });
    }
  }
  const walls = [shroudThickness, thicknessInlet, thicknessOutlet].filter((wall) => wall != null);
  const thickest = walls.length === 3 ? Math.max(...walls) : null;
  return [...faults, ...checkLeast(impeller.leastThickness, thickest, 'the thickest wall', field)];
}
