import { depthColour } from '../../geometry/sheet/depth-colour.ts';
import { type ScreenUnits, shownUnit } from '../fields/quantity-units.ts';
import { useView } from '../view/view-store.ts';
import { depthLabel } from './depth-label.ts';
import type { DepthScale } from './depth-scale.ts';
import './depth-scale-bar.css';

/** Width and height of the bar, px of its own drawing. */
const WIDTH = 224;
const BAR = 12;
/** Numbers closer than this, px, would touch. */
const APART = { mm: 34, in: 50 } as const;

/** What the colours stand for: one field a step between contour lines, numbered in the units of the screen. */
export function DepthScaleBar({ scale }: { readonly scale: DepthScale }) {
  const units = useView((view) => view.units);
  const steps = Math.round(scale.to / scale.step);
  const width = WIDTH / steps;
  const every = Math.ceil(APART[units] / width);
  return (
    <figure className="depth-scale">
      <figcaption>Depth, {shownUnit('length', units).symbol}</figcaption>
      <svg viewBox={`-8 0 ${WIDTH + 32} 34`} role="img" aria-label={words(scale, units)}>
        {Array.from({ length: steps }, (_, i) => (
          <rect
            // biome-ignore lint/suspicious/noArrayIndexKey: the fields are their places
            key={i}
            x={i * width}
            width={width + 0.5}
            height={BAR}
            fill={depthColour((i + 0.5) / steps)}
          />
        ))}
        {Array.from({ length: steps + 1 }, (_, i) => i)
          .filter((i) => i % every === 0)
          .map((i) => (
            <text key={i} x={i * width} y={BAR + 17} textAnchor="middle">
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
