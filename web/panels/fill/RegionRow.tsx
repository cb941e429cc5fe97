import { useState } from 'react';
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { wholeRepair } from '../../../geometry/job/defaults.ts';
import type { Fault } from '../../../geometry/job/fault.ts';
import type { PartFile } from '../../../geometry/job/job-file.ts';
import { figure } from '../../../geometry/sheet/figure.ts';
import type { RegionResult } from '../../../geometry/sheet/result.ts';
import { formatQuantity } from '../../fields/format-quantity.ts';
import { type ScreenUnits, shownUnit } from '../../fields/quantity-units.ts';
import { jobStore, useJob } from '../../job/job-store.ts';
import { useView, viewStore } from '../../view/view-store.ts';
import { useEstimate } from '../../worker/estimate-client.ts';
import { useChosenPart } from '../chosen-part.ts';
import { Refusal } from '../Refusal.tsx';
import { sentenceCase } from '../sentence-case.ts';
import { placeText } from '../wear/face-words.ts';
import { areaText } from './area-text.ts';
import { withRegionChosen } from './overrule-region.ts';

interface RegionRowProps {
  readonly part: PartFile;
  readonly region: RegionResult;
  /** Its number on the sheet. */
  readonly number: number;
  /** The job has other parts: the name of this one is said too. */
  readonly hasOthers: boolean;
}

/** One damage region: where, how deep, how much, and the choice between filling it and leaving it to the coat. */
export function RegionRow({ part, region, number, hasOthers }: RegionRowProps) {
  const units = useView((view) => view.units);
  const leaveBelow = useJob((state) => wholeRepair(state.job.repair).leaveBelow);
  const label = useEstimate((state) =>
    state.regions.find((known) => known.part === part.id && known.face === region.face),
  );
  const isInSight = useChosenPart().part.id === part.id;
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const name = `${hasOthers ? `${part.id}, ` : ''}${sentenceCase(region.face)}, ${placeText(part, region.face, region.at, units)}`;
  const choose = (action: 'fill' | 'leave') =>
    setFaults(
      jobStore
        .getState()
        .edit(action === 'fill' ? 'fill a region' : 'leave a region', (job) =>
          withRegionChosen(job, part.id, region, action, label),
        ),
    );
  // Outlined on the part in sight; regions of another part go by the same names.
  const point = (isOver: boolean) => () =>
    viewStore.getState().set({ hoverRegion: isOver && isInSight ? region.id : null });
  return (
    <li
      className="region"
      onPointerEnter={point(true)}
      onPointerLeave={point(false)}
      onFocus={point(true)}
      onBlur={point(false)}
    >
      <div className="region-words">
        <h3>
          <span className="region-number">{number}</span>
          {name}
        </h3>
        <p>
          {lengthText(region.deepest, units)} deep, {areaText(region.area, units)},{' '}
          {figure(region.lostVolume)} mL
        </p>
        <p className="quiet">{reason(region, leaveBelow, units)}</p>
      </div>
      <ToggleButtonGroup
        className="pair region-choice"
        aria-label={`What becomes of it: ${name}`}
        selectionMode="single"
        disallowEmptySelection
        selectedKeys={[region.action]}
        onSelectionChange={(keys) => choose(keys.has('fill') ? 'fill' : 'leave')}
      >
        <ToggleButton id="fill" className="pair-choice">
          Fill
        </ToggleButton>
        <ToggleButton id="leave" className="pair-choice">
          Leave
        </ToggleButton>
      </ToggleButtonGroup>
      <Refusal faults={faults} />
    </li>
  );
}

/** Why it is filled or left. */
function reason(
  { action, deepest, overruled }: RegionResult,
  leaveBelow: number,
  units: ScreenUnits,
): string {
  const limit = lengthText(leaveBelow, units);
  const isUnder = deepest < leaveBelow;
  if (overruled) {
    const but = `though the deepest is ${isUnder ? 'under' : 'over'} ${limit}`;
    return action === 'fill'
      ? `Filled because you chose so${isUnder ? `, ${but}` : ''}.`
      : `Left because you chose so${isUnder ? '' : `, ${but}`}.`;
  }
  return action === 'fill'
    ? `Filled: its deepest reaches ${limit}.`
    : `Left for the coat: deepest ${lengthText(deepest, units)} is under ${limit}.`;
}

function lengthText(size: number, units: ScreenUnits): string {
  return `${formatQuantity(size, 'length', units)} ${shownUnit('length', units).symbol}`;
}
