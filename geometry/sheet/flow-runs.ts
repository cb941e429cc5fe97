import type { FlowTestResult } from './flow-result.ts';
import { html, type Markup } from './markup.ts';

/** How a run is told from the others: its line and its mark, so that a grey printer loses nothing. */
export interface RunLook {
  /** Class `flow-…` of its line and its marks. */
  readonly line: 'after' | 'before' | 'new' | 'other' | 'further';
  readonly mark: 'circle' | 'triangle' | 'square' | 'diamond' | 'cross';
}

const LOOKS = {
  after: { line: 'after', mark: 'circle' },
  before: { line: 'before', mark: 'triangle' },
  new: { line: 'new', mark: 'square' },
} as const;
const OTHERS: readonly RunLook[] = [
  { line: 'other', mark: 'diamond' },
  { line: 'further', mark: 'cross' },
  { line: 'other', mark: 'cross' },
  { line: 'further', mark: 'diamond' },
];

/** The runs that are compared have looks of their own; the others share out the rest in turn. */
export function runLooks({ runs, compared }: Pick<FlowTestResult, 'runs' | 'compared'>): RunLook[] {
  let others = 0;
  return runs.map((_, i) => {
    const kind = (['after', 'before', 'new'] as const).find((name) => compared[name] === i);
    return kind === undefined ? OTHERS[others++ % OTHERS.length] : LOOKS[kind];
  });
}

/** A mark of `size` px to each side of its middle. */
export function runMark({ mark, line }: RunLook, x: number, y: number, size: number): Markup {
  const place = `class="flow-mark flow-mark-${line}"`;
  const at = `${short(x)} ${short(y)}`;
  const s = short(size);
  const shapes: Readonly<Record<RunLook['mark'], string>> = {
    circle: `<circle ${place} cx="${short(x)}" cy="${short(y)}" r="${s}"/>`,
    square: `<path ${place} d="M${at}m${short(-size)} ${short(-size)}h${short(2 * size)}v${short(2 * size)}h${short(-2 * size)}z"/>`,
    triangle: `<path ${place} d="M${at}m0 ${short(-1.2 * size)}l${short(1.15 * size)} ${short(2 * size)}h${short(-2.3 * size)}z"/>`,
    diamond: `<path ${place} d="M${at}m0 ${short(-1.35 * size)}l${short(1.35 * size)} ${short(1.35 * size)}l${short(-1.35 * size)} ${short(1.35 * size)}l${short(-1.35 * size)} ${short(-1.35 * size)}z"/>`,
    cross: `<path ${place} d="M${at}m${short(-size)} ${short(-size)}l${short(2 * size)} ${short(2 * size)}m0 ${short(-2 * size)}l${short(-2 * size)} ${short(2 * size)}"/>`,
  };
  return html`${{ markup: shapes[mark] }}`;
}

export const short = (value: number): string => String(Math.round(value * 100) / 100);
