import fc from 'fast-check';
import type { Mark } from '../../../geometry/job/job.ts';
import { toRadians } from '../../../geometry/units.ts';
import { patch } from '../made.ts';
import { ASK, type MadePair, onTip } from './made-gap.ts';

const hundredths = (least: number, most: number) =>
  fc.integer({ min: Math.round(least * 100), max: Math.round(most * 100) }).map((n) => n / 100);

const onPlate: fc.Arbitrary<Mark> = fc
  .tuple(
    hundredths(60, 140),
    hundredths(5, 40),
    fc.integer({ min: 0, max: 359 }),
    fc.integer({ min: 5, max: 359 }),
    hundredths(0.1, 3),
  )
  .map(([from, width, angle, turn, depth]) =>
    patch([from, Math.min(160, from + width)], [angle, angle + turn], depth),
  );

const onTips: fc.Arbitrary<Mark> = fc
  .tuple(
    fc.constantFrom(1, 2, 3, 4, 5, '*' as const),
    hundredths(0, 150),
    hundredths(10, 80),
    hundredths(0.1, 2.5),
  )
  .map(([vane, from, along, depth]) => onTip(vane, [from, from + along], depth));

/** Anything a job can be as far as its gap goes: wear that is filled and left, some faces coated, allowances, tolerances, dished or flat. */
export const anyPair: fc.Arbitrary<MadePair> = fc.record({
  shape: fc.constantFrom({ holes: [] }, { holes: [], coneAngle: toRadians(1) }),
  onPlate: fc.array(onPlate, { maxLength: 3 }),
  onTips: fc.array(onTips, { maxLength: 3 }),
  coat: fc.record({ coats: fc.constantFrom(1, 2, 3), dryFilm: fc.constantFrom(0.125, 0.25, 0.3) }),
  repair: fc.record({
    coatAllowance: fc.constantFrom(0, 0.25, 0.5),
    coatedFaces: fc.constantFrom(['*'], ['plate:face'], ['impeller:vane-2/tip', 'plate:face'], []),
    allowanceFaces: fc.constantFrom(['plate:face', 'impeller:vane-*/tip'], ['plate:face'], []),
  }),
  ask: fc
    .tuple(
      hundredths(0.3, 2),
      hundredths(0.1, 0.5),
      hundredths(0.3, 2.5),
      hundredths(0, 0.12),
      hundredths(-0.2, 0.2),
      fc.constantFrom(0, 0.3),
      fc.boolean(),
    )
    .map(([asNew, least, width, setting, shim, dressTips, isEven]) => ({
      asNew,
      least,
      most: least + width,
      shim,
      dressTips,
      asNewHolds: isEven ? ('everywhere' as const) : ('at the closest' as const),
      tolerances: { ...ASK.tolerances, setting },
    })),
});
