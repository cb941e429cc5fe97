/**
 * A brute-force calculation of a whole job that shares nothing with geometry/: every face is sampled point by point, the marks are
 * evaluated from their formulas, the sums are plain sums. Two grids, the second half as fine, give every number and its own error.
 * Run: node tests/worked/independent.mjs FILE... [--lots N] [--reach] [--write]; --write makes tests/worked/NAME.expected.json, else it is
 * printed; --reach shows what the other reading of where a vane's faces end would give (brute/vane-faces.mjs).
 */
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { balanceOf } from './brute/balance.mjs';
import { wornImpeller } from './brute/impeller.mjs';
import { coatOf, fillerOf, mixDensity } from './brute/materials.mjs';
import { matches, total, wornPlate } from './brute/worn-plate.mjs';

/** The numbers of a job in the result's units, on grids about `lots` squares wide; `reach` as in brute/vane-faces.mjs. */
function worked(job, lots, reach) {
  const repair = job.repair ?? {};
  const plates = job.parts.map((part) =>
    part.kind === 'impeller' ? wornImpeller(part, job, lots, reach) : wornPlate(part, job, lots),
  );
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
  const left = total(plates, (p) => p.leftForCoat ?? leftOnPlate(p, (worn) => coats(p.plate, worn)));
  const rotating = plates.find((p) => p.plate.id === job.rotor?.part);
  const read = plates.some((p) => p.read.each.length > 0);
  return {
    parts: plates.map((p) => partNumbers(p, job)),
    filler: {
      ...fillerOf(job.filler, repair, surface, fillSums),
      ...(read
        ? {
            standardError:
              (rms(plates.map((p) => p.read.fill)) / 1000) * (1 + (repair.fillerWaste ?? 10) / 100),
          }
        : {}),
    },
    coat: coatOf(job.coat, repair, surface, { area: total(coated, (worn) => worn.area), left }),
    ...(rotating === undefined ? {} : { balance: balanceOf(job, rotating) }),
  };
}

const rms = (list) => Math.hypot(...list);

const leftOnPlate = ({ faces, shared }, coats) =>
  total(
    faces.filter(coats).flatMap((worn) => worn.left),
    (r) => r.lost,
  ) + (faces.every(coats) ? shared.left : 0);

function partNumbers({ plate, faces, shared, lost, fill, read, centroid }, job) {
  return {
    id: plate.id,
    lostVolume: lost / 1000,
    lostMass: (lost * plate.density) / 1000,
    fillVolume: fill / 1000,
    fillMass: (fill * mixDensity(job.filler)) / 1000,
    fillCentroid: centroid,
    ...(read.each.length > 0 ? readingNumbers(read) : {}),
    sharedAtCorner: -shared.lost / 1000,
    size:
      plate.outerDiameter === undefined
        ? (faces[0].face.bounds[1] - faces[0].face.bounds[0]) / 2
        : plate.outerDiameter / 2,
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
      remaining: worn.remaining ?? worn.face.wall - worn.most,
      remainingAlone: worn.remainingAlone,
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

function readingNumbers({ fill, lost, each }) {
  return {
    standardError: fill / 1000,
    lostError: lost / 1000,
    readings: each.map(({ mark, face, used, fillError, lostError, next, leaveOneOut }) => ({
      mark,
      face,
      used,
      fillError: fillError / 1000,
      lostError: lostError / 1000,
      leaveOneOut,
      next: { ...next, to: next.to / 1000, moves: next.moves / 1000 },
    })),
  };
}

/**
 * Largest difference between two answers over the same names: what the calculation can say of its own error. Relative, but for places (mm),
 * chances, and the vectors of a balance (g.mm; g.mm2 the couple).
 */
function apart(fine, rough, path = '', out = {}) {
  if (Array.isArray(fine) && Array.isArray(rough) && path.endsWith('.regions'))
    for (const one of fine) apart(one, nearest(rough, one), path, out);
  else if (typeof fine === 'number') {
    const name = path.replaceAll(/\.\d+/g, '');
    const off = Math.abs(fine - rough);
    if (!/\.(at|box|fillCentroid|chance\w+)$/.test(name))
      out[name] = Math.max(out[name] ?? 0, fine === 0 ? off : off / Math.abs(fine));
    else if (/(fillCentroid|chance\w+)$/.test(name)) out[name] = Math.max(out[name] ?? 0, off);
  } else if (typeof fine?.angle === 'number') {
    out[path] = Math.hypot(...asVector(fine).map((x, i) => x - asVector(rough)[i]));
  } else if (typeof fine === 'object' && fine !== null && rough != null)
    for (const key of Object.keys(fine)) apart(fine[key], rough[key], `${path}.${key}`, out);
  return out;
}

function asVector({ amount, angle }) {
  return [amount * Math.cos((angle * Math.PI) / 180), amount * Math.sin((angle * Math.PI) / 180)];
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

const IMPELLER_SOURCE = {
  impeller:
    'depth of every mark by its own formula at scattered points of each face; metal under a point = (1 - k n) ds dn dz along a camber walked in 20000 steps; what two faces both claim sampled in the solid and counted once',
  balance:
    'moments of the same samples by the densities; couple about the plane halfway between the two; chance over = area under the Rice density beyond the limit, standard error 2 % of the added unbalance',
};

const READINGS_SOURCE = {
  readings:
    'ordinary kriging by dense elimination, gauge error on the diagonal only; error of an integral = prior double sum over tiles of samples less what the readings and the unknown mean say of it (block kriging), for the net unbalance in the worst direction; next reading by trying places all over the face',
};

const rounded = (_, value) => (typeof value === 'number' ? Number(value.toPrecision(7)) : value);

function main(args) {
  const lots = args.includes('--lots') ? Number(args[args.indexOf('--lots') + 1]) : 1600;
  for (const file of args.filter((arg) => arg.endsWith('.json'))) {
    const text = readFileSync(file, 'utf8');
    const job = JSON.parse(text);
    const reach = args.includes('--reach');
    const rough = worked(job, lots / 2, reach);
    const fine = worked(job, lots, reach);
    const answer = {
      job: createHash('sha256').update(text).digest('hex'),
      lots,
      source: {
        ...SOURCE,
        ...(fine.balance === undefined ? {} : IMPELLER_SOURCE),
        ...(text.includes('"readings"') ? READINGS_SOURCE : {}),
      },
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
