import { describe, expect, test } from 'vitest';
import { clearanceWarnings } from '../../../geometry/clearance/clearance-warnings.ts';
import { toRadians } from '../../../geometry/units.ts';
import { evenly, patch } from '../made.ts';
import { ASK, estimateOf, type MadePair, pairJob } from './made-gap.ts';

function warned(made: MadePair): Record<string, string> {
  const asks = pairJob(made);
  const warnings = clearanceWarnings(asks.clearance ?? ASK, estimateOf(asks, 2));
  return Object.fromEntries(warnings.map(({ code, text }) => [code, text]));
}
const even = (depth: number) => patch([60, 160], [0, 360], depth);
const setting = (tolerance: number) => ({ tolerances: { ...ASK.tolerances, setting: tolerance } });

test('a gap that fits warns of nothing', () => {
  expect(warned({ repair: { coatedFaces: [] } })).toEqual({});
});

/** 0.8 mm as new, two coats of 0.25 mm on both faces: 0.8 - 2 x 0.5 = -0.2 mm. */
describe('filled flush and then coated on both faces', () => {
  test('the sentence says who takes the gap', () => {
    expect(warned({ onPlate: [even(2)] })['clearance-tight']).toBe(
      'Too tight: -0.20 mm at the closest, where 0.40 mm runs free. Filled it would run free; the coats on both faces take 2 x 0.50 mm.',
    );
  });

  test('and that the parts touch', () => {
    expect(warned({})['clearance-rub']).toMatch(
      /^At the closest the parts overlap by 0\.20 mm: .* Turn the rotor by hand/,
    );
  });

  test('a gap of nothing touches and does not overlap', () => {
    expect(warned({ ask: { asNew: 1 } })['clearance-rub']).toMatch(
      /^At the closest nothing is left: tips and plate can touch/,
    );
  });

  test('one face coated names that face', () => {
    const plate = { repair: { coatedFaces: ['plate:*'] }, ask: { least: 0.5 } };
    expect(warned(plate)['clearance-tight']).toMatch(/the coats on the plate take 0\.50 mm\.$/);
    const tips = { repair: { coatedFaces: ['impeller:*'] }, ask: { least: 0.5 } };
    expect(warned(tips)['clearance-tight']).toMatch(/the coats on the vane tips take 0\.50 mm\.$/);
  });

  test('coats are not blamed where it was tight before them', () => {
    const { 'clearance-tight': tight } = warned({ ask: { asNew: 0.3 } });
    expect(tight).toBe('Too tight: -0.70 mm at the closest, where 0.40 mm runs free.');
  });
});

test('a tolerance that can take all of the gap is a rub, and is named', () => {
  const bare = { repair: { coatedFaces: [] } };
  const rub = warned({ ...bare, ask: { asNew: 0.3, ...setting(0.35) } })['clearance-rub'];
  expect(rub).toMatch(/^At the closest 0\.30 mm is left, and 0\.35 mm of tolerance can take it all/);
  expect(warned({ ...bare, ask: { asNew: 0.3, ...setting(0.25) } })['clearance-rub']).toBeUndefined();
  expect(warned({ ...bare, ask: { asNew: 0.3, ...setting(0.25) } })['clearance-tight']).toBe(
    'Too tight: 0.30 mm at the closest less 0.25 mm of tolerance, where 0.40 mm runs free.',
  );
});

test('left wear that is too wide is named', () => {
  const worn = { onPlate: [even(0.9)], repair: { coatedFaces: [] }, ask: setting(0.1) };
  expect(warned(worn)).toEqual({
    'clearance-wide':
      'Too wide: 1.70 mm at the widest and 0.10 mm of tolerance more, where no more than 1.20 mm is worth running.',
  });
});

/** Over the 92.23 mm that are shared a cone of 1 deg opens 1.61 mm, one of 0.3 deg 0.48 mm. */
describe('parts whose drawings are not parallel', () => {
  const dished = (angle: number, ask: MadePair['ask'] = {}) => ({
    shape: { coneAngle: toRadians(angle), holes: [] },
    repair: { coatedFaces: [] },
    ask,
  });

  test('are told of when the gap is taken as even', () => {
    expect(warned(dished(1))['clearance-shape']).toBe(
      'By their drawings plate and tips are not parallel: they stand up to 1.61 mm further apart elsewhere than at the closest; the figures take the gap as new everywhere.',
    );
  });

  test('but not when the figures open with them, nor for less than is likely to matter', () => {
    expect(warned(dished(1, { asNewHolds: 'at the closest', most: 3 }))).toEqual({});
    expect(warned(dished(0.3))).toEqual({});
    expect(warned(dished(1, { ...setting(1.7), least: 0, most: 9, asNew: 2 }))).toEqual({});
  });
});

test('worn alike on plate and tips, all of it left: the gap as found', () => {
  const worn = { onPlate: [even(0.4)], onTips: [evenly('vane-*/tip', 0.3)], repair: { coatedFaces: [] } };
  expect(warned(worn)['clearance-wide']).toMatch(/^Too wide: 1\.50 mm at the widest,/);
});
