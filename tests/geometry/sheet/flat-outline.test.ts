import { describe, expect, it } from 'vitest';
import { partOf } from '../../../geometry/part/part-of.ts';
import { flatFrame } from '../../../geometry/sheet/flat-frame.ts';
import { flatOutline } from '../../../geometry/sheet/flat-outline.ts';
import { plate as madePlate } from '../made.ts';
import { areaOf, pointsOf } from './path-points.ts';
import { WORN_JOB } from './worn-plate.ts';

const [plate, wing] = WORN_JOB.parts.map((part) => partOf(part, 1).faces);
const outlineOf = (face: (typeof plate)[number]) => flatOutline(face, flatFrame(face));

describe('flatOutline', () => {
  it('traces a plate with bolt holes to its circles', () => {
    const { edges, holes } = outlineOf(plate[0]);
    expect([edges.length, holes.length]).toEqual([1, 3]);
    // Circle areas, pi r^2: outer 160, bore 60, two holes of 7 mm radius.
    expect(areaOf(pointsOf(edges[0])) / (Math.PI * 160 ** 2)).toBeCloseTo(1, 3);
    const inner = holes.map((path) => areaOf(pointsOf(path))).sort((a, b) => b - a);
    expect(inner[0] / (Math.PI * 60 ** 2)).toBeCloseTo(1, 3);
    for (const area of inner.slice(1)) expect(Math.abs(area / (Math.PI * 49) - 1)).toBeLessThan(0.01);
    for (const [x, y] of pointsOf(edges[0]).flat())
      expect(Math.abs(Math.hypot(x, y) - 160)).toBeLessThan(0.02);
  });

  it('keeps the corners of a polygon', () => {
    const { edges, holes } = outlineOf(wing[0]);
    const corners = pointsOf(edges[0])[0];
    // Drawn with y down the page.
    for (const [x, y] of [
      [0, 0],
      [120, 0],
      [120, -50],
      [60, -50],
      [60, -90],
      [0, -90],
    ]) {
      expect(Math.min(...corners.map((corner) => Math.hypot(corner[0] - x, corner[1] - y)))).toBeLessThan(
        0.1,
      );
    }
    // Shoelace areas of the L and of its cut-out, mm2.
    expect(areaOf([corners]) / 8400).toBeCloseTo(1, 3);
    expect(areaOf(pointsOf(holes[0])) / 600).toBeCloseTo(1, 3);
  });

  it('draws a face without holes exactly', () => {
    const { edges, holes } = outlineOf(plate[1]);
    expect(holes).toEqual([]);
    // The bore unrolled: 2 pi 60 x 18 mm, to the 0.01 mm of the path.
    expect(areaOf(pointsOf(edges[0])) / (2 * Math.PI * 60 * 18)).toBeCloseTo(1, 4);
    const round = partOf(madePlate({ holes: [] }), 2);
    expect(outlineOf(round.faces[0])).toEqual({
      edges: ['M160 0A160 160 0 1 0 -160 0A160 160 0 1 0 160 0Z'],
      holes: ['M60 0A60 60 0 1 0 -60 0A60 60 0 1 0 60 0Z'],
    });
  });
});
