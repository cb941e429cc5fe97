import type { Caution, Warning } from '../job/warning.ts';
import type { Face } from '../part/face.ts';
import { type FacePoint, type Mm, toDegrees, wrapTurn } from '../units.ts';
import type { WallEstimate } from './thin-places.ts';

/** What other means are judged by: the walls that are left, and how far each face is worn. */
export interface WornPart {
  readonly id: string;
  readonly walls: readonly WallEstimate[];
  readonly faces: readonly {
    readonly face: Face;
    /** Of its deepest damage, mm. */
    readonly deepest: Mm;
    readonly fill: { readonly regions: readonly { readonly at: FacePoint; readonly deepest: Mm }[] };
  }[];
}

/** Putty that stands for more than this share of a wall is asked to do the work of metal. Common practice. */
const MOST_OF_WALL = 0.5;
/** An edge eaten back further than this many times the thickness of the vane has lost its shape. Common practice. */
const EDGE_LOSS = 2;

/** Ends every one of these warnings. */
export const SETTLE =
  "Common practice: settle it by the limits of the pump's maker or with a licensed engineer.";
const MEANS = 'weld it up, let in an insert or liner plate, or fit a new part';

/**
 * Where putty alone is no sensible repair: walls worn through, thinner than allowed or more than half gone, and edges eaten far back.
 * One warning a wall or an edge. The limits of depth and edge loss are common practice, no standard was found.
 */
export function otherRepairWarnings({ id, walls, faces }: WornPart): Warning[] {
  const faceOf = (name: string): Face => {
    const found = faces.find(({ face }) => face.name === name);
    if (!found) throw new Error(`otherRepairWarnings: needs a face of the part, got ${id}:${name}`);
    return found.face;
  };
  const ofWalls = walls.flatMap((wall): Warning[] => {
    const where = `${wall.face}, ${placeWords(faceOf(wall.face), wall.at)}`;
    const gone = wall.asNew - wall.remaining;
    if (wall.verdict === 'through')
      return [
        warning(
          'worn-through',
          `${id}: ${where} is worn through. Putty alone replaces no wall: ${MEANS}. ${SETTLE}`,
        ),
      ];
    if (wall.verdict === 'under' && gone > 0 && wall.limit !== null)
      return [
        warning(
          'wall-thin',
          `${id}: ${where} has ${wall.remaining.toFixed(2)} mm of metal left, less than the least of ${wall.limit} mm. Putty carries no load: ${MEANS}. ${SETTLE}`,
        ),
      ];
    if (wall.verdict === 'under')
      return [
        warning(
          'wall-thin-as-new',
          `${id}: ${where} is ${wall.remaining.toFixed(2)} mm thick without any wear, less than the least of ${wall.limit} mm. Check the sizes and the limit.`,
        ),
      ];
    if (gone > MOST_OF_WALL * wall.asNew)
      return [
        warning(
          'wall-mostly-gone',
          `${id}: ${where} has lost ${gone.toFixed(2)} of ${wall.asNew.toFixed(2)} mm, more than half of its wall. Putty that deep stands in for metal: rather weld it up, let in an insert, or fit a new part. ${SETTLE}`,
        ),
      ];
    return [];
  });
  const ofEdges = faces.flatMap(({ face, deepest, fill }): Warning[] => {
    const thickness = edgeThickness(face);
    const [worst] = fill.regions;
    if (thickness === null || worst === undefined || deepest <= EDGE_LOSS * thickness) return [];
    return [
      warning(
        'edge-eaten',
        `${id}: ${face.name} is eaten back ${deepest.toFixed(1)} mm at ${placeWords(face, worst.at)}, more than twice the ${thickness.toFixed(1)} mm the vane is thick there. An edge of putty that long breaks off: weld on a new edge, or fit a new part. ${SETTLE}`,
      ),
    ];
  });
  return [...ofWalls, ...ofEdges];
}

/** What a depth gauge does not show, where one of the above is said. */
export function otherRepairCautions(warnings: readonly Warning[]): Caution[] {
  if (!warnings.some(({ code }) => CODES.has(code))) return [];
  return [
    {
      code: 'cracks-unseen',
      text: 'Depths do not show cracks, loose metal or a vane that has come away from its shroud. Sound the part with a hammer and test it with dye before any putty goes on.',
      source: 'Common practice',
    },
  ];
}

const CODES: ReadonlySet<string> = new Set(['worn-through', 'wall-thin', 'wall-mostly-gone', 'edge-eaten']);

const warning = (code: string, text: string): Warning => ({ code, field: null, text });

/** How thick a vane is at its edge; null for any other face. */
function edgeThickness({ coordinates: [first, second] }: Face): Mm | null {
  return first.label === 'height' && second.label === 'across' ? second.to - second.from : null;
}

/** `radius 118 mm, angle 40 deg`. */
function placeWords({ coordinates }: Face, at: FacePoint): string {
  return coordinates
    .map(({ label, isAngle }, i) =>
      isAngle
        ? `${label} ${Math.round(toDegrees(wrapTurn(at[i]))) % 360} deg`
        : `${label} ${Math.round(at[i])} mm`,
    )
    .join(', ');
}
