import { KEY_ROW, type Key, keyMarkup, keyRows } from './chart-key.ts';
import { plain } from './figure.ts';
import { type Axis, roundAxis } from './flow-axis.ts';
import type { CurveKnot, FlowQuantity, FlowTestResult } from './flow-result.ts';
import { type RunLook, runLooks, runMark, short } from './flow-runs.ts';
import { html, type Markup } from './markup.ts';

export interface FlowChartOptions {
  /** What it shows, and the same with its figures, for whoever cannot see it. */
  readonly title: string;
  readonly description: string;
  /** Unique in the page. */
  readonly id: string;
  /** Of the drawing, and of its letters, px. */
  readonly width: number;
  readonly text: number;
  /** Height of the plot of heads as a share of its width; the two others are a little lower. */
  readonly high: number;
}

/**
 * The curves of all runs at rated speed over the flow: head, efficiency and power one below the other. Runs differ in line and mark;
 * the duty is a line with the error of measurement beside it, a guarantee the cross of its limits. No style attributes; looks as
 * meant with `FLOW_STYLE`. Nothing without a run.
 */
export function flowChart(result: FlowTestResult, options: FlowChartOptions): Markup {
  if (result.runs.length === 0) return html``;
  const { title, description, id, width, text } = options;
  const frame = frameOf(result, options);
  const keys = keyRows(keysOf(result), width, { text, sample: SWATCH });
  const foot = frame.bottom + 3 * text;
  return html`<svg class="flow-plot" viewBox="0 0 ${short(width)} ${short(foot + (keys.length + 0.2) * KEY_ROW * text)}" role="img" aria-labelledby="${id}-title ${id}-desc" font-size="${short(text)}">
<title id="${id}-title">${title}</title>
<desc id="${id}-desc">${description}</desc>
${frame.plots.map((plot) => plotMarkup(result, frame, plot, text))}
${flowAxis(frame, options)}
${keyMarkup(keys, foot, { text, sample: SWATCH }, 'flow-quiet', (sample, x, y) => swatch(sample, x, y, text))}
</svg>`;
}

interface Frame {
  readonly left: number;
  readonly right: number;
  /** Of the lowest plot. */
  readonly bottom: number;
  readonly flows: Axis;
  readonly plots: readonly Plot[];
  x(flow: number): number;
}

interface Plot {
  readonly what: FlowQuantity;
  readonly name: string;
  readonly top: number;
  readonly bottom: number;
  readonly axis: Axis;
  y(value: number): number;
}

const UNITS: Readonly<Record<FlowQuantity, string>> = { head: 'm', efficiency: '%', power: 'kW' };

/** How high each plot is against that of the heads. */
const HEIGHTS: Readonly<Record<FlowQuantity, number>> = { head: 1, efficiency: 0.85, power: 0.7 };

function frameOf(result: FlowTestResult, { width, text, high }: FlowChartOptions): Frame {
  const [left, right] = [3.6 * text, width - 1.2 * text];
  const flows = roundAxis(flowsShown(result), Math.max(2, Math.floor((right - left) / (3.5 * text))));
  const plots: Plot[] = [];
  let below = 0;
  for (const what of ['head', 'efficiency', 'power'] as const) {
    const values = valuesShown(result, what);
    if (values.length === 0) continue;
    const top = below + 2.6 * text;
    const bottom = top + HEIGHTS[what] * high * (right - left);
    const axis = roundAxis(values, Math.max(2, Math.floor((bottom - top) / (2.2 * text))));
    const scale = (bottom - top) / (axis.to - axis.from);
    const y = (value: number) => bottom - (value - axis.from) * scale;
    plots.push({ what, name: `${what}, ${UNITS[what]}`, top, bottom, axis, y });
    below = bottom;
  }
  const scale = (right - left) / (flows.to - flows.from);
  const x = (flow: number) => left + (flow - flows.from) * scale;
  return { left, right, bottom: below, flows, plots, x };
}

