import { describe, expect, test } from 'vitest';
import { replay } from '../../../geometry/depth/replay.ts';
import { estimate } from '../../../geometry/estimate.ts';
import { decideFill } from '../../../geometry/fill/fill-map.ts';
import type { Job, Mark, Section } from '../../../geometry/job/job.ts';
import { sheetBody } from '../../../geometry/sheet/html.ts';
import { type Gauged, sectionProfile } from '../../../geometry/sheet/section.ts';
import { sectionFrame } from '../../../geometry/sheet/section-frame.ts';
import { sectionLayers } from '../../../geometry/sheet/section-layers.ts';
import { MILLIMETRES, sectionSvg } from '../../../geometry/sheet/section-svg.ts';
import { sheetText } from '../../../geometry/sheet/text.ts';
import { toRadians } from '../../../geometry/units.ts';
import { faceOf, job, patch, pit, polar } from '../made.ts';
import { areaOf, pointsOf } from './path-points.ts';

const SIZE = { width: 660, text: 11, high: 0.36, unit: 1 };
const SPOKE: Section = { kind: 'along-first', face: 'face', at: toRadians(30) };
const FACE = faceOf('face', { holes: [] }, 0.5);

interface Laid {
  readonly section?: Section;
  readonly film?: number;
  readonly readings?: readonly Gauged[];
  readonly coatAllowance?: number;
}

function profileOf(marks: readonly Mark[], laid: Laid = {}) {
  const { section = SPOKE, film = 0, readings = [], coatAllowance = 0 } = laid;
  const map = replay(FACE, marks);
  const { label, regions, allowance } = decideFill('plate', FACE, map, job([], {}, { coatAllowance }).repair);
  const fill = { label, actions: regions.map(({ action }) => action), allowance };
  return sectionProfile(FACE, map, section, { fill, film, behind: null, readings });
}

/** Area of closed shapes on the drawing, brought to mm2 of the section. */
function areaUnder(path: string, marks: readonly Mark[], laid: Laid = {}): number {
  const frame = sectionFrame(profileOf(marks, laid), SIZE, 0);
  const mm = frame.x(1) - frame.x(0);
  return Math.abs(areaOf(pointsOf(path))) / (mm * mm * frame.times);
}

const layersOf = (marks: readonly Mark[], laid: Laid = {}) => {
  const profile = profileOf(marks, laid);
  return sectionLayers(profile, sectionFrame(profile, SIZE, 0));
};

describe('the frame', () => {
  test('draws depth as many times as reads well, and both axes true to that', () => {
    // 100 mm of spoke may be 36 mm high: 3.3 mm 10 times, 6.6 mm 5 times, 7.7 mm twice; a tenth of the depth is kept free below.
    for (const [depth, times] of [
      [0.4, 20],
      [3, 10],
      [6, 5],
      [7, 2],
    ] as const) {
      const frame = sectionFrame(profileOf([patch([80, 140], [0, 60], depth)]), SIZE, 0);
      expect([depth, frame.times]).toEqual([depth, times]);
      const mm = frame.x(1) - frame.x(0);
      expect((frame.y(1) - frame.y(0)) / mm).toBeCloseTo(times, 9);
      expect(frame.y(depth)).toBeLessThan(frame.bottom);
      expect(frame.x(100)).toBeCloseTo(frame.right, 9);
    }
  });

  test('held steady it is as high whatever lies under the line', () => {
    const heightOf = (depth: number) =>
      sectionFrame(profileOf([patch([80, 140], [0, 60], depth)]), { ...SIZE, isSteady: true }, 0).height;
    for (const depth of [0.3, 3, 12]) expect(heightOf(depth)).toBeCloseTo(heightOf(1), 9);
  });

  test('ticks stand at round mm, or at round decimals of an inch', () => {
    const profile = profileOf([patch([80, 140], [0, 60], 6)]);
    expect(sectionFrame(profile, SIZE, 0).lengthTicks).toEqual([0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100]);
    const inches = sectionFrame(profile, { ...SIZE, unit: 25.4 }, 0).lengthTicks.map((at) => at / 25.4);
    expect(inches.map((at) => Math.round(at * 1e9) / 1e9)).toEqual([0, 0.5, 1, 1.5, 2, 2.5, 3, 3.5]);
  });

  test('a line shorter than it is deep is drawn true to length and no taller than wide', () => {
    const section: Section = { kind: 'line', face: 'face', from: polar(100, 30), to: polar(103, 30) };
    const frame = sectionFrame(profileOf([patch([80, 140], [0, 60], 9)], { section }), SIZE, 0);
    expect(frame.times).toBe(1);
    expect(frame.y(9) - frame.y(0)).toBeLessThan(frame.right - frame.left);
  });

  test('shows the wall where wear has eaten well into it', () => {
    // The plate is 18 mm thick.
    expect(sectionFrame(profileOf([pit(110, 30, 30, 6, 'flat')]), SIZE, 0).showsWall).toBe(false);
    const frame = sectionFrame(profileOf([pit(110, 30, 30, 8, 'flat')]), SIZE, 0);
    expect(frame.showsWall).toBe(true);
    expect(frame.y(18)).toBeLessThan(frame.bottom);
  });
});

