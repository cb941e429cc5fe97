import { useMemo, useRef } from 'react';
import type { BatchResult } from '../../geometry/sheet/result.ts';
import { useView } from '../view/view-store.ts';
import type { LivePart } from '../wear/live-faces.ts';
import { useEstimate } from '../worker/estimate-client.ts';
import { type BatchOutline, batchOutlines } from './batch-outline.ts';
import {
  type BatchTag,
  batchTags,
  type ScreenBox,
  type ScreenPoint,
  type SeenStretch,
  TAG_HEIGHT,
} from './batch-tags.ts';
import { batchWords } from './batch-words.ts';
import type { ReadingSight, SightedPlace } from './reading-sight.ts';
import { useLookAtRest } from './use-look-at-rest.ts';
import { useOverlay, type Watch } from './use-overlay.ts';
import './batch-marks.css';

interface BatchMarksProps {
  readonly live: LivePart;
  /** SVG path data of the edge of a stretch, as far as it is seen. */
  readonly pathOf: (outline: BatchOutline) => string;
  /** px from the top left; null where it is not seen. */
  readonly pointOf: (place: SightedPlace) => ScreenPoint | null;
  /** Looks anew which places are seen, once the view rests. */
  readonly look?: ReadingSight['look'];
  /** Where tags may lie. */
  readonly free: () => ScreenBox;
  /** What they must not lie on. */
  readonly taken?: () => readonly ScreenBox[];
  readonly onView: Watch;
}

/** More tags than this hide the part. */
const MOST = 40;
const SLOTS = Array.from({ length: MOST }, (_, i) => i);
/** Kinds of line, in turn; the numbers tell the mixes apart, the lines help. */
const STYLES = 3;

/** Where each mix goes, outlined and numbered; the one that is pointed at in the accent. On the step that fills, and wherever one is pointed at. */
export function BatchMarks({ live, pathOf, pointOf, look, free, taken, onView }: BatchMarksProps) {
  const group = useRef<SVGGElement>(null);
  const batches = useShownBatches();
  const lit = useView((view) => view.hoverBatch);
  const outlines = useMemo(() => batchOutlines(live.part.id, live.faces, batches), [live, batches]);
  const places = useMemo(
    () => outlines.flatMap(({ lines, within }) => [...lines.flat(), ...within]),
    [outlines],
  );
  const draw = () => {
    const [halo, ...paths] = group.current?.querySelectorAll('path') ?? [];
    if (halo === undefined) return;
    const drawn = outlines.map((outline) => ({ outline, path: pathOf(outline) }));
    const pathWhere = (is: (batch: number) => boolean) =>
      drawn.map(({ outline, path }) => (is(outline.batch) ? path : '')).join('');
    const isLit = (batch: number) => batch === lit;
    halo.setAttribute(
      'd',
      pathWhere((batch) => !isLit(batch)),
    );
    for (let style = 0; style < STYLES; style++)
      paths[style].setAttribute(
        'd',
        pathWhere((batch) => !isLit(batch) && (batch - 1) % STYLES === style),
      );
    for (const path of paths.slice(STYLES)) path.setAttribute('d', pathWhere(isLit));
    const wordsOf = new Map(batches.map((batch) => [batch.number, batchWords(batch)]));
    const tags = batchTags(
      seenStretches(outlines, pointOf, lit),
      (batch) => wordsOf.get(batch) ?? [],
      free(),
      taken?.() ?? [],
      MOST,
    );
    for (const [i, tag] of [...(group.current?.querySelectorAll('.batch-tag') ?? [])].entries())
      putTag(tag, tags[i]);
  };
  useOverlay(draw, [onView]);
  useLookAtRest(places, look, onView, draw);
  if (outlines.length === 0) return null;
  return (
    <g className="batch-marks" ref={group}>
      <path className="batch-halo" />
      {Array.from({ length: STYLES }, (_, style) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a kind of line has no name but its place
        <path key={style} className={`batch-line batch-line-${style}`} />
      ))}
      <path className="batch-halo-lit" />
      <path className="batch-line-lit" />
      {SLOTS.slice(0, outlines.length).map((slot) => (
        <g key={slot} className="batch-tag">
          <rect y={-TAG_HEIGHT / 2} height={TAG_HEIGHT} rx={4} />
          <text />
        </g>
      ))}
    </g>
  );
}

function useShownBatches(): readonly BatchResult[] {
  const batches = useEstimate((state) => state.result?.filler.batches ?? NONE);
  const shown = useView(({ step, hoverBatch }) =>
    step === 'fill' ? 'all' : step === 'plan' ? hoverBatch : null,
  );
  return useMemo(
    () => (shown === 'all' ? batches : batches.filter(({ number }) => number === shown)),
    [batches, shown],
  );
}

const NONE: readonly BatchResult[] = [];

/** The stretches of which anything is seen, those of a mix largest first. */
function seenStretches(
  outlines: readonly BatchOutline[],
  pointOf: BatchMarksProps['pointOf'],
  lit: number | null,
): readonly SeenStretch[] {
  const isPoint = (point: ScreenPoint | null) => point !== null;
  return [...outlines]
    .sort((a, b) => a.batch - b.batch || b.area - a.area)
    .flatMap(({ batch, lines, within }) => {
      const inner = within.map(pointOf).filter(isPoint);
      if (inner.length === 0) return [];
      const points = [...lines.flat().map(pointOf).filter(isPoint), ...inner];
      const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
      const box = { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) };
      return [{ batch, isLit: batch === lit, box, within: inner }];
    });
}

function putTag(element: Element, tag: BatchTag | undefined): void {
  element.toggleAttribute('hidden', tag === undefined);
  if (tag === undefined) return;
  const [rect, text] = element.children;
  element.setAttribute('transform', `translate(${tag.x.toFixed(1)} ${tag.y.toFixed(1)})`);
  element.setAttribute('data-batch', String(tag.batch));
  element.toggleAttribute('data-lead', tag.isLead);
  element.toggleAttribute('data-lit', tag.isLit);
  rect.setAttribute('x', String(-tag.width / 2));
  rect.setAttribute('width', String(tag.width));
  text.textContent = tag.text;
}
