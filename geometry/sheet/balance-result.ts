/**
 * The balance in the file's units: g.mm, g.mm2 for the couple, deg in [0, 360), um, N, kg. Corrections stand as the job file writes
 * them, so that a proposal can be put into `rotor.corrections` as it is.
 */
import type { Balance, TakenCorrection } from '../balance/balance.ts';
import { chanceOver } from '../balance/chance-over.ts';
import { AIM, type Proposal, type Way } from '../balance/correction.ts';
import type { Vector } from '../balance/vector.ts';
import { type Verdict, verdictOf } from '../balance/verdict.ts';
import type { Correction } from '../job/job.ts';
import type { CorrectionFile } from '../job/measured-rotor.ts';
import { type Deg, type FacePoint, type Mm, type Rad, toDegrees, wrapTurn } from '../units.ts';
import { correctionWords } from './balance-words.ts';

export interface BalanceResult {
  /** What the filler alone makes. */
  readonly added: VectorResult;
  /** The metal lost, against the part as new: heavy on the far side of where it is missing. */
  readonly missing: VectorResult;
  readonly asFound: VectorResult;
  /** Before any correction. */
  readonly uncorrected: VectorResult;
  /** What the corrections taken do, integrated. */
  readonly corrections: VectorResult;
  /** What the shaft feels now, residual as found and corrections included. */
  readonly net: VectorResult;
  /** g.mm2. */
  readonly couple: VectorResult;
  readonly permissible: number;
  /** um. */
  readonly permissibleEccentricity: number;
  /** N, net at speed. */
  readonly force: number;
  /** The same as a share of the rotor's weight. */
  readonly weightShare: number;
  readonly ratio: number;
  /** Of each component of the net vector, g.mm. */
  readonly standardError: number;
  readonly chanceOver: number;
  readonly verdict: Verdict;
  /** kg. */
  readonly mass: number;
  /** From the part's solid, not weighed. */
  readonly massEstimated: boolean;
  readonly planes: readonly PlaneResult[] | null;
  /** What the filler weighs against the metal it replaces. */
  readonly fillerShare: number;
  readonly correction: CorrectionResult;
}

export interface VectorResult {
  readonly amount: number;
  readonly angle: Deg;
}

export interface PlaneResult extends VectorResult {
  readonly plane: 'A' | 'B';
  readonly z: Mm;
  readonly permissible: number;
  readonly ratio: number;
}

export interface CorrectionResult {
  /** Proposals leave no more than this share of the limit. */
  readonly aim: number;
  readonly taken: readonly TakenResult[];
  /** Least work first; none when nothing needs doing, or nothing does it. */
  readonly proposals: readonly ProposalResult[];
  readonly impossible: readonly { readonly way: Way; readonly reason: string }[];
  /** Without a shroud: grams to take off two vanes at their outer ends. */
  readonly atVanes: readonly { readonly vane: number; readonly mass: number; readonly radius: Mm }[] | null;
}

export interface TakenResult {
  readonly correction: CorrectionFile;
  readonly words: string;
  /** Put on, or negative taken off, g. */
  readonly mass: number;
  readonly effect: VectorResult;
  /** Least wall left under it, mm; null where it goes into no wall. */
  readonly leaves: Mm | null;
}

export interface ProposalResult {
  readonly way: Way;
  readonly corrections: readonly CorrectionFile[];
  /** What to do, one sentence a correction. */
  readonly words: readonly string[];
  readonly removed: number;
  readonly added: number;
  readonly leaves: Mm | null;
  /** Predicted; integrated once it is taken. */
  readonly residual: VectorResult;
  readonly ratio: number;
  readonly chanceOver: number;
  readonly verdict: Verdict;
}

const GRAMS_PER_KG = 1000;
const UM_PER_MM = 1000;
const MM3_PER_CM3 = 1000;

