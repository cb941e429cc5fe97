import { CircleCheck, TriangleAlert } from 'lucide-react';
import type { ClearanceResult } from '../../../geometry/sheet/clearance-result.ts';
import { faceLabel } from '../../view/face-label.ts';
import { useView } from '../../view/view-store.ts';
import { keptUnits } from '../kept-units.ts';
import { gapWords, spreadWords, VERDICTS } from './gap-text.ts';
import '../verdict-lead.css';
import './GapVerdict.css';

/** Whether it runs free, between what the gap will lie, and where it is tightest. */
export function GapVerdict({ clearance }: { readonly clearance: ClearanceResult }) {
  const units = useView((view) => view.units);
  const { verdict, coated, band, tolerance, tightest } = clearance;
  const { worstCase } = tolerance;
  return (
    <div className="gap-verdict" data-verdict={verdict}>
      <p className="verdict-lead">
        {verdict === 'fit' ? <CircleCheck aria-hidden="true" /> : <TriangleAlert aria-hidden="true" />}
        {VERDICTS[verdict]}
      </p>
      <p>
        {keptUnits(
          `${spreadWords(coated, units)} filled and coated${worstCase > 0 ? `, ±${gapWords(worstCase, units)} at worst` : ''}; ${spreadWords(band, units)} allowed.`,
        )}
      </p>
      <p>
        {keptUnits(
          `Tightest ${gapWords(tightest.gap, units)}: ${faceLabel(tightest.tip)}, at ${gapWords(tightest.radius, units)} from the middle of the shaft.`,
        )}
      </p>
    </div>
  );
}
