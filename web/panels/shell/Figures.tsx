import { TriangleAlert } from 'lucide-react';
import { useView } from '../../view/view-store.ts';
import { useLiveTotals } from '../../wear/live-totals-store.ts';
import { useEstimate } from '../../worker/estimate-client.ts';
import { estimatedFigures, type Figure, figureSet } from './figure-set.ts';
import { LongWork } from './LongWork.tsx';
import { liveFigures } from './live-figures.ts';
import './Figures.css';

/** The five figures that stay in sight on every step. While they are redone the last good ones stay, in a quieter ink. */
export function Figures() {
  const result = useEstimate((state) => state.result);
  const job = useEstimate((state) => state.job);
  const isPending = useEstimate((state) => state.pending);
  const totals = useLiveTotals((live) => live);
  const units = useView((view) => view.units);
  if (result === null || job === null) {
    return (
      <section className="figures" aria-label="Figures">
        <p className="quiet figures-wait">Working out the figures</p>
        <LongWork />
      </section>
    );
  }
  const estimated = estimatedFigures(result, job);
  const source = liveFigures(estimated, totals, result, job);
  return (
    <section className="figures" aria-label="Figures" aria-busy={isPending}>
      {figureSet(source, units).map((figure) => (
        <FigureOf key={figure.label} figure={figure} />
      ))}
      <LongWork />
      <p className="unseen" role="status">
        {spoken(figureSet(estimated, units))}
      </p>
    </section>
  );
}

function FigureOf({
  figure: { label, short = label, value, unit, note, isBad = false },
}: {
  readonly figure: Figure;
}) {
  return (
    <div className="figure" data-bad={isBad || undefined}>
      <h2 className="figure-label">
        <span className="figure-roomy">{label}</span>
        <span className="figure-tight">{short}</span>
      </h2>
      <p className="figure-value">
        {value}
        {unit !== '' && <span className="figure-unit"> {unit}</span>}
      </p>
      <p className="figure-note">
        {isBad && <TriangleAlert aria-hidden="true" />}
        {note}
      </p>
    </div>
  );
}

/** The settled figures as a sentence, read out when they have changed; in the middle of a stroke nothing is. */
function spoken(figures: readonly Figure[]): string {
  return figures.map(({ label, value, unit }) => `${label} ${value} ${unit}`).join(', ');
}
