import { createDepthMap, type DepthMap } from '../depth/depth-map.ts';
import { applyPatch } from '../depth/patch.ts';
import { applyPit } from '../depth/pit.ts';
import type { BlindHoles, Correction, Putty, Skim } from '../job/job.ts';
import { combined, lostMetal, metalOf } from '../moments/integrate.ts';
import type { Face } from '../part/face.ts';
import { type Metal, NO_METAL } from '../part/metal.ts';
import type { Density, Mm } from '../units.ts';
import { drilledRim } from './drilled-rim.ts';
import type { Shroud, WornFace } from './shroud.ts';
import { shroudSizes } from './shroud.ts';
import { shroudRoom } from './shroud-room.ts';
import { leastOver, type Spot } from './spots.ts';
import { WEIGHTLESS, type Weighed, weighed, weighedTogether } from './weighed.ts';

export interface Corrected {
  /** One for each correction, in order: what it puts on or, negative, takes off. */
  readonly each: readonly CorrectedPiece[];
  /** The back of the shroud as worn with all of them cut into it. */
  readonly back: DepthMap;
}

export interface CorrectedPiece {
  readonly correction: Correction;
  readonly weighed: Weighed;
  /** Least wall left under it, mm, filler not counted; null where it goes into no wall. */
  readonly leaves: Mm | null;
}

export interface CorrectionDensities {
  readonly metal: Density;
  readonly filler: Density;
}

/**
 * What corrections take off and put on, by integration of their shapes over the shroud as worn and filled, never by the formulas that
 * proposed them. Depths count from the shroud as new; metal and filler that is gone already is not taken again. Coat is not counted.
 * Accuracy: of the maps, 0.1 % at the usual cell.
 */
export function corrected(
  corrections: readonly Correction[],
  shroud: Shroud,
  densities: CorrectionDensities,
): Corrected {
  const { back, front, rim } = shroud;
  if (corrections.length === 0) return { each: [], back: back.map };
  const cut = copied(back.map);
  const alone = createDepthMap(back.face.grid);
  let taken = WEIGHTLESS;
  const worn = lostMetal(back.face, back.map);
  const each = corrections.map((correction): CorrectedPiece => {
    if (correction.kind === 'putty') {
      const raised = raisedBy(front.face, correction);
      return { correction, weighed: weighed(raised, correction.density), leaves: null };
    }
    if (correction.kind === 'holes' && correction.face === 'shroud/rim') {
      const drilled = drilledRim(rim, correction.at, correction.radius, correction.depth);
      return { correction, weighed: weighed(drilled, -densities.metal), leaves: null };
    }
    press(alone, back.face, correction);
    press(cut, back.face, correction);
    const before = taken;
    taken = takenFrom(back, worn, alone, cut, densities);
    return {
      correction,
      weighed: weighedTogether([taken, negative(before)]),
      leaves: wallLeft(correction, shroud, cut),
    };
  });
  return { each, back: cut };
}

/**
 * What all cuts into the back took, negative: metal from the worn surface down, and filler above it. What both a cut and the wear hold
 * is what each holds less what either holds.
 */
function takenFrom(
  { face, map, fill }: WornFace,
  worn: Metal,
  alone: DepthMap,
  cut: DepthMap,
  densities: CorrectionDensities,
): Weighed {
  const metal = combined(lostMetal(face, cut), worn, -1);
  const isFilled = fill.regions.some(({ action }) => action === 'fill');
  const filler = isFilled
    ? combined(
        combined(metalOf(face, alone, fill, 'fill'), metalOf(face, map, fill, 'fill'), 1),
        metalOf(face, cut, fill, 'fill'),
        -1,
      )
    : NO_METAL;
  return weighedTogether([weighed(metal, -densities.metal), weighed(filler, -densities.filler)]);
}

/** Cuts a skim or axial holes. Writes into `map`. */
function press(map: DepthMap, face: Face, correction: BlindHoles | Skim): void {
  const { depth } = correction;
  if (correction.kind === 'skim') {
    const { first, second } = correction;
    applyPatch(map, face, {
      kind: 'patch',
      face: face.name,
      blend: 'deepest',
      first,
      second,
      depth: [depth, depth],
    });
    return;
  }
  const { radius } = correction;
  for (const at of correction.at)
    applyPit(map, face, { kind: 'pit', face: face.name, blend: 'deepest', at, radius, depth, form: 'flat' });
}

/** Putty stands in front of the face: metal at depths below 0. A mark goes no deeper than the wall; a pad may stand higher than that. */
function raisedBy(face: Face, { first, second, height }: Putty): Metal {
  const map = createDepthMap(face.grid);
  const mark = { kind: 'patch', face: face.name, blend: 'deepest', first, second } as const;
  applyPatch(map, face, { ...mark, depth: [STAMP, STAMP] });
  const raise = -height / STAMP;
  for (let i = 0; i < map.depth.length; i++) map.depth[i] *= raise;
  for (let i = 0; i < map.samples.length; i++) map.samples[i] *= raise;
  return combined(NO_METAL, lostMetal(face, map), -1);
}

/** Less than any wall, mm. */
const STAMP: Mm = 2 ** -10;

function wallLeft(correction: BlindHoles | Skim, shroud: Shroud, cut: DepthMap): Mm {
  const { thickness } = shroudSizes(shroud);
  const room = shroudRoom(shroud, cut, []);
  const spots: Spot[] =
    correction.kind === 'skim'
      ? [
          {
            kind: 'sector',
            inner: correction.first[0],
            outer: correction.first[1],
            from: correction.second[0],
            to: correction.second[1],
          },
        ]
      : correction.at.map(([radius, angle]) => ({ kind: 'disc', radius, angle, reach: correction.radius }));
  const left = spots.map((spot) =>
    leastOver(
      spot,
      (radius, angle) => thickness - room.goneFromBack(radius, angle) - room.wornFront(radius, angle),
    ),
  );
  return Math.max(0, Math.min(...left));
}

function copied(map: DepthMap): DepthMap {
  return {
    ...map,
    depth: map.depth.slice(),
    slot: map.slot.slice(),
    samples: map.samples.slice(),
    cellOfSlot: map.cellOfSlot.slice(),
  };
}

function negative({ mass, x, y, xz, yz }: Weighed): Weighed {
  return { mass: -mass, x: -x, y: -y, xz: -xz, yz: -yz };
}
