import { wallMap } from '../clearance/wall-map.ts';
import type { PartEstimate } from '../estimate-part.ts';
import { gauge } from './figure.ts';
import { flatPoint } from './flat-frame.ts';
import { html, type Markup } from './markup.ts';
import { typeset } from './typeset.ts';
import { wallMarks, wallSvg } from './wall-drawing.ts';
import { wallShapes } from './wall-shapes.ts';
import { areaText, wallWords } from './wall-text.ts';

/** A picture of every wall of a part that is thinner than allowed or worn through; the others stand in the table alone. */
export function wallPictures(part: PartEstimate, partNumber: number): Markup[] {
  return part.walls
    .filter(({ verdict }) => verdict === 'under' || verdict === 'through')
    .flatMap((wall, i): Markup[] => {
      const known = wallMap(part.part, wall.face, (face) => mapOf(part, face.name));
      if (known === null) return [];
      const shapes = wallShapes(known, wall.limit);
      const at = (point: readonly [number, number]) => flatPoint(known.face, shapes.frame, point);
      const left =
        wall.verdict === 'through' ? 'worn through' : `${gauge(wall.remaining)} mm left at its thinnest`;
      const words = `${part.id}, ${wallWords(wall)}: ${left}, ${areaText(wall.under / 100)} cm2 too thin`;
      return [
        html`<figure class="sheet-picture">
<figcaption>${typeset(`Metal left of ${words}`)}</figcaption>
${wallSvg(shapes, known.face, {
  title: `Metal left of ${words}`,
  id: `wall-${partNumber}-${i + 1}`,
  marks: wallMarks(wall, shapes.box, at),
})}
</figure>`,
      ];
    });
}

function mapOf({ id, faces }: PartEstimate, name: string) {
  const found = faces.find(({ face }) => face.name === name);
  if (!found) throw new Error(`wallPictures: needs a face of the part, got ${id}:${name}`);
  return found.map;
}
