import { TriangleAlert } from 'lucide-react';
import { useState } from 'react';
import { SETTLE } from '../../../geometry/clearance/other-repair.ts';
import type { WallResult } from '../../../geometry/sheet/wall-result.ts';
import { useJob } from '../../job/job-store.ts';
import { faceLabel } from '../../view/face-label.ts';
import { useView, viewStore } from '../../view/view-store.ts';
import { useEstimate } from '../../worker/estimate-client.ts';
import { useChosenPart } from '../chosen-part.ts';
import { keptUnits } from '../kept-units.ts';
import { PartChoice } from '../PartChoice.tsx';
import { inUnits } from './gap-text.ts';
import { useWallShapes } from './use-wall-shapes.ts';
import { WallList } from './WallList.tsx';
import { WallMap } from './WallMap.tsx';
import { wallOfFace, worstFirst } from './wall-words.ts';
import './WallSection.css';

/** Warnings that ask for another repair than putty. */
const OTHER_REPAIR = /^(?:worn-through|wall-|edge-eaten)/;

/** Faces of vanes as they are called on the screen: `vane 4, suction`. */
const named = (text: string): string => text.replace(/\bvane-\d+\/[a-z-]+/g, faceLabel);

/** The metal that is left behind the wear: which wall is thinnest, where, and when putty is not enough. */
export function WallSection() {
  const result = useEstimate((state) => state.result);
  const hasOne = useJob(({ job }) => job.parts.length > 0);
  const units = useView((view) => view.units);
  const { part } = useChosenPart();
  const known = result?.parts.find(({ id }) => id === part?.id);
  if (!hasOne) return null;
  const advice = (result?.warnings ?? []).filter(({ code }) => OTHER_REPAIR.test(code));
  return (
    <section className="section wall-section" aria-label="Metal left">
      <h2>Metal left</h2>
      <p className="quiet">
        Both sides of a wall together. Putty carries no load: after the repair the metal that carries is what
        it is now.
      </p>
      {advice.length > 0 && (
        <>
          <ul className="wall-advice" aria-label="Putty is not enough">
            {advice.map(({ text }) => (
              <li key={text}>
                <TriangleAlert aria-hidden="true" />
                <span>{keptUnits(inUnits(named(text.replace(SETTLE, '').trim()), units))}</span>
              </li>
            ))}
          </ul>
          <p className="quiet">
            {SETTLE} Depths do not show cracks or loose metal: look for them before filling.
          </p>
        </>
      )}
      <PartChoice />
      {known === undefined ? (
        <p className="quiet">Working out the figures</p>
      ) : (
        <Walls key={known.id} part={known.id} walls={known.walls} />
      )}
    </section>
  );
}

function Walls({ part, walls }: { readonly part: string; readonly walls: readonly WallResult[] }) {
  const chosen = useView((view) => view.face);
  /** Of the wall's thin places; 0 the thinnest. */
  const [place, setPlace] = useState(0);
  const isWall = walls.some((wall) => wall.face === chosen || wall.behind === chosen);
  const [isChosen, setIsChosen] = useState(false);
  // A face that was in hand for something else says nothing about which wall to look at: then the worst.
  const wall = isChosen && isWall ? wallOfFace(walls, chosen) : worstFirst(walls)[0];
  const drawn = useWallShapes(part, wall?.face ?? '', wall?.limit ?? null);
  if (wall === undefined) return <p className="quiet">No face of this part is a wall.</p>;
  const choose = ({ face }: WallResult) => {
    setPlace(0);
    setIsChosen(true);
    viewStore.getState().set({ face });
  };
  return (
    <>
      {wall.limit === null && (
        <p>
          The least thickness of this part is not known: nothing to judge its walls by. Give it on the step
          Part.
        </p>
      )}
      <div className="wall-work">
        <WallMap part={part} wall={wall} drawn={drawn} place={place} />
        <WallList part={part} walls={walls} wall={wall} place={place} onWall={choose} onPlace={setPlace} />
      </div>
    </>
  );
}
