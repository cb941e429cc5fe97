import { useRef } from 'react';
import { figure } from '../../geometry/sheet/figure.ts';
import { useJob } from '../job/job-store.ts';
import { useView } from '../view/view-store.ts';
import { useEstimate } from '../worker/estimate-client.ts';
import { balanceFigure, type Outline } from './balance-figure.ts';
import type { OverlayProps } from './overlay-props.ts';
import { useOverlay } from './use-overlay.ts';
import './balance-arrow.css';

/** On the step Balance: the net unbalance as an arrow in the shaft plane, against the circle of what is permitted, and the corrections taken. */
export function BalanceArrow(props: OverlayProps) {
  const isShown = useView((view) => view.step === 'balance');
  const isRotor = useJob(({ job }) => job.rotor?.part === props.live.part.id);
  return isShown && isRotor ? <Arrow {...props} /> : null;
}

function Arrow({ live: { part }, viewport }: OverlayProps) {
  const balance = useEstimate(({ result }) => result?.balance ?? null);
  const circle = useRef<SVGPathElement>(null);
  const shaft = useRef<SVGPathElement>(null);
  const head = useRef<SVGPathElement>(null);
  const label = useRef<SVGTextElement>(null);
  const taken = useRef<SVGPathElement>(null);
  const hidden = useRef<SVGPathElement>(null);
  useOverlay(() => {
    if (balance === null) return;
    const { project, eye } = viewport.sight();
    const drawn = balanceFigure(part, balance);
    const path = (points: typeof drawn.limit, close: string) =>
      `M${points
        .map((point) =>
          project(point)
            .slice(0, 2)
            .map((px) => px.toFixed(1))
            .join(' '),
        )
        .join('L')}${close}`;
    circle.current?.setAttribute('d', path(drawn.limit, 'Z'));
    shaft.current?.setAttribute('d', path(drawn.shaft, ''));
    head.current?.setAttribute('d', path(drawn.head, 'Z'));
    // The back is seen through the part from the vane side, and the vane side from the back.
    const isHidden = ({ isBehind }: Outline) => isBehind === eye[2] > 0;
    const rings = (shown: readonly Outline[]) => shown.map(({ ring }) => path(ring, 'Z')).join('');
    taken.current?.setAttribute('d', rings(drawn.taken.filter((outline) => !isHidden(outline))));
    hidden.current?.setAttribute('d', rings(drawn.taken.filter(isHidden)));
    const [x, y] = project(drawn.word);
    label.current?.setAttribute('x', x.toFixed(1));
    label.current?.setAttribute('y', y.toFixed(1));
  }, [viewport.onChange]);
  if (balance === null) return null;
  const { net } = balance;
  return (
    <g className="balance-arrow">
      <path className="balance-limit" ref={circle} />
      <path className="balance-taken" ref={taken} />
      <path className="balance-taken balance-hidden" ref={hidden} />
      <path className="balance-shaft" ref={shaft} />
      <path className="balance-head" ref={head} />
      <text ref={label}>
        {figure(net.amount)} g·mm at {Math.round(net.angle) % 360}°
      </text>
    </g>
  );
}
