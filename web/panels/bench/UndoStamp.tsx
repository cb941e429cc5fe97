import { Undo2 } from 'lucide-react';
import { Button } from 'react-aria-components';
import { type BenchResult, stepWords } from '../../bench/bench-plan.ts';
import { takeBack, takeBackOf } from '../../bench/take-back.ts';
import { useJob } from '../../job/job-store.ts';
import { isPress } from './bench-edits.ts';

/** Takes back what was done here last, and names it. */
export function UndoStamp({ result }: { readonly result: BenchResult }) {
  const job = useJob((state) => state.job);
  const past = useJob((state) => state.past);
  const undo = useJob((state) => state.undo);
  const edit = useJob((state) => state.edit);
  const back = takeBackOf(job, past, (step) => lowerFirst(stepWords(result, step)));
  return (
    <Button
      className="button bench-button"
      isDisabled={back === null}
      onPress={() => {
        if (back !== null && isPress('Undo')) takeBack(back, { undo, edit });
      }}
    >
      <Undo2 aria-hidden="true" />
      {back === null ? 'Undo' : `Undo: ${back.label}`}
    </Button>
  );
}

export function lowerFirst(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}
