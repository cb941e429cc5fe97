import type { PackCount } from '../../../geometry/material/pack.ts';
import type { Weighing as WeighingOf } from '../../../geometry/material/weighing.ts';
import { plain } from '../../../geometry/sheet/figure.ts';

/** The packs to buy, in words. */
export function Buy({ packs }: { readonly packs: readonly PackCount[] }) {
  if (packs.length === 0) return null;
  return <p>Buy {packs.map(({ label, count }) => `${count} × ${label}`).join(', ')}.</p>;
}

/** What goes wrong when a ratio by volume is weighed out as it stands, and what to weigh instead. */
export function Weighing({ weighing }: { readonly weighing: WeighingOf | null }) {
  if (weighing === null) return null;
  const much = weighing.error > 0 ? 'too much' : 'too little';
  return (
    <p>
      On the scale, {plain(Number(weighing.partBPer100.toFixed(1)))} g of B to 100 g of A. The ratio is by
      volume: weighed out as it stands it puts in {Math.abs(weighing.error * 100).toFixed(0)} % {much} B.
    </p>
  );
}
