import type { Mm } from '../units.ts';
import { clearLabels } from './clear-labels.ts';
import { depthColour } from './depth-colour.ts';
import { plain } from './figure.ts';
import type { FlatBox } from './flat-frame.ts';
import type { FlatMap } from './flat-map.ts';
import type { FlatMark, FlatMarks, RegionMark, TurnedMark } from './flat-marks.ts';
import { html, type Markup } from './markup.ts';

/** Sizes of what is drawn, mm of the part. */
export interface DrawnSizes {
  /** Height of letters. */
  readonly text: Mm;
  /** Free round the face. */
  readonly margin: Mm;
  /** Width of contour lines; edges are twice as wide. */
  readonly line: Mm;
}

export interface FlatDrawing {
  /** What the drawing takes up, words and legend included. */
  readonly box: FlatBox;
  readonly markup: Markup;
}

/** Dark on white: it is paper. Nothing depends on colour alone. */
export const INK = '#1d1d1b';
export const PAPER = '#ffffff';
const METAL = '#efede8';

/** Height of what stands below the face, in letters. */
const FOOT = 4.8;
const MOST_READINGS = 150;

/**
 * The depth map of a face drawn as SVG shapes: bands of colour with numbered contour lines, gauge readings, numbered regions, names of
 * the vanes that stand on it, colour scale, scale bar. Lengths are mm of the part, y down. Looks as meant without any style: wherever it
 * is opened, and under a strict content policy.
 * @param id  unique in the page: names the clipping shape
 */
export function flatDrawing(
  map: FlatMap,
  { regions, bearings, readings, vanes }: FlatMarks,
  { text, margin, line }: DrawnSizes,
  id: string,
): FlatDrawing {
  const { box, outline } = map;
  const edge = [...outline.edges, ...outline.holes].join('');
  const foot = footOf(map, box.y + box.height + margin + text, text);
  // Words beside a long narrow face reach further out than the margin.
  const reach = bearings.map(({ at: [x], text: word }) => [
    x - widthOf(word, text) / 2,
    x + widthOf(word, text) / 2,
  ]);
  const left = Math.min(box.x - margin, ...reach.map(([from]) => from));
  const right = Math.max(box.x + box.width + margin, foot.right, ...reach.map(([, to]) => to));
  const top = box.y - margin;
  return {
    box: { x: left, y: top, width: right - left, height: foot.bottom - top },
    markup: html`<g fill="${INK}" text-anchor="middle" stroke-linejoin="round" stroke-linecap="round">
<clipPath id="${id}"><path clip-rule="evenodd" d="${edge}"/></clipPath>
<path class="flat-metal" fill="${METAL}" fill-rule="evenodd" d="${edge}"/>
<g clip-path="url(#${id})">
${map.bands.map(({ share, path }) => html`<path fill="${depthColour(share)}" fill-rule="evenodd" d="${path}"/>`)}
${map.lines.map(({ path }) => html`<path class="flat-line" fill="none" stroke="${INK}" stroke-width="${short(line)}" d="${path}"/>`)}
</g>
<path class="flat-edge" fill="none" stroke="${INK}" stroke-width="${short(2 * line)}" d="${edge}"/>
<g paint-order="stroke" stroke="${PAPER}" stroke-width="${short(0.16 * text)}">
${vanes.map((vane) => turned('flat-vane', vane))}
${map.lines.flatMap(({ depth, labels }) =>
  labels.map(({ x, y, angle }) => turned('flat-number', { at: [x, y], angle, text: plain(depth) })),
)}
</g>
${readingCrosses(readings, text)}
${regions.map((mark) => regionMark(mark, text))}
${bearings.map(({ at: [x, y], text: word }) => html`<text class="flat-bearing" x="${short(x)}" y="${short(y)}" dy="0.35em">${word}</text>`)}
${foot.markup}
</g>`,
  };
}

function turned(kind: string, { at: [x, y], angle, text: word }: TurnedMark): Markup {
  return html`<text class="${kind}" transform="translate(${short(x)} ${short(y)}) rotate(${short(angle)})" dy="0.35em">${word}</text>`;
}

