import { useMemo, useRef } from 'react';
import type { ClearanceResult } from '../../../geometry/sheet/clearance-result.ts';
import { gapChart } from '../../../geometry/sheet/gap-chart.ts';
import { shownUnit } from '../../fields/quantity-units.ts';
import { useView } from '../../view/view-store.ts';
import { useWidth } from '../use-width.ts';
import { gapWords, spreadWords } from './gap-text.ts';
import './GapChart.css';

/** px of letters, and how high the plot is against its width: there is less width than on paper. */
const SIZE = { text: 14, high: 0.62 } as const;

/** The gap against the radius in its three states: the sheet's own drawing, as wide as the panel. */
export function GapChart({ clearance }: { readonly clearance: ClearanceResult }) {
  const box = useRef<HTMLDivElement>(null);
  const width = useWidth(box);
  const units = useView((view) => view.units);
  const drawing = useMemo(() => {
    const { times, over, symbol } = shownUnit('length', units);
    const { asFound, filled, coated, band } = clearance;
    return gapChart(clearance, {
      title: 'Gap against the radius',
      description: `As found ${spreadWords(asFound, units)}, filled ${spreadWords(filled, units)}, coated ${spreadWords(coated, units)}; ${spreadWords(band, units)} allowed.`,
      id: 'gap-in-sight',
      width,
      ...SIZE,
      unit: { size: times / over, symbol, depth: (gap) => gapWords(gap, units) },
    }).markup;
  }, [clearance, units, width]);
  // biome-ignore lint/security/noDangerouslySetInnerHtml: the engine writes it and escapes everything a person wrote
  return <div className="gap-screen" ref={box} dangerouslySetInnerHTML={{ __html: drawing }} />;
}