describe('the layers', () => {
  const RAMP = patch([80, 140], [0, 60], [2, 5]);

  test('putty is the trapezium between worn and sound line: 60 mm at 3.5 mm on average', () => {
    // Its ends are drawn slanted over half a cell, a quarter of a mm, of 5 mm at most.
    expect(areaUnder(layersOf([RAMP]).putty, [RAMP])).toBeCloseTo(210, -0.5);
    expect(Math.abs(areaUnder(layersOf([RAMP]).putty, [RAMP]) - 210)).toBeLessThan(1.3);
  });

  test('less the allowance, which leaves 60 x 0.5 free', () => {
    const laid = { coatAllowance: 0.5 };
    expect(Math.abs(areaUnder(layersOf([RAMP], laid).putty, [RAMP], laid) - 180)).toBeLessThan(1.3);
  });

  test('the coat is as thick everywhere: 100 mm of it, 0.5 mm', () => {
    for (const marks of [[], [RAMP]]) {
      const laid = { film: 0.5 };
      expect(areaUnder(layersOf(marks, laid).film, marks, laid)).toBeCloseTo(50, 0);
    }
  });

  test('what is left to the coat is filled with it, and only where there is a coat', () => {
    // A bowl holds two thirds of the box about it in section: 20 x 0.8 x 2/3.
    const marks = [pit(110, 30, 20, 0.8, 'bowl')];
    const laid = { film: 0.5 };
    expect(areaUnder(layersOf(marks, laid).left, marks, laid)).toBeCloseTo(10.67, 0);
    expect(layersOf(marks, laid).putty).toBe('');
    expect(layersOf(marks).left).toBe('');
  });

  test('a wall worn through leaves no metal there', () => {
    const marks = [pit(110, 30, 40, 18, 'flat')];
    // 60 mm of 18 mm are left of the 100.
    expect(Math.abs(areaUnder(layersOf(marks).metal, marks) - 60 * 18)).toBeLessThan(10);
    expect(layersOf(marks).behind).not.toBe('');
  });
});

