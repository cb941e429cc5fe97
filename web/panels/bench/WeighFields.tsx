import type { Fault } from '../../../geometry/job/fault.ts';
import { plain } from '../../../geometry/sheet/figure.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { TextInput } from '../../fields/TextInput.tsx';
import type { MixInHand } from './use-mix-in-hand.ts';

/** What really went in, and from which packs. */
export function WeighFields({ mix: { step, weighed, notes, target, put } }: { readonly mix: MixInHand }) {
  const { massA, massB } = notes;
  const putA = (grams: number): readonly Fault[] => {
    // The scale still shows the same with B on top.
    const rest = massA === undefined || massB === undefined ? undefined : massA + massB - grams;
    return put('grams of A', { massA: grams, massB: rest !== undefined && rest > 0 ? rest : undefined });
  };
  const putAB = (grams: number): readonly Fault[] => {
    if (massA === undefined) return [];
    if (grams <= massA) {
      const needs = `more than A alone, ${plain(massA)} g: the scale shows both`;
      return [{ field: 'Scale with B', found: `${plain(grams)} g`, needs }];
    }
    return put('grams of B', { massB: grams - massA });
  };
  return (
    <div className="bench-fields">
      {(target.kind === 'weigh' || target.kind === 'too-coarse') && (
        <>
          <QuantityField
            label="Scale with A"
            quantity="mass"
            value={massA ?? null}
            path={`bench.${step}.massA`}
            min={0.1}
            step={weighed.step}
            onCommit={putA}
          />
          <QuantityField
            label="Scale with B on top"
            quantity="mass"
            value={massA === undefined || massB === undefined ? null : massA + massB}
            path={`bench.${step}.massB`}
            isDisabled={massA === undefined}
            step={weighed.step}
            onCommit={putAB}
          />
        </>
      )}
      {(['packA', 'packB'] as const).map((pack) => (
        <TextInput
          key={pack}
          label={`Pack number of ${pack === 'packA' ? 'A' : 'B'}`}
          value={notes[pack] ?? ''}
          path={`bench.${step}.${pack}`}
          onCommit={(text) => put('pack number', { [pack]: text.trim() })}
        />
      ))}
    </div>
  );
}
