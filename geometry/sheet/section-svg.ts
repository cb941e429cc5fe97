import type { Fraction, Mm } from '../units.ts';
import { KEY_ROW, type Key, keyMarkup, keyRows } from './chart-key.ts';
import { gauge, plain } from './figure.ts';
import { html, type Markup } from './markup.ts';
import { isThrough, type SectionProfile } from './section.ts';
import { type SectionFrame, sectionFrame } from './section-frame.ts';
import { type SectionLayers, sectionLayers } from './section-layers.ts';
import { timesText } from './section-words.ts';

export interface SectionSvgOptions {
  /** What it shows in short, and the same with its figures, for whoever cannot see it. */
  readonly title: string;
  readonly description: string;
  /** Unique in the page: names the patterns. */
  readonly id: string;
  /** Of the drawing, and of its letters, px. */
  readonly width: number;
  readonly text: number;
  /** How much of the width of the plot depth may take. */
  readonly high: Fraction;
  readonly isSteady?: boolean;
  readonly unit: SectionUnit;
}

/** The unit of the figures on the drawing. */
export interface SectionUnit {
  readonly size: Mm;
  readonly symbol: string;
  /** A depth with its unit, as a gauge shows it. */
  depth(depth: Mm): string;
}

export const MILLIMETRES: SectionUnit = { size: 1, symbol: 'mm', depth: (depth) => `${gauge(depth)} mm` };

/**
 * A section as an SVG picture: metal below the worn line, the sound line dashed, putty hatched, coat dotted, gauge readings with their
 * error, both axes to a stated scale. No style attributes, so that a strict content policy lets it through; looks as meant with
 * `SECTION_STYLE`.
 */
export function sectionSvg(profile: SectionProfile, options: SectionSvgOptions): Markup {
  const { title, description, id, width, text, high, isSteady = false, unit } = options;
  const layersOf = (frame: SectionFrame) => sectionLayers(profile, frame);
  const keys = keysOf(profile, unit);
  const rows = keyRows(keys, width, { text, sample: SWATCH });
  const kept = isSteady ? Math.max(STEADY_ROWS, rows.length) : rows.length;
  const frame = sectionFrame(
    profile,
    { width, text, high, isSteady, unit: unit.size },
    kept * KEY_ROW * text,
  );
  const layers = layersOf(frame);
  return html`<svg class="section-plot" viewBox="0 0 ${short(width)} ${short(frame.height)}" role="img" aria-labelledby="${id}-title ${id}-desc" font-size="${short(text)}">
<title id="${id}-title">${title}</title>
<desc id="${id}-desc">${description}</desc>
${patterns(id, text)}
<rect class="section-paper" x="${short(frame.left)}" y="${short(frame.top)}" width="${short(frame.right - frame.left)}" height="${short(frame.bottom - frame.top)}"/>
${grid(frame)}
${shapes(layers, id)}
${readingBars(profile, frame, text)}
${gaps(profile, frame, text)}
${deepestCall(profile, frame, text, unit)}
${axes(profile, frame, text, unit)}
${keyMarkup(rows, frame.bottom + 3.4 * text, { text, sample: SWATCH }, 'section-quiet', (mark, x, y) => swatch(mark, x, y, text, id))}
</svg>`;
}

function patterns(id: string, text: number): Markup {
  const step = short(0.5 * text);
  const half = short(0.25 * text);
  return html`<defs>
<pattern id="${id}-putty" width="${step}" height="${step}" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="section-paper" width="${step}" height="${step}"/><path class="section-hatch" d="M${half} 0V${step}"/></pattern>
<pattern id="${id}-coat" width="${step}" height="${step}" patternUnits="userSpaceOnUse"><rect class="section-paper" width="${step}" height="${step}"/><circle class="section-dot" cx="${half}" cy="${half}" r="${short(0.1 * text)}"/></pattern>
</defs>`;
}

function shapes(layers: SectionLayers, id: string): Markup {
  return html`<path class="section-metal" d="${layers.metal}"/>
<path class="section-shape" fill="url(#${id}-putty)" d="${layers.putty}"/>
<path class="section-shape" fill="url(#${id}-coat)" d="${layers.left}"/>
<path class="section-shape" fill="url(#${id}-coat)" d="${layers.film}"/>
<path class="section-behind" d="${layers.behind}"/>
<path class="section-sound" d="${layers.sound}"/>
<path class="section-worn" d="${layers.worn}"/>`;
}

function grid({ left, right, depthTicks, y }: SectionFrame): Markup {
  return html`<path class="section-grid" d="${depthTicks.map((depth) => `M${short(left)} ${short(y(depth))}H${short(right)}`).join('')}"/>`;
}

