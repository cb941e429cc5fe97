import { TriangleAlert } from 'lucide-react';
import { placedReadings } from '../../../../geometry/depth/reading-places.ts';
import type { PartFile } from '../../../../geometry/job/job-file.ts';
import { measuredMark } from '../../../../geometry/job/measured-mark.ts';
import { counted } from '../../../../geometry/sheet/figure.ts';
import { formatQuantity } from '../../../fields/format-quantity.ts';
import { shownUnit } from '../../../fields/quantity-units.ts';
import type { ReadingPoint, TakenTable } from '../../../tools/table-readings.ts';
import { useView } from '../../../view/view-store.ts';
import { liveFace } from '../../../wear/live-faces.ts';
import { sentenceCase } from '../../sentence-case.ts';
import { faceNumbers } from '../face-words.ts';

interface PastePreviewProps {
  readonly found: TakenTable;
  readonly part: PartFile;
  readonly face: string;
}

/** Rows shown before they are taken. */
const SHOWN = 6;
/** Messages; more would not be read. */
const MESSAGES = 40;

/** What will be taken of a table, as the job will have it, and why the rest will not. */
export function PastePreview({ found: { taken, refused }, part, face }: PastePreviewProps) {
  const units = useView((view) => view.units);
  const numbers = [...faceNumbers(part, face), { label: 'depth', quantity: 'length' as const }];
  const off = offTheFace(
    taken.map(({ point }) => point),
    part,
    face,
  );
  return (
    <>
      <table className="paste-table">
        <caption>
          {taken.length} to be taken, {refused.length} refused
        </caption>
        <thead>
          <tr>
            <th scope="col">Row</th>
            {numbers.map(({ label, quantity }) => (
              <th scope="col" key={label}>
                {sentenceCase(label)}, {shownUnit(quantity, units).symbol}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {taken.slice(0, SHOWN).map(({ row, point }) => (
            <tr key={row}>
              <td className="quiet">{row}</td>
              {numbers.map(({ label, quantity }, i) => (
                <td key={label}>{formatQuantity(point[i], quantity, units, { as: 'typed' })}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {taken.length > SHOWN && <p className="quiet">And {taken.length - SHOWN} more.</p>}
      {off > 0 && (
        <p>
          {off === 1 ? 'One of them lies' : `${off} of them lie`} in a hole or off the face, and would not be
          used.
        </p>
      )}
      {refused.length > 0 && (
        <ul className="faults paste-refused" aria-label={`${counted(refused.length, 'row', 'rows')} refused`}>
          {refused.slice(0, MESSAGES).map(({ row, sentence }) => (
            <li key={row}>
              <TriangleAlert aria-hidden="true" />
              {sentence}
            </li>
          ))}
          {refused.length > MESSAGES && <li>And {refused.length - MESSAGES} more.</li>}
        </ul>
      )}
    </>
  );
}

/** How many readings the face does not hold. */
function offTheFace(points: readonly ReadingPoint[], part: PartFile, face: string): number {
  const live = liveFace(part.id, face);
  if (live === undefined || points.length === 0) return 0;
  const spelt = points.map(([first, second, depth]): [number, number, number] => [first, second, depth]);
  const mark = measuredMark({ kind: 'readings', face, points: spelt }, part);
  return mark?.kind === 'readings' ? placedReadings(live.face, mark).off.length : 0;
}
