import { Redo2, Undo2 } from 'lucide-react';
import { Button } from 'react-aria-components';
import { useJob } from '../../job/job-store.ts';

/** One step back and one forward; each names the step it takes. */
export function UndoRedo() {
  const last = useJob((state) => state.past.at(-1)?.label);
  const next = useJob((state) => state.future.at(-1)?.label);
  const undo = useJob((state) => state.undo);
  const redo = useJob((state) => state.redo);
  return (
    <div className="undo-redo">
      <Button
        className="button button-bare"
        aria-label={last === undefined ? 'Undo' : `Undo: ${last}`}
        isDisabled={last === undefined}
        onPress={undo}
      >
        <Undo2 aria-hidden="true" />
        Undo
      </Button>
      <Button
        className="button button-bare"
        aria-label={next === undefined ? 'Redo' : `Redo: ${next}`}
        isDisabled={next === undefined}
        onPress={redo}
      >
        <Redo2 aria-hidden="true" />
        Redo
      </Button>
    </div>
  );
}
