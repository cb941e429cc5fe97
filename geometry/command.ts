/**
 * The headless command: a job file in, the sheet or the result out. The only file here that touches files, arguments and
 * exit codes. 0 = estimated (warnings are in the result); 2 = not usable, standard error says why and standard output is empty.
 */
import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { estimate } from './estimate.ts';
import { faultText, missing } from './job/fault.ts';
import { measured } from './job/measured.ts';
import { LARGEST_FILE, tooLarge } from './job/parse-text.ts';
import { readJob } from './job/read-job.ts';
import { calendarOf } from './sheet/calendar.ts';
import { sheetPage } from './sheet/html.ts';
import { toResult } from './sheet/result.ts';
import { sheetText } from './sheet/text.ts';
import type { Mm } from './units.ts';

const HELP = `Works out the filler, the mixes, the coat, the balance and the day for a job file.

  npm run --silent estimate -- FILE [--json | --sheet OUT.html | --calendar OUT.ics] [--cell MM]

  FILE                the job file
  --json              write the result as JSON instead of a sheet in plain text
  --sheet OUT.html    write the sheet as a page to print into OUT.html
  --calendar OUT.ics  write the steps of the day as an iCalendar file; the job has to say when work begins
  --cell MM           cell size of the depth maps in mm; without it each face gets a fitting one
  --help              show this

Example:

  npm run --silent estimate -- samples/scoured-plate.job.json --sheet sheet.html

Exit code 0: estimated, what should worry you stands under the warnings. Exit code 2: the job cannot be used, and why.
`;

/** Finer cells add nothing a gauge can measure, coarser ones miss the wear. */
const FINEST_CELL: Mm = 0.02;
const COARSEST_CELL: Mm = 10;

/** Where the command writes; the terminal unless told. */
interface Streams {
  out(text: string): void;
  err(text: string): void;
}

/**
 * @param args     what stands after the command's name
 * @param from     the folder relative paths start from
 * @returns        the exit code
 */
export function runCommand(args: readonly string[], from: string, streams: Streams = terminal()): 0 | 2 {
  const answer = answerTo(args, from);
  if ('fault' in answer) {
    streams.err(`${answer.fault}\n`);
    return 2;
  }
  streams.out(answer.text);
  return 0;
}

type Answer = { readonly text: string } | Refusal;
interface Refusal {
  readonly fault: string;
}

function answerTo(args: readonly string[], from: string): Answer {
  const request = readArguments(args);
  if ('fault' in request) return request;
  if (request.output === 'help') return { text: HELP };

  const file = readText(request.file, from);
  if ('fault' in file) return file;
  const { output } = request;
  if (typeof output === 'object' && isSameFile(request.file, output.file, from))
    return {
      fault: `--${output.kind}: ${output.file} is the job itself; write the ${output.kind} to another file.`,
    };
  const read = readJob(file.text);
  if ('faults' in read) return { fault: read.faults.map(faultText).join('\n') };

  const job = measured(read.job);
  const worked = withinReach(() => estimate(job, { cell: request.cell }));
  if ('fault' in worked) return worked;
  const { value: answer } = worked;
  if (output === 'json') return { text: `${JSON.stringify(toResult(answer), null, 2)}\n` };
  if (output === 'text') return { text: sheetText(answer) };
  if (output.kind === 'sheet') return writeText(output, from, sheetPage(answer));
  const calendar = calendarOf(toResult(answer), answer.job.title);
  if (calendar !== null) return writeText(output, from, calendar);
  if (job.plan.start !== null)
    return {
      fault: '--calendar: there is nothing to fill and nothing to coat, so there is no step to write.',
    };
  return { fault: faultText(missing('plan.start', 'for a calendar when work begins, "2026-12-01T07:00"')) };
}

interface Request {
  readonly file: string;
  readonly output: 'text' | 'json' | 'help' | OutputFile;
  readonly cell: Mm | null;
}

interface OutputFile {
  readonly kind: 'sheet' | 'calendar';
  readonly file: string;
}

/** Options that take a value, with an example of it. */
const EXAMPLES: ReadonlyMap<string, string> = new Map([
  ['cell', '0.5'],
  ['sheet', 'sheet.html'],
  ['calendar', 'day.ics'],
]);

