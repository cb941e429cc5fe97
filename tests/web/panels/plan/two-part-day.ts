/**
 * A day written by hand, not worked out: a plate and an impeller, three mixes, two coats, one night. Start 07:00, breaks at 09:30 (15 min)
 * and 12:00 (30 min), end of the shift 15:30. For what the screen makes of a plan.
 */
import type { PlanStepResult } from '../../../../geometry/sheet/day-result.ts';

type Window = NonNullable<PlanStepResult['window']>;
type Rest = Partial<Pick<PlanStepResult, 'batch' | 'coat' | 'coatMix' | 'note' | 'trouble' | 'cautions'>>;

export const DAY_START = '2026-12-01T07:00';
export const DAY_END = 2135;

const EMPTY = {
  batch: null,
  coat: null,
  coatMix: null,
  after: [],
  note: '',
  trouble: null,
  cautions: [],
} as const;

const plate = ['plate'];
const impeller = ['impeller'];
const both = ['plate', 'impeller'];

export const TWO_PART_DAY: readonly PlanStepResult[] = [
  hands('wash:plate', 'wash', 'Wash', plate, 0, 20, null, { cautions: ['isolate'] }),
  hands('wash:impeller', 'wash', 'Wash', impeller, 20, 20, null, { cautions: ['isolate'] }),
  hands('blast:plate', 'blast', 'Blast', plate, 40, 30, null, { cautions: ['blast-dust'] }),
  hands('blast:impeller', 'blast', 'Blast', impeller, 70, 30, null, { cautions: ['blast-dust'] }),
  hands('blow-down:plate', 'blow-down', 'Blow down', plate, 100, 5, null, { cautions: ['blast-dust'] }),
  hands('blow-down:impeller', 'blow-down', 'Blow down', impeller, 105, 5, null, { cautions: ['blast-dust'] }),
  hands('wipe:plate', 'wipe', 'Solvent wipe', plate, 110, 5, null, { cautions: ['solvent', 'skin'] }),
  hands('wipe:impeller', 'wipe', 'Solvent wipe', impeller, 115, 5, null, { cautions: ['solvent', 'skin'] }),
  wait('flash-off', 'flash-off', 'Flash off', both, 120, 10, { cautions: ['solvent'] }),
  hands('fill:1', 'fill', 'Mix and fill 1', plate, 165, 12, null, {
    batch: 1,
    note: '96 g of A and 42 g of B.',
    cautions: ['skin', 'batch-heat'],
  }),
  wait('firm-up:1', 'firm-up', 'Mix 1 firms up', plate, 177, 58, { batch: 1 }),
  hands('fill:2', 'fill', 'Mix and fill 2', plate, 177, 12, null, {
    batch: 2,
    cautions: ['skin', 'batch-heat'],
  }),
  wait('firm-up:2', 'firm-up', 'Mix 2 firms up', plate, 189, 58, { batch: 2 }),
  hands('fill:3', 'fill', 'Mix and fill 3', impeller, 189, 11, null, {
    batch: 3,
    cautions: ['skin', 'batch-heat'],
  }),
  wait('firm-up:3', 'firm-up', 'Mix 3 firms up', impeller, 200, 58, { batch: 3 }),
  hands(
    'dress:1',
    'dress',
    'Dress mix 1',
    plate,
    235,
    8,
    { opens: 235, closes: 264 },
    {
      batch: 1,
      cautions: ['skin', 'dressing-dust'],
    },
  ),
  hands(
    'dress:2',
    'dress',
    'Dress mix 2',
    plate,
    247,
    8,
    { opens: 247, closes: 276 },
    {
      batch: 2,
      cautions: ['skin', 'dressing-dust'],
    },
  ),
  hands(
    'dress:3',
    'dress',
    'Dress mix 3',
    impeller,
    330,
    8,
    { opens: 258, closes: 287 },
    {
      batch: 3,
      trouble: 'window-missed',
      cautions: ['skin', 'dressing-dust'],
    },
  ),
  hands('coat:1.1', 'coat', 'Coat 1', both, 338, 14, null, { coat: 1, coatMix: 1, cautions: ['skin'] }),
  wait('overcoat:1', 'overcoat', 'Coat 1 sets', both, 352, 117, { coat: 1 }),
  hands(
    'touch-test:1',
    'touch-test',
    'Touch test of coat 1',
    both,
    469,
    2,
    { opens: 469, closes: 820 },
    {
      coat: 1,
      cautions: ['skin'],
    },
  ),
  hands(
    'coat:2.1',
    'coat',
    'Coat 2',
    both,
    471,
    14,
    { opens: 469, closes: 820 },
    {
      coat: 2,
      coatMix: 1,
      cautions: ['skin'],
    },
  ),
  wait('harden', 'harden', 'Harden', both, 485, 1500, {}),
  hands('dress-hard:plate', 'dress-hard', 'Dress to size', plate, 1985, 15, null, {
    cautions: ['dressing-dust'],
  }),
  hands('check', 'check', 'Check gap and balance', both, 2015, 30, null),
  hands('assemble', 'assemble', 'Assemble', both, 2045, 60, null, { cautions: ['isolate'] }),
  hands('test', 'test', 'Test run', [], 2105, 30, null, { cautions: ['restart'] }),
];

function hands(
  id: string,
  kind: PlanStepResult['kind'],
  step: string,
  parts: readonly string[],
  start: number,
  minutes: number,
  window: Window | null,
  rest: Rest = {},
): PlanStepResult {
  return { ...EMPTY, id, kind, step, parts, start, minutes, window, hands: true, ...rest };
}

function wait(
  id: string,
  kind: PlanStepResult['kind'],
  step: string,
  parts: readonly string[],
  start: number,
  minutes: number,
  rest: Rest,
): PlanStepResult {
  return { ...EMPTY, id, kind, step, parts, start, minutes, window: null, hands: false, ...rest };
}
