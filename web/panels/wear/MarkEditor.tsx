import type { MarkFile, WearPlateFile } from '../../../geometry/job/job-file.ts';
import { AreaFields } from './AreaFields.tsx';
import { PatchFields } from './PatchFields.tsx';
import { PitFields } from './PitFields.tsx';
import { SmoothFields, StrokeFields } from './StrokeFields.tsx';
import { type MarkPlace, pathOf, useMarkEdit } from './use-mark-edit.ts';

interface MarkEditorProps {
  readonly mark: MarkFile;
  readonly plate: WearPlateFile;
  readonly place: MarkPlace;
}

/** The numbers of a mark, and how it meets what is there. */
export function MarkEditor({ mark, plate, place }: MarkEditorProps) {
  const edit = useMarkEdit(place);
  const shared = { plate, edit, path: pathOf(place) };
  switch (mark.kind) {
    case 'patch':
      return <PatchFields mark={mark} {...shared} />;
    case 'pit':
      return <PitFields mark={mark} {...shared} />;
    case 'area':
      return <AreaFields mark={mark} {...shared} />;
    case 'stroke':
      return <StrokeFields mark={mark} {...shared} />;
    case 'smooth':
      return <SmoothFields mark={mark} {...shared} />;
    default:
      return <p className="quiet">It stays in the job as it is.</p>;
  }
}
