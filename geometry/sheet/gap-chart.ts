import type { GapSpread, GapState } from '../clearance/gap.ts';
import type { Mm } from '../units.ts';
import { KEY_ROW, type Key, keyMarkup, keyRows } from './chart-key.ts';
import type { ClearanceResult } from './clearance-result.ts';
import { plain } from './figure.ts';
import { type Axis, roundAxis, roundStep } from './flow-axis.ts';
import { html, type Markup } from './markup.ts';
import type { SectionSvgOptions, SectionUnit } from './section-svg.ts';

/** As of a section; `high` is the height of the plot as a share of its width. */
export type GapChartOptions = Omit<SectionSvgOptions, 'isSteady'>;

type Chart = Pick<
  ClearanceResult,
  GapState | 'byRadius' | 'band' | 'tolerance' | 'tightest' | 'overlap' | 'films'
>;

/**
 * The gap against the radius: as found, filled and coated each from its least to its most with the mean as a line, over the allowed band.
 * The rest of the band inside its two margins is what the tolerances leave to the coated gap. No style attributes, so that a strict
 * content policy lets it through; looks as meant with `GAP_CHART_STYLE`.
 */
export function gapChart(gap: Chart, options: GapChartOptions): Markup {
  const { title, description, id, width, text } = options;
  const frame = frameOf(gap, options);
  const keys = keyRows(keysOf(gap, options.unit), width, { text, sample: SWATCH });
  const height = frame.bottom + 3.2 * text + (keys.length + 0.2) * KEY_ROW * text;
  return html`<svg class="gap-chart" viewBox="0 0 ${short(width)} ${short(height)}" role="img" aria-labelledby="${id}-title ${id}-desc" font-size="${short(text)}">
<title id="${id}-title">${title}</title>
<desc id="${id}-desc">${description}</desc>
${pattern(id, text)}
${ground(gap, frame, id)}
${statesOf(gap).map((state) => stateShape(gap, frame, state))}
${touchLine(gap, frame, text)}
${tightSpot(gap, frame, options)}
${axes(gap, frame, options)}
${keyMarkup(keys, frame.bottom + 3.2 * text, { text, sample: SWATCH }, 'gap-chart-quiet', (mark, x, y) => swatch(mark, x, y, id, text))}
</svg>`;
}

/** The last one lies on top. Where nothing is coated, filled and coated are the same. */
const statesOf = ({ films }: Chart): readonly GapState[] =>
  films.plate + films.tips > 0 ? ['asFound', 'filled', 'coated'] : ['asFound', 'coated'];

const STATE_CLASS: Readonly<Record<GapState, string>> = {
  asFound: 'found',
  filled: 'filled',
  coated: 'coated',
};

interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** In the unit of the drawing. */
  readonly gaps: Axis;
  readonly radii: readonly Mm[];
  /** What lies higher is drawn at the top and said in words. */
  readonly highest: Mm;
  x(radius: Mm): number;
  y(gap: Mm): number;
}

/** As found may go so many times as high as all else before it is cut off: it would press the rest flat. */
const HIGHEST = 1.8;

function frameOf(gap: Chart, { width, text, high, unit }: GapChartOptions): Frame {
  const { band, overlap, coated, filled, asFound } = gap;
  const [left, right, top] = [3.8 * text, width - 1.2 * text, 2.3 * text];
  const bottom = top + high * (right - left);
  const needed = Math.max(band.most, coated.most, filled.most);
  const highest = Math.min(Math.max(needed, asFound.most), HIGHEST * needed);
  const least = Math.min(0, band.least, coated.least, filled.least, asFound.least);
  const steps = Math.max(2, Math.floor((bottom - top) / (2 * text)));
  const gaps = roundAxis([least / unit.size, highest / unit.size], steps);
  const scale = (bottom - top) / (gaps.to - gaps.from);
  const along = (right - left) / (overlap.to - overlap.from);
  const most = Math.max(2, Math.floor((right - left) / (3.2 * text)));
  const step = roundStep((overlap.to - overlap.from) / unit.size / most) * unit.size;
  const first = Math.ceil(overlap.from / step - 1e-9);
  const last = Math.floor(overlap.to / step + 1e-9);
  const radii = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * step);
  return {
    left,
    right,
    top,
    bottom,
    gaps,
    radii,
    highest: gaps.to * unit.size,
    x: (radius) => left + (radius - overlap.from) * along,
    y: (at) => Math.max(top, bottom - (at / unit.size - gaps.from) * scale),
  };
}

