/** Which plate and impeller the job stands against each other; without the 3D library, since the first page asks. */
import type { JobFile } from '../../../geometry/job/job-file.ts';

export type NamedPair =
  | { readonly plate: string; readonly impeller: string }
  /** Why both cannot be drawn, in a sentence. */
  | { readonly without: string };

export function namedPair({ parts, clearance }: Pick<JobFile, 'parts' | 'clearance'>): NamedPair {
  const has = (kind: JobFile['parts'][number]['kind'], id?: string) =>
    parts.some((part) => part.kind === kind && (id === undefined || part.id === id));
  if (!has('wear-plate', clearance?.plate))
    return { without: 'Add a wear plate, and both stand assembled here.' };
  if (!has('impeller', clearance?.impeller))
    return { without: 'Add an impeller, and both stand assembled here.' };
  if (clearance === undefined)
    return { without: 'Ask for the clearance, and both parts stand assembled here.' };
  return { plate: clearance.plate, impeller: clearance.impeller };
}
