import type { Fault } from '../../../geometry/job/fault.ts';
import { plain } from '../../../geometry/sheet/figure.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { lostOf, MOST_WASTE, wasteOf } from './lost-share.ts';

interface CoatWasteProps {
  /** On top of the need, %. */
  readonly waste: number;
  readonly onCommit: (waste: number) => readonly Fault[];
}

/** The waste of coat, typed either way: on top of the need, or as the share lost of what is mixed. */
export function CoatWaste({ waste, onCommit }: CoatWasteProps) {
  const lost = lostOf(waste);
  return (
    <>
      <QuantityField
        label="Waste of coat"
        quantity="percent"
        path="repair.coatWaste"
        value={waste}
        min={0}
        max={MOST_WASTE}
        help={`${plain(waste)} % on top of the need is ${plain(Number(lost.toFixed(1)))} % of what you mix lost.`}
        onCommit={onCommit}
      />
      <QuantityField
        label="Lost, of the coat you mix"
        quantity="percent"
        path="repair.coatWaste lost"
        value={lost}
        min={0}
        max={lostOf(MOST_WASTE)}
        help={TYPICAL}
        onCommit={(share) => onCommit(wasteOf(share))}
      />
    </>
  );
}

/** Trade practice for brush and roller; the spray loss is from memory. */
const TYPICAL =
  'Brush or roller commonly lose 10 to 15 %; add 5 to 20 % for a rough surface and 5 to 10 % for uneven film. Spray loses more, often 20 to 40 %.';
