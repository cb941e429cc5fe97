import { Plus, Trash2 } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Corner } from '../../../geometry/job/corners.ts';
import type { Fault } from '../../../geometry/job/fault.ts';
import type { OutlineFile } from '../../../geometry/job/job-file.ts';
import { forgetDrafts } from '../forget-drafts.ts';
import { Refusal } from '../Refusal.tsx';
import { CornersField } from './CornersField.tsx';
import type { PlateEdit } from './use-plate-edit.ts';
import './Outline.css';

interface OutlineFieldsProps {
  readonly outline: OutlineFile;
  readonly path: string;
  readonly edit: PlateEdit;
}

/** A plate given by the corners of its edge and of any holes cut in it. */
export function OutlineFields({ outline, path, edit }: OutlineFieldsProps) {
  const holes = outline.holes ?? [];
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const put = (label: string, changed: OutlineFile, at?: string) =>
    edit(label, (old) => ({ ...old, outline: changed }), at);
  const putHoles = (label: string, changed: readonly (readonly Corner[])[], at?: string) =>
    put(label, { ...outline, holes: changed.map((hole) => [...hole]) }, at);
  const remove = (at: number) => {
    forgetDrafts(`${path}.holes`);
    setFaults(
      putHoles(
        `remove cut-out ${at + 1}`,
        holes.filter((_, i) => i !== at),
      ),
    );
  };
  return (
    <>
      <CornersField
        heading="Edge"
        corners={outline.edge}
        path={`${path}.edge`}
        onCommit={(edge) => put('corners of the edge', { ...outline, edge: [...edge] }, `${path}.edge`)}
      />
      {holes.map((hole, i) => (
        <CornersField
          // biome-ignore lint/suspicious/noArrayIndexKey: holes have no name but their place
          key={i}
          heading={`Cut-out ${i + 1}`}
          corners={hole}
          path={`${path}.holes[${i}]`}
          onCommit={(changed) =>
            putHoles(
              `corners of cut-out ${i + 1}`,
              holes.map((old, j) => (j === i ? changed : old)),
              `${path}.holes[${i}]`,
            )
          }
          action={
            <Button
              className="button button-bare"
              aria-label={`Remove cut-out ${i + 1}`}
              onPress={() => remove(i)}
            >
              <Trash2 aria-hidden="true" />
              Remove
            </Button>
          }
        />
      ))}
      <div className="buttons">
        <Button
          className="button"
          onPress={() => setFaults(putHoles('add a cut-out', [...holes, newCutOut(outline.edge)]))}
        >
          <Plus aria-hidden="true" />
          Add a cut-out
        </Button>
      </div>
      <Refusal faults={faults} />
    </>
  );
}

/** A square in the middle of the plate, a tenth of its width. */
function newCutOut(edge: readonly Corner[]): readonly Corner[] {
  const xs = edge.map(([x]) => x);
  const ys = edge.map(([, y]) => y);
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const half = Math.max(1, Math.round((right - left) / 20));
  const [x, y] = [Math.round((left + right) / 2), Math.round((low + high) / 2)];
  return [
    [x - half, y - half],
    [x + half, y - half],
    [x + half, y + half],
    [x - half, y + half],
  ];
}
