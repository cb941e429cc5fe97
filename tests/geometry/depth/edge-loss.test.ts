import { describe, expect, test } from 'vitest';
import { deepestOf } from '../../../geometry/depth/depth-map.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import type { EdgeLoss } from '../../../geometry/job/job.ts';
import { lostMetal } from '../../../geometry/moments/integrate.ts';
import { impellerFace, madeImpeller } from '../made.ts';

const edge = (
  face: string,
  profile: EdgeLoss['profile'],
  blend: EdgeLoss['blend'] = 'deepest',
): EdgeLoss => ({
  kind: 'edge',
  face,
  blend,
  profile,
});

/** Volume lost of a level vane, 8 thick and 30 high. */
function lost(marks: readonly EdgeLoss[], cell: number | null = null): number {
  const face = impellerFace('vane-1/leading-edge', madeImpeller(), cell);
  return lostMetal(face, replay(face, marks)).volume;
}

describe('a loss along an edge', () => {
  // 8 x the area under the profile: trapezia, closed form. What bends out bends in across the thickness.
  test('is linear between its points and nothing outside them', () => {
    // From 6.3 to 20.1: (1 + 4) / 2 x 8.1 + (4 + 2) / 2 x 5.7 = 37.35 mm2.
    const profile = [
      [6.3, 1],
      [14.4, 4],
      [20.1, 2],
    ] as const;
    expect(lost([edge('vane-1/leading-edge', profile)]) / (8 * 37.35)).toBeCloseTo(1, 3);
  });
  test('comes closer to it as the cells shrink', () => {
    const profile = [
      [3.17, 0.4],
      [11.9, 5],
      [25.03, 1.3],
    ] as const;
    const area = (5.4 / 2) * 8.73 + (6.3 / 2) * 13.13;
    const off = (cell: number) =>
      Math.abs(lost([edge('vane-1/leading-edge', profile)], cell) / (8 * area) - 1);
    expect(off(0.25)).toBeLessThan(off(2));
    expect(off(0.25)).toBeLessThan(5e-4);
  });
  test('is as deep as its deepest point says, to 1/64 cell', () => {
    const face = impellerFace('vane-1/leading-edge', madeImpeller());
    const map = replay(face, [
      edge(face.name, [
        [0, 1],
        [20, 4.5],
        [30, 2],
      ]),
    ]);
    // 3.5 mm in 20 mm, met within 1/64 of a cell of 0.25 mm.
    expect(4.5 - deepestOf(map)).toBeLessThan((0.25 / 64) * (3.5 / 20) + 1e-6);
  });
  test('a step between two points at one place is a step', () => {
    const profile = [
      [0, 1],
      [10, 1],
      [10, 3],
      [30, 3],
    ] as const;
    expect(lost([edge('vane-1/leading-edge', profile)]) / (8 * 70)).toBeCloseTo(1, 3);
  });
  test('stands for every vane when it says so', () => {
    for (const vane of [1, 3, 5]) {
      const face = impellerFace(`vane-${vane}/tip`, madeImpeller());
      const map = replay(face, [
        edge('vane-*/tip', [
          [0, 1],
          [202, 1],
        ]),
      ]);
      expect(deepestOf(map)).toBe(1);
      expect(
        deepestOf(
          replay(face, [
            edge(`vane-${vane + 1}/tip`, [
              [0, 1],
              [202, 1],
            ]),
          ]),
        ),
      ).toBe(0);
    }
  });
  test('adds to what is there when it is to add', () => {
    const level = [
      [0, 2],
      [30, 2],
    ] as const;
    const twice = lost([edge('vane-1/leading-edge', level), edge('vane-1/leading-edge', level, 'add')]);
    expect(twice / lost([edge('vane-1/leading-edge', level)])).toBeCloseTo(2, 6);
  });
});
