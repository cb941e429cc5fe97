import { describe, expect, it } from 'vitest';
import { measured } from '../../../geometry/job/measured.ts';
import { partOf as builtPart } from '../../../geometry/part/part-of.ts';
import { depthSum, readDepth, wallAsNew } from '../../../web/tools/reading-depth.ts';
import { IMPELLER, impellerJob } from './impellers.ts';
import { faceNamed, PLATES, partOf } from './plates.ts';

describe('the depth a reading stands for', () => {
  // Plain subtraction: how the gauges are used is common practice.
  it('is the reading itself, or what it is more than on sound metal, or what is missing of the wall', () => {
    expect(readDepth('depth', 2.35, 99)).toBe(2.35);
    expect(readDepth('two-readings', 12.4, 9.85)).toBe(2.55);
    expect(readDepth('wall-left', 15.2, 18)).toBe(2.8);
  });

  it('may be below zero, where a gauge reads less than on sound metal', () => {
    expect(readDepth('two-readings', 9.8, 9.85)).toBe(-0.05);
    expect(readDepth('wall-left', 18.1, 18)).toBe(-0.1);
    expect(Object.is(readDepth('two-readings', 9.85, 9.85), 0)).toBe(true);
  });

  it('keeps what a gauge can tell of an inch reading', () => {
    // 0.488 in - 0.388 in = 0.1 in = 2.54 mm exactly.
    expect(readDepth('two-readings', 0.488 * 25.4, 0.388 * 25.4)).toBe(2.54);
  });
});

describe('the sum beside the field', () => {
  it('is written as the gauge shows it', () => {
    expect(depthSum('two-readings', 12.4, 9.85, 'mm')).toBe('12.40 - 9.85 = 2.55 mm deep');
    expect(depthSum('wall-left', 15.2, 18, 'mm')).toBe('18.00 - 15.20 = 2.80 mm deep');
    expect(depthSum('depth', 2, 0, 'mm')).toBe('');
    expect(depthSum('two-readings', 12.7, 10.16, 'in')).toBe('0.5000 - 0.4000 = 0.1000 in deep');
  });

  it('adds up as it stands: rounded figures that would not are written out', () => {
    expect(depthSum('two-readings', 12.405, 9.85, 'mm')).toBe('12.405 - 9.85 = 2.555 mm deep');
    for (const reading of [12.401, 12.4, 9.851, 10, 11.115]) {
      const [from, less, depth] = (
        depthSum('two-readings', reading, 9.85, 'mm').match(/-?\d+\.?\d*/g) ?? []
      ).map(Number);
      expect(from - less).toBeCloseTo(depth, 9);
    }
  });
});

describe('the wall as new behind a place', () => {
  it('is the thickness of a plate, whatever the angle', () => {
    const face = faceNamed(partOf(PLATES.round), 'face');
    expect(wallAsNew(face, [60, 0])).toBeCloseTo(16, 12);
    expect(wallAsNew(face, [99, 271.5])).toBeCloseTo(16, 12);
  });

  it('is not known at an edge, which has no wall behind it', () => {
    const impeller = builtPart(measured(impellerJob()).parts[0], 1);
    expect(wallAsNew(faceNamed(impeller, 'vane-1/leading-edge'), [10, 0])).toBeNull();
    expect(wallAsNew(faceNamed(impeller, 'vane-1/pressure'), [60, 10])).toBeCloseTo(
      IMPELLER.vanes.thicknessInlet,
      6,
    );
  });
});
