import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { type BenchResult, ratio } from './measure.ts';

/** What the built command adds to the start of node itself, which no program can go below. */
export function bench(): BenchResult {
  const launcher = join(process.cwd(), 'geometry/run-command.mjs');
  const command = () => node(launcher, '--help');
  // Builds when needed, which is not what is timed here.
  command();
  return ratio('estimate --help', command, 'node doing nothing', () => node('-e', '0'), {
    warm: 2,
    repeats: 21,
    most: 6,
  });
}

function node(...args: readonly string[]): number {
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`start-up: node ${args.join(' ')} ended with ${status}: ${stderr}`);
  return stdout.length;
}
