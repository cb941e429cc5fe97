import { useState } from 'react';
import { Button, ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { wholeRepair } from '../../../geometry/job/defaults.ts';
import type { Fault } from '../../../geometry/job/fault.ts';
import type { PartFile } from '../../../geometry/job/job-file.ts';
import { figure } from '../../../geometry/sheet/figure.ts';
import type { RegionResult } from '../../../geometry/sheet/result.ts';
import { formatQuantity } from '../../fields/format-quantity.ts';
import { type ScreenUnits, shownUnit } from '../../fields/quantity-units.ts';
import { jobStore, useJob } from '../../job/job-store.ts';
import { faceLabel } from '../../view/face-label.ts';
import { useView, viewStore } from '../../view/view-store.ts';
import { useEstimate } from '../../worker/estimate-client.ts';
import { choosePart, useChosenPart } from '../chosen-part.ts';
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
  // Lit from here, or by a hand on a picture.
  const isLit = useView((view) => view.hoverRegion === region.id) && isInSight;
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const name = `${hasOthers ? `${part.id}, ` : ''}${sentenceCase(faceLabel(region.face))}, ${placeText(part, region.face, region.at, units)}`;
  const choose = (action: 'fill' | 'leave') =>
    setFaults(
      jobStore
        .getState()
        .edit(action === 'fill' ? 'fill a region' : 'leave a region', (job) =>
          withRegionChosen(job, part.id, region, action, label),
        ),
    );
  // Outlined on the part in sight; regions of another part go by the same names.
  const light = () => viewStore.getState().set({ hoverRegion: isInSight ? region.id : null });
  const dim = () => viewStore.getState().set({ hoverRegion: null });
  // What lies on a face out of sight comes into the flat picture, on another part into both.
  const bringIntoSight = () => {
    if (!isInSight) choosePart(part.id);
    viewStore.getState().set({ face: region.face, hoverRegion: region.id });
  };
  return (
    <li
      className="region"
      data-lit={isLit || undefined}
      onPointerEnter={light}
      onPointerLeave={({ currentTarget }) => {
        // A press may move the list from under the pointer.
        if (!currentTarget.contains(document.activeElement)) dim();
      }}
      onFocus={light}
      onBlur={({ currentTarget, relatedTarget }) => {
        if (!currentTarget.contains(relatedTarget) && !currentTarget.matches(':hover')) dim();
      }}
    >
      <h3>
        <Button className="region-title" onPress={bringIntoSight}>
          <span className="region-number">{number}</span>
          <span>{name}</span>
        </Button>
      </h3>
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
      <div className="region-words">
        <p>
          {lengthText(region.deepest, units)} deep, {areaText(region.area, units)},{' '}
          {figure(region.lostVolume)} mL
        </p>
        <p className="quiet">{reason(region, leaveBelow, units)}</p>
      </div>
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