function pattern(id: string, text: number): Markup {
  const step = short(0.7 * text);
  return html`<defs><pattern id="${id}-band" width="${step}" height="${step}" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="gap-chart-ground" width="${step}" height="${step}"/><path class="gap-chart-hatch" d="M${short(0.35 * text)} 0V${step}"/></pattern></defs>`;
}

/** The paper, the band, and the margins that the tolerances take of it from both sides. */
function ground(
  { band, tolerance }: Chart,
  { left, right, top, bottom, gaps, y }: Frame,
  id: string,
): Markup {
  const width = short(right - left);
  const { worstCase, rootSumSquare } = tolerance;
  const line = (at: Mm): string => `M${short(left)} ${short(y(at))}h${width}`;
  const margin = (by: Mm): string =>
    band.most - band.least >= 2 * by ? line(band.least + by) + line(band.most - by) : '';
  // Named ticks below nought would carry their number: only the lines are drawn here.
  const grid = gaps.ticks.map((_, i) => {
    const at = bottom - (i / (gaps.ticks.length - 1)) * (bottom - top);
    return `M${short(left)} ${short(at)}h${width}`;
  });
  return html`<rect class="gap-chart-paper" x="${short(left)}" y="${short(top)}" width="${width}" height="${short(bottom - top)}"/>
<rect class="gap-chart-band" fill="url(#${id}-band)" x="${short(left)}" y="${short(y(band.most))}" width="${width}" height="${short(y(band.least) - y(band.most))}"/>
<path class="gap-chart-grid" d="${grid.join('')}"/>
<path class="gap-chart-limit" d="${line(band.least)}${line(band.most)}"/>
${worstCase > 0 ? html`<path class="gap-chart-worst" d="${margin(worstCase)}"/>` : null}
${hasLikely(tolerance) ? html`<path class="gap-chart-likely" d="${margin(rootSumSquare)}"/>` : null}`;
}

/** With one tolerance alone the two are the same. */
const hasLikely = ({ worstCase, rootSumSquare }: Chart['tolerance']): boolean =>
  rootSumSquare > 0 && worstCase - rootSumSquare > 1e-6;

/** A state from its least to its most, and its mean; the ends of the overlap are as the rings nearest to them. */
function stateShape({ byRadius, overlap }: Chart, { x, y }: Frame, state: GapState): Markup {
  const [first, last] = [byRadius[0], byRadius[byRadius.length - 1]];
  const places = [
    { radius: overlap.from, gap: first[state] },
    ...byRadius.map((ring) => ({ radius: ring.radius, gap: ring[state] })),
    { radius: overlap.to, gap: last[state] },
  ];
  const line = (end: keyof GapSpread, from: typeof places): string =>
    from.map(({ radius, gap }) => `${short(x(radius))} ${short(y(gap[end]))}`).join('L');
  const name = STATE_CLASS[state];
  return html`<path class="gap-chart-area gap-chart-${name}" d="M${line('most', places)}L${line('least', places.toReversed())}Z"/>
<path class="gap-chart-mean gap-chart-${name}-mean" d="M${line('mean', places)}"/>`;
}

/** Below this line the parts meet. Its words stand clear of the tight spot. */
function touchLine({ tightest }: Chart, { left, right, gaps, x, y }: Frame, text: number): Markup {
  if (gaps.from >= 0) return html``;
  const isLeft = x(tightest.radius) > (left + right) / 2;
  const at = isLeft ? left + 0.4 * text : right - 0.4 * text;
  return html`<path class="gap-chart-touch" d="M${short(left)} ${short(y(0))}H${short(right)}"/>
<text class="gap-chart-strong gap-chart-halo" text-anchor="${isLeft ? 'start' : 'end'}" x="${short(at)}" y="${short(y(0) + 1.2 * text)}">the parts meet</text>`;
}

