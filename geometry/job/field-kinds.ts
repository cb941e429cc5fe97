/**
 * The kinds of value a field of the job file can hold. Each carries, as its only error text, the words for what the field needs
 * ("a length in mm, more than 0 and at most 10000"), so a fault can be put into a sentence whatever was wrong with the value.
 */
import { z } from './zod.ts';

interface Range {
  /** Excluded lower bound. */
  readonly above?: number;
  readonly least?: number;
  /** Excluded upper bound. */
  readonly below?: number;
  readonly most?: number;
}

/** A finite number of `what` (noun phrase with its unit) in a range. */
export function quantity(what: string, range: Range) {
  const error = `${what}, ${rangeWords(range)}`;
  const bounds: z.core.$ZodCheck<number>[] = [];
  if (range.above !== undefined) bounds.push(z.gt(range.above, { error }));
  if (range.least !== undefined) bounds.push(z.gte(range.least, { error }));
  if (range.below !== undefined) bounds.push(z.lt(range.below, { error }));
  if (range.most !== undefined) bounds.push(z.lte(range.most, { error }));
  return z.number({ error }).check(...bounds);
}

/** A whole number from `least` to `most`. */
export function count(what: string, least: number, most: number) {
  const error = `${what}, a whole number from ${least} to ${most}`;
  return z.number({ error }).check(z.int({ error }), z.gte(least, { error }), z.lte(most, { error }));
}

export function oneOf<const Choices extends readonly [string, ...string[]]>(choices: Choices) {
  const last = choices[choices.length - 1];
  const others = choices.slice(0, -1).map((choice) => `"${choice}"`);
  return z.enum(choices, { error: `${others.join(', ')} or "${last}"` });
}

export const flag = z.boolean({ error: 'true or false' });

export function text(what: string, longest: number) {
  const error = `${what}, text of at most ${longest} characters`;
  return z.string({ error }).check(z.maxLength(longest, { error }));
}

/** Text that matches `pattern`. */
export function patterned(pattern: RegExp, error: string) {
  return z.string({ error }).check(z.regex(pattern, { error }));
}

/** The name of a face; `error` gives examples. */
export function faceName(error: string) {
  return z.string({ error }).check(z.minLength(1, { error }), z.maxLength(64, { error }));
}

export function list<Item extends z.ZodMiniType>(item: Item, what: string, least: number, most: number) {
  const error = `a list of ${least === 0 ? 'at most' : `${least} to`} ${most} ${what}`;
  return z.array(item, { error }).check(z.minLength(least, { error }), z.maxLength(most, { error }));
}

export function pair<Item extends z.ZodMiniType>(item: Item, what: string) {
  return z.tuple([item, item], { error: what });
}

/** An object of named fields; fields we do not know stay in it. */
export function record<Shape extends z.core.$ZodShape>(what: string, shape: Shape, about: About = {}) {
  return published(z.looseObject(shape, { error: `${what} in braces, { … }` }), about);
}

/** One of several records, told apart by its `kind`. `kinds` are the words for which there are. */
export function byKind<const Records extends readonly [z.ZodMiniObject, ...z.ZodMiniObject[]]>(
  what: string,
  records: Records,
  kinds: string,
  about: About = {},
) {
  const error = ({ input }: { readonly input?: unknown }): string =>
    typeof input === 'object' && input !== null && !Array.isArray(input)
      ? kinds
      : `${what} in braces, { "kind": … }`;
  return published(z.discriminatedUnion('kind', records, { error }), about);
}

/** A field that may be left out. `description` says its unit, and what holds then, to whoever reads the published schema. */
export function optional<Kind extends z.ZodMiniType>(kind: Kind, description?: string) {
  const field = z.optional(kind);
  return description === undefined ? field : published(field, { description });
}

/** The kind with words of its own in the published schema; `kind` itself stays as it was. */
export function described<Kind extends z.ZodMiniType>(kind: Kind, description: string): Kind {
  return published(kind.clone(), { description });
}

/** What the published schema says about a kind: `id`, its name there, `description`, and rules only that schema states. */
type About = z.core.GlobalMeta;

/** Writes into the library's list of what is said about each kind. */
function published<Kind extends z.ZodMiniType>(kind: Kind, about: About): Kind {
  z.globalRegistry.add(kind, about);
  return kind;
}

function rangeWords(range: Range): string {
  const words: string[] = [];
  if (range.above !== undefined) words.push(`more than ${range.above}`);
  if (range.least !== undefined) words.push(`at least ${range.least}`);
  if (range.below !== undefined) words.push(`less than ${range.below}`);
  if (range.most !== undefined) words.push(`at most ${range.most}`);
  return words.join(' and ');
}

/** Nothing that fits on a bench is larger; a slip in the unit is. */
export const LARGEST_MM = 10_000;

export const length = quantity('a length in mm', { above: 0, most: LARGEST_MM });
export const depth = quantity('a depth in mm', { least: 0, most: LARGEST_MM });
export const allowance = quantity('a thickness in mm', { least: 0, most: 100 });
/** Either coordinate of a point on a face: mm or deg. */
export const coordinate = quantity('a number in mm or deg', { least: -100_000, most: 100_000 });
export const angle = quantity('an angle in deg', { least: -3600, most: 3600 });
export const density = quantity('a density in g/cm3', { above: 0, most: 25 });
export const minutes = quantity('a time in minutes', { above: 0, most: 100_000 });
export const temperature = quantity('a temperature in degC', { least: -40, most: 150 });
export const percent = quantity('a percentage', { least: 0, most: 500 });
export const grams = quantity('a mass in g', { above: 0, most: 1_000_000 });
export const millilitres = quantity('a volume in cm3', { above: 0, most: 1_000_000 });
export const money = quantity('a price', { least: 0, most: 1_000_000 });

export const point = pair(coordinate, 'two numbers, [first, second]');

const LOCAL_TIME = /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])T(?:[01]\d|2[0-3]):[0-5]\d$/;
const CALENDAR_DAY = /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])$/;
const CLOCK_TIME = /^(?:[01]\d|2[0-3]):[0-5]\d$/;
const INSTANT =
  /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])T(?:[01]\d|2[0-3]):[0-5]\d:[0-5]\d(?:\.\d{1,3})?(?:Z|[+-](?:0\d|1[0-4]):[0-5]\d)$/;

/** A day and a time by the clock on the wall of the shop, no zone (ISO 8601): `2026-12-01T07:00`. */
export const localTime = dated(LOCAL_TIME, 'a day and a time by the shop clock, "2026-12-01T07:00"');
/** A day (ISO 8601): `2026-12-01`. */
export const calendarDay = dated(CALENDAR_DAY, 'a day, "2026-12-01"');
/** A time of day by that clock. */
export const clockTime = patterned(CLOCK_TIME, 'a time of day, "15:30"');
/** A moment with its distance from UTC (ISO 8601, RFC 3339). */
export const instant = dated(INSTANT, 'a moment with its zone, "2026-12-01T07:12:30+01:00"');

/** Text that matches `pattern` and begins with a day there is. */
function dated(pattern: RegExp, error: string) {
  const isDay = (text: string) => !Number.isNaN(Date.parse(text)) && isInMonth(text);
  return patterned(pattern, error).check(z.refine(isDay, { error }));
}

/** Whether the day is in the month: the language's own reader takes 31 February for 3 March. */
function isInMonth(text: string): boolean {
  const [year, month, day] = text.slice(0, 10).split('-').map(Number);
  return day <= new Date(Date.UTC(year, month, 0)).getUTCDate();
}
