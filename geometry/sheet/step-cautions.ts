import type { StepKind } from '../plan/day-plan.ts';

/** Codes of the cautions that belong to a step; the texts are those of the result. */
const BY_STEP: Readonly<Partial<Record<StepKind, readonly string[]>>> = {
  wash: ['isolate'],
  blast: ['blast-dust'],
  'blow-down': ['blast-dust'],
  wipe: ['solvent', 'skin'],
  'flash-off': ['solvent'],
  fill: ['skin', 'batch-heat'],
  dress: ['skin', 'dressing-dust'],
  coat: ['skin'],
  'touch-test': ['skin'],
  'dress-hard': ['dressing-dust'],
  assemble: ['isolate'],
  test: ['restart'],
};

export function stepCautions(kind: StepKind): readonly string[] {
  return BY_STEP[kind] ?? [];
}
