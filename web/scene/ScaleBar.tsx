import { useRef } from 'react';
import { formatQuantity } from '../fields/format-quantity.ts';
import { shownUnit } from '../fields/quantity-units.ts';
import { useView } from '../view/view-store.ts';
import { type FlatView, scaleBarLength } from './flat-view.ts';
import { useOverlay } from './use-overlay.ts';

/** px at most. */
const MOST = 120;

/** A length to measure the flat picture by. */
export function ScaleBar({ view }: { readonly view: FlatView }) {
  const units = useView((state) => state.units);
  const bar = useRef<SVGPathElement>(null);
  const text = useRef<SVGTextElement>(null);
  useOverlay(() => {
    const { scale } = view.lay();
    const { symbol, times, over } = shownUnit('length', units);
    const length = scaleBarLength(scale, MOST, times / over);
    const px = (length * scale).toFixed(1);
    bar.current?.setAttribute('d', `M1 4v8M1 8h${px}m0 -4v8`);
    if (text.current !== null)
      text.current.textContent = `${formatQuantity(length, 'length', units, { as: 'typed' })} ${symbol}`;
  }, [view.onChange]);
  return (
    <svg className="scale-bar" viewBox={`0 0 ${MOST + 4} 32`} width={MOST + 4} height={32} aria-hidden="true">
      <path ref={bar} />
      <text ref={text} x={1} y={27} />
    </svg>
  );
}
