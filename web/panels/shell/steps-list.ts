import type { StepName } from '../../view/view-store.ts';

/** A step of the way through a job. */
export interface StepPlace {
  readonly name: StepName;
  readonly label: string;
}

/** In the order of the work. */
export const STEPS: readonly StepPlace[] = [
  { name: 'part', label: 'Part' },
  { name: 'wear', label: 'Wear' },
  { name: 'fill', label: 'Fill' },
  { name: 'balance', label: 'Balance' },
  { name: 'clearance', label: 'Clearance' },
  { name: 'plan', label: 'Plan' },
  { name: 'test', label: 'Test' },
  { name: 'sheet', label: 'Sheet' },
];
