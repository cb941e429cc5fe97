import { faultText } from '../../geometry/job/fault.ts';
import type { JobFile } from '../../geometry/job/job-file.ts';
import { readJob } from '../../geometry/job/read-job.ts';
import { openJob } from './open-job.ts';

export interface Sample {
  /** The file's name without its ending: `scoured-plate`. */
  readonly name: string;
  readonly title: string;
  readonly job: JobFile;
}

const texts = import.meta.glob<string>('../../samples/*.job.json', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** The one a newcomer meets. */
const FIRST = 'scoured-plate';

let read: readonly Sample[] | null = null;

/** The worked jobs that come with the app, the one for a newcomer first. */
export function samples(): readonly Sample[] {
  read ??= Object.entries(texts)
    .map(([path, text]) => readSample(path.slice(path.lastIndexOf('/') + 1, -'.job.json'.length), text))
    .sort((a, b) => Number(b.name === FIRST) - Number(a.name === FIRST) || (a.name < b.name ? -1 : 1));
  return read;
}

/** Puts a sample on the screen; the present job is one undo away. */
export function openSample(sample: Sample): void {
  openJob(sample.job, null, `Open the sample ${sample.title}`);
}

function readSample(name: string, text: string): Sample {
  const reading = readJob(text);
  if ('faults' in reading)
    throw new Error(`samples/${name}.job.json: ${reading.faults.map(faultText).join('; ')}`);
  return { name, title: reading.job.title ?? name, job: reading.job };
}
