import type { PlanStep } from '../plan/day-plan.ts';

type Named = Pick<PlanStep, 'kind' | 'batch' | 'coat' | 'coatMix'>;

/**
 * A step in the words of the trade.
 * @param steps  of the plan: a coat of one mix is not counted by mixes
 */
export function stepName({ kind, batch, coat, coatMix }: Named, steps: readonly Named[]): string {
  switch (kind) {
    case 'wash':
      return 'Wash';
    case 'blast':
      return 'Blast';
    case 'blow-down':
      return 'Blow down';
    case 'wipe':
      return 'Solvent wipe';
    case 'flash-off':
      return 'Flash off';
    case 'fill':
      return `Mix and fill ${batch}`;
    case 'firm-up':
      return `Mix ${batch} firms up`;
    case 'dress':
      return `Dress mix ${batch}`;
    case 'coat':
      return steps.some((other) => other.kind === 'coat' && other.coat === coat && other.coatMix !== coatMix)
        ? `Coat ${coat}, mix ${coatMix}`
        : `Coat ${coat}`;
    case 'overcoat':
      return `Coat ${coat} sets`;
    case 'touch-test':
      return `Touch test of coat ${coat}`;
    case 'harden':
      return 'Harden';
    case 'dress-hard':
      return 'Dress to size';
    case 'check':
      return 'Check gap and balance';
    case 'assemble':
      return 'Assemble';
    case 'test':
      return 'Test run';
  }
}
