/**
 * A job small enough to work out by hand: five readings on a plate of 40 x 30 mm, the covariance Gaussian, so that the integrals of the
 * kriging system are error functions: z = sill l2 pi/2 [erf ...][erf ...], Z likewise; volume w'y, variance Z - w'z - mu A (Rasmussen and
 * Ghahramani, Bayesian Monte Carlo, NIPS 2003; unknown mean as block kriging in Isaaks and Srivastava, An Introduction to Applied
 * Geostatistics, 1989, ch. 13, from memory). The figures were worked out in double precision from those closed forms.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { estimate } from '../../geometry/estimate.ts';
import { measured } from '../../geometry/job/measured.ts';
import { readJob } from '../../geometry/job/read-job.ts';
import { toResult } from '../../geometry/sheet/result.ts';

const JOB = join(import.meta.dirname, 'jobs', 'readings-by-hand.job.json');

/** cm3. */
const BY_HAND = {
  gauged: { volume: 1.926131, error: 0.0802022177 },
  exact: { volume: 1.93329968, error: 0.0566218612 },
};

test.each(['gauged', 'exact'] as const)('%s readings: volume and its standard error', (id) => {
  const reading = readJob(readFileSync(JOB, 'utf8'));
  if ('faults' in reading) throw new Error(JSON.stringify(reading.faults));
  const part = toResult(estimate(measured(reading.job))).parts.find((one) => one.id === id);
  const { volume, error } = BY_HAND[id];
  // Midpoints of half-millimetre cells: 2e-5 of a surface of this roundness. The error is added up over blocks of some mm.
  for (const found of [part?.lostVolume, part?.fillVolume])
    expect(Math.abs((found ?? 0) / volume - 1)).toBeLessThan(5e-5);
  for (const found of [part?.standardError, part?.lostError])
    expect(Math.abs((found ?? 0) / error - 1)).toBeLessThan(2e-3);
});