function flowsShown({ runs, duty, guarantee, acceptance }: FlowTestResult): number[] {
  const cross = guarantee === null ? [] : [guarantee.flow * (1 + (acceptance?.limits.flow[1] ?? 0))];
  return [duty, ...cross, ...runs.flatMap(({ points }) => points.map(({ flow }) => flow))];
}

function valuesShown({ runs, guarantee, acceptance }: FlowTestResult, what: FlowQuantity): number[] {
  const cross =
    what !== 'head' || guarantee === null || acceptance === null
      ? []
      : acceptance.limits.head.map((share) => guarantee.head * (1 + share));
  return [
    ...cross,
    ...runs.flatMap(({ curves, atDuty, points }) => {
      const there = atDuty?.[what] ?? null;
      const error = atDuty?.error[what] ?? 0;
      return [
        ...curves[what].map(({ value }) => value),
        ...points.flatMap((point) => point[what] ?? []),
        ...(there === null ? [] : [there - error, there + error]),
      ];
    }),
  ];
}

function plotMarkup(result: FlowTestResult, frame: Frame, plot: Plot, text: number): Markup {
  const { left, right, flows, x } = frame;
  const { top, bottom, axis, name, y } = plot;
  const looks = runLooks(result);
  const [width, height] = [right - left, bottom - top];
  const across = axis.ticks.map((tick) => `M${short(left)} ${short(y(tick))}h${short(width)}`);
  const up = flows.ticks.map((_, i) => `M${short(tickX(frame, i))} ${short(top)}v${short(height)}`);
  return html`<g>
<rect class="flow-paper" x="${short(left)}" y="${short(top)}" width="${short(width)}" height="${short(height)}"/>
<path class="flow-grid" d="${[...across, ...up].join('')}"/>
<text class="flow-strong" x="${short(0.2 * text)}" y="${short(top - 0.7 * text)}">${name}</text>
${axis.ticks.map((tick) => html`<text class="flow-quiet" text-anchor="end" x="${short(left - 0.6 * text)}" y="${short(y(tick))}" dy="0.35em">${plain(tick)}</text>`)}
<path class="flow-duty" d="M${short(x(result.duty))} ${short(top)}v${short(height)}"/>
${result.runs.map(({ curves }, i) => html`<path class="flow-line flow-line-${looks[i].line}" d="${curvePath(curves[plot.what], x, y)}"/>`)}
${plot.what === 'head' ? guaranteeCross(result, x, y) : null}
${result.runs.map(
  ({ points }, i) =>
    html`${points.map((point) => {
      const value = point[plot.what];
      return value === null ? html`` : runMark(looks[i], x(point.flow), y(value), 0.27 * text);
    })}`,
)}
${errorBars(result, frame, plot, text)}
<path class="flow-axis" d="M${short(left)} ${short(top)}V${short(bottom)}H${short(right)}"/>
</g>`;
}

/** Cubics of Hermite as cubics of Bezier: the same curve, not one near it. */
function curvePath(
  knots: readonly CurveKnot[],
  x: (flow: number) => number,
  y: (value: number) => number,
): string {
  return knots
    .map(({ flow, value, slope }, i) => {
      if (i === 0) return `M${short(x(flow))} ${short(y(value))}`;
      const before = knots[i - 1];
      const third = (flow - before.flow) / 3;
      const place = (at: number, level: number) => `${short(x(at))} ${short(y(level))}`;
      return `C${place(before.flow + third, before.value + third * before.slope)} ${place(flow - third, value - third * slope)} ${place(flow, value)}`;
    })
    .join('');
}

