import { Button } from 'react-aria-components';
import { SAMPLES } from '../../files/samples.ts';
import { useJob } from '../../job/job-store.ts';
import { startOwn } from './start-own.ts';
import './SampleNote.css';

/** Stands above the part while a worked sample is open that is in no file yet: look around, or start your own. */
export function SampleNote() {
  const isSample = useJob(
    ({ job, fileName }) => fileName === null && SAMPLES.some(({ title }) => title === job.title),
  );
  if (!isSample) return null;
  return (
    <section className="sample-note" aria-label="Sample">
      <span>
        A worked sample<span className="sample-note-more">, to look around in</span>
      </span>
      <Button className="button button-main" onPress={startOwn}>
        Start your own
      </Button>
    </section>
  );
}
