import { useState } from 'react';
import { Button } from 'react-aria-components';
import { USUAL_GAUGE_ERROR } from '../../../../geometry/job/defaults.ts';
import type { Fault } from '../../../../geometry/job/fault.ts';
import { counted } from '../../../../geometry/sheet/figure.ts';
import { QuantityField } from '../../../fields/QuantityField.tsx';
import type { ReadingsMark } from '../../../tools/table-readings.ts';
import { Refusal } from '../../Refusal.tsx';
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
        <Within {...props} />
        <BlendField mark={mark} edit={edit} />
      </div>
    </>
  );
}

/** A file may say that the readings hold within an outline only. */
function Within({ mark, edit }: MarkFieldsProps<ReadingsMark>) {
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  if (mark.within === undefined) return null;
  const spread = () => {
    const { within: _, ...everywhere } = mark;
    setFaults(edit('where readings hold', everywhere, 'within'));
  };
  return (
    <>
      <p className="quiet">
        They hold within an outline of {counted(mark.within.length, 'corner', 'corners')}.
      </p>
      <div className="buttons">
        <Button className="button" onPress={spread}>
          Let them hold on the whole face
        </Button>
      </div>
      <Refusal faults={faults} />
    </>
  );
}
