import { Plus } from 'lucide-react';
import { type ClipboardEvent, type ReactNode, useState } from 'react';
import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { Corner } from '../../../geometry/job/corners.ts';
import type { Fault } from '../../../geometry/job/fault.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { TextInput } from '../../fields/TextInput.tsx';
import { useView } from '../../view/view-store.ts';
import { DisclosureButton } from '../DisclosureButton.tsx';
import { forgetDrafts } from '../forget-drafts.ts';
import { type PointKind, parsePoints, pointsText } from '../points-text.ts';
import { Refusal } from '../Refusal.tsx';

interface CornersFieldProps {
  readonly heading: string;
  readonly corners: readonly Corner[];
  readonly path: string;
  readonly onCommit: (corners: readonly Corner[]) => readonly Fault[];
  readonly action?: ReactNode;
}

const XY: PointKind = ['length', 'length'];

/** More rows than this are typed as text. */
const MOST_ROWS = 60;

/** The corners of a closed polygon in turn: a row each, or all of them as text, typed or pasted from a sheet. */
export function CornersField({ heading, corners, path, onCommit, action }: CornersFieldProps) {
  const units = useView((view) => view.units);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const takeText = (text: string): readonly Fault[] => {
    const parsed = parsePoints(text, XY, units);
    if ('points' in parsed) return onCommit(parsed.points);
    return [{ field: path, found: text, needs: 'lines of two numbers', problem: parsed.problem }];
  };
  const paste = (event: ClipboardEvent) => {
    const text = event.clipboardData.getData('text');
    if (!text.trim().includes('\n')) return;
    event.preventDefault();
    forgetDrafts(path);
    setFaults(takeText(text));
  };
  const addAfter = (i: number) => {
    const [x, y] = corners[i];
    const [nextX, nextY] = corners[(i + 1) % corners.length];
    const middle: Corner = [(x + nextX) / 2, (y + nextY) / 2];
    forgetDrafts(path);
    setFaults(onCommit([...corners.slice(0, i + 1), middle, ...corners.slice(i + 1)]));
  };
  const remove = (at: number) => {
    forgetDrafts(path);
    setFaults(onCommit(corners.filter((_, i) => i !== at)));
  };
  return (
    <section className="section">
      <div className="section-head">
        <h2>{heading}</h2>
        {action}
      </div>
      {corners.length <= MOST_ROWS && (
        <ol className="corners" onPaste={paste}>
          {corners.map(([x, y], i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: corners have no name but their place
            <li key={i} className="corner">
              <QuantityField
                label={`Corner ${i + 1}, x`}
                quantity="length"
                path={`${path}[${i}][0]`}
                value={x}
                onCommit={(value) => onCommit(corners.map((old, j) => (j === i ? [value, y] : old)))}
              />
              <QuantityField
                label="y"
                quantity="length"
                path={`${path}[${i}][1]`}
                value={y}
                onCommit={(value) => onCommit(corners.map((old, j) => (j === i ? [x, value] : old)))}
              />
              <Button
                className="button button-bare corner-remove"
                aria-label={`Remove corner ${i + 1}`}
                isDisabled={corners.length <= 3}
                onPress={() => remove(i)}
              >
                Remove
              </Button>
            </li>
          ))}
        </ol>
      )}
      <div className="buttons">
        <Button className="button" onPress={() => addAfter(corners.length - 1)}>
          <Plus aria-hidden="true" />
          Add a corner
        </Button>
      </div>
      <Refusal faults={faults} />
      <Disclosure className="disclosure" defaultExpanded={corners.length > MOST_ROWS}>
        <Heading level={3}>
          <DisclosureButton>{heading} as text</DisclosureButton>
        </Heading>
        <DisclosurePanel className="disclosure-panel">
          <TextInput
            label={`Corners, x and y in ${units}`}
            path={path}
            value={pointsText(corners, XY, units)}
            isLong
            help="One corner a line, in turn round the edge. Paste two columns from a sheet."
            onCommit={takeText}
          />
        </DisclosurePanel>
      </Disclosure>
    </section>
  );
}
