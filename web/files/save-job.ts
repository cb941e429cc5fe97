/** Writes the job into a file of its own: where the person says, or among the downloads where the browser cannot ask. */
import type { JobFile } from '../../geometry/job/job-file.ts';
import { writeJob } from '../../geometry/job/write-job.ts';
import { jobStore } from '../job/job-store.ts';
import { handOver } from './hand-over.ts';
import { dismiss, notify } from './notice-store.ts';

/** @returns true when the file is written (or handed to the browser as a download) */
export async function saveJob(): Promise<boolean> {
  const { job, fileName } = jobStore.getState();
  const name = fileName ?? nameFor(job);
  try {
    const saved = await writeFile(name, writeJob(job));
    if (saved === null) return false;
    jobStore.setState({ fileName: saved, fileSavedAt: Date.now() });
    dismiss(NOTICE);
    return true;
  } catch (error) {
    notify({
      name: NOTICE,
      kind: 'fault',
      title: 'The job was not saved to a file.',
      sentences: [
        error instanceof Error ? error.message : String(error),
        'Try another place or another name.',
      ],
    });
    return false;
  }
}

/** A file name made of the job's title: `scoured-plate.job.json`. */
export function nameFor(job: JobFile): string {
  const words = (job.title ?? '')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60);
  return `${words === '' ? 'plate' : words}.job.json`;
}

const NOTICE = 'save';

/** The part of the browser's file picker that is used here; not every browser has it. */
interface FilePicker {
  showSaveFilePicker?(options: {
    readonly suggestedName: string;
    readonly types: readonly { readonly description: string; readonly accept: Record<string, string[]> }[];
  }): Promise<FileSystemFileHandle>;
}

/** @returns the name it was given; null when the person thought better of it */
async function writeFile(name: string, text: string): Promise<string | null> {
  const picker = window as Window & FilePicker;
  if (picker.showSaveFilePicker === undefined) return download(name, text);
  let handle: FileSystemFileHandle;
  try {
    handle = await picker.showSaveFilePicker({
      suggestedName: name,
      types: [{ description: 'Job', accept: { 'application/json': ['.json'] } }],
    });
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return null;
    // Some browsers have the picker and forbid it, in a frame for one.
    return download(name, text);
  }
  const file = await handle.createWritable();
  await file.write(text);
  await file.close();
  return handle.name;
}

function download(name: string, text: string): string {
  handOver(name, text, 'application/json');
  return name;
}
