import type { MarkFile, PartFile } from '../../../geometry/job/job-file.ts';
import { AreaFields } from './AreaFields.tsx';
import type { MarkFieldsProps } from './BlendField.tsx';
import { EdgeFields } from './EdgeFields.tsx';
import { PatchFields } from './PatchFields.tsx';
import { PitFields } from './PitFields.tsx';
import { ReadingsFields } from './readings/ReadingsFields.tsx';
import { ReadingsWithin } from './readings/ReadingsWithin.tsx';
import { ReadingsWorth } from './readings/ReadingsWorth.tsx';
import { SmoothFields, StrokeFields } from './StrokeFields.tsx';
import { type MarkPlace, pathOf, useMarkEdit } from './use-mark-edit.ts';
import { VanesOfMark } from './VanesOfMark.tsx';

interface MarkEditorProps {
  readonly mark: MarkFile;
  readonly part: PartFile;
  readonly place: MarkPlace;
}

/** The numbers of a mark, how it meets what is there, and on which vanes it is. */
export function MarkEditor({ mark, part, place }: MarkEditorProps) {
  const edit = useMarkEdit(place);
  return (
    <>
      {mark.kind === 'readings' && (
        <>
          <ReadingsWorth part={part} index={place.part} at={place.at} />
          <ReadingsWithin part={part} index={place.part} at={place.at} />
        </>
      )}
      <MarkFields mark={mark} part={part} path={pathOf(place)} edit={edit} />
      <VanesOfMark mark={mark} part={part} edit={edit} />
    </>
  );
}

function MarkFields({ mark, ...shared }: MarkFieldsProps<MarkFile>) {
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
    case 'edge':
      return <EdgeFields mark={mark} {...shared} />;
    case 'readings':
      return <ReadingsFields mark={mark} {...shared} />;
    default:
      return <p className="quiet">It stays in the job as it is.</p>;
  }
}
