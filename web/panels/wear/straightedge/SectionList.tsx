import { ChevronRight, Trash2 } from 'lucide-react';
import { Button } from 'react-aria-components';
import type { PartFile, SectionFile } from '../../../../geometry/job/job-file.ts';
import { jobStore, useJob } from '../../../job/job-store.ts';
import { useView, viewStore } from '../../../view/view-store.ts';
import { keptInSight, straightedgeStore, useStraightedge } from '../../../wear/laid-section.ts';
import { forgetDrafts } from '../../forget-drafts.ts';
import { SectionFields } from './SectionFields.tsx';
import { withoutSection, withSection } from './section-edits.ts';
import { sectionSummary } from './section-text.ts';
import '../MarkList.css';

interface SectionListProps {
  readonly part: PartFile;
  readonly index: number;
}

/** The sections kept with the part, in the order the sheet shows them. The one in sight is open to be typed over. */
export function SectionList({ part, index }: SectionListProps) {
  const kept = useStraightedge((chosen) => chosen.kept);
  const edit = useJob((state) => state.edit);
  const { sections = [] } = part;
  const open = keptInSight(part, kept);
  const remove = (at: number) => {
    forgetDrafts(`parts[${index}].sections`);
    edit('remove a section', (job) => withoutSection(job, index, at));
  };
  return (
    <div>
      <div className="mark-head">
        <h2>Kept for the sheet</h2>
        <p className="quiet">
          {sections.length === 0
            ? 'No section kept yet. Each line you lay is kept and printed.'
            : 'Printed in this order.'}
        </p>
      </div>
      {sections.length > 0 && (
        <ol className="marks">
          {sections.map((section, at) => (
            <SectionRow
              // biome-ignore lint/suspicious/noArrayIndexKey: sections have no name but their place
              key={at}
              section={section}
              part={part}
              place={{ part: index, at }}
              isOpen={open === at}
              onRemove={() => remove(at)}
            />
          ))}
        </ol>
      )}
    </div>
  );
}

interface SectionRowProps {
  readonly section: SectionFile;
  readonly part: PartFile;
  readonly place: { readonly part: number; readonly at: number };
  readonly isOpen: boolean;
  readonly onRemove: () => void;
}

function SectionRow({ section, part, place, isOpen, onRemove }: SectionRowProps) {
  const units = useView((view) => view.units);
  const { what, where } = sectionSummary(section, part, units);
  const panel = `section-${place.at}`;
  const path = `parts[${place.part}].sections[${place.at}]`;
  const show = () => {
    straightedgeStore.setState({ kept: { part: part.id, at: place.at } });
    viewStore.getState().set({ face: section.face });
  };
  return (
    <li className="mark" data-open={isOpen || undefined}>
      <Button
        className="mark-words"
        aria-expanded={isOpen}
        {...(isOpen && { 'aria-controls': panel })}
        onPress={show}
      >
        <span className="mark-number">{place.at + 1}</span>
        <span className="mark-text">
          {what}
          <span className="quiet">{where}</span>
        </span>
        <ChevronRight aria-hidden="true" />
      </Button>
      {isOpen && (
        <div className="mark-open" id={panel}>
          <SectionFields
            section={section}
            part={part}
            path={path}
            edit={(changed, field) =>
              jobStore
                .getState()
                .edit(
                  'place of a section',
                  (job) => withSection(job, place.part, place.at, changed),
                  `${path}.${field}`,
                )
            }
          />
          <div className="buttons">
            <Button className="button" onPress={onRemove}>
              <Trash2 aria-hidden="true" />
              Remove section {place.at + 1}
            </Button>
          </div>
        </div>
      )}
    </li>
  );
}
