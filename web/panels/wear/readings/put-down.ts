import { faultText } from '../../../../geometry/job/fault.ts';
import type { PartFile } from '../../../../geometry/job/job-file.ts';
import type { FacePoint, Mm } from '../../../../geometry/units.ts';
import { parseQuantity } from '../../../fields/parse-quantity.ts';
import type { ScreenUnits } from '../../../fields/quantity-units.ts';
import { jobStore } from '../../../job/job-store.ts';
import { depthSum, type ReadingKind, readDepth, wallAsNew } from '../../../tools/reading-depth.ts';
import { viewStore } from '../../../view/view-store.ts';
import { liveFace } from '../../../wear/live-faces.ts';
import { faceNumbers, numberText, valueText } from '../face-words.ts';
import { withMark } from '../mark-edits.ts';
import { readingAt, readingsInHand, readingsOf, withReading, withReadings } from './reading-edits.ts';
import { readingEntry, setEntry } from './reading-entry.ts';

export interface PlaceOnFace {
  readonly part: PartFile;
  /** Place of the part in the job. */
  readonly index: number;
  readonly face: string;
  readonly at: FacePoint;
}

/**
 * Puts the typed reading down at a place: one step to undo. What cannot be taken stays typed, with the reason beside it.
 * @param isAgain  a reading at the very same place is replaced: one that is walked to once more
 * @returns whether it was taken
 */
export function putReadingDown(on: PlaceOnFace, { isAgain = false } = {}): boolean {
  const { part, index, face, at } = on;
  const { units, selectedMark } = viewStore.getState();
  const read = typedDepth(on, units);
  if ('fault' in read) return refuse([read.fault]);
  const mark = readingsInHand(part, face, selectedMark);
  const point = [at[0], at[1], read.depth] as const;
  const again = isAgain ? readingAt(readingsOf(part, mark), at) : -1;
  const faults = jobStore.getState().edit('reading', (job) => {
    const known = mark === null ? undefined : job.parts[index].wear[mark];
    if (again >= 0 && mark !== null && known?.kind === 'readings') {
      return withMark(job, index, mark, withReading(known, again, point));
    }
    return withReadings(job, index, { at: mark, face, points: [point] });
  });
  if (faults.length > 0) return refuse(faults.map(faultText));
  setEntry({ reading: '', faults: [], note: `Put down: ${pointText(on, read.depth, units)}.` });
  return true;
}

/** The sum the typed reading makes, as far as it is typed; '' while there is none. */
export function sumSoFar(
  on: PlaceOnFace | null,
  reading: string,
  kind: ReadingKind,
  units: ScreenUnits,
): string {
  if (kind === 'depth' || reading.trim() === '') return '';
  const parsed = parseQuantity(reading, 'length', units);
  const against = againstAt(on, kind);
  return 'fault' in parsed || against === null ? '' : depthSum(kind, parsed.value, against, units);
}

/** What a reading at a place is held against; null while that is not known. */
function againstAt(on: PlaceOnFace | null, kind: ReadingKind): Mm | null {
  if (kind === 'depth') return 0;
  if (kind === 'two-readings') return readingEntry().reference;
  const live = on === null ? undefined : liveFace(on.part.id, on.face);
  return on === null || live === undefined ? null : wallAsNew(live.face, on.at);
}

function typedDepth(
  on: PlaceOnFace,
  units: ScreenUnits,
): { readonly depth: Mm } | { readonly fault: string } {
  const { kind, reading } = readingEntry();
  const parsed = parseQuantity(reading, 'length', units);
  if ('fault' in parsed) return parsed;
  const against = againstAt(on, kind);
  if (against !== null) return { depth: readDepth(kind, parsed.value, against) };
  return {
    fault:
      kind === 'two-readings'
        ? 'The reading on sound metal is missing. Type it below.'
        : 'At this place the wall is no measure of the depth. Read the depth itself.',
  };
}

/** A reading in words: `radius 110 mm, 40°, 2.3 mm deep`. */
function pointText({ part, face, at }: PlaceOnFace, depth: Mm, units: ScreenUnits): string {
  return `${placeWords(part, face, at, units)}, ${valueText(depth, 'length', units)} deep`;
}

/** A place as it was set: `radius 110.4 mm, 40°`. */
function placeWords(part: PartFile, face: string, at: FacePoint, units: ScreenUnits): string {
  const [first, second] = faceNumbers(part, face);
  return `${numberText(first, at[0], units)}, ${numberText(second, at[1], units)}`;
}

function refuse(faults: readonly string[]): false {
  setEntry({ faults, note: '' });
  return false;
}
