import { faultText } from '../../geometry/job/fault.ts';
import type { JobFile } from '../../geometry/job/job-file.ts';
import { readJob } from '../../geometry/job/read-job.ts';
import firstText from '../../samples/scoured-plate.job.json?raw';
import { notify } from './notice-store.ts';
import { openJob } from './open-job.ts';

export interface Sample {
  /** The file's name without its ending: `scoured-plate`. */
  readonly name: string;
  readonly title: string;
}

/** The one a newcomer meets; it comes with the first page, the others after it. */
const FIRST = 'scoured-plate';

const titles = import.meta.glob<string>('../../samples/*.job.json', { import: 'title', eager: true });
const others = import.meta.glob<string>(
  ['../../samples/*.job.json', '!../../samples/scoured-plate.job.json'],
  {
    query: '?raw',
    import: 'default',
  },
);

/** The worked jobs that come with the app, the one for a newcomer first. */
export const SAMPLES: readonly Sample[] = Object.entries(titles)
  .map(([path, title]) => ({ name: nameOf(path), title }))
  .sort((a, b) => Number(b.name === FIRST) - Number(a.name === FIRST) || (a.name < b.name ? -1 : 1));

export function firstSample(): JobFile {
  return readSample(FIRST, firstText);
}

/** Puts a sample on the screen; the present job is one undo away. Says so when it cannot be fetched. */
export async function openSample({ name, title }: Sample): Promise<void> {
  const job = await sampleJob(name).catch(() => null);
  if (job === null)
    notify({
      name: 'sample',
      kind: 'fault',
      title: 'The sample could not be fetched',
      sentences: ['Load the page again when there is a network. Your job is as it was.'],
    });
  else openJob(job, null, `Open the sample ${title}`);
}

export async function sampleJob(name: string): Promise<JobFile> {
  if (name === FIRST) return firstSample();
  const path = Object.keys(others).find((known) => nameOf(known) === name);
  if (path === undefined) throw new Error(`sampleJob: needs the name of a sample, got ${name}`);
  return readSample(name, await others[path]());
}

/** Fetches the other samples ahead, so that they open when the line is gone by then. */
export function fetchSamples(): void {
  for (const fetch of Object.values(others)) void fetch().catch(() => undefined);
}

function nameOf(path: string): string {
  return path.slice(path.lastIndexOf('/') + 1, -'.job.json'.length);
}

function readSample(name: string, text: string): JobFile {
  const reading = readJob(text);
  if ('faults' in reading)
    throw new Error(`samples/${name}.job.json: ${reading.faults.map(faultText).join('; ')}`);
  return reading.job;
}
