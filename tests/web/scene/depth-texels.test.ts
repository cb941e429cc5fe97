import { DataUtils } from 'three';
import { describe, expect, test } from 'vitest';
import { createDepthMap } from '../../../geometry/depth/depth-map.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import { depthTexels, wholeBlock, writeBlock } from '../../../web/scene/depth-texels.ts';
import { sinkTexels, writeSink } from '../../../web/scene/sink-texels.ts';
import { faceOf, patch, pit } from '../../geometry/made.ts';
import { impellerPart } from '../../geometry/part/impellers.ts';

describe('a depth map as half floats', () => {
  // The 3D library's own conversion reads them back. Half a unit in the last of 11 bits: 2^-11 of the value.
  test('holds even depths to 1 part in 2048', () => {
    const face = faceOf('face', { holes: [] }, 4);
    const map = createDepthMap(face.grid);
    const texels = depthTexels(face);
    let worst = 0;
    for (let depth = 0.01; depth < 900; depth *= 1.013) {
      map.depth.fill(depth);
      writeBlock(texels, map, { row0: 5, row1: 5, column0: 9, columns: 1 });
      texels.filled.fill(depth);
      writeBlock(texels, map, { row0: 5, row1: 5, column0: 9, columns: 1 });
      worst = Math.max(
        worst,
        Math.abs(DataUtils.fromHalfFloat(texels.data[5 * face.grid.columns + 9]) / depth - 1),
      );
    }
    expect(worst).toBeLessThanOrEqual(1 / 2048);
  });

  test('a cell spreads over its neighbours by the binomial weights, also across the 0/360 line', () => {
    const face = faceOf('face', { holes: [] }, 4);
    const texels = depthTexels(face);
    const map = createDepthMap(face.grid);
    const { columns } = face.grid;
    map.depth[4 * columns] = 8;
    writeBlock(texels, map, { row0: 4, row1: 4, column0: 0, columns: 1 });
    const at = (row: number, column: number) =>
      DataUtils.fromHalfFloat(texels.data[row * columns + ((column + columns) % columns)]);
    const weights = [1, 4, 6, 4, 1];
    for (let i = 0; i < 5; i++) {
      for (let j = 0; j < 5; j++) {
        expect(at(2 + i, j - 2)).toBeCloseTo((8 * weights[i] * weights[j]) / 256, 3);
      }
    }
    expect([...texels.data].filter((bits) => bits > 0).length).toBe(25);
  });

  test.each(['vane-1/tip', 'vane-1/pressure', 'vane-1/leading-edge'])(
    'every cell of a face that does not go round is taken over, to both its ends: %s',
    (name) => {
      const face = impellerPart({}, 0.5).faces.find((known) => known.name === name);
      if (face === undefined) throw new Error(`no face ${name}`);
      const map = createDepthMap(face.grid);
      map.depth.fill(3);
      const texels = depthTexels(face);
      writeBlock(texels, map, wholeBlock(map));
      const held = (cell: number) => face.cover === null || face.cover[cell] > 0;
      const read = [...texels.data].map((bits) => DataUtils.fromHalfFloat(bits));
      expect(read.filter((_, cell) => held(cell)).every((depth) => Math.abs(depth - 3) < 0.01)).toBe(true);
      const sink = sinkTexels(texels, 12, 7);
      writeSink(sink, wholeBlock(map));
      const corners = [0, 6, 11 * 7].map((texel) => DataUtils.fromHalfFloat(sink.data[texel]));
      for (const depth of corners) expect(depth).toBeGreaterThan(2);
    },
  );

  test.each([{}, { holes: [] }])('block by block gives what all at once gives: %o', (shape) => {
    const face = faceOf('face', shape, 2);
    const map = replay(face, [patch([90, 150], [350, 95], 3), pit(130, 0, 30, 4, 'cone')]);
    const texels = depthTexels(face);
    const { rows, columns } = face.grid;
    for (let row0 = 0; row0 < rows; row0 += 7) {
      for (let column0 = 0; column0 < columns; column0 += 40) {
        writeBlock(texels, map, { row0, row1: Math.min(rows - 1, row0 + 6), column0, columns: 40 });
      }
    }
    const whole = depthTexels(face);
    writeBlock(whole, map, wholeBlock(map));
    expect(Buffer.from(texels.data.buffer).equals(Buffer.from(whole.data.buffer))).toBe(true);
  });

  test('a hole in a worn place holds the depth beside it, so that nothing slopes up to its edge', () => {
    const face = faceOf('face', {}, 1);
    const map = replay(face, [patch([120, 160], [0, 360], 3)]);
    const texels = depthTexels(face);
    writeBlock(texels, map, wholeBlock(map));
    const { grid, cover } = face;
    const inHole = [...map.depth.keys()].filter((cell) => cover?.[cell] === 0 && cell > 70 * grid.columns);
    expect(inHole.length).toBeGreaterThan(500);
    expect(inHole.every((cell) => DataUtils.fromHalfFloat(texels.data[cell]) === 3)).toBe(true);
  });

  test('more columns than a tablet can hold are drawn together', () => {
    const face = faceOf('face', { outerRadius: 900, boreRadius: 895, holes: [] }, 1);
    const map = replay(face, [patch([895, 900], [90, 180], 2)]);
    const texels = depthTexels(face);
    writeBlock(texels, map, wholeBlock(map));
    expect([face.grid.columns, texels.width, texels.height]).toEqual([5655, 4096, 5]);
    const at = (turn: number) => DataUtils.fromHalfFloat(texels.data[2 * 4096 + Math.floor(turn * 4096)]);
    expect([at(0.2), at(0.3), at(0.45), at(0.6)]).toEqual([0, 2, 2, 0]);
  });
});

