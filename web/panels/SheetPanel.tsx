import { Download, Printer } from 'lucide-react';
import { Button } from 'react-aria-components';
import { TextInput } from '../fields/TextInput.tsx';
import { jobStore, useJob } from '../job/job-store.ts';
import { estimateStore, useEstimate } from '../worker/estimate-client.ts';
import { saveSheet } from './sheet/save-sheet.ts';
import { useOnceDrawn } from './sheet/use-once-drawn.ts';
import { useSheetStyle } from './sheet/use-sheet-style.ts';
import './SheetPanel.css';

/** The job as a page to print and to sign. */
export function SheetPanel() {
  const sheet = useEstimate((state) => state.sheet);
  const isPending = useEstimate((state) => state.isSheetPending);
  const job = useJob((state) => state.job);
  const edit = useJob((state) => state.edit);
  const onceDrawn = useOnceDrawn();
  useSheetStyle();
  return (
    <div className="sheet-panel">
      <div className="buttons sheet-actions">
        <Button
          className="button button-main"
          isDisabled={sheet === ''}
          onPress={() => onceDrawn(() => window.print())}
        >
          <Printer aria-hidden="true" />
          Print
        </Button>
        <Button
          className="button"
          isDisabled={sheet === ''}
          onPress={() => onceDrawn(() => saveSheet(estimateStore.getState().sheet, jobStore.getState().job))}
        >
          <Download aria-hidden="true" />
          Save as a page
        </Button>
        {isPending && <p className="quiet">{sheet === '' ? 'Drawing the sheet' : 'Drawing it anew'}</p>}
      </div>
      <div className="sheet-notes-field">
        <TextInput
          label="Notes for the sheet"
          path="notes"
          value={job.notes ?? ''}
          isLong
          onCommit={(notes) => edit('notes', (old) => ({ ...old, notes }))}
        />
      </div>
      {isPending && (
        <p className="sheet-early">
          This was printed before the figures were worked out. Print it again before you use it.
        </p>
      )}
      <section
        className="sheet-paper"
        aria-label="Paper"
        aria-busy={isPending}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: on a phone its tables are slid sideways, by keys too
        tabIndex={0}
        // biome-ignore lint/security/noDangerouslySetInnerHtml: the engine writes it and escapes everything a person wrote
        dangerouslySetInnerHTML={{ __html: sheet }}
      />
    </div>
  );
}
