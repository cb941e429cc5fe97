import { useRef } from 'react';
import type { Face } from '../../geometry/part/face.ts';
import type { Body } from '../../geometry/part/part.ts';
import { flatFrame } from '../../geometry/sheet/flat-frame.ts';
import { vaneNamesOf } from '../../geometry/sheet/vane-names.ts';
import type { FlatView } from './flat-view.ts';
import { useOverlay } from './use-overlay.ts';
import './flat-vanes.css';

interface FlatVanesProps {
  readonly face: Face;
  readonly body: Body;
  readonly view: FlatView;
}

/** px a vane must be long on the screen to carry its name, and its number alone. */
const NAME = 96;
const NUMBER = 32;

/** The vanes that stand on the face laid flat, by name on their footprints. */
export function FlatVanes({ face, body, view }: FlatVanesProps) {
  const group = useRef<SVGGElement>(null);
  const names = vaneNamesOf(body, face, flatFrame(face));
  useOverlay(() => {
    const { scale } = view.lay();
    for (const [i, text] of [...(group.current?.children ?? [])].entries()) {
      const { at, angle, length, number } = names[i];
      const [x, y] = view.toScreen(at);
      const isLong = length * scale > NAME;
      text.toggleAttribute('hidden', length * scale < NUMBER);
      text.textContent = isLong ? `Vane ${number}` : String(number);
      const turn = isLong ? ` rotate(${angle.toFixed(1)})` : '';
      text.setAttribute('transform', `translate(${x.toFixed(1)} ${y.toFixed(1)})${turn}`);
    }
  }, [view.onChange]);
  if (names.length === 0) return null;
  return (
    <g className="flat-vanes" ref={group}>
      {names.map(({ number }) => (
        <text key={number} />
      ))}
    </g>
  );
}