/** All crosses as one path, and the depths of those that have room for it. */
function readingCrosses(readings: readonly FlatMark[], text: Mm): Markup {
  if (readings.length === 0) return html``;
  const arm = 0.35 * text;
  const path = readings
    .map(
      ({ at: [x, y] }) =>
        `M${short(x - arm)} ${short(y)}h${short(2 * arm)}M${short(x)} ${short(y - arm)}v${short(2 * arm)}`,
    )
    .join('');
  const size = 0.85 * text;
  const labels = clearLabels(
    readings.map(({ at: [x, y], text: word }) => ({ x, y, width: widthOf(word, size) })),
    { height: size, away: 1.3 * arm, most: MOST_READINGS },
  );
  return html`<g class="flat-readings" font-size="${short(size)}"><path fill="none" stroke="${PAPER}" stroke-width="${short(0.26 * text)}" d="${path}"/><path class="flat-reading" fill="none" stroke="${INK}" stroke-width="${short(0.1 * text)}" d="${path}"/>
<g paint-order="stroke" stroke="${PAPER}" stroke-width="${short(0.16 * text)}">
${labels.map(({ index, anchor, x, y }) => html`<text class="flat-reading-depth" text-anchor="${anchor}" x="${short(x)}" y="${short(y)}" dy="0.35em">${readings[index].text}</text>`)}
</g></g>`;
}

function regionMark({ at: [x, y], text: number, depth }: RegionMark, text: Mm): Markup {
  const radius = 0.85 * text;
  return html`<g class="flat-region"><circle fill="${PAPER}" stroke="${INK}" cx="${short(x)}" cy="${short(y)}" r="${short(radius)}" stroke-width="${short(0.07 * text)}"/>
<text class="flat-region-number" font-weight="650" x="${short(x)}" y="${short(y)}" dy="0.35em">${number}</text>
${depth === null ? null : html`<text class="flat-region-depth" text-anchor="start" paint-order="stroke" stroke="${PAPER}" x="${short(x + 1.4 * radius)}" y="${short(y)}" dy="0.35em" stroke-width="${short(0.16 * text)}">${depth}</text>`}</g>`;
}

/** The colours in steps with a number at each limit, and a bar of a round length: beside it, or below where the face is narrow. */
function footOf(
  { step, scaleTo, scaleBar, box }: FlatMap,
  top: Mm,
  text: Mm,
): { readonly right: Mm; readonly bottom: Mm; readonly markup: Markup } {
  const steps = Math.round(scaleTo / step);
  const width = Math.max(0.55 * box.width, 20 * text) / steps;
  const height = 0.9 * text;
  const under = height + 1.1 * text;
  // The last number stands under its limit like the others, and its words run on from there.
  const last = `${plain(scaleTo)} mm deep`;
  const lastAt = box.x + steps * width - widthOf(plain(scaleTo), text) / 2;
  const legendTo = lastAt + widthOf(last, text);
  const barWords = `${plain(scaleBar)} mm`;
  const barWidth = Math.max(scaleBar, widthOf(barWords, text));
  const hasRoom = box.x + box.width - barWidth > legendTo + text;
  const barAt = hasRoom ? box.x + box.width - barWidth / 2 : box.x + barWidth / 2;
  const barTop = hasRoom ? top : top + under + 1.2 * text;
  const swatches = Array.from(
    { length: steps },
    (_, i) =>
      html`<rect x="${short(box.x + i * width)}" y="${short(top)}" width="${short(width)}" height="${short(height)}" fill="${depthColour((i + 0.5) / steps)}"/>`,
  );
  const limits = Array.from({ length: steps }, (_, i) => {
    const number = plain(Math.round(i * step * 100) / 100);
    return html`<text class="flat-scale" x="${short(box.x + i * width)}" y="${short(top + under)}">${number}</text>`;
  });
  const end = html`<text class="flat-scale" text-anchor="start" x="${short(lastAt)}" y="${short(top + under)}">${last}</text>`;
  return {
    right: Math.max(legendTo, box.x + barWidth),
    bottom: barTop + FOOT * text - text,
    markup: html`<g>${swatches}${limits}${end}
<path class="flat-edge" fill="none" stroke="${INK}" stroke-width="${short(0.1 * text)}" d="M${short(barAt - scaleBar / 2)} ${short(barTop)}v${short(height)}h${short(scaleBar)}v${short(-height)}"/>
<text class="flat-scale" x="${short(barAt)}" y="${short(barTop + under)}">${barWords}</text></g>`,
  };
}

/** Letters of the sheet are about 0.6 as wide as they are high. */
export const widthOf = (word: string, text: Mm): Mm => 0.6 * text * word.length;

export const short = (value: number): string => String(Math.round(value * 100) / 100);