describe('the drawing', () => {
  const draw = (marks: readonly Mark[], laid: Laid = {}) =>
    sectionSvg(profileOf(marks, laid), {
      title: 'a <title>',
      description: 'what & where',
      id: 'cut',
      width: 660,
      text: 11,
      high: 0.36,
      unit: MILLIMETRES,
    }).markup;

  test('says its exaggeration, its deepest place and what it means, and holds no style', () => {
    const svg = draw([patch([80, 140], [0, 60], 3)], { film: 0.5 });
    for (const words of [
      'depth drawn 5 times',
      '3.00 mm',
      'putty',
      'coat, 0.50 mm',
      'mm along the line',
      '>A<',
      '>B<',
    ])
      expect(svg).toContain(words);
    expect(svg).toContain('aria-labelledby="cut-title cut-desc"');
    expect(svg).toContain('<title id="cut-title">a &lt;title&gt;</title>');
    expect(svg).toContain('<desc id="cut-desc">what &amp; where</desc>');
    expect(svg).not.toMatch(/style=|<script|http/);
  });

  test('draws a gauge reading with two errors either way', () => {
    const reading = { at: polar(100, 30), depth: 2.8, error: 0.1 };
    const marks = [patch([80, 140], [0, 60], 3)];
    const frame = sectionFrame(profileOf(marks, { readings: [reading] }), SIZE, 0);
    const svg = draw(marks, { readings: [reading] });
    expect(svg).toContain('gauge reading with 2 errors either way');
    const bar = [...svg.matchAll(/class="section-reading" d="M([\d.]+) ([\d.]+)V([\d.]+)/g)][0].map(Number);
    expect(bar[1]).toBeCloseTo(frame.x(40), 1);
    expect(bar[2]).toBeCloseTo(frame.y(2.6), 1);
    expect(bar[3]).toBeCloseTo(frame.y(3), 1);
    expect(draw(marks)).not.toContain('gauge reading');
  });

  test('says over the bore that there is no metal', () => {
    const section: Section = { kind: 'line', face: 'face', from: polar(150, 0), to: polar(150, 180) };
    expect(draw([], { section })).toContain('no metal');
    expect(draw([])).not.toContain('no metal');
  });
});

describe('on the sheet', () => {
  const sections: readonly Section[] = [SPOKE, { kind: 'along-second', face: 'face', at: 100 }];
  const made = (marks: readonly Mark[], kept = sections, repair: Partial<Job['repair']> = {}): Job => {
    const plain = job(marks, { holes: [] }, repair);
    return { ...plain, parts: plain.parts.map((part) => ({ ...part, sections: kept })) };
  };

  test('each section kept is a picture with where it lies, its deepest place and what becomes of it', () => {
    const sheet = sheetBody(estimate(made([patch([80, 140], [0, 60], 3)]), { cell: 1 }));
    expect(sheet.match(/class="section-plot"/g)).toHaveLength(2);
    // An even bottom from radius 80 to 140: its middle, to half a cell.
    expect(sheet).toMatch(
      /Section 1 of plate face: spoke at angle 30°, from A at radius 60 mm to B at radius 160 mm; deepest 3\.00 mm at radius 1(09\.[5-9]|10(\.[0-5])?) mm, angle 30°/,
    );
    expect(sheet).toContain('3.00 mm of putty there');
    expect(sheetBody(estimate(made([], []), { cell: 2 }))).not.toContain('section-plot');
  });

  test('in plain text each is a line', () => {
    const left = made([patch([80, 140], [0, 60], 0.8)], sections);
    const text = sheetText(estimate(left, { cell: 1 })).replace(/\n {4}/g, ' ');
    expect(text).toContain('Sections of plate');
    expect(text).toMatch(
      /1: face, spoke at angle 30 deg, .* 100 mm long: deepest 0\.80 mm at radius 1(09|10)/,
    );
    expect(text).toMatch(/2: face, ring at radius 100 mm, .* 628\.3 mm long: .*; left to the coat there/);
  });

  test('a wall worn through, a sound face and a line beside the face are said', () => {
    const text = (marks: readonly Mark[], section: Section) =>
      sheetText(estimate(made(marks, [section]), { cell: 1 })).replace(/\n {4}/g, ' ');
    expect(text([pit(110, 30, 30, 18, 'flat')], SPOKE)).toMatch(/deepest 18\.00 mm .*; worn through there/);
    expect(text([], SPOKE)).toContain('no wear under it');
    expect(text([], { kind: 'along-second', face: 'face', at: 20 })).toContain('no metal under it');
  });
});
