import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { estimate } from '../../../../geometry/estimate.ts';
import type { RoundPlate } from '../../../../geometry/job/job.ts';
import type { JobFile } from '../../../../geometry/job/job-file.ts';
import { measured } from '../../../../geometry/job/measured.ts';
import type { Part } from '../../../../geometry/part/part.ts';
import { wearPlate } from '../../../../geometry/part/wear-plate.ts';
import type { Mm } from '../../../../geometry/units.ts';
import { type Facing, facing } from '../../../../web/scene/assembly/facing.ts';
import {
  fromPlate,
  fromRotor,
  intoPlate,
  intoRotor,
  type Pose,
} from '../../../../web/scene/assembly/pose.ts';
import { plate } from '../../../geometry/made.ts';
import { impellerPart } from '../../../geometry/part/impellers.ts';

const sample = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../../../samples/facing-pair.job.json'), 'utf8'),
) as JobFile;
const asked = { asNew: 0.4, shim: 0.15, asNewHolds: 'at the closest' } as const;
const platePart = (shape: Partial<RoundPlate> = {}): Part => wearPlate(plate(shape), 2);
/** Vanes from 40 mm at a radius of 65 down to 26 at 150. */
const RAKE = (40 - 26) / (150 - 65);

function faced(below: Part, above: Part, ask: Parameters<typeof facing>[2] = asked): Facing {
  const stood = facing(below, above, ask);
  if (stood === null) throw new Error('faced: needs parts that share a radius');
  return stood;
}

/** Between the nominal faces at a radius, mm: by the places of the plate's own face and the height of the vanes. */
function apart(stood: Facing, below: Part, radius: Mm, heightOfTip: Mm): Mm {
  const pose: Pose = { facing: stood, height: stood.standOff, turn: 0 };
  return fromPlate(pose, below.faces[0].position(radius, 0.7, 0))[2] - heightOfTip;
}

const RADII = [65, 66, 80, 100, 131.5, 149, 150];
const tipOf = (rake: number) => (radius: Mm) => 40 - rake * (radius - 65);

describe('nominal faces stand apart by the gap as new, the shim and the opening at every radius', () => {
  test.each([
    { name: 'a flat plate over level tips', cone: 0, outlet: 40, rake: 0, opening: () => 0 },
    // Closest where the vanes are highest.
    {
      name: 'a flat plate over raked tips',
      cone: 0,
      outlet: 26,
      rake: RAKE,
      opening: (r: Mm) => RAKE * (r - 65),
    },
    { name: 'a plate dished as the tips are raked', cone: RAKE, outlet: 26, rake: RAKE, opening: () => 0 },
    // Dished over level tips it is closest at the rim.
    {
      name: 'a dished plate over level tips',
      cone: 0.1,
      outlet: 40,
      rake: 0,
      opening: (r: Mm) => 0.1 * (150 - r),
    },
  ])('$name', ({ cone, outlet, rake, opening }) => {
    const below = platePart({ coneAngle: Math.atan(cone) });
    const stood = faced(below, impellerPart({ vanes: { heightOutlet: outlet } }));
    for (const radius of RADII) {
      expect(stood.tipAt(radius)).toBeCloseTo(tipOf(rake)(radius), 9);
      expect(stood.openingAt(radius)).toBeCloseTo(opening(radius), 9);
      expect(apart(stood, below, radius, tipOf(rake)(radius))).toBeCloseTo(0.4 + 0.15 + opening(radius), 9);
    }
  });

  test('where the gap as new holds everywhere the plate is drawn following the tips', () => {
    const below = platePart();
    const stood = faced(below, impellerPart(), { ...asked, asNewHolds: 'everywhere' });
    expect(stood.follows).toBe(true);
    for (const radius of RADII) expect(apart(stood, below, radius, tipOf(RAKE)(radius))).toBeCloseTo(0.55, 9);
  });

  test('the opening is that of the gap engine, but for what its rings round off', () => {
    const [below, above] = sample.parts;
    const job = measured({ ...sample, parts: [{ ...below, coneAngle: 4 } as typeof below, above] });
    const { parts, clearance } = estimate(job, { cell: 2 });
    const stood = faced(parts[0].part, parts[1].part, { ...asked, asNewHolds: 'at the closest' });
    const rings = clearance?.gap.byRadius ?? [];
    expect(rings.length).toBeGreaterThan(10);
    expect(clearance?.gap.mismatch).toBeGreaterThan(5);
    // It counts from the closest place of a ring, the picture from the closest of all: half a ring apart at the very most.
    const ring = rings[1].radius - rings[0].radius;
    const slope = 14 / 83 - Math.tan((4 * Math.PI) / 180);
    for (const { radius, opening } of rings)
      expect(Math.abs(stood.openingAt(radius) - opening)).toBeLessThanOrEqual((slope * ring) / 2 + 1e-6);
  });
});

test('a plate within the vanes or about them shares no radius with them', () => {
  const within = platePart({ outerRadius: 60, boreRadius: 30, holes: [] });
  const about = platePart({ outerRadius: 250, boreRadius: 160, holes: [] });
  expect(facing(within, impellerPart(), asked)).toBeNull();
  expect(facing(about, impellerPart(), asked)).toBeNull();
  expect(facing(impellerPart(), platePart(), asked)).toBeNull();
});

test('a place goes into the picture and back, and the marks of 0 degrees stand one over the other', () => {
  const stood = faced(platePart({ coneAngle: 0.05 }), impellerPart(), { ...asked, asNewHolds: 'everywhere' });
  const pose: Pose = { facing: stood, height: stood.standOff + 12, turn: 0.8 };
  for (const place of [
    [100, 20, -3],
    [-70, 5, 2],
  ] as const) {
    for (const [k, value] of intoPlate(pose, fromPlate(pose, place)).entries())
      expect(value).toBeCloseTo(place[k], 9);
    for (const [k, value] of intoRotor(pose, fromRotor(pose, place)).entries())
      expect(value).toBeCloseTo(place[k], 9);
  }
  const [x, y] = fromPlate({ ...pose, turn: 0 }, [100, 0, 0]);
  expect([x, y]).toEqual([100, -0]);
  // Turned over, what stands counter-clockwise on the plate stands clockwise seen from the same side as the impeller.
  expect(fromPlate(pose, [0, 100, 0])[1]).toBe(-100);
});
