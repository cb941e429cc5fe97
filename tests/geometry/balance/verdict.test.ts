import { expect, test } from 'vitest';
import { verdictOf } from '../../../geometry/balance/verdict.ts';

// Job format, "Balance": within when the chance of being over is under 5 % and net is at most the limit; over when net is more.
test.each([
  [100, 589, 0, 'within'],
  [589, 589, 0.0499, 'within'],
  [589, 589, 0.05, 'check'],
  [500, 589, 0.3, 'check'],
  [589.001, 589, 0.01, 'over'],
  [2000, 589, 1, 'over'],
] as const)('%f of %f, chance %f: %s', (net, limit, chance, verdict) => {
  expect(verdictOf(net, limit, chance)).toBe(verdict);
});
