import { Button } from 'react-aria-components';
import { stopEstimate, useEstimate } from '../../worker/estimate-client.ts';

/** How far a long kriging of gauge readings is, and the way to stop it. Nothing while all goes at once. */
export function LongWork() {
  const progress = useEstimate((state) => state.progress);
  if (progress === null) return null;
  return (
    <div className="long-work">
      <label>
        Working out the gauge readings
        <progress value={progress} />
      </label>
      <Button className="button" onPress={stopEstimate}>
        Stop
      </Button>
    </div>
  );
}
