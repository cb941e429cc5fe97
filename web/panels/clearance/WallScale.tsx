import { wallColour } from '../../../geometry/sheet/wall-colour.ts';
import type { WallScale as Scale } from '../../../geometry/sheet/wall-shapes.ts';
import { type ScreenUnits, shownUnit } from '../../fields/quantity-units.ts';
import { depthLabel } from '../../scene/depth-label.ts';

interface WallScaleProps {
  readonly scale: Scale;
  readonly limit: number | null;
  readonly units: ScreenUnits;
  /** Whether a hole, and a cross at the thinnest place, is on the map. */
  readonly isThrough: boolean;
  readonly isCrossed: boolean;
}

const BAR = 12;
/** The bar is at least this long, px, and numbers closer than these, px, would touch. */
const SHORTEST = 240;
const APART = { mm: 30, in: 52 } as const;

/** What the colours and the lines of the map stand for. */
export function WallScale({ scale: { from, to, step }, limit, units, isThrough, isCrossed }: WallScaleProps) {
  const steps = Math.round((to - from) / step);
  const every = Math.ceil((APART[units] * steps) / SHORTEST);
  const percent = (i: number): string => `${(100 * i) / steps}%`;
  const { symbol } = shownUnit('length', units);
  const at = (i: number): string => depthLabel(Math.round((from + i * step) * 100) / 100, units);
  return (
    <div className="wall-scale">
      <p>Metal left, {symbol}</p>
      <svg
        height={34}
        role="img"
        aria-label={`Colours from dark at ${at(0)} to pale at ${at(steps)} ${symbol} of metal left, a line every ${depthLabel(step, units)} ${symbol}`}
      >
        {Array.from({ length: steps }, (_, i) => (
          <rect
            // biome-ignore lint/suspicious/noArrayIndexKey: the fields are their places
            key={i}
            x={percent(i)}
            width={percent(1.02)}
            height={BAR}
            fill={wallColour((i + 0.5) / steps)}
          />
        ))}
        {Array.from({ length: steps + 1 }, (_, i) => i)
          .filter((i) => (steps - i) % every === 0)
          .map((i) => (
            <text key={i} x={percent(i)} y={BAR + 17} textAnchor="middle">
              {at(i)}
            </text>
          ))}
      </svg>
      <ul className="wall-key">
        {limit !== null && (
          <li>
            <svg viewBox="0 0 28 12" aria-hidden="true">
              <path className="wall-key-limit" d="M1 6H27" />
            </svg>
            limit {depthLabel(limit, units)} {symbol}
          </li>
        )}
        {isThrough && (
          <li>
            <svg viewBox="0 0 28 12" aria-hidden="true">
              <path className="wall-key-hole" d="M9 1h10v10H9zL19 11M9 11L19 1" />
            </svg>
            worn through
          </li>
        )}
        {isCrossed && (
          <li>
            <svg viewBox="0 0 28 12" aria-hidden="true">
              <path className="wall-key-limit wall-key-thinnest" d="M9 6h10M14 1v10" />
            </svg>
            thinnest
          </li>
        )}
      </ul>
    </div>
  );
}
