import type { Face } from '../part/face.ts';
import { bearingsOf } from './bearings.ts';
import { plain } from './figure.ts';
import { INK, PAPER, short, widthOf } from './flat-drawing.ts';
import type { FlatBox, FlatPoint } from './flat-frame.ts';
import { html, type Markup } from './markup.ts';
import { wallColour } from './wall-colour.ts';
import type { WallResult } from './wall-result.ts';
import type { WallShapes } from './wall-shapes.ts';

/** A thin place on the picture: its number in the table. */
export interface WallMark {
  readonly at: FlatPoint;
  readonly text: string;
  readonly isThrough: boolean;
  /** Its words stand left of it: they would run out of the picture on the right. */
  readonly isOnRight: boolean;
}

/** Shares of the longer side of the picture. */
const TEXT = 0.021;
const MARGIN = 0.055;
const LINE = 0.001;
const MOST_MARKS = 30;

/** The thin places of a wall by their numbers, as many as a picture holds. */
export function wallMarks(
  { places }: Pick<WallResult, 'places'>,
  box: FlatBox,
  toFlat: (at: readonly [number, number]) => FlatPoint,
): WallMark[] {
  return places.slice(0, MOST_MARKS).map(({ at, remaining }, i) => {
    const [x, y] = toFlat(at);
    return {
      at: [x, y],
      text: String(i + 1),
      isThrough: remaining === 0,
      isOnRight: x > box.x + 0.6 * box.width,
    };
  });
}

/**
 * What is left of a wall as an SVG picture for the sheet: bands of colour with numbered lines, the limit bold and named, thin places
 * numbered, worn through crossed out and named. No style attributes, so that a strict content policy lets it through.
 * @param id  unique in the page
 */
export function wallSvg(
  shapes: WallShapes,
  face: Face,
  { title, id, marks }: { readonly title: string; readonly id: string; readonly marks: readonly WallMark[] },
): Markup {
  const { box, frame, outline, bands, lines, limit, through } = shapes;
  const side = Math.max(box.width, box.height);
  const text = TEXT * side;
  const margin = MARGIN * side;
  const line = LINE * side;
  const edge = [...outline.edges, ...outline.holes].join('');
  const bearings = bearingsOf(face, frame, 0.03 * side, text);
  const reach = bearings.map(({ at: [x], text: word }) => [
    x - widthOf(word, text) / 2,
    x + widthOf(word, text) / 2,
  ]);
  const foot = footOf(shapes, box.y + box.height + margin + text, text);
  const left = Math.min(box.x - margin, ...reach.map(([from]) => from));
  const right = Math.max(box.x + box.width + margin, foot.right, ...reach.map(([, to]) => to));
  const top = box.y - margin;
  const view = [left, top, right - left, foot.bottom - top].map(short).join(' ');
  return html`<svg class="flat-map" viewBox="${view}" role="img" aria-label="${title}" font-size="${short(text)}">
<g fill="${INK}" text-anchor="middle" stroke-linejoin="round" stroke-linecap="round">
<clipPath id="${id}"><path clip-rule="evenodd" d="${edge}"/></clipPath>
<g clip-path="url(#${id})">
${bands.map(({ share, path }) => html`<path fill="${wallColour(share)}" fill-rule="evenodd" d="${path}"/>`)}
${lines.map(({ path }) => html`<path fill="none" stroke="${INK}" stroke-width="${short(line)}" d="${path}"/>`)}
${limit === null ? null : html`<path fill="none" stroke="${PAPER}" stroke-width="${short(7 * line)}" d="${limit.path}"/><path class="wall-limit" fill="none" stroke="${INK}" stroke-width="${short(4 * line)}" d="${limit.path}"/>`}
${through === '' ? null : html`<path class="wall-through" fill="${INK}" fill-rule="evenodd" d="${through}"/>`}
</g>
<path fill="none" stroke="${INK}" stroke-width="${short(2 * line)}" d="${edge}"/>
<g paint-order="stroke" stroke="${PAPER}" stroke-width="${short(0.16 * text)}">
${lines.flatMap((one) => one.labels.map((label) => turned(plain(one.left), label)))}
${limit === null ? null : limit.labels.map((label) => turned(`limit ${plain(limit.left)}`, label))}
</g>
${marks.map((mark) => placeMark(mark, text))}
${bearings.map(({ at: [x, y], text: word }) => html`<text x="${short(x)}" y="${short(y)}" dy="0.35em">${word}</text>`)}
${foot.markup}
</g>
</svg>`;
}

