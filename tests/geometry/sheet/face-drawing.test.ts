import { describe, expect, test } from 'vitest';
import { replay } from '../../../geometry/depth/replay.ts';
import { decideFill } from '../../../geometry/fill/fill-map.ts';
import type { Mark, Reading, WornPart } from '../../../geometry/job/job.ts';
import { toFacePoint } from '../../../geometry/part/face.ts';
import { partOf } from '../../../geometry/part/part-of.ts';
import { faceDrawing } from '../../../geometry/sheet/face-drawing.ts';
import { flatFrame } from '../../../geometry/sheet/flat-frame.ts';
import { flatOutline } from '../../../geometry/sheet/flat-outline.ts';
import { evenly, job, madeImpeller, pit, plate } from '../made.ts';
import { WORN_JOB } from './worn-plate.ts';
import { xmlFaults } from './xml-faults.ts';

const TITLE = 'Pump "P-2" <b>&amp;</b> \'plate\' & spare';

const impeller = madeImpeller({ nose: 'round', heightInlet: 40, heightOutlet: 26 });
const [, wing] = WORN_JOB.parts;

/** A face of a part worn evenly, 3 x 3 readings on it, as its file. */
function drawn(worn: WornPart, name: string, marks: readonly Mark[] = [evenly(name, 2)]): string {
  const part = partOf(worn, 2);
  const face = part.faces.find((known) => known.name === name);
  if (face === undefined) throw new Error(`drawn: needs a face of the part, got ${name}`);
  const map = replay(face, marks);
  const { regions } = decideFill(part.id, face, map, job([]).repair);
  const { u0, du, rows, v0, dv, columns } = face.grid;
  const readings = Array.from({ length: 9 }, (_, i): Reading => {
    const [across, along] = [(i % 3) + 1, Math.floor(i / 3) + 1];
    return {
      at: toFacePoint(face, u0 + (across * rows * du) / 4, v0 + (along * columns * dv) / 4),
      depth: 1 + i / 8,
    };
  });
  return faceDrawing({
    title: TITLE,
    part: part.id,
    body: part.body,
    face,
    map,
    scaledFor: Math.max(...regions.map(({ deepest }) => deepest)),
    regions: regions.map(({ at, deepest }, i) => ({ number: i + 1, at, deepest })),
    wornArea: regions.reduce((area, region) => area + region.area, 0),
    readings,
  });
}

const attribute = (text: string, name: string): string =>
  new RegExp(`^<svg[^>]* ${name}="([^"]*)"`).exec(text)?.[1] ?? '';

/** Each kind of face there is, with the size its drawing has on paper: the closed form of the definitions, mm. */
const FACES: readonly (readonly [
  kind: string,
  part: WornPart,
  face: string,
  size: readonly [number, number],
])[] = [
  ['polar', plate(), 'face', [320, 320]],
  ['cone, in plan', plate({ coneAngle: 0.1 }), 'face', [320, 320]],
  ['bore', plate(), 'bore', [2 * Math.PI * 60, 18]],
  ['outline', wing, 'face', [120, 90]],
  ['vane side', impeller, 'vane-1/pressure', [Number.NaN, 40]],
  ['vane tip', impeller, 'vane-2/tip', [Number.NaN, 8]],
  ['vane edge', impeller, 'vane-3/leading-edge', [8, 40]],
  ['shroud', impeller, 'shroud/front', [300, 300]],
  ['back of the shroud', impeller, 'shroud/back', [300, 300]],
];

describe.each(FACES)('the file of a face: %s', (_, part, name, size) => {
  const text = drawn(part, name);

  test('is one well-formed picture with every word escaped, and asks for nothing from elsewhere', () => {
    expect(xmlFaults(text)).toEqual([]);
    expect(text).toContain('&quot;P-2&quot; &lt;b&gt;&amp;amp;&lt;/b&gt; &#39;plate&#39; &amp; spare');
    expect(text).not.toMatch(
      /<(?:b|script|style|image|use|foreignObject|a)\b|style=|href|@import|@font-face|url\((?!#)/,
    );
    // The one address in it names the language.
    expect(text.match(/https?:[^"]*/g)).toEqual(['http://www.w3.org/2000/svg']);
  });

  test('is true to scale: one unit a mm, and the face as large as it is', () => {
    const [, , width, height] = attribute(text, 'viewBox').split(' ').map(Number);
    expect(attribute(text, 'width')).toBe(`${width}mm`);
    expect(attribute(text, 'height')).toBe(`${height}mm`);
    const made = partOf(part, 2).faces.find((known) => known.name === name);
    if (made === undefined) throw new Error(name);
    const { box } = flatFrame(made);
    if (!Number.isNaN(size[0])) expect(box.width).toBeCloseTo(size[0], 6);
    expect(box.height).toBeCloseTo(size[1], 6);
    expect(width).toBeGreaterThan(box.width);
    expect(height).toBeGreaterThan(box.height);
    const { edges, holes } = flatOutline(made, flatFrame(made));
    expect(text).toContain(
      `class="flat-edge" fill="none" stroke="#1d1d1b" stroke-width="0.4" d="${[...edges, ...holes].join('')}"`,
    );
  });

  test('has a cross a reading, the region by its number, depths, scale, legend and caption', () => {
    const crosses = /class="flat-reading" [^>]*d="([^"]*)"/.exec(text)?.[1] ?? '';
    expect(crosses.match(/M/g)).toHaveLength(18);
    const depths = [...text.matchAll(/class="flat-reading-depth"[^>]*>([^<]*)</g)].map(([, d]) => d);
    expect(depths.length).toBeGreaterThan(0);
    expect(['1', '1.13', '1.25', '1.38', '1.5', '1.63', '1.75', '1.88', '2']).toEqual(
      expect.arrayContaining(depths),
    );
    expect(text).toMatch(/class="flat-region-number"[^>]*>1</);
    expect(text).toContain('2 mm deep');
    expect(text).toContain('9 gauge readings, mm');
    expect(text).toContain('Scale 1 : 1, depths in mm');
    expect(text).toMatch(
      new RegExp(`${part.id.replaceAll('"', '&quot;')}: ${name}, worn [\\d.]+ cm2, deepest 2.00 mm`),
    );
    expect(text).toMatch(/class="flat-bearing"/);
  });
});

test('the vanes that stand on the front of the shroud are named along their footprints', () => {
  const text = drawn(impeller, 'shroud/front');
  expect([...text.matchAll(/class="flat-vane"[^>]*>([^<]*)</g)].map(([, name]) => name)).toEqual(
    [1, 2, 3, 4, 5].map((vane) => `vane ${vane}`),
  );
  expect(drawn(impeller, 'shroud/back')).not.toContain('"flat-vane"');
});

test('each hollow has its own contours with their depths', () => {
  const text = drawn(plate(), 'face', [pit(105, 60, 80, 3.6, 'cone'), pit(105, 200, 80, 3.6, 'cone')]);
  const depths = [...text.matchAll(/class="flat-number"[^>]*>([^<]*)</g)].map(([, depth]) => depth);
  expect(depths.toSorted()).toEqual(['1', '1', '2', '2', '3', '3']);
});

test('a text that is not well-formed is found', () => {
  for (const broken of [
    '<a>',
    '<a></b>',
    '<a x="1" x="2"/>',
    '<a>x & y</a>',
    '<a x=1/>',
    '<a/><b/>',
    '<a x="<"/>',
  ])
    expect(xmlFaults(broken), broken).not.toEqual([]);
  expect(xmlFaults('<a x="1 &amp; 2"><b/>x &lt; y</a>\n')).toEqual([]);
});
