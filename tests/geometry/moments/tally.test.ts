import { expect, test } from 'vitest';
import { replay } from '../../../geometry/depth/replay.ts';
import { decideFill } from '../../../geometry/fill/fill-map.ts';
import { metalOf } from '../../../geometry/moments/integrate.ts';
import { tallyFace } from '../../../geometry/moments/tally.ts';
import { faceOf, patch, pit } from '../made.ts';
import { REPAIR } from '../material/generic-materials.ts';

const face = faceOf('face', { holes: [] }, 1);
const tallied = (marks: Parameters<typeof replay>[1], thickest: number) => {
  const map = replay(face, marks);
  const fill = decideFill('plate', face, map, REPAIR);
  const volumes = tallyFace(face, map, fill, thickest).layers.map((layer) =>
    layer.fill.reduce((sum, volume) => sum + volume, 0),
  );
  return { volumes, whole: metalOf(face, map, fill, 'fill').volume };
};

// Derived: a flat hollow 12 mm deep in layers of at most 5 mm is 2 mm first, then 5 and 5, each on the same area.
test('an even hollow is built in layers from the bottom, the uppermost full', () => {
  const { volumes, whole } = tallied([patch([90, 130], [20, 95], 12)], 5);
  expect(volumes).toHaveLength(3);
  for (const [i, share] of [2 / 12, 5 / 12, 5 / 12].entries()) {
    expect(volumes[i] / whole).toBeCloseTo(share, 6);
  }
});

// Derived: a cone 6 mm deep and 40 mm across holds pi 20^2 6 / 3; what lies below 4 mm is a cone a third as large each way: 1/27 of it.
test('what is laid first is only what lies deeper than a layer', () => {
  const { volumes, whole } = tallied([pit(110, 200, 40, 6, 'cone')], 4);
  expect(whole / ((Math.PI * 400 * 6) / 3)).toBeCloseTo(1, 2);
  expect(volumes[0] / whole).toBeCloseTo(1 / 27, 3);
  expect(volumes[1] / whole).toBeCloseTo(26 / 27, 3);
});

test('layers add up to the fill, and one layer holds all of it when nothing is deeper', () => {
  const marks = [patch([70, 150], [0, 200], [1, 9]), pit(110, 100, 30, 11, 'bowl')];
  for (const thickest of [0.001, 1, 3.3, 10.99, 11, 50]) {
    const { volumes, whole } = tallied(marks, thickest);
    expect(volumes.reduce((sum, volume) => sum + volume, 0) / whole).toBeCloseTo(1, 6);
    if (thickest >= 11) expect(volumes).toHaveLength(1);
  }
});
