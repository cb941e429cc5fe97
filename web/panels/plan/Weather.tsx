import { CircleCheck, Clock, OctagonX, TriangleAlert } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../../geometry/job/fault.ts';
import type { ClimateFile } from '../../../geometry/job/job-file.ts';
import { wallTime } from '../../../geometry/job/shop-clock.ts';
import { LEAST_MARGIN, MOST_HUMIDITY } from '../../../geometry/plan/climate.ts';
import type { Result } from '../../../geometry/sheet/result.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import { jobStore, useJob } from '../../job/job-store.ts';
import { OptionalQuantity } from '../OptionalQuantity.tsx';
import { Refusal } from '../Refusal.tsx';
import { sentenceCase } from '../sentence-case.ts';
import { withClimate } from './plan-edits.ts';
import { readingAge } from './reading-age.ts';
import { useWallTime } from './use-wall-time.ts';
import { WallTimeField } from './WallTimeField.tsx';
import './Weather.css';

/** Whether the weather in the shop lets the materials go on, and the three readings it hangs on. */
export function Weather({ result }: { readonly result: Result }) {
  const climate = useJob((state) => state.job.climate);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const readNow = () => setFaults(change('time of the reading', { takenAt: wallTime(new Date()) }));
  return (
    <section className="section" aria-label="Weather">
      <h2>Weather</h2>
      <Verdict result={result} />
      {climate !== undefined && <Age takenAt={climate.takenAt} />}
      <div className="rows">
        <OptionalQuantity
          label="Air"
          known="The temperature of the air is known"
          quantity="temperature"
          path="climate.air"
          value={climate?.air}
          start={20}
          {...DEGREES}
          onCommit={(air) => change('temperature of the air', { air })}
        />
        <OptionalQuantity
          label="Part, on its surface"
          known="The temperature of the part is known"
          quantity="temperature"
          path="climate.surface"
          value={climate?.surface}
          start={20}
          {...DEGREES}
          help="It lags behind the air: lay the probe on the metal."
          onCommit={(surface) => change('temperature of the part', { surface })}
        />
        <OptionalQuantity
          label="Humidity"
          known="The humidity is known"
          quantity="percent"
          path="climate.humidity"
          value={climate?.humidity}
          start={60}
          min={0}
          max={100}
          onCommit={(humidity) => change('humidity', { humidity })}
        />
      </div>
      <WallTimeField
        label="Time of the reading"
        kind="datetime-local"
        path="climate.takenAt"
        value={climate?.takenAt}
        onCommit={(takenAt) => change('time of the reading', { takenAt })}
      />
      <div className="buttons">
        <Button className="button" onPress={readNow}>
          <Clock aria-hidden="true" />
          Read just now
        </Button>
      </div>
      <Refusal faults={faults} />
    </section>
  );
}

/** What a thermometer in a shop can show. */
const DEGREES = { min: -40, max: 150 } as const;

function change(label: string, fields: { readonly [K in keyof ClimateFile]?: ClimateFile[K] | undefined }) {
  const [field] = Object.keys(fields);
  return jobStore.getState().edit(label, (job) => withClimate(job, fields), `climate.${field}`);
}

function Verdict({ result }: { readonly result: Result }) {
  const { climate } = result;
  if (climate === null) {
    const why = result.warnings.find(({ code }) => code === 'climate-incomplete' || code === 'climate-dry');
    return (
      <p className="weather-open">
        <TriangleAlert aria-hidden="true" />
        {why?.text ?? 'Read air, part and humidity: they say whether the part is dry.'}
      </p>
    );
  }
  const { dewPoint, margin, fit, reasons, changes } = climate;
  return (
    <div className="weather-verdict" data-fit={fit}>
      <p className="weather-lead">
        {fit ? <CircleCheck aria-hidden="true" /> : <OctagonX aria-hidden="true" />}
        {fit ? 'Go' : 'Wait'}
      </p>
      <dl className="weather-figures">
        <Figure what="Dew point" value={degrees(dewPoint)} />
        <Figure what="Part above it" value={degrees(margin)} />
        <Figure what="Wanted" value={`${degrees(LEAST_MARGIN)} or more`} />
      </dl>
      {fit ? (
        <p>The part is dry enough, and the air is at {MOST_HUMIDITY * 100} % humidity or less.</p>
      ) : (
        <>
          <ul className="weather-lines" aria-label="Why">
            {reasons.map((reason) => (
              <li key={reason}>{sentenceCase(typeset(reason))}.</li>
            ))}
          </ul>
          <h3>What to change</h3>
          <ul className="weather-lines">
            {changes.map((line) => (
              <li key={line}>{typeset(line)}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

function Figure({ what, value }: { readonly what: string; readonly value: string }) {
  return (
    <div>
      <dt className="quiet">{what}</dt>
      <dd>{value}</dd>
    </div>
  );
}

function Age({ takenAt }: { readonly takenAt: string | undefined }) {
  const { kind, text } = readingAge(takenAt, useWallTime());
  if (kind === 'unknown' || kind === 'fresh') return <p className="quiet">{text}</p>;
  return (
    <p className="weather-open">
      <TriangleAlert aria-hidden="true" />
      {text}
    </p>
  );
}

/** With a true minus sign, to the tenth. */
function degrees(value: number): string {
  const size = Math.abs(value).toFixed(1).replace(/\.0$/, '');
  return `${value < 0 && size !== '0' ? '−' : ''}${size} °C`;
}
