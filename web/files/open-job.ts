/** Brings another job onto the screen. Whatever stood there before is one undo away, and a file that is refused changes nothing. */
import { faultText } from '../../geometry/job/fault.ts';
import type { JobFile } from '../../geometry/job/job-file.ts';
import { LARGEST_FILE, tooLarge } from '../../geometry/job/parse-text.ts';
import { readJob } from '../../geometry/job/read-job.ts';
import { jobStore } from '../job/job-store.ts';
import { viewStore } from '../view/view-store.ts';
import { dismiss, notify } from './notice-store.ts';

/** As much of a file as is used here. */
export interface JobFileSource {
  readonly name: string;
  readonly size: number;
  text(): Promise<string>;
}

/** @returns true when the job is on the screen; otherwise a notice says why not */
export async function openFile(file: JobFileSource): Promise<boolean> {
  if (file.size >= LARGEST_FILE) return refuse(file.name, [faultText(tooLarge(file.size))]);
  let text: string;
  try {
    text = await file.text();
  } catch {
    return refuse(file.name, ['The file could not be read. It may have been moved or taken away.']);
  }
  return openText(text, file.name);
}

/** The same for the text of a job file. */
export function openText(text: string, fileName: string): boolean {
  const read = readJob(text);
  if ('faults' in read) return refuse(fileName, read.faults.map(faultText));
  openJob(read.job, fileName);
  return true;
}

/** A sound job, whose file (if it has one) is named. */
export function openJob(job: JobFile, fileName: string | null, label?: string): void {
  jobStore.getState().open(job, fileName, label);
  dismiss(NOTICE);
  viewStore.getState().set({
    part: job.parts[0].id,
    face: 'face',
    selectedMark: null,
    hoverRegion: null,
    editingField: null,
    drafts: {},
    draftFaults: {},
  });
}

/** Lets the person choose a file. Choosing none changes nothing. */
export function chooseFile(): void {
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = '.json,application/json';
  input.addEventListener('change', () => {
    const file = input.files?.[0];
    if (file !== undefined) void openFile(file);
  });
  input.click();
}

/** A file dropped anywhere on the window is opened. @returns stops it */
export function openDropped(target: Window = window): () => void {
  const over = (event: DragEvent) => {
    if (event.dataTransfer === null || !event.dataTransfer.types.includes('Files')) return;
    event.preventDefault();
    event.dataTransfer.dropEffect = 'copy';
  };
  const drop = (event: DragEvent) => {
    const file = event.dataTransfer?.files[0];
    if (file === undefined) return;
    event.preventDefault();
    void openFile(file);
  };
  target.addEventListener('dragover', over);
  target.addEventListener('drop', drop);
  return () => {
    target.removeEventListener('dragover', over);
    target.removeEventListener('drop', drop);
  };
}

const NOTICE = 'open';
/** More would not be read on a screen. */
const MOST_SENTENCES = 20;

function refuse(fileName: string, sentences: readonly string[]): false {
  const rest = sentences.length - MOST_SENTENCES;
  notify({
    name: NOTICE,
    kind: 'fault',
    title: `${fileName} was not opened. Your job is as it was.`,
    sentences: rest > 0 ? [...sentences.slice(0, MOST_SENTENCES), `And ${rest} more.`] : sentences,
  });
  return false;
}
