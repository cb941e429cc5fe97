import { describe, expect, test } from 'vitest';
import { dayOf, stepIn } from './made-day.ts';

const mix = (...on: string[]) => ({ minutes: 12, on });
const noteOf = (id: string, ...given: Parameters<typeof dayOf>) => stepIn(dayOf(...given), id).note;

describe('notes', () => {
  test('say where a mix goes and how long it stays workable', () => {
    const made = { parts: ['plate'], mixes: [mix('plate/face', 'plate/bore', 'plate/a', 'plate/b')] };
    expect(noteOf('fill:1', made)).toBe(
      'On plate: face, plate: bore, plate: a and 1 more. In place within 20 min of starting to mix.',
    );
  });

  test('square tips where the part has any', () => {
    const made = { parts: ['plate', 'impeller'], mixes: [mix('plate/face'), mix('impeller/tip')] };
    expect(noteOf('dress:1', made)).toBe('Dress flush, take the dust off.');
    expect(noteOf('dress:2', made)).toBe('Dress flush, square the vane tips, take the dust off.');
    expect(noteOf('dress-hard:impeller', made)).toBe('Square the vane tips.');
  });

  test('leave a layer rough that another goes on, and warn of a mix that holds both', () => {
    const layers = { parts: ['plate'], mixes: [mix('plate/face/1'), mix('plate/face/2')] };
    expect(noteOf('dress:1', layers)).toBe('Level it and leave it rough: the next layer goes on it.');
    expect(noteOf('dress:2', layers)).toBe('Dress flush, take the dust off.');
    const both = { parts: ['plate'], mixes: [mix('plate/face/1', 'plate/face/2')] };
    expect(noteOf('fill:1', both)).toContain('more than one layer of plate: face: mix each layer apart');
    expect(noteOf('fill:1', layers)).not.toContain('more than one layer');
  });

  test('ask for the weather once a coat, and for a print before the next', () => {
    const made = { parts: ['plate'], mixes: [], coats: [[15, 15], [15]] };
    expect(noteOf('coat:1.1', made)).toContain('at least 3 degC above the dew point');
    expect(noteOf('coat:1.2', made)).toBe('Brushed out within 25 min of starting to mix.');
    expect(noteOf('touch-test:1', made)).toBe('A gloved finger leaves a print and the coat does not move.');
  });

  test('own up to what the data sheet does not say', () => {
    const made = {
      parts: ['plate'],
      mixes: [mix('plate/face')],
      firmsUp: null,
      coats: [[15], [15]],
      overcoat: null,
      fillerHard: null,
      coatHard: null,
    };
    const day = dayOf(made);
    // The working times, 20 and 25 min, stand in.
    expect(stepIn(day, 'firm-up:1').minutes).toBe(20);
    expect(stepIn(day, 'overcoat:1').minutes).toBe(25);
    expect(stepIn(day, 'harden').minutes).toBe(0);
    for (const id of ['firm-up:1', 'overcoat:1', 'harden'])
      expect(stepIn(day, id).note).toContain('The data sheet does not say');
    expect([stepIn(day, 'dress:1').window, stepIn(day, 'coat:2.1').window]).toEqual([null, null]);
  });

  test('send metal that was bare for more than four hours back to be blasted lightly', () => {
    // Flashing off alone takes five hours.
    const made = { parts: ['plate'], mixes: [mix('plate/face'), mix('plate/face')], coats: [[15]] };
    const slow = { minutes: { flashOff: 300 } };
    const again = 'Blasted more than 4 h before: blast plate again lightly.';
    expect(noteOf('fill:1', made, slow)).toContain(again);
    expect(noteOf('fill:2', made, slow)).not.toContain(again);
    expect(noteOf('coat:1.1', made, slow)).not.toContain(again);
    expect(noteOf('coat:1.1', { ...made, mixes: [] }, slow)).toContain(again);
    expect(noteOf('fill:1', made)).not.toContain(again);
  });
});
