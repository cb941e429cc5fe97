/**
 * The four classes: Lobanoff & Ross, Centrifugal Pumps, table 13-3 (mildly abrasive: soft solids, or hard silt in traces; abrasive: hard fines
 * in low concentration, or much soft material; severely abrasive: much hard fine material, or some coarse; most severe: coarse grains).
 * Which answer draws which line, and the putty for a class: our judgement.
 */
import { describe, expect, it } from 'vitest';
import type { Service } from '../../../geometry/job/job.ts';
import { adviceWarnings, puttyAdvice } from '../../../geometry/material/severity.ts';

const service = (
  solids: Service['solids'],
  grains: Service['grains'] = null,
  concentration: Service['concentration'] = null,
  shape: Service['shape'] = null,
): Service => ({ solids, grains, concentration, shape });

describe('puttyAdvice', () => {
  it.each([
    [service('none'), 'clean', 'fine-paste'],
    [service('soft', null, 'little'), 'mildly-abrasive', 'fine-paste'],
    [service('hard', 'silt', 'trace'), 'mildly-abrasive', 'fine-paste'],
    [service('soft', null, 'much'), 'abrasive', 'fine-paste'],
    [service('hard', 'silt', 'little'), 'abrasive', 'fine-paste'],
    [service('hard', 'sand', 'little'), 'abrasive', 'fine-paste'],
    [service('hard', 'sand', 'much'), 'severely-abrasive', 'coarse-bead'],
    [service('hard', 'coarse', 'little'), 'severely-abrasive', 'coarse-bead'],
    [service('hard', 'coarse'), 'severely-abrasive', 'coarse-bead'],
    [service('hard', 'coarse', 'much'), 'most-severe', 'coarse-bead'],
  ] as const)('%j is %s: %s', (asked, severity, putty) => {
    expect(puttyAdvice(asked)).toMatchObject({ severity, putty });
  });

  // The Practical Pumping Handbook, p. 151: angular grains wear about twice as much as rounded ones.
  it('goes one class up for angular grains, and says so', () => {
    const advice = puttyAdvice(service('hard', 'sand', 'little', 'angular'));
    expect(advice).toMatchObject({ severity: 'severely-abrasive', putty: 'coarse-bead' });
    expect(advice?.reasons.join(' ')).toContain('Angular');
    expect(puttyAdvice(service('none', null, null, 'angular'))).toMatchObject({ severity: 'clean' });
  });

  it('says nothing until enough is answered', () => {
    expect(puttyAdvice(service('hard'))).toBeNull();
    expect(puttyAdvice(service('hard', 'sand'))).toBeNull();
    expect(puttyAdvice(service('soft'))).toBeNull();
  });
});

describe('adviceWarnings', () => {
  const severe = puttyAdvice(service('hard', 'sand', 'much'));
  const mild = puttyAdvice(service('soft', null, 'little'));
  it('names a putty that is not of the class advised, with the grain of its data sheet', () => {
    expect(adviceWarnings(severe, 0.1, 4).map(({ code }) => code)).toEqual(['putty-too-fine']);
    expect(adviceWarnings(mild, 2, 4).map(({ code }) => code)).toEqual(['putty-too-coarse']);
  });
  it('is silent when they agree, when nothing is filled, when the fill is too shallow for beads, and without a grain', () => {
    expect(adviceWarnings(severe, 1.5, 4)).toEqual([]);
    expect(adviceWarnings(mild, 0.1, 4)).toEqual([]);
    expect(adviceWarnings(severe, 0.1, 0)).toEqual([]);
    expect(adviceWarnings(severe, 0.1, 0.8)).toEqual([]);
    expect(adviceWarnings(severe, 0, 4)).toEqual([]);
    expect(adviceWarnings(null, 0.1, 4)).toEqual([]);
  });
});
