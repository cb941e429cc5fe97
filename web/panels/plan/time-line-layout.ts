/** Where everything stands in the picture of the day: hands above, below them for each part what it waits for. px; pure. */
import type { PlanStepResult } from '../../../geometry/sheet/day-result.ts';
import type { Minute } from '../../../geometry/units.ts';
import { type TimeScale, timeScale } from './time-scale.ts';

/** A step as a bar, or the window it has to meet as a bracket. */
export interface Bar {
  readonly step: PlanStepResult;
  readonly kind: 'hands' | 'wait' | 'window';
  readonly x: number;
  readonly width: number;
  /** Of its upper edge. */
  readonly y: number;
  readonly height: number;
}

export interface Lane {
  /** null: the hands. */
  readonly part: string | null;
  /** Of its name. */
  readonly y: number;
  readonly bars: readonly Bar[];
}

export interface TimeLineLayout {
  readonly scale: TimeScale;
  readonly lanes: readonly Lane[];
  readonly height: number;
}

/** Two rows of letters on top: the day and the clock. */
export const AXIS_HEIGHT = 44;
const NAME_HEIGHT = 24;
const HANDS_HEIGHT = 32;
/** Room for a word above each bar of the hands. */
const WORD_HEIGHT = 20;
const ROW_HEIGHT = 16;
const ROW_GAP = 6;
const LANE_GAP = 8;
/** A step of a minute can still be seen. */
const LEAST_WIDTH = 3;

/**
 * @param steps  by start
 * @param parts  ids, in the job's order; those nothing waits for get no lane
 */
export function timeLineLayout(
  steps: readonly PlanStepResult[],
  parts: readonly string[],
  end: Minute,
): TimeLineLayout {
  const scale = timeScale([0, end, ...steps.flatMap(momentsOf).filter((minute) => minute <= end)]);
  const place = (from: Minute, to: Minute) => {
    const x = scale.x(from);
    return { x, width: Math.max(LEAST_WIDTH, scale.x(to) - x) };
  };
  const barsTop = AXIS_HEIGHT + NAME_HEIGHT + WORD_HEIGHT;
  const hands: Lane = {
    part: null,
    y: AXIS_HEIGHT,
    bars: steps
      .filter((step) => step.hands)
      .map((step) => ({
        step,
        kind: 'hands',
        ...place(step.start, step.start + step.minutes),
        y: barsTop,
        height: HANDS_HEIGHT,
      })),
  };
  let y = barsTop + HANDS_HEIGHT + LANE_GAP;
  const waits = parts.flatMap((part): Lane[] => {
    const items = waitsOf(steps.filter((step) => step.parts.includes(part)));
    if (items.length === 0) return [];
    const rows = inRows(items);
    const top = y + NAME_HEIGHT;
    const bars = items.map(
      ({ step, kind, from, to }, i): Bar => ({
        step,
        kind,
        ...place(from, to),
        y: top + rows[i] * (ROW_HEIGHT + ROW_GAP),
        height: ROW_HEIGHT,
      }),
    );
    const lane = { part, y, bars };
    y = top + (Math.max(...rows) + 1) * (ROW_HEIGHT + ROW_GAP) + LANE_GAP;
    return [lane];
  });
  return { scale, lanes: [hands, ...waits], height: y };
}

/** The bar a finger or a pointer means; null when it is far from all. */
export function barAt({ lanes }: TimeLineLayout, x: number, y: number): Bar | null {
  let nearest: Bar | null = null;
  let least = REACH;
  for (const bar of lanes.flatMap((lane) => lane.bars)) {
    const across = Math.max(bar.x - x, 0, x - bar.x - bar.width);
    const along = Math.max(bar.y - y, 0, y - bar.y - bar.height);
    const distance = Math.hypot(across, along);
    // Within two at once, the later one is the one drawn on top.
    if (distance < least || (distance === 0 && least === 0)) [nearest, least] = [bar, distance];
  }
  return nearest;
}

/** Half a finger, px. */
const REACH = 24;

interface Item {
  readonly step: PlanStepResult;
  readonly kind: 'wait' | 'window';
  readonly from: Minute;
  readonly to: Minute;
}

/** What is waited for, and the windows of what follows. */
function waitsOf(steps: readonly PlanStepResult[]): Item[] {
  return steps
    .flatMap((step): Item[] => {
      const { start, minutes, window } = step;
      if (!step.hands) return [{ step, kind: 'wait', from: start, to: start + minutes }];
      return window === null ? [] : [{ step, kind: 'window', from: window.opens, to: window.closes }];
    })
    .sort((a, b) => a.from - b.from);
}

/** The first row that is free, or better the one whose last item ends where this one begins: the window behind its wait. */
function inRows(items: readonly Item[]): number[] {
  const ends: Minute[] = [];
  return items.map(({ from, to }) => {
    const free = ends.findIndex((end) => end <= from + DUST);
    const behind = ends.findIndex((end) => Math.abs(end - from) <= DUST);
    const row = behind >= 0 ? behind : free >= 0 ? free : ends.length;
    ends[row] = to;
    return row;
  });
}

/** min; a window opens where its wait ends, but for the rounding of a sum. */
const DUST = 0.01;

function momentsOf({ start, minutes, window }: PlanStepResult): Minute[] {
  return [start, start + minutes, ...(window === null ? [] : [window.opens, window.closes])];
}
