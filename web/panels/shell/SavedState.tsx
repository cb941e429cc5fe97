import { TriangleAlert } from 'lucide-react';
import { useKeepState } from '../../files/autosave.ts';
import { useJob } from '../../job/job-store.ts';

/** Where the job is kept, and since when. */
export function SavedState() {
  const keeping = useKeepState();
  const savedAt = useJob((state) => state.savedAt);
  const fileSavedAt = useJob((state) => state.fileSavedAt);
  const fileName = useJob((state) => state.fileName);
  const inFile = fileSavedAt === null || fileName === null ? '' : `, in ${fileName} ${timeOf(fileSavedAt)}`;
  if (keeping === 'off') {
    return (
      <p className="quiet saved-state" data-off role="status">
        <TriangleAlert aria-hidden="true" />
        Not kept on this device{inFile}
      </p>
    );
  }
  const onDevice =
    keeping === 'pending'
      ? 'Saving'
      : savedAt === null
        ? 'Nothing changed yet'
        : `Saved on this device ${timeOf(savedAt)}`;
  return (
    <p className="quiet saved-state">
      {onDevice}
      {inFile}
    </p>
  );
}

/** `14:02`, or with its day when that is not today. */
function timeOf(moment: number): string {
  const time = new Date(moment);
  const isToday = time.toDateString() === new Date().toDateString();
  const hours = new Intl.DateTimeFormat(undefined, {
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).format(time);
  return isToday
    ? hours
    : `${new Intl.DateTimeFormat(undefined, { day: 'numeric', month: 'short' }).format(time)} ${hours}`;
}
