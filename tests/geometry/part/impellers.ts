/** Impellers of every kind, for the tests of what is drawn of them. */
import type { Impeller, Vanes } from '../../../geometry/job/job.ts';
import { impeller } from '../../../geometry/part/impeller.ts';
import type { ImpellerBody, Part } from '../../../geometry/part/part.ts';
import { madeImpeller } from '../made.ts';

type Sizes = Partial<Omit<Impeller, 'vanes'>> & { readonly vanes?: Partial<Vanes> };

/** A semi-open one that turns clockwise, its five vanes round-nosed and lower at the rim, unless told otherwise. */
export const impellerPart = ({ vanes, ...sizes }: Sizes = {}, cell = 2): Part =>
  impeller(
    madeImpeller(
      { heightInlet: 40, heightOutlet: 26, nose: 'round', ...vanes },
      { rotation: 'clockwise', hubHeight: 40, ...sizes },
    ),
    cell,
  );

export function bodyOf({ body }: Part): ImpellerBody {
  if (body.kind !== 'impeller') throw new Error('bodyOf: needs an impeller, got a plate');
  return body;
}
