import { describe, expect, test } from 'vitest';
import { bodyMeshes } from '../../../geometry/part/body-mesh.ts';
import { faceMesh } from '../../../geometry/part/face-mesh.ts';
import type { Mesh } from '../../../geometry/part/mesh.ts';
import type { Part } from '../../../geometry/part/part.ts';
import { vaneFaceOf, vaneMesh } from '../../../geometry/part/vane-mesh.ts';
import { toRadians } from '../../../geometry/units.ts';
import { bodyOf, impellerPart } from './impellers.ts';
import { areaOf, cornersOf, cross, dot, minus, openSides, solidOf } from './mesh-sums.ts';

/** Area of the regular polygon of 255 sides in a circle of radius r. */
const disc = (r: number) => (255 / 2) * r * r * Math.sin((2 * Math.PI) / 255);

const upTo = <M extends Mesh>(mesh: M, end: number): M => ({ ...mesh, index: mesh.index.slice(0, end) });

/** What is to be seen of the part as new: body, shroud and vanes. */
function surface(part: Part): Mesh[] {
  const { vanes } = bodyOf(part);
  const faces = part.faces.map((face) => {
    const on = vaneFaceOf(face.name);
    if (on === null) return faceMesh(face, { rows: 6 });
    const mesh = vaneMesh(vanes[on.vane - 1], face, on.name);
    return upTo(mesh, mesh.innerFrom);
  });
  return [...bodyMeshes(part).map((mesh) => upTo(mesh, mesh.innerFrom)), ...faces];
}

const KINDS = {
  usual: {},
  'turning the other way': { rotation: 'counter-clockwise' },
  'square-nosed': { vanes: { nose: 'square' } },
  open: { shroudThickness: 0 },
  'single-arc': { vanes: { camber: 'arc' } },
  'one-vaned': { vanes: { count: 1, firstAngle: toRadians(100) } },
  'twelve-vaned': { vanes: { count: 12, thicknessInlet: 5, thicknessOutlet: 7, heightOutlet: 40 } },
  'without a bore': { boreRadius: 0 },
  'without a raised hub': { hubHeight: 0 },
} as const satisfies Record<string, Parameters<typeof impellerPart>[0]>;

describe('an impeller as triangles', () => {
  test.each(Object.entries(KINDS))('closes: %s', (_, shape) => {
    expect(openSides(surface(impellerPart(shape)))).toBe(0);
  });

  test.each(Object.entries(KINDS))('shows its outside everywhere: %s', (_, shape) => {
    const part = impellerPart(shape);
    let least = Infinity;
    for (const mesh of [...surface(part), ...bodyMeshes(part)]) {
      for (let t = 0; t < mesh.index.length / 3; t++) {
        const [a, b, c] = cornersOf(mesh, t);
        const vector = cross(minus(b, a), minus(c, a));
        // Where two corners coincide, at the point of a round nose, it shows nothing.
        if (Math.hypot(...vector) < 1e-5) continue;
        const first = mesh.index[t * 3] * 3;
        const normal = [mesh.normal[first], mesh.normal[first + 1], mesh.normal[first + 2]] as const;
        least = Math.min(least, dot(vector, normal));
      }
    }
    expect(least).toBeGreaterThan(0);
  });

  // A vane of even thickness t, height b and blade angle has t b L, L = (r2 - r1) / sin beta: (1 - k n) is even about the camber.
  // Closed form: 20 deg from 65 to 150 mm is a spiral 248.5234 mm long. Hub and shroud are
  // cylinders, each circle a polygon; chords of the camber are 1e-4 short.
  test('holds hub, shroud and N vanes of t x b x L', () => {
    const beta = toRadians(20);
    const vanes = {
      inletAngle: beta,
      outletAngle: beta,
      heightOutlet: 40,
      nose: 'square',
      count: 7,
    } as const;
    const length = (150 - 65) / Math.sin(beta);
    expect(length).toBeCloseTo(248.5234, 3);
    const whole = disc(150) * 10 + disc(30) * 40 - disc(15) * 50 + 7 * 8 * 40 * length;
    expect(solidOf(surface(impellerPart({ vanes }))).volume / whole).toBeCloseTo(1, 3);
    const open = disc(30) * 40 - disc(15) * 40 + 7 * 8 * 40 * length;
    expect(solidOf(surface(impellerPart({ vanes, shroudThickness: 0 }))).volume / open).toBeCloseTo(1, 3);
  });

  // A round nose lacks half a square less half a disc, which here is a polygon of 32 sides.
  test('a round nose is a half cylinder', () => {
    const vanes = { heightOutlet: 40, count: 1 } as const;
    const volume = (nose: 'round' | 'square') =>
      solidOf(surface(impellerPart({ vanes: { ...vanes, nose } }))).volume;
    expect(volume('square') - volume('round')).toBeCloseTo(40 * (32 - 8 * 16 * Math.sin(Math.PI / 16)), 0);
  });

  test('turned by an angle it is the same solid, turned', () => {
    const angle = toRadians(37);
    const one = solidOf(surface(impellerPart({ vanes: { count: 1 } }))).centroid;
    const turned = solidOf(surface(impellerPart({ vanes: { count: 1, firstAngle: angle } }))).centroid;
    const [x, y] = [
      one[0] * Math.cos(angle) - one[1] * Math.sin(angle),
      one[0] * Math.sin(angle) + one[1] * Math.cos(angle),
    ];
    expect(turned[0]).toBeCloseTo(x, 2);
    expect(turned[1]).toBeCloseTo(y, 2);
  });

  test('where a vane has gone its foot lies open: the footprint within the rim', () => {
    const part = impellerPart({ vanes: { count: 1, nose: 'square' } });
    const [hub] = bodyMeshes(part);
    const inner = { ...hub, index: hub.index.slice(hub.innerFrom) };
    const top = areaOf(inner, (vector) => vector[2] > 1e-6);
    // Outside the rim lies a triangle on one side of the outer end: half the thickness wide, half of it times cot beta long.
    const beta = toRadians(28);
    const { length } = bodyOf(part).vanes[0];
    expect(top).toBeGreaterThan(8 * length - (4 * 4) / Math.tan(beta) / 1.5);
    expect(top).toBeLessThan(8 * length - (4 * 4) / Math.tan(beta) / 3);
  });

  test('the rim sinks with the front and with the back of the shroud', () => {
    const part = impellerPart();
    const [hub, front, back] = bodyMeshes(part);
    expect([hub.rides, front.rides?.name, back.rides?.name]).toEqual([null, 'shroud/front', 'shroud/back']);
    for (const mesh of [front, back]) {
      const [, , up] = mesh.rides?.normal(150, 0) ?? [];
      const riding = Array.from(mesh.inward).filter((_, i) => i % 3 === 2 && mesh.inward[i] !== 0);
      expect(riding).toHaveLength(256);
      expect(new Set(riding)).toEqual(new Set([-(up ?? 0)]));
    }
    expect(bodyMeshes(impellerPart({ shroudThickness: 0 }))).toHaveLength(1);
  });
});
