import { Button } from 'react-aria-components';
import { useJob } from '../../job/job-store.ts';
import { startingRotor } from './starting-rotor.ts';

/** Before the job has a rotor: what it takes, and one press to start. */
export function AskForBalance() {
  const parts = useJob(({ job }) => job.parts);
  const edit = useJob((state) => state.edit);
  const rotor = startingRotor(parts);
  if (rotor === null) {
    return (
      <div className="panel-body">
        <section className="section">
          <h2>Nothing here turns</h2>
          <p>
            Wear plates stand still. Add the impeller on the step Part, and the balance can be worked out.
          </p>
        </section>
      </div>
    );
  }
  return (
    <div className="panel-body">
      <section className="section">
        <h2>Will it shake?</h2>
        <p>
          Give the speed, the grade and, if you have weighed it, the mass of the rotor. The filler and the
          metal that is missing are then weighed against each other.
        </p>
        <Button
          className="button button-main"
          onPress={() => edit('work out the balance', (job) => ({ ...job, rotor }), 'rotor')}
        >
          Work out the balance
        </Button>
      </section>
    </div>
  );
}