/** Beside the duty line, so that those of several runs do not hide each other. */
function errorBars({ runs, duty }: FlowTestResult, { x }: Frame, { what, y }: Plot, text: number): Markup {
  const shown = runs.flatMap(({ atDuty }) => {
    const value = atDuty?.[what] ?? null;
    return atDuty === null || value === null ? [] : [{ value, error: atDuty.error[what] }];
  });
  const cap = 0.28 * text;
  return html`${shown.map(({ value, error }, i) => {
    const at = short(x(duty) + (i - (shown.length - 1) / 2) * 0.9 * text);
    const [from, to] = [short(y(value - error)), short(y(value + error))];
    const caps = [from, to].map((end) => `M${at} ${end}m${short(-cap)} 0h${short(2 * cap)}`).join('');
    return html`<path class="flow-error" d="M${at} ${from}V${to}${caps}"/>`;
  })}`;
}

function guaranteeCross(
  { guarantee, acceptance }: FlowTestResult,
  x: (flow: number) => number,
  y: (value: number) => number,
): Markup {
  if (guarantee === null || acceptance === null) return html``;
  const { flow, head } = guarantee;
  const [left, right] = acceptance.limits.flow.map((share) => short(x(flow * (1 + share))));
  const [low, high] = acceptance.limits.head.map((share) => short(y(head * (1 + share))));
  return html`<path class="flow-cross" d="M${left} ${short(y(head))}H${right}M${short(x(flow))} ${low}V${high}"/>`;
}

const tickX = ({ left, right, flows }: Frame, i: number): number =>
  left + ((flows.ticks[i] - flows.from) / (flows.to - flows.from)) * (right - left);

function flowAxis(frame: Frame, { text }: FlowChartOptions): Markup {
  const { right, bottom, flows } = frame;
  return html`<g>
${flows.ticks.map((tick, i) => html`<text class="flow-quiet" text-anchor="middle" x="${short(tickX(frame, i))}" y="${short(bottom + 1.2 * text)}">${plain(tick)}</text>`)}
<text class="flow-strong" text-anchor="end" x="${short(right)}" y="${short(bottom + 2.5 * text)}">flow, m³/h</text>
</g>`;
}

type Sample = RunLook | 'duty' | 'error' | 'cross';

/** Letters of a run's name in the legend. */
const LONGEST_NAME = 30;

function keysOf(result: FlowTestResult): Key<Sample>[] {
  const looks = runLooks(result);
  const name = (words: string) =>
    words.length > LONGEST_NAME ? `${words.slice(0, LONGEST_NAME - 1)}…` : words;
  return [
    ...result.runs.map((run, i): Key<Sample> => [looks[i], name(run.name)]),
    ['duty', 'duty'],
    ...(result.runs.some(({ atDuty }) => atDuty !== null)
      ? [['error', 'error of measurement at duty'] as const]
      : []),
    ...(result.acceptance === null
      ? []
      : [['cross', `guaranteed point, limits of grade ${result.acceptance.grade}`] as const]),
  ];
}

/** Width of a sample, in letters. */
const SWATCH = 2.6;

function swatch(sample: Sample, x: number, y: number, text: number): Markup {
  const width = SWATCH * text;
  const middle = x + width / 2;
  const [half, cap] = [0.6 * text, 0.28 * text];
  if (sample === 'duty')
    return html`<path class="flow-duty" d="M${short(middle)} ${short(y - half)}v${short(2 * half)}"/>`;
  if (sample === 'error')
    return html`<path class="flow-error" d="M${short(middle)} ${short(y - half)}v${short(2 * half)}m${short(-cap)} 0h${short(2 * cap)}M${short(middle - cap)} ${short(y - half)}h${short(2 * cap)}"/>`;
  if (sample === 'cross')
    return html`<path class="flow-cross" d="M${short(middle - half)} ${short(y)}h${short(2 * half)}m${short(-half)} ${short(-half)}v${short(2 * half)}"/>`;
  return html`<path class="flow-line flow-line-${sample.line}" d="M${short(x)} ${short(y)}h${short(width)}"/>${runMark(sample, middle, y, 0.27 * text)}`;
}
