/** A plate with its marks pressed in, its damage regions found and judged, and what face and bore lost counted once. mm, mm2, mm3. */
import { cornerCorrection } from './corner.mjs';
import { facesOf } from './faces.mjs';
import { flood, labelNear, squareAt } from './flood.mjs';
import { readingErrors } from './readings.mjs';
import { byMarksAlone, peak, refined, sums } from './regions.mjs';
import { depthAt, depths, marksOn, namedBy, squares } from './samples.mjs';

export const matches = (patterns, name) => patterns.some((p) => namedBy(p, name));
export const total = (list, of) => list.reduce((sum, one) => sum + of(one), 0);

function wornFace(plate, face, repair, lots) {
  const name = `${plate.id}:${face.name}`;
  const allowance = matches(repair.allowanceFaces ?? ['*:face'], name) ? (repair.coatAllowance ?? 0) : 0;
  const marks = marksOn(plate, face);
  const step = (face.bounds[1] - face.bounds[0]) / lots;
  const grid = squares(face, face.round > 0 ? Math.min(step, plate.thickness / 100) : step);
  const depth = depths(grid, marks);
  const { label, count } = flood(grid, depth);
  const [outside, ...rough] = sums(grid, depth, allowance, label, count);
  const regions = rough.map((coarse, i) => {
    const best = refined(grid, marks, allowance, coarse) ?? coarse;
    const corners = marks
      .flatMap((mark) => mark.corners)
      .filter((p) => label[squareAt(grid, ...p)] === i + 1);
    const top = byMarksAlone(marks, coarse.box)
      ? peak(face, marks, [coarse.peak, ...corners], step)
      : [...best.peak, best.deepest];
    const deepest = Math.max(top[2], best.deepest);
    const action = deepest >= (repair.leaveBelow ?? 1) - 1e-9 ? 'fill' : 'leave';
    return { ...best, at: top.slice(0, 2), deepest, action };
  });
  for (const { at, point, action } of repair.overrule ?? []) {
    const number = at === name ? label[squareAt(grid, ...face.from(point))] : 0;
    if (number > 0) regions[number - 1].action = action;
  }
  const covered = (u, v) => marks.some((m) => m.mark.kind === 'smooth' && !Number.isNaN(m.depthAt(u, v)));
  return {
    face,
    grid,
    depth,
    label,
    regions,
    marks,
    allowance,
    coated: matches(repair.coatedFaces ?? ['*'], name),
    area: grid.on.reduce((sum, on) => sum + on, 0) * grid.cell,
    lost: outside.lost + total(regions, (r) => r.lost),
    most: Math.max(0, ...regions.map((r) => r.deepest)),
    filled: regions.filter((r) => r.action === 'fill'),
    left: regions.filter((r) => r.action === 'leave'),
    depthOf: (u, v) => (covered(u, v) ? depth[squareAt(grid, u, v)] : depthAt(face, marks, u, v)),
    actionOf: (u, v) => {
      const number = labelNear(grid, label, u, v);
      return number > 0 ? regions[number - 1].action : '';
    },
  };
}

/** `lots` is how many squares the grid is wide. */
export function wornPlate(plate, job, lots) {
  const repair = job.repair ?? {};
  const faces = facesOf(plate).map((face) => wornFace(plate, face, repair, lots));
  const shared =
    faces.length === 2
      ? cornerCorrection(faces[0], faces[1], plate.outerDiameter / (2 * lots), Math.round(lots / 24))
      : { lost: 0, fill: 0, left: 0, moment: [0, 0, 0] };
  const filled = faces.flatMap((worn) => worn.filled);
  const lost = total(faces, (worn) => worn.lost) + shared.lost;
  const fill = total(filled, (r) => r.fill) + shared.fill;
  const centroid = [0, 1, 2].map(
    (axis) => (total(filled, (r) => r.moment[axis]) + shared.moment[axis]) / fill,
  );
  const read = readingErrors(plate, job, faces);
  return { plate, faces, shared, lost, fill, read, centroid: fill > 1e-6 ? centroid : null };
}
