import { useMemo, useRef } from 'react';
import { standsFor } from '../../geometry/job/face-names.ts';
import { measuredMark } from '../../geometry/job/measured-mark.ts';
import { useJob } from '../job/job-store.ts';
import { useView } from '../view/view-store.ts';
import type { LiveFace, LivePart } from '../wear/live-faces.ts';
import { useEstimate } from '../worker/estimate-client.ts';
import type { GridPlace } from './face-ring.ts';
import { markOutline } from './mark-outline.ts';
import { regionOutline } from './region-outline.ts';
import { useOverlay, type Watch } from './use-overlay.ts';
import './surface-marks.css';

interface SurfaceMarksProps {
  readonly live: LivePart;
  readonly pathOf: (live: LiveFace, lines: readonly (readonly GridPlace[])[], isClosed: boolean) => string;
  readonly onView: Watch;
}

interface Outline {
  readonly live: LiveFace;
  readonly lines: readonly (readonly GridPlace[])[];
}

/** The mark in the hand of the list, and the damage region the list points at, outlined on the picture. */
export function SurfaceMarks({ live, pathOf, onView }: SurfaceMarksProps) {
  const marked = useMarkInHand(live);
  const region = useRegionPointedAt(live);
  const markPath = useRef<SVGPathElement>(null);
  const markHalo = useRef<SVGPathElement>(null);
  const regionPath = useRef<SVGPathElement>(null);
  useOverlay(() => {
    const path = marked.map(({ live: on, lines }) => pathOf(on, lines, true)).join('');
    markHalo.current?.setAttribute('d', path);
    markPath.current?.setAttribute('d', path);
    regionPath.current?.setAttribute('d', region === null ? '' : pathOf(region.live, region.lines, true));
  }, [onView]);
  return (
    <g className="surface-marks">
      <path className="surface-region" ref={regionPath} />
      <path className="surface-halo" ref={markHalo} />
      <path className="surface-mark" ref={markPath} />
    </g>
  );
}

/** A mark of every vane is outlined on each; their faces are alike, and so are the lines on them. */
function useMarkInHand({ part, faces }: LivePart): readonly Outline[] {
  const at = useView((view) => (view.step === 'wear' ? view.selectedMark : null));
  const file = useJob(({ job }) => job.parts.find(({ id }) => id === part.id));
  const mark = at === null ? undefined : file?.wear[at];
  return useMemo(() => {
    const own = mark === undefined || file === undefined ? null : measuredMark(mark, file);
    if (own === null) return [];
    const on = faces.filter(({ face }) => standsFor(own.face, face.name));
    const lines = on.length === 0 ? [] : markOutline(on[0].face, own);
    return on.map((live) => ({ live, lines }));
  }, [mark, file, faces]);
}

function useRegionPointedAt({ part, faces }: LivePart): Outline | null {
  const id = useView((view) => view.hoverRegion);
  const regions = useEstimate((estimate) => estimate.regions);
  return useMemo(() => {
    for (const live of faces) {
      const found = regions.find(({ part: on, face }) => on === part.id && face === live.face.name);
      if (id !== null && found?.ids.includes(id)) return { live, lines: regionOutline(live.face, found, id) };
    }
    return null;
  }, [id, regions, part, faces]);
}
