import { figure } from '../../../geometry/sheet/figure.ts';
import type { CoatResult } from '../../../geometry/sheet/result.ts';
import { bowlTotal, noWeighingText, portionWords, roundingText } from './scale-words.ts';
import '../figure-table.css';
import './Needed.css';

interface CoatLayersProps {
  readonly coat: CoatResult;
  /** The data sheet names the densities of A and of B. */
  readonly hasDensities: boolean;
}

/** What to mix for each coat: A and B as the scale is to show them, a line a mix. */
export function CoatLayers({ coat, hasDensities }: CoatLayersProps) {
  const { layers, selfMixing } = coat;
  const mixes = layers.flatMap((layer) => layer.mixes);
  const isWeighed = mixes.some(({ weigh }) => weigh !== null);
  const notes = [firstCoatText(coat), noWeighingText(selfMixing, hasDensities, mixes), roundingText(mixes)];
  return (
    <div>
      <table className="figure-table needed-table">
        <caption className="unseen">Coats</caption>
        <thead>
          <tr>
            <th scope="col">Coat</th>
            <th scope="col">A</th>
            <th scope="col">B</th>
            {isWeighed && <th scope="col">In one bowl</th>}
            <th scope="col">Mix</th>
          </tr>
        </thead>
        <tbody>
          {layers.flatMap((layer) =>
            layer.mixes.map((mix) => {
              const { a, b } = portionWords(mix);
              return (
                <tr key={`${layer.number} ${mix.number}`}>
                  <th scope="row">
                    {layer.number}
                    {layer.mixes.length > 1 && <span className="quiet">mix {mix.number}</span>}
                  </th>
                  <td>{a}</td>
                  <td>{b}</td>
                  {isWeighed && <td>{mix.weigh === null ? '–' : bowlTotal(mix.weigh)}</td>}
                  <td>{figure(mix.volume)} mL</td>
                </tr>
              );
            }),
          )}
        </tbody>
      </table>
      {notes
        .filter((note) => note !== '')
        .map((note) => (
          <p key={note} className="quiet">
            {note}
          </p>
        ))}
    </div>
  );
}

/** Why the first coat takes more; '' where it does not. */
function firstCoatText({ layers, leftVolume }: CoatResult): string {
  const [first, second] = layers;
  if (first === undefined) return '';
  const what = leftVolume > 0 ? 'the blast profile and the wear left to it' : 'the blast profile';
  if (second === undefined) return `It also fills ${what}.`;
  const more = first.volume - second.volume;
  return more > 0.005 ? `The first coat takes ${figure(more)} mL more: it fills ${what}.` : '';
}
