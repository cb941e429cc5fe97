import { useRef } from 'react';
import type { Vec3 } from '../../geometry/units.ts';
import { compass } from './compass.ts';
import type { OverlayProps } from './overlay-props.ts';
import { useOverlay } from './use-overlay.ts';
import './compass-lines.css';

/** Tilt of the eye, as height over reach, below which the ticks would lie across the part. */
const LOWEST = 0.2;
const NUMBERED = [0, 90, 180, 270];

/** Angles round the rim and the arrow at the reference mark, seen from the face side. */
export function CompassLines({ live: { part }, viewport }: OverlayProps) {
  const group = useRef<SVGGElement>(null);
  const ticks = useRef<SVGPathElement>(null);
  const arrow = useRef<SVGPathElement>(null);
  const numbers = useRef<SVGGElement>(null);
  useOverlay(() => {
    const { project, eye } = viewport.sight();
    const isOver = eye[2] > LOWEST * Math.hypot(eye[0], eye[1]);
    const round = isOver ? compass(part, eye) : null;
    group.current?.toggleAttribute('hidden', round === null);
    if (round === null) return;
    const at = (point: Vec3) => {
      const [x, y] = project(point);
      return `${x.toFixed(1)} ${y.toFixed(1)}`;
    };
    ticks.current?.setAttribute(
      'd',
      round.ticks.map(([inner, outer]) => `M${at(inner)}L${at(outer)}`).join(''),
    );
    arrow.current?.setAttribute('d', `M${round.arrow.map(at).join('L')}Z`);
    for (const [i, text] of [...(numbers.current?.children ?? [])].entries()) {
      const [x, y] = project(round.numbers[i].at);
      text.setAttribute('x', x.toFixed(1));
      text.setAttribute('y', y.toFixed(1));
    }
  }, [viewport.onChange]);
  return (
    <g className="compass" ref={group}>
      <path className="compass-ticks" ref={ticks} />
      <path className="compass-arrow" ref={arrow} />
      <g ref={numbers}>
        {NUMBERED.map((degrees) => (
          <text key={degrees}>{degrees}°</text>
        ))}
      </g>
    </g>
  );
}
