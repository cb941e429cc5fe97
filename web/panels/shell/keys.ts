import { chooseFile } from '../../files/open-job.ts';
import { saveJob } from '../../files/save-job.ts';
import { jobStore } from '../../job/job-store.ts';
import { type ToolName, viewStore } from '../../view/view-store.ts';
import { STEPS } from './steps-list.ts';

/** The keys as the list of keys names them. `Ctrl` is the command key on a Mac. */
export const KEYS: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: 'Ctrl Z', does: 'Undo' },
  { keys: 'Ctrl Shift Z, Ctrl Y', does: 'Redo' },
  { keys: 'Ctrl S', does: 'Save to a file' },
  { keys: 'Ctrl O', does: 'Open a file' },
  { keys: `1 to ${STEPS.length}`, does: STEPS.map(({ label }) => label).join(', ') },
  { keys: 'T', does: 'Turn the part' },
  { keys: 'B', does: 'Brush' },
  { keys: 'P', does: 'Patch' },
  { keys: 'A', does: 'Area' },
  { keys: 'I', does: 'Pit' },
  { keys: 'L', does: 'Straightedge' },
  { keys: 'Alt Up, Alt Down', does: 'Move the mark in hand up or down its list' },
  { keys: 'Space, held', does: 'Turn instead of marking' },
  { keys: 'Backspace', does: 'Take back the last corner of an area' },
  { keys: 'Arrows, + -', does: 'Turn the part in hand, come nearer' },
  { keys: 'Enter', does: 'Take what is typed, close an area' },
  { keys: 'Esc', does: 'Put back what stood there' },
  { keys: '?', does: 'Show these keys' },
];

const TOOLS: Readonly<Record<string, ToolName>> = {
  t: 'turn',
  b: 'brush',
  p: 'patch',
  a: 'area',
  i: 'pit',
  l: 'straightedge',
};

/**
 * Answers keys wherever they are pressed; letters and digits only outside fields, and undo in a field only once its text is settled.
 * @param showKeys  shows the list of keys
 * @returns stops it
 */
export function answerKeys(showKeys: () => void): () => void {
  let typedIn: EventTarget | null = null;
  const onInput = ({ target }: Event) => {
    typedIn = target;
  };
  const settled = () => {
    typedIn = null;
  };
  const onKey = (event: KeyboardEvent) => {
    if (event.key === 'Enter' || event.key === 'Escape') settled();
    if (event.defaultPrevented || event.altKey) return;
    const action =
      event.ctrlKey || event.metaKey
        ? withControl(event, typedIn !== null && typedIn === event.target)
        : plain(event, showKeys);
    if (action === null) return;
    event.preventDefault();
    action();
  };
  window.addEventListener('input', onInput);
  window.addEventListener('focusout', settled);
  window.addEventListener('keydown', onKey);
  return () => {
    window.removeEventListener('input', onInput);
    window.removeEventListener('focusout', settled);
    window.removeEventListener('keydown', onKey);
  };
}

function withControl({ key, shiftKey }: KeyboardEvent, isTyping: boolean): (() => void) | null {
  const { undo, redo } = jobStore.getState();
  switch (key.toLowerCase()) {
    case 'z':
      return isTyping ? null : shiftKey ? redo : undo;
    case 'y':
      return isTyping ? null : redo;
    case 's':
      return saveWithFieldInHand;
    case 'o':
      return chooseFile;
    default:
      return null;
  }
}

function plain({ key, target }: KeyboardEvent, showKeys: () => void): (() => void) | null {
  if (isField(target)) return null;
  if (key === '?') return showKeys;
  const { set, step } = viewStore.getState();
  const place = STEPS[Number(key) - 1];
  if (place !== undefined) return () => set({ step: place.name });
  const tool = TOOLS[key.toLowerCase()];
  return tool !== undefined && step === 'wear' ? () => set({ tool }) : null;
}

/** Leaving the field takes what is typed in it into the job. */
function saveWithFieldInHand(): void {
  const field = document.activeElement;
  if (field instanceof HTMLElement && isField(field)) {
    field.blur();
    field.focus();
  }
  void saveJob();
}

/** Takes letters for itself: a field, or a menu that is searched by typing. */
function isField(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement &&
    (target.isContentEditable ||
      target.closest('input, textarea, select, [role="menu"], [role="listbox"]') !== null)
  );
}
