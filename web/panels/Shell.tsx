import { useEffect, useRef } from 'react';
import { flushSync } from 'react-dom';
import { useView, viewStore } from '../view/view-store.ts';
import { Figures } from './shell/Figures.tsx';
import { Later } from './shell/Later.tsx';
import { fetchPieces } from './shell/later-pieces.ts';
import { Notices } from './shell/Notices.tsx';
import { SampleNote } from './shell/SampleNote.tsx';
import { Stage } from './shell/Stage.tsx';
import { StepPanel } from './shell/StepPanel.tsx';
import { Steps } from './shell/Steps.tsx';
import { STEPS } from './shell/steps-list.ts';
import { TopBar } from './shell/TopBar.tsx';
import './Shell.css';
import './panel.css';

/** The whole screen: the way through the job on top, the part and its figures always in sight, the step's own panel beside or below. */
export function Shell() {
  const step = useView((view) => view.step);
  const panel = useRef<HTMLElement>(null);
  const isBenchOpen = useView((view) => view.isBenchOpen);
  const label = STEPS.find(({ name }) => name === step)?.label ?? '';
  // biome-ignore lint/correctness/useExhaustiveDependencies: another step begins at its top
  useEffect(() => panel.current?.scrollTo(0, 0), [step]);
  useEffect(printTheSheet, []);
  useEffect(fetchPieces, []);
  if (isBenchOpen) return <Later piece="bench" waiting={<p className="quiet">Opening the bench screen</p>} />;
  return (
    <div className="shell" data-step={step}>
      <a className="skip" href="#panel">
        Go to the step
      </a>
      <div className="shell-head">
        <TopBar />
        <Notices />
        <div className="shell-way">
          <Steps />
          <SampleNote />
        </div>
      </div>
      <main className="shell-work">
        <div className="shell-part">
          <Stage />
          <Figures />
        </div>
        <section className="panel" id="panel" ref={panel} tabIndex={-1} aria-label={label}>
          <StepPanel step={step} />
        </section>
      </main>
    </div>
  );
}

/** Whatever step is on the screen, the sheet is what is printed. @returns stops it */
function printTheSheet(): () => void {
  const turnToSheet = () => flushSync(() => viewStore.getState().set({ step: 'sheet' }));
  window.addEventListener('beforeprint', turnToSheet);
  return () => window.removeEventListener('beforeprint', turnToSheet);
}