describe('how far vertices sink', () => {
  const face = faceOf('face', { holes: [] }, 1);
  const sunk = (sink: ReturnType<typeof sinkTexels>) => Array.from(sink.data, DataUtils.fromHalfFloat);

  test('the mean over all vertices, ends counted half, is the mean depth: nothing is lost between them', () => {
    const map = replay(face, [patch([83.3, 121.7], [350, 95], 3.5)]);
    const texels = depthTexels(face);
    writeBlock(texels, map, wholeBlock(map));
    const sink = sinkTexels(texels, 23, 128);
    writeSink(sink, wholeBlock(map));
    let sum = 0;
    sunk(sink).forEach((depth, i) => {
      const row = Math.floor(i / sink.width);
      sum += depth * (row === 0 || row === sink.height - 1 ? 0.5 : 1);
    });
    const mean = map.depth.reduce((total, depth) => total + depth, 0) / map.depth.length;
    // Half floats hold 1 part in 2048.
    expect(sum / (sink.width * (sink.height - 1)) / mean).toBeCloseTo(1, 3);
  });

  test('a block reaches just the vertices about it, and then all is as if all had been taken over', () => {
    const texels = depthTexels(face);
    const sink = sinkTexels(texels, 23, 128);
    const map = createDepthMap(face.grid);
    const { columns } = face.grid;
    for (const block of [
      { row0: 0, row1: 3, column0: columns - 3, columns: 9 },
      { row0: 60, row1: 71, column0: 200, columns: 31 },
      { row0: 96, row1: 99, column0: 5, columns: 2 },
    ]) {
      for (let row = block.row0; row <= block.row1; row++) {
        for (let k = 0; k < block.columns; k++)
          map.depth[row * columns + ((block.column0 + k) % columns)] = 2;
      }
      writeBlock(texels, map, block);
      writeSink(sink, block);
      const whole = sinkTexels(texels, 23, 128);
      writeSink(whole, wholeBlock(map));
      expect(sunk(sink)).toEqual(sunk(whole));
    }
    expect(sunk(sink).filter((depth) => depth > 0).length).toBeLessThan(40);
  });
});
