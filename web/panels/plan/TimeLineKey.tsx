import { type Texture, textureOf } from './part-texture.ts';
import type { Shade } from './shades.ts';
import type { Bar } from './time-line-layout.ts';

interface TimeLineKeyProps {
  readonly parts: readonly string[];
  readonly kinds: ReadonlySet<Bar['kind']>;
  readonly shades: readonly Shade[];
}

/** What the marks of the picture mean; only those that are in it. */
export function TimeLineKey({ parts, kinds, shades }: TimeLineKeyProps) {
  const hasShade = (kind: Shade['kind']) => shades.some((shade) => shade.kind === kind);
  return (
    <ul className="time-line-key" aria-hidden="true">
      {parts.length < 2 ? (
        <Sample words="hands" className="bar-hands" />
      ) : (
        [...parts.map((part) => [part]), parts].map((own) => (
          <Sample
            key={own.join()}
            words={own.length === 1 ? `hands on ${own[0]}` : 'on all parts'}
            className="bar-hands"
            texture={textureOf(own, parts)}
          />
        ))
      )}
      {kinds.has('wait') && <Sample words="waits" className="bar-wait" />}
      {kinds.has('window') && (
        <li>
          <svg width="28" height="16" aria-hidden="true" className="bar-window">
            <path d="M6 2H1V14H6M22 2H27V14H22" />
            <path className="bar-window-middle" d="M6 8H22" />
          </svg>
          opens, closes
        </li>
      )}
      {hasShade('break') && <Sample words="break" className="shade-break" />}
      {hasShade('night') && <Sample words="night" className="shade-night" />}
    </ul>
  );
}

interface SampleProps {
  readonly words: string;
  readonly className: string;
  readonly texture?: Texture | undefined;
}

function Sample({ words, className, texture = 'plain' }: SampleProps) {
  return (
    <li>
      <svg width="28" height="16" aria-hidden="true" className={className}>
        <rect x="1" y="1" width="26" height="14" rx="2" />
        {texture !== 'plain' && (
          <rect
            x="1"
            y="1"
            width="26"
            height="14"
            rx="2"
            fill={`url(#texture-${texture})`}
            className="bar-texture"
          />
        )}
      </svg>
      {words}
    </li>
  );
}
