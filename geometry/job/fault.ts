/**
 * A mistake in what the person wrote, as a value: which field, what it holds, what it needs.
 * `faultText` is the one sentence made of them; the command prints it and a form shows it beside the field.
 */
export interface Fault {
  /** Path in the job file such as `parts[0].boreDiameter`; `file` when it is the file itself. */
  readonly field: string;
  /** What stands there: `330`, `the text "thick"`, `missing`. */
  readonly found: string;
  /** What should stand there, such that "330 is not …" reads well. */
  readonly needs: string;
  /** The sentence after the field, where "found is not needs" would not read well. */
  readonly problem?: string;
}

/** The field for a fault of the file as a whole. */
export const WHOLE_FILE = 'file';

/** `parts[0].boreDiameter: 330 is not smaller than outerDiameter 320`. */
export function faultText(fault: Fault): string {
  return `${fault.field}: ${fault.problem ?? `${fault.found} is not ${fault.needs}`}`;
}

/** The fault of a field that is not there. */
export function missing(field: string, needs: string): Fault {
  return { field, found: 'missing', needs, problem: `missing, needs ${needs}` };
}

/** `['parts', 0, 'boreDiameter']` as `parts[0].boreDiameter`. */
export function fieldPath(path: readonly PropertyKey[]): string {
  if (path.length === 0) return WHOLE_FILE;
  let field = '';
  for (const key of path) {
    if (typeof key === 'number') field += `[${key}]`;
    else if (/^[A-Za-z_]\w*$/.test(String(key))) field += field === '' ? String(key) : `.${String(key)}`;
    else field += `[${JSON.stringify(String(key))}]`;
  }
  return field;
}

const LONGEST_SHOWN = 48;

/** A value as a person would write it, short enough for a sentence. */
export function shown(value: unknown): string {
  if (value === undefined) return 'missing';
  if (typeof value === 'number') return String(value);
  if (typeof value === 'string') return quoted(value);
  if (Array.isArray(value)) {
    const words = value.length > LONGEST_SHOWN ? null : JSON.stringify(value);
    return words !== null && words.length <= LONGEST_SHOWN ? words : `a list of ${value.length}`;
  }
  return typeof value === 'object' && value !== null ? 'an object' : String(value);
}

function quoted(value: string): string {
  return JSON.stringify(value.length > LONGEST_SHOWN ? `${value.slice(0, LONGEST_SHOWN)}…` : value);
}
