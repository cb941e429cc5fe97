// Runs the headless command from one built file, and builds that file first when it is missing or older than what it is made of.
// Standard output belongs to the command: nothing here writes there.
import { mkdirSync, readdirSync, renameSync, rmSync, statSync, utimesSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';

const here = import.meta.dirname;
const project = dirname(here);
const built = join(project, '.build', 'command', 'fettle.mjs');

if (timeOf(built) < newest()) await buildCommand();
const { runCommand } = await import(pathToFileURL(built).href);
// npm moves to the project's folder and says in INIT_CWD where the person was.
const exit = await runCommand(process.argv.slice(2), process.env.INIT_CWD ?? process.cwd());
// An answer that could not be written has set a code already.
process.exitCode ??= exit;

/** When the latest of everything the built file is made of was changed. Folders count: one changes when a file in it goes. */
function newest() {
  const entries = readdirSync(here, { recursive: true, withFileTypes: true });
  const sources = entries.filter((entry) => entry.isDirectory() || entry.name.endsWith('.ts'));
  const paths = sources.map((entry) => join(entry.parentPath, entry.name));
  return Math.max(...[here, join(project, 'package-lock.json'), ...paths].map(timeOf));
}

/** @param {string} path */
function timeOf(path) {
  return statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;
}

/** Builds beside the old file and swaps it in, so that a second run at the same time never meets half a file. */
async function buildCommand() {
  const { build } = await import('vite');
  // The file gets the time the build began: a source saved while it ran is then newer, and the next run builds again.
  const began = new Date();
  const beside = `${dirname(built)}-${process.pid}`;
  mkdirSync(dirname(built), { recursive: true });
  try {
    await build({
      configFile: join(here, 'vite.command.config.ts'),
      logLevel: 'silent',
      build: { outDir: beside, emptyOutDir: true },
    });
    utimesSync(join(beside, 'fettle.mjs'), began, began);
    renameSync(join(beside, 'fettle.mjs'), built);
  } finally {
    rmSync(beside, { recursive: true, force: true });
  }
}
