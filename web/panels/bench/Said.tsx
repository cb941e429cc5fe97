import { BellRing, Clock } from 'lucide-react';
import { Button } from 'react-aria-components';
import { SECOND } from '../../bench/bench-clock.ts';
import { benchStore, useBench } from '../../bench/bench-store.ts';
import { timeText } from '../../bench/instant.ts';

/** Less than this is no news to anybody, ms. */
const WORTH_A_LINE = 10 * SECOND;

/** What has just turned, read out at once and in sight until it is seen; and that the clock was set back, as long as that counts. */
export function Said() {
  const said = useBench((state) => state.said);
  const back = useBench((state) => state.clock?.back ?? 0);
  return (
    <>
      <div className="bench-said" data-empty={said.length === 0 || undefined}>
        <div role="alert" className="bench-said-words">
          {said.map((words) => (
            <p key={words}>
              <BellRing aria-hidden="true" />
              <span>{words}</span>
            </p>
          ))}
        </div>
        {said.length > 0 && (
          <Button className="button bench-button" onPress={() => benchStore.getState().set({ said: [] })}>
            Seen
          </Button>
        )}
      </div>
      {back >= WORTH_A_LINE && (
        <p className="bench-back">
          <Clock aria-hidden="true" />
          This device's clock was set back by {timeText(back)}. Mixes and windows count on without it, and new
          entries are stamped as if it had not been.
        </p>
      )}
    </>
  );
}
