import { type Fault, fieldPath, missing, shown } from './fault.ts';
import type { z } from './zod.ts';

type Issue = z.core.$ZodIssue;

/** What the schema objects to, one fault a field. An issue's message is what the field needs: see `field-kinds`. */
export function schemaFaults(issues: readonly Issue[], value: unknown): Fault[] {
  return issues.map((issue) => {
    const field = fieldPath(issue.path);
    const there = valueAt(value, issue.path);
    if (there === undefined) return missing(field, issue.message);
    return { field, found: found(issue, there), needs: issue.message };
  });
}

/** For the few places a schema states no words of its own; never the library's. */
export function fallbackNeeds(issue: z.core.$ZodRawIssue): string {
  return issue.code === 'invalid_type' ? `of the kind ${issue.expected}` : 'a value this field can hold';
}

function found(issue: Issue, there: unknown): string {
  return typeof there === 'string' && !takesText(issue) ? `the text ${shown(there)}` : shown(there);
}

/** False where a number, a list or an object is wanted. */
function takesText(issue: Issue): boolean {
  if (issue.code === 'invalid_value') return typeof issue.values[0] === 'string';
  if (issue.code === 'invalid_union') return issue.discriminator !== undefined;
  return issue.code !== 'invalid_type';
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  let there = value;
  for (const key of path) {
    if (typeof there !== 'object' || there === null) return undefined;
    there = Object.hasOwn(there, key) ? Reflect.get(there, key) : undefined;
  }
  return there;
}
