import { USUAL_ACTIVATION_ENERGY, type WholeRepair } from '../../../geometry/job/defaults.ts';
import type { CoatFile, FillerFile } from '../../../geometry/job/job-file.ts';
import { counted, figure, plain } from '../../../geometry/sheet/figure.ts';
import type { BatchResult, CoatResult, FillerResult } from '../../../geometry/sheet/result.ts';
import type { Celsius, Fraction } from '../../../geometry/units.ts';

/** How a figure was found: the rule, the same with this job's numbers in it, and where the rule comes from. */
export interface Working {
  /** The figure. */
  readonly what: string;
  readonly rule: string;
  readonly numbers: readonly string[];
  readonly source: string;
}

export function puttyWorking(result: FillerResult, repair: WholeRepair): Working {
  const waste = 1 + repair.fillerWaste / 100;
  const overbuild = result.volume / waste - result.netVolume;
  return {
    what: 'Putty',
    rule: 'Putty = (volume to fill + overbuild × filled area) × (1 + waste)',
    numbers: [
      `(${figure(result.netVolume)} mL + ${figure(overbuild)} mL) × ${plain(waste)} = ${figure(result.volume)} mL`,
    ],
    source: 'The volume is added up from the depth map. Overbuild and waste are your choices.',
  };
}

export function partsWorking(
  { volume, partA, partB }: FillerResult | CoatResult,
  mix: FillerFile | CoatFile,
): Working {
  const [a, b] = mix.ratioByVolume;
  const densityA = mix.densityA ?? mix.density;
  const densityB = mix.densityB ?? mix.density;
  const whole = plain(a + b);
  return {
    what: 'A and B',
    rule: 'Each part = volume × its share of the ratio; its mass = that volume × its own density',
    numbers: [
      `A: ${figure(volume)} mL × ${plain(a)} / ${whole} = ${figure(partA.volume)} mL, × ${plain(densityA)} g/cm³ = ${figure(partA.mass)} g`,
      `B: ${figure(volume)} mL × ${plain(b)} / ${whole} = ${figure(partB.volume)} mL, × ${plain(densityB)} g/cm³ = ${figure(partB.mass)} g`,
    ],
    source:
      mix.densityA === undefined
        ? 'Data sheet. A and B have no densities of their own there, so both are weighed by that of the mix.'
        : 'Data sheet. Mixing is taken to change no volume.',
  };
}

export function mixesWorking(
  result: FillerResult,
  filler: FillerFile,
  repair: WholeRepair,
  surface: Celsius | undefined,
): Working {
  const { mass } = filler.workingTime;
  const placed = result.workingTime * repair.applicationRate;
  const mixes = result.batches.length;
  return {
    what: 'Mixes',
    rule:
      'Largest mix = working time × what you fill in a minute, and no more than the mass that time was quoted for: ' +
      'a larger mass heats itself and sets early. Then equal mixes.',
    numbers: [
      workingTimeLine(result.workingTime, filler, surface),
      `${figure(result.workingTime)} min × ${plain(repair.applicationRate)} mL/min = ${figure(placed)} mL`,
      ...(mass === undefined
        ? []
        : [`${plain(mass)} g / ${figure(result.density)} g/cm³ = ${figure(mass / result.density)} mL`]),
      ...(mixes === 0
        ? []
        : [
            `${figure(result.volume)} mL / ${figure(result.largestBatch)} mL, rounded up: ${counted(mixes, 'mix', 'mixes')} of ${figure(result.volume / mixes)} mL`,
          ]),
    ],
    source:
      filler.activationEnergy === null
        ? "Time from the data sheet, brought to the part's temperature by the workshop rule, half the time for every 10 °C more."
        : "Time from the data sheet, brought to the part's temperature by the Arrhenius law; published energies run from 45 to 65 kJ/mol.",
  };
}

function workingTimeLine(minutes: number, filler: FillerFile, surface: Celsius | undefined): string {
  const { minutes: quoted, at } = filler.workingTime;
  if (surface === undefined) return `Working time ${plain(quoted)} min, as quoted at ${plain(at)} °C`;
  const energy = filler.activationEnergy === undefined ? USUAL_ACTIVATION_ENERGY : filler.activationEnergy;
  const law =
    energy === null
      ? `× 2^((${plain(at)} − ${plain(surface)}) / 10)`
      : `× exp[(${plain(energy)} / 0.008314) (1 / ${plain(surface + 273.15)} − 1 / ${plain(at + 273.15)})]`;
  return `Working time ${plain(quoted)} min ${law} = ${figure(minutes)} min at ${plain(surface)} °C`;
}

