import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import type { ClearanceResult } from '../../../geometry/sheet/clearance-result.ts';
import { TURN } from '../../../geometry/units.ts';
import { type GapState, useView, viewStore } from '../../view/view-store.ts';
import { polarPoint } from '../balance/polar.ts';
import { arcPath, bandArcs, type GapBand } from './gap-bands.ts';
import { gapWords } from './gap-text.ts';
import './GapMap.css';
import '../shell/pair.css';

const RADIUS = 130;
const HALF = 176;

const STATES = [
  { state: 'as found', map: 'asFound', label: 'As found' },
  { state: 'filled', map: 'filled', label: 'Filled' },
  { state: 'coated', map: 'coated', label: 'Coated' },
] as const;

interface GapMapProps {
  readonly clearance: ClearanceResult;
  /** The job the result belongs to. */
  readonly job: JobFile;
}

/** The map and the picture show one state. */
function show(state: GapState): void {
  const { assembly, set } = viewStore.getState();
  set({ assembly: { ...assembly, state } });
}

/** The gap round the plate: the narrowest that any tip makes at each place of it as the rotor turns. */
export function GapMap({ clearance, job }: GapMapProps) {
  const units = useView((view) => view.units);
  const state = useView((view) => view.assembly.state);
  const { map, band, overlap, tightest } = clearance;
  const scale = RADIUS / overlap.to;
  const turn = TURN / map.sectors;
  const width = (overlap.to - overlap.from) / map.radii.length;
  const shown = STATES.find((each) => each.state === state) ?? STATES[2];
  const arcs = bandArcs(map[shown.map], band);
  const names: Readonly<Record<GapBand, string>> = {
    meets: 'The parts meet',
    tight: `Under ${gapWords(band.least, units)}`,
    fits: 'Within the band',
    wide: `Over ${gapWords(band.most, units)}`,
  };
  const seen = (['meets', 'tight', 'fits', 'wide'] as const).filter((name) =>
    arcs.some((arc) => arc.band === name),
  );
  const plate = job.parts.find(({ id }) => id === job.clearance?.plate);
  const [first, second] = tightest.plate;
  const isOutline = plate?.kind === 'wear-plate' && plate.outline !== undefined;
  const [x, y] = isOutline ? [first * scale, -second * scale] : polarPoint(first, second, scale);
  return (
    <section className="section" aria-label="Round the plate">
      <div className="section-head">
        <h2>Round the plate</h2>
        <ToggleButtonGroup
          className="pair"
          aria-label="State of the gap"
          selectionMode="single"
          disallowEmptySelection
          selectedKeys={[state]}
          onSelectionChange={([chosen]) => show(chosen as GapState)}
        >
          {STATES.map(({ state: id, label }) => (
            <ToggleButton key={id} id={id} className="pair-choice">
              {label}
            </ToggleButton>
          ))}
        </ToggleButtonGroup>
      </div>
      <figure className="gap-map">
        <svg
          viewBox={`${-HALF} ${-HALF} ${2 * HALF} ${2 * HALF}`}
          role="img"
          aria-label={`Map of the gap, ${state}: ${seen.map((name) => names[name].toLowerCase()).join(', ')}`}
        >
          <Hatches id="gap-map" />
          {arcs.map((arc) => {
            const inner = (overlap.from + arc.ring * width) * scale;
            return (
              <path
                key={`${arc.ring} ${arc.from}`}
                className={`gap-map-${arc.band}`}
                d={arcPath(inner, inner + width * scale, arc.from * turn, arc.to * turn)}
              />
            );
          })}
          <circle className="gap-map-edge" r={RADIUS} />
          <circle className="gap-map-edge" r={overlap.from * scale} />
          {[0, 90, 180, 270].map((angle) => {
            const [left, top] = polarPoint(RADIUS + 22, angle, 1);
            return (
              <text key={angle} className="gap-map-angle" x={left} y={top + 5}>
                {angle}°
              </text>
            );
          })}
          {state === 'coated' && (
            <g transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}>
              <circle className="gap-map-spot-under" r={8} />
              <circle className="gap-map-spot" r={8} />
            </g>
          )}
        </svg>
        <figcaption>
          <ul className="gap-map-key">
            {seen.map((name) => (
              <li key={name}>
                <svg viewBox="0 0 28 18" aria-hidden="true">
                  <rect className={`gap-map-${name}`} width="28" height="18" />
                </svg>
                {names[name]}
              </li>
            ))}
            {state === 'coated' && (
              <li>
                <svg viewBox="-14 -9 28 18" aria-hidden="true">
                  <circle className="gap-map-spot" r="7" />
                </svg>
                Tightest, {gapWords(tightest.gap, units)}
              </li>
            )}
          </ul>
          <p className="quiet">
            At each place of the plate, under the tip that comes nearest. Seen onto the running face, angles
            from its zero mark.
          </p>
        </figcaption>
      </figure>
    </section>
  );
}

/** Shades that can be told apart without colour. */
function Hatches({ id }: { readonly id: string }) {
  return (
    <defs>
      <pattern id={`${id}-cross`} width="9" height="9" patternUnits="userSpaceOnUse">
        <rect className="gap-map-ground-meets" width="9" height="9" />
        <path className="gap-map-hatch" d="M0 9L9 0M0 0L9 9" />
      </pattern>
      <pattern id={`${id}-lines`} width="7" height="7" patternUnits="userSpaceOnUse">
        <rect className="gap-map-ground-tight" width="7" height="7" />
        <path className="gap-map-hatch" d="M0 7L7 0" />
      </pattern>
      <pattern id={`${id}-dots`} width="7" height="7" patternUnits="userSpaceOnUse">
        <rect className="gap-map-ground-wide" width="7" height="7" />
        <circle className="gap-map-dot" cx="3.5" cy="3.5" r="1.2" />
      </pattern>
    </defs>
  );
}
