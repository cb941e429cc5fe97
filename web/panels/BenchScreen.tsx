import { Button } from 'react-aria-components';
import { viewStore } from '../view/view-store.ts';

/** One big screen for gloves: now, next, the time left in this mix and what to weigh for it. */
export function BenchScreen() {
  return (
    <main>
      <h1>At the bench</h1>
      <Button className="button" onPress={() => viewStore.getState().set({ isBenchOpen: false })}>
        Back to the job
      </Button>
    </main>
  );
}
