import { useRef } from 'react';
import type { Vec3 } from '../../geometry/units.ts';
import type { OverlayProps } from './overlay-props.ts';
import { useOverlay } from './use-overlay.ts';
import { vaneMarks } from './vane-marks.ts';
import './vane-lines.css';

/** Tilt of the eye, as height over reach, below which the numbers would lie across each other. */
const LOWEST = 0.2;
/** px. */
const CHIP = 11;

/** The vanes of an impeller by number and the way it turns, seen from the vane side. */
export function VaneLines({ live, viewport }: OverlayProps) {
  const group = useRef<SVGGElement>(null);
  const arrow = useRef<SVGPathElement>(null);
  const numbers = useRef<SVGGElement>(null);
  const { body } = live.part;
  const marks = body.kind === 'impeller' ? vaneMarks(body) : null;
  useOverlay(() => {
    if (marks === null) return;
    const { project, eye } = viewport.sight();
    const isOver = eye[2] > LOWEST * Math.hypot(eye[0], eye[1]);
    group.current?.toggleAttribute('hidden', !isOver);
    if (!isOver) return;
    const at = (point: Vec3) => {
      const [x, y] = project(point);
      return `${x.toFixed(1)} ${y.toFixed(1)}`;
    };
    const [left, right] = marks.head;
    const tip = marks.arrow[marks.arrow.length - 1];
    arrow.current?.setAttribute('d', `M${marks.arrow.map(at).join('L')}M${at(left)}L${at(tip)}L${at(right)}`);
    for (const [i, chip] of [...(numbers.current?.children ?? [])].entries()) {
      const [x, y] = project(marks.numbers[i].at);
      chip.setAttribute('transform', `translate(${x.toFixed(1)} ${y.toFixed(1)})`);
    }
  }, [viewport.onChange]);
  if (marks === null) return null;
  return (
    <g className="vane-lines" ref={group}>
      <path className="vane-turn" ref={arrow} />
      <g className="vane-names" ref={numbers}>
        {marks.numbers.map(({ number }) => (
          <g key={number}>
            <circle r={CHIP} />
            <text>{number}</text>
          </g>
        ))}
      </g>
    </g>
  );
}
