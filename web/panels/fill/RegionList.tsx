import { type ReactNode, useEffect, useMemo, useState } from 'react';
import {
  Button,
  Disclosure,
  DisclosurePanel,
  Heading,
  ToggleButton,
  ToggleButtonGroup,
} from 'react-aria-components';
import { counted } from '../../../geometry/sheet/figure.ts';
import { viewStore } from '../../view/view-store.ts';
import { useEstimate } from '../../worker/estimate-client.ts';
import { DisclosureButton } from '../DisclosureButton.tsx';
import { type DamageOrder, damageView, useDamageView } from './damage-view.ts';
import { FaceTotals } from './FaceTotals.tsx';
import { IdleChoices } from './IdleChoices.tsx';
import { type ListedRegion, listedRegions } from './listed-regions.ts';
import { RegionRow } from './RegionRow.tsx';
import './RegionList.css';

/** As many as are looked through; the rest is a press away. */
const FIRST = 12;

const ORDERS = [
  { id: 'depth', label: 'Deepest' },
  { id: 'area', label: 'Widest' },
  { id: 'volume', label: 'Most lost' },
] as const satisfies readonly { readonly id: DamageOrder; readonly label: string }[];

interface RegionListProps {
  /** It can be folded away, and stays so while the app is open. */
  readonly folds?: boolean;
  /** Stands above the list. */
  readonly children?: ReactNode;
}

/** The damage of all parts, each to be filled or left, and what it adds up to. While it is redone the last list stays, quieter. */
export function RegionList({ folds = false, children = null }: RegionListProps) {
  const result = useEstimate((state) => state.result);
  const job = useEstimate((state) => state.job);
  const isPending = useEstimate((state) => state.pending);
  const order = useDamageView((view) => view.order);
  const isFolded = useDamageView((view) => view.isFolded);
  // A row that goes while it is pointed at hears of no leaving.
  useEffect(() => () => viewStore.getState().set({ hoverRegion: null }), []);
  const regions = useMemo(
    () => (result === null || job === null ? [] : listedRegions(result, job, order)),
    [result, job, order],
  );
  if (result === null || job === null) return null;
  const words =
    regions.length === 0
      ? 'Nothing is marked.'
      : `${counted(regions.length, 'region', 'regions')}. Choose for each what becomes of it.`;
  const body = (
    <>
      {children}
      <IdleChoices result={result} job={job} />
      {regions.length > 1 && <OrderChoice order={order} />}
      <Rows regions={regions} hasOthers={job.parts.length > 1} />
      <FaceTotals result={result} job={job} />
    </>
  );
  return (
    <section className="section damage" aria-label="Damage" aria-busy={isPending}>
      {folds ? (
        <Disclosure
          className="disclosure"
          isExpanded={!isFolded}
          onExpandedChange={(isOpen) => damageView.setState({ isFolded: !isOpen })}
        >
          <Heading level={2}>
            <DisclosureButton>Damage</DisclosureButton>
          </Heading>
          <p className="quiet">{words}</p>
          <DisclosurePanel className="disclosure-panel">
            <div className="damage-body">{body}</div>
          </DisclosurePanel>
        </Disclosure>
      ) : (
        <>
          <div>
            <h2>Damage</h2>
            <p className="quiet">{words}</p>
          </div>
          {body}
        </>
      )}
    </section>
  );
}

interface RowsProps {
  readonly regions: readonly ListedRegion[];
  readonly hasOthers: boolean;
}

function Rows({ regions, hasOthers }: RowsProps) {
  const [showsAll, showAll] = useState(false);
  const shown = showsAll ? regions : regions.slice(0, FIRST);
  return (
    <>
      <ol className="regions">
        {shown.map(({ part, region, number }) => (
          <RegionRow
            key={`${part.id}:${region.id}`}
            part={part}
            region={region}
            number={number}
            hasOthers={hasOthers}
          />
        ))}
      </ol>
      {shown.length < regions.length && (
        <div className="buttons">
          <Button className="button" onPress={() => showAll(true)}>
            Show all {regions.length}
          </Button>
        </div>
      )}
    </>
  );
}

function OrderChoice({ order }: { readonly order: DamageOrder }) {
  return (
    <ToggleButtonGroup
      className="pair damage-order"
      aria-label="Which come first"
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[order]}
      onSelectionChange={(keys) => {
        const chosen = ORDERS.find(({ id }) => keys.has(id));
        if (chosen !== undefined) damageView.setState({ order: chosen.id });
      }}
    >
      {ORDERS.map(({ id, label }) => (
        <ToggleButton key={id} id={id} className="pair-choice">
          {label}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}
