import type { JobFile, PartFile } from '../../../geometry/job/job-file.ts';

/** Four poles at 50 Hz with a little slip, and the grade pumps are commonly balanced to (ISO 21940-11, from memory). */
const USUAL = { speed: 1450, grade: 6.3 };

/** What a rotor starts with: the first impeller, not weighed; null when no part of the job turns. */
export function startingRotor(parts: readonly PartFile[]): NonNullable<JobFile['rotor']> | null {
  const impeller = parts.find(({ kind }) => kind === 'impeller');
  return impeller === undefined ? null : { part: impeller.id, ...USUAL };
}
