import { USUAL_GAUGE_ERROR } from '../../../../geometry/job/defaults.ts';
import { QuantityField } from '../../../fields/QuantityField.tsx';
import type { ReadingsMark } from '../../../tools/table-readings.ts';
import { BlendField, type MarkFieldsProps } from '../BlendField.tsx';
import { ReadingTable } from './ReadingTable.tsx';

/** Gauge readings in numbers: each in its row, how far off the gauge may be, and how they meet other marks. */
export function ReadingsFields(props: MarkFieldsProps<ReadingsMark>) {
  const { mark, path, edit } = props;
  return (
    <>
      <ReadingTable {...props} />
      <div className="rows">
        <QuantityField
          label="Gauge error, plus or minus"
          quantity="length"
          path={`${path}.gaugeError`}
          value={mark.gaugeError ?? USUAL_GAUGE_ERROR}
          min={0}
          max={10}
          step={0.05}
          help="One standard deviation of a reading: two thirds of repeated readings fall within it."
          onCommit={(gaugeError) => edit('gauge error', { ...mark, gaugeError }, 'gaugeError')}
        />
        <BlendField mark={mark} edit={edit} />
      </div>
    </>
  );
}