export function balanceResult(balance: Balance): BalanceResult {
  const { ways } = balance;
  return {
    added: vectorResult(balance.added),
    missing: vectorResult(balance.missing),
    asFound: vectorResult(balance.asFound),
    uncorrected: vectorResult(balance.uncorrected),
    corrections: vectorResult(balance.corrections),
    net: vectorResult(balance.net),
    couple: vectorResult(balance.couple),
    permissible: balance.permissible,
    permissibleEccentricity: balance.permissibleEccentricity * UM_PER_MM,
    force: balance.force,
    weightShare: balance.weightShare,
    ratio: balance.ratio,
    standardError: balance.standardError,
    chanceOver: balance.chanceOver,
    verdict: balance.verdict,
    mass: balance.mass / GRAMS_PER_KG,
    massEstimated: balance.isMassEstimated,
    planes:
      balance.planes?.map(({ z, unbalance, permissible }, i) => ({
        plane: i === 0 ? 'A' : 'B',
        z,
        ...vectorResult(unbalance),
        permissible,
        ratio: unbalance.amount / permissible,
      })) ?? null,
    fillerShare: balance.fillerShare,
    correction: {
      aim: AIM,
      taken: balance.taken.map(takenResult),
      proposals: ways.proposals.map((proposal) => proposalResult(proposal, balance)),
      impossible: ways.impossible,
      atVanes: ways.atVanes,
    },
  };
}

function takenResult({ correction, mass, effect, leaves }: TakenCorrection): TakenResult {
  const file = correctionFile(correction);
  const words = correctionWords(file, mass, { between: null, behind: null, tip: null });
  return { correction: file, words, mass, effect: vectorResult(effect), leaves };
}

function proposalResult(proposal: Proposal, { permissible, standardError }: Balance): ProposalResult {
  const { way, places, removed, added, leaves, residual } = proposal;
  const corrections = proposal.corrections.map(correctionFile);
  const chance = chanceOver(residual.amount, permissible, standardError);
  return {
    way,
    corrections,
    words: corrections.map((correction, i) => correctionWords(correction, puttyMass(proposal, i), places[i])),
    removed,
    added,
    leaves,
    residual: vectorResult(residual),
    ratio: residual.amount / permissible,
    chanceOver: chance,
    verdict: verdictOf(residual.amount, permissible, chance),
  };
}

/** Two pads share what is added by their volumes. */
function puttyMass({ corrections, added }: Proposal, i: number): number {
  const sizes = corrections.map((correction) => {
    if (correction.kind !== 'putty') return 0;
    const [[inner, outer], [from, to]] = [correction.first, correction.second];
    return correction.height * (to - from) * (outer ** 2 - inner ** 2);
  });
  const all = sizes.reduce((sum, size) => sum + size, 0);
  return all === 0 ? 0 : (added * sizes[i]) / all;
}

/** A correction as the job file writes it. */
function correctionFile(correction: Correction): CorrectionFile {
  if (correction.kind === 'holes') {
    const { face, at, radius, depth } = correction;
    const point = ([first, second]: FacePoint): [number, number] =>
      face === 'shroud/back' ? [length(first), degrees(second)] : [degrees(first), length(second)];
    return { kind: 'holes', face, at: at.map(point), diameter: length(2 * radius), depth: length(depth) };
  }
  const { first, second } = correction;
  const radii: [number, number] = [length(first[0]), length(first[1])];
  const from = degrees(second[0]);
  const angles: [number, number] = [from, tidy(from + toDegrees(second[1] - second[0]))];
  if (correction.kind === 'skim')
    return {
      kind: 'skim',
      face: correction.face,
      first: radii,
      second: angles,
      depth: length(correction.depth),
    };
  const { face, height, density } = correction;
  return {
    kind: 'putty',
    face,
    first: radii,
    second: angles,
    height: length(height),
    density: tidy(density * MM3_PER_CM3),
  };
}

function vectorResult({ amount, angle }: Vector): VectorResult {
  return { amount, angle: degrees(angle) };
}

/** Float dust has no place in a file someone reads: a millionth of a mm or a degree is none. */
const tidy = (value: number): number => Math.round(value * 1e6) / 1e6;
const length = tidy;

/** In [0, 360). */
function degrees(angle: Rad): Deg {
  const rounded = tidy(toDegrees(wrapTurn(angle)));
  return rounded >= 360 ? 0 : rounded;
}
