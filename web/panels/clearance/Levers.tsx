import { CircleCheck, TriangleAlert } from 'lucide-react';
import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { Lever } from '../../../geometry/clearance/levers.ts';
import type { ClearanceResult } from '../../../geometry/sheet/clearance-result.ts';
import { VERDICT_WORDS } from '../../../geometry/sheet/clearance-text.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import type { ScreenUnits } from '../../fields/quantity-units.ts';
import { useJob } from '../../job/job-store.ts';
import { useView } from '../../view/view-store.ts';
import { DisclosureButton } from '../DisclosureButton.tsx';
import { keptUnits } from '../kept-units.ts';
import { inUnits, spreadWords } from './gap-text.ts';
import { withLevers } from './lever-edits.ts';
import '../Disclosure.css';
import './Levers.css';

/** What can be done to bring the gap in: the smallest change that fits, and what each lever alone would do. */
export function Levers({ clearance }: { readonly clearance: ClearanceResult }) {
  const units = useView((view) => view.units);
  const edit = useJob((state) => state.edit);
  const pull = (levers: readonly Lever[], label: string) =>
    edit(label, (job) => withLevers(job, levers, clearance));
  const { fit, noFit } = clearance;
  const isFit = fit !== null && fit.levers.length === 0;
  // The one that stands above as the smallest change is not said twice.
  const [first, ...more] = fit?.levers ?? [];
  const others = clearance.levers.filter(({ kind }) => more.length > 0 || kind !== first?.kind);
  const isOpen = (lever: LeverResult) => !isFit && !lever.isNow && lever.verdict === 'fit';
  const open = others.filter(isOpen);
  const folded = others.filter((lever) => !isOpen(lever));
  const list = (levers: readonly LeverResult[]) => (
    <ul className="levers">
      {levers.map((lever) => (
        <LeverRow
          key={lever.kind}
          lever={lever}
          units={units}
          onPull={() => pull([lever], inUnits(lever.words, units).toLowerCase())}
        />
      ))}
    </ul>
  );
  const cautions = [...new Set((fit?.levers ?? []).flatMap(({ caution }) => caution ?? []))];
  return (
    <section className="section" aria-label="Ways to bring it in">
      <h2>To bring it in</h2>
      {fit !== null && fit.levers.length > 0 && (
        <div className="fit">
          <h3>The smallest change that fits</h3>
          <ul className="fit-steps">
            {fit.levers.map(({ kind, words }) => (
              <li key={kind}>{keptUnits(typeset(inUnits(words, units)))}</li>
            ))}
          </ul>
          <p>{keptUnits(`The gap is then ${spreadWords(fit.coated, units)}.`)}</p>
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
      {isFit && <p>It fits as it is.</p>}
      {noFit !== null && <p className="fit-none">{keptUnits(typeset(inUnits(noFit, units)))}</p>}
      {open.length > 0 && (
        <>
          <h3>Or one of these alone</h3>
          {list(open)}
        </>
      )}
      {folded.length > 0 && (
        <Disclosure className="disclosure">
          <Heading level={3}>
            <DisclosureButton>
              {isFit ? 'What else could be done' : 'Ways that do not do it alone'}
            </DisclosureButton>
          </Heading>
          <DisclosurePanel className="disclosure-panel">{list(folded)}</DisclosurePanel>
        </Disclosure>
      )}
    </section>
  );
}

type LeverResult = ClearanceResult['levers'][number];

interface LeverRowProps {
  readonly lever: LeverResult;
  readonly units: ScreenUnits;
  onPull(): void;
}

/** One change, the gap it makes alone, and what to mind. */
function LeverRow({ lever, units, onPull }: LeverRowProps) {
  const words = inUnits(lever.words, units);
  const judged =
    lever.likely === lever.verdict
      ? VERDICT_WORDS[lever.verdict]
      : `${VERDICT_WORDS[lever.verdict]} at worst, likely ${VERDICT_WORDS[lever.likely]}`;
  return (
    <li className="lever" data-now={lever.isNow || undefined}>
      <div className="lever-words">
        <h3>{keptUnits(typeset(words))}</h3>
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
              <span>{keptUnits(`${spreadWords(lever.coated, units)}: ${judged}`)}</span>
            </p>
            {lever.caution !== null && <p className="quiet">{typeset(lever.caution)}</p>}
          </>
        )}
      </div>
      {!lever.isNow && (
        <Button className="button" aria-label={`Take this: ${words}`} onPress={onPull}>
          Take this
        </Button>
      )}
    </li>
  );
}
