import { lazy, Suspense, useState } from 'react';
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { useView } from '../../view/view-store.ts';
import { Later } from './Later.tsx';
import { StageGuard } from './StageGuard.tsx';
import { useScreen } from './use-screen.ts';
import './Stage.css';

// The 3D library is by far the largest thing to load; words and figures do not wait for it.
const PartView = lazy(async () => ({ default: (await import('../../scene/PartView.tsx')).PartView }));

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
              <PartView />
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
