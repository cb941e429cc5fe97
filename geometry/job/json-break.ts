/**
 * Where a text stops being JSON, and what would be needed there. The parser built into the language says this differently
 * in each browser and often not at all.
 */
export interface JsonScan {
  /** First place that is not JSON; null when there is none but the bare numbers below. */
  readonly broken: JsonBreak | null;
  /** Start and end of each NaN, Infinity or -Infinity written where a value may stand: no JSON, but a common slip. */
  readonly bareNumbers: readonly (readonly [start: number, end: number])[];
}

export interface JsonBreak {
  readonly at: number;
  readonly needs: string;
}

const SPACE = /[ \t\r\n]*/y;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.])/y;
const WORD = /(?:true|false|null)(?!\w)/y;
const BARE_NUMBER = /(?:NaN|[+-]?Infinity)(?!\w)/y;

/** Limits of the scan, far beyond any job: what passes them is told at once, however large the file. */
const DEEPEST_SCAN = 1000;
const MOST_BARE = 10_000;

type Place = 'value' | 'value or ]' | 'name' | 'name or }' | 'after value';

const NEEDS = {
  value: 'a value',
  'value or ]': 'a value or a closing ]',
  name: 'a field name in double quotes, as after every comma',
  'name or }': 'a field name in double quotes or a closing }',
};

export function scanJson(text: string): JsonScan {
  const open: ('{' | '[')[] = [];
  const bareNumbers: [number, number][] = [];
  const stop = (at: number, needs: string): JsonScan => ({ broken: { at, needs }, bareNumbers });
  let place: Place = 'value';
  let at = skip(SPACE, text, 0);

  while (at < text.length || place !== 'after value' || open.length > 0) {
    const sign = text[at];
    if (place === 'after value') {
      const inside = open[open.length - 1];
      if (inside === undefined) return stop(at, 'nothing after the closing brace');
      const closing = inside === '{' ? '}' : ']';
      if (sign === closing) open.pop();
      else if (sign === ',') place = inside === '{' ? 'name' : 'value';
      else return stop(at, `a comma or a closing ${closing}`);
      at += 1;
    } else if (place === 'name' || place === 'name or }') {
      if (sign === '}' && place === 'name or }') {
        open.pop();
        place = 'after value';
        at += 1;
      } else {
        if (sign !== '"') return stop(at, NEEDS[place]);
        const end = stringEnd(text, at);
        if (typeof end !== 'number') return stop(end.at, end.needs);
        at = skip(SPACE, text, end);
        if (text[at] !== ':') return stop(at, 'a colon');
        place = 'value';
        at += 1;
      }
    } else if (sign === '{' || sign === '[') {
      if (open.length === DEEPEST_SCAN) return stop(at, 'less nesting');
      open.push(sign);
      place = sign === '{' ? 'name or }' : 'value or ]';
      at += 1;
    } else if (sign === ']' && place === 'value or ]') {
      open.pop();
      place = 'after value';
      at += 1;
    } else if (sign === '"') {
      const end = stringEnd(text, at);
      if (typeof end !== 'number') return stop(end.at, end.needs);
      place = 'after value';
      at = end;
    } else {
      const start = at;
      at = Math.max(skip(NUMBER, text, at), skip(WORD, text, at));
      if (at === start) {
        at = skip(BARE_NUMBER, text, at);
        if (at === start || bareNumbers.length === MOST_BARE) return stop(start, NEEDS[place]);
        bareNumbers.push([start, at]);
      }
      place = 'after value';
    }
    at = skip(SPACE, text, at);
  }
  return { broken: null, bareNumbers };
}

/** The end of what `pattern` (sticky) matches at `at`, `at` itself when it does not match. */
function skip(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : at;
}

/** One past the closing quote of the string that opens at `start`, or where it breaks. */
function stringEnd(text: string, start: number): number | JsonBreak {
  for (let at = start + 1; at < text.length; at++) {
    const sign = text[at];
    if (sign === '"') return at + 1;
    if (sign < ' ') return { at, needs: 'a closing double quote on the same line' };
    if (sign === '\\') {
      const code = /^(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/.exec(text.slice(at + 1, at + 6));
      if (code === null) return { at, needs: 'a proper escape such as \\n or \\\\' };
      at += code[0].length;
    }
  }
  return { at: text.length, needs: 'a closing double quote' };
}
