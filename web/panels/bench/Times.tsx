import type { Clock } from '../../bench/bench-words.ts';
import { timerWords } from '../../bench/bench-words.ts';
import { countdownText } from '../../bench/instant.ts';
import type { BenchTimer } from '../../bench/timers.ts';

/** Every other time that runs, the most urgent first, each in words beside its figure. */
export function Times({ timers, clock }: { readonly timers: readonly BenchTimer[]; readonly clock: Clock }) {
  if (timers.length === 0) return null;
  return (
    <section className="bench-times" aria-label="Other times">
      <h2>Also running</h2>
      <ul className="bench-time-list">
        {timers.map((timer) => (
          <li key={timer.id} data-bad={isBad(timer) || undefined}>
            <h3>{timer.name}</h3>
            <p className="bench-time-figure" role="timer">
              {timer.phase === 'passed' ? 'Ready' : signed(timer)}
            </p>
            <p>{timerWords(timer, clock)}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** A time that ran out counts on with a plus. */
export function signed({ phase, span }: BenchTimer): string {
  return `${phase === 'over' || phase === 'closed' ? '+' : ''}${countdownText(span)}`;
}

export function isBad({ phase }: BenchTimer): boolean {
  return phase === 'over' || phase === 'closed' || phase === 'ending' || phase === 'closing';
}
