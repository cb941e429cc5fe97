import { barWords } from './bar-words.ts';
import { textureOf } from './part-texture.ts';
import type { Shade } from './shades.ts';
import { Textures } from './Textures.tsx';
import type { Ticks } from './ticks.ts';
import { AXIS_HEIGHT, type Bar, type TimeLineLayout } from './time-line-layout.ts';

interface TimeLinePictureProps {
  readonly layout: TimeLineLayout;
  readonly ticks: Ticks;
  readonly shades: readonly Shade[];
  readonly parts: readonly string[];
  /** id of the step that is made out. */
  readonly shown: string | null;
  /** px, left and right. */
  readonly margin: number;
}

/** Bars, brackets and the hours they stand at. Readers have the list of steps instead. */
export function TimeLinePicture({ layout, ticks, shades, parts, shown, margin }: TimeLinePictureProps) {
  const { scale, lanes, height } = layout;
  const bars = lanes.flatMap((lane) => lane.bars);
  return (
    <svg
      className="time-line-picture"
      width={scale.width + 2 * margin}
      height={height}
      viewBox={`${-margin} 0 ${scale.width + 2 * margin} ${height}`}
      aria-hidden="true"
    >
      <Textures />
      {shades.map(({ kind, from, to }) => (
        <rect
          key={`${kind}${from}`}
          className={`shade-${kind}`}
          x={scale.x(from)}
          y={AXIS_HEIGHT - 4}
          width={Math.max(2, scale.x(to) - scale.x(from))}
          height={height - AXIS_HEIGHT + 4}
        />
      ))}
      {ticks.days.map(({ x, text }) => (
        <text key={x} className="tick-day" x={x} y={14}>
          {text}
        </text>
      ))}
      {ticks.hours.map(({ x, text }, i) => (
        <g key={x} className="tick">
          <path d={`M${x} ${AXIS_HEIGHT - 4}V${height}`} />
          <text x={x} y={34} textAnchor={i === ticks.hours.length - 1 ? 'end' : x < 20 ? 'start' : 'middle'}>
            {text}
          </text>
        </g>
      ))}
      {scale.folds.map(({ from, to, x, width }) => (
        <g key={from} className="fold">
          <path d={`M${x + 4} ${AXIS_HEIGHT - 4}V${height}M${x + width - 4} ${AXIS_HEIGHT - 4}V${height}`} />
          <text x={x + width / 2} y={34} textAnchor="middle">
            {Math.round((to - from) / 60)} h
          </text>
        </g>
      ))}
      {bars.map((bar) => (
        <BarShape
          key={`${bar.kind}${bar.step.id}${bar.y}`}
          bar={bar}
          parts={parts}
          isShown={bar.step.id === shown}
        />
      ))}
      {barWords(lanes[0].bars, scale.width).map(({ id, text, x }) => (
        <text key={id} className="bar-word" x={x} y={lanes[0].bars[0].y - 6}>
          {text}
        </text>
      ))}
    </svg>
  );
}

function BarShape({
  bar: { step, kind, x, y, width, height },
  parts,
  isShown,
}: {
  readonly bar: Bar;
  readonly parts: readonly string[];
  readonly isShown: boolean;
}) {
  const marks = [isShown ? 'bar-shown' : '', step.trouble === null ? '' : 'bar-trouble'].join(' ');
  if (kind === 'window') {
    const [top, bottom, end] = [y + 1, y + height - 1, x + width];
    return (
      <g className={`bar-window ${marks}`}>
        <path d={`M${x + 5} ${top}H${x}V${bottom}H${x + 5}M${end - 5} ${top}H${end}V${bottom}H${end - 5}`} />
        <path className="bar-window-middle" d={`M${x + 5} ${y + height / 2}H${end - 5}`} />
      </g>
    );
  }
  const texture = kind === 'hands' ? textureOf(step.parts, parts) : 'plain';
  return (
    <g className={`bar-${kind} ${marks}`}>
      <rect x={x} y={y} width={Math.max(2, width - 1)} height={height} rx={2} />
      {texture !== 'plain' && (
        <rect
          x={x}
          y={y}
          width={Math.max(2, width - 1)}
          height={height}
          rx={2}
          fill={`url(#texture-${texture})`}
          className="bar-texture"
        />
      )}
      {step.trouble !== null && kind === 'hands' && (
        <text className="bar-alarm" x={x + width / 2} y={y + height + 14} textAnchor="middle">
          !
        </text>
      )}
    </g>
  );
}
