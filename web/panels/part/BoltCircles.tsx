import { Plus, Trash2 } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../../geometry/job/fault.ts';
import type { BoltCircleFile, WearPlateFile } from '../../../geometry/job/job-file.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { forgetDrafts } from '../forget-drafts.ts';
import { Refusal } from '../Refusal.tsx';
import { boltCircleChoices } from './part-edits.ts';
import type { PlateEdit } from './use-plate-edit.ts';

interface BoltCirclesProps {
  readonly plate: WearPlateFile;
  readonly path: string;
  readonly edit: PlateEdit;
}

/** The holes, circle by circle. */
export function BoltCircles({ plate, path, edit }: BoltCirclesProps) {
  const circles = plate.boltHoles ?? [];
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const put = (label: string, boltHoles: readonly BoltCircleFile[], at?: string) =>
    edit(label, (old) => ({ ...old, boltHoles }), at);
  const add = () => {
    let refused: readonly Fault[] = [];
    for (const circle of boltCircleChoices(plate)) {
      refused = put('add a bolt circle', [...circles, circle]);
      if (refused.length === 0) break;
    }
    setFaults(refused);
  };
  const remove = (at: number) => {
    forgetDrafts(path);
    setFaults(
      put(
        'remove a bolt circle',
        circles.filter((_, i) => i !== at),
      ),
    );
  };
  return (
    <section className="section">
      <h2>Bolt holes</h2>
      {circles.map((circle, i) => (
        <BoltCircle
          // biome-ignore lint/suspicious/noArrayIndexKey: circles have no name but their place
          key={i}
          circle={circle}
          number={i + 1}
          path={`${path}[${i}]`}
          onChange={(label, changed, at) =>
            put(
              label,
              circles.map((old, j) => (j === i ? changed : old)),
              at,
            )
          }
          onRemove={() => remove(i)}
        />
      ))}
      <div className="buttons">
        <Button className="button" onPress={add}>
          <Plus aria-hidden="true" />
          Add a bolt circle
        </Button>
      </div>
      <Refusal faults={faults} />
    </section>
  );
}

interface BoltCircleProps {
  readonly circle: BoltCircleFile;
  readonly number: number;
  readonly path: string;
  readonly onChange: (label: string, circle: BoltCircleFile, path: string) => readonly Fault[];
  readonly onRemove: () => void;
}

function BoltCircle({ circle, number, path, onChange, onRemove }: BoltCircleProps) {
  return (
    <div className="rows">
      <div className="section-head">
        <h3>Circle {number}</h3>
        <Button className="button button-bare" aria-label={`Remove circle ${number}`} onPress={onRemove}>
          <Trash2 aria-hidden="true" />
          Remove
        </Button>
      </div>
      <QuantityField
        label="Holes"
        quantity="plain"
        path={`${path}.count`}
        value={circle.count}
        min={1}
        max={360}
        onCommit={(count) => onChange('number of holes', { ...circle, count }, `${path}.count`)}
      />
      <QuantityField
        label="Circle diameter"
        quantity="length"
        path={`${path}.circleDiameter`}
        value={circle.circleDiameter}
        onCommit={(circleDiameter) =>
          onChange('bolt circle diameter', { ...circle, circleDiameter }, `${path}.circleDiameter`)
        }
      />
      <QuantityField
        label="Hole diameter"
        quantity="length"
        path={`${path}.holeDiameter`}
        value={circle.holeDiameter}
        onCommit={(holeDiameter) =>
          onChange('bolt hole diameter', { ...circle, holeDiameter }, `${path}.holeDiameter`)
        }
      />
      <QuantityField
        label="First hole at"
        quantity="angle"
        path={`${path}.startAngle`}
        value={circle.startAngle ?? 0}
        onCommit={(startAngle) =>
          onChange('angle of the first hole', { ...circle, startAngle }, `${path}.startAngle`)
        }
      />
    </div>
  );
}
