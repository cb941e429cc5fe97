import type { FaceEstimate, PartEstimate } from '../estimate-part.ts';
import type { Mark } from '../job/job.ts';
import { bearingsOf } from './bearings.ts';
import { figure, gauge } from './figure.ts';
import { flatFrame } from './flat-frame.ts';
import { flatMap } from './flat-map.ts';
import { flatSvg, TEXT } from './flat-svg.ts';
import { html, type Markup } from './markup.ts';
import { readingMarks, readingsOn } from './reading-marks.ts';
import { regionMarks } from './region-marks.ts';
import { typeset } from './typeset.ts';
import { vaneNamesOf } from './vane-names.ts';

/**
 * A flat map of every worn face of a part, all on the colours of the deepest one, regions numbered as in the table.
 * @param marks  those of the part: its gauge readings are drawn where they were taken
 */
export function sheetPictures(part: PartEstimate, marks: readonly Mark[], partNumber: number): Markup[] {
  const deepest = Math.max(...part.faces.map((known) => known.deepest));
  return part.faces
    .filter(({ wornArea }) => wornArea > 0)
    .map((known, i) => picture(part, known, marks, deepest, `flat-${partNumber}-${i + 1}`));
}

function picture(
  { id: part, part: { body }, regions }: PartEstimate,
  { face, map, wornArea, deepest }: FaceEstimate,
  marks: readonly Mark[],
  scale: number,
  id: string,
): Markup {
  const frame = flatFrame(face);
  const side = Math.max(frame.box.width, frame.box.height);
  const numbered = regions
    .map((region, i) => ({ ...region, number: i + 1 }))
    .filter((region) => region.face === face.name);
  const worn = `worn ${figure(wornArea / 100)} cm2, deepest ${gauge(deepest)} mm`;
  return html`<figure class="sheet-picture">
<figcaption>${part}: ${face.name}, ${typeset(worn)}</figcaption>
${flatSvg(flatMap(face, map, scale), {
  title: `Depth of wear on ${part} ${face.name}, ${worn}`,
  id,
  regions: regionMarks(numbered, face, frame),
  bearings: bearingsOf(face, frame, 0.03 * side, TEXT * side),
  readings: readingMarks(readingsOn(face, marks), face, frame),
  vanes: vaneNamesOf(body, face, frame),
})}
</figure>`;
}
