import type { FaceEstimate, PartEstimate } from '../estimate-part.ts';
import { bearingsOf } from './bearings.ts';
import { figure, gauge } from './figure.ts';
import { flatFrame, flatPoint } from './flat-frame.ts';
import { flatMap } from './flat-map.ts';
import { flatSvg } from './flat-svg.ts';
import { html, type Markup } from './markup.ts';

/** More numbers than this on one face hide the wear; the table still lists every region. */
const MOST_NUMBERS = 40;
/** With more regions than this their depths stand in the table alone. */
const MOST_DEPTHS = 12;

/** A flat map of every worn face of a part, all on the colours of the deepest one, regions numbered as in the table. */
export function sheetPictures(part: PartEstimate, partNumber: number): Markup[] {
  const deepest = Math.max(...part.faces.map((known) => known.deepest));
  return part.faces
    .filter(({ wornArea }) => wornArea > 0)
    .map((known, i) => picture(part, known, deepest, `flat-${partNumber}-${i + 1}`));
}

function picture(
  part: PartEstimate,
  { face, map, wornArea, deepest }: FaceEstimate,
  scale: number,
  id: string,
): Markup {
  const frame = flatFrame(face);
  const side = Math.max(frame.box.width, frame.box.height);
  const own = part.regions
    .map((region, i) => ({ region, text: String(i + 1) }))
    .filter(({ region }) => region.face === face.name);
  const regions = own.slice(0, MOST_NUMBERS).map(({ region, text }) => ({
    at: flatPoint(face, frame, region.at),
    text,
    depth: own.length > MOST_DEPTHS ? null : `${gauge(region.deepest)} mm`,
  }));
  const worn = `worn ${figure(wornArea / 100)} cm2, deepest ${gauge(deepest)} mm`;
  return html`<figure class="sheet-picture">
<figcaption>${part.id}: ${face.name}, ${worn}</figcaption>
${flatSvg(flatMap(face, map, scale), {
  title: `Depth of wear on ${part.id} ${face.name}, ${worn}`,
  id,
  regions,
  bearings: bearingsOf(face, frame, 0.03 * side),
})}
</figure>`;
}
