import { COST, ROUNDED_TIP_LEAK, USUAL_SETTINGS } from '../../../geometry/clearance/gap-cost.ts';
import type { ClearanceResult } from '../../../geometry/sheet/clearance-result.ts';
import type { ScreenUnits } from '../../fields/quantity-units.ts';
import { useView } from '../../view/view-store.ts';
import { SheetFold } from '../fill/SheetFold.tsx';
import { keptUnits } from '../kept-units.ts';
import { gapWords, spreadWords } from './gap-text.ts';

/** What the gap may cost at the most, what others set, and why the edge of the tip counts. */
export function GapCost({ clearance }: { readonly clearance: ClearanceResult }) {
  const units = useView((view) => view.units);
  const { ring } = clearance;
  return (
    <section className="section" aria-label="What the gap costs">
      <SheetFold heading="What the gap costs">
        <p>{keptUnits(costWords(clearance, units))}</p>
        <ul className="plain-lines">
          <li>
            Others set{' '}
            {USUAL_SETTINGS.map((setting) => `${spreadWords(setting, units)} on ${setting.what}`).join(', ')}.
            Go by the maker’s figure where there is one.
          </li>
          <li>
            A tip edge worn round leaks up to {ROUNDED_TIP_LEAK.toFixed(2)} times as much as a square one at
            the same gap: square the edges of the tips as you dress them.
          </li>
          {ring !== null && (
            <li className="quiet">
              For comparison, wear rings of {gapWords(ring.diameter, units)}, the bore of the plate: least
              clearance {gapWords(ring.mm, units)} on the diameter. That is radial and says nothing about this
              gap.
            </li>
          )}
        </ul>
        <p className="quiet">{COST.source}.</p>
      </SheetFold>
    </section>
  );
}

/** Less than this is no change, mm. */
const NOTHING = 0.005;

function costWords({ cost, asFound, coated }: ClearanceResult, units: ScreenUnits): string {
  const published = spreadWords({ least: COST.from, most: COST.to }, units);
  const [low, high] = COST.specificSpeed;
  if (cost === null) {
    if (Math.min(asFound.mean, coated.mean) <= 0)
      return 'The parts meet. What the gap costs can be told once they run free.';
    if (Math.abs(asFound.mean - coated.mean) < NOTHING) return 'In the mean the gap stays as it was found.';
    return `No figure is published for a change from ${gapWords(asFound.mean, units)} to ${gapWords(coated.mean, units)}: the bound that is known covers ${published}.`;
  }
  const outside =
    cost.outside > 0
      ? ` ${gapWords(cost.outside, units)} of the change lies outside that range and is not counted.`
      : '';
  return `From ${gapWords(cost.from, units)} to ${gapWords(cost.to, units)} in the mean: a ${cost.way} of anything from next to nothing up to ${cost.most.toFixed(0)} points of efficiency. That is the published upper bound, ${COST.perMm} points a mm from ${published}, semi-open impellers of specific speed ${low} to ${high} (US); no formula predicts it.${outside}`;
}
