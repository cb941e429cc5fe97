import type { JobFile } from '../../../geometry/job/job-file.ts';
import { plain } from '../../../geometry/sheet/figure.ts';
import type { Result } from '../../../geometry/sheet/result.ts';
import { lawWords } from './law-words.ts';
import { coatTimes, type MaterialTime, puttyTimes } from './material-times.ts';
import '../figure-table.css';
import './TimesHere.css';

/** How long putty and coat take at the temperature of the part, beside what their data sheets say. */
export function TimesHere({ job, result }: { readonly job: JobFile; readonly result: Result }) {
  const surface = job.climate?.surface;
  const here = surface === undefined ? 'Here' : `Here, ${plain(surface)} °C`;
  return (
    <section className="section" aria-label="Times here">
      <h2>Times at the part's temperature</h2>
      <Times
        material="Putty"
        here={here}
        times={puttyTimes(job, result)}
        law={lawWords(job.filler?.activationEnergy)}
      />
      <Times
        material="Coat"
        here={here}
        times={coatTimes(job, result)}
        law={lawWords(job.coat?.activationEnergy)}
      />
      {surface === undefined && (
        <p className="quiet">The temperature of the part is not known: the times stand as they are quoted.</p>
      )}
    </section>
  );
}

interface TimesProps {
  readonly material: string;
  readonly here: string;
  readonly times: readonly MaterialTime[];
  readonly law: string;
}

function Times({ material, here, times, law }: TimesProps) {
  // Data sheets mostly quote all of them for one temperature: it then stands once.
  const temperatures = new Set(times.flatMap(({ at }) => (at === null ? [] : [at])));
  const [first] = temperatures;
  const isOne = temperatures.size === 1;
  return (
    <div>
      <table className="figure-table times-here">
        <thead>
          <tr>
            <th scope="col">{material}</th>
            <th scope="col">{isOne ? `As quoted, ${plain(first)} °C` : 'As quoted'}</th>
            <th scope="col">{here}</th>
          </tr>
        </thead>
        <tbody>
          {times.map(({ what, quoted, at, here: value }) => (
            <tr key={what}>
              <th scope="row">{what}</th>
              <td>{isOne || at === null ? quoted : `${quoted} at ${plain(at)} °C`}</td>
              <td>{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="quiet">By: {law}.</p>
    </div>
  );
}
