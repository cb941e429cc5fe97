import { type Fault, WHOLE_FILE } from './fault.ts';
import { scanJson } from './json-break.ts';

/** 50 MB: a scan of the finest grid takes a fifth of it. Larger files are refused unread, so that a screen does not freeze on them. */
export const LARGEST_FILE = 50_000_000;

/** A text as a JSON value, or the one fault that stops it being read: too large, empty, cut short, not JSON. Never throws. */
export function parseText(text: string): { readonly value: unknown } | { readonly fault: Fault } {
  const bytes = byteLength(text);
  if (bytes >= LARGEST_FILE) return { fault: tooLarge(bytes) };
  const plain = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (plain.trim() === '') {
    return {
      fault: { field: WHOLE_FILE, found: 'nothing', needs: 'a job', problem: 'empty, needs a job' },
    };
  }
  try {
    return { value: JSON.parse(plain) };
  } catch {
    const { broken, bareNumbers } = scanJson(plain);
    if (broken === null && bareNumbers.length > 0) return { value: parseBareNumbers(plain, bareNumbers) };
    return { fault: notJson(plain, broken?.at ?? plain.length, broken?.needs ?? 'a job') };
  }
}

/** The fault of a file of so many bytes; a screen asks before it reads one. */
export function tooLarge(bytes: number): Fault {
  const megabytes = (size: number): string => `${(size / 1e6).toFixed(size % 1e6 === 0 ? 0 : 1)} MB`;
  return {
    field: WHOLE_FILE,
    found: megabytes(bytes),
    needs: `smaller than ${megabytes(LARGEST_FILE)}`,
  };
}

/** A value that the end of the file cut off: `118.`, `-`, `tru`. */
const BEGUN = /^(?:-|-?\d+(?:\.|\.?\d*[eE][+-]?)|t(?:ru?)?|f(?:a(?:ls?)?)?|n(?:ul?)?)$/;
/** What bytes that are no UTF-8 are read as, and signs that no text holds. */
const NO_TEXT = /[^\P{Cc}\t\n\r]|\p{Cf}|\uFFFD/u;
/** Looks like a space and is none: from a web page or a word processor. */
const STRANGE_BLANK = /^[^\S\t\n\r ]$/;

function notJson(text: string, at: number, needs: string): Fault {
  const before = text.slice(0, at).split('\n');
  const place = `line ${before.length}, column ${before[before.length - 1].length + 1}`;
  const rest = text.slice(at).trimEnd();
  if (rest === '' || (needs.startsWith('a value') && BEGUN.test(rest))) {
    return {
      field: WHOLE_FILE,
      found: `the end at ${place}`,
      needs,
      problem: `cut short at ${place}, needs ${needs}`,
    };
  }
  const word = /^(?:[\w.+-]+|\S)/.exec(text.slice(at, at + 24))?.[0] ?? text[at];
  if (NO_TEXT.test(word)) {
    const found = `something other than text at ${place}`;
    return { field: WHOLE_FILE, found, needs, problem: `${found}, needs a job saved as text in UTF-8` };
  }
  const found = STRANGE_BLANK.test(word) ? 'a blank that is no ordinary space' : JSON.stringify(word);
  return {
    field: WHOLE_FILE,
    found: `${found} at ${place}`,
    needs,
    problem: `not JSON at ${place}: found ${found}, needs ${needs}`,
  };
}

/** Reads NaN and Infinity as the numbers they name, so that the field they stand in is reported rather than the file. */
function parseBareNumbers(text: string, bareNumbers: readonly (readonly [number, number])[]): unknown {
  const stand = '\\u0000NaN';
  let readable = '';
  let last = 0;
  for (const [start, end] of bareNumbers) {
    const word = text.slice(start, end);
    readable += text.slice(last, start);
    readable += word === 'NaN' ? `"${stand}"` : word.startsWith('-') ? '-1e999' : '1e999';
    last = end;
  }
  return JSON.parse(readable + text.slice(last), (_key, value) =>
    value === '\u0000NaN' ? Number.NaN : value,
  );
}

/** In UTF-8. */
function byteLength(text: string): number {
  let bytes = text.length;
  if (bytes >= LARGEST_FILE) return bytes;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    // A surrogate is one half of a four-byte character.
    if (unit >= 0x80) bytes += unit < 0x800 || (unit >= 0xd800 && unit < 0xe000) ? 1 : 2;
  }
  return bytes;
}
