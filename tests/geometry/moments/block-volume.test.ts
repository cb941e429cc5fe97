import { describe, expect, test } from 'vitest';
import { replay } from '../../../geometry/depth/replay.ts';
import { blockVolume } from '../../../geometry/moments/block-volume.ts';
import { lostMetal } from '../../../geometry/moments/integrate.ts';
import { toRadians } from '../../../geometry/units.ts';
import { faceOf, patch, pit } from '../made.ts';

const marks = [
  patch([90, 130], [350, 95], 3.5),
  pit(125, 0, 22, 4, 'cone'),
  pit(145, 60, 20, 6, 'bowl'),
] as const;

describe('metal lost under a block of cells', () => {
  test('of all cells is what the face has lost: but for cells cut by a hole and a mark at once', () => {
    const face = faceOf('face', { coneAngle: toRadians(4) }, 1);
    const map = replay(face, marks);
    const all = { row0: 0, row1: map.grid.rows - 1, column0: 0, columns: map.grid.columns };
    expect(blockVolume(face, map, all) / lostMetal(face, map).volume).toBeCloseTo(1, 7);
  });

  test('adds up over tiles, one of them across the 0/360 line', () => {
    const face = faceOf('face', {}, 1);
    const map = replay(face, marks);
    const { rows, columns } = map.grid;
    const half = Math.floor(columns / 2);
    const tiles = [
      { row0: 0, row1: 45, column0: columns - 40, columns: half },
      { row0: 0, row1: 45, column0: half - 40, columns: columns - half },
      { row0: 46, row1: rows - 1, column0: columns - 40, columns: half },
      { row0: 46, row1: rows - 1, column0: half - 40, columns: columns - half },
    ];
    const sum = tiles.reduce((total, tile) => total + blockVolume(face, map, tile), 0);
    expect(sum / lostMetal(face, map).volume).toBeCloseTo(1, 10);
    expect(tiles.filter((tile) => blockVolume(face, map, tile) > 0).length).toBeGreaterThan(1);
  });
});
