import { describe, expect, test } from 'vitest';
import { estimate } from '../../geometry/estimate.ts';
import type { Mark, Patch, Vanes } from '../../geometry/job/job.ts';
import type { Metal } from '../../geometry/part/metal.ts';
import { job, madeImpeller, VANES } from '../geometry/made.ts';
import { type Measured, measured } from './solids.ts';
import { vaneSolids } from './vane-solids.ts';

/** 0.3 % in volume, 0.5 % in first moment about the shaft and in height. */
function expectAgree(ours: Metal, theirs: Measured): void {
  expect(Math.abs(ours.volume / theirs.volume - 1)).toBeLessThan(3e-3);
  const [x, y, z] = theirs.centroid.map((value) => value * theirs.volume);
  expect(Math.hypot(ours.x - x, ours.y - y) / Math.hypot(x, y)).toBeLessThan(5e-3);
  expect(Math.abs(ours.z / z - 1)).toBeLessThan(5e-3);
}

const TAPERED: Vanes = { ...VANES, heightInlet: 40, heightOutlet: 26, thicknessInlet: 8, thicknessOutlet: 6 };

const box = (face: string, first: [number, number], second: [number, number], depth: number): Patch => ({
  kind: 'patch',
  face,
  blend: 'deepest',
  first,
  second,
  depth: [depth, depth],
});

const lost = (marks: readonly Mark[], rotation: 'clockwise' | 'counter-clockwise') =>
  estimate({ ...job([]), parts: [madeImpeller(TAPERED, { rotation }, marks)] }).parts[0].lost;

describe('worn vanes agree with a solid kernel', () => {
  for (const rotation of ['clockwise', 'counter-clockwise'] as const) {
    const vane = vaneSolids(TAPERED, rotation === 'clockwise');
    const cases: Record<string, [Mark[], (typeof worn)[number][]]> = {};
    const worn = [
      () => vane.side(1, 2.5, 30.3, 120.7, 8.2, 60),
      () => vane.side(-1, 1.5, -1, 60.4, -1, 60),
      () => vane.tip(3.2, -1, 150.3),
      () => vane.edge(-1, 6.3, 9, 60),
      () => vane.edge(vane.length - 4.1, vane.length + 1, 3, 26),
    ];
    const marks: Mark[] = [
      box('vane-1/pressure', [30.3, 120.7], [8.2, 60], 2.5),
      box('vane-1/suction', [-5, 60.4], [-5, 60], 1.5),
      box('vane-1/tip', [-5, 150.3], [-9, 9], 3.2),
      box('vane-1/leading-edge', [-5, 60], [-9, 9], 6.3),
      box('vane-1/trailing-edge', [-5, 60], [-9, 9], 4.1),
    ];
    const pick = (of: number[]) => [of.map((i) => marks[i]), of.map((i) => worn[i])] as [Mark[], typeof worn];
    cases['a side'] = pick([0]);
    cases['the tip'] = pick([2]);
    cases['both edges'] = pick([3, 4]);
    cases['side, tip and leading edge overlapping'] = pick([0, 1, 2, 3]);
    cases['all five overlapping'] = pick([0, 1, 2, 3, 4]);
    for (const [name, [on, solids]] of Object.entries(cases)) {
      test(`${name}, ${rotation}`, async () => {
        const whole = await vane.whole();
        let left = whole;
        for (const solid of solids) left = left.subtract(await solid());
        const [before, after] = [measured(whole), measured(left)];
        const volume = before.volume - after.volume;
        const centroid = before.centroid.map(
          (value, k) => (value * before.volume - after.centroid[k] * after.volume) / volume,
        ) as [number, number, number];
        expectAgree(lost(on, rotation), { volume, centroid });
      });
    }
  }
});
