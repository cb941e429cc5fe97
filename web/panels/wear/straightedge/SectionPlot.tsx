import { type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import type { PartFile } from '../../../../geometry/job/job-file.ts';
import { sectionSvg } from '../../../../geometry/sheet/section-svg.ts';
import { shownUnit } from '../../../fields/quantity-units.ts';
import { useJob } from '../../../job/job-store.ts';
import { faceLabel } from '../../../view/face-label.ts';
import { useView } from '../../../view/view-store.ts';
import { laidInHand, laidInSight, onLaid, useStraightedge } from '../../../wear/laid-section.ts';
import { useWearRevision } from '../../../wear/live-faces.ts';
import { sectionSeen } from '../../../wear/section-seen.ts';
import { useEstimate } from '../../../worker/estimate-client.ts';
import { useWidth } from '../../use-width.ts';
import { depthWords, lengthWords, ownPlaceWords, repairWords } from './section-text.ts';
import './SectionPlot.css';

/** px of letters, and how much of its width the plot may be high: there is less width than on paper. */
const SIZE = { text: 14, high: 0.5, isSteady: true } as const;

/** The section under the straightedge, as it is moved: the plot, its deepest place, and what will be done there. */
export function SectionPlot({ part }: { readonly part: PartFile }) {
  const box = useRef<HTMLDivElement>(null);
  const width = useWidth(box);
  useMoves(box);
  const units = useView((view) => view.units);
  // Another job or estimate is another section, though the line lies where it did.
  useJob((state) => state.job);
  useEstimate((state) => state);
  useStraightedge((chosen) => chosen.kept);
  useWearRevision();
  const laid = laidInSight();
  const profile = laid === null ? null : sectionSeen(laid);
  const words = profile === null ? '' : repairWords(profile, units);
  const deepest = profile?.deepest ?? null;
  const where = laid === null || deepest === null ? '' : ownPlaceWords(part, laid.live, deepest.point, units);
  const drawing = useMemo(() => {
    if (profile === null) return '';
    const { times, over, symbol } = shownUnit('length', units);
    const found =
      profile.deepest === null || profile.deepest.depth <= 0
        ? ''
        : `Deepest ${depthWords(profile.deepest.depth, units)} at ${where}. `;
    return sectionSvg(profile, {
      title: 'Section under the straightedge',
      description: `${lengthWords(profile.line.length, units)} long. ${found}${words}`,
      id: 'section-in-sight',
      width,
      ...SIZE,
      unit: { size: times / over, symbol, depth: (depth) => depthWords(depth, units) },
    }).markup;
  }, [profile, units, width, where, words]);
  return (
    <div className="section-screen" ref={box}>
      {profile === null ? (
        <p className="quiet">Lay a line over the part or the flat picture. Its section appears here.</p>
      ) : (
        <>
          <h2>Under the straightedge: {laid === null ? '' : faceLabel(laid.live.face.name)}</h2>
          {deepest !== null && (
            <dl className="section-figures">
              <Figure what="Deepest" value={depthWords(deepest.depth, units)} />
              <Figure
                what="Putty there"
                value={profile.isFillKnown ? depthWords(deepest.putty, units) : 'not known yet'}
              />
              <Figure what="Line" value={lengthWords(profile.line.length, units)} />
            </dl>
          )}
          {/* biome-ignore lint/security/noDangerouslySetInnerHtml: the engine writes it and escapes everything a person wrote */}
          <div className="section-drawing" dangerouslySetInnerHTML={{ __html: drawing }} />
          {deepest !== null && deepest.depth > 0 && (
            <p>
              Deepest place: {where}; {lengthWords(deepest.at, units)} from A.
            </p>
          )}
          <p>{words}</p>
        </>
      )}
    </div>
  );
}

function Figure({ what, value }: { readonly what: string; readonly value: string }) {
  return (
    <div>
      <dt className="quiet">{what}</dt>
      <dd>{value}</dd>
    </div>
  );
}

/** Draws anew with every frame in which the line under the hand moved; the first one brings the plot into sight. */
function useMoves(box: RefObject<HTMLElement | null>): void {
  const [, setMoves] = useState(0);
  const hasBegun = useRef(false);
  useEffect(() => {
    let isMoving = false;
    return onLaid(() => {
      const moves = laidInHand() !== null;
      hasBegun.current = moves && !isMoving;
      isMoving = moves;
      setMoves((count) => count + 1);
    });
  }, []);
  useEffect(() => {
    if (!hasBegun.current) return;
    hasBegun.current = false;
    box.current?.querySelector('.section-drawing')?.scrollIntoView({ block: 'nearest' });
  });
}
