import { expect, test } from 'vitest';
import { depthsAt, krige, varianceAt } from '../../../../geometry/depth/kriging/kriging.ts';
import { leaveEachOut } from '../../../../geometry/depth/kriging/leave-one-out.ts';
import { franke, observed, seeded } from './fields.ts';

test('each reading against the others: as when it is taken out and its place kriged anew', () => {
  const random = seeded(5);
  const points = Array.from({ length: 12 }, () => {
    const [x, y] = [random(), random()];
    return [100 * x, 100 * y, 4 * franke(x, y)] as const;
  });
  const covariance = { shape: 'matern-3/2', length: 40, sill: 1.2 } as const;
  const all = leaveEachOut(krige(observed(points, 0.01), covariance));
  for (const [i, [x, y, depth]] of points.entries()) {
    const without = krige(
      observed(
        points.filter((_, k) => k !== i),
        0.01,
      ),
      covariance,
    );
    const at = Float64Array.of(x, y, 0);
    expect(all[i].off).toBeCloseTo(depth - depthsAt(without, at)[0], 5);
    expect(all[i].error).toBeCloseTo(Math.sqrt(varianceAt(without, at, 0) + 0.01), 5);
  }
});
