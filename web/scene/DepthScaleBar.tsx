import { depthColour } from '../../geometry/sheet/depth-colour.ts';
import { type ScreenUnits, shownUnit } from '../fields/quantity-units.ts';
import { useView } from '../view/view-store.ts';
import { depthLabel } from './depth-label.ts';
import type { DepthScale } from './depth-scale.ts';
import './depth-scale-bar.css';

/** Height of the colours, px. */
const BAR = 12;
/** The bar is at least this long, px, and numbers closer than these, px, would touch. */
const SHORTEST = 150;
const APART = { mm: 24, in: 48 } as const;

/** What the colours stand for: one field a step between contour lines, numbered in the units of the screen. */
export function DepthScaleBar({ scale }: { readonly scale: DepthScale }) {
  const units = useView((view) => view.units);
  const steps = Math.round(scale.to / scale.step);
  const every = Math.ceil((APART[units] * steps) / SHORTEST);
  const percent = (step: number) => `${(100 * step) / steps}%`;
  return (
    <figure className="depth-scale">
      <figcaption>Depth, {shownUnit('length', units).symbol}</figcaption>
      <svg height={34} role="img" aria-label={words(scale, units)}>
        {Array.from({ length: steps }, (_, i) => (
          <rect
            // biome-ignore lint/suspicious/noArrayIndexKey: the fields are their places
            key={i}
            x={percent(i)}
            width={percent(1.02)}
            height={BAR}
            fill={depthColour((i + 0.5) / steps)}
          />
        ))}
        {Array.from({ length: steps + 1 }, (_, i) => i)
          .filter((i) => i % every === 0)
          .map((i) => (
            <text key={i} x={percent(i)} y={BAR + 17} textAnchor="middle">
              {depthLabel(i * scale.step, units)}
            </text>
          ))}
      </svg>
    </figure>
  );
}

function words({ to, step }: DepthScale, units: ScreenUnits): string {
  const unit = shownUnit('length', units).symbol;
  return `Colours from pale at 0 to dark at ${depthLabel(to, units)} ${unit}, a contour line every ${depthLabel(step, units)} ${unit}`;
}
