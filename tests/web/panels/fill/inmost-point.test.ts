import { expect, test } from 'vitest';
import { cellAt } from '../../../../geometry/depth/depth-at.ts';
import { replay } from '../../../../geometry/depth/replay.ts';
import { decideFill } from '../../../../geometry/fill/fill-map.ts';
import { toGridPoint } from '../../../../geometry/part/face.ts';
import { toDegrees } from '../../../../geometry/units.ts';
import { inmostPoint } from '../../../../web/panels/fill/inmost-point.ts';
import { faceOf, job, patch } from '../../../geometry/made.ts';

const face = faceOf('face', { holes: [] });

function regionsOf(marks: Parameters<typeof replay>[1]) {
  const { label, regions } = decideFill('plate', face, replay(face, marks), job([]).repair);
  const { rows, columns } = face.grid;
  return {
    part: 'plate',
    face: 'face',
    rows,
    columns,
    label: new Int32Array(label),
    ids: regions.map(({ id }) => id),
  };
}

test('lies half way across an even patch', () => {
  // 40 mm of radius is less than the arc: 20 mm from both rims.
  const [radius = 0, angle = 0] =
    inmostPoint(face, regionsOf([patch([90, 130], [20, 95], 3)]), 'face-1') ?? [];
  expect(Math.abs(radius - 110)).toBeLessThan(1);
  expect(Math.abs(toDegrees(angle) - 57.5)).toBeLessThan(1);
});

test('is found across the 0/360 line', () => {
  const regions = regionsOf([patch([90, 130], [350, 370], 3)]);
  const [radius = 0, angle = 0] = inmostPoint(face, regions, 'face-1') ?? [];
  expect(Math.abs(toDegrees(angle + Math.PI) % 360) - 180).toBeLessThan(6);
  expect(radius).toBeGreaterThan(100);
});

test('lies in the region, also in a crooked one and all round', () => {
  for (const marks of [
    [patch([80, 84], [0, 360], 2)],
    [patch([80, 84], [0, 180], 2), patch([84, 150], [170, 180], 2), patch([146, 150], [90, 180], 2)],
  ]) {
    const regions = regionsOf(marks);
    const point = inmostPoint(face, regions, 'face-1');
    expect(point).not.toBeNull();
    if (point !== null) expect(regions.label[cellAt(face, ...toGridPoint(face, point))]).toBe(1);
  }
});

test('is null for a region that is not there, and for regions of another grid', () => {
  const regions = regionsOf([patch([90, 130], [20, 95], 3)]);
  expect(inmostPoint(face, regions, 'face-2')).toBeNull();
  expect(inmostPoint(face, { ...regions, rows: 3 }, 'face-1')).toBeNull();
});
