/** Parts A and B of every mix, and the grams to weigh them out in, against every pair the scale could show. cm3, g. */
import { complaints } from './complaints.mjs';

/** How far B to A by mass may be off, and how far short of or beyond what is asked the two together. */
const [RATIO_OFF, SHORT, OVER] = [0.02, 0.05, 0.25];
/** Of a bound: a pair that lies on it to rounding may be taken or not. */
const ON_THE_LINE = 1e-9;

/** Sentences about portions and weights that are not right; none when all are. */
export function breachesOfScale(filler, coat, result) {
  const mixes = [
    ...result.filler.batches.map((batch) => {
      const largest = result.filler.largestBatch / batch.volume;
      return [`batch ${batch.number}`, filler, result.filler, batch, largest];
    }),
    ...result.coat.layers.flatMap(({ number, mixes }) =>
      mixes.map((mix) => {
        const largest = result.coat.workingTime / mix.placing;
        return [`coat ${number} mix ${mix.number}`, coat, result.coat, mix, largest];
      }),
    ),
  ];
  return [
    ...mixes.flatMap(([name, material, { packs }, mix, largest]) => [
      ...portions(name, material, mix),
      ...weights(name, material, isSelfMixing(material, packs), mix, largest),
    ]),
    ...[
      ['filler', filler],
      ['coat', coat],
    ]
      .filter(([name, material]) => result[name].selfMixing !== isSelfMixing(material, result[name].packs))
      .map(([name]) => `${name}.selfMixing is ${result[name].selfMixing}, against the packs to buy`),
  ];
}

/** Whether every pack to buy mixes itself; packs are told apart by their labels. */
function isSelfMixing({ packs = [] }, bought) {
  return (
    bought.length > 0 &&
    bought.every(({ label }) => packs.find((p) => p.label === label)?.selfMixing === true)
  );
}

/** What one part is of a mix: its share by volume, at its own density, or at the mix's where the sheet gives none. */
function portionOf({ ratioByVolume, densityA, densityB, density }, volume) {
  const sum = ratioByVolume[0] + ratioByVolume[1];
  const of = (share, own) => ({
    volume: (volume * share) / sum,
    mass: ((volume * share) / sum) * (own ?? density),
  });
  return { partA: of(ratioByVolume[0], densityA), partB: of(ratioByVolume[1], densityB) };
}

function portions(name, material, mix) {
  const { list, near } = complaints();
  const right = portionOf(material, mix.volume);
  for (const part of ['partA', 'partB'])
    for (const what of ['volume', 'mass'])
      near(`${name} ${part} ${what}`, mix[part][what], right[part][what]);
  return list;
}

/** `largest`: the largest mix that can be placed while it works, of the one asked for; no rounding passes it. */
function weights(name, material, selfMixing, { volume, weigh }, largest) {
  const { list, say, that, near } = complaints();
  const { partA, partB } = portionOf(material, volume);
  const [a, b, step] = [partA.mass, partB.mass, material.scaleStep ?? 1];
  const most = Math.min(1 + OVER, Math.max(1, largest));
  if (selfMixing) {
    that(weigh === null, `${name} is to be weighed, and its packs mix themselves`);
    return list;
  }
  if (material.densityA === undefined || material.densityB === undefined) {
    that(weigh === null, `${name} is to be weighed, and A and B have no densities`);
    return list;
  }
  const [sure, at] = [-ON_THE_LINE, ON_THE_LINE].map((slack) => nearest(a, b, step, most + slack, slack));
  if (weigh === null) {
    if (sure !== null) say(`${name} is not weighed, and ${sure.a} g to ${sure.b} g would do`);
    return list;
  }
  if (at === null) {
    say(`${name} is weighed ${weigh.partA} g to ${weigh.partB} g, and no pair of the scale would do`);
    return list;
  }
  for (const grams of [weigh.partA, weigh.partB])
    that(
      grams > 0 && Math.abs(grams / step - Math.round(grams / step)) < 1e-6,
      `${name}: ${grams} g is no step of ${step} g`,
    );
  const off = Math.abs(weigh.partA - a) + Math.abs(weigh.partB - b);
  that(
    doesFor(a, b, weigh.partA, weigh.partB, most + ON_THE_LINE, ON_THE_LINE),
    `${name}: ${weigh.partA} g to ${weigh.partB} g for ${a} to ${b} will not do`,
  );
  that(
    off <= (sure?.off ?? Infinity) + 1e-6,
    `${name}: ${weigh.partA} g to ${weigh.partB} g for ${a} to ${b}, ${sure?.a} to ${sure?.b} is nearer`,
  );
  near(`${name} ratioError`, weigh.ratioError, weigh.partB / weigh.partA / (b / a) - 1);
  return list;
}

function doesFor(a, b, x, y, most, slack) {
  const total = (x + y) / (a + b);
  return Math.abs(y / x / (b / a) - 1) <= RATIO_OFF + slack && total >= 1 - SHORT - slack && total <= most;
}

/** The nearest of all pairs that do, by the two deviations together; null when none does. Every A in turn, with every B beside its own. */
function nearest(a, b, step, most, slack) {
  let best = null;
  const far = Math.ceil(((1 + OVER) * (a + b)) / step) + 1;
  const from = Math.round(a / step);
  for (let k = 0; k <= far; k += 1) {
    if (best !== null && (k - 1) * step > best.off) break;
    for (const x of k === 0 ? [from * step] : [(from - k) * step, (from + k) * step]) {
      if (x <= 0 || x > far * step) continue;
      const asked = (x * b) / a;
      const low = Math.max(1, Math.floor((asked * (1 - 2 * RATIO_OFF)) / step));
      for (let n = low; n * step <= asked * (1 + 2 * RATIO_OFF); n += 1) {
        const off = Math.abs(x - a) + Math.abs(n * step - b);
        if ((best === null || off < best.off) && doesFor(a, b, x, n * step, most, slack))
          best = { a: x, b: n * step, off };
      }
    }
  }
  return best;
}
