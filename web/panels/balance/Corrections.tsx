import { Trash2 } from 'lucide-react';
import { Button } from 'react-aria-components';
import type { BalanceResult } from '../../../geometry/sheet/balance-result.ts';
import { figure, gauge } from '../../../geometry/sheet/figure.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import { useJob } from '../../job/job-store.ts';
import './Proposals.css';

/** What was decided to take off or put on; its effect is integrated over the part, not taken from the proposal. */
export function Corrections({ balance }: { readonly balance: BalanceResult }) {
  const edit = useJob((state) => state.edit);
  const { taken } = balance.correction;
  if (taken.length === 0) return null;
  const drop = (at: number) =>
    edit(
      'drop a correction',
      (job) =>
        job.rotor === undefined
          ? job
          : {
              ...job,
              rotor: { ...job.rotor, corrections: (job.rotor.corrections ?? []).filter((_, i) => i !== at) },
            },
      'rotor.corrections',
    );
  return (
    <section className="section" aria-label="Corrections taken">
      <h2>Taken</h2>
      <ol className="proposals">
        {taken.map(({ words, mass, effect, leaves }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: corrections are told apart by their place in the list
          <li key={i} className="proposal">
            <p>{typeset(words)}.</p>
            <p className="quiet">
              {figure(Math.abs(mass))} g {mass < 0 ? 'off' : 'on'}, pulls {figure(effect.amount)} g·mm at{' '}
              {Math.round(effect.angle) % 360}°{leaves === null ? '' : `, leaves ${gauge(leaves)} mm of wall`}
            </p>
            <Button className="button" onPress={() => drop(i)}>
              <Trash2 aria-hidden="true" />
              Drop it
            </Button>
          </li>
        ))}
      </ol>
    </section>
  );
}
