import { expect, test } from 'vitest';
import { estimate } from '../../../geometry/estimate.ts';
import type { Rotor } from '../../../geometry/job/job.ts';
import { impeller } from '../../../geometry/part/impeller.ts';
import { balanceResult } from '../../../geometry/sheet/balance-result.ts';
import { balanceFigure } from '../../../web/scene/balance-figure.ts';
import { evenly, job, madeImpeller } from '../../geometry/made.ts';

const rotor: Rotor = {
  part: 'impeller',
  mass: 14200,
  speed: 1450,
  grade: 6.3,
  planes: 1,
  planeSpacing: null,
  asFound: { amount: 0, angle: 0 },
  densityError: 0.02,
  corrections: [
    { kind: 'holes', face: 'shroud/back', at: [[120, 1]], radius: 5, depth: 3 },
    { kind: 'skim', face: 'shroud/back', first: [120, 140], second: [1, 1.5], depth: 1 },
  ],
};
const shape = madeImpeller({}, {}, [evenly('vane-1/tip', 1)]);
const { balance } = estimate({ ...job([]), parts: [shape], rotor }, { cell: 2 });
if (balance === null) throw new Error('no balance');
const part = impeller(shape, 4);
const result = balanceResult(balance);
const figure = balanceFigure(part, result);

test('the arrow is drawn to the scale of the permitted circle, where the vector points', () => {
  const [limitX, limitY] = figure.limit[0];
  const [tipX, tipY] = figure.head[0];
  const shown = Math.hypot(tipX, tipY) / Math.hypot(limitX, limitY);
  expect(shown).toBeCloseTo(Math.min(result.ratio, 1.15 / 0.45), 9);
  expect(Math.atan2(tipY, tipX)).toBeCloseTo(
    Math.atan2(Math.sin(balance.net.angle), Math.cos(balance.net.angle)),
    6,
  );
});

test('what is taken is drawn on the back of the shroud', () => {
  expect(figure.taken).toHaveLength(2);
  for (const { ring, isBehind } of figure.taken) {
    expect(isBehind).toBe(true);
    for (const [, , z] of ring) expect(z).toBe(-10);
  }
  const [{ ring: hole }] = figure.taken;
  const middle = [0, 1].map((k) => hole.reduce((sum, point) => sum + point[k], 0) / hole.length);
  expect(Math.hypot(middle[0], middle[1])).toBeCloseTo(120, 4);
});
