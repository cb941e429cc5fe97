import { useMemo } from 'react';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { formatQuantity } from '../../fields/format-quantity.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { OptionalQuantity } from '../OptionalQuantity.tsx';
import { drawnWraps, nearestCamber } from './drawn-wrap.ts';
import type { ImpellerFieldsProps } from './HubFields.tsx';
import { setVanes } from './use-impeller-edit.ts';

/** A wrap further off than this is worth a word, deg. */
const CLOSE = 5;

const NAMES = { linear: 'Even change of angle', arc: 'Single arc' } as const;

/** The two blade angles, and which of the curves between them the vane follows: the rubbing tells. */
export function CamberFields({ impeller, path, edit }: ImpellerFieldsProps) {
  const { vanes } = impeller;
  const set = setVanes(edit, path);
  const wraps = useMemo(() => drawnWraps(impeller), [impeller]);
  const camber = vanes.camber ?? 'linear';
  const drawn = wraps[camber];
  return (
    <>
      <div className="rows">
        <QuantityField
          label="Blade angle at the inlet"
          quantity="angle"
          path={`${path}.vanes.inletAngle`}
          value={vanes.inletAngle}
          min={5}
          max={85}
          help="From the tangent of the circle."
          onCommit={(angle) => set('blade angle at the inlet', 'inletAngle', angle)}
        />
        <QuantityField
          label="Blade angle at the outlet"
          quantity="angle"
          path={`${path}.vanes.outletAngle`}
          value={vanes.outletAngle}
          min={5}
          max={85}
          onCommit={(angle) => set('blade angle at the outlet', 'outletAngle', angle)}
        />
        <OptionalQuantity
          label="Measured wrap"
          known="The wrap is measured from a rubbing"
          quantity="angle"
          path={`${path}.vanes.wrap`}
          value={vanes.wrap}
          start={Math.round(drawn ?? 90)}
          help="How far round the shaft a vane reaches from its leading edge to its outer end."
          onCommit={(wrap) =>
            edit(
              'measured wrap',
              ({ vanes: { wrap: _, ...others }, ...old }) => ({
                ...old,
                vanes: wrap === undefined ? others : { ...others, wrap },
              }),
              `${path}.vanes.wrap`,
            )
          }
        />
      </div>
      <ChoiceField
        label="Between the two angles"
        choices={(['linear', 'arc'] as const).map((name) => ({
          value: name,
          label: wraps[name] === null ? NAMES[name] : `${NAMES[name]}: wraps ${degrees(wraps[name])}`,
        }))}
        value={camber}
        help={adviceOn(wraps, camber, vanes.wrap)}
        onCommit={(chosen) => set('curve of the vanes', 'camber', chosen)}
      />
    </>
  );
}

function adviceOn(
  wraps: ReturnType<typeof drawnWraps>,
  chosen: keyof typeof NAMES,
  measured: number | undefined,
): string {
  if (measured === undefined)
    return 'The end angles alone do not fix a vane. A rubbing tells which curve it follows.';
  const nearest = nearestCamber(wraps, measured);
  const off = Math.abs((wraps[chosen] ?? 0) - measured);
  const words = `The rubbing says ${degrees(measured)}: ${NAMES[nearest].toLowerCase()} comes closest`;
  if (off <= CLOSE) return `${words}.`;
  if (nearest !== chosen) return `${words}. Try it.`;
  return `${words} and is still ${degrees(off)} off. Measure the two angles once more.`;
}

const degrees = (angle: number): string =>
  `${formatQuantity(Math.round(angle), 'angle', 'mm', { as: 'typed' })}°`;
