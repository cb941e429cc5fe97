import type { Mm } from '../units.ts';
import type { FlatPoint } from './flat-frame.ts';

/** SVG path data of polylines, mm to 0.01; closed ones end in Z. */
export function svgPath(lines: readonly (readonly FlatPoint[])[], closed: boolean): string {
  return lines
    .filter((line) => line.length > 1)
    .map((line) => `M${line.map(([x, y]) => `${place(x)} ${place(y)}`).join('L')}${closed ? 'Z' : ''}`)
    .join('');
}

/** A whole circle as path data. */
export function circlePath(radius: Mm): string {
  const r = place(radius);
  return `M${r} 0A${r} ${r} 0 1 0 -${r} 0A${r} ${r} 0 1 0 ${r} 0Z`;
}

function place(length: Mm): string {
  const text = length.toFixed(2).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

/**
 * Leaves out the points of a polyline that lie within `tolerance` mm of a straight line between the ones kept; ends stay.
 * Source: D. H. Douglas, T. K. Peucker, Cartographica 10(2), 1973.
 */
export function simplified(line: readonly FlatPoint[], tolerance: Mm): readonly FlatPoint[] {
  const last = line.length - 1;
  if (last < 2) return line;
  const keep = new Uint8Array(line.length);
  keep[0] = keep[last] = 1;
  const open: [number, number][] = [[0, last]];
  for (let span = open.pop(); span; span = open.pop()) {
    const [from, to] = span;
    let far = from;
    let most = tolerance;
    for (let i = from + 1; i < to; i++) {
      const off = distanceToSpan(line[i], line[from], line[to]);
      if (off > most) {
        most = off;
        far = i;
      }
    }
    if (far === from) continue;
    keep[far] = 1;
    open.push([from, far], [far, to]);
  }
  return line.filter((_, i) => keep[i] === 1);
}

function distanceToSpan([x, y]: FlatPoint, [x0, y0]: FlatPoint, [x1, y1]: FlatPoint): Mm {
  const [dx, dy] = [x1 - x0, y1 - y0];
  const length2 = dx * dx + dy * dy;
  const t = length2 === 0 ? 0 : Math.min(1, Math.max(0, ((x - x0) * dx + (y - y0) * dy) / length2));
  return Math.hypot(x - x0 - t * dx, y - y0 - t * dy);
}
