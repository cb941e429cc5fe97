/**
 * A result's running clearance against gap.mjs: a checker that says in sentences what the job does not bear out. Depths are read off two
 * different grids, so a number may be off by what the steepest wear rises over the way from a place to the nearest centre of a cell.
 */
import { complaints } from './complaints.mjs';
import { gapOf } from './gap.mjs';
import { namedBy } from './samples.mjs';

const STATES = ['asFound', 'filled', 'coated'];
const KINDS = ['least', 'mean', 'most'];
/** Of a sum that differs only by order. */
const EXACT = 1e-6;
/** mm: the depth is held in single precision, and up to 0.05 mm lies outside every region. */
const FINE = 2e-3;
/** Of the thickness of a vane: how far its round nose may reach in or out of what is said of it. */
const OF_NOSE = 0.1;
/** Of a cell: a band worn all the way round has two edges, and a cell at either counts whole in one ring or in the next. */
const EDGE = 1;

/** @param cell  width of the result's cells, mm */
export function breachesOfGap(job, result, cell, steps) {
  const { list, say, that, near } = complaints();
  const found = result.clearance;
  const right = gapOf(job, steps);
  if (right === null || right.overlap === null) {
    that(found === null, 'a gap between parts that share no radius, or that nobody named');
    if (right !== null)
      that(
        result.warnings.some(({ code }) => code === 'clearance-apart'),
        'no warning that the two share no radius',
      );
    return list;
  }
  if (found === null) {
    say('no gap, though the two faces share radii');
    return list;
  }
  const off = slack(job, right, cell);
  const ofNose = 1e-4 + (right.vane.round ? OF_NOSE * right.vane.t1 : 0);
  const rings = found.byRadius;
  const wide = rings.length > 1 ? rings[1].radius - rings[0].radius : right.overlap.to - right.overlap.from;
  const [narrow, broad] = [0.2, wide + cell].map((width) => right.ends(width));
  [found, ...found.byVane].forEach((value, i) => {
    const mine = i === 0 ? right : right.byVane[i - 1];
    for (const state of STATES) {
      const name = i === 0 ? state : `vane ${i} ${state}`;
      const between = (kind, a, b, most) => {
        if (!(value[state][kind] >= a - most && value[state][kind] <= b + most))
          say(`${name}.${kind} is ${value[state][kind]}, should be ${a} to ${b} within ${most}`);
      };
      between('least', broad[i][state].least, narrow[i][state].least, off.end);
      between('mean', mine[state].mean, mine[state].mean, off.mean);
      between('most', narrow[i][state].most, broad[i][state].most, off.end);
    }
  });
  // How far in the round of a nose reaches is not said to a tenth of a millimetre.
  near('overlap from', found.overlap.from, right.overlap.from, ofNose / right.overlap.from);
  near('overlap to', found.overlap.to, right.overlap.to, 1e-4);
  that(
    Math.abs(found.mismatch - right.opening.most) <= 1e-4 + ofNose * right.opening.slope,
    `mismatch is ${found.mismatch}, should be ${right.opening.most}`,
  );
  near('film on the plate', found.films.plate, right.films.plate, EXACT);
  near('film on the tips', found.films.tips, Math.max(...right.films.tips), EXACT);
  for (const key of ['worstCase', 'rootSumSquare'])
    near(`tolerance ${key}`, found.tolerance[key], right.tolerance[key], EXACT);
  // The verdicts on the result's own gap; on the limit itself either may be said.
  for (const key of ['verdict', 'likely']) {
    const may = [-EXACT, EXACT].map((d) => verdictOn(found.coated, job.clearance, right.tolerance, key, d));
    that(may.includes(found[key]), `${key} is ${found[key]}, should be ${may[0]}`);
  }
  if (right.films.tips.every((film) => film === right.films.tips[0]))
    for (const kind of KINDS)
      near(
        `${kind} between filled and coated`,
        found.filled[kind] - found.coated[kind],
        right.films.plate + right.films.tips[0],
        EXACT,
      );
  return [
    ...list,
    ...ofRings(found, right, off, cell, wide),
    ...ofPlaces(job, found, right, off),
    ...ofWords(job, result, right),
  ];
}

/** The least and the most over the rings are those of the whole; a ring's own are between those of a narrower and a wider one. */
function ofRings(found, right, off, cell, wide) {
  const { list, say, that, near } = complaints();
  const rings = found.byRadius;
  for (const state of STATES) {
    near(`least of the rings ${state}`, Math.min(...rings.map((r) => r[state].least)), found[state].least);
    near(`most of the rings ${state}`, Math.max(...rings.map((r) => r[state].most)), found[state].most);
    const mean = rings.reduce((sum, r) => sum + r[state].mean, 0) / rings.length;
    near(`mean of the rings ${state}`, mean, found[state].mean);
    for (const { radius, [state]: ring } of rings)
      that(
        ring.least <= ring.mean + EXACT && ring.mean <= ring.most + EXACT,
        `${state} at ${radius} is out of order`,
      );
  }
  near('width of a ring', wide, 1, rings.length > 3 ? 0.2 : 0.6);
  for (const share of [0.08, 0.3, 0.5, 0.7, 0.92]) {
    const ring = rings[Math.floor(share * rings.length)];
    const half = wide / 2;
    const own = right.at(ring.radius - half, ring.radius + half);
    const [inner, outer] = [0.1, half + 0.75 * cell].map((d) => right.at(ring.radius - d, ring.radius + d));
    if (own === null || inner === null || outer === null) continue;
    const beside = [-0.5, 0.5]
      .map((d) => right.at(ring.radius + d * cell - half, ring.radius + d * cell + half))
      .filter((one) => one !== null);
    for (const state of STATES) {
      const between = (kind, a, b) => {
        if (ring[state][kind] < Math.min(a, b) - off.ring || ring[state][kind] > Math.max(a, b) + off.ring)
          say(`${state}.${kind} at radius ${ring.radius} is ${ring[state][kind]}, should be ${a} to ${b}`);
      };
      between('least', inner[state].least, outer[state].least);
      between('most', inner[state].most, outer[state].most);
      const means = [inner, own, outer, ...beside].map((one) => one[state].mean);
      between('mean', Math.min(...means), Math.max(...means));
    }
  }
  return list;
}

