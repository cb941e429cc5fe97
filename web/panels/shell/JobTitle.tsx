import { TextInput } from '../../fields/TextInput.tsx';
import { useJob } from '../../job/job-store.ts';
import { SavedState } from './SavedState.tsx';
import './JobTitle.css';

/** The job's name, edited where it stands, with what is kept of the job below it. */
export function JobTitle() {
  const title = useJob((state) => state.job.title ?? '');
  const edit = useJob((state) => state.edit);
  return (
    <div className="job-title" data-empty={title === '' || undefined}>
      <TextInput
        label="Title of the job"
        path="title"
        value={title}
        onCommit={(text) => edit('title', (job) => ({ ...job, title: text.trim() }))}
      />
      <SavedState />
    </div>
  );
}
