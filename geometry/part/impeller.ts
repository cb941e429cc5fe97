import type { Impeller } from '../job/job.ts';
import type { Mm } from '../units.ts';
import { camberLine } from './camber.ts';
import type { Face } from './face.ts';
import type { Corner, Part } from './part.ts';
import { shroudBack, shroudFront, shroudRim } from './shroud.ts';
import { vaneEdge } from './vane-edge.ts';
import type { VaneFace } from './vane-face.ts';
import { vaneShapes } from './vane-shape.ts';
import { vaneSide } from './vane-side.ts';
import { vaneTip } from './vane-tip.ts';

/** Cells of vane sides, and of tips and edges, mm; both smaller where a vane is low or thin. */
const BROAD_CELL: Mm = 0.5;
const NARROW_CELL: Mm = 0.25;
const CELLS_ACROSS = 24;

/**
 * The faces of an impeller: front and back of its shroud where it has one, then of each vane pressure and suction side, tip, leading
 * and trailing edge. Metal below several of these counts once, in the first of them.
 * @param cell  map cell size, mm; null chooses it from the size of each face
 * Source: geometry definitions, "Impeller"; tests/geometry/part/impeller.test.ts.
 */
export function impeller(shape: Impeller, cell: Mm | null): Part {
  const vanes = vaneShapes(shape, camberLine(shape.vanes, shape.outerRadius));
  const { heightInlet, heightOutlet, thicknessInlet, thicknessOutlet } = shape.vanes;
  const broad = cell ?? Math.min(BROAD_CELL, Math.min(heightInlet, heightOutlet) / CELLS_ACROSS);
  const narrow = cell ?? Math.min(NARROW_CELL, Math.min(thicknessInlet, thicknessOutlet) / CELLS_ACROSS);
  const shroud = shape.shroudThickness > 0 ? [shroudFront(shape, vanes, cell), shroudBack(shape, cell)] : [];
  const vaneFaces = vanes.map((vane) => [
    vaneSide(vane, 'pressure', broad),
    vaneSide(vane, 'suction', broad),
    vaneTip(vane, narrow),
    vaneEdge(vane, 'leading', narrow),
    vaneEdge(vane, 'trailing', narrow),
  ]);
  return {
    id: shape.id,
    faces: [...shroud, ...vaneFaces.flatMap((faces) => faces.map(({ face }) => face))],
    corners: [
      ...(shroud.length > 0 ? [throughShroud(shroud[0], shroud[1], shape.shroudThickness)] : []),
      ...vaneFaces.flatMap(cornersOf),
    ],
    rim: shape.shroudThickness > 0 ? shroudRim(shape, cell) : null,
    body: { kind: 'impeller', thickness: leastSize(shape), shape, vanes },
  };
}

/** The back of the shroud behind its front: worn through, they share metal. */
function throughShroud(front: Face, back: Face, thickness: Mm): Corner {
  const seenFrom = (u: number, v: number, depth: Mm) => ({ u, v, depth: thickness - depth });
  return { over: back, sides: [{ face: front, seenFrom }], besides: [] };
}

/** Each face against those before it. */
function cornersOf(faces: readonly VaneFace[]): Corner[] {
  return faces.map((over, i) => {
    const seenFrom = faces.map(({ face, under }) => ({
      face,
      seenFrom: (u: number, v: number, depth: Mm) => under(over.inVane(u, v, depth)),
    }));
    return { over: over.face, sides: seenFrom.slice(0, i), besides: seenFrom.filter((_, k) => k !== i) };
  });
}

/** What an exaggerated picture of the wear must stay within. */
function leastSize({ shroudThickness, vanes }: Impeller): Mm {
  const thin = Math.min(vanes.thicknessInlet, vanes.thicknessOutlet);
  return shroudThickness > 0 ? Math.min(shroudThickness, thin) : thin;
}
