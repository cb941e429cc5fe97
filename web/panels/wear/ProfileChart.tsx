import { type PointerEvent, useRef } from 'react';
import type { Mm } from '../../../geometry/units.ts';
import { shownUnit, toShown } from '../../fields/quantity-units.ts';
import { useView } from '../../view/view-store.ts';
import { type Profile, withPointAt, withPointDrawn } from './profile-edits.ts';
import './ProfileChart.css';

interface ProfileChartProps {
  readonly profile: Profile;
  /** Where the edge begins and ends. */
  readonly span: readonly [Mm, Mm];
  /** What the place along it is called. */
  readonly along: string;
  /** Hears of every move. */
  readonly onChange: (profile: Profile) => void;
}

/** In units of the view box; the picture is as wide as there is room. */
const BOX = { width: 340, height: 148 } as const;
const FIELD = { left: 36, right: 14, top: 14, bottom: 28 } as const;
/** How near a press takes hold of a point, px on the screen. */
const NEAR = 26;

/** The loss along an edge as a curve: draw a point elsewhere, or press beside them for one more. The rows below say the same in numbers. */
export function ProfileChart({ profile, span, along, onChange }: ProfileChartProps) {
  const svg = useRef<SVGSVGElement>(null);
  const held = useRef<number | null>(null);
  // The scale stands still while a point is drawn.
  const scale = useRef(scaleFor(profile));
  const units = useView((view) => view.units);
  if (held.current === null) scale.current = scaleFor(profile);
  const most = scale.current;
  const unit = shownUnit('length', units);
  const [from, to] = span;
  const x = (at: Mm) => FIELD.left + ((at - from) / (to - from)) * (BOX.width - FIELD.left - FIELD.right);
  const y = (loss: Mm) => FIELD.top + (loss / most) * (BOX.height - FIELD.top - FIELD.bottom);
  const show = (size: Mm) => String(Math.round(toShown(size, unit) * 100) / 100);

  const placeOf = (
    event: PointerEvent,
  ): { readonly at: readonly [Mm, Mm]; readonly pixel: number } | null => {
    const box = svg.current?.getBoundingClientRect();
    if (box === undefined || box.width === 0) return null;
    const pixel = BOX.width / box.width;
    const [px, py] = [(event.clientX - box.left) * pixel, (event.clientY - box.top) * pixel];
    const share = (px - FIELD.left) / (BOX.width - FIELD.left - FIELD.right);
    const depth = (py - FIELD.top) / (BOX.height - FIELD.top - FIELD.bottom);
    return { at: [from + share * (to - from), depth * most], pixel };
  };
  const draw = (event: PointerEvent) => {
    const place = placeOf(event);
    if (place !== null && held.current !== null)
      onChange(withPointDrawn(profile, held.current, place.at, span));
  };
  const take = (event: PointerEvent<SVGSVGElement>) => {
    const place = placeOf(event);
    if (place === null || event.button !== 0) return;
    svg.current?.setPointerCapture(event.pointerId);
    const [at, loss] = place.at;
    const off = (i: number) => Math.hypot(x(profile[i][0]) - x(at), y(profile[i][1]) - y(loss));
    const nearest = profile.reduce((best, _, i) => (off(i) < off(best) ? i : best), 0);
    if (off(nearest) <= NEAR * place.pixel) held.current = nearest;
    else {
      const grown = withPointAt(profile, [Math.min(to, Math.max(from, at)), Math.max(0, loss)]);
      held.current = grown.at;
      onChange(withPointDrawn(grown.profile, grown.at, place.at, span));
    }
  };
  const line = profile.map(([at, loss]) => `${x(at).toFixed(1)} ${y(loss).toFixed(1)}`).join('L');
  const [first, last] = [profile[0], profile[profile.length - 1]];
  return (
    <svg
      className="profile-chart"
      ref={svg}
      viewBox={`0 0 ${BOX.width} ${BOX.height}`}
      aria-hidden="true"
      onPointerDown={take}
      onPointerMove={draw}
      onPointerUp={() => {
        held.current = null;
      }}
      onPointerCancel={() => {
        held.current = null;
      }}
    >
      {[0, 0.5, 1].map((share) => (
        <g key={share}>
          <path className="profile-grid" d={`M${x(from)} ${y(share * most)}H${x(to)}`} />
          <text x={FIELD.left - 8} y={y(share * most)} textAnchor="end" dominantBaseline="central">
            {show(share * most)}
          </text>
        </g>
      ))}
      <path className="profile-lost" d={`M${x(first[0])} ${y(0)}L${line}L${x(last[0])} ${y(0)}Z`} />
      <path className="profile-line" d={`M${line}`} />
      {profile.map(([at, loss], i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: points have no name but their place
        <circle key={i} className="profile-dot" cx={x(at)} cy={y(loss)} r={7} />
      ))}
      <text x={x(from)} y={BOX.height - 8}>
        {show(from)}
      </text>
      <text x={(x(from) + x(to)) / 2} y={BOX.height - 8} textAnchor="middle">
        {along}, {unit.symbol}
      </text>
      <text x={x(to)} y={BOX.height - 8} textAnchor="end">
        {show(to)}
      </text>
    </svg>
  );
}

/** A round depth that holds the profile with a little room below it, mm. */
function scaleFor(profile: Profile): Mm {
  const deepest = Math.max(...profile.map(([, loss]) => loss));
  const power = 10 ** Math.floor(Math.log10(Math.max(deepest, 0.4) * 1.25));
  return (
    [1, 1.5, 2, 3, 4, 5, 6, 8].map((step) => step * power).find((size) => size >= deepest * 1.25) ??
    10 * power
  );
}
