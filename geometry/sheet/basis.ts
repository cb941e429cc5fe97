import type { Estimate } from '../estimate.ts';
import { DAMAGE } from '../fill/label.ts';
import type { Filler } from '../job/job.ts';
import { RATIO_LIMIT } from '../material/weigh-out.ts';
import { balanceBasis } from './balance-text.ts';
import { clearanceBasis } from './clearance-text.ts';
import { figure, gauge, plain } from './figure.ts';
import { flowBasis } from './flow-text.ts';
import { historyBasis } from './history-text.ts';
import { readingsHow } from './readings-text.ts';
import type { Result } from './result.ts';
import { wallBasis } from './wall-text.ts';

/** One figure with the numbers it was made of, and where the rule comes from. */
export interface Basis {
  readonly what: string;
  readonly how: string;
  readonly source: string;
}

/** How the figures of the sheet were worked out, with their numbers and sources; what is assumed stands here too. */
export function basisOf({ job }: Estimate, result: Result): Basis[] {
  const { repair, filler, coat } = job;
  const film = coat.coats * coat.dryFilm * 1000;
  const areaFilm = (film * result.coat.area) / 1e4;
  const overbuild = result.filler.volume / (1 + repair.fillerWaste) - result.filler.netVolume;
  const fill: Basis = {
    what: 'Fill',
    how:
      `Wear deeper than ${gauge(DAMAGE)} mm counts. A worn patch is filled when its deepest point reaches ${plain(repair.leaveBelow)} mm` +
      `${repair.coatAllowance > 0 ? `, up to ${plain(repair.coatAllowance)} mm under the surface on the faces listed for it` : ''}; otherwise the coat fills it.`,
    source: 'Common practice; limit chosen in the job',
  };
  const putty: Basis[] = [
    {
      what: 'Putty to mix',
      how: `(${figure(result.filler.netVolume)} mL net + ${figure(overbuild)} mL overbuild) x ${plain(1 + repair.fillerWaste)} for waste = ${figure(result.filler.volume)} mL`,
      source: 'Arithmetic; waste and overbuild chosen in the job',
    },
    {
      what: 'Mixes',
      how:
        `Largest mix ${figure(result.filler.largestBatch)} mL: ${figure(result.filler.workingTime)} min x ${plain(repair.applicationRate / 1000)} mL/min` +
        `${filler.workingTime.mass === null ? '' : `, and no more than the ${plain(filler.workingTime.mass)} g the working time was quoted for`}. Equal mixes.`,
      source: "Material's data sheet; rate chosen in the job",
    },
    {
      what: 'Working time',
      how: workingTimeBasis(filler, job.surface),
      source:
        filler.activationEnergy === null
          ? "Workshop rule (van 't Hoff), unsafe in heat and in cold"
          : 'Arrhenius law; published epoxy-amine energies run from 45 to 65 kJ/mol',
    },
  ];
  const coated: Basis = {
    what: 'Coat to mix',
    how:
      `(${figure(areaFilm)} mL films + ${figure(result.coat.leftVolume)} mL left wear + ${figure((coat.profile * 1000 * 2 * result.coat.area) / 3e4)} mL profile) / ` +
      `${plain(coat.solidsByVolume)} solids x ${plain(1 + repair.coatWaste)} for waste = ${figure(result.coat.volume)} mL`,
    source: 'Solids by volume, ISO 3233; two thirds of the profile height, common practice',
  };
  const masses: Basis = {
    what: 'Masses',
    how: `Putty ${figure(result.filler.density)} g/cm3, coat ${figure(result.coat.density)} g/cm3, from A, B and the ratio where all are given.`,
    source: "Material's data sheet; no change of volume on mixing",
  };
  const read = result.parts.flatMap(({ readings }) =>
    readings.map(
      (one): Basis => ({
        what: 'Readings',
        how: readingsHow(one),
        source: 'Ordinary and block kriging; which regions are filled is taken as certain',
      }),
    ),
  );
  const scale: Basis = {
    what: 'Grams',
    how:
      `A and B by their densities, each rounded to what the scale shows (${plain(filler.scaleStep)} g for the putty, ${plain(coat.scaleStep)} g for the coat): ` +
      `of the weights near by those that keep the ratio within ${RATIO_LIMIT * 100} %.`,
    source: 'Arithmetic; the limit is common practice',
  };
  const weather: Basis[] =
    result.climate === null || job.climate === null
      ? []
      : [
          {
            what: 'Dew point',
            how:
              `Magnus formula with 17.62 and 243.12 degC: air ${plain(job.climate.air ?? 0)} degC, ${plain((job.climate.humidity ?? 0) * 100)} % humidity, ` +
              `dew point ${result.climate.dewPoint.toFixed(1)} degC. The part has to be 3 degC warmer, the humidity at most 85 %. A hygrometer off by 3 % is worth 0.7 degC.`,
            source: 'WMO Guide No. 8, Annex 4.B; limits: ISO 8502-4 and ISO 12944-7, from memory',
          },
        ];
  const plan: Basis[] =
    result.plan.length === 0
      ? []
      : [
          {
            what: 'Plan',
            how:
              'One person; nobody has two things in hand at once. Firming up, overcoating and hardening at the temperature of the part by the law of the working time; ' +
              `brushing at ${plain(job.plan.coatRate / 100)} cm2/min; the other times as chosen, or usual ones.`,
            source:
              'Times: data sheets; work of the hands: from memory where the job does not say, every shop is different',
          },
        ];
  return [
    ...read,
    fill,
    ...(result.filler.volume > 0 ? putty : []),
    ...(result.coat.volume > 0 ? [coated] : []),
    masses,
    ...(result.filler.volume > 0 || result.coat.volume > 0 ? [scale] : []),
    ...weather,
    ...plan,
    ...wallBasis(result),
    ...(result.history === null ? [] : historyBasis(result.history)),
    ...(result.balance !== null && job.rotor !== null ? balanceBasis(result.balance, job.rotor) : []),
    ...(result.clearance === null ? [] : clearanceBasis(result.clearance)),
    ...(result.flowTest !== null && job.flowTest !== null ? flowBasis(result.flowTest, job.flowTest) : []),
  ];
}

function workingTimeBasis(filler: Filler, surface: number | null): string {
  const { minutes, at } = filler.workingTime;
  const quoted = `${plain(minutes)} min at ${plain(at)} degC`;
  if (surface === null) return `${quoted} as quoted; the job does not say how warm the part is.`;
  const rule =
    filler.activationEnergy === null
      ? 'half as long for every 10 degC more'
      : `with ${plain(filler.activationEnergy)} kJ/mol`;
  return `${quoted}, brought to ${plain(surface)} degC on the part ${rule}.`;
}
