import { standsFor } from '../../geometry/job/face-names.ts';
import type { MarkFile } from '../../geometry/job/job-file.ts';
import { toGridPoint } from '../../geometry/part/face.ts';
import { clearLabels } from '../../geometry/sheet/clear-labels.ts';
import type { Mm } from '../../geometry/units.ts';
import { ownPoint } from '../tools/file-point.ts';
import type { LiveFace } from '../wear/live-faces.ts';
import type { Screen } from './camera.ts';
import type { GridPlace } from './face-ring.ts';

/** A gauge reading on a face. */
export interface PlacedReading {
  readonly live: LiveFace;
  readonly place: GridPlace;
  readonly depth: Mm;
  /** Of the mark in the hand of the list. */
  readonly isInHand: boolean;
}

/**
 * The gauge readings of a part: those of the mark in hand first, then the deepest. A reading of every vane stands on each.
 * @param inHand  place of that mark in the list; null for none
 */
export function placedReadings(
  faces: readonly LiveFace[],
  wear: readonly MarkFile[],
  inHand: number | null,
): readonly PlacedReading[] {
  return wear
    .flatMap((mark, at) => {
      if (mark.kind !== 'readings') return [];
      return faces
        .filter(({ face }) => standsFor(mark.face, face.name))
        .flatMap((live) =>
          mark.points.map(([first, second, depth]) => ({
            live,
            place: toGridPoint(live.face, ownPoint(live.face, [first, second])),
            depth,
            isInHand: at === inHand,
          })),
        );
    })
    .sort((a, b) => Number(b.isInHand) - Number(a.isInHand) || b.depth - a.depth);
}

/** What is drawn of readings on a picture: crosses as SVG path data, and the depths that have room beside theirs. */
export interface DrawnReadings {
  readonly inHand: string;
  readonly others: string;
  readonly labels: readonly {
    readonly text: string;
    readonly x: number;
    readonly y: number;
    readonly anchor: 'start' | 'end';
    readonly isInHand: boolean;
  }[];
}

/** px: half a cross, and half that of a reading in hand. */
const ARM = 4;
const ARM_IN_HAND = 6;
/** px: how high and wide the letters of a depth are, and how far it stands from its cross. */
const LETTER = { high: 14, wide: 7.5 } as const;
const AWAY = 8;
/** px beyond the picture at which a cross still shows. */
const EDGE = 8;

/**
 * Readings on a picture of a size: every one in sight has its cross; depths are dropped where they would lie on another.
 * @param pointOf  px from the top left; null where it is not seen
 * @param textOf   a depth as the screen says it
 * @param most     depths at most
 */
export function drawnReadings(
  readings: readonly PlacedReading[],
  pointOf: (reading: PlacedReading) => readonly [x: number, y: number] | null,
  textOf: (depth: Mm) => string,
  { width, height }: Screen,
  most: number,
): DrawnReadings {
  const seen = readings.flatMap((reading) => {
    const point = pointOf(reading);
    if (point === null) return [];
    const [x, y] = point;
    if (x < -EDGE || y < -EDGE || x > width + EDGE || y > height + EDGE) return [];
    const text = textOf(reading.depth);
    return [{ x, y, text, width: text.length * LETTER.wide, isInHand: reading.isInHand }];
  });
  const crosses = (isInHand: boolean) =>
    seen
      .filter((reading) => reading.isInHand === isInHand)
      .map(({ x, y }) => cross(x, y, isInHand ? ARM_IN_HAND : ARM))
      .join('');
  return {
    inHand: crosses(true),
    others: crosses(false),
    labels: clearLabels(seen, { height: LETTER.high, away: AWAY, most }).map(({ index, x, y, anchor }) => ({
      text: seen[index].text,
      x,
      y,
      anchor,
      isInHand: seen[index].isInHand,
    })),
  };
}

function cross(x: number, y: number, arm: number): string {
  return `M${(x - arm).toFixed(1)} ${y.toFixed(1)}h${2 * arm}M${x.toFixed(1)} ${(y - arm).toFixed(1)}v${2 * arm}`;
}
