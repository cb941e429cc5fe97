/** Filler, batches, packs and coat from the volumes, by the formulas of the job format. cm3 = mL, g, min, degC. */

const GAS = 8.314462618;

/** Density of the mix: from the two parts when both are given. */
export function mixDensity({ density, densityA, densityB, ratioByVolume: [a, b] }) {
  return densityA > 0 && densityB > 0 ? (a * densityA + b * densityB) / (a + b) : density;
}

function workingTime({ workingTime: { minutes, at }, activationEnergy }, surface) {
  if (surface === undefined) return minutes;
  if (activationEnergy === null) return minutes * 2 ** ((at - surface) / 10);
  const energy = (activationEnergy ?? 55) * 1000;
  return minutes * Math.exp((energy / GAS) * (1 / (surface + 273.15) - 1 / (at + 273.15)));
}

export function fillerOf(filler, repair, surface, { fill, fillArea, deepestFill }) {
  const net = fill / 1000;
  const volume = (net + ((repair.overbuild ?? 0) * fillArea) / 1000) * (1 + (repair.fillerWaste ?? 10) / 100);
  const density = mixDensity(filler);
  const minutes = workingTime(filler, surface);
  const byTime = minutes * (repair.applicationRate ?? 20);
  const byMass = filler.workingTime.mass === undefined ? Infinity : filler.workingTime.mass / density;
  const largest = Math.min(byTime, byMass);
  const batches = Math.ceil(volume / largest - 1e-9);
  return {
    netVolume: net,
    volume,
    mass: volume * density,
    ...parts(filler, volume),
    passes: Math.ceil(deepestFill / filler.mostBuild - 1e-9),
    workingTime: minutes,
    largestBatch: largest,
    batches,
    batchVolume: batches === 0 ? 0 : volume / batches,
    packs: bestPacks(filler.packs ?? [], volume, volume * density),
  };
}

function parts({ ratioByVolume: [a, b], densityA, densityB }, volume) {
  const [va, vb] = [(volume * a) / (a + b), (volume * b) / (a + b)];
  return {
    partA: { volume: va, ...(densityA > 0 ? { mass: va * densityA } : {}) },
    partB: { volume: vb, ...(densityB > 0 ? { mass: vb * densityB } : {}) },
  };
}

export function coatOf(coat, repair, surface, { area, left }) {
  const film = coat.dryFilm / 1000;
  const profile = (coat.profile ?? 0) / 1000;
  const share = (1 / (coat.solidsByVolume / 100)) * (1 + (repair.coatWaste ?? 20) / 100);
  const each = film * area;
  const first = each + left + (2 / 3) * profile * area;
  const perCoat = Array.from({ length: coat.coats }, (_, i) => ((i === 0 ? first : each) * share) / 1000);
  const volume = perCoat.reduce((a, b) => a + b, 0);
  return {
    area: area / 100,
    netVolume: volume / (1 + (repair.coatWaste ?? 20) / 100),
    volume,
    mass: volume * mixDensity(coat),
    perCoat,
    wetFilm: (coat.dryFilm * 100) / coat.solidsByVolume,
    ...parts(coat, volume),
    workingTime: workingTime(coat, surface),
    packs: bestPacks(coat.packs ?? [], volume, volume * mixDensity(coat)),
  };
}

/** Every set of packs that could do, tried one by one: the least left over, then the fewest packs. */
function bestPacks(packs, volume, mass) {
  if (packs.length === 0 || volume === 0) return [];
  const unit = mass / volume;
  const sizes = packs.map((pack) => pack.mass ?? pack.volume * unit);
  let best = null;
  const count = sizes.map(() => 0);
  const visit = (k, held) => {
    if (held >= mass - 1e-9) {
      const sum = count.reduce((a, b) => a + b, 0);
      const better = best === null || held < best.held - 1e-6 || (held < best.held + 1e-6 && sum < best.sum);
      if (better) best = { held, sum, count: [...count] };
      return;
    }
    for (let i = k; i < sizes.length; i += 1) {
      count[i] += 1;
      visit(i, held + sizes[i]);
      count[i] -= 1;
    }
  };
  visit(0, 0);
  return packs
    .map((pack, i) => ({ label: pack.label, count: best.count[i] }))
    .filter((pack) => pack.count > 0);
}
