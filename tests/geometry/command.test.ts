import { spawnSync } from 'node:child_process';
import {
  closeSync,
  existsSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { runCommand } from '../../geometry/command.ts';
import { estimate } from '../../geometry/estimate.ts';
import { measured } from '../../geometry/job/measured.ts';
import { readJob } from '../../geometry/job/read-job.ts';
import { toResult } from '../../geometry/sheet/result.ts';

const project = join(import.meta.dirname, '../..');
const SAMPLE = 'samples/scoured-plate.job.json';
const sample = readFileSync(join(project, SAMPLE), 'utf8');
/** Coarse: these tests are about the command, not about the last digit. */
const COARSE = ['--cell', '4'];

const folder = mkdtempSync(join(tmpdir(), 'fettle-command-'));
afterAll(() => rmSync(folder, { recursive: true }));

function run(args: readonly string[], from = project): { exit: 0 | 2; out: string; err: string } {
  const said = { out: '', err: '' };
  const exit = runCommand(args, from, {
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
  });
  return { exit, ...said };
}

describe('a job that can be used', () => {
  test('without an option it is a sheet in plain text that begins with the title', () => {
    const { exit, out, err } = run([SAMPLE, ...COARSE]);
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    expect(out.split('\n')[0]).toBe((JSON.parse(sample) as { title: string }).title);
  });

  test('--json writes exactly what the engine hands over', () => {
    const { exit, out, err } = run(['--json', SAMPLE, ...COARSE]);
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    const read = readJob(sample);
    if ('faults' in read) throw new Error(`${SAMPLE} has faults`);
    const expected = toResult(estimate(measured(read.job), { cell: 4 }));
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(expected)));
  });

  test('--cell reaches the engine, and a comma is a decimal mark', () => {
    const at = (cell: string) => run([SAMPLE, '--json', '--cell', cell]).out;
    expect(at('3.5')).not.toBe(at('4'));
    expect(at('3,5')).toBe(at('3.5'));
  });

  test('--sheet writes a page where the person stands and says so', () => {
    writeFileSync(join(folder, 'own.json'), sample);
    const { exit, out, err } = run(['own.json', '--sheet', 'out.html', ...COARSE], folder);
    expect({ exit, out, err }).toEqual({ exit: 0, out: 'The sheet is in out.html\n', err: '' });
    expect(readFileSync(join(folder, 'out.html'), 'utf8')).toMatch(/^<!doctype html>/);
  });

  test('--calendar writes the day of a job that says when it begins', () => {
    const dated = { ...(JSON.parse(sample) as object), plan: { start: '2026-12-01T07:00' } };
    writeFileSync(join(folder, 'dated.json'), JSON.stringify(dated));
    const { exit, out, err } = run(['dated.json', '--calendar', 'day.ics', ...COARSE], folder);
    expect({ exit, out, err }).toEqual({ exit: 0, out: 'The calendar is in day.ics\n', err: '' });
    expect(readFileSync(join(folder, 'day.ics'), 'utf8')).toMatch(/^BEGIN:VCALENDAR\r\n/);
  });

  test('--help shows an example and needs no file', () => {
    const { exit, out, err } = run(['--help']);
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    expect(out).toContain(`npm run --silent estimate -- ${SAMPLE}`);
  });
});

