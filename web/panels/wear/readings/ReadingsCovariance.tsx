import { Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { Fault } from '../../../../geometry/job/fault.ts';
import type { CovarianceShape } from '../../../../geometry/job/job.ts';
import type { ReadingsResult } from '../../../../geometry/sheet/readings-result.ts';
import { ChoiceField } from '../../../fields/ChoiceField.tsx';
import { formatQuantity } from '../../../fields/format-quantity.ts';
import { shownUnit } from '../../../fields/quantity-units.ts';
import { useJob } from '../../../job/job-store.ts';
import { useView } from '../../../view/view-store.ts';
import { DisclosureButton } from '../../DisclosureButton.tsx';
import { OptionalQuantity } from '../../OptionalQuantity.tsx';
import { withMark } from '../mark-edits.ts';
import { pathOf } from '../use-mark-edit.ts';

interface ReadingsCovarianceProps {
  /** Places of the part and of the readings in the job. */
  readonly part: number;
  readonly at: number;
  /** What was found; undefined before it is. */
  readonly worth: ReadingsResult | undefined;
}

const SHAPES: readonly { readonly value: CovarianceShape | 'found'; readonly label: string }[] = [
  { value: 'found', label: 'As found' },
  { value: 'exponential', label: 'Rough' },
  { value: 'matern-3/2', label: 'Even' },
  { value: 'matern-5/2', label: 'Smooth' },
  { value: 'gaussian', label: 'Very smooth' },
];

const TERMS: Readonly<Record<CovarianceShape, string>> = {
  exponential: 'rough (exponential)',
  'matern-3/2': 'even (Matérn 3/2)',
  'matern-5/2': 'smooth (Matérn 5/2)',
  gaussian: 'very smooth (Gaussian)',
};

type Given = { shape?: CovarianceShape | undefined; length?: number | undefined; sill?: number | undefined };

/** How the depth is taken to vary between readings: as found from them, or as the person knows better. */
export function ReadingsCovariance({ part, at, worth }: ReadingsCovarianceProps) {
  const mark = useJob(({ job }) => job.parts[part]?.wear[at]);
  const edit = useJob((state) => state.edit);
  const units = useView((view) => view.units);
  if (mark?.kind !== 'readings') return null;
  const given: Given = mark.covariance ?? {};
  const path = `${pathOf({ part, at })}.covariance`;
  const set = (change: Given, field: string): readonly Fault[] => {
    const { shape, length, sill } = { ...given, ...change };
    const covariance = {
      ...(shape === undefined ? {} : { shape }),
      ...(length === undefined ? {} : { length }),
      ...(sill === undefined ? {} : { sill }),
    };
    const { covariance: _, ...rest } = mark;
    const changed = Object.keys(covariance).length === 0 ? rest : { ...rest, covariance };
    return edit('covariance of readings', (job) => withMark(job, part, at, changed), `${path}.${field}`);
  };
  const found = worth?.covariance;
  const lengthText = (size: number) =>
    `${formatQuantity(size, 'length', units)} ${shownUnit('length', units).symbol}`;
  return (
    <Disclosure className="disclosure">
      <Heading level={3}>
        <DisclosureButton>How the depth varies between them</DisclosureButton>
      </Heading>
      <DisclosurePanel className="disclosure-panel">
        {found !== undefined && (
          <p className="quiet">
            In use: {TERMS[found.shape]}, alike over {lengthText(found.length)}, up and down by{' '}
            {lengthText(Math.sqrt(found.sill))}.
          </p>
        )}
        <div className="rows">
          <ChoiceField
            label="The surface is"
            choices={SHAPES}
            value={given.shape ?? 'found'}
            onCommit={(shape) => set({ shape: shape === 'found' ? undefined : shape }, 'shape')}
          />
          <OptionalQuantity
            known="I know over which distance depths are alike"
            label="Alike over"
            quantity="length"
            path={`${path}.length`}
            value={given.length}
            start={Math.round(found?.length ?? 40)}
            help="Covariance length. Two places much closer than this are worn much alike."
            onCommit={(length) => set({ length }, 'length')}
          />
          <OptionalQuantity
            known="I know how much the depth goes up and down"
            label="Up and down by"
            quantity="length"
            path={`${path}.sill`}
            value={given.sill === undefined ? undefined : Math.sqrt(given.sill)}
            start={Number(Math.sqrt(found?.sill ?? 1).toFixed(2))}
            help="One standard deviation of the depth; its square is the sill."
            onCommit={(spread) => set({ sill: spread === undefined ? undefined : spread * spread }, 'sill')}
          />
        </div>
      </DisclosurePanel>
    </Disclosure>
  );
}
