import { useJob } from '../../../job/job-store.ts';
import { OptionalQuantity } from '../../OptionalQuantity.tsx';

/** Where a limit starts when it is first asked for, mL. */
const START = 10;

/** From which change of the order on another reading is worth taking. Left out, the smallest pack is the limit. */
export function ReadingWorth() {
  const value = useJob(({ job }) => job.repair?.readingWorth);
  const edit = useJob((state) => state.edit);
  return (
    <div className="rows">
      <OptionalQuantity
        known="I say what makes another reading worth it"
        label="A change of the order by"
        quantity="volume"
        path="repair.readingWorth"
        value={value}
        start={START}
        help="Without it, a change by one pack of putty."
        onCommit={(readingWorth) =>
          edit(
            'worth of a reading',
            (job) => {
              const { readingWorth: _, ...repair } = job.repair ?? {};
              return { ...job, repair: readingWorth === undefined ? repair : { ...repair, readingWorth } };
            },
            'repair.readingWorth',
          )
        }
      />
    </div>
  );
}
