import { Copy } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../../geometry/job/fault.ts';
import type { MarkFile, PartFile } from '../../../geometry/job/job-file.ts';
import { useView } from '../../view/view-store.ts';
import { forgetDrafts } from '../forget-drafts.ts';
import { Refusal } from '../Refusal.tsx';
import { onAllVanes, onOneVane } from './mark-edits.ts';
import type { MarkEdit } from './use-mark-edit.ts';

interface VanesOfMarkProps {
  readonly mark: MarkFile;
  readonly part: PartFile;
  readonly edit: MarkEdit;
}

/** Puts a mark of one vane on all of them, as one mark; or one of all back on the vane in hand. */
export function VanesOfMark({ mark, part, edit }: VanesOfMarkProps) {
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const face = useView((view) => view.face);
  if (part.kind !== 'impeller' || part.vanes.count < 2) return null;
  const vane = Math.min(part.vanes.count, Number(/^vane-(\d+)/.exec(face)?.[1] ?? 1));
  const everywhere = onAllVanes(mark);
  const alone = onOneVane(mark, vane);
  const change = (label: string, changed: MarkFile) => {
    forgetDrafts('parts[');
    setFaults(edit(label, changed, 'face'));
  };
  return (
    <>
      <div className="buttons">
        {everywhere !== null && (
          <Button className="button" onPress={() => change('copy to all vanes', everywhere)}>
            <Copy aria-hidden="true" />
            Copy to all vanes
          </Button>
        )}
        {alone !== null && (
          <Button className="button" onPress={() => change('keep on one vane', alone)}>
            Keep on vane {vane} alone
          </Button>
        )}
      </div>
      <Refusal faults={faults} />
    </>
  );
}
