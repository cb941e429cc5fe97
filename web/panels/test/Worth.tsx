import { figure } from '../../../geometry/sheet/figure.ts';
import type { FlowTestResult, SavingResult } from '../../../geometry/sheet/flow-result.ts';
import './Worth.css';

/** What the repair is worth in a year, as far as the job tells. */
export function Worth({ flowTest: { saving, noSaving, comparison } }: { readonly flowTest: FlowTestResult }) {
  // Without two runs to compare the verdict says already what is missing.
  if (saving === null) return comparison === null ? null : <p className="quiet">{noSaving}</p>;
  return (
    <div>
      <p className="quiet">
        {saving.power < 0 ? 'It costs at duty' : 'It saves at duty'}
        {saving.isShaftOnly ? ', by the power at the shaft' : ', by the meter'}
      </p>
      <dl className="worth">
        {figuresOf(saving).map(({ what, value, error, unit }) => (
          <div key={what}>
            <dt className="quiet">{what}</dt>
            <dd>
              {figure(Math.abs(value))}
              {unit !== '' && <span className="worth-unit"> {unit}</span>}
            </dd>
            <dd className="quiet">± {figure(error)}</dd>
          </div>
        ))}
      </dl>
      {saving.isShaftOnly && (
        <p className="quiet">
          The meter sees more, by what the motor loses. Give the motor’s efficiency to have it counted.
        </p>
      )}
    </div>
  );
}

interface WorthFigure {
  readonly what: string;
  readonly value: number;
  readonly error: number;
  readonly unit: string;
}

function figuresOf({
  power,
  powerError,
  energy,
  energyError,
  money,
  moneyError,
}: SavingResult): WorthFigure[] {
  const of = (what: string, unit: string, value: number | null, error: number | null): WorthFigure[] =>
    value === null || error === null ? [] : [{ what, value, error, unit }];
  return [
    ...of('Money a year', '', money, moneyError),
    ...of('Energy a year', 'kWh', energy, energyError),
    ...of('Power', 'kW', power, powerError),
  ];
}
