import { describe, expect, test } from 'vitest';
import { createDepthMap } from '../../../geometry/depth/depth-map.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import { beginStroke, endStroke, extendStroke } from '../../../geometry/depth/stroke.ts';
import { DEPTH_RAMP } from '../../../geometry/sheet/depth-colour.ts';
import { flatImage, paint, pixelsOf } from '../../../web/scene/flat-image.ts';
import { createFlatView, scaleBarLength } from '../../../web/scene/flat-view.ts';
import { faceOf, patch } from '../../geometry/made.ts';
import { faceNamed, PLATES, partOf } from '../tools/plates.ts';

/** A picture 200 px wide of the whole face. */
function picture(face: ReturnType<typeof faceOf>) {
  const view = createFlatView();
  view.resize({ width: 240, height: 240 });
  const image = flatImage(face, view.lay(), 240, 240);
  view.show(image.frame.box);
  return { view, image: flatImage(face, view.lay(), 240, 240) };
}

describe('the pixels of the flat picture', () => {
  const face = faceOf('face', { holes: [] }, 1);

  test('show the colour of the depth at their place, sound metal none', () => {
    const { view, image } = picture(face);
    paint(image, replay(face, [patch([90, 130], [20, 95], 2)]), 4);
    const at = (radius: number, degrees: number) => {
      const angle = (degrees / 180) * Math.PI;
      const [x, y] = view.toScreen([radius * Math.cos(angle), -radius * Math.sin(angle)]);
      return [...image.pixels.slice((Math.floor(y) * 240 + Math.floor(x)) * 4).slice(0, 4)];
    };
    const half = 3 * Math.round(0.5 * 255);
    expect(at(110, 60)).toEqual([...DEPTH_RAMP.slice(half, half + 3), 255]);
    expect(at(110, 200)[3]).toBe(0);
    expect(at(75, 60)[3]).toBe(0);
    expect(at(30, 60)[3]).toBe(0);
  });

  test.each([
    ['a round face', face],
    ['a bore', faceOf('bore', {}, 1)],
    ['an outline', faceNamed(partOf(PLATES.outline), 'face')],
  ])(
    'after a move on %s painting the touched block alone gives the same picture as painting all',
    (_, on) => {
      const { image } = picture(on);
      const map = createDepthMap(on.grid);
      const [first, second] = on.coordinates;
      const inHand = beginStroke(map, on, {
        radius: 6,
        depth: 2,
        edge: 'soft',
        blend: 'deepest',
        clear: false,
      });
      paint(image, map, 4);
      for (const share of [-0.02, 0.03, 0.5, 0.97, 1.02]) {
        const point = [
          first.from + share * (first.to - first.from),
          second.from + share * (second.to - second.from),
        ] as const;
        const block = extendStroke(inHand, point);
        if (block === null) continue;
        const box = pixelsOf(image, block);
        if (box !== null) paint(image, map, 4, box);
        const whole = flatImage(on, image.lay, 240, 240);
        paint(whole, map, 4);
        expect(alphasAndColours(image)).toEqual(alphasAndColours(whole));
      }
      endStroke(inHand);
      expect(image.pixels.some((value, i) => i % 4 === 3 && value > 0)).toBe(true);
    },
  );

  /** Transparent pixels have no colour. */
  function alphasAndColours({ pixels }: { readonly pixels: Uint8ClampedArray }): string {
    return Buffer.from(pixels.map((value, i) => (pixels[i - (i % 4) + 3] === 0 ? 0 : value))).toString(
      'base64',
    );
  }
});

describe('the lay of the flat picture', () => {
  test('shows all of a face when it is shown first and again when the size changes', () => {
    const view = createFlatView();
    view.resize({ width: 800, height: 500 });
    view.show({ x: -160, y: -160, width: 320, height: 320 });
    const [x0, y0] = view.toScreen([-160, -160]);
    const [x1, y1] = view.toScreen([160, 160]);
    expect(Math.min(x0, y0)).toBeGreaterThan(0);
    expect(x1).toBeLessThan(800);
    expect(y1).toBeLessThan(500);
    view.resize({ width: 300, height: 700 });
    expect(view.toScreen([160, 0])[0]).toBeLessThan(300);
  });

  test('keeps the place under the pointer when it comes nearer, and there and back is the same', () => {
    const view = createFlatView();
    view.show({ x: 0, y: 0, width: 300, height: 200 });
    const before = view.toFlat(120, 330);
    view.zoom(3, 120, 330);
    expect(view.toFlat(120, 330)).toEqual([expect.closeTo(before[0], 9), expect.closeTo(before[1], 9)]);
    view.slide(10, -4);
    expect(view.toScreen(view.toFlat(77, 88))).toEqual([expect.closeTo(77, 9), expect.closeTo(88, 9)]);
  });

  test('a long strip is slid along, not squeezed', () => {
    const view = createFlatView();
    view.resize({ width: 500, height: 500 });
    view.show({ x: 0, y: 0, width: 377, height: 12 });
    expect(view.lay().scale * 12).toBeCloseTo(72, 6);
    expect(view.toScreen([0, 0])[0]).toBeGreaterThan(0);
  });

  test.each([
    [1, 120, 1, 100],
    [2.4, 120, 1, 50],
    [2.4, 120, 25.4, 25.4],
    [0.3, 120, 25.4, 254],
  ])(
    'a scale bar at %d px a mm and at most %d px, in units of %d mm, is %d mm',
    (scale, most, unit, length) => {
      expect(scaleBarLength(scale, most, unit)).toBeCloseTo(length, 9);
    },
  );
});
