import type { Mm } from '../units.ts';
import { depthColour } from './depth-colour.ts';
import { plain } from './figure.ts';
import type { FlatBox, FlatPoint } from './flat-frame.ts';
import type { FlatMap } from './flat-map.ts';
import { html, type Markup } from './markup.ts';

/** A place on the picture with a word or a number to it. */
export interface FlatMark {
  readonly at: FlatPoint;
  readonly text: string;
}

/** A damage region: its number in a ring, its depth beside it when there is room for one. */
export interface RegionMark extends FlatMark {
  readonly depth: string | null;
}

export interface FlatSvgOptions {
  /** What the picture shows, for whoever cannot see it. */
  readonly title: string;
  /** Unique in the page: names the clipping shape. */
  readonly id: string;
  /** Numbers of the damage regions, at their deepest points. */
  readonly regions: readonly RegionMark[];
  /** Words outside the face that say how it lies: angles, x, y. */
  readonly bearings: readonly FlatMark[];
}

/** Shares of the longer side of the picture. */
const MARGIN = 0.055;
const TEXT = 0.021;
const FOOT = 0.1;

/**
 * The depth map of a face as an SVG picture: bands of colour with numbered contour lines, numbered regions, colour scale, scale bar.
 * Lengths are mm of the part. No style attributes, so that a strict content policy lets it through.
 */
export function flatSvg(map: FlatMap, { title, id, regions, bearings }: FlatSvgOptions): Markup {
  const { box, outline } = map;
  const side = Math.max(box.width, box.height);
  const margin = MARGIN * side;
  const text = TEXT * side;
  const edge = [...outline.edges, ...outline.holes].join('');
  // Words beside a long narrow face reach further out than the margin.
  const reach = bearings.map(({ at: [x], text: word }) => [
    x - halfWidth(word, text),
    x + halfWidth(word, text),
  ]);
  const left = Math.min(box.x - margin, ...reach.map(([from]) => from));
  const right = Math.max(box.x + box.width + margin, ...reach.map(([, to]) => to));
  const view = [left, box.y - margin, right - left, box.height + 2 * margin + FOOT * side];
  return html`<svg class="flat-map" viewBox="${view.map(short).join(' ')}" role="img" aria-label="${title}" font-size="${short(text)}">
<clipPath id="${id}"><path clip-rule="evenodd" d="${edge}"/></clipPath>
<path class="flat-metal" fill-rule="evenodd" d="${edge}"/>
<g clip-path="url(#${id})">
${map.bands.map(({ share, path }) => html`<path fill="${depthColour(share)}" fill-rule="evenodd" d="${path}"/>`)}
${map.lines.map(({ path }) => html`<path class="flat-line" stroke-width="${short(0.0011 * side)}" d="${path}"/>`)}
</g>
<path class="flat-edge" stroke-width="${short(0.002 * side)}" d="${edge}"/>
${map.lines.flatMap(({ depth, label }) =>
  label === null
    ? []
    : html`<text class="flat-number" transform="translate(${short(label.x)} ${short(label.y)}) rotate(${short(label.angle)})" dy="0.35em" stroke-width="${short(0.16 * text)}">${plain(depth)}</text>`,
)}
${regions.map((mark) => regionMark(mark, text))}
${bearings.map(({ at: [x, y], text: word }) => html`<text class="flat-bearing" x="${short(x)}" y="${short(y)}" dy="0.35em">${word}</text>`)}
${foot(map, box, box.y + box.height + margin + 0.2 * FOOT * side, text)}
</svg>`;
}

function regionMark({ at: [x, y], text: number, depth }: RegionMark, text: Mm): Markup {
  const radius = 0.85 * text;
  return html`<g class="flat-region"><circle cx="${short(x)}" cy="${short(y)}" r="${short(radius)}" stroke-width="${short(0.07 * text)}"/>
<text class="flat-region-number" x="${short(x)}" y="${short(y)}" dy="0.35em">${number}</text>
${depth === null ? null : html`<text class="flat-region-depth" x="${short(x + 1.4 * radius)}" y="${short(y)}" dy="0.35em" stroke-width="${short(0.16 * text)}">${depth}</text>`}</g>`;
}

/** The colours in steps with a number at each limit, and a bar of a round length. */
function foot({ step, scaleTo, scaleBar }: FlatMap, box: FlatBox, top: Mm, text: Mm): Markup {
  const steps = Math.round(scaleTo / step);
  const width = Math.max(0.55 * box.width, 20 * text) / steps;
  const height = 0.9 * text;
  const under = top + height + 1.1 * text;
  const barTo = box.x + box.width;
  const swatches = Array.from(
    { length: steps },
    (_, i) =>
      html`<rect x="${short(box.x + i * width)}" y="${short(top)}" width="${short(width)}" height="${short(height)}" fill="${depthColour((i + 0.5) / steps)}"/>`,
  );
  const limits = Array.from({ length: steps + 1 }, (_, i) => {
    const number = plain(Math.round(i * step * 100) / 100);
    return html`<text class="flat-scale" x="${short(box.x + i * width)}" y="${short(under)}">${i === steps ? `${number} mm deep` : number}</text>`;
  });
  return html`<g>${swatches}${limits}
<path class="flat-edge" stroke-width="${short(0.1 * text)}" d="M${short(barTo - scaleBar)} ${short(top)}v${short(height)}h${short(scaleBar)}v${short(-height)}"/>
<text class="flat-scale" x="${short(barTo - scaleBar / 2)}" y="${short(under)}">${plain(scaleBar)} mm</text></g>`;
}

/** Letters of the sheet are about 0.6 as wide as they are high. */
const halfWidth = (word: string, text: Mm): Mm => 0.3 * text * word.length;

const short = (value: number): string => String(Math.round(value * 100) / 100);