/** A blast profile takes two thirds of its height (common practice). */
export function coatWorking(result: CoatResult, coat: CoatFile, repair: WholeRepair): Working {
  const solids = coat.solidsByVolume / 100;
  const waste = 1 + repair.coatWaste / 100;
  // um x cm2 = 1e-4 cm3
  const films = (coat.coats * coat.dryFilm * result.area) / 1e4;
  const profile = result.netVolume * solids - films - result.leftVolume;
  return {
    what: 'Coat',
    rule: 'Coat = (coats × dry film × area + wear left to the coat + 2/3 blast profile × area) / solids × (1 + waste)',
    numbers: [
      `(${figure(films)} mL + ${figure(result.leftVolume)} mL + ${figure(profile)} mL) / ${plain(solids)} × ${plain(waste)} = ${figure(result.volume)} mL`,
    ],
    source:
      'Solids by volume as in ISO 3233; two thirds of the profile is common practice. Waste is your choice.',
  };
}

/** Of the first mix that is weighed; mixes of a material are alike, or nearly so. None where nothing is weighed. */
export function scaleWorking(
  mixes: readonly Pick<BatchResult, 'volume' | 'partA' | 'partB' | 'weigh'>[],
): readonly Working[] {
  for (const { volume, partA, partB, weigh } of mixes) {
    if (weigh === null) continue;
    return [
      {
        what: 'On the scale',
        rule: 'Of all pairs of A and B that the scale can show and whose ratio is right within 2 %, the one whose total is nearest to the mix',
        numbers: [
          `Mix of ${figure(volume)} mL: A ${figure(partA.mass)} g, B ${figure(partB.mass)} g; on the scale ${plain(weigh.partA)} g and ${plain(weigh.partB)} g`,
          `(${plain(weigh.partB)} / ${plain(weigh.partA)}) / (${partB.mass.toFixed(2)} / ${partA.mass.toFixed(2)}) = ${(1 + weigh.ratioError).toFixed(3)}: ${offText(weigh.ratioError)}`,
        ],
        source: 'Arithmetic. The limit of 2 % is common practice; your data sheet may be stricter.',
      },
    ];
  }
  return [];
}

function offText(error: Fraction): string {
  const percent = Math.abs(100 * error).toFixed(1);
  return percent === '0.0' ? 'as it should be' : `${percent} % too ${error > 0 ? 'much' : 'little'} B`;
}

export function wetFilmWorking({ wetFilm }: CoatResult, { dryFilm, solidsByVolume }: CoatFile): Working {
  return {
    what: 'Wet film',
    rule: 'Wet film = dry film / solids',
    numbers: [`${plain(dryFilm)} µm / ${plain(solidsByVolume / 100)} = ${figure(wetFilm)} µm`],
    source: 'Solids by volume as in ISO 3233. Teeth of the comb 25 µm apart, common practice.',
  };
}

export function coatWasteWorking({ coatWaste }: WholeRepair): Working {
  return {
    what: 'Waste of coat',
    rule: 'Share of the mix that is lost = waste / (100 + waste)',
    numbers: [
      `${plain(coatWaste)} / (100 + ${plain(coatWaste)}) = ${figure((100 * coatWaste) / (100 + coatWaste))} %`,
    ],
    source: 'Arithmetic. Waste is your choice; typical losses stand beside its field, trade practice.',
  };
}

export function packsWorking({ volume, mass, packs }: FillerResult | CoatResult): Working {
  return {
    what: 'Packs',
    rule: 'Of all packs that hold at least the need, those with the least left over; of these the fewest',
    numbers: [
      `Need: ${figure(volume)} mL, ${figure(mass)} g`,
      packs.length === 0
        ? 'No pack is given on the data sheet'
        : `Buy ${packs.map(({ label, count }) => `${count} × ${label}`).join(', ')}`,
    ],
    source: 'Arithmetic, with the packs you gave.',
  };
}
