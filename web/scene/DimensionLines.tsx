import { useRef } from 'react';
import type { Vec3 } from '../../geometry/units.ts';
import { formatQuantity } from '../fields/format-quantity.ts';
import { shownUnit } from '../fields/quantity-units.ts';
import { useJob } from '../job/job-store.ts';
import { useView } from '../view/view-store.ts';
import { dimensionOf } from './dimension.ts';
import type { Dimension } from './dimension-shape.ts';
import type { OverlayProps } from './overlay-props.ts';
import { useOverlay } from './use-overlay.ts';
import './dimension-lines.css';

/** The dimension whose field is in hand, drawn on the part with its value. */
export function DimensionLines({ live, viewport }: OverlayProps) {
  const field = useView((view) => view.editingField);
  const index = useJob(({ job }) => job.parts.findIndex(({ id }) => id === live.part.id));
  const part = useJob(({ job }) => job.parts[index]);
  const units = useView((view) => view.units);
  const dimension = field === null || part === undefined ? null : dimensionOf(field, index, part, live.part);
  const thin = useRef<SVGPathElement>(null);
  const halo = useRef<SVGPathElement>(null);
  const line = useRef<SVGPathElement>(null);
  const text = useRef<SVGTextElement>(null);
  useOverlay(() => {
    if (dimension === null) return;
    const { project } = viewport.sight();
    const path = (points: readonly Vec3[]) =>
      points.length === 0
        ? ''
        : `M${points
            .map(project)
            .map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`)
            .join('L')}`;
    const measured = path(dimension.measured) + arrows(dimension, project);
    thin.current?.setAttribute('d', dimension.thin.map(path).join(''));
    halo.current?.setAttribute('d', measured);
    line.current?.setAttribute('d', measured);
    const [x, y] = project(dimension.at);
    text.current?.setAttribute('x', x.toFixed(1));
    text.current?.setAttribute('y', y.toFixed(1));
  }, [viewport.onChange]);
  if (dimension === null) return null;
  const { quantity, value, sign, noun } = dimension;
  const unit = noun ?? shownUnit(quantity, units).symbol;
  return (
    <g className="dimension">
      <path className="dimension-thin" ref={thin} />
      <path className="dimension-halo" ref={halo} />
      <path className="dimension-line" ref={line} />
      <text ref={text}>
        {sign} {formatQuantity(value, quantity, units, { as: 'typed' })} {unit}
      </text>
    </g>
  );
}

/** px. */
const ARROW = 11;

/** Heads at both ends, pointing outward along the line as it is seen. */
function arrows(
  { measured }: Dimension,
  project: (point: Vec3) => readonly [number, number, number],
): string {
  if (measured.length < 2) return '';
  const seen = measured.map(project);
  const last = seen.length - 1;
  return head(seen[0], seen[1]) + head(seen[last], seen[last - 1]);
}

function head(
  [x, y]: readonly [number, number, number],
  [fromX, fromY]: readonly [number, number, number],
): string {
  const length = Math.hypot(x - fromX, y - fromY);
  if (length < 1) return '';
  const [dx, dy] = [((fromX - x) / length) * ARROW, ((fromY - y) / length) * ARROW];
  const foot = (side: number) => `${(x + dx + side * dy).toFixed(1)} ${(y + dy - side * dx).toFixed(1)}`;
  return `M${foot(0.35)}L${x.toFixed(1)} ${y.toFixed(1)}L${foot(-0.35)}`;
}
