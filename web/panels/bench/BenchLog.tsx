import type { LogFile } from '../../../geometry/job/job-file.ts';
import { type BenchResult, stepWords } from '../../bench/bench-plan.ts';
import { useBench } from '../../bench/bench-store.ts';
import { itemTimes, itemWords } from '../../bench/log-words.ts';
import { noteItem } from '../../bench/step-log.ts';
import { TextInput } from '../../fields/TextInput.tsx';
import { jobStore } from '../../job/job-store.ts';

/** What was done when, the last first; also what the plan has no more. */
export function BenchLog({ result, log }: { readonly result: BenchResult; readonly log: LogFile }) {
  const wall = useBench((state) => state.clock?.seen.wall ?? 0);
  // Another minute is soon enough for words that only tell today from another day.
  if (log.length === 0) return null;
  return (
    <section className="bench-log" aria-label="Log">
      <h2>Log</h2>
      <ol className="bench-log-list" reversed>
        {log
          .map((item, place) => ({ item, place }))
          .reverse()
          .map(({ item, place }) => {
            const name = stepWords(result, item.step);
            return (
              <li key={`${place} ${item.started}`}>
                <p className="bench-log-times">{itemTimes(item, wall)}</p>
                <div>
                  <h3>{name}</h3>
                  {itemWords(item, result).map((words) => (
                    <p key={words}>{words}</p>
                  ))}
                </div>
                <TextInput
                  label={`Note to ${name}`}
                  value={item.note ?? ''}
                  path={`log[${place}].note`}
                  onCommit={(text) =>
                    jobStore
                      .getState()
                      .edit(
                        'note in the log',
                        (job) => noteItem(job, place, { note: text.trim() }),
                        `log[${place}].note`,
                      )
                  }
                />
              </li>
            );
          })}
      </ol>
    </section>
  );
}
