/** An impeller with its marks pressed in, its damage regions found and judged, and metal lost under several faces counted once. */
import { vaneOf } from './camber.mjs';
import { columnSums, together, turned } from './columns.mjs';
import { radians } from './faces.mjs';
import { flood, labelNear, squareAt } from './flood.mjs';
import { metalLeft } from './metal-left.mjs';
import { readingErrors } from './readings.mjs';
import { peak, refined } from './regions.mjs';
import { depthAt, depths, marksOn, squares } from './samples.mjs';
import { shroudOverlap, vaneOverlap } from './shared-metal.mjs';
import { shroudFaces, vaneFaceArea, vaneFaces } from './vane-faces.mjs';
import { matches, total } from './worn-plate.mjs';

/** `lots` sets the fineness, 1600 as for a plate; `reach` takes the other reading of where faces end (vane-faces.mjs). */
export function wornImpeller(part, job, lots, reach = false) {
  const vane = vaneOf(part);
  const coarse = 1600 / lots;
  const { count, firstAngle = 0 } = part.vanes;
  const sampled = new Map();
  const shapes = vaneFaces(vane, reach);
  const onVanes = Array.from({ length: count }, (_, i) => {
    const turn = radians(firstAngle) + (2 * Math.PI * i) / count;
    return shapes.map((shape) => {
      const face = { ...shape, name: `vane-${i + 1}/${shape.name}`, kin: shape.name };
      return worn(part, face, job, turn, (marks, allowance) => {
        const key = JSON.stringify([shape.name, marks.map((m) => m.mark), allowance]);
        if (!sampled.has(key)) sampled.set(key, sample(shape, marks, allowance, coarse, 1e6));
        return sampled.get(key);
      });
    });
  });
  const onShroud = shroudFaces(part, vane).map((face) =>
    worn(part, face, job, 0, (marks, allowance) => sample(face, marks, allowance, coarse, 6e6)),
  );
  for (const one of onVanes.flat()) one.area = vaneFaceArea(vane, one.face.kin);
  const overlaps = onVanes.map((faces) => ({
    turn: faces[0].turn,
    ...vaneOverlap(
      vane,
      faces
        .filter((one) => one.most > 0)
        .map((one) => ({ ...one, face: { ...one.face, name: one.face.kin } })),
      0.07 * coarse,
    ),
  }));
  if (onShroud.length > 0)
    overlaps.push({ turn: 0, ...shroudOverlap(...onShroud, part.shroudThickness, Math.round(40 / coarse)) });
  const faces = [...onVanes.flat(), ...onShroud];
  const shared = (what) => together(overlaps.map((one) => turned(one[what], one.turn)));
  const sums = {
    lost: together([shared('lost'), ...faces.map((one) => one.lostSums)]),
    fill: together([shared('fill'), ...faces.flatMap((one) => one.filled.map((r) => r.fillSums))]),
    left: together([
      shared('left'),
      ...faces.filter((one) => one.coated).flatMap((one) => one.left.map((r) => r.lostSums)),
    ]),
  };
  metalLeft(vane, onVanes, onShroud, part);
  const [fill, ...moment] = sums.fill;
  return {
    plate: part,
    faces,
    sums,
    /** Amounts of unbalance added up without regard to direction, mm4: what a small error is small against. */
    scale: {
      lost: total(faces, (one) => Math.hypot(one.lostSums[1], one.lostSums[2])),
      fill: total(
        faces.flatMap((one) => one.filled),
        (r) => Math.hypot(r.fillSums[1], r.fillSums[2]),
      ),
    },
    shared: { lost: shared('lost')[0], left: shared('left')[0] },
    read: readingErrors(part, job, faces),
    leftForCoat: sums.left[0],
    lost: sums.lost[0],
    fill,
    centroid: fill > 1e-6 ? moment.slice(0, 3).map((m) => m / fill) : null,
  };
}

/** A face with its regions judged, turned to where its vane stands. */
function worn(part, face, job, turn, sampling) {
  const repair = job.repair ?? {};
  const name = `${part.id}:${face.name}`;
  const running = repair.allowanceFaces ?? ['*:face', '*:vane-*/tip'];
  const allowance = matches(running, name) ? (repair.coatAllowance ?? 0) : 0;
  const marks = marksOn(part, face);
  const { grid, label, rough, outside } = sampling(marks, allowance);
  const regions = rough.map((r) => ({
    ...r,
    lost: r.lost[0],
    fill: r.fill[0],
    lostSums: turned(r.lost, turn),
    fillSums: turned(r.fill, turn),
    action: r.deepest >= (repair.leaveBelow ?? 1) - 1e-9 ? 'fill' : 'leave',
  }));
  for (const { at, point, action } of repair.overrule ?? []) {
    const number = at === name ? label[squareAt(grid, ...face.from(point))] : 0;
    if (number > 0) regions[number - 1].action = action;
  }
  const lostSums = together([turned(outside, turn), ...regions.map((r) => r.lostSums)]);
  return {
    face,
    turn,
    grid,
    depth: grid.depth,
    label,
    regions,
    marks,
    allowance,
    coated: matches(repair.coatedFaces ?? ['*'], name),
    area: grid.area,
    lostSums,
    lost: lostSums[0],
    most: Math.max(0, ...regions.map((r) => r.deepest)),
    filled: regions.filter((r) => r.action === 'fill'),
    left: regions.filter((r) => r.action === 'leave'),
    depthOf: (u, v) => (marks.length > 0 && face.inside(u, v) ? depthAt(face, marks, u, v) : 0),
    actionOf: (u, v) => {
      const number = labelNear(grid, label, u, v);
      return number > 0 ? regions[number - 1].action : '';
    },
  };
}

/** Depths on a grid of at most `most` squares, and what the regions add up to; [u, v] of the deepest point in `at`. */
function sample(face, marks, allowance, coarse, most) {
  const [u0, u1, v0, v1] = face.bounds;
  // An unworn face of a vane is measured without samples; the shroud's front needs them for the vanes' footprints.
  const idle = marks.length === 0 && face.kind === 'plain';
  const step = idle ? 1 : Math.max(0.035, Math.sqrt(((u1 - u0) * (v1 - v0)) / most)) * coarse;
  const grid = squares(face, step);
  grid.depth = depths(grid, marks);
  grid.area = grid.on.reduce((sum, on) => sum + on, 0) * grid.cell;
  const { label, count } = flood(grid, grid.depth);
  const [outside, ...regions] = columnSums(grid, grid.depth, allowance, label, count);
  const rough = regions.map((one, i) => {
    // Where the wear of an edge takes up most of it, squares that begin and end with the half round of the nose do better than finer ones.
    const [a0, a1, b0, b1] = one.box;
    const large = face.layers(u1) > 0 && (a1 - a0) * (b1 - b0) > 0.4 * (u1 - u0) * (v1 - v0);
    const best = (large ? null : refined(grid, marks, allowance, one, columnSums)) ?? one;
    const corners = marks
      .flatMap((mark) => mark.corners)
      .filter((p) => label[squareAt(grid, ...p)] === i + 1);
    const top = peak(face, marks, [one.peak, ...corners], grid.du);
    return { ...best, at: top.slice(0, 2), deepest: Math.max(top[2], best.deepest) };
  });
  return { grid, label, rough, outside: outside.lost };
}
