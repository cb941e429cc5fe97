import { Plus } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../../../geometry/job/fault.ts';
import type { PartFile } from '../../../../geometry/job/job-file.ts';
import { ChoiceField } from '../../../fields/ChoiceField.tsx';
import { useJob } from '../../../job/job-store.ts';
import { useView } from '../../../view/view-store.ts';
import { straightedgeStore, useStraightedge } from '../../../wear/laid-section.ts';
import { Refusal } from '../../Refusal.tsx';
import { FaceChoice } from '../FaceChoice.tsx';
import { faceInUse } from '../face-words.ts';
import { layChoices } from './lay-words.ts';
import { SectionList } from './SectionList.tsx';
import { SectionPlot } from './SectionPlot.tsx';
import { startSection, withSections } from './section-edits.ts';

interface StraightedgePanelProps {
  readonly part: PartFile;
  readonly index: number;
}

/** How the straightedge is laid, what lies under it, and the sections that are kept. */
export function StraightedgePanel({ part, index }: StraightedgePanelProps) {
  const lay = useStraightedge((chosen) => chosen.lay);
  const edit = useJob((state) => state.edit);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const face = faceInUse(
    part,
    useView((view) => view.face),
  );
  const add = () => {
    const section = startSection(part, face, lay);
    const refused = edit('add a section', (job) =>
      withSections(job, index, (sections) => [...sections, section]),
    );
    setFaults(refused);
    if (refused.length === 0)
      straightedgeStore.setState({ kept: { part: part.id, at: part.sections?.length ?? 0 } });
  };
  return (
    <>
      <ChoiceField
        label="Lay it as"
        choices={layChoices(part, face)}
        value={lay}
        onCommit={(chosen) => {
          straightedgeStore.setState({ lay: chosen });
          return [];
        }}
      />
      <SectionPlot part={part} />
      <SectionList part={part} index={index} />
      <FaceChoice part={part} label="Lay it on" />
      <div className="buttons">
        <Button className="button" onPress={add}>
          <Plus aria-hidden="true" />
          Type a section
        </Button>
      </div>
      <Refusal faults={faults} />
    </>
  );
}
