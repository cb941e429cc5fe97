import { flatDrawing, short } from './flat-drawing.ts';
import type { FlatMap } from './flat-map.ts';
import type { FlatMarks } from './flat-marks.ts';
import { html, type Markup } from './markup.ts';

export interface FlatSvgOptions extends FlatMarks {
  /** What the picture shows, for whoever cannot see it. */
  readonly title: string;
  /** Unique in the page. */
  readonly id: string;
}

/** Height of letters as a share of the longer side of the picture. */
export const TEXT = 0.021;
/** Shares of it likewise. */
const MARGIN = 0.055;
const LINE = 0.001;

/**
 * The depth map of a face as an SVG picture for the sheet: as large as there is room. Lengths are mm of the part. No style attributes,
 * so that a strict content policy lets it through.
 */
export function flatSvg(map: FlatMap, { title, id, ...marks }: FlatSvgOptions): Markup {
  const side = Math.max(map.box.width, map.box.height);
  const text = TEXT * side;
  const { box, markup } = flatDrawing(map, marks, { text, margin: MARGIN * side, line: LINE * side }, id);
  const view = [box.x, box.y, box.width, box.height].map(short).join(' ');
  return html`<svg class="flat-map" viewBox="${view}" role="img" aria-label="${title}" font-size="${short(text)}">
${markup}
</svg>`;
}
