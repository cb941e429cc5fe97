/**
 * The metal that a result says is left, against the wear sampled on grids of its own: behind a plate's face, and between the two sides of a
 * vane where neither tip nor edges have been. mm, cm2.
 */
import { vaneOf } from './camber.mjs';
import { complaints } from './complaints.mjs';
import { facesOf } from './faces.mjs';
import { depthAt, depths, marksOn, squares } from './samples.mjs';
import { vaneFaces } from './vane-faces.mjs';

/** mm: the result's deepest is at the centre of a cell, and no wear here rises more than this over the way to it. */
const OFF = 0.3;
/** mm: how far samples of a smooth hollow miss its bottom. */
const FINE = 0.01;
/** mm below the tip and beside the edges: how far their wear reaches at most. */
const CLEAR = 6;

export function breachesOfWalls(job, result) {
  return job.parts.flatMap((part, i) => {
    const found = result.parts[i];
    return part.kind === 'impeller' ? vanes(part, found) : plateFace(part, found);
  });
}

function plateFace(part, { walls }) {
  const { list, that } = complaints();
  const [face] = facesOf(part);
  const marks = marksOn(part, face);
  const smoothed = marks.some(({ mark }) => mark.kind === 'smooth');
  const wall = walls.find((one) => one.face === 'face');
  if (wall === undefined) {
    that(marks.length === 0, `no wall behind the face of ${part.id}`);
    return list;
  }
  const grid = squares(face, 0.5);
  const depth = depths(grid, marks);
  const peaks = smoothed
    ? []
    : marks.flatMap(({ corners }) =>
        corners.filter((p) => face.inside(...p)).map((p) => depthAt(face, marks, ...p)),
      );
  const left =
    part.thickness -
    Math.max(
      0,
      ...peaks,
      depth.reduce((a, b) => Math.max(a, b), 0),
    );
  judge(wall, part, left, part.thickness, `face of ${part.id}`, that);
  if (part.leastThickness === undefined) return list;
  let [sure, may] = [0, 0];
  const square = grid.cell / 100;
  depth.forEach((d, i) => {
    if (grid.on[i] !== 1) return;
    if (part.thickness - d < part.leastThickness - OFF) sure += square;
    if (part.thickness - d < part.leastThickness + OFF) may += square;
  });
  // A hundredth and a rim of one square: the area is counted in cells.
  const rim = 0.01 + 0.05 * Math.sqrt(may);
  that(
    wall.under >= sure * 0.97 - rim && wall.under <= may * 1.03 + rim,
    `face of ${part.id}: ${wall.under} cm2 are too thin, should be ${sure} to ${may}`,
  );
  return list;
}

function vanes(part, { walls }) {
  const { list, that } = complaints();
  const vane = vaneOf(part);
  const [pressure, suction] = vaneFaces(vane, false);
  for (let k = 1; k <= part.vanes.count; k += 1) {
    const marks = [pressure, suction].map((face) =>
      marksOn(part, { ...face, name: `vane-${k}/${face.name}` }),
    );
    if (marks.every((list) => list.length === 0)) continue;
    const wall = walls.find(({ face }) => face === `vane-${k}/pressure` || face === `vane-${k}/suction`);
    if (wall === undefined) {
      that(false, `no wall between the sides of vane ${k}`);
      continue;
    }
    const at = (s, z) =>
      Math.max(0, vane.thickness(s) - depthAt(pressure, marks[0], s, z) - depthAt(suction, marks[1], s, z));
    let left = Infinity;
    for (let s = CLEAR; s <= vane.length - CLEAR; s += 0.2)
      for (let z = 0; z <= vane.height(s) - CLEAR; z += 0.2) left = Math.min(left, at(s, z));
    // Towards an end a tapering vane is thinner than anywhere between.
    const ends = Math.min(vane.t1, vane.t2);
    that(
      wall.remaining <= left + OFF && wall.remaining >= Math.min(left, ends) - OFF,
      `vane ${k}: ${wall.remaining} is left, should be ${left}`,
    );
    const own = at(...wall.at);
    that(
      Math.abs(own - wall.remaining) <= OFF,
      `vane ${k}: ${own} is left where ${wall.remaining} should be`,
    );
    const under = part.leastThickness !== undefined && wall.remaining < part.leastThickness;
    that((wall.verdict === 'under') === (under && wall.remaining > 0), `vane ${k} is ${wall.verdict}`);
  }
  return list;
}

function judge(wall, part, left, asNew, name, that) {
  that(Math.abs(wall.asNew - asNew) < 1e-6, `${name}: ${wall.asNew} as new, should be ${asNew}`);
  that(
    Math.abs(wall.remaining - left) <= OFF && wall.remaining >= left - FINE,
    `${name}: ${wall.remaining} is left, should be ${left}`,
  );
  const { leastThickness: limit } = part;
  that(wall.limit === (limit ?? null), `${name}: the limit is ${wall.limit}`);
  const under = limit !== undefined && wall.remaining < limit && wall.remaining > 0;
  that((wall.verdict === 'under') === under, `${name} is ${wall.verdict}, ${wall.remaining} of ${limit}`);
}
