import { CalendarPlus } from 'lucide-react';
import { useId } from 'react';
import { Button } from 'react-aria-components';
import { calendarOf } from '../../../geometry/sheet/calendar.ts';
import type { Result } from '../../../geometry/sheet/result.ts';
import { handOver } from '../../files/hand-over.ts';
import { nameFor } from '../../files/save-job.ts';
import { jobStore } from '../../job/job-store.ts';

/** The steps as a file that any calendar takes; only once they are tied to the clock. */
export function SaveCalendar({ result }: { readonly result: Result }) {
  const why = useId();
  const hasStart = result.day.start !== null;
  const save = () => {
    const { job } = jobStore.getState();
    const text = calendarOf(result, job.title ?? '');
    if (text !== null) handOver(nameFor(job).replace(/\.job\.json$/, '.ics'), text, 'text/calendar');
  };
  return (
    <>
      <Button
        className="button"
        isDisabled={!hasStart}
        {...(hasStart ? {} : { 'aria-describedby': why })}
        onPress={save}
      >
        <CalendarPlus aria-hidden="true" />
        Save calendar
      </Button>
      {!hasStart && (
        <p className="quiet" id={why}>
          A calendar needs the start of the work.
        </p>
      )}
    </>
  );
}
