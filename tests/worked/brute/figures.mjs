/**
 * What a result says beside its volumes: the weather, the times at the part's temperature, mixes and grams for the scale, the comb and the
 * waste of the coat, worked out once more from the job by the formulas of the job format. Says in sentences where a result is not so.
 * cm3 = mL, g, min, degC, um, cm2.
 */
import { complaints } from './complaints.mjs';
import { breachesOfScale } from './scale.mjs';

/** Gas constant, J/(mol K), CODATA 2018. */
const GAS = 8.314462618;
const ZERO = 273.15;
/** The WMO's coefficients of Magnus' formula over water (Guide to instruments, No. 8). */
const [MAGNUS_B, MAGNUS_C] = [17.62, 243.12];
/** degC above the dew point, and % (ISO 8502-4). */
const [LEAST_MARGIN, MOST_HUMIDITY] = [3, 85];
/** Teeth of the common wet film comb, um. */
const TOOTH = 25;

/** What holds where a job leaves a material out: the values of the job format's own example. */
const USUAL_FILLER = {
  density: 2.3,
  ratioByVolume: [2, 1],
  densityA: 2.4,
  densityB: 2.1,
  workingTime: { minutes: 20, at: 25, mass: 300 },
  firmsUp: { from: 30, to: 45, at: 25 },
  hard: { minutes: 480, at: 25 },
  mostBuild: 10,
  packs: [{ label: 'kit', mass: 1000 }],
};
const USUAL_COAT = {
  density: 1.7,
  ratioByVolume: [2, 1],
  densityA: 1.75,
  densityB: 1.6,
  solidsByVolume: 100,
  dryFilm: 250,
  coats: 2,
  workingTime: { minutes: 25, at: 25 },
  overcoat: { from: 60, to: 240, at: 25 },
  hard: { minutes: 960, at: 25 },
  profile: 75,
  packs: [{ label: 'cartridge', volume: 400 }],
};

export const fillerOfJob = (job) => job.filler ?? USUAL_FILLER;
export const coatOfJob = (job) => job.coat ?? USUAL_COAT;

/** Minutes quoted `at` one temperature, at the part's; as they stand where nobody says how warm it is. */
export function minutesAt(minutes, at, { activationEnergy }, surface) {
  if (surface === undefined) return minutes;
  if (activationEnergy === null) return minutes * 2 ** ((at - surface) / 10);
  const energy = (activationEnergy ?? 55) * 1000;
  return minutes * Math.exp((energy / GAS) * (1 / (surface + ZERO) - 1 / (at + ZERO)));
}

/** A window of the data sheet, { from, to, at }, at the part's temperature; null where the sheet is silent. */
export function spanAt(span, material, surface) {
  if (span === undefined) return null;
  const at = (minutes) => minutesAt(minutes, span.at, material, surface);
  return { from: at(span.from), to: at(span.to) };
}

/** Sentences about every figure that is not what the job format says; none when all are. */
export function breachesOfFigures(job, result) {
  return [
    ...climate(job, result),
    ...times(job, result),
    ...passesAndBatches(job, result),
    ...coats(job, result),
    ...breachesOfScale(fillerOfJob(job), coatOfJob(job), result),
  ];
}

function climate(job, result) {
  const { list, say, that, near } = complaints();
  const { air, surface, humidity } = job.climate ?? {};
  const found = result.climate;
  // Air without any moisture has no dew point.
  if (air === undefined || surface === undefined || humidity === undefined || humidity === 0) {
    that(found === null, 'climate is judged without air, surface and humidity');
    return list;
  }
  if (found === null) {
    say('climate is not judged, though air, surface and humidity are known');
    return list;
  }
  const g = Math.log(humidity / 100) + (MAGNUS_B * air) / (MAGNUS_C + air);
  const dewPoint = (MAGNUS_C * g) / (MAGNUS_B - g);
  near('climate.dewPoint', found.dewPoint, dewPoint);
  near('climate.margin', found.margin, surface - dewPoint);
  const within = (range) => range === undefined || (surface >= range.from && surface <= range.to);
  const fit =
    surface - dewPoint >= LEAST_MARGIN &&
    humidity <= MOST_HUMIDITY &&
    (result.filler.volume === 0 || within(fillerOfJob(job).surfaceRange)) &&
    (result.coat.volume === 0 || within(coatOfJob(job).surfaceRange));
  that(found.fit === fit, `climate.fit is ${found.fit}, should be ${fit}`);
  that((found.reasons.length === 0) === fit, `climate gives ${found.reasons.length} reasons and fit ${fit}`);
  return list;
}

function times(job, { filler, coat }) {
  const { list, that, near } = complaints();
  const surface = job.climate?.surface;
  const check = (name, found, material, next) => {
    const { workingTime, hard } = material;
    near(
      `${name}.workingTime`,
      found.workingTime,
      minutesAt(workingTime.minutes, workingTime.at, material, surface),
    );
    const rightHard = hard === undefined ? null : minutesAt(hard.minutes, hard.at, material, surface);
    if (rightHard === null)
      that(found.hard === null, `${name}.hard is ${found.hard} and the sheet is silent`);
    else near(`${name}.hard`, found.hard ?? Number.NaN, rightHard);
    const span = spanAt(material[next], material, surface);
    if (span === null) that(found[next] === null, `${name}.${next} is there and the sheet is silent`);
    else
      for (const end of ['from', 'to'])
        near(`${name}.${next}.${end}`, found[next]?.[end] ?? Number.NaN, span[end]);
  };
  check('filler', filler, fillerOfJob(job), 'firmsUp');
  check('coat', coat, coatOfJob(job), 'overcoat');
  return list;
}

