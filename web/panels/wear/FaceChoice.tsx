import type { WearPlateFile } from '../../../geometry/job/job-file.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { useView, viewStore } from '../../view/view-store.ts';
import { plateFaces } from './face-words.ts';

/** Which face new marks go on, and which one the flat picture shows. */
export function FaceChoice({ plate }: { readonly plate: WearPlateFile }) {
  const face = useView((view) => view.face);
  const faces = plateFaces(plate);
  if (faces.length < 2) return null;
  return (
    <ChoiceField
      label="Mark on"
      choices={faces}
      value={face}
      onCommit={(chosen) => {
        viewStore.getState().set({ face: chosen });
        return [];
      }}
    />
  );
}
