import type { DepthMap } from '../depth/depth-map.ts';
import type { Reading } from '../job/job.ts';
import type { Face } from '../part/face.ts';
import type { Body } from '../part/part.ts';
import type { Mm, Mm2 } from '../units.ts';
import { bearingsOf } from './bearings.ts';
import { figure, gauge } from './figure.ts';
import { flatDrawing, INK, PAPER, short, widthOf } from './flat-drawing.ts';
import { flatFrame } from './flat-frame.ts';
import { flatMap } from './flat-map.ts';
import { html } from './markup.ts';
import { readingMarks } from './reading-marks.ts';
import { type NumberedRegion, regionMarks } from './region-marks.ts';
import { vaneNamesOf } from './vane-names.ts';

/** A face with all that is drawn of it. */
export interface DrawnFace {
  /** Title of the job; may be empty. */
  readonly title: string;
  /** Id of the part. */
  readonly part: string;
  readonly body: Body;
  readonly face: Face;
  readonly map: DepthMap;
  /** Depth the colours are made for, mm: that of the deepest face where several are to look alike. */
  readonly scaledFor: Mm;
  /** Those of the face, deepest first. */
  readonly regions: readonly NumberedRegion[];
  /** Of all of them. */
  readonly wornArea: Mm2;
  readonly readings: readonly Reading[];
}

/** Letters on paper at 1 : 1, mm: about 2 % of the face, and always to be read. */
const TEXT = { share: 0.021, least: 2.6, most: 4.2 } as const;
/** Free round the face, and beside a caption, in letters. */
const MARGIN = 2.6;
/** Width of a thin line on paper, mm. */
const LINE: Mm = 0.2;

/**
 * The picture of a face as an SVG file of its own, true to scale: its width and height are mm, one unit a mm, so that it prints 1 : 1.
 * Needs nothing beside it; everything a person wrote is escaped.
 */
export function faceDrawing(drawn: DrawnFace): string {
  const { face, map, scaledFor, body, regions, readings, title, part } = drawn;
  const frame = flatFrame(face);
  const side = Math.max(frame.box.width, frame.box.height);
  const text = Math.min(TEXT.most, Math.max(TEXT.least, TEXT.share * side));
  const margin = MARGIN * text;
  const { box, markup } = flatDrawing(
    flatMap(face, map, scaledFor, { numberWidth: 1.9 * text }),
    {
      regions: regionMarks(regions, face, frame),
      bearings: bearingsOf(face, frame, 1.4 * text, text),
      readings: readingMarks(readings, face, frame),
      vanes: vaneNamesOf(body, face, frame).filter(
        ({ length, text: name }) => length > 2 * widthOf(name, text),
      ),
    },
    { text, margin, line: LINE },
    'face',
  );
  const lines = captionOf(drawn);
  const head = (1.5 * lines.length + 1) * text;
  const width = Math.max(box.width, ...lines.map((line) => widthOf(line, text))) + 2 * text;
  const [x, y, height] = [box.x - text, box.y - head, box.height + head];
  const name = [title, part, face.name].filter((word) => word !== '').join(', ');
  return html`<svg xmlns="http://www.w3.org/2000/svg" width="${short(width)}mm" height="${short(height)}mm" viewBox="${[x, y, width, height].map(short).join(' ')}" role="img" font-family="sans-serif" font-size="${short(text)}">
<title>${name}</title>
<rect fill="${PAPER}" x="${short(x)}" y="${short(y)}" width="${short(width)}" height="${short(height)}"/>
${lines.map((line, i) => html`<text fill="${INK}" font-weight="${i === 0 ? 'bold' : 'normal'}" x="${short(box.x)}" y="${short(y + 1.5 * (i + 1) * text)}">${line}</text>`)}
${markup}
</svg>
`.markup;
}

function captionOf({ title, part, face, map, regions, wornArea, readings }: DrawnFace): readonly string[] {
  const deepest = regions[0]?.deepest ?? map.depth.reduce((most, depth) => Math.max(most, depth), 0);
  const area = wornArea > 0 ? [`worn ${figure(wornArea / 100)} cm2`] : [];
  const worn = deepest > 0 ? [...area, `deepest ${gauge(deepest)} mm`].join(', ') : 'no wear';
  return [
    ...(title.trim() === '' ? [] : [title.trim()]),
    `${part}: ${face.name}, ${worn}`,
    ...(readings.length === 0 ? [] : [`${readings.length} gauge readings, mm`]),
    'Scale 1 : 1, depths in mm',
  ];
}
