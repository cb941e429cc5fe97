import { useEffect, useRef, useState } from 'react';
import { depthAt } from '../../geometry/depth/depth-at.ts';
import { toFacePoint } from '../../geometry/part/face.ts';
import { toDegrees, wrapTurn } from '../../geometry/units.ts';
import { formatQuantity } from '../fields/format-quantity.ts';
import { type ScreenUnits, shownUnit } from '../fields/quantity-units.ts';
import { useView, viewStore } from '../view/view-store.ts';
import type { Hover, Hovered } from './hover.ts';
import { useOverlay } from './use-overlay.ts';
import './pointer-depth.css';

/** ms between two sentences of the spoken depth. */
const SPOKEN_EVERY = 1200;

/** The worn depth under the pointer as a number beside it, and now and then as words for who listens. */
export function PointerDepth({ hover }: { readonly hover: Hover }) {
  const note = useRef<HTMLDivElement>(null);
  const units = useView((view) => view.units);
  useOverlay(() => {
    const element = note.current;
    if (element === null) return;
    const hovered = hover.now();
    element.hidden = hovered === null || !hovered.isOnFace;
    if (hovered === null || element.hidden) return;
    element.textContent = depthText(hovered, units);
    const above = hovered.byTouch ? 88 : 44;
    element.style.translate = `${Math.round(hovered.x)}px ${Math.round(hovered.y - above)}px`;
  }, [hover.onChange]);
  return (
    <>
      <div className="pointer-depth" ref={note} aria-hidden="true" hidden />
      <SpokenDepth hover={hover} />
    </>
  );
}

function SpokenDepth({ hover }: { readonly hover: Hover }) {
  const [words, setWords] = useState('');
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const stop = hover.onChange(() => {
      timer ??= setTimeout(() => {
        timer = undefined;
        setWords(sentence(hover.now()));
      }, SPOKEN_EVERY);
    });
    return () => {
      clearTimeout(timer);
      stop();
    };
  }, [hover]);
  return (
    <p className="unseen" role="status">
      {words}
    </p>
  );
}

function depthText({ live, place }: Hovered, units: ScreenUnits): string {
  const depth = depthAt(live.map, live.face, ...place);
  return `${formatQuantity(depth, 'length', units)} ${shownUnit('length', units).symbol}`;
}

function sentence(hovered: Hovered | null): string {
  if (hovered === null || !hovered.isOnFace) return '';
  const { units } = viewStore.getState();
  const { face } = hovered.live;
  const point = toFacePoint(face, ...hovered.place);
  const where = face.coordinates.map(({ label, isAngle }, i) => {
    if (isAngle) return `${label} ${formatQuantity(toDegrees(wrapTurn(point[i])), 'angle', units)} degrees`;
    return `${label} ${formatQuantity(point[i], 'length', units)} ${shownUnit('length', units).symbol}`;
  });
  return `Depth ${depthText(hovered, units)} at ${where.join(', ')}`;
}
