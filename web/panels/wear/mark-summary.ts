import { USUAL_GAUGE_ERROR } from '../../../geometry/job/defaults.ts';
import type { MarkFile, PartFile } from '../../../geometry/job/job-file.ts';
import { counted } from '../../../geometry/sheet/figure.ts';
import { formatQuantity } from '../../fields/format-quantity.ts';
import type { ScreenUnits } from '../../fields/quantity-units.ts';
import { faceLabel } from '../../view/face-label.ts';
import { type FaceNumber, faceNumbers, numberText, valueText } from './face-words.ts';

/** A mark in plain words: what it is, and then where and how deep. */
export interface MarkSummary {
  readonly what: string;
  readonly where: string;
}

export function markSummary(mark: MarkFile, part: PartFile, units: ScreenUnits): MarkSummary {
  const [first, second] = faceNumbers(part, mark.face);
  const length = (size: number) => valueText(size, 'length', units);
  const on = mark.face === 'face' ? '' : `, ${faceLabel(mark.face)}`;
  switch (mark.kind) {
    case 'patch': {
      const [from, to] = typeof mark.depth === 'number' ? [mark.depth, mark.depth] : mark.depth;
      const depth =
        from === to
          ? length(from)
          : `${formatQuantity(from, 'length', units, { as: 'typed' })} to ${length(to)}`;
      return {
        what: `Patch${on}, ${depth}`,
        where: `${range(first, mark.first, units)}, ${range(second, mark.second, units)}`,
      };
    }
    case 'pit':
      return {
        what: `Pit${on}, ${length(mark.depth)}`,
        where: `${length(mark.diameter)} across, ${numberText(first, mark.at[0], units)}, ${numberText(second, mark.at[1], units)}`,
      };
    case 'area':
      return {
        what: `Area${on}, ${length(mark.depth)}`,
        where: counted(mark.outline.length, 'corner', 'corners'),
      };
    case 'stroke':
      return {
        what: mark.clear === true ? `Wiped${on}` : `Brush${on}, ${length(mark.depth ?? 0)}`,
        where: `radius ${length(mark.radius)}${mark.clear === true ? '' : `, ${mark.edge ?? 'hard'} edge`}`,
      };
    case 'smooth':
      return {
        what: `Smoothed${on}`,
        where: `radius ${length(mark.radius)}, strength ${Math.round(mark.strength * 100)} %`,
      };
    case 'edge':
      return {
        what: `Edge loss${on}, up to ${length(Math.max(...mark.profile.map(([, loss]) => loss)))}`,
        where: `${range(first, [mark.profile[0][0], mark.profile[mark.profile.length - 1][0]], units)}, ${counted(mark.profile.length, 'point', 'points')}`,
      };
    case 'readings': {
      const depths = mark.points.map(([, , depth]) => depth);
      const [least, most] = [Math.min(...depths), Math.max(...depths)];
      const from = least === most ? '' : `${formatQuantity(least, 'length', units, { as: 'typed' })} to `;
      return {
        what: `Gauge readings${on}, ${depths.length}`,
        where: `${from}${length(most)}, gauge ±${length(mark.gaugeError ?? USUAL_GAUGE_ERROR)}`,
      };
    }
    case 'scan':
      return { what: `Scan${on}`, where: 'kept in the job, not worked out by this version' };
  }
}

/** `radius 90 to 130 mm`; an angle needs no name beside its sign. */
function range(
  { label, quantity }: FaceNumber,
  [from, to]: readonly [number, number],
  units: ScreenUnits,
): string {
  const name = quantity === 'angle' ? '' : `${label} `;
  return `${name}${formatQuantity(from, quantity, units, { as: 'typed' })} to ${valueText(to, quantity, units)}`;
}
