import { lazy, Suspense, useState } from 'react';
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { useJob } from '../../job/job-store.ts';
import { namedPair } from '../../scene/assembly/named-pair.ts';
import { useView } from '../../view/view-store.ts';
import { Later } from './Later.tsx';
import { StageGuard } from './StageGuard.tsx';
import { useScreen } from './use-screen.ts';
import './Stage.css';

// The 3D library is by far the largest thing to load; words and figures do not wait for it.
const PartView = lazy(async () => {
  const { PartView } = await import('../../scene/PartView.tsx');
  // There already when the step is opened, also when the line has gone by then.
  fetchAssembly().catch(() => {});
  return { default: PartView };
});
const AssemblyView = lazy(fetchAssembly);

async function fetchAssembly() {
  return { default: (await import('../../scene/assembly/AssemblyView.tsx')).AssemblyView };
}

/** The chosen part; on Clearance plate and impeller assembled, or the part and why it stands alone. */
function Drawn() {
  const isClearance = useView(({ step }) => step === 'clearance');
  const parts = useJob(({ job }) => job.parts);
  const clearance = useJob(({ job }) => job.clearance);
  if (!isClearance) return <PartView />;
  const pair = namedPair({ parts, clearance });
  if (!('without' in pair)) return <AssemblyView {...pair} />;
  return (
    <>
      <PartView />
      <p className="stage-note quiet">{pair.without}</p>
    </>
  );
}

/** The part in 3D; on Wear and Fill its flat picture too, beside it where there is room and in its place where there is not. */
export function Stage() {
  const hasFlat = useView(({ step }) => step === 'wear' || step === 'fill');
  const isWide = useScreen('wide');
  const [picture, setPicture] = useState<'part' | 'flat'>('part');
  const hasChoice = hasFlat && !isWide;
  const showsPart = !hasChoice || picture === 'part';
  const showsFlat = hasFlat && (isWide || picture === 'flat');
  return (
    <div className="stage">
      {hasChoice && (
        <ToggleButtonGroup
          className="pair stage-choice"
          aria-label="Picture"
          selectionMode="single"
          disallowEmptySelection
          selectedKeys={[picture]}
          onSelectionChange={(keys) => setPicture(keys.has('flat') ? 'flat' : 'part')}
        >
          <ToggleButton id="part" className="pair-choice">
            3D
          </ToggleButton>
          <ToggleButton id="flat" className="pair-choice">
            Flat
          </ToggleButton>
        </ToggleButtonGroup>
      )}
      <StageGuard>
        {showsPart && (
          <div className="stage-view">
            <Suspense fallback={<p className="quiet stage-wait">Drawing the part</p>}>
              <Drawn />
            </Suspense>
          </div>
        )}
        {showsFlat && (
          <div className="stage-view stage-flat">
            <Later piece="flat" waiting={<p className="quiet stage-wait">Drawing the face</p>} />
          </div>
        )}
      </StageGuard>
    </div>
  );
}
