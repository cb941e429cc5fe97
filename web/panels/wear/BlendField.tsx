import type { MarkFile, PartFile } from '../../../geometry/job/job-file.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import type { MarkEdit } from './use-mark-edit.ts';

/** What the fields of any kind of mark are given. */
export interface MarkFieldsProps<Mark extends MarkFile> {
  readonly mark: Mark;
  readonly part: PartFile;
  /** Path of the mark in the job file. */
  readonly path: string;
  readonly edit: MarkEdit;
}

type Blended = Extract<
  MarkFile,
  { readonly kind: 'patch' | 'pit' | 'area' | 'stroke' | 'edge' | 'readings' }
>;

const BLENDS = [
  { value: 'deepest', label: 'Deepest' },
  { value: 'add', label: 'Adds' },
  { value: 'replace', label: 'Replaces' },
] as const;

/** How a mark meets what lies below it in the list. */
export function BlendField({ mark, edit }: { readonly mark: Blended; readonly edit: MarkEdit }) {
  return (
    <ChoiceField
      label="Where it meets earlier marks"
      choices={BLENDS}
      value={mark.blend ?? 'deepest'}
      onCommit={(blend) => edit('how a mark meets others', { ...mark, blend }, 'blend')}
    />
  );
}
