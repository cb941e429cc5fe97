import { expect, test } from 'vitest';
import { depthAt } from '../../../geometry/depth/depth-at.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import type { OutlinePlate } from '../../../geometry/job/job.ts';
import { wearPlate } from '../../../geometry/part/wear-plate.ts';
import { evenly, plate } from '../made.ts';

/** An L, its inner edges on borders of 1 mm cells. */
const L_SHAPE: OutlinePlate = {
  kind: 'outline',
  edge: [
    [0, 0],
    [120, 0],
    [120, 50],
    [60, 50],
    [60, 90],
    [0, 90],
  ],
  holes: [],
};

test('an even depth is even up to the edge of the face, on whichever side of it cells begin', () => {
  const [face] = wearPlate({ ...plate(), shape: L_SHAPE }, 1).faces;
  const map = replay(face, [evenly('face', 2)]);
  for (const y of [0.1, 25, 49.4, 49.6, 49.99]) expect(depthAt(map, face, y, 90)).toBe(2);
  for (const y of [0.1, 50.2, 89.9]) expect(depthAt(map, face, y, 30)).toBe(2);
  expect(depthAt(map, face, 50.6, 90)).toBe(0);
});
