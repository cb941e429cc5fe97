import type { BalanceResult, VectorResult } from '../../../geometry/sheet/balance-result.ts';
import { figure } from '../../../geometry/sheet/figure.ts';
import { longest, polarPoint, ringStep } from './polar.ts';
import './PolarPlot.css';

/** px of the drawing; the rings end here, words stand outside. */
const RADIUS = 132;
const HALF = 172;
const RINGS = [1, 2, 3];
const HEAD = 9;

interface Drawn {
  readonly kind: 'added' | 'missing' | 'found' | 'net';
  readonly word: string;
  readonly vector: VectorResult;
}

/** The vectors seen from the vane side, the reference mark to the right, against the circle of what is permitted. */
export function PolarPlot({ balance }: { readonly balance: BalanceResult }) {
  const { added, missing, asFound, net, permissible } = balance;
  const drawn: Drawn[] = [
    { kind: 'missing', word: 'missing', vector: missing },
    { kind: 'added', word: 'filler', vector: added },
    ...(asFound.amount > 0 ? [{ kind: 'found', word: 'as found', vector: asFound } as const] : []),
    { kind: 'net', word: 'net', vector: net },
  ];
  const step = ringStep(
    longest(
      drawn.map(({ vector }) => vector),
      permissible,
    ) * 1.04,
    RINGS.length,
  );
  const scale = RADIUS / (RINGS.length * step);
  const words = drawn.map(({ word, vector }) => `${word} ${vectorWords(vector)}`).join(', ');
  return (
    <figure className="polar">
      <svg
        viewBox={`${-HALF} ${-HALF} ${2 * HALF} ${2 * HALF}`}
        role="img"
        aria-label={`Unbalance seen from the vane side: ${words}; ${figure(permissible)} g·mm permitted`}
      >
        {RINGS.map((ring) => (
          <g key={ring}>
            <circle className="polar-ring" r={ring * step * scale} />
            <text className="polar-scale" x={3} y={ring * step * scale - 4}>
              {figure(ring * step)}
            </text>
          </g>
        ))}
        {[0, 90, 180, 270].map((angle) => {
          const [x, y] = polarPoint(RADIUS, angle, 1);
          const [wordX, wordY] = polarPoint(RADIUS + 18, angle, 1);
          return (
            <g key={angle}>
              <line className="polar-ring" x2={x} y2={y} />
              <text className="polar-angle" x={wordX} y={wordY + 5}>
                {angle}°
              </text>
            </g>
          );
        })}
        <circle className="polar-limit" r={permissible * scale} />
        {drawn.map((one) => (
          <Arrow key={one.kind} drawn={one} scale={scale} />
        ))}
      </svg>
      <figcaption>
        <ul className="polar-key">
          <li>
            <svg viewBox="0 0 28 12" aria-hidden="true">
              <circle className="polar-limit" cx={14} cy={6} r={5} />
            </svg>
            permitted, {figure(permissible)} g·mm
          </li>
          {drawn.map(({ kind, word, vector }) => (
            <li key={kind}>
              <svg viewBox="0 0 28 12" aria-hidden="true">
                <line className={`polar-vector polar-${kind}`} x1={1} y1={6} x2={27} y2={6} />
              </svg>
              {word}, {vectorWords(vector)}
            </li>
          ))}
        </ul>
      </figcaption>
    </figure>
  );
}

function Arrow({ drawn: { kind, vector }, scale }: { readonly drawn: Drawn; readonly scale: number }) {
  const length = vector.amount * scale;
  if (length < 1) return null;
  const head = Math.min(HEAD, length);
  return (
    <g className={`polar-arrow polar-${kind}`} transform={`rotate(${(-vector.angle).toFixed(2)})`}>
      <line className={`polar-vector polar-${kind}`} x2={length - head * 0.7} />
      <path
        className={`polar-head polar-${kind}`}
        d={`M${length} 0l${-head} ${head / 2.4}v${-head / 1.2}z`}
      />
    </g>
  );
}

const vectorWords = ({ amount, angle }: VectorResult): string =>
  amount === 0 ? '0 g·mm' : `${figure(amount)} g·mm at ${Math.round(angle) % 360}°`;
