import { useMemo } from 'react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../../../geometry/job/fault.ts';
import type { Face } from '../../../../geometry/part/face.ts';
import { counted } from '../../../../geometry/sheet/figure.ts';
import { ChoiceField } from '../../../fields/ChoiceField.tsx';
import { QuantityField } from '../../../fields/QuantityField.tsx';
import {
  type GridSteps,
  gridPlaces,
  MOST_PLACES,
  type ReadingGrid,
  usualGrid,
} from '../../../tools/reading-grid.ts';
import { useView } from '../../../view/view-store.ts';
import { liveFace } from '../../../wear/live-faces.ts';
import { type FaceNumber, faceNumbers } from '../face-words.ts';
import type { PlaceOnFace } from './put-down.ts';
import { setEntry, startWalk, useEntry } from './reading-entry.ts';

const MOST_STEPS = 200;
/** What the ends of a grid are rounded to before anyone has typed them, mm. */
const HALF_MILLIMETRE = 0.5;
const TWENTIETH_INCH = 25.4 / 20;

/** A grid of places, laid out before it is walked. */
export function GridPlan({ part, face }: Omit<PlaceOnFace, 'at'>) {
  const live = liveFace(part.id, face);
  return live === undefined ? null : <PlanOn of={`${part.id} ${face}`} part={part} face={live.face} />;
}

interface PlanOnProps {
  readonly of: string;
  readonly part: PlaceOnFace['part'];
  readonly face: Face;
}

function PlanOn({ of, part, face }: PlanOnProps) {
  const plan = useEntry((state) => state.plan);
  const step = useView((view) => (view.units === 'in' ? TWENTIETH_INCH : HALF_MILLIMETRE));
  const grid = useMemo(() => (plan?.of === of ? plan.grid : usualGrid(face, step)), [plan, of, face, step]);
  const numbers = faceNumbers(part, face.name);
  const wanted = grid.first.count * grid.second.count;
  const places = useMemo(() => (wanted > MOST_PLACES ? [] : gridPlaces(face, grid)), [face, grid, wanted]);
  const set = (change: Partial<ReadingGrid>) => {
    setEntry({ plan: { of, grid: { ...grid, ...change } } });
    return [];
  };
  const isRound = numbers[0].label === 'radius';
  return (
    <div className="rows">
      {(['first', 'second'] as const).map((name, i) => (
        <StepsFields
          key={name}
          number={numbers[i]}
          isRound={isRound}
          steps={grid[name]}
          path={`reading.grid.${name}`}
          set={(steps) => set({ [name]: steps })}
        />
      ))}
      <ChoiceField
        label="Order"
        choices={[
          { value: 'first', label: isRound ? 'Ring by ring' : `Along ${numbers[1].label} first` },
          { value: 'second', label: isRound ? 'Spoke by spoke' : `Along ${numbers[0].label} first` },
        ]}
        value={grid.keep}
        onCommit={(keep) => set({ keep })}
      />
      <p className="quiet">{planWords(wanted, places.length)}</p>
      <div className="buttons">
        <Button
          className="button button-main"
          isDisabled={places.length === 0}
          onPress={() => startWalk({ part: part.id, face: face.name, places, next: 0 })}
        >
          Start the walk
        </Button>
      </div>
    </div>
  );
}

function planWords(wanted: number, places: number): string {
  if (wanted > MOST_PLACES)
    return `${wanted} places are more than anyone walks. Take at most ${MOST_PLACES}.`;
  if (places === 0) return 'None of these places lies on the face.';
  const off = wanted - places;
  const left = off === 0 ? '' : ` ${counted(off, 'place', 'places')} in a hole or off the face left out.`;
  return `${counted(places, 'place', 'places')}, to and fro.${left}`;
}

interface StepsFieldsProps {
  readonly number: FaceNumber;
  readonly isRound: boolean;
  readonly steps: GridSteps;
  readonly path: string;
  readonly set: (steps: GridSteps) => readonly Fault[];
}

function StepsFields({ number: { label, quantity }, isRound, steps, path, set }: StepsFieldsProps) {
  const isAngle = quantity === 'angle';
  return (
    <>
      <QuantityField
        label={isAngle ? 'First angle' : `From ${label}`}
        quantity={quantity}
        path={`${path}.from`}
        value={steps.from}
        onCommit={(from) => set({ ...steps, from })}
      />
      {!isAngle && (
        <QuantityField
          label={`To ${label}`}
          quantity={quantity}
          path={`${path}.to`}
          value={steps.to}
          onCommit={(to) => set({ ...steps, to })}
        />
      )}
      <QuantityField
        label={isAngle && isRound ? 'Spokes' : (COUNTS[label] ?? `Steps along ${label}`)}
        quantity="plain"
        path={`${path}.count`}
        value={steps.count}
        min={1}
        max={MOST_STEPS}
        onCommit={(count) =>
          Number.isInteger(count)
            ? set({ ...steps, count })
            : [
                {
                  field: `${path}.count`,
                  found: String(count),
                  needs: `a whole number from 1 to ${MOST_STEPS}`,
                },
              ]
        }
      />
    </>
  );
}

const COUNTS: Readonly<Record<string, string>> = {
  radius: 'Rings',
  angle: 'Steps round',
  'below the face': 'Steps down',
  along: 'Steps along the vane',
  height: 'Steps up',
  across: 'Steps across',
};
