import { type KeyboardEvent, type PointerEvent, useEffect, useId, useMemo, useRef, useState } from 'react';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import type { Result } from '../../../geometry/sheet/result.ts';
import { viewStore } from '../../view/view-store.ts';
import { shadesOf } from './shades.ts';
import { stepLine } from './step-words.ts';
import { TimeLineKey } from './TimeLineKey.tsx';
import { TimeLinePicture } from './TimeLinePicture.tsx';
import { ticksOf } from './ticks.ts';
import { type Bar, barAt, timeLineLayout } from './time-line-layout.ts';
import './TimeLine.css';

/** px of paper beside the bars, left and right. */
const MARGIN = 8;

/** The day as a picture that slides sideways in its own box. What a bar is stands below it; the list of steps says all of it in words. */
export function TimeLine({ job, result }: { readonly job: JobFile; readonly result: Result }) {
  const { plan, day } = result;
  const [shown, setShown] = useState<string | null>(null);
  const box = useRef<HTMLElement>(null);
  const id = useId();
  const parts = useMemo(() => job.parts.map((part) => part.id), [job.parts]);
  const layout = useMemo(() => timeLineLayout(plan, parts, day.end), [plan, parts, day.end]);
  const ticks = useMemo(() => ticksOf(layout.scale, day.start, day.end), [layout, day.start, day.end]);
  const shades = useMemo(
    () => shadesOf(job.plan, day.start, layout.scale.stops),
    [job.plan, day.start, layout],
  );
  const step = plan.find((known) => known.id === shown) ?? null;
  const batch = step?.batch ?? null;
  useEffect(() => {
    viewStore.getState().set({ hoverBatch: batch });
    return () => viewStore.getState().set({ hoverBatch: null });
  }, [batch]);

  const point = (event: PointerEvent<HTMLElement>) => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    const bar = barAt(layout, event.clientX - left - MARGIN, event.clientY - top);
    setShown(bar?.step.id ?? null);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const at = plan.findIndex((known) => known.id === shown);
    const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: plan.length - 1 }[event.key];
    if (to === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const next = plan[Math.max(0, Math.min(plan.length - 1, to))];
    setShown(next.id);
    slideTo(box.current, layout.scale.x(next.start));
  };
  const width = layout.scale.width + 2 * MARGIN;
  return (
    <section className="section" aria-label="Time line">
      <h2>Time line</h2>
      <section
        className="time-line"
        ref={box}
        aria-label="Picture of the day. Left and right go from step to step."
        aria-describedby={id}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it is slid sideways and walked along, by keys too
        tabIndex={0}
        onKeyDown={onKeyDown}
        onBlur={() => setShown(null)}
      >
        <div
          className="time-line-inner"
          style={{ width, height: layout.height }}
          onPointerMove={point}
          onPointerDown={point}
          onPointerLeave={(event) => {
            if (event.pointerType === 'mouse') setShown(null);
          }}
        >
          <TimeLinePicture
            layout={layout}
            ticks={ticks}
            shades={shades}
            parts={parts}
            shown={shown}
            margin={MARGIN}
          />
          {layout.lanes.map(({ part, y }) => (
            <div key={part ?? ''} className="time-line-lane" style={{ top: y }}>
              <span>{part === null ? 'Hands' : `${part} waits`}</span>
            </div>
          ))}
        </div>
      </section>
      <p className="time-line-shown" id={id} aria-live="polite">
        {step === null ? <span className="quiet">{HINT}</span> : stepLine(step, day.start)}
      </p>
      <TimeLineKey parts={parts} kinds={kindsOf(layout.lanes.flatMap((lane) => lane.bars))} shades={shades} />
    </section>
  );
}

const HINT = 'Touch a bar to see its step. All of it in words: the steps below.';

function kindsOf(bars: readonly Bar[]): ReadonlySet<Bar['kind']> {
  return new Set(bars.map(({ kind }) => kind));
}

/** Brings a place of the picture into its box. */
function slideTo(box: HTMLElement | null, x: number): void {
  if (box === null) return;
  const isSeen = x >= box.scrollLeft && x <= box.scrollLeft + box.clientWidth - SPARE;
  if (!isSeen) box.scrollLeft = x - box.clientWidth / 3;
}

/** px at the right that a bar in sight needs. */
const SPARE = 48;
