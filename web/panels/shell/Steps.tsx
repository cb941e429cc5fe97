import { Check, CircleAlert } from 'lucide-react';
import { useEffect, useRef } from 'react';
import { Button } from 'react-aria-components';
import { useView, viewStore } from '../../view/view-store.ts';
import { STEPS } from './steps-list.ts';
import { useStepNotes } from './use-step-notes.ts';
import './Steps.css';

/** The way through the job: where one is, what each step holds, and which of them still needs something. */
export function Steps() {
  const step = useView((view) => view.step);
  const notes = useStepNotes();
  const list = useRef<HTMLOListElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the place one is at comes into sight
  useEffect(() => {
    const steps = list.current;
    const place = steps?.querySelector('[data-here]');
    if (!steps || !(place instanceof HTMLElement)) return;
    // By hand: `scrollIntoView` would also take the keyboard's place along.
    const { offsetLeft, offsetWidth } = place;
    const end = offsetLeft + offsetWidth - steps.clientWidth;
    steps.scrollLeft = Math.max(end, Math.min(steps.scrollLeft, offsetLeft));
  }, [step]);
  return (
    <nav aria-label="Steps">
      <ol className="steps" ref={list}>
        {STEPS.map(({ name, label }) => {
          const note = notes[name];
          const isHere = step === name;
          const Mark = note.isNeed ? CircleAlert : Check;
          return (
            <li
              key={name}
              className="step"
              data-here={isHere || undefined}
              data-need={note.isNeed || undefined}
            >
              <Button
                className="step-button"
                {...(isHere && { 'aria-current': 'step' })}
                aria-describedby={`step-${name}`}
                onPress={() => viewStore.getState().set({ step: name })}
              >
                {label}
              </Button>
              <span className="step-note" id={`step-${name}`}>
                <Mark aria-hidden="true" />
                <span className="step-note-text">{note.text}</span>
              </span>
            </li>
          );
        })}
      </ol>
    </nav>
  );
}
