/**
 * A brute-force calculation of a wear-plate job that shares nothing with geometry/: every face is sampled point by point, the marks are
 * evaluated from their formulas, the sums are plain sums. Two grids, the second half as fine, give every number and its own error.
 * Run: node tests/worked/independent.mjs FILE... [--lots N] [--write]; --write makes tests/worked/NAME.expected.json, else it is printed.
 */
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { coatOf, fillerOf, mixDensity } from './brute/materials.mjs';
import { matches, total, wornPlate } from './brute/worn-plate.mjs';

/** The numbers of a job in the result's units, on grids about `lots` squares wide. */
function worked(job, lots) {
  const repair = job.repair ?? {};
  const plates = job.parts.map((plate) => wornPlate(plate, job, lots));
  const all = plates.flatMap(({ plate, faces }) => faces.map((worn) => ({ id: plate.id, ...worn })));
  const coats = ({ id }, { face }) => matches(repair.coatedFaces ?? ['*'], `${id}:${face.name}`);
  const coated = all.filter((worn) => coats(worn, worn));
  const surface = job.climate?.surface;
  const filled = all.flatMap((worn) =>
    worn.filled.map((r) => ({ ...r, deepestFill: r.deepest - worn.allowance })),
  );
  const fillSums = {
    fill: total(plates, (p) => p.fill),
    fillArea: total(filled, (r) => r.area),
    deepestFill: Math.max(0, ...filled.map((r) => r.deepestFill)),
  };
  // What is left to the coat takes coat where the face is coated; the corner shared by face and bore counts once when both are.
  const left =
    total(
      coated.flatMap((worn) => worn.left),
      (r) => r.lost,
    ) + total(plates, (p) => (p.faces.every((worn) => coats(p.plate, worn)) ? p.shared.left : 0));
  return {
    parts: plates.map((p) => partNumbers(p, job)),
    filler: fillerOf(job.filler, repair, surface, fillSums),
    coat: coatOf(job.coat, repair, surface, { area: total(coated, (worn) => worn.area), left }),
  };
}

function partNumbers({ plate, faces, shared, lost, fill, centroid }, job) {
  return {
    id: plate.id,
    lostVolume: lost / 1000,
    lostMass: (lost * plate.density) / 1000,
    fillVolume: fill / 1000,
    fillMass: (fill * mixDensity(job.filler)) / 1000,
    fillCentroid: centroid,
    sharedAtCorner: -shared.lost / 1000,
    size: (faces[0].face.bounds[1] - faces[0].face.bounds[0]) / 2,
    faces: faces.map((worn) => ({
      face: worn.face.name,
      kind: worn.face.kind,
      radius: worn.face.radius,
      area: worn.area / 100,
      wornArea: total(worn.regions, (r) => r.area) / 100,
      deepest: worn.most,
      lostVolume: worn.lost / 1000,
      fillVolume: total(worn.filled, (r) => r.fill) / 1000,
      leftVolume: total(worn.left, (r) => r.lost) / 1000,
      remaining: worn.face.wall - worn.most,
      regions: worn.regions
        .toSorted((a, b) => b.lost - a.lost)
        .map((r) => ({
          at: worn.face.numbers(...r.at),
          box: r.box,
          area: r.area / 100,
          deepest: r.deepest,
          lostVolume: r.lost / 1000,
          fillVolume: r.action === 'fill' ? r.fill / 1000 : 0,
          action: r.action,
        })),
    })),
  };
}

/** Largest relative difference between two answers over the same names: what the calculation can say of its own error. */
function apart(fine, rough, path = '', out = {}) {
  if (Array.isArray(fine) && Array.isArray(rough) && path.endsWith('.regions'))
    for (const one of fine) apart(one, nearest(rough, one), path, out);
  else if (typeof fine === 'number') {
    const name = path.replaceAll(/\.\d+/g, '');
    const off = Math.abs(fine - rough);
    if (!/\.(at|box|fillCentroid)$/.test(name))
      out[name] = Math.max(out[name] ?? 0, fine === 0 ? off : off / Math.abs(fine));
    else if (/fillCentroid$/.test(name)) out[name] = Math.max(out[name] ?? 0, off);
  } else if (typeof fine === 'object' && fine !== null && rough != null)
    for (const key of Object.keys(fine)) apart(fine[key], rough[key], `${path}.${key}`, out);
  return out;
}

function nearest(regions, { box }) {
  const off = (other) => Math.max(...box.map((edge, i) => Math.abs(edge - other.box[i])));
  return regions.toSorted((a, b) => off(a) - off(b))[0];
}

/** Where the numbers of each group come from. */
const SOURCE = {
  parts:
    'depth of every mark by its own formula at scattered points of a fine grid, metal under a point = dA (d + k d2 / 2) with k = sin a / r on the cone and 1 / Rb in the bore, corner shared by face and bore sampled in 3D',
  regions:
    'flood fill of the points deeper than 0.05 mm; small regions sampled again on a grid of their own; deepest point by going uphill from the deepest sample and from the corners of the marks',
  filler:
    'net volume, overbuild over the filled regions and waste; working time by the Arrhenius law; batches by time and by the mass the time was quoted for; packs by trying every set',
  coat: 'films over the coated faces, two thirds of the blast profile and the left regions of coated faces with the first coat',
};

const rounded = (_, value) => (typeof value === 'number' ? Number(value.toPrecision(7)) : value);

function main(args) {
  const lots = args.includes('--lots') ? Number(args[args.indexOf('--lots') + 1]) : 1600;
  for (const file of args.filter((arg) => arg.endsWith('.json'))) {
    const text = readFileSync(file, 'utf8');
    const job = JSON.parse(text);
    const rough = worked(job, lots / 2);
    const fine = worked(job, lots);
    const answer = {
      job: createHash('sha256').update(text).digest('hex'),
      lots,
      source: SOURCE,
      ownError: apart(fine, rough),
      ...fine,
    };
    const out = JSON.stringify(answer, rounded);
    const name = basename(file).replace(/\.job\.json$/, '.expected.json');
    if (args.includes('--write')) writeFileSync(join(import.meta.dirname, name), `${out}\n`);
    else process.stdout.write(`${out}\n`);
  }
}

main(process.argv.slice(2));