describe('what cannot be used ends with 2, a sentence on standard error and nothing on standard output', () => {
  const job = (change: (plate: Record<string, unknown>) => void) => {
    const changed = JSON.parse(sample) as { parts: Record<string, unknown>[] };
    change(changed.parts[0]);
    return JSON.stringify(changed);
  };
  writeFileSync(join(folder, 'words.json'), 'three bolts short of a plate');
  writeFileSync(join(folder, 'newer.json'), sample.replace(/"format":\s*1/, '"format": 2'));
  writeFileSync(
    join(folder, 'faults.json'),
    job((plate) => Object.assign(plate, { boreDiameter: 990, thickness: -3 })),
  );
  writeFileSync(join(folder, 'large.json'), '');
  // Sparse: 50 MB in name only.
  truncateSync(join(folder, 'large.json'), 50_000_000);

  test.each<[string, string[], RegExp]>([
    ['no file', [], /^No job file was named/],
    ['two files', ['a.json', 'b.json'], /^One job file at a time: 2 were named \(a\.json, b\.json\)/],
    ['a file that is not there', ['missing.json'], /^missing\.json could not be read: there is no such file/],
    ['a folder', ['.'], /^\. could not be read: it is a folder/],
    ['an endless device', ['/dev/zero'], /^\/dev\/zero could not be read: it is not a file/],
    ['a file of 50 MB', ['large.json'], /^file: 50 MB is not smaller than 50 MB$/],
    ['text that is not JSON', ['words.json'], /^file: not JSON at line 1, column 1/],
    ['a newer format', ['newer.json'], /^format: 2 is newer than this version reads/],
    ['an unknown option', [SAMPLE, '--jason'], /^--jason is not an option/],
    ['a value for --json', ['--json=1', SAMPLE], /^--json takes no value/],
    ['--json with --sheet', [SAMPLE, '--json', '--sheet', 'x.html'], /^Choose one of --json and --sheet/],
    [
      'a sheet named as a job',
      [SAMPLE, '--sheet', 'b.job.json'],
      /^--sheet: b\.job\.json is the name of a job/,
    ],
    [
      'a name below a file',
      ['words.json/deep.json'],
      /could not be read: part of its path is a file and not a folder\.$/,
    ],
    ['a name without end', ['x'.repeat(5000)], /could not be read: its name is too long\.$/],
    [
      'a calendar of a job without a start',
      [join(project, SAMPLE), '--calendar', 'day.ics'],
      /^plan\.start: missing, needs/,
    ],
    [
      '--sheet with --calendar',
      [SAMPLE, '--sheet', 'a.html', '--calendar', 'a.ics'],
      /^Choose one of --sheet and --calendar/,
    ],
    ['--sheet without a name', [SAMPLE, '--sheet'], /^--sheet needs a value/],
    ['--sheet before another option', ['--sheet', '--cell', '1', SAMPLE], /^--sheet needs a value/],
    ['--cell without a number', [SAMPLE, '--cell'], /^--cell needs a value/],
    ['--cell 0', [SAMPLE, '--cell', '0'], /^--cell: "0" is not a number of mm from 0\.02 to 10/],
    ['--cell -1', [SAMPLE, '--cell', '-1'], /^--cell: "-1" is not/],
    ['--cell fine', [SAMPLE, '--cell', 'fine'], /^--cell: "fine" is not/],
    ['--cell 1e-1', [SAMPLE, '--cell', '1e-1'], /^--cell: "1e-1" is not/],
    ['--cell 10.1', [SAMPLE, '--cell', '10.1'], /^--cell: "10\.1" is not/],
  ])('%s', (_, args, sentence) => {
    const { exit, out, err } = run(args, folder);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err.trimEnd()).toMatch(sentence);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });

  test('every fault of a job in one go, one a line, each with its field', () => {
    const { exit, out, err } = run(['faults.json'], folder);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toMatch(/^parts\[0\]\.boreDiameter: 990 is not smaller than outerDiameter/m);
    expect(err).toMatch(/^parts\[0\]\.thickness: -3 is not /m);
  });

  test('cells too fine for the plate: how fine they may be', () => {
    const { exit, out, err } = run([SAMPLE, '--cell', '0.02']);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toMatch(
      /^cell: 0\.02 mm makes .* cells on one face; the most is .*, so use [\d.]+ mm or more/,
    );
  });

  test('a sheet never takes the place of the job it is made from, by whatever name', () => {
    writeFileSync(join(folder, 'only-copy'), sample);
    for (const page of ['only-copy', './only-copy', join(folder, 'only-copy')]) {
      const { exit, out, err } = run(['only-copy', '--sheet', page, ...COARSE], folder);
      expect({ exit, out }).toEqual({ exit: 2, out: '' });
      expect(err).toBe(`--sheet: ${page} is the job itself; write the sheet to another file.\n`);
    }
    expect(readFileSync(join(folder, 'only-copy'), 'utf8')).toBe(sample);
  });

  test('a sheet that cannot be written', () => {
    const { exit, out, err } = run([join(project, SAMPLE), '--sheet', 'no/such/out.html', ...COARSE], folder);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toBe('no/such/out.html could not be written: there is no such file or folder.\n');
  });
});

describe('the built command', () => {
  const launch = (args: readonly string[], from: string) =>
    spawnSync(process.execPath, [join(project, 'geometry/run-command.mjs'), ...args], {
      cwd: project,
      env: { ...process.env, INIT_CWD: from },
      encoding: 'utf8',
    });

  test('gives the same bytes as the source, from a path relative to where the person is', () => {
    const { status, stdout, stderr } = launch(
      ['scoured-plate.job.json', '--json', ...COARSE],
      join(project, 'samples'),
    );
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout).toBe(run([SAMPLE, '--json', ...COARSE]).out);
  });

  test.runIf(existsSync('/dev/full'))('an answer that cannot be written is no success', () => {
    const full = openSync('/dev/full', 'w');
    const { status, stderr } = spawnSync(
      process.execPath,
      [join(project, 'geometry/run-command.mjs'), SAMPLE, '--json', ...COARSE],
      {
        cwd: project,
        env: { ...process.env, INIT_CWD: project },
        stdio: ['ignore', full, 'pipe'],
        encoding: 'utf8',
      },
    );
    closeSync(full);
    expect({ status, stderr }).toEqual({
      status: 2,
      stderr: 'The answer could not be written: the disk is full.\n',
    });
  });

  test('hands the exit code on', () => {
    const { status, stdout, stderr } = launch(['missing.json'], folder);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toBe('missing.json could not be read: there is no such file or folder.\n');
  });
});