const total = (items, of) => items.reduce((sum, item) => sum + of(item), 0);

function passesAndBatches(job, { filler }) {
  const { list, that, near } = complaints();
  const rate = job.repair?.applicationRate ?? 20;
  const { mass } = fillerOfJob(job).workingTime;
  const largest = Math.min(filler.workingTime * rate, mass === undefined ? Infinity : mass / filler.density);
  near('filler.largestBatch', filler.largestBatch, largest);
  const number = filler.volume === 0 ? 0 : Math.ceil(filler.volume / largest - 1e-9);
  that(filler.batches.length === number, `${filler.batches.length} batches, should be ${number}`);
  near(
    'the batches together',
    total(filler.batches, (b) => b.volume),
    filler.volume,
  );
  const layers = new Map();
  filler.batches.forEach((batch, i) => {
    that(batch.number === i + 1, `batch ${i + 1} is numbered ${batch.number}`);
    near(`batch ${i + 1} volume`, batch.volume, filler.volume / number);
    near(`batch ${i + 1} placing`, batch.placing, batch.volume / rate);
    near(`batch ${i + 1} minutes`, batch.minutes, filler.workingTime);
    that(batch.covers.length > 0, `batch ${i + 1} goes nowhere`);
    for (const { part, face, pass } of batch.covers) {
      const key = `${part}: ${face}`;
      if (!layers.has(key)) layers.set(key, new Set());
      layers.get(key).add(pass);
    }
  });
  const all = [...layers].flatMap(([, passes]) => [...passes]);
  that(
    Math.max(0, ...all) === filler.passes,
    `layers up to ${Math.max(0, ...all)} of ${filler.passes} passes`,
  );
  that(filler.passes === 0 || all.includes(1), 'no batch lays pass 1');
  // A face that takes fewer layers joins in at the last ones, so every face ends flush in the last pass.
  for (const [key, passes] of layers)
    for (let pass = Math.min(...passes); pass <= filler.passes; pass += 1)
      that(passes.has(pass), `${key} has no pass ${pass}`);
  return list;
}

function coats(job, { coat }) {
  const { list, that, near } = complaints();
  const material = coatOfJob(job);
  const waste = (job.repair?.coatWaste ?? 20) / 100;
  const rate = job.plan?.coatRate ?? 400;
  const wet = (material.dryFilm * 100) / material.solidsByVolume;
  near('coat.wetFilm', coat.wetFilm, wet);
  const { comb } = coat;
  that(
    comb.dry - comb.wet === TOOTH && comb.wet % TOOTH === 0,
    `comb ${comb.wet} and ${comb.dry} um: no neighbours`,
  );
  that(
    comb.wet <= wet + 1e-6 && wet < comb.dry + 1e-6,
    `comb ${comb.wet} and ${comb.dry} um about ${wet} um`,
  );
  near('coat.lostShare', coat.lostShare, waste / (1 + waste));
  near(
    'coat.faces by area',
    total(coat.faces, (f) => f.area),
    coat.area,
  );
  near(
    'coat.faces by volume',
    total(coat.faces, (f) => f.volume),
    coat.volume,
  );
  const number = coat.volume === 0 ? 0 : material.coats;
  that(coat.layers.length === number, `${coat.layers.length} coats, should be ${number}`);
  near(
    'the coats together',
    total(coat.layers, (l) => l.volume),
    coat.volume,
  );
  const swell = (100 / material.solidsByVolume) * (1 + waste);
  // 1 um over 1 cm2 is 1e-4 cm3; the profile is filled once.
  const each = material.dryFilm * coat.area * 1e-4;
  const once = coat.leftVolume + (2 / 3) * material.profile * coat.area * 1e-4;
  const brushing = coat.area / rate;
  const mixes = Math.max(1, Math.ceil(brushing / coat.workingTime - 1e-9));
  coat.layers.forEach((layer, i) => {
    const name = `coat ${i + 1}`;
    that(layer.number === i + 1, `${name} is numbered ${layer.number}`);
    near(`${name} volume`, layer.volume, (each + (i === 0 ? once : 0)) * swell);
    near(`coat.perCoat ${i + 1}`, coat.perCoat[i], layer.volume);
    that(layer.mixes.length === mixes, `${name} in ${layer.mixes.length} mixes, should be ${mixes}`);
    layer.mixes.forEach((mix, k) => {
      that(mix.number === k + 1, `${name} mix ${k + 1} is numbered ${mix.number}`);
      near(`${name} mix ${k + 1} volume`, mix.volume, layer.volume / mixes);
      near(`${name} mix ${k + 1} placing`, mix.placing, brushing / mixes);
    });
  });
  return list;
}
