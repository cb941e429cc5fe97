import { describe, expect, test } from 'vitest';
import { estimate } from '../../../geometry/estimate.ts';
import type { Mark, WornPart } from '../../../geometry/job/job.ts';
import { evenly, job, madeImpeller, patch, pit, plate } from '../made.ts';

const ABOUT_WALLS = /^(?:worn-through|wall-|edge-eaten)/;

function said(worn: WornPart) {
  const { warnings, cautions } = estimate({ ...job([]), parts: [worn] }, { cell: 1 });
  return {
    warnings: warnings.filter(({ code }) => ABOUT_WALLS.test(code)),
    cautions: cautions.map(({ code }) => code),
  };
}

describe('repair by other means', () => {
  test('worn through: named, placed, with what to do instead, as common practice', () => {
    const { warnings, cautions } = said(plate({}, [pit(100, 50, 10, 18, 'flat')]));
    expect(warnings).toHaveLength(1);
    expect(warnings[0].code).toBe('worn-through');
    expect(warnings[0].text).toMatch(
      /^plate: face, radius (?:9[6-9]|10[0-4]) mm, angle (?:4[7-9]|5[0-3]) deg is worn through/,
    );
    expect(warnings[0].text).toMatch(
      /weld it up, let in an insert or liner plate, or fit a new part\. Common practice/,
    );
    expect(cautions).toContain('cracks-unseen');
  });
  test('thinner than allowed: the figure and the limit', () => {
    const { warnings } = said(plate({}, [patch([90, 110], [0, 90], 9)]));
    expect(warnings.map(({ code }) => code)).toEqual(['wall-thin']);
    expect(warnings[0].text).toMatch(/has 9\.00 mm of metal left, less than the least of 10 mm/);
  });
  test('more than half of a wall gone, though no limit is known', () => {
    const worn = (depth: number) => madeImpeller({}, {}, [evenly('vane-2/pressure', depth)]);
    expect(said(worn(4.2)).warnings.map(({ code }) => code)).toEqual(['wall-mostly-gone']);
    expect(said(worn(4.2)).warnings[0].text).toMatch(/vane-2\/pressure, .* has lost 4\.20 of 8\.00 mm/);
    expect(said(worn(3.8)).warnings).toEqual([]);
  });
  test('each thin vane is said, not only the thinnest', () => {
    const marks: Mark[] = [evenly('vane-1/suction', 5), evenly('vane-3/pressure', 6)];
    const { warnings } = said(madeImpeller({}, { leastThickness: 4 }, marks));
    expect(warnings.map(({ text }) => text.slice(0, 26))).toEqual([
      expect.stringContaining('vane-1/suction'),
      expect.stringContaining('vane-3/pressure'),
    ]);
  });
  test('an edge eaten back more than twice the thickness of the vane', () => {
    const worn = (depth: number) => madeImpeller({}, {}, [evenly('vane-4/leading-edge', depth)]);
    const { warnings } = said(worn(17));
    expect(warnings.map(({ code }) => code)).toEqual(['edge-eaten']);
    expect(warnings[0].text).toMatch(
      /vane-4\/leading-edge is eaten back 17\.0 mm at height .*twice the 8\.0 mm/,
    );
    expect(said(worn(15)).warnings).toEqual([]);
  });
  test('a vane thinner than the limit as new is a doubtful limit, not wear', () => {
    const { warnings, cautions } = said(madeImpeller({ thicknessOutlet: 5 }, { leastThickness: 6 }));
    expect(warnings[0].code).toBe('wall-thin-as-new');
    expect(cautions).not.toContain('cracks-unseen');
  });
  test('a sound part hears nothing', () => {
    expect(said(plate()).warnings).toEqual([]);
    expect(said(plate()).cautions).not.toContain('cracks-unseen');
  });
});
