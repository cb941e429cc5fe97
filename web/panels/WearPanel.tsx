import { useView } from '../view/view-store.ts';
import { useChosenPart } from './chosen-part.ts';
import { RegionList } from './fill/RegionList.tsx';
import { PartChoice } from './PartChoice.tsx';
import { AddByTyping } from './wear/AddByTyping.tsx';
import { FaceChoice } from './wear/FaceChoice.tsx';
import { MarkList } from './wear/MarkList.tsx';
import { ReadingTool } from './wear/readings/ReadingTool.tsx';
import { StraightedgePanel } from './wear/straightedge/StraightedgePanel.tsx';
import { ToolBar } from './wear/ToolBar.tsx';
import { ToolSettings } from './wear/ToolSettings.tsx';

/** Marking what is missing: the tool in hand and its settings, and the list of marks made so far. */
export function WearPanel() {
  const { part, index } = useChosenPart();
  const tool = useView((view) => view.tool);
  return (
    <div className="panel-body">
      <PartChoice />
      <section className="section tools-section">
        <ToolBar part={part} />
        <ToolSettings tool={tool} />
        {tool === 'straightedge' ? (
          <StraightedgePanel part={part} index={index} />
        ) : (
          <>
            {tool === 'readings' && <ReadingTool part={part} index={index} />}
            <FaceChoice part={part} />
            <AddByTyping tool={tool} part={part} index={index} />
          </>
        )}
      </section>
      <RegionList folds />
      <MarkList part={part} index={index} />
    </div>
  );
}
