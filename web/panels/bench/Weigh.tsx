import { TriangleAlert } from 'lucide-react';
import { Button } from 'react-aria-components';
import { figure, plain } from '../../../geometry/sheet/figure.ts';
import { amissWords, putRight, type WeighTarget } from '../../bench/weigh-target.ts';
import type { MixInHand } from './use-mix-in-hand.ts';

/** A and B for this mix, to be read at the scale; and what is wrong with the one in the bowl. */
export function Weigh({ mix: { weighed, notes, target, put } }: { readonly mix: MixInHand }) {
  const { mix } = weighed;
  const { massA, massB } = notes;
  const isWeighed = massA !== undefined && massB !== undefined;
  const amiss = target.kind === 'weigh' ? target.amiss : null;
  const right = amiss === null || !isWeighed ? null : putRight(weighed, massA, massB);
  return (
    <>
      <div className="bench-target">
        <Target target={target} mix={mix} />
        {target.kind === 'weigh' && mix.weigh !== null && (
          <Button
            className="button bench-button"
            isDisabled={isWeighed}
            onPress={() => put('grams', { massA: target.scaleA, massB: target.partB })}
          >
            {isWeighed ? 'Weighed' : 'Weighed as shown'}
          </Button>
        )}
      </div>
      {amiss !== null && (
        <div className="bench-amiss" role="alert">
          <TriangleAlert aria-hidden="true" />
          <p>
            {amissWords(amiss)}
            {right !== null && ` Add ${plain(right.mass)} g of ${right.part}, to ${plain(right.scale)} g.`}
          </p>
        </div>
      )}
    </>
  );
}

function Target({ target, mix }: { readonly target: WeighTarget; readonly mix: Volumes }) {
  switch (target.kind) {
    case 'cartridge':
      return (
        <>
          <p className="bench-label">Nothing to weigh</p>
          <p className="bench-words">
            The cartridge mixes A and B. Run the first of it off until the colour is even.
          </p>
        </>
      );
    case 'weigh':
      return (
        <dl className="bench-grams">
          <div>
            <dt>A to</dt>
            <dd>
              {plain(target.scaleA)}
              <small> g</small>
            </dd>
          </div>
          <div>
            <dt>with B to</dt>
            <dd>
              {plain(target.scaleAB)}
              <small> g</small>
            </dd>
          </div>
          <div className="bench-grams-b">
            <dt>B alone</dt>
            <dd>
              {plain(target.partB)}
              <small> g</small>
            </dd>
          </div>
        </dl>
      );
    case 'too-coarse':
      return (
        <p className="bench-words">
          The scale is too coarse for the B that goes with {plain(target.scaleA)} g of A. Add A, or measure
          both by volume.
        </p>
      );
    case 'measure':
      return (
        <>
          <dl className="bench-grams">
            <div>
              <dt>A</dt>
              <dd>
                {figure(mix.partA.volume)}
                <small> mL</small>
              </dd>
            </div>
            <div>
              <dt>B</dt>
              <dd>
                {figure(mix.partB.volume)}
                <small> mL</small>
              </dd>
            </div>
          </dl>
          <p className="bench-words">
            {target.why === 'no-densities'
              ? 'Measure by volume: the data sheet here has no densities of A and B, so grams are not known.'
              : 'Measure by volume: the scale is too coarse for so small a mix.'}
          </p>
        </>
      );
  }
}

interface Volumes {
  readonly partA: { readonly volume: number };
  readonly partB: { readonly volume: number };
}
