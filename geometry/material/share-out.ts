import type { Mm3 } from '../units.ts';
import type { FillRun } from './filler.ts';

/** A stretch of one face that takes filler of one batch: a box in the face's own two coordinates, mm or rad. */
export interface Cover {
  readonly part: string;
  readonly face: string;
  /** From and to; an angle runs counter-clockwise and may pass a whole turn. */
  readonly first: readonly [number, number];
  readonly second: readonly [number, number];
  /** 1 = laid first. More than one where the fill is deeper than a layer may be. */
  readonly pass: number;
}

/** Pieces smaller than this share of a batch are float dust where a batch ends on the edge of a bin. */
const DUST = 1e-9;

/**
 * Shares the fill out into `count` equal lots: run after run, along each run's coordinate, so that every lot is one connected
 * stretch where the fill is connected. A lot that ends inside a bin ends where its share of the bin's width does.
 * @returns for each lot its covers in the order they are filled; empty lists when there is nothing to fill
 * Accuracy: the fill volume under the covers of a lot is its share, to rounding; within a bin fill is taken as even.
 */
export function shareOut(runs: readonly FillRun[], count: number): Cover[][] {
  const lots: Cover[][] = Array.from({ length: count }, () => []);
  const total = runs.reduce((sum, run) => sum + run.volume.reduce((all, volume) => all + volume, 0), 0);
  if (!(total > 0)) return lots;
  const lotVolume = total / count;
  let lot = 0;
  let room = lotVolume;

  for (const run of runs) {
    const bins = run.volume.length;
    const start = run.closed ? afterWidestGap(run.volume) : 0;
    let open: Stretch | null = null;
    const close = () => {
      if (open) lots[lot].push(asCover(run, open));
      open = null;
    };
    for (let step = start; step < start + bins; step++) {
      const bin = step % bins;
      const volume = run.volume[bin];
      if (!(volume > 0)) {
        close();
        continue;
      }
      for (let done: Mm3 = 0; volume - done > DUST * lotVolume || done === 0; ) {
        if (room <= DUST * lotVolume && lot < count - 1) {
          close();
          lot += 1;
          room += lotVolume;
        }
        const taken = lot < count - 1 ? Math.min(volume - done, room) : volume - done;
        open = stretched(
          open,
          step + done / volume,
          step + (done + taken) / volume,
          run.from[bin],
          run.to[bin],
        );
        done += taken;
        room -= taken;
      }
    }
    close();
  }
  return lots;
}

/** In bins from the start of the run, which may pass its end, and the extent across. */
interface Stretch {
  readonly begin: number;
  readonly end: number;
  readonly from: number;
  readonly to: number;
}

function stretched(open: Stretch | null, begin: number, end: number, from: number, to: number): Stretch {
  if (!open) return { begin, end, from, to };
  return { begin: open.begin, end, from: Math.min(open.from, from), to: Math.max(open.to, to) };
}

function asCover(run: FillRun, { begin, end, from, to }: Stretch): Cover {
  const along: [number, number] = [run.start + begin * run.step, run.start + end * run.step];
  const across: [number, number] = [from, to];
  return {
    part: run.part,
    face: run.face,
    pass: run.pass,
    first: run.along === 'first' ? along : across,
    second: run.along === 'first' ? across : along,
  };
}

/** The bin after the longest row of empty ones, going round; 0 when no bin is empty. Filling then never starts inside a stretch. */
function afterWidestGap(volume: Float64Array): number {
  const bins = volume.length;
  let start = 0;
  let widest = 0;
  let gap = 0;
  // Twice round, so that a gap across the end of the list is seen whole.
  for (let step = 0; step < 2 * bins; step++) {
    if (volume[step % bins] > 0) {
      if (gap > widest) {
        widest = gap;
        start = step % bins;
      }
      gap = 0;
    } else {
      gap += 1;
    }
  }
  return start;
}
