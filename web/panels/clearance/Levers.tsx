import { CircleCheck, TriangleAlert } from 'lucide-react';
import { Button } from 'react-aria-components';
import type { Lever } from '../../../geometry/clearance/levers.ts';
import type { ClearanceResult } from '../../../geometry/sheet/clearance-result.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import { useJob } from '../../job/job-store.ts';
import { useView } from '../../view/view-store.ts';
import { inUnits, spreadWords, VERDICTS } from './gap-text.ts';
import { withLevers } from './lever-edits.ts';
import './Levers.css';

/** What can be done to bring the gap in: the smallest change that fits, and what each lever alone would do. */
export function Levers({ clearance }: { readonly clearance: ClearanceResult }) {
  const units = useView((view) => view.units);
  const edit = useJob((state) => state.edit);
  const pull = (levers: readonly Lever[], label: string) =>
    edit(label, (job) => withLevers(job, levers, clearance));
  const { fit, noFit } = clearance;
  const cautions = [...new Set((fit?.levers ?? []).flatMap(({ caution }) => caution ?? []))];
  return (
    <section className="section" aria-label="Ways to bring it in">
      <h2>To bring it in</h2>
      {fit !== null && fit.levers.length > 0 && (
        <div className="fit">
          <h3>The smallest change that fits</h3>
          <ul className="fit-steps">
            {fit.levers.map(({ kind, words }) => (
              <li key={kind}>{typeset(inUnits(words, units))}</li>
            ))}
          </ul>
          <p>The gap is then {spreadWords(fit.coated, units)}.</p>
          {cautions.map((caution) => (
            <p key={caution} className="quiet">
              {typeset(caution)}
            </p>
          ))}
          <Button className="button button-main" onPress={() => pull(fit.levers, 'find me a fit')}>
            Take this fit
          </Button>
        </div>
      )}
      {fit !== null && fit.levers.length === 0 && (
        <p>It fits as it is. What else could be done, and what it would make of the gap:</p>
      )}
      {noFit !== null && <p className="fit-none">{typeset(inUnits(noFit, units))}</p>}
      <ul className="levers">
        {clearance.levers.map((lever) => (
          <li key={lever.kind} className="lever" data-now={lever.isNow || undefined}>
            <div className="lever-words">
              <h3>{typeset(inUnits(lever.words, units))}</h3>
              {lever.isNow ? (
                <p className="quiet">It is so already.</p>
              ) : (
                <>
                  <p className="lever-effect">
                    {lever.verdict === 'fit' ? (
                      <CircleCheck aria-hidden="true" />
                    ) : (
                      <TriangleAlert aria-hidden="true" />
                    )}
                    {spreadWords(lever.coated, units)}: {VERDICTS[lever.verdict].toLowerCase()}
                    {lever.likely !== lever.verdict &&
                      ', though likely not when tolerances go their own ways'}
                  </p>
                  {lever.caution !== null && <p className="quiet">{typeset(lever.caution)}</p>}
                </>
              )}
            </div>
            {!lever.isNow && (
              <Button
                className="button"
                aria-label={`Take this: ${lever.words}`}
                onPress={() => pull([lever], lever.words.toLowerCase())}
              >
                Take this
              </Button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
