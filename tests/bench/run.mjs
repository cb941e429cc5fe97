// Runs every tests/bench/*.bench.ts, each in a process of its own, prints what they took and keeps it in results/.
// `npm run bench`, or `npm run bench -- replay` for the files with "replay" in their name.
import { fork } from 'node:child_process';
import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';

const here = import.meta.dirname;

if (process.argv[2] === '--one') {
  const { bench } = await import(pathToFileURL(process.argv[3]).href);
  process.send(await bench(), () => process.disconnect());
} else {
  await runAll(process.argv[2] ?? '');
}

/** @param {string} part only files with this in their name; all = '' */
async function runAll(part) {
  const names = readdirSync(here)
    .filter((name) => name.endsWith('.bench.ts') && name.includes(part))
    .map((name) => basename(name, '.bench.ts'))
    .sort();
  if (names.length === 0) throw new Error(`There is no tests/bench/*${part}*.bench.ts`);
  const folder = join(here, '../../.build', `bench-${process.pid}`);
  const benches = {};
  try {
    await bundle(names, folder);
    for (const name of names) {
      benches[name] = await runOne(join(folder, `${name}.mjs`));
      print(name, benches[name]);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  if (part === '') keep(benches);
  const missed = Object.values(benches).flatMap(({ ratios }) => ratios.filter((ratio) => !holds(ratio)));
  for (const { name, median } of missed) console.log(`Missed: ${name} is ${figure(median)}`);
  process.exitCode = missed.length > 0 ? 1 : 0;
}

/** @param {string[]} names @param {string} folder */
async function bundle(names, folder) {
  const { build } = await import('vite');
  await build({
    configFile: false,
    root: here,
    publicDir: false,
    logLevel: 'error',
    // The solid kernel loads its own binary from beside its code, so it stays a package.
    ssr: { noExternal: true, external: ['manifold-3d'], target: 'node' },
    build: {
      ssr: true,
      target: 'node20',
      minify: false,
      outDir: folder,
      rolldownOptions: {
        input: Object.fromEntries(names.map((name) => [name, join(here, `${name}.bench.ts`)])),
        output: { entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' },
      },
    },
  });
}

/** @param {string} file @returns {Promise<{timings: object[], ratios: object[]}>} */
function runOne(file) {
  return new Promise((done, fail) => {
    const child = fork(import.meta.filename, ['--one', file], { execArgv: ['--expose-gc'] });
    child.once('message', done);
    child.once('exit', (code) =>
      fail(new Error(`${basename(file)} ended with exit code ${code} and no result`)),
    );
  });
}

function print(name, { timings, ratios }) {
  console.log(`\n${name}`);
  for (const { name: work, median, fastest, spread } of timings) {
    console.log(
      `  ${work.padEnd(52)} ${figure(median)} ms  fastest ${figure(fastest)}  spread ${percent(spread)}`,
    );
  }
  for (const ratio of ratios) {
    const wanted = [
      ratio.most === null ? '' : `at most ${ratio.most}`,
      ratio.least === null ? '' : `at least ${ratio.least}`,
    ];
    const verdict =
      wanted.join('') === '' ? '' : `  ${wanted.join(' ').trim()}: ${holds(ratio) ? 'holds' : 'MISSED'}`;
    console.log(
      `  ${ratio.name.padEnd(52)} ${figure(ratio.median)} x   spread ${percent(ratio.spread)}${verdict}`,
    );
  }
}

function holds({ median, most, least }) {
  return (most === null || median <= most) && (least === null || median >= least);
}

/** One results file a machine, named after its processor. */
function keep(benches) {
  const [{ model }] = cpus();
  const machine = { processor: model.trim(), cores: cpus().length, node: process.version };
  const name = `${model} ${cpus().length} cores`.toLowerCase().replace(/[^a-z0-9]+/g, '-');
  mkdirSync(join(here, 'results'), { recursive: true });
  const file = join(here, 'results', `${name}.json`);
  writeFileSync(file, `${JSON.stringify({ machine, benches: rounded(benches) }, null, 2)}\n`);
  console.log(`\nKept in ${file}`);
}

/** Four digits: the rest is noise and would only make every run differ. */
function rounded(value) {
  return JSON.parse(
    JSON.stringify(value, (_, part) => (typeof part === 'number' ? Number(part.toPrecision(4)) : part)),
  );
}

function figure(value) {
  return value.toPrecision(3).padStart(8);
}

function percent(share) {
  return `${Math.round(share * 100)} %`;
}