function turned(
  word: string,
  { x, y, angle }: { readonly x: number; readonly y: number; readonly angle: number },
): Markup {
  return html`<text transform="translate(${short(x)} ${short(y)}) rotate(${short(angle)})" dy="0.35em">${word}</text>`;
}

/** A dot, and the number of the place beside it; a crossed square with the word where nothing is left. */
function placeMark({ at: [x, y], text: number, isThrough, isOnRight }: WallMark, text: number): Markup {
  const r = 0.85 * text;
  const words = `${number} worn through`;
  if (!isThrough) {
    // Beside it, so that the lines round a small place stay in sight.
    const [toX, toY] = [x + (isOnRight ? -2.4 : 2.4) * r, y - 2.4 * r];
    return html`<g><path fill="none" stroke="${INK}" stroke-width="${short(0.1 * text)}" d="M${short(x)} ${short(y)}L${short(toX)} ${short(toY)}"/><circle stroke="${PAPER}" stroke-width="${short(0.12 * text)}" cx="${short(x)}" cy="${short(y)}" r="${short(0.3 * text)}"/><circle fill="${PAPER}" stroke="${INK}" cx="${short(toX)}" cy="${short(toY)}" r="${short(r)}" stroke-width="${short(0.07 * text)}"/><text font-weight="650" x="${short(toX)}" y="${short(toY)}" dy="0.35em">${number}</text></g>`;
  }
  const cross = `M${short(x - r)} ${short(y - r)}h${short(2 * r)}v${short(2 * r)}h${short(-2 * r)}zl${short(2 * r)} ${short(2 * r)}m${short(-2 * r)} 0l${short(2 * r)} ${short(-2 * r)}`;
  return html`<g class="wall-hole"><path fill="${PAPER}" stroke="${INK}" stroke-width="${short(0.16 * text)}" d="${cross}"/>
<text text-anchor="${isOnRight ? 'end' : 'start'}" font-weight="650" paint-order="stroke" stroke="${PAPER}" stroke-width="${short(0.2 * text)}" x="${short(x + (isOnRight ? -1.4 : 1.4) * r)}" y="${short(y)}" dy="0.35em">${words}</text></g>`;
}

function footOf(
  { scale: { from, to, step }, box }: WallShapes,
  top: number,
  text: number,
): { readonly right: number; readonly bottom: number; readonly markup: Markup } {
  const steps = Math.round((to - from) / step);
  const width = Math.max(0.55 * box.width, 20 * text) / steps;
  const height = 0.9 * text;
  const every = Math.ceil((3.4 * text) / width);
  const at = (i: number): number => box.x + i * width;
  const words = 'mm of metal left';
  const wordsAt = at(steps) + widthOf(plain(to), text) / 2 + 0.6 * text;
  return {
    right: wordsAt + widthOf(words, text),
    bottom: top + height + 2.6 * text,
    markup: html`<g>${Array.from(
      { length: steps },
      (_, i) =>
        html`<rect x="${short(at(i))}" y="${short(top)}" width="${short(width)}" height="${short(height)}" fill="${wallColour((i + 0.5) / steps)}"/>`,
    )}
${Array.from({ length: steps + 1 }, (_, i) => i)
  .filter((i) => (steps - i) % every === 0)
  .map(
    (i) =>
      html`<text x="${short(at(i))}" y="${short(top + height + 1.1 * text)}">${plain(Math.round((from + i * step) * 100) / 100)}</text>`,
  )}
<text text-anchor="start" x="${short(wordsAt)}" y="${short(top + height + 1.1 * text)}">${words}</text></g>`,
  };
}
