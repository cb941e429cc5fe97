import type { JobFile } from '../../../geometry/job/job-file.ts';
import type { BalanceResult } from '../../../geometry/sheet/balance-result.ts';
import { plain } from '../../../geometry/sheet/figure.ts';
import { polarPoint } from './polar.ts';
import { pullBands } from './pull-bands.ts';
import './PullMap.css';

interface PullMapProps {
  readonly balance: BalanceResult;
  /** The job the result belongs to. */
  readonly job: JobFile;
  /** Of the mixed filler, g/cm3. */
  readonly density: number;
}

const RADIUS = 132;
const HALF = 172;

/** Where more filler would help and where it would hurt: what each cm2 filled 1 mm more does to the net vector. */
export function PullMap({ balance, job, density }: PullMapProps) {
  const part = job.parts.find(({ id }) => id === job.rotor?.part);
  if (part?.kind !== 'impeller' || balance.net.amount === 0) return null;
  const { vanes } = part;
  const outer = part.outerDiameter / 2;
  const scale = RADIUS / outer;
  const bands = pullBands(outer, density);
  return (
    <section className="section">
      <h2>Where more filler helps</h2>
      <p>
        Each cm² filled 1 mm more makes the net pull grow (+) or shrink (−) by so many g·mm. It changes along
        the line of the pull alone.
      </p>
      <figure className="pull">
        <svg
          viewBox={`${-HALF} ${-HALF} ${2 * HALF} ${2 * HALF}`}
          role="img"
          aria-label={`Filler helps on the side of ${Math.round(balance.net.angle + 180) % 360} degrees and hurts on the side of ${Math.round(balance.net.angle) % 360} degrees`}
        >
          <clipPath id="pull-disc">
            <circle r={RADIUS} />
          </clipPath>
          <g clipPath="url(#pull-disc)">
            <g transform={`rotate(${(-balance.net.angle).toFixed(2)})`}>
              {bands.map(({ from, to, strength }) => (
                <rect
                  key={from}
                  className={strength < 0 ? 'pull-helps' : 'pull-hurts'}
                  opacity={Math.abs(strength)}
                  x={from * scale}
                  y={-RADIUS}
                  width={(to - from) * scale}
                  height={2 * RADIUS}
                />
              ))}
              {bands.slice(1).map(({ from }) => (
                <line
                  key={from}
                  className="pull-line"
                  x1={from * scale}
                  x2={from * scale}
                  y1={-RADIUS}
                  y2={RADIUS}
                />
              ))}
            </g>
          </g>
          <circle className="pull-rim" r={RADIUS} />
          {Array.from({ length: vanes.count }, (_, i) => {
            const angle = (vanes.firstAngle ?? 0) + (360 * i) / vanes.count;
            const [x, y] = polarPoint(vanes.inletDiameter / 2, angle, scale);
            return (
              <g key={angle}>
                <circle className="pull-vane" cx={x} cy={y} r={11} />
                <text className="pull-word" x={x} y={y + 5}>
                  {i + 1}
                </text>
              </g>
            );
          })}
          {bands.slice(1).map(({ from, value }) => {
            const [x, y] = polarPoint(from, balance.net.angle, scale);
            return (
              <text key={from} className="pull-word pull-value" x={x} y={y + 5}>
                {value > 0 ? '+' : value < 0 ? '−' : ''}
                {plain(Math.abs(value))}
              </text>
            );
          })}
          {[0, 90, 180, 270].map((angle) => {
            const [x, y] = polarPoint(RADIUS + 18, angle, 1);
            return (
              <text key={angle} className="polar-angle" x={x} y={y + 5}>
                {angle}°
              </text>
            );
          })}
        </svg>
        <figcaption className="quiet">
          Seen from the vane side; vane numbers stand at the leading edges. Fill only what has to be filled:
          the corrections above cost less than a swollen vane.
        </figcaption>
      </figure>
    </section>
  );
}
