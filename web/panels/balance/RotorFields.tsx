import type { JobFile } from '../../../geometry/job/job-file.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { SwitchField } from '../../fields/SwitchField.tsx';
import { useJob } from '../../job/job-store.ts';
import { OptionalQuantity } from '../OptionalQuantity.tsx';

type Rotor = NonNullable<JobFile['rotor']>;

/** What is known of the rotor and asked of it. */
export function RotorFields() {
  const rotor = useJob(({ job }) => job.rotor);
  const parts = useJob(({ job }) => job.parts);
  const edit = useJob((state) => state.edit);
  if (rotor === undefined) return null;
  const set = (label: string, change: (rotor: Rotor) => Rotor, field: string) =>
    edit(
      label,
      (job) => (job.rotor === undefined ? job : { ...job, rotor: change(job.rotor) }),
      `rotor.${field}`,
    );
  const impellers = parts.filter(({ kind }) => kind === 'impeller');
  const { planes = 1, asFound } = rotor;
  return (
    <section className="section">
      <h2>Rotor</h2>
      <div className="rows">
        {impellers.length > 1 && (
          <ChoiceField
            label="Part that turns"
            value={rotor.part}
            choices={impellers.map(({ id }) => ({ value: id, label: id }))}
            onCommit={(part) => set('part that turns', (old) => ({ ...old, part }), 'part')}
          />
        )}
        <QuantityField
          label="Speed"
          quantity="speed"
          path="rotor.speed"
          value={rotor.speed}
          onCommit={(speed) => set('speed', (old) => ({ ...old, speed }), 'speed')}
        />
        <QuantityField
          label="Balance grade G"
          quantity="grade"
          path="rotor.grade"
          value={rotor.grade}
          help="6.3 is common for pumps, 2.5 where the maker or the works asks for more."
          onCommit={(grade) => set('balance grade', (old) => ({ ...old, grade }), 'grade')}
        />
        <OptionalQuantity
          label="Mass of the whole rotor"
          known="The rotor was weighed"
          quantity="kilograms"
          path="rotor.mass"
          value={rotor.mass}
          start={10}
          help="Otherwise it is estimated from the sizes of the impeller alone."
          onCommit={(mass) =>
            set(
              'mass of the rotor',
              ({ mass: _, ...old }) => (mass === undefined ? old : { ...old, mass }),
              'mass',
            )
          }
        />
        <ChoiceField
          label="Correction planes"
          value={planes === 2 ? '2' : '1'}
          choices={[
            { value: '1', label: 'One' },
            { value: '2', label: 'Two' },
          ]}
          help="Two when the impeller is wider than a sixth of its diameter."
          onCommit={(count) =>
            set(
              'correction planes',
              (old) =>
                count === '2'
                  ? { ...old, planes: 2, planeSpacing: old.planeSpacing ?? 50 }
                  : { ...old, planes: 1 },
              'planes',
            )
          }
        />
        {planes === 2 && (
          <QuantityField
            label="Between the planes"
            quantity="length"
            path="rotor.planeSpacing"
            value={rotor.planeSpacing ?? null}
            help="Plane A is the vane side of the shroud, plane B lies this far towards the vanes."
            onCommit={(planeSpacing) =>
              set('plane spacing', (old) => ({ ...old, planeSpacing }), 'planeSpacing')
            }
          />
        )}
        <SwitchField
          label="A residual was measured before the repair"
          value={asFound !== undefined}
          onCommit={(isKnown) =>
            set(
              'residual as found',
              ({ asFound: _, ...old }) => (isKnown ? { ...old, asFound: { amount: 0, angle: 0 } } : old),
              'asFound',
            )
          }
        />
        {asFound !== undefined && (
          <>
            <QuantityField
              label="Residual as found"
              quantity="unbalance"
              path="rotor.asFound.amount"
              value={asFound.amount}
              min={0}
              onCommit={(amount) =>
                set(
                  'residual as found',
                  (old) => ({ ...old, asFound: { ...asFound, amount } }),
                  'asFound.amount',
                )
              }
            />
            <QuantityField
              label="Its heavy side"
              quantity="angle"
              path="rotor.asFound.angle"
              value={asFound.angle}
              help="Counter-clockwise from the reference mark, seen from the vane side."
              onCommit={(angle) =>
                set('angle as found', (old) => ({ ...old, asFound: { ...asFound, angle } }), 'asFound.angle')
              }
            />
          </>
        )}
        <QuantityField
          label="Mixed density true to"
          quantity="percent"
          path="rotor.densityError"
          value={rotor.densityError ?? 2}
          min={0}
          max={50}
          help="One standard deviation; 2 % is common for mixing by hand."
          onCommit={(densityError) =>
            set('error of the density', (old) => ({ ...old, densityError }), 'densityError')
          }
        />
      </div>
    </section>
  );
}
