import type { StepName } from '../../view/view-store.ts';
import { PartPanel } from '../PartPanel.tsx';
import { SheetPanel } from '../SheetPanel.tsx';
import { Later } from './Later.tsx';

/** The panel of a step. */
export function StepPanel({ step }: { readonly step: StepName }) {
  if (step === 'part') return <PartPanel />;
  if (step === 'sheet') return <SheetPanel />;
  return <Later piece={step} waiting={<p className="quiet">Opening the step</p>} />;
}
