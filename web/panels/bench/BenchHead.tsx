import { ArrowLeft } from 'lucide-react';
import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import { unlockAlarm } from '../../bench/alarm.ts';
import { benchStore, useBench } from '../../bench/bench-store.ts';
import { type AwakeState, keepAwake } from '../../bench/keep-awake.ts';
import { SwitchField } from '../../fields/SwitchField.tsx';
import { useJob } from '../../job/job-store.ts';
import { leaveBench } from './leave-bench.ts';

/** The way back, the job's name, and what the device is asked to do. */
export function BenchHead() {
  const title = useJob((state) => state.job.title);
  const isMuted = useBench((state) => state.isMuted);
  const isKeptAwake = useBench((state) => state.isKeptAwake);
  const [awake, setAwake] = useState<AwakeState>('waiting');
  useEffect(() => (isKeptAwake ? keepAwake(setAwake) : undefined), [isKeptAwake]);
  const { set } = benchStore.getState();
  return (
    <header className="bench-head">
      <Button className="button bench-button" onPress={leaveBench}>
        <ArrowLeft aria-hidden="true" />
        Back to the job
      </Button>
      <div className="bench-title">
        <h1>At the bench</h1>
        {title && <p className="quiet">{title}</p>}
      </div>
      <div className="bench-switches">
        <SwitchField
          label="Sound"
          value={!isMuted}
          onCommit={(isOn) => {
            unlockAlarm();
            set({ isMuted: !isOn });
            return [];
          }}
        />
        <SwitchField
          label="Keep the screen lit"
          value={isKeptAwake}
          help={isKeptAwake && awake === 'cannot' ? 'This device does not allow it now.' : undefined}
          onCommit={(isOn) => {
            set({ isKeptAwake: isOn });
            return [];
          }}
        />
      </div>
    </header>
  );
}
