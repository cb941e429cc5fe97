import { describe, expect, test } from 'vitest';
import { estimate } from '../../../geometry/estimate.ts';
import type { WornPart } from '../../../geometry/job/job.ts';
import { sheetPage } from '../../../geometry/sheet/html.ts';
import { toResult } from '../../../geometry/sheet/result.ts';
import { sheetText } from '../../../geometry/sheet/text.ts';
import { thinRows, wallLines, wallRows } from '../../../geometry/sheet/wall-text.ts';
import { toRadians } from '../../../geometry/units.ts';
import { evenly, job, madeImpeller, patch, pit, plate } from '../made.ts';
import { xmlFaults } from './xml-faults.ts';

const estimated = (worn: WornPart) => estimate({ ...job([]), parts: [worn] }, { cell: 1 });

describe('walls in the result', () => {
  test('mm, degrees and cm2; the thinnest of them is the thinnest of the part', () => {
    const { parts } = toResult(estimated(plate({ holes: [] }, [patch([90, 110], [30, 90], 9)])));
    const [face, bore] = parts[0].walls;
    expect(face).toMatchObject({ face: 'face', behind: null, asNew: 18, limit: 10, verdict: 'under' });
    // Closed form of the ring sector, cm2; cells of 1 mm.
    expect(face.under / (((110 ** 2 - 90 ** 2) * toRadians(60)) / 200)).toBeCloseTo(1, 2);
    expect(face.places[0].at[1]).toBeGreaterThan(29);
    expect(face.places[0].at[1]).toBeLessThan(91);
    expect(bore).toMatchObject({ face: 'bore', verdict: 'sound', under: 0, places: [] });
    const { face: name, at, remaining } = face;
    expect(parts[0].thinnest).toEqual({ face: name, at, remaining });
  });
});

describe('walls in words', () => {
  const worn = estimated(
    madeImpeller({}, { leastThickness: 4 }, [evenly('vane-2/pressure', 5), evenly('vane-3/suction', 8)]),
  );
  const result = toResult(worn);
  test('one row a wall, with what to make of it', () => {
    const rows = wallRows(worn, result);
    expect(rows.map(([, wall, left, asNew, least, , state]) => [wall, left, asNew, least, state])).toEqual([
      ['shroud', '10.00', '10.00', '4', 'sound'],
      ['vane 1', '8.00', '8.00', '4', 'sound'],
      ['vane 2', '3.00', '8.00', '4', 'too thin'],
      ['vane 3', '0.00', '8.00', '4', 'worn through'],
      ['vane 4', '8.00', '8.00', '4', 'sound'],
      ['vane 5', '8.00', '8.00', '4', 'sound'],
    ]);
    expect(thinRows(worn, result).map(([, wall, number, left]) => [wall, number, left])).toEqual([
      ['vane 2', '1', '3.00'],
      ['vane 3', '1', 'through'],
    ]);
  });
  test('the sheets say that putty carries nothing, and draw only the walls that are too thin', () => {
    const text = sheetText(worn);
    expect(text).toContain('Putty carries no load');
    expect(text).toMatch(/Metal left: Wall as new less what is worn off it/);
    const page = sheetPage(worn);
    const drawn = [...page.matchAll(/<figcaption>Metal left of ([^<:]*)/g)].map(([, name]) => name);
    expect(drawn).toEqual(['impeller, vane 2', 'impeller, vane 3']);
    const pictures = [...page.matchAll(/<svg class="flat-map"[\s\S]*?<\/svg>/g)].map(([svg]) => svg);
    for (const svg of pictures) expect(xmlFaults(svg)).toEqual([]);
    expect(page).toContain('1 worn through</text>');
    expect(page).not.toMatch(/ style=/);
  });
  test('a place a pen point wide is not called nothing', () => {
    const thin = estimated(plate({}, [pit(110, 40, 3, 8.05, 'cone')]));
    expect(toResult(thin).parts[0].walls[0].verdict).toBe('under');
    expect(thinRows(thin, toResult(thin))[0][4]).toBe('under 0.01');
  });
  test('without a least thickness it says that there is nothing to judge by', () => {
    const unknown = toResult(estimated({ ...plate(), leastThickness: null }));
    expect(wallLines(unknown).join(' ')).toMatch(/No least thickness is given for plate/);
    expect(wallLines(result).join(' ')).not.toMatch(/No least thickness/);
  });
});
