import { Button } from 'react-aria-components';
import { useJob } from '../../job/job-store.ts';
import { facingPair } from './facing-pair.ts';

/** To be typed over: a setting such as waste-water pumps are often given (sources: tests/geometry/clearance). mm */
const START = { asNew: 0.4, least: 0.3, most: 0.6 };

/** Before the job asks for its clearance: what it takes, and one press to start. */
export function AskForClearance() {
  const parts = useJob(({ job }) => job.parts);
  const edit = useJob((state) => state.edit);
  const pair = facingPair(parts);
  if (pair === null) {
    const isPlate = parts.some(({ kind }) => kind === 'wear-plate');
    return (
      <section className="section">
        <h2>Nothing runs against it</h2>
        <p>
          A running clearance lies between the vane tips of an impeller and the face of a wear plate. Add the{' '}
          {isPlate ? 'impeller' : 'wear plate'} on the step Part, and it can be worked out.
        </p>
      </section>
    );
  }
  return (
    <section className="section">
      <h2>Will it rub?</h2>
      <p>
        Give the gap with both parts as new and the narrowest and widest that you allow. What is worn, filled
        and coated of {pair.plate} and {pair.impeller} is then set against it.
      </p>
      <div className="buttons">
        <Button
          className="button button-main"
          onPress={() =>
            edit(
              'work out the clearance',
              (job) => ({ ...job, clearance: { ...pair, ...START } }),
              'clearance',
            )
          }
        >
          Work out the clearance
        </Button>
      </div>
      <p className="quiet">It starts with a common setting; type yours over it.</p>
    </section>
  );
}
