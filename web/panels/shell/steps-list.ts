import type { StepName } from '../../view/view-store.ts';

/** A step of the way through a job. */
export interface StepPlace {
  readonly name: StepName;
  readonly label: string;
}

/** In the order of the work. Clearance, Plan and Test have their places between Balance and Sheet. */
export const STEPS: readonly StepPlace[] = [
  { name: 'part', label: 'Part' },
  { name: 'wear', label: 'Wear' },
  { name: 'fill', label: 'Fill' },
  { name: 'balance', label: 'Balance' },
  { name: 'sheet', label: 'Sheet' },
];
