import { Button } from 'react-aria-components';
import { viewStore } from '../view/view-store.ts';
import { useEstimate } from '../worker/estimate-client.ts';

/** The day from washing to the test run: whether the weather allows it, when each step falls due, and what it waits for. */
export function PlanPanel() {
  const result = useEstimate((state) => state.result);
  if (result === null) return <p className="quiet">Working out the figures</p>;
  return (
    <div className="panel-body">
      <section className="section">
        <h2>At the bench</h2>
        <Button className="button" onPress={() => viewStore.getState().set({ isBenchOpen: true })}>
          Open the bench screen
        </Button>
      </section>
    </div>
  );
}
