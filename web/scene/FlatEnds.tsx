import { useRef } from 'react';
import type { Face } from '../../geometry/part/face.ts';
import { flatFrame } from '../../geometry/sheet/flat-frame.ts';
import { flatEnds } from './flat-ends.ts';
import type { FlatView } from './flat-view.ts';
import { useOverlay } from './use-overlay.ts';
import './flat-ends.css';

/** What lies beyond the edges of a vane's face as it is laid flat. */
export function FlatEnds({ face, view }: { readonly face: Face; readonly view: FlatView }) {
  const group = useRef<SVGGElement>(null);
  const ends = flatEnds(face);
  useOverlay(() => {
    const { box } = flatFrame(face);
    for (const [i, text] of [...(group.current?.children ?? [])].entries()) {
      const { across, down, offset } = ends[i];
      const [x, y] = view.toScreen([box.x + across * box.width, box.y + down * box.height]);
      text.setAttribute('x', (x + offset[0]).toFixed(1));
      text.setAttribute('y', (y + offset[1]).toFixed(1));
    }
  }, [view.onChange]);
  return (
    <g className="flat-ends" ref={group}>
      {ends.map(({ words, anchor }) => (
        <text key={words} textAnchor={anchor}>
          {words}
        </text>
      ))}
    </g>
  );
}
