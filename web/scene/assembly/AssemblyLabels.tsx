import { useRef } from 'react';
import type { Mm, Vec3 } from '../../../geometry/units.ts';
import { gapWords } from '../../panels/clearance/gap-text.ts';
import { useView } from '../../view/view-store.ts';
import { useOverlay } from '../use-overlay.ts';
import type { Viewport } from '../viewport.ts';
import { plateRadius } from './assembly-bounds.ts';
import { type Assembled, isBehindMetal, isCutAway } from './behind-metal.ts';
import { fromPlate, fromRotor } from './pose.ts';
import type { TightPlaces } from './tight-spot.ts';

interface AssemblyLabelsProps {
  readonly assembled: Assembled;
  readonly viewport: Viewport;
  readonly tight: (TightPlaces & { readonly gap: number }) | null;
  /** What the tight spot is called. */
  readonly called: string;
}

/** px between a rim and its name, from an edge of the picture, and between two names. */
const BESIDE = 10;
const EDGE = 12;
const LINE = 18;
/** Places of plate and tip this close to one another seen along the shaft face each other, mm. */
const FACING: Mm = 2;

/** The names of the parts beside their rims, and the tight spot where nothing hides it. */
export function AssemblyLabels({ assembled, viewport, tight, called }: AssemblyLabelsProps) {
  const units = useView((view) => view.units);
  const names = { plate: useRef<SVGTextElement>(null), rotor: useRef<SVGTextElement>(null) };
  const dots = { plate: useRef<SVGCircleElement>(null), tip: useRef<SVGCircleElement>(null) };
  const group = useRef<SVGGElement>(null);
  const line = useRef<SVGPathElement>(null);
  const word = useRef<SVGTextElement>(null);
  useOverlay(() => {
    const { project, right, eye } = viewport.sight();
    const { width, height } = viewport.screen();
    const { pose } = assembled;
    const { facing } = pose;
    // At the rim on the left as seen now.
    const beside = (radius: number, z: number): Vec3 => [-right[0] * radius, -right[1] * radius, z];
    const rims = {
      plate: beside(
        plateRadius(facing),
        pose.height - facing.bendAt(plateRadius(facing)) + facing.plate.thickness / 2,
      ),
      rotor: beside(facing.rotor.shape.outerRadius, -facing.rotor.shape.shroudThickness / 2),
    };
    const ends = { plate: project(rims.plate), rotor: project(rims.rotor) };
    const x = Math.min(ends.plate[0], ends.rotor[0]);
    const crowd = Math.max(0, LINE - Math.abs(ends.plate[1] - ends.rotor[1])) / 2;
    const upper = ends.plate[1] <= ends.rotor[1] ? 'plate' : 'rotor';
    for (const part of ['plate', 'rotor'] as const) {
      const y = ends[part][1] + (part === upper ? -crowd : crowd);
      const label = names[part].current;
      if (label === null) continue;
      label.toggleAttribute('hidden', x < 0 || x > width || y < 0 || y > height);
      // Of what is hidden it is 0.
      const wide = label.getComputedTextLength();
      label.setAttribute('x', Math.max(EDGE + wide, x - BESIDE).toFixed(1));
      label.setAttribute('y', y.toFixed(1));
    }
    if (tight === null) return;
    const [onPlate, onTip] = [fromPlate(pose, tight.onPlate), fromRotor(pose, tight.onTip)];
    const isSeen = (place: Vec3) => !isCutAway(assembled, place) && !isBehindMetal(assembled, place, eye);
    const seen = { plate: isSeen(onPlate), tip: isSeen(onTip) };
    const at = { plate: project(onPlate), tip: project(onTip) };
    for (const on of ['plate', 'tip'] as const) {
      dots[on].current?.setAttribute('cx', at[on][0].toFixed(1));
      dots[on].current?.setAttribute('cy', at[on][1].toFixed(1));
      dots[on].current?.toggleAttribute('hidden', !seen[on]);
    }
    group.current?.toggleAttribute('hidden', !seen.plate && !seen.tip);
    const [atX, atY] = seen.plate ? at.plate : at.tip;
    const both = seen.plate && seen.tip && Math.hypot(onPlate[0] - onTip[0], onPlate[1] - onTip[1]) < FACING;
    line.current?.setAttribute('d', both ? `M${at.plate[0]} ${at.plate[1]}L${at.tip[0]} ${at.tip[1]}` : '');
    const wide = word.current?.getComputedTextLength() ?? 0;
    word.current?.setAttribute('x', Math.min(width - EDGE - wide, Math.max(EDGE, atX + 14)).toFixed(1));
    word.current?.setAttribute('y', Math.max(72, atY - 16).toFixed(1));
  }, [viewport.onChange]);
  return (
    <>
      <text className="assembly-name" ref={names.plate}>
        {assembled.plate.part.id}
      </text>
      <text className="assembly-name" ref={names.rotor}>
        {assembled.rotor.part.id}
      </text>
      {tight !== null && (
        <g className="tight-spot" ref={group}>
          <path ref={line} />
          <circle ref={dots.plate} r={5} />
          <circle ref={dots.tip} r={5} />
          <text ref={word}>
            {called} {gapWords(tight.gap, units)}
          </text>
        </g>
      )}
    </>
  );
}