function readArguments(args: readonly string[]): Request | Refusal {
  // Not strict: node's own sentences speak to programmers.
  const { tokens } = parseArgs({
    args: [...args],
    options: {
      json: { type: 'boolean' },
      sheet: { type: 'string' },
      calendar: { type: 'string' },
      cell: { type: 'string' },
      help: { type: 'boolean', short: 'h' },
    },
    allowPositionals: true,
    strict: false,
    tokens: true,
  });
  const files: string[] = [];
  const given = new Map<string, string>();
  for (const token of tokens) {
    if (token.kind === 'positional') files.push(token.value);
    if (token.kind !== 'option') continue;
    const { name, rawName, value = '' } = token;
    const example = EXAMPLES.get(name);
    const takesValue = example !== undefined;
    if (!takesValue && name !== 'json' && name !== 'help') {
      return {
        fault: `${rawName} is not an option. The options are --json, --sheet OUT.html, --calendar OUT.ics, --cell MM and --help.`,
      };
    }
    if (!takesValue && value !== '') return { fault: `${rawName} takes no value, but "${value}" was given.` };
    if (takesValue && (value === '' || (value.startsWith('--') && !token.inlineValue))) {
      return { fault: `${rawName} needs a value: --${name} ${example}` };
    }
    given.set(name, value);
  }

  if (given.has('help')) return { file: '', output: 'help', cell: null };
  if (files.length === 0) return { fault: 'No job file was named. Name one, or see --help for an example.' };
  if (files.length > 1)
    return { fault: `One job file at a time: ${files.length} were named (${files.join(', ')}).` };
  const asked = ['json', 'sheet', 'calendar'].filter((name) => given.has(name));
  if (asked.length > 1)
    return { fault: `Choose one of ${asked.map((name) => `--${name}`).join(' and ')}, not both.` };
  const output = outputFile(given);
  if (output !== null && /\.json$/i.test(output.file)) {
    const { kind, file } = output;
    return {
      fault: `--${kind}: ${file} is the name of a job, not of a ${kind === 'sheet' ? 'page' : 'calendar'}: --${kind} ${EXAMPLES.get(kind)}`,
    };
  }
  const cell = readCell(given.get('cell'));
  if (typeof cell === 'object' && cell !== null) return cell;
  return {
    file: files[0],
    output: output ?? (given.has('json') ? 'json' : 'text'),
    cell,
  };
}

function outputFile(given: ReadonlyMap<string, string>): OutputFile | null {
  for (const kind of ['sheet', 'calendar'] as const) {
    const file = given.get(kind);
    if (file !== undefined) return { kind, file };
  }
  return null;
}

function readCell(text: string | undefined): Mm | null | Refusal {
  if (text === undefined) return null;
  const cell = /^\d*[.,]?\d+$/.test(text) ? Number(text.replace(',', '.')) : Number.NaN;
  if (cell >= FINEST_CELL && cell <= COARSEST_CELL) return cell;
  return { fault: `--cell: "${text}" is not a number of mm from ${FINEST_CELL} to ${COARSEST_CELL}.` };
}

function readText(file: string, from: string): Answer {
  const path = resolve(from, file);
  try {
    const found = statSync(path);
    if (found.isDirectory()) return { fault: `${file} could not be read: it is a folder.` };
    // A device could be read for ever.
    if (!found.isFile()) return { fault: `${file} could not be read: it is not a file.` };
    if (found.size >= LARGEST_FILE) return { fault: faultText(tooLarge(found.size)) };
    return { text: readFileSync(path, 'utf8') };
  } catch (error) {
    return { fault: `${file} could not be read: ${reason(error)}.` };
  }
}

function writeText({ kind, file }: OutputFile, from: string, text: string): Answer {
  try {
    writeFileSync(resolve(from, file), text);
    return { text: `The ${kind} is in ${file}\n` };
  } catch (error) {
    return { fault: `${file} could not be written: ${reason(error)}.` };
  }
}

/** Also by another name: the sheet must not take the place of the job it was made from. */
function isSameFile(file: string, page: string, from: string): boolean {
  try {
    const [job, sheet] = [file, page].map((name) => statSync(resolve(from, name)));
    return job.dev === sheet.dev && job.ino === sheet.ino;
  } catch {
    return false;
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  ENOTDIR: 'part of its path is a file and not a folder',
  EISDIR: 'that is a folder',
  EACCES: 'it is not allowed for you',
  EPERM: 'it is not allowed for you',
  EROFS: 'nothing can be written there',
  ENOSPC: 'the disk is full',
  ENAMETOOLONG: 'its name is too long',
  ELOOP: 'its links lead round in a circle',
};

function reason(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return REASONS[code] ?? `the system says ${code === '' ? 'no more' : code}`;
}

/**
 * The engine refuses a cell size that would need more cells than it can hold with a RangeError that says so in a sentence.
 * One of the language itself means that memory ran out on the way.
 */
function withinReach<T>(work: () => T): { readonly value: T } | Refusal {
  try {
    return { value: work() };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    if (error.message.startsWith('cell: ')) return { fault: error.message };
    return { fault: 'The job takes more memory than there is. Try larger cells: --cell 1' };
  }
}

function terminal(): Streams {
  process.stdout.on('error', (error) => {
    // A reader such as `head` may close the pipe early; that is no fault of the job.
    if ('code' in error && error.code === 'EPIPE') return;
    process.exitCode = 2;
    process.stderr.write(`The answer could not be written: ${reason(error)}.\n`);
  });
  return { out: (text) => process.stdout.write(text), err: (text) => process.stderr.write(text) };
}