function axes({ line }: SectionProfile, frame: SectionFrame, text: number, unit: SectionUnit): Markup {
  const { left, right, top, bottom, x, y, lengthTicks, depthTicks, times } = frame;
  const tick = 0.4 * text;
  const number = (size: Mm): string => plain(Math.round((size / unit.size) * 1e4) / 1e4);
  const under = bottom + tick + text;
  const foot = under + 1.5 * text;
  return html`<g>
<path class="section-axis" d="M${short(left)} ${short(top)}V${short(bottom)}H${short(right)}${lengthTicks.map((at) => `M${short(x(at))} ${short(bottom)}v${short(tick)}`).join('')}${depthTicks.map((depth) => `M${short(left)} ${short(y(depth))}h${short(-tick)}`).join('')}"/>
${lengthTicks.map((at) => html`<text class="section-quiet" text-anchor="middle" x="${short(x(at))}" y="${short(under)}">${number(at)}</text>`)}
${depthTicks.map((depth) => html`<text class="section-quiet" text-anchor="end" x="${short(left - tick - 0.3 * text)}" y="${short(y(depth))}" dy="0.35em">${number(depth)}</text>`)}
<text class="section-strong" text-anchor="end" x="${short(x(0) - 0.3 * text)}" y="${short(top - 0.4 * text)}">A</text>
<text class="section-strong" x="${short(x(line.length) + 0.3 * text)}" y="${short(top - 0.4 * text)}">${line.isClosed ? 'A' : 'B'}</text>
<text class="section-quiet" x="${short(0.2 * text)}" y="${short(text)}">depth, ${unit.symbol}</text>
<text class="section-quiet" x="${short(left)}" y="${short(foot)}">${timesText(times)}</text>
<text class="section-quiet" text-anchor="end" x="${short(right)}" y="${short(foot)}">${unit.symbol} along the line</text>
</g>`;
}

/** A line from the sound line down to the deepest place, and how deep it is. */
function deepestCall(
  { deepest }: SectionProfile,
  frame: SectionFrame,
  text: number,
  unit: SectionUnit,
): Markup {
  if (deepest === null || deepest.depth <= 0) return html``;
  const { x, y, left, right } = frame;
  const words = `${unit.depth(deepest.depth)}${isThrough(deepest) ? ', worn through' : ''}`;
  const half = 0.3 * text * words.length;
  const [at, bottom] = [x(deepest.at), y(deepest.depth)];
  // Beside what the axis of depths is called.
  const middle = Math.min(right - half, Math.max(left + half + 3 * text, at));
  return html`<g>
<path class="section-lead" d="M${short(at)} ${short(1.3 * text)}V${short(bottom)}"/>
<circle class="section-deepest" cx="${short(at)}" cy="${short(bottom)}" r="${short(0.26 * text)}"/>
<text class="section-strong section-halo" text-anchor="middle" x="${short(middle)}" y="${short(text)}">${words}</text>
</g>`;
}

/** Each reading within two of its errors either way. */
function readingBars({ readings }: SectionProfile, { x, y }: SectionFrame, text: number): Markup {
  const cap = 0.3 * text;
  return html`${readings.map(({ at, depth, error }) => {
    const [px, from, to] = [x(at), y(depth - 2 * error), y(depth + 2 * error)];
    const bar = `M${short(px)} ${short(from)}V${short(to)}M${short(px - cap)} ${short(from)}h${short(2 * cap)}M${short(px - cap)} ${short(to)}h${short(2 * cap)}`;
    return html`<path class="section-reading" d="${bar}"/><circle class="section-reading-dot" cx="${short(px)}" cy="${short(y(depth))}" r="${short(0.24 * text)}"/>`;
  })}`;
}

/** Says of a wide gap that there is no metal. */
function gaps({ line, runs }: SectionProfile, { x, y, bottom }: SectionFrame, text: number): Markup {
  const ends = [0, ...runs.flatMap((run) => [run[0].at, run[run.length - 1].at]), line.length];
  const wide = Array.from(
    { length: ends.length / 2 },
    (_, i) => [x(ends[2 * i]), x(ends[2 * i + 1])] as const,
  );
  const words = 'no metal';
  return html`${wide
    .filter(([from, to]) => to - from > 0.55 * text * words.length)
    .map(
      ([from, to]) =>
        html`<text class="section-quiet" text-anchor="middle" x="${short((from + to) / 2)}" y="${short((y(0) + bottom) / 2)}" dy="0.35em">${words}</text>`,
    )}`;
}

type Mark = 'sound' | 'worn' | 'putty' | 'coat' | 'reading';

/** What is on the drawing, in words. */
function keysOf({ runs, film, readings, isFillKnown }: SectionProfile, unit: SectionUnit): Key<Mark>[] {
  const places = runs.flat();
  const isLeft = film > 0 && places.some((place) => place.isLeft);
  const keys: Key<Mark>[] = [
    ['sound', 'sound line'],
    ['worn', 'worn line'],
  ];
  if (places.some(({ putty }) => putty > 0)) keys.push(['putty', 'putty']);
  if (isFillKnown && film > 0)
    keys.push(['coat', `coat, ${unit.depth(film)}${isLeft ? ', and what is left to it' : ''}`]);
  if (readings.length > 0) keys.push(['reading', 'gauge reading with 2 errors either way']);
  return keys;
}

/** Width of a sample, in letters. */
const SWATCH = 2;
/** Rows of words kept free in a drawing that is not to jump. */
const STEADY_ROWS = 2;

function swatch(mark: Mark, x: number, y: number, text: number, id: string): Markup {
  const width = SWATCH * text;
  if (mark === 'putty' || mark === 'coat')
    return html`<rect class="section-shape" fill="url(#${id}-${mark})" x="${short(x)}" y="${short(y - 0.5 * text)}" width="${short(width)}" height="${short(text)}"/>`;
  if (mark === 'reading')
    return html`<path class="section-reading" d="M${short(x + width / 2)} ${short(y - 0.6 * text)}v${short(1.2 * text)}"/><circle class="section-reading-dot" cx="${short(x + width / 2)}" cy="${short(y)}" r="${short(0.24 * text)}"/>`;
  return html`<path class="section-${mark}" d="M${short(x)} ${short(y)}h${short(width)}"/>`;
}

const short = (value: number): string => String(Math.round(value * 100) / 100);
