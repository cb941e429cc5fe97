/** The metal that is left, in words: what it means, rows for a table, and how it was worked out. */
import type { WallVerdict } from '../clearance/thin-places.ts';
import type { Estimate } from '../estimate.ts';
import type { Basis } from './basis.ts';
import { figure, gauge, plain } from './figure.ts';
import { placeText } from './place-text.ts';
import type { Result } from './result.ts';
import type { WallResult } from './wall-result.ts';

const VERDICT_WORDS: Readonly<Record<WallVerdict, string>> = {
  sound: 'sound',
  under: 'too thin',
  through: 'worn through',
  'no limit': 'no limit known',
};

/** Both sides of a wall by one name: `vane 2`, `the shroud`; a face that stands alone by its own. */
export function wallWords({ face }: Pick<WallResult, 'face'>): string {
  const vane = /^vane-(\d+)\//.exec(face);
  if (vane !== null) return `vane ${vane[1]}`;
  return face.startsWith('shroud/') && face !== 'shroud/rim' ? 'shroud' : face;
}

/** What the table means. */
export function wallLines({ parts }: Result): string[] {
  if (parts.every(({ walls }) => walls.length === 0)) return [];
  const open = parts.filter(({ walls }) => walls.some(({ limit }) => limit === null)).map(({ id }) => id);
  return [
    'Metal left behind the wear, both sides of a wall together. Putty carries no load: after the repair the metal that carries is what it is now.',
    ...(open.length === 0
      ? []
      : [`No least thickness is given for ${open.join(', ')}: nothing to judge those walls by.`]),
  ];
}

export const WALL_HEADS = [
  'part',
  'wall',
  '>left mm',
  '>as new mm',
  '>least mm',
  '>too thin cm2',
  'state',
  'thinnest at',
] as const;

/** One row a wall, in the order of its part. */
export function wallRows(estimate: Estimate, { parts }: Result): string[][] {
  return parts.flatMap(({ id, walls }) =>
    walls.map((wall) => [
      id,
      wallWords(wall),
      gauge(wall.remaining),
      gauge(wall.asNew),
      wall.limit === null ? '' : plain(wall.limit),
      wall.under > 0 ? areaText(wall.under) : '',
      VERDICT_WORDS[wall.verdict],
      `${wall.face}, ${placeText(estimate, id, wall.face, wall.at)}`,
    ]),
  );
}

export const THIN_HEADS = ['part', 'wall', '>no', '>left mm', '>area cm2', 'at'] as const;

/** One row a place that is too thin or worn through, thinnest first, numbered as on its picture. */
export function thinRows(estimate: Estimate, { parts }: Result): string[][] {
  return parts.flatMap(({ id, walls }) =>
    walls.flatMap((wall) =>
      wall.places.map(({ at, remaining, area }, i) => [
        id,
        wallWords(wall),
        String(i + 1),
        remaining === 0 ? 'through' : gauge(remaining),
        areaText(area),
        placeText(estimate, id, wall.face, at),
      ]),
    ),
  );
}

/** cm2; a place that only just is too thin is not nothing. */
export const areaText = (area: number): string => (area < 0.01 ? 'under 0.01' : figure(area));

export function wallBasis({ parts }: Result): Basis[] {
  const walls = parts.flatMap((part) => part.walls);
  if (walls.length === 0) return [];
  const thinnest = walls.reduce((a, b) => (b.remaining < a.remaining ? b : a));
  return [
    {
      what: 'Metal left',
      how: `Wall as new less what is worn off it from both sides, place by place: at the thinnest ${gauge(thinnest.asNew)} - ${gauge(thinnest.asNew - thinnest.remaining)} = ${gauge(thinnest.remaining)} mm. Putty counts for nothing. Not on the round of a nose, and not where an edge or a tip is eaten away.`,
      source: 'Arithmetic; the least thickness is chosen in the job, no published rule was found',
    },
  ];
}
