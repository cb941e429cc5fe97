import { type JobFile, jobSchema } from './job-file.ts';
import { LARGEST_FILE } from './parse-text.ts';
import { z } from './zod.ts';

/**
 * A job as the text of its file: fields we know in a fixed order, the others after them as they came; whatever fits stands on
 * one line, so that a mark is a line and a change to it a changed line. Opened again it is the same job, saved again the same bytes.
 * Fields that are undefined are left out. A job with faults is written all the same, so nobody's work is lost.
 */
export function writeJob(job: JobFile): string {
  const text = `${written(job, jobSchema, 0)}\n`;
  // The line breaks of a huge job must not push it over what may be opened.
  return text.length < LARGEST_FILE ? text : `${JSON.stringify(JSON.parse(text))}\n`;
}

const LINE_WIDTH = 110;
const INDENT = 2;
const COMMA = 1;

/**
 * @param schema  says the order of the fields; null where we know none
 * @param before  characters that stand before the value on its line
 */
function written(value: unknown, schema: Schema, indent: number, before = indent): string {
  const inner = plainSchema(schema, value);
  const line = onOneLine(value, inner, LINE_WIDTH - before - COMMA);
  if (line !== null || typeof value !== 'object' || value === null) return line ?? 'null';
  const pad = ' '.repeat(indent + INDENT);
  if (Array.isArray(value)) {
    const lines = isPlainList(value)
      ? filled(value, LINE_WIDTH - pad.length - COMMA)
      : value.map((item) => written(item, itemSchema(inner), indent + INDENT));
    return `[\n${pad}${lines.join(`,\n${pad}`)}\n${' '.repeat(indent)}]`;
  }
  const fields = orderedFields(value, inner).map(([name, field, fieldSchema]) => {
    const start = `${JSON.stringify(name)}: `;
    return start + written(field, fieldSchema, indent + INDENT, pad.length + start.length);
  });
  return `{\n${pad}${fields.join(`,\n${pad}`)}\n${' '.repeat(indent)}}`;
}

/** The value on one line, null when it takes more than `room` characters. Plain values always fit. */
function onOneLine(value: unknown, schema: Schema, room: number): string | null {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  let line = '';
  const add = (name: string, item: unknown, inner: Schema): boolean => {
    const start = `${line === '' ? '' : `${line}, `}${name}`;
    const part = onOneLine(item, plainSchema(inner, item), room - start.length - 2);
    if (part === null || start.length + part.length + 2 > room) return false;
    line = start + part;
    return true;
  };
  if (Array.isArray(value)) {
    const inner = itemSchema(schema);
    return value.every((item) => add('', item, inner)) ? `[${line}]` : null;
  }
  const fits = orderedFields(value, schema).every(([name, field, inner]) =>
    add(`${JSON.stringify(name)}: `, field, inner),
  );
  if (!fits || line.length + 4 > room) return null;
  return line === '' ? '{}' : `{ ${line} }`;
}

/** Numbers, texts and points side by side, as many as go on a line of `room` characters. */
function filled(list: readonly unknown[], room: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const item of list) {
    const plain = Array.isArray(item)
      ? `[${item.map((inner) => JSON.stringify(inner)).join(', ')}]`
      : JSON.stringify(item);
    if (line !== '' && line.length + plain.length + 2 > room) {
      lines.push(line);
      line = '';
    }
    line = line === '' ? plain : `${line}, ${plain}`;
  }
  return [...lines, line];
}

function isPlainList(list: readonly unknown[]): boolean {
  const isPlain = (item: unknown): boolean => typeof item !== 'object' || item === null;
  return list.every((item) => (Array.isArray(item) ? item.every(isPlain) : isPlain(item)));
}

type Schema = z.core.$ZodType | null;
type Field = readonly [name: string, value: unknown, schema: Schema];

/** Those of the schema first, in its order. */
function orderedFields(value: object, schema: Schema): readonly Field[] {
  const shape: Readonly<Record<string, z.core.$ZodType>> =
    schema instanceof z.ZodMiniObject ? schema.shape : {};
  const known = Object.keys(shape).filter((name) => Object.hasOwn(value, name));
  const others = Object.keys(value).filter((name) => !Object.hasOwn(shape, name));
  const field = (name: string, inner: Schema): Field => [name, Reflect.get(value, name), inner];
  return [
    ...known.map((name) => field(name, shape[name])),
    ...others.map((name) => field(name, null)),
  ].filter(([, there]) => there !== undefined);
}

function itemSchema(schema: Schema): Schema {
  return schema instanceof z.ZodMiniArray ? schema.def.element : null;
}

/** The schema that holds for the value: out of its wrapping, and of several kinds the value's own. */
function plainSchema(schema: Schema, value: unknown): Schema {
  if (
    schema instanceof z.ZodMiniOptional ||
    schema instanceof z.ZodMiniNullable ||
    schema instanceof z.ZodMiniDefault
  ) {
    return plainSchema(schema.def.innerType, value);
  }
  if (!(schema instanceof z.ZodMiniDiscriminatedUnion) || typeof value !== 'object' || value === null)
    return schema;
  const kind: unknown = Reflect.get(value, 'kind');
  return (
    schema.def.options.find(
      (option) => option instanceof z.ZodMiniObject && z.safeParse(option.shape.kind, kind).success,
    ) ?? null
  );
}