/** Where it is tightest and widest: the depths at the two places make up the gap. */
function ofPlaces(job, found, right, off) {
  const { list, that, near } = complaints();
  const { asNew, shim = 0, dressTips = 0 } = job.clearance;
  for (const [name, kind] of [
    ['tightest', 'least'],
    ['widest', 'most'],
  ]) {
    const place = found[name];
    near(`gap of the ${name}`, place.gap, found.coated[kind]);
    const number = right.tips.findIndex((tip) => tip.name === place.tip);
    if (number < 0) {
      that(false, `${name} is on ${place.tip}, which is no tip`);
      continue;
    }
    const opens = right.opening.counts ? right.opening.of(place.radius) : 0;
    const base = asNew + shim + opens - right.films.plate - right.films.tips[number];
    const allowed = job.repair?.coatAllowance ?? 0;
    const standing = (one, at) => {
      const depth = one.depthOf(...at);
      return [0, depth, Math.min(depth, allowed)];
    };
    const plate = standing(right.running, right.running.face.from(place.plate));
    const tip = standing(right.tips[number], place.on).map((depth) => Math.max(depth, dressTips));
    const closest = Math.min(...plate.flatMap((a) => tip.map((b) => Math.abs(base + a + b - place.gap))));
    that(closest <= off.end, `the ${name} place does not make up its gap: ${closest} off`);
  }
  return list;
}

/** What is said of it: touching and tight and wide are, each with its number, and nothing of them where it is not so. */
function ofWords(job, result, right) {
  const { list, that } = complaints();
  const { coated, filled, verdict } = result.clearance;
  const words = (code) => result.warnings.find((one) => one.code === code)?.text;
  const tight = verdict === 'tight' || verdict === 'both';
  const wide = verdict === 'wide' || verdict === 'both';
  that((words('clearance-tight') !== undefined) === tight, 'a gap too tight is said or not, wrongly');
  that((words('clearance-wide') !== undefined) === wide, 'a gap too wide is said or not, wrongly');
  that(
    (words('clearance-rub') !== undefined) === coated.least - right.tolerance.worstCase <= 0,
    'that it may rub is said or not, wrongly',
  );
  const film = right.films.plate + Math.max(...right.films.tips);
  const runsFilled = filled.least - right.tolerance.worstCase >= job.clearance.least;
  if (tight && film > 0 && runsFilled)
    that(/coat/.test(words('clearance-tight') ?? ''), 'the coats close the gap, and not a word of it');
  return list;
}

function verdictOn(coated, { least, most }, tolerance, key, more) {
  const t = more + (key === 'verdict' ? tolerance.worstCase : tolerance.rootSumSquare);
  const [tight, wide] = [coated.least - t < least, coated.most + t > most];
  return tight && wide ? 'both' : tight ? 'tight' : wide ? 'wide' : 'fit';
}

/** How far apart two samplings may be, mm. */
function slack(job, right, cell) {
  const steep = (id, name) =>
    Math.max(
      0,
      ...job.parts
        .find((part) => part.id === id)
        .wear.filter((mark) => namedBy(mark.face, name))
        .map(steepness),
    );
  const rise =
    steep(job.clearance.plate, 'face') +
    Math.max(...right.tips.map((tip) => steep(job.clearance.impeller, tip.name)));
  const opening = right.opening.counts ? Math.abs(right.opening.of(1) - right.opening.of(0)) : 0;
  const worn = Math.max(...right.tips.map((tip) => tip.deepest));
  const deepest = right.running.deepest + worn;
  const { b1, b2, length } = right.vane;
  // A tip worn through is as deep as the vane is high there.
  const wall = worn >= Math.min(b1, b2) ? (Math.abs(b1 - b2) / length) * cell : 0;
  const end = FINE + 0.75 * cell * rise + opening + wall;
  const span = right.overlap.to - right.overlap.from;
  const mean = FINE + (EDGE * cell * deepest) / span + 0.1 * opening;
  return { end, ring: end + 0.02 * deepest, mean };
}

/** Most that a mark rises over one mm: the soft brush d (1 - x2)2 by 16 / (6 sqrt 3) d / R, the bowl 2 d / R at its rim. A step is none. */
function steepness(mark) {
  switch (mark.kind) {
    case 'pit':
      return { cone: 2, bowl: 4, flat: 0 }[mark.form] * (mark.depth / mark.diameter);
    case 'stroke':
      return mark.edge === 'soft' ? (1.54 * (mark.depth ?? 3)) / mark.radius : 0;
    case 'patch': {
      const [a, b] = Array.isArray(mark.depth) ? mark.depth : [0, 0];
      return Math.abs(b - a) / (mark.first[1] - mark.first[0]);
    }
    case 'edge':
      return Math.max(
        ...mark.profile
          .slice(1)
          .map(([p, d], i) => Math.abs(d - mark.profile[i][1]) / (p - mark.profile[i][0])),
      );
    default:
      return 0;
  }
}
