import { describe, expect, it } from 'vitest';
import type { MarkFile } from '../../../../geometry/job/job-file.ts';
import { newPlateJob } from '../../../../geometry/job/new-plate-job.ts';
import { markSummary } from '../../../../web/panels/wear/mark-summary.ts';
import { IMPELLER } from '../../tools/impellers.ts';

const [plate] = newPlateJob().parts;
const words = (mark: MarkFile, units: 'mm' | 'in' = 'mm') => {
  const { what, where } = markSummary(mark, plate, units);
  return `${what} | ${where}`;
};

describe('a mark in words', () => {
  it.each<[MarkFile, string]>([
    [
      { kind: 'patch', face: 'face', first: [90, 130], second: [20, 95], depth: 3.5 },
      'Patch, 3.5 mm | radius 90 to 130 mm, 20 to 95°',
    ],
    [
      { kind: 'patch', face: 'bore', first: [0, 360], second: [0, 8], depth: [1, 2] },
      'Patch, bore, 1 to 2 mm | 0 to 360°, below the face 0 to 8 mm',
    ],
    [
      { kind: 'pit', face: 'face', at: [95, 210], diameter: 12, depth: 2.5, form: 'bowl' },
      'Pit, 2.5 mm | 12 mm across, radius 95 mm, 210°',
    ],
    [
      {
        kind: 'area',
        face: 'face',
        outline: [
          [80, 0],
          [90, 5],
          [80, 9],
        ],
        depth: 2,
      },
      'Area, 2 mm | 3 corners',
    ],
    [
      { kind: 'stroke', face: 'face', path: [[90, 0]], radius: 10, depth: 2, edge: 'soft' },
      'Brush, 2 mm | radius 10 mm, soft edge',
    ],
    [{ kind: 'stroke', face: 'face', path: [[90, 0]], radius: 10, clear: true }, 'Wiped | radius 10 mm'],
    [
      { kind: 'smooth', face: 'face', path: [[90, 0]], radius: 10, strength: 0.5 },
      'Smoothed | radius 10 mm, strength 50 %',
    ],
    [
      {
        kind: 'readings',
        face: 'face',
        points: [
          [90, 0, 0.4],
          [95, 40, 3.1],
          [95, 80, -0.05],
        ],
        gaugeError: 0.05,
      },
      'Gauge readings, 3 | -0.05 to 3.1 mm, gauge ±0.05 mm',
    ],
    [
      { kind: 'readings', face: 'bore', points: [[90, 4, 2]] },
      'Gauge readings, bore, 1 | 2 mm, gauge ±0.1 mm',
    ],
  ])('%j', (mark, expected) => {
    expect(words(mark)).toBe(expected);
  });

  it('names the face of an impeller in words', () => {
    const say = (mark: MarkFile) => {
      const { what, where } = markSummary(mark, IMPELLER, 'mm');
      return `${what} | ${where}`;
    };
    expect(
      say({
        kind: 'edge',
        face: 'vane-*/leading-edge',
        profile: [
          [0, 1],
          [20, 4.5],
          [40, 2],
        ],
      }),
    ).toBe('Edge loss, all vanes, leading edge, up to 4.5 mm | height 0 to 40 mm, 3 points');
    expect(
      say({ kind: 'pit', face: 'vane-2/suction', at: [60, 12], diameter: 8, depth: 2, form: 'cone' }),
    ).toBe('Pit, vane 2, suction side, 2 mm | 8 mm across, along 60 mm, height 12 mm');
    expect(say({ kind: 'pit', face: 'vane-1/tip', at: [60, -1], diameter: 4, depth: 2, form: 'cone' })).toBe(
      'Pit, vane 1, tip, 2 mm | 4 mm across, along 60 mm, across -1 mm',
    );
    expect(say({ kind: 'patch', face: 'shroud/front', first: [90, 120], second: [10, 40], depth: 2 })).toBe(
      'Patch, front of the shroud, 2 mm | radius 90 to 120 mm, 10 to 40°',
    );
  });

  it('speaks inches on a screen in inches', () => {
    const pit: MarkFile = {
      kind: 'pit',
      face: 'face',
      at: [101.6, 210],
      diameter: 12.7,
      depth: 2.54,
      form: 'cone',
    };
    expect(words(pit, 'in')).toBe('Pit, 0.1 in | 0.5 in across, radius 4 in, 210°');
  });
});
