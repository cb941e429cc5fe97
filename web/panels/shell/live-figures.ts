import { GENERIC_COAT, wholeRepair } from '../../../geometry/job/defaults.ts';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import type { Result } from '../../../geometry/sheet/result.ts';
import { toRadians } from '../../../geometry/units.ts';
import type { LiveTotals } from '../../wear/live-totals-store.ts';
import type { FigureSource } from './figure-set.ts';

/**
 * The figures in the middle of a stroke, until the estimate knows better: what the brush has taken off so far goes to the putty, or
 * to the coat where it is too shallow to be filled, and the depth under the pointer may be the deepest.
 * The unbalance takes each dab of the brush at its middle.
 * Accuracy: waste, ratio and mixes as in the estimate; overbuild and coat allowance on newly worn area, joined regions and corners
 * follow with the estimate, so these figures are marked as being about right.
 */
export function liveFigures(
  source: FigureSource,
  { lostChange, lostPull, pointerDepth }: LiveTotals,
  result: Result,
  job: JobFile,
): FigureSource {
  const changes = Object.values(lostChange);
  if (changes.length === 0) return source;
  const lost = changes.reduce((sum, change) => sum + change, 0) / 1000;
  const repair = wholeRepair(job.repair);
  const isFilled = Math.max(pointerDepth ?? 0, source.deepest?.depth ?? 0) >= repair.leaveBelow;
  const { filler } = result;
  const putty = Math.max(0, filler.volume + (isFilled ? lost * (1 + repair.fillerWaste / 100) : 0));
  const solids = (job.coat ?? GENERIC_COAT).solidsByVolume / 100;
  const coat = isFilled
    ? source.coat
    : Math.max(0, source.coat + (lost / solids) * (1 + repair.coatWaste / 100));
  const [a, b] = gramsAMillilitre(result);
  const deeper = Math.max(0, (pointerDepth ?? 0) - (source.deepest?.depth ?? 0));
  return {
    ...source,
    isAbout: true,
    putty,
    partA: putty * a,
    partB: putty * b,
    mixes: filler.largestBatch > 0 ? Math.ceil(putty / filler.largestBatch) : source.mixes,
    coat,
    unbalance: source.unbalance && liveUnbalance(source.unbalance, lostPull, isFilled, result, job),
    deepest: deeper > 0 ? { depth: pointerDepth ?? 0, at: 'under the brush' } : source.deepest,
    thinnest: source.thinnest && { ...source.thinnest, wall: Math.max(0, source.thinnest.wall - deeper) },
  };
}

/** The net pull with the metal the brush has taken and what goes in its place, where the brush is. */
function liveUnbalance(
  before: NonNullable<FigureSource['unbalance']>,
  lostPull: LiveTotals['lostPull'],
  isFilled: boolean,
  { balance, filler, coat }: Result,
  job: JobFile,
): NonNullable<FigureSource['unbalance']> {
  const part = job.parts.find(({ id }) => id === job.rotor?.part);
  const pull = part && lostPull[part.id];
  if (balance === null || part === undefined || pull === undefined) return before;
  // g/cm3 to g/mm3.
  const weight = ((isFilled ? filler.density : coat.density) - part.density) / 1000;
  const angle = toRadians(balance.net.angle);
  const net = Math.hypot(
    balance.net.amount * Math.cos(angle) + weight * pull[0],
    balance.net.amount * Math.sin(angle) + weight * pull[1],
  );
  return {
    ...before,
    net,
    verdict: net > before.permissible ? 'over' : before.verdict === 'over' ? 'check' : before.verdict,
  };
}

/** Grams of A and of B in 1 mL of the mix; nothing while nothing is mixed. */
function gramsAMillilitre({ filler }: Result): readonly [number, number] {
  return filler.volume > 0 ? [filler.partA.mass / filler.volume, filler.partB.mass / filler.volume] : [0, 0];
}
