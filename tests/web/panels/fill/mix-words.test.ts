import { describe, expect, it } from 'vitest';
import { newPlateJob } from '../../../../geometry/job/new-plate-job.ts';
import { combWords } from '../../../../geometry/sheet/plan-text.ts';
import type { BatchResult, CoatResult, FillerResult } from '../../../../geometry/sheet/result.ts';
import { typeset } from '../../../../geometry/sheet/typeset.ts';
import { coverLines, layersText } from '../../../../web/panels/fill/cover-text.ts';
import {
  bowlTotal,
  noWeighingText,
  portionWords,
  roundingText,
} from '../../../../web/panels/fill/scale-words.ts';
import { firmsUpSpan, timesText } from '../../../../web/panels/fill/times-text.ts';
import { wetFilmText } from '../../../../web/panels/fill/wet-film-text.ts';

const job = newPlateJob();
const [{ id }] = job.parts;
type Cover = BatchResult['covers'][number];
const cover = (second: readonly [number, number], change: Partial<Cover> = {}): Cover => ({
  part: id,
  face: 'face',
  first: [83.4, 158],
  second,
  pass: 1,
  ...change,
});

describe('where a mix goes', () => {
  it('is said in the two numbers of the face, and all round as such', () => {
    expect(coverLines(job, [cover([350, 95]), cover([0, 360])], 'mm')).toEqual([
      'Face, radius 83 to 158 mm, 350 to 95°',
      'Face, radius 83 to 158 mm, all round',
    ]);
    expect(coverLines(job, [cover([0, 90])], 'in')).toEqual(['Face, radius 3.3 to 6.2 in, 0 to 90°']);
  });

  it('is counted face by face where it goes to many places', () => {
    const many = [0, 20, 40, 60].map((from) => cover([from, from + 10]));
    const bore = cover([2, 8], { face: 'bore', first: [186, 274] });
    expect(coverLines(job, [...many, bore], 'mm')).toEqual([
      'Face, 4 places',
      'Bore, 186 to 274°, below the face 2 to 8 mm',
    ]);
  });

  it('names the layer only where there are several', () => {
    const of = (...passes: number[]) =>
      ({ covers: passes.map((pass) => cover([0, 90], { pass })) }) as unknown as BatchResult;
    const filler = (...batches: BatchResult[]) => ({ batches, passes: 2 }) as unknown as FillerResult;
    expect(layersText(of(1), filler(of(1), of(1)))).toBe('');
    expect(layersText(of(1), filler(of(1), of(2)))).toBe('layer 1 of 2');
    expect(layersText(of(1, 2, 1), filler(of(1, 2, 1)))).toBe('layers 1 and 2 of 2');
  });
});

describe('what goes onto the scale', () => {
  const portions = { partA: { volume: 48.9, mass: 117.4 }, partB: { volume: 24.46, mass: 51.36 } };
  const weighed = { ...portions, weigh: { partA: 0.1, partB: 0.2, ratioError: -0.0123 } };

  it('is weighed where it can be, else measured by volume', () => {
    expect(portionWords(weighed)).toEqual({ a: '0.1 g', b: '0.2 g' });
    expect(portionWords({ ...portions, weigh: null })).toEqual({ a: '48.9 mL', b: '24.5 mL' });
    expect(bowlTotal(weighed.weigh)).toBe('0.3 g');
  });

  it('says what rounding does to the ratio, and nothing under 0.1 %', () => {
    expect(roundingText([weighed, weighed])).toBe('Rounded to the steps of the scale: 1.2 % too little B.');
    const other = { weigh: { ...weighed.weigh, ratioError: 0.016 } };
    expect(roundingText([weighed, other])).toBe('Rounded to the steps of the scale: up to 1.6 % too much B.');
    expect(roundingText([{ weigh: { ...weighed.weigh, ratioError: 0.001 } }, { weigh: null }])).toBe('');
  });

  it('says why nothing is weighed', () => {
    expect(noWeighingText(true, true, [{ weigh: null }])).toMatch(/cartridge mixes/);
    expect(noWeighingText(false, true, [weighed, { weigh: null }])).toMatch(/too coarse/);
    expect(noWeighingText(false, false, [{ weigh: null }])).toMatch(/without the densities/);
    expect(noWeighingText(false, true, [weighed])).toBe('');
  });
});

it('times stand for the temperature of the part, or as quoted', () => {
  const filler = { workingTime: 39.7, firmsUp: { from: 48.2, to: 73 }, hard: 930 } as FillerResult;
  const times = { ...filler, span: firmsUpSpan(filler) };
  expect(timesText(times, 14)).toBe(
    'At 14 °C on the part: workable 39 min, firms up in 48 min to 1 h 13 min, hard after 15 h 30 min.',
  );
  expect(timesText({ workingTime: 20, span: null, hard: null }, undefined)).toBe(
    'As quoted, the temperature of the part is not given: workable 20 min.',
  );
});

it('the wet film is told by the last tooth that wets and the first that does not', () => {
  // 250 um / 25.4 = 9.84 mil.
  const coat = { wetFilm: 250, comb: { wet: 250, dry: 275 } } as CoatResult;
  expect(wetFilmText(coat, 'mm')).toBe('250 µm');
  expect(wetFilmText(coat, 'in')).toBe('9.8 mil (250 µm)');
  expect(typeset(combWords(coat.comb))).toBe('On a wet film comb the 250 µm tooth wets, the 275 stays dry.');
  expect(typeset(combWords({ wet: 0, dry: 25 }))).toMatch(/even the 25 µm tooth stays dry/);
});
