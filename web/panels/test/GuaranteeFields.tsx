import type { FlowTestFile } from '../../../geometry/job/job-file.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { SwitchField } from '../../fields/SwitchField.tsx';
import { useJob } from '../../job/job-store.ts';
import { OptionalQuantity } from '../OptionalQuantity.tsx';
import { type GuaranteeFile, withField, withTest } from './test-edits.ts';

/** The point the pump is accepted against, where one was agreed. */
export function GuaranteeFields({ test }: { readonly test: FlowTestFile }) {
  const edit = useJob((state) => state.edit);
  const { guarantee } = test;
  const put = (label: string, changed: GuaranteeFile | undefined, field: string) =>
    edit(
      label,
      (job) => withTest(job, (old) => withField(old, 'guarantee', changed)),
      `flowTest.guarantee.${field}`,
    );
  return (
    <section className="section">
      <h2>Guarantee</h2>
      <SwitchField
        label="Flow and head are guaranteed"
        value={guarantee !== undefined}
        help="Judged by the run after the repair, else by the newest one."
        onCommit={(isGuaranteed) =>
          put('guarantee', isGuaranteed ? startingGuarantee(test) : undefined, 'is')
        }
      />
      {guarantee !== undefined && (
        <div className="rows">
          <QuantityField
            label="Flow"
            quantity="flow"
            path="flowTest.guarantee.flow"
            value={guarantee.flow}
            onCommit={(flow) => put('guaranteed flow', { ...guarantee, flow }, 'flow')}
          />
          <QuantityField
            label="Head"
            quantity="head"
            path="flowTest.guarantee.head"
            value={guarantee.head}
            onCommit={(head) => put('guaranteed head', { ...guarantee, head }, 'head')}
          />
          <OptionalQuantity
            label="Efficiency of the pump"
            known="Its efficiency is guaranteed"
            quantity="percent"
            path="flowTest.guarantee.efficiency"
            value={guarantee.efficiency}
            start={70}
            onCommit={(efficiency) => {
              const { efficiency: _, ...others } = guarantee;
              const changed = efficiency === undefined ? others : { ...others, efficiency };
              return put('guaranteed efficiency', changed, 'efficiency');
            }}
          />
          <OptionalQuantity
            label="Power at the shaft"
            known="Its power is guaranteed"
            quantity="kilowatts"
            path="flowTest.guarantee.power"
            value={guarantee.power}
            start={startingPower(test, guarantee)}
            onCommit={(power) => {
              const { power: _, ...others } = guarantee;
              return put('guaranteed power', power === undefined ? others : { ...others, power }, 'power');
            }}
          />
          <ChoiceField
            label="Grade of acceptance"
            value={guarantee.grade}
            choices={GRADES}
            help="As ISO 9906 grades them. B: both ways. U: never less. E: efficiency never less."
            onCommit={(grade) => put('grade of acceptance', { ...guarantee, grade }, 'grade')}
          />
        </div>
      )}
    </section>
  );
}

const GRADES = (['1B', '1E', '1U', '2B', '2U', '3B'] as const).map((grade) => ({
  value: grade,
  label: grade,
}));

/** At duty, with a head near what was measured as new, or else in the newest run. */
function startingGuarantee({ duty, runs }: FlowTestFile): GuaranteeFile {
  const run = runs.find(({ when }) => when === 'new') ?? runs.at(-1);
  const nearest = run?.points.toSorted((a, b) => Math.abs(a.flow - duty) - Math.abs(b.flow - duty))[0];
  const head = nearest === undefined || nearest.head <= 0 ? 10 : Math.round(nearest.head * 10) / 10;
  return { flow: duty, head: head > 0 ? head : 10, grade: '2B' };
}

/** kW at an efficiency of 70 %, to a tenth. */
function startingPower({ density }: FlowTestFile, { flow, head }: GuaranteeFile): number {
  const power = (density * 9.80665 * flow * head) / 3.6e6 / 0.7;
  return Math.max(0.1, Math.ceil(power * 10) / 10);
}
