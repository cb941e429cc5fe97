import type { FlowTestFile } from '../../../geometry/job/job-file.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { SwitchField } from '../../fields/SwitchField.tsx';
import { useJob } from '../../job/job-store.ts';
import { OptionalQuantity } from '../OptionalQuantity.tsx';
import { withField, withTest } from './test-edits.ts';

/** What holds for every run: the liquid, the speed and the duty, what a kilowatt hour costs, and how well the gauges measure. */
export function TestFields({ test }: { readonly test: FlowTestFile }) {
  const edit = useJob((state) => state.edit);
  const set = <Key extends keyof FlowTestFile>(
    label: string,
    key: Key,
    value: FlowTestFile[Key] | undefined,
  ) => edit(label, (job) => withTest(job, (old) => withField(old, key, value)), `flowTest.${key}`);
  return (
    <>
      <section className="section">
        <h2>Duty, speed and liquid</h2>
        <div className="rows">
          <QuantityField
            label="Duty of the pump"
            quantity="flow"
            path="flowTest.duty"
            value={test.duty}
            help="The flow it does its work at."
            onCommit={(duty) => set('duty', 'duty', duty)}
          />
          <QuantityField
            label="Rated speed"
            quantity="speed"
            path="flowTest.ratedSpeed"
            value={test.ratedSpeed}
            help="All runs are brought to it."
            onCommit={(speed) => set('rated speed', 'ratedSpeed', speed)}
          />
          <QuantityField
            label="Density of the liquid"
            quantity="liquidDensity"
            path="flowTest.density"
            value={test.density}
            help="Cold water is 998."
            onCommit={(density) => set('density of the liquid', 'density', density)}
          />
        </div>
      </section>
      <section className="section">
        <h2>What it is worth</h2>
        <div className="rows">
          <OptionalQuantity
            label="Hours a year"
            known="The hours it runs are known"
            quantity="hours"
            path="flowTest.hoursPerYear"
            value={test.hoursPerYear}
            start={4000}
            onCommit={(hours) => set('hours a year', 'hoursPerYear', hours)}
          />
          <OptionalQuantity
            label="Price of a kilowatt hour"
            known="The price of energy is known"
            quantity="plain"
            path="flowTest.energyPrice"
            value={test.energyPrice}
            start={0.25}
            step={0.01}
            help="In your own money."
            onCommit={(price) => set('price of energy', 'energyPrice', price)}
          />
          <OptionalQuantity
            label="Efficiency of the motor"
            known="The motor's efficiency is known"
            quantity="percent"
            path="flowTest.motorEfficiency"
            value={test.motorEfficiency}
            start={90}
            help="From its plate. Brings power at the motor to the shaft, and the saving to the meter."
            onCommit={(efficiency) => set('efficiency of the motor', 'motorEfficiency', efficiency)}
          />
        </div>
      </section>
      <section className="section">
        <h2>How well it was measured</h2>
        <ChoiceField
          label="Grade of the gauges"
          value={String(test.gauges ?? 2) as '1' | '2' | '3'}
          choices={GRADES}
          help="As ISO 9906 grades them. Field gauges keep to 2 or 3."
          onCommit={(grade) => set('grade of the gauges', 'gauges', Number(grade))}
        />
        <SwitchField
          label="The same gauges in the same places for every run"
          value={test.sameGauges ?? false}
          onCommit={(isSame) => set('same gauges', 'sameGauges', isSame || undefined)}
        />
        {test.sameGauges === true && (
          <div className="rows">
            <OptionalQuantity
              label="They repeat within"
              known="How well they repeat is known"
              quantity="percent"
              path="flowTest.repeatability"
              value={test.repeatability}
              start={2}
              help="What an efficiency measured again may differ by, % of it, 19 times in 20. Measure twice to know it."
              onCommit={(share) => set('repeatability', 'repeatability', share)}
            />
          </div>
        )}
      </section>
    </>
  );
}

const GRADES = [
  { value: '1', label: '1' },
  { value: '2', label: '2' },
  { value: '3', label: '3' },
] as const;
