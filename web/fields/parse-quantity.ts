/**
 * What was typed into a number field, as a value or as a sentence that says what to type instead. A wear depth that is ten times
 * wrong without a word is the worst this field could do, so nothing that can be read in two ways is taken.
 */
import {
  type Quantity,
  type ScreenUnits,
  shownUnit,
  toFile,
  typedUnits,
  type Unit,
} from './quantity-units.ts';
import { limitText, type Range } from './range-text.ts';

export type Parsed = { readonly value: number } | Refused;
interface Refused {
  /** A sentence for the person. */
  readonly fault: string;
}

/**
 * Comma and dot are both decimal marks; `1 1/2`, `1-1/2` and `½` are fractions; a typed unit wins over the screen's.
 * @param text   as typed
 * @param units  the screen's, for a number without a unit
 * @returns      the value in the file's unit at full precision, or why not
 */
export function parseQuantity(
  text: string,
  quantity: Quantity,
  units: ScreenUnits,
  range: Range = {},
): Parsed {
  const plain = plainSigns(text);
  const shown = shownUnit(quantity, units);
  if (plain === '') return { fault: `This is empty. Type a number, like ${withUnit('3.5', shown)}.` };

  const match = NUMBER.exec(plain);
  if (match === null) return notANumber(text, shown);
  const rest = match[4];
  if (GROUPED.test(rest)) return groupedDigits(text, plain, shown);
  if (/^e[+-]?\d/i.test(rest))
    return { fault: `"${text.trim()}" has a power of ten. Type the number out, like 3.5.` };
  if (rest !== '' && !/^[a-z°%"]/i.test(rest)) return notANumber(text, shown);

  const typed = readUnit(rest, quantity);
  if (rest !== '' && typed === null) return unknownUnit(text, quantity);
  const isFraction = match[2] !== undefined;
  if (isFraction && typed === null && quantity === 'length' && units === 'mm') {
    return { fault: `"${text.trim()}" needs its unit here. Type ${plain} in, or a number of mm like 3.5.` };
  }
  const size = isFraction ? readFraction(match[2]) : Number(match[3].replace(',', '.'));
  if (size === null || !Number.isFinite(size)) return notANumber(text, shown);

  const signed = match[1] === '-' ? -size : size;
  const value = toFile(signed, typed ?? shown);
  // -0 would be written differently from 0.
  return withinRange(value === 0 ? 0 : value, { text: shorten(text), quantity, units, range });
}

/** Sign, then a fraction (with or without a whole number before it) or a decimal number, then whatever stands behind. */
const NUMBER = /^([+-]?) ?(?:((?:\d+(?: ?- ?| ))?\d+ ?\/ ?\d+)|(\d+[.,]?\d*|[.,]\d+)) ?(.*)$/;

/** More digits behind a number that has ended: a second mark, a blank, an apostrophe or a low line, as thousands are set apart. */
const GROUPED = /^[.,'_]|^\d/;

/** One spelling for the signs that keyboards and data sheets have several of. */
function plainSigns(text: string): string {
  return text
    .replace(/[\u00bc-\u00be\u2150-\u215e]/g, ' $&')
    .normalize('NFKC')
    .replace(/\u2044/g, '/')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/\u2032\u2032|''|[\u201c-\u201f]/g, '"')
    .replace(/[\u2018\u2019\u2032`]/g, "'")
    .replace(/\u03bc/g, 'u')
    .replace(/\s+/g, ' ')
    .trim();
}

function readFraction(text: string): number | null {
  const [whole, top, bottom] = /^(?:(\d+)(?: ?- ?| ))?(\d+) ?\/ ?(\d+)$/.exec(text)?.slice(1) ?? [];
  const part = Number(top) / Number(bottom);
  // "1 234/5" is more likely a slip than forty-seven and four fifths.
  if (whole !== undefined && part >= 1) return null;
  return Number(whole ?? 0) + part;
}

function readUnit(text: string, quantity: Quantity): Unit | null {
  const spelling = text.toLowerCase().replace(/ /g, '').replace(/\.$/, '');
  return typedUnits(quantity).find((unit) => unit.spellings.includes(spelling) && spelling !== '') ?? null;
}

/** What turning a unit into the file's may add, as a share. */
const ROUNDING = 1e-14;

function withinRange(
  value: number,
  typed: {
    readonly text: string;
    readonly quantity: Quantity;
    readonly units: ScreenUnits;
    readonly range: Range;
  },
): Parsed {
  const { text, quantity, units, range } = typed;
  const shown = shownUnit(quantity, units);
  const show = (limit: number, end: 'min' | 'max') => limitText(limit, end, quantity, units);
  if (!Number.isFinite(value)) return notANumber(text, shown);
  // 268.2 in times 25.4 is a rounding more than the 6812.28 mm it stands for.
  const limit = [range.min, range.max].find(
    (end) => end !== undefined && Math.abs(value - end) <= ROUNDING * Math.abs(end),
  );
  if (limit !== undefined) return { value: limit };
  if (range.min !== undefined && value < range.min) {
    return {
      fault: `"${text}" is less than ${show(range.min, 'min')}. Type ${show(range.min, 'min')} or more.`,
    };
  }
  if (range.max !== undefined && value > range.max) {
    return {
      fault: `"${text}" is more than ${show(range.max, 'max')}. Type ${show(range.max, 'max')} or less.`,
    };
  }
  return { value };
}

function notANumber(text: string, shown: Unit): Refused {
  return { fault: `"${shorten(text)}" is not a number. Type one like ${withUnit('3.5', shown)}.` };
}

function groupedDigits(text: string, plain: string, shown: Unit): Refused {
  return {
    fault: `"${shorten(text)}" has more than one mark or a gap in it. Type it without marks for thousands, like ${withUnit(ungrouped(plain), shown)}.`,
  };
}

/** The likeliest meaning, as an example of what to type: the last mark is the decimal one unless its like stands before it. */
function ungrouped(plain: string): string {
  const digits = /^[+-]? ?([\d.,'_ ]*\d)/.exec(plain)?.[1] ?? '1234.5';
  const last = Math.max(digits.lastIndexOf('.'), digits.lastIndexOf(','));
  const isDecimal = last >= 0 && digits.indexOf(digits[last]) === last;
  const onlyDigits = (part: string) => part.replace(/\D/g, '');
  if (!isDecimal) return onlyDigits(digits);
  return `${onlyDigits(digits.slice(0, last))}.${onlyDigits(digits.slice(last))}`;
}

function unknownUnit(text: string, quantity: Quantity): Refused {
  const known = typedUnits(quantity).flatMap((unit) => (unit.symbol === '' ? [] : [unit.symbol]));
  if (known.length === 0) return { fault: `"${shorten(text)}" has a unit. Type the number alone, like 3.5.` };
  const list = known.length === 1 ? known[0] : `${known.slice(0, -1).join(', ')} or ${known.at(-1)}`;
  return { fault: `"${shorten(text)}" has a unit that does not fit here. Use ${list}.` };
}

function withUnit(figure: string, unit: Unit): string {
  return unit.symbol === '' ? figure : `${figure} ${unit.symbol}`;
}

function shorten(text: string): string {
  const trimmed = text.trim();
  return trimmed.length <= 24 ? trimmed : `${trimmed.slice(0, 23)}…`;
}
