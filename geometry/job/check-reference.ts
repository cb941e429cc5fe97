import { type Fault, shown } from './fault.ts';
import type { JobFile } from './job-file.ts';
import type { Readable } from './readable.ts';

type Parts = NonNullable<Readable<JobFile>['parts']>;

/** The fault of an id no part has, or a part of the wrong kind has. */
export function checkReference(
  id: string | null | undefined,
  parts: Parts,
  field: string,
  kind?: 'wear-plate' | 'impeller',
): Fault[] {
  if (id == null || parts.some((part) => part === null || part.id == null)) return [];
  const named = parts.filter((part) => part?.id === id);
  const fits = parts.filter((part) => kind === undefined || part?.kind === kind || part?.kind == null);
  if (named.some((part) => fits.includes(part))) return [];
  const what = kind === undefined ? 'a part' : kind === 'impeller' ? 'an impeller' : 'a wear plate';
  const ids = fits.map((part) => shown(part?.id)).join(', ');
  const needs = `the id of ${what} of this job${ids === '' ? ', which has none' : `: ${ids}`}`;
  return [{ field, found: shown(id), needs }];
}
