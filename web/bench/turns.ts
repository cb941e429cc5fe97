import { type Clock, turnWords } from './bench-words.ts';
import type { BenchTimer, TimerPhase } from './timers.ts';

/** The phase each time was in at the last look, by its id. */
export type Phases = ReadonlyMap<string, TimerPhase>;

export interface Turns {
  readonly phases: Phases;
  /** In words, the most urgent first; empty when nothing turned. */
  readonly words: readonly string[];
  /** How loud to be about it: a mix or a window that is lost, or something that wants doing. */
  readonly tone: 'loud' | 'soft' | null;
}

/**
 * What turned since the last look. Only where each time stands now is told, however many turns were slept through.
 * @param before  null at the first look: then what presses is told, without a sound
 */
export function turnsSince(before: Phases | null, timers: readonly BenchTimer[], clock: Clock): Turns {
  const phases = new Map(timers.map(({ id, phase }) => [id, phase]));
  const turned = timers.filter(({ id, phase }) =>
    before === null ? PRESSING.has(phase) : before.get(id) !== phase,
  );
  const told = turned.flatMap((timer) => {
    const words = turnWords(timer, clock);
    return words === null ? [] : [{ words, isLost: timer.phase === 'over' || timer.phase === 'closed' }];
  });
  const tone =
    before === null || told.length === 0 ? null : told.some(({ isLost }) => isLost) ? 'loud' : 'soft';
  return { phases, words: told.map(({ words }) => words), tone };
}

const PRESSING: ReadonlySet<TimerPhase> = new Set(['ending', 'over', 'closing', 'closed']);