function tightSpot({ tightest }: Chart, { left, right, top, x, y }: Frame, options: GapChartOptions): Markup {
  const { text, unit } = options;
  const [at, down] = [x(tightest.radius), y(tightest.gap)];
  const words = unit.depth(tightest.gap);
  const isRight = at > (left + right) / 2;
  const to = isRight ? at - 0.8 * text : at + 0.8 * text;
  const above = down - 0.8 * text < top + text ? down + 1.3 * text : down - 0.5 * text;
  return html`<circle class="gap-chart-spot" cx="${short(at)}" cy="${short(down)}" r="${short(0.36 * text)}"/>
<text class="gap-chart-strong gap-chart-halo" text-anchor="${isRight ? 'end' : 'start'}" x="${short(to)}" y="${short(above)}">${words}</text>`;
}

function axes({ asFound }: Chart, frame: Frame, { text, unit }: GapChartOptions): Markup {
  const { left, right, top, bottom, gaps, radii, highest, x } = frame;
  const tick = 0.4 * text;
  const across = radii.map((radius) => `M${short(x(radius))} ${short(bottom)}v${short(tick)}`);
  const step = (bottom - top) / (gaps.ticks.length - 1);
  return html`<path class="gap-chart-axis" d="M${short(left)} ${short(top)}V${short(bottom)}H${short(right)}${across.join('')}"/>
${gaps.ticks.map((gap, i) => html`<text class="gap-chart-quiet" text-anchor="end" x="${short(left - 0.6 * text)}" y="${short(bottom - i * step)}" dy="0.35em">${plain(gap).replace('-', '−')}</text>`)}
${radii.map((radius) => html`<text class="gap-chart-quiet" text-anchor="middle" x="${short(x(radius))}" y="${short(bottom + tick + text)}">${plain(radius / unit.size)}</text>`)}
<text class="gap-chart-strong" x="${short(0.2 * text)}" y="${short(text)}">gap, ${unit.symbol}</text>
<text class="gap-chart-quiet" text-anchor="end" x="${short(right)}" y="${short(bottom + tick + 2.3 * text)}">radius, ${unit.symbol}</text>
${asFound.most > highest ? html`<text class="gap-chart-quiet" text-anchor="end" x="${short(right)}" y="${short(text)}">as found up to ${unit.depth(asFound.most)}</text>` : null}`;
}

type Mark = 'found' | 'filled' | 'coated' | 'band' | 'worst' | 'likely' | 'spot';

function keysOf({ films, tolerance }: Chart, unit: SectionUnit): Key<Mark>[] {
  const states: Key<Mark>[] = [
    ['found', 'as found, least to most and mean'],
    ...(films.plate + films.tips > 0
      ? ([
          ['filled', 'filled'],
          ['coated', 'filled and coated'],
        ] as const)
      : ([['coated', 'filled, not coated']] as const)),
    ['band', 'allowed'],
  ];
  if (tolerance.worstCase > 0)
    states.push(['worst', `allowed less ${unit.depth(tolerance.worstCase)}, off at worst`]);
  if (hasLikely(tolerance))
    states.push(['likely', `allowed less ${unit.depth(tolerance.rootSumSquare)}, off as is likely`]);
  return [...states, ['spot', 'tightest']];
}

/** Width of a sample, in letters. */
const SWATCH = 2.4;

function swatch(mark: Mark, x: number, y: number, id: string, text: number): Markup {
  const box = `x="${short(x)}" y="${short(y - 0.5 * text)}" width="${short(SWATCH * text)}" height="${short(text)}"`;
  const line = `M${short(x)} ${short(y)}h${short(SWATCH * text)}`;
  if (mark === 'spot')
    return html`<circle class="gap-chart-spot" cx="${short(x + (SWATCH / 2) * text)}" cy="${short(y)}" r="${short(0.36 * text)}"/>`;
  if (mark === 'band')
    return html`<rect class="gap-chart-band gap-chart-limit-box" fill="url(#${id}-band)" ${{ markup: box }}/>`;
  if (mark === 'worst' || mark === 'likely') return html`<path class="gap-chart-${mark}" d="${line}"/>`;
  return html`<rect class="gap-chart-area gap-chart-${mark}" ${{ markup: box }}/><path class="gap-chart-mean gap-chart-${mark}-mean" d="${line}"/>`;
}

const short = (value: number): string => String(Math.round(value * 100) / 100);
