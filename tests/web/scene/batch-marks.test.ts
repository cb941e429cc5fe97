import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { polygonArea } from '../../../geometry/part/polygon.ts';
import { flatFrame } from '../../../geometry/sheet/flat-frame.ts';
import { toRadians } from '../../../geometry/units.ts';
import { batchAt, batchOutlines } from '../../../web/scene/batch-outline.ts';
import { batchTags, type ScreenBox, TAG_HEIGHT, tagWidth } from '../../../web/scene/batch-tags.ts';
import { batchWords } from '../../../web/scene/batch-words.ts';
import type { LiveFace } from '../../../web/wear/live-faces.ts';
import { even } from '../even.ts';
import { PLATES, partOf } from '../tools/plates.ts';

const { faces } = partOf(PLATES.round);
const [face] = faces;
const live = faces.map((on) => ({ part: 'plate', face: on }) as LiveFace);
const cover = (first: readonly [number, number], second: readonly [number, number], pass = 1) => ({
  part: 'plate',
  face: 'face',
  first,
  second,
  pass,
});

describe('the outline of what a mix covers', () => {
  // Closed form: a sector of a ring, (r1^2 - r0^2) / 2 x angle; chords of 2.5 mm lie 0.01 mm inside arcs of 80 mm.
  it.each([
    ['over the mark', [350, 95], 105],
    ['short', [20, 32], 12],
  ] as const)('encloses the sector it stands for: %s', (_, second, degrees) => {
    const [outline] = batchOutlines('plate', live, [{ number: 1, covers: [cover([60, 80], second)] }]);
    const frame = flatFrame(face);
    const [line] = outline.lines;
    const area = Math.abs(polygonArea(line.map(({ place }) => frame.toFlat(...place))));
    const sector = ((80 ** 2 - 60 ** 2) / 2) * toRadians(degrees);
    expect(area / sector).toBeCloseTo(1, 2);
    expect(outline.area / sector).toBeCloseTo(1, 9);
  });

  it('is two closed lines where it goes all round', () => {
    const [outline] = batchOutlines('plate', live, [{ number: 1, covers: [cover([60, 80], [0, 360])] }]);
    expect(outline.lines.map((line) => new Set(line.map(({ place }) => place[0])))).toEqual([
      new Set([60]),
      new Set([80]),
    ]);
  });

  it('takes few points where it is small, its four corners among them', () => {
    const [small, large] = batchOutlines('plate', live, [
      { number: 1, covers: [cover([60, 66], [0, 5]), cover([60, 80], [0, 180])] },
    ]);
    expect(small.lines[0].length).toBeLessThan(20);
    expect(large.lines[0].length).toBeGreaterThan(90);
    const corners = small.lines[0].filter(
      ({ place: [u, v] }) => (u === 60 || u === 66) && (v === 0 || Math.abs(v - toRadians(5)) < 1e-12),
    );
    expect(corners).toHaveLength(4);
  });

  it('leaves out what lies on another part', () => {
    expect(batchOutlines('impeller', live, [{ number: 1, covers: [cover([60, 80], [0, 5])] }])).toEqual([]);
  });

  it('a place belongs to the mix whose range of angles it lies in, also past the mark', () => {
    const batches = [
      { number: 1, covers: [cover([60, 80], [30, 350])] },
      { number: 2, covers: [cover([60, 80], [350, 30]), cover([82, 90], [10, 370])] },
    ];
    const at = (radius: number, degrees: number) =>
      batchAt(batches, 'plate', face, [radius, toRadians(degrees)]);
    expect([at(70, 31), at(70, 349), at(70, 351), at(70, 29), at(70, 0)]).toEqual([1, 1, 2, 2, 2]);
    expect([at(85, 5), at(85, 200), at(59, 200)]).toEqual([2, 2, null]);
  });
});

const FREE: ScreenBox = { x0: 0, x1: 800, y0: 0, y1: 600 };
const words = (batch: number) =>
  batchWords({ number: batch, volume: 73.37, weigh: { partA: 158, partB: 69, ratioError: 0 } });
const stretch = (batch: number, x: number, y: number, size: number) => ({
  batch,
  isLit: false,
  box: { x0: x - size, x1: x + size, y0: y - size, y1: y + size },
  within: [[x, y]] as const,
});

describe('tags', () => {
  it('say what goes onto the scale, and the volume where nothing is weighed', () => {
    expect(words(2)).toEqual(['Mix 2: A 158 g, B 69 g', 'Mix 2', '2']);
    expect(batchWords({ number: 3, volume: 73.37, weigh: null })[0]).toBe('Mix 3: 73.4 mL');
  });

  it('each mix has one, fuller or shorter as there is room', () => {
    const tight = { x0: 0, x1: 90, y0: 0, y1: 600 };
    const tags = (free: ScreenBox) =>
      batchTags([stretch(1, 45, 100, 44), stretch(2, 45, 300, 44)], words, free, [], 40).map(
        ({ text }) => text,
      );
    expect(tags(tight)).toEqual(['Mix 1', 'Mix 2']);
    expect(tags({ ...tight, x0: -200, x1: 300 })).toEqual([
      'Mix 1: A 158 g, B 69 g',
      'Mix 2: A 158 g, B 69 g',
    ]);
    expect(tags({ ...tight, x1: 60, x0: 30 })).toEqual(['1', '2']);
  });

  it('the other stretches of a mix have its number, where there are several mixes', () => {
    const of = (...batches: number[]) =>
      batchTags(
        batches.map((batch, i) => stretch(batch, 400, 60 + 120 * i, 50)),
        words,
        FREE,
        [],
        40,
      ).map(({ text }) => text);
    expect(of(1, 1)).toEqual([words(1)[0]]);
    expect(of(1, 1, 2)).toEqual([words(1)[0], words(2)[0], '1']);
  });

  it('the mix that is pointed at comes first where all cannot have their words', () => {
    const tight = { x0: 300, x1: 500, y0: 80, y1: 120 };
    const [one, two] = [stretch(1, 400, 100, 100), { ...stretch(2, 400, 100, 100), isLit: true }];
    expect(batchTags([one, two], words, tight, [], 40).map(({ text }) => text)).toEqual([words(2)[0]]);
  });

  it('lie on no other, on nothing taken, and never off the picture', () => {
    const strewn = fc.array(
      fc.tuple(fc.integer({ min: 1, max: 9 }), even(-50, 850), even(-50, 650), even(2, 120)),
      {
        maxLength: 40,
      },
    );
    fc.assert(
      fc.property(strewn, even(0, 700), (places, x) => {
        const taken = [{ x0: x, x1: x + 40, y0: 200, y1: 260 }];
        const stretches = places.map(([batch, ...at]) => stretch(batch, ...at));
        const tags = batchTags(stretches, words, FREE, taken, 30);
        expect(tags.length).toBeLessThanOrEqual(30);
        const boxes = tags.map((tag) => ({
          x0: tag.x - tag.width / 2,
          x1: tag.x + tag.width / 2,
          y0: tag.y - TAG_HEIGHT / 2,
          y1: tag.y + TAG_HEIGHT / 2,
        }));
        for (const [i, box] of boxes.entries()) {
          expect(tags[i].width).toBe(tagWidth(tags[i].text));
          expect(box.x0 >= 0 && box.x1 <= 800 && box.y0 >= 0 && box.y1 <= 600).toBe(true);
          for (const other of [...boxes.slice(i + 1), ...taken]) {
            const meets = box.x0 < other.x1 && other.x0 < box.x1 && box.y0 < other.y1 && other.y0 < box.y1;
            expect(meets).toBe(false);
          }
        }
      }),
    );
  });
});
