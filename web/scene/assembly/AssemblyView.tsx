import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import { Button, ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { measuredClearance } from '../../../geometry/job/measured-running.ts';
import { wrapTurn } from '../../../geometry/units.ts';
import { formatQuantity } from '../../fields/format-quantity.ts';
import { shownUnit } from '../../fields/quantity-units.ts';
import { useJob } from '../../job/job-store.ts';
import { gapWords } from '../../panels/clearance/gap-text.ts';
import { type GapState, useView, viewStore } from '../../view/view-store.ts';
import { type LivePart, livePart, useWearRevision } from '../../wear/live-faces.ts';
import { useEstimate } from '../../worker/estimate-client.ts';
import { DepthScaleBar } from '../DepthScaleBar.tsx';
import { useDepthScale } from '../depth-scale.ts';
import { rendererKind } from '../renderer-kind.ts';
import { useSize } from '../use-size.ts';
import { type Steered, useViewKeys } from '../use-view-keys.ts';
import { ViewButtons } from '../ViewButtons.tsx';
import { createViewport, type Viewport } from '../viewport.ts';
import { AssemblyCanvas } from './AssemblyCanvas.tsx';
import { AssemblyControls, changeAssembly } from './AssemblyControls.tsx';
import { AssemblyLabels } from './AssemblyLabels.tsx';
import { assemblyBounds, plateRadius } from './assembly-bounds.ts';
import { type Facing, facing } from './facing.ts';
import { type Filling, filledPart, setApart } from './gap-state.ts';
import type { Pose } from './pose.ts';
import { meeting, tightPlaces, tightRig } from './tight-spot.ts';
import { type RotorHand, useAssemblyHand } from './use-assembly-hand.ts';
import '../part-view.css';
import '../picture-foot.css';
import './assembly.css';

interface AssemblyViewProps {
  /** ids of the two parts. */
  readonly plate: string;
  readonly impeller: string;
}

/** Plate and impeller as they run, at the true gap, to be pulled apart, turned and cut open. Fills its container. */
export function AssemblyView({ plate, impeller }: AssemblyViewProps) {
  const revision = useWearRevision();
  // biome-ignore lint/correctness/useExhaustiveDependencies: the revision says when a part has become another
  const pair = useMemo(() => [livePart(plate), livePart(impeller)], [plate, impeller, revision]);
  const asked = useJob(({ job }) => job.clearance);
  const [below, above] = pair;
  const [plateShape, rotorShape] = [below?.part, above?.part];
  const stand = useMemo(
    () =>
      plateShape === undefined || rotorShape === undefined || asked === undefined
        ? null
        : facing(plateShape, rotorShape, measuredClearance(asked)),
    [plateShape, rotorShape, asked],
  );
  if (rendererKind() === 'none')
    return (
      <Words>
        This device cannot draw in three dimensions. The figures and the map of the gap are all there.
      </Words>
    );
  if (below === undefined || above === undefined || stand === null)
    return (
      <Words>
        {plate} and {impeller} share no radius, so they cannot stand against each other. Check their
        diameters.
      </Words>
    );
  return <AssemblyPicture plate={below} rotor={above} facing={stand} />;
}

function Words({ children }: { readonly children: ReactNode }) {
  return (
    <div className="part-view">
      <p className="part-none quiet">{children}</p>
    </div>
  );
}

/** px that the buttons above and the scale below take. */
const COVERED = { top: 56, bottom: 72, side: 20 } as const;
const COVERED_SOUND = { ...COVERED, bottom: 16 } as const;
/** As near as a gap of a tenth needs, as a share of the distance that shows all. */
const NEAREST = 0.002;

interface PictureProps {
  readonly plate: LivePart;
  readonly rotor: LivePart;
  readonly facing: Facing;
}

function AssemblyPicture({ plate, rotor, facing }: PictureProps) {
  const area = useRef<HTMLDivElement>(null);
  const [viewport] = useState(() => createViewport({ nearest: NEAREST }));
  const assembly = useView((view) => view.assembly);
  const job = useJob(({ job }) => job);
  const scales = [useDepthScale(plate), useDepthScale(rotor)];
  const scale = scales[0].to >= scales[1].to ? scales[0] : scales[1];
  const filling = useFilling();
  const state: GapState = filling === null ? 'as found' : assembly.state;
  const shown = useMemo(
    () =>
      filling === null || state === 'as found'
        ? { plate, rotor }
        : { plate: filledPart(plate, filling), rotor: filledPart(rotor, filling) },
    [plate, rotor, filling, state],
  );
  const height = facing.standOff + setApart(state, job) + assembly.apart;
  const pose = useMemo(
    (): Pose => ({ facing, height, turn: assembly.turn }),
    [facing, height, assembly.turn],
  );
  const cut = assembly.isCut ? assembly.cut : null;
  const isWorn = scale.deepest > 0;
  const radius = Math.max(facing.rotor.shape.outerRadius, plateRadius(facing));

  useSize(area, viewport.resize);
  useEffect(
    () => viewport.show(assemblyBounds(facing, assembly.apart, cut), isWorn ? COVERED : COVERED_SOUND),
    [viewport, facing, assembly.apart, cut, isWorn],
  );
  const hand = useMemo(() => rotorHand(viewport, radius), [viewport, radius]);
  useAssemblyHand(area, viewport, hand);
  useViewKeys(
    area,
    useMemo(() => steering(viewport), [viewport]),
  );

  const spot = useEstimate(({ result }) => result?.clearance?.tightest ?? null);
  const tight = useMemo(() => {
    const places = spot && tightPlaces(spot, { ...shown, facing });
    return spot && places && { ...places, gap: spot.gap };
  }, [spot, shown, facing]);
  const words = usePictureWords(state, tight?.gap ?? null);

  const showTight = (at: NonNullable<typeof tight>) => {
    const { turn, cut: through } = meeting(at);
    const coated: GapState = filling === null ? 'as found' : 'coated';
    changeAssembly({ state: coated, apart: 0, turn, cut: through, isCut: true });
    const stands: Pose = { facing, height: facing.standOff + setApart(coated, job), turn };
    viewport.look(tightRig(at, stands, through, at.gap, viewport.screen()));
  };
  return (
    <div className="assembly">
      <div className="part-view assembly-picture">
        <div
          className="part-area"
          ref={area}
          role="application"
          aria-label={words}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: keys turn the picture and come nearer
          tabIndex={0}
          data-drags={assembly.dragsRotor ? 'rotor' : 'view'}
        >
          <AssemblyCanvas
            {...shown}
            pose={pose}
            cut={cut}
            viewport={viewport}
            scale={scale}
            reach={2 * radius + assembly.apart}
          />
          <svg className="part-lines" aria-hidden="true">
            <AssemblyLabels
              assembled={{ ...shown, pose, cut }}
              viewport={viewport}
              tight={tight}
              called={state === 'coated' ? 'Tightest' : 'Tightest once coated'}
            />
          </svg>
        </div>
        <ViewButtons go={viewport.go} />
        <Button
          className="button assembly-tight"
          isDisabled={tight === null}
          onPress={() => tight !== null && showTight(tight)}
        >
          Show the tight spot
        </Button>
        <div className="picture-foot">
          {isWorn && <DepthScaleBar scale={scale} />}
          {filling !== null && <StateChoice state={state} />}
        </div>
      </div>
      {facing.follows && facing.openingAt(facing.from) + facing.openingAt(facing.to) > SEEN_OPENING && (
        <FollowsNote facing={facing} />
      )}
      <AssemblyControls farthest={2 * facing.rotor.shape.outerRadius} />
    </div>
  );
}

const STATES: readonly { readonly state: GapState; readonly label: string }[] = [
  { state: 'as found', label: 'As found' },
  { state: 'filled', label: 'Filled' },
  { state: 'coated', label: 'Coated' },
];

/** Which gap is drawn. */
function StateChoice({ state }: { readonly state: GapState }) {
  return (
    <ToggleButtonGroup
      className="pair assembly-state"
      aria-label="Gap drawn"
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[state]}
      onSelectionChange={([chosen]) => changeAssembly({ state: chosen as GapState })}
    >
      {STATES.map(({ state: id, label }) => (
        <ToggleButton key={id} id={id} className="pair-choice">
          {label}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}

/** By their sizes the faces stand apart by less than this further, mm: not worth a word. */
const SEEN_OPENING = 0.05;

/** Why the plate is not drawn as it was typed. */
function FollowsNote({ facing }: { readonly facing: Facing }) {
  const units = useView((view) => view.units);
  const most = Math.max(facing.openingAt(facing.from), facing.openingAt(facing.to));
  return (
    <p className="assembly-note quiet">
      The gap as new holds everywhere, so the plate is drawn following the vanes. By the sizes typed it would
      stand {formatQuantity(most, 'length', units, { as: 'typed' })} {shownUnit('length', units).symbol}{' '}
      further off at one end.
    </p>
  );
}

/** What the last estimate fills; null before the first. */
function useFilling(): Filling | null {
  const result = useEstimate((estimate) => estimate.result);
  const regions = useEstimate((estimate) => estimate.regions);
  const job = useEstimate((estimate) => estimate.job);
  return useMemo(() => {
    if (result === null || job === null) return null;
    const filled = new Map(
      result.parts.map((part) => [
        part.id,
        new Set(part.regions.flatMap(({ id, action }) => (action === 'fill' ? [id] : []))),
      ]),
    );
    return { job, regions, filled: (part) => filled.get(part) ?? new Set() };
  }, [result, regions, job]);
}

function usePictureWords(state: GapState, gap: number | null): string {
  const units = useView((view) => view.units);
  const { assembly } = viewStore.getState();
  const tightest = gap === null ? '' : `, once coated ${gapWords(gap, units)} apart at the tightest`;
  const open = assembly.isCut ? 'cut open' : 'closed';
  return `Plate and impeller assembled, ${open}, drawn ${state}${tightest}. Arrow keys turn it, plus and minus come nearer and go back, Home shows all.`;
}

/** rad a px, where all of the picture is seen. */
const ROTOR_PACE = 0.008;

/** Near by, the rotor's rim follows the finger. */
function rotorHand(viewport: Viewport, radius: number): RotorHand {
  return {
    isOn: () => viewStore.getState().assembly.dragsRotor,
    turn(dx) {
      const { turn } = viewStore.getState().assembly;
      const pace = Math.min(ROTOR_PACE, 1 / (viewport.sight().scale * radius));
      changeAssembly({ turn: wrapTurn(turn + dx * pace) });
    },
  };
}

/** px of a drag that a press of an arrow stands for. */
const ARROW = 24;

function steering(viewport: Viewport): Steered {
  return {
    step: (right, down) => viewport.turn(right * ARROW, down * ARROW),
    nearer(factor) {
      const { width, height } = viewport.screen();
      viewport.zoom(factor, width / 2, height / 2);
    },
    showAll: () => viewport.go('angled'),
  };
}
