import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import type { ImpellerFile, PartFile } from '../../../geometry/job/job-file.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { VANE_FACES } from '../../view/face-label.ts';
import { useView, viewStore } from '../../view/view-store.ts';
import { sentenceCase } from '../sentence-case.ts';
import { faceInUse, plateFaces } from './face-words.ts';
import './FaceChoice.css';

interface FaceChoiceProps {
  readonly part: PartFile;
  /** What is done on the face. */
  readonly label?: string;
}

/** Which face new marks go on, and which one the flat picture shows. */
export function FaceChoice({ part, label = 'Mark on' }: FaceChoiceProps) {
  const face = faceInUse(
    part,
    useView((view) => view.face),
  );
  if (part.kind === 'impeller') return <ImpellerFaces impeller={part} face={face} label={label} />;
  const faces = plateFaces(part);
  if (faces.length < 2) return null;
  return <ChoiceField label={label} choices={faces} value={face} onCommit={choose} />;
}

function choose(face: string): readonly never[] {
  viewStore.getState().set({ face });
  return [];
}

interface ImpellerFacesProps {
  readonly impeller: ImpellerFile;
  readonly face: string;
  readonly label: string;
}

/** The shroud or a vane; of a vane its number and then one of its five faces, so that twelve vanes take no more room than one. */
function ImpellerFaces({ impeller, face, label }: ImpellerFacesProps) {
  const { count } = impeller.vanes;
  const [, number = '1', name = 'pressure'] = /^vane-(\d+)\/(.*)$/.exec(face) ?? [];
  const isVane = face.startsWith('vane-');
  return (
    <>
      {impeller.shroudThickness > 0 && (
        <ChoiceField
          label={label}
          choices={[
            { value: 'vane', label: 'A vane' },
            { value: 'shroud/front', label: 'Front of the shroud' },
            { value: 'shroud/back', label: 'Back of the shroud' },
          ]}
          value={isVane ? 'vane' : face}
          onCommit={(chosen) => choose(chosen === 'vane' ? `vane-${number}/${name}` : chosen)}
        />
      )}
      {isVane && (
        <>
          {count > 1 && (
            <div className="field">
              <span className="field-label" id="vane-number">
                Vane
              </span>
              <ToggleButtonGroup
                className="vane-numbers"
                aria-labelledby="vane-number"
                selectionMode="single"
                disallowEmptySelection
                selectedKeys={[number]}
                onSelectionChange={([chosen]) => choose(`vane-${chosen}/${name}`)}
              >
                {Array.from({ length: count }, (_, i) => i + 1).map((vane) => (
                  <ToggleButton key={vane} id={String(vane)} className="vane-number">
                    {vane}
                  </ToggleButton>
                ))}
              </ToggleButtonGroup>
            </div>
          )}
          <ChoiceField
            label={`Face of vane ${number}`}
            choices={Object.entries(VANE_FACES).map(([value, words]) => ({
              value,
              label: sentenceCase(words),
            }))}
            value={name}
            onCommit={(chosen) => choose(`vane-${number}/${chosen}`)}
          />
        </>
      )}
    </>
  );
}
